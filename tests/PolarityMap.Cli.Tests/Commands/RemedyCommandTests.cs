using System.Text;
using System.Text.Json;
using Xunit;

namespace PolarityMap.Cli.Tests.Commands;

/// <summary>What <c>remedy</c> says of documents whose faults can be read off them, and what it writes.</summary>
public sealed class RemedyCommandTests
{
    /// <summary>Method U1 over a trunk of the wrong type with two legs, three links on each; the author's own comments and spaces.</summary>
    private const string WrongTrunk = """
        # The east wing.
        plant: Six links over one trunk
        parts:
          SW-L:   { kind: duplex interface, ports: 6 }   # rack 1
          SW-R:   { kind: duplex interface, ports: 6 }
          K-L[1..2]: { kind: U1 cassette, base: 8 }
          K-R[1..2]: { kind: U1 cassette, base: 8 }
          T: { kind: Type-A trunk, base: 8, legs: 2, length: 30 m }
        runs:
          - SW-L/1..6, A-to-B cord 2 m, K-L[1..2]/1..3
          - K-L[1..2]/rear, T/1..2, K-R[1..2]/rear
          - K-R[1..2]/1..3, A-to-B cord 2 m, SW-R/1..6
        links:
          - SW-L/1..6 to SW-R/1..6

        """;

    [Fact]
    public void A_sound_plant_has_status_0_and_nothing_is_written()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        Outcome outcome = bench.Run("remedy", "plant.yaml", "--apply");
        Assert.Equal(0, outcome.Status);
        Assert.Contains("There is nothing to remedy.", outcome.Out, StringComparison.Ordinal);
        Assert.Equal(Samples.Clean, bench.Read("plant.yaml"));
    }

    [Fact]
    public void The_plan_comes_first_then_each_finding_with_what_else_clears_it()
    {
        using var bench = new Workbench().With("plant.yaml", WrongTrunk);
        Outcome outcome = bench.Run("remedy", "plant.yaml");
        Assert.Equal(1, outcome.Status);
        string[] lines = outcome.Out.Split('\n');
        Assert.Equal("Plan: 1 change, about 90 minutes", lines[3]);
        Assert.Equal("   1  put a Type-B trunk in the place of trunk T (90 min, clears 6 findings)", lines[4]);
        Assert.Contains("6 of 6 links are proven. Nothing was found.", outcome.Out.Replace("\n          ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        int finding = Array.IndexOf(lines, "error P01 transmit meets transmit");
        Assert.True(finding > 5);
        Assert.Equal("  remedy  put a Type-B trunk in the place of trunk T (90 min, clears 6 findings)", lines[finding + 2]);
        Assert.Contains("and 5 more that the same remedy clears:", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("never look into one", outcome.Out.Replace("\n          ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Equal(WrongTrunk, bench.Read("plant.yaml"));
    }

    [Fact]
    public void All_shows_every_finding_and_every_remedy()
    {
        using var bench = new Workbench().With("plant.yaml", WrongTrunk);
        string few = bench.Run("remedy", "plant.yaml").Out, all = bench.Run("remedy", "plant.yaml", "--all").Out;
        Assert.Equal(1, Count(few, "error P01"));
        Assert.Equal(6, Count(all, "error P01"));
        Assert.Contains("which --all shows", few, StringComparison.Ordinal);
        Assert.DoesNotContain("which --all shows", all, StringComparison.Ordinal);
        Assert.Contains("put an A-to-A cord in the place of cord SW-L/1~K-L1/1 (3 min)", all, StringComparison.Ordinal);
    }

    [Fact]
    public void A_code_asks_for_the_findings_of_one_rule()
    {
        using var bench = new Workbench().With("plant.yaml", WrongTrunk);
        Assert.Equal(1, bench.Run("remedy", "plant.yaml", "--code", "p01").Status);
        Outcome other = bench.Run("remedy", "plant.yaml", "--code", "D01");
        Assert.Equal(0, other.Status);
        Assert.Contains("There is nothing to remedy.", other.Out, StringComparison.Ordinal);
        Outcome none = bench.Run("remedy", "plant.yaml", "--code", "P99");
        Assert.Equal(2, none.Status);
        Assert.StartsWith("polaritymap: there is no rule 'P99'; 'polaritymap explain' lists them", none.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_finding_that_nothing_clears_says_what_was_tried_and_what_would()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Fault("L04"));
        Outcome outcome = bench.Run("remedy", "plant.yaml");
        Assert.Equal(1, outcome.Status);
        string text = outcome.Out.Replace("\n          ", " ", StringComparison.Ordinal);
        Assert.Contains("No change of a part or plug clears any of the findings.", text, StringComparison.Ordinal);
        Assert.Contains("no change of a part or plug clears it without raising another; there is none that bears on it. Leave out panels or cassettes", text, StringComparison.Ordinal);
        Assert.DoesNotContain("--apply", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Apply_adds_lines_at_the_end_and_a_second_time_there_is_nothing_to_do()
    {
        using var bench = new Workbench().With("plant.yaml", WrongTrunk);
        Outcome first = bench.Run("remedy", "plant.yaml", "--apply");
        Assert.Equal(0, first.Status);
        string edited = WrongTrunk + "\nas-built:\n  parts:\n    # remedy: put a Type-B trunk in the place of trunk T\n    T: { type: Type-B }\n";
        Assert.Equal(edited, bench.Read("plant.yaml"));
        Assert.Equal(0, bench.Run("check", "plant.yaml").Status);

        Outcome second = bench.Run("remedy", "plant.yaml", "--apply");
        Assert.Equal(0, second.Status);
        Assert.Contains("There is nothing to remedy.", second.Out, StringComparison.Ordinal);
        Assert.Equal(edited, bench.Read("plant.yaml"));
        Assert.Equal(["plant.yaml"], bench.Files());
    }

    [Fact]
    public void Apply_writes_elsewhere_when_it_is_told_to_and_leaves_the_document_alone()
    {
        using var bench = new Workbench().With("plant.yaml", WrongTrunk);
        Assert.Equal(0, bench.Run("remedy", "plant.yaml", "--apply", "-o", "repaired.yaml").Status);
        Assert.Equal(WrongTrunk, bench.Read("plant.yaml"));
        Assert.StartsWith(WrongTrunk, bench.Read("repaired.yaml"), StringComparison.Ordinal);
        Assert.Equal(0, bench.Run("check", "repaired.yaml").Status);
        Outcome without = bench.Run("remedy", "plant.yaml", "-o", "other.yaml");
        Assert.Equal(2, without.Status);
        Assert.Equal("polaritymap: --output says where --apply writes to; add --apply\n", without.Error);
    }

    [Fact]
    public void Apply_keeps_the_mark_the_line_ends_and_the_missing_last_one()
    {
        byte[] text = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(WrongTrunk.TrimEnd('\n').Replace("\n", "\r\n", StringComparison.Ordinal))];
        using var bench = new Workbench();
        File.WriteAllBytes(bench.Path("plant.yaml"), text);
        Assert.Equal(0, bench.Run("remedy", "plant.yaml", "--apply").Status);
        byte[] added = Encoding.UTF8.GetBytes("\r\n\r\nas-built:\r\n  parts:\r\n    # remedy: put a Type-B trunk in the place of trunk T\r\n    T: { type: Type-B }");
        Assert.Equal([.. text, .. added], File.ReadAllBytes(bench.Path("plant.yaml")));
    }

    [Fact]
    public void Apply_changes_the_entry_that_a_part_has_already()
    {
        string built = WrongTrunk.Replace("Type-A trunk", "Type-B trunk", StringComparison.Ordinal) + "as-built:\n  parts:\n    T: { type: Type-A }  # from the wrong drum\n  moved: []\n";
        using var bench = new Workbench().With("plant.yaml", built);
        Assert.Equal(0, bench.Run("remedy", "plant.yaml", "--apply").Status);
        Assert.Equal(built.Replace("{ type: Type-A }", "{ type: Type-B }", StringComparison.Ordinal), bench.Read("plant.yaml"));
    }

    [Fact]
    public void Apply_writes_into_an_as_built_document_and_not_into_its_design()
    {
        using var bench = new Workbench().With("plant.yaml", WrongTrunk).With("built.yaml", "design: plant.yaml\nas-built:\n  moved: []\n");
        Assert.Equal(0, bench.Run("remedy", "built.yaml", "--apply").Status);
        Assert.Equal(WrongTrunk, bench.Read("plant.yaml"));
        Assert.Equal("design: plant.yaml\nas-built:\n  moved: []\n  parts:\n    # remedy: put a Type-B trunk in the place of trunk T\n    T: { type: Type-B }\n", bench.Read("built.yaml"));
    }

    [Fact]
    public void Apply_names_plugs_where_a_move_of_the_author_would_come_after_an_exchange()
    {
        // What the author moved sits in port 3, and the remedy exchanges ports 2 and 3: an exchange is laid before a move. The left
        // ends are in rooms of their own, where nobody takes one for another.
        const string document = """
            plant: Three cords
            parts:
              L1: { kind: duplex interface, room: One }
              L2: { kind: duplex interface, room: Two }
              L3: { kind: duplex interface, room: Three }
              R: { kind: duplex interface, ports: 4 }
            runs:
              - L1/1, A-to-B cord 2 m, R/1
              - L2/1, A-to-B cord 2 m, R/4
              - L3/1, A-to-B cord 2 m, R/2
            links:
              - L1/1 to R/1
              - L2/1 to R/2
              - L3/1 to R/3
            as-built:
              moved:
                - R/4 to R/3

            """;
        using var bench = new Workbench().With("plant.yaml", document);
        Outcome outcome = bench.Run("remedy", "plant.yaml", "--apply");
        Assert.Equal(0, outcome.Status);
        Assert.Equal(0, bench.Run("check", "plant.yaml").Status);
        Assert.Contains("  plugged:\n", bench.Read("plant.yaml"), StringComparison.Ordinal);
        Assert.Equal(document.Split('\n').Where(l => l.Length > 0), bench.Read("plant.yaml").Split('\n').Where(document.Split('\n').Contains).Where(l => l.Length > 0));
    }

    [Fact]
    public void What_cannot_be_edited_is_untouched_and_the_lines_to_put_in_by_hand_are_told()
    {
        string flow = WrongTrunk + "as-built: { moved: [] }\n";
        using var bench = new Workbench().With("plant.yaml", flow);
        Outcome outcome = bench.Run("remedy", "plant.yaml", "--apply");
        Assert.Equal(2, outcome.Status);
        Assert.Equal(flow, bench.Read("plant.yaml"));
        Assert.Equal(
            [
                "polaritymap: nothing was written",
                "plant.yaml:15:11: the as-built section is written in braces, which is not changed without a hand; expected lines of its own for each entry, or the entry put in by hand",
                "To put the changes in by hand:",
                "as-built:",
                "  parts:",
                "    # remedy: put a Type-B trunk in the place of trunk T",
                "    T: { type: Type-B }",
            ],
            outcome.ErrorLines);
        Assert.Equal(["plant.yaml"], bench.Files());
    }

    [Fact]
    public void What_stays_after_apply_has_status_1()
    {
        // The trunk is wrong, and a part is described that no run comes to.
        using var bench = new Workbench().With("plant.yaml", WrongTrunk.Replace("parts:\n", "parts:\n  SPARE: duplex interface\n", StringComparison.Ordinal));
        Outcome outcome = bench.Run("remedy", "plant.yaml", "--apply");
        Assert.Equal(1, outcome.Status);
        Assert.Contains("left    1 finding: W02", outcome.Out, StringComparison.Ordinal);
        Assert.Equal(0, bench.Run("check", "plant.yaml").Status);
    }

    [Fact]
    public void Json_has_the_documented_fields()
    {
        using var bench = new Workbench().With("plant.yaml", WrongTrunk);
        Outcome outcome = bench.Run("remedy", "plant.yaml", "--format", "json");
        Assert.Equal(1, outcome.Status);
        JsonElement root = Json.Parse(outcome.Out, "polaritymap/remedy");
        Assert.Equal(["format", "version", "plant", "verdict", "errors", "warnings", "plan", "findings", "tried", "proved", "bound", "written"], Json.Names(root));
        JsonElement plan = root.GetProperty("plan");
        Assert.Equal(["minutes", "steps", "clears", "remaining", "proof", "overlay", "cautions"], Json.Names(plan));
        Assert.Equal(["change", "text", "minutes", "parts", "clears"], Json.Names(plan.GetProperty("steps")[0]));
        Assert.Equal("other-trunk", plan.GetProperty("steps")[0].GetProperty("change").GetString());
        Assert.Equal(6, plan.GetProperty("steps")[0].GetProperty("clears").GetArrayLength());
        Assert.Equal("as-built:\n  parts:\n    # remedy: put a Type-B trunk in the place of trunk T\n    T: { type: Type-B }\n", plan.GetProperty("overlay").GetString());
        JsonElement finding = root.GetProperty("findings")[0];
        Assert.Equal(["finding", "code", "title", "severity", "file", "line", "column", "message", "remedies", "none", "tried", "complete"], Json.Names(finding));
        Assert.Equal(["minutes", "changes", "clears", "proven", "proof"], Json.Names(finding.GetProperty("remedies")[0]));
        Assert.Equal(["change", "text", "minutes", "parts"], Json.Names(finding.GetProperty("remedies")[0].GetProperty("changes")[0]));
        Assert.Equal(JsonValueKind.Null, root.GetProperty("written").ValueKind);
    }

    [Fact]
    public void Json_tells_where_the_plan_was_written_and_a_wrong_document_its_problems()
    {
        using var bench = new Workbench().With("plant.yaml", WrongTrunk).With("broken.yaml", Samples.Broken);
        JsonElement root = Json.Parse(bench.Run("remedy", "plant.yaml", "--apply", "-o", "out.yaml", "--format", "json").Out, "polaritymap/remedy");
        Assert.Equal("out.yaml", root.GetProperty("written").GetString());
        Outcome broken = bench.Run("remedy", "broken.yaml", "--format", "json");
        Assert.Equal(2, broken.Status);
        Json.Parse(broken.Out, "polaritymap/problems");
    }

    [Fact]
    public void Text_and_json_have_the_same_status_and_remedies()
    {
        foreach (string code in (string[])["P01", "D03", "M05", "F01", "S02", "W01"])
        {
            using var bench = new Workbench().With("plant.yaml", Samples.Fault(code));
            Outcome text = bench.Run("remedy", "plant.yaml", "--all"), json = bench.Run("remedy", "plant.yaml", "--format", "json");
            Assert.Equal(text.Status, json.Status);
            string flat = string.Join(' ', text.Out.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
            foreach (JsonElement finding in Json.Parse(json.Out, "polaritymap/remedy").GetProperty("findings").EnumerateArray())
            {
                foreach (JsonElement change in finding.GetProperty("remedies").EnumerateArray().SelectMany(r => r.GetProperty("changes").EnumerateArray()))
                    Assert.Contains(change.GetProperty("text").GetString()!, flat, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void Colour_repeats_what_the_words_say()
    {
        using var plain = new Workbench().With("plant.yaml", WrongTrunk);
        using var coloured = new Workbench { Colour = true }.With("plant.yaml", WrongTrunk);
        string painted = coloured.Run("remedy", "plant.yaml").Out;
        Assert.Equal(plain.Run("remedy", "plant.yaml").Out, System.Text.RegularExpressions.Regex.Replace(painted, "\u001b\\[[0-9;]*m", ""));
    }

    private static int Count(string text, string word) => (text.Length - text.Replace(word, "", StringComparison.Ordinal).Length) / word.Length;
}
