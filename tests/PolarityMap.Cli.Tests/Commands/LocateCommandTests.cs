using System.Text.Json;
using Xunit;

namespace PolarityMap.Cli.Tests.Commands;

/// <summary>The whole command with the real search, on plants that are built otherwise than described.</summary>
public sealed class LocateCommandTests
{
    private const string Head = "test,at,seen,value,note\n";

    private static Workbench Bench(string seen, string file = "seen.csv") => new Workbench().With("plant.yaml", Samples.Clean).With(file, seen);

    /// <summary>
    /// What is seen in <see cref="Samples.Clean"/> when the cord at SW-L/1 is A-to-A, followed by hand: the link has one A-to-A cord
    /// by design, so a second one crosses it back, and both receivers of the link meet receivers.
    /// </summary>
    private const string LeftCordTurned = Head + "lamp,SW-R/1,off,,\nlamp,SW-L/1,off,,\nlamp,SW-R/2,on,,\nlight,SW-L/1:A,K-L/rear:1,,\n";

    // As designed A of SW-L/1 enters the cord's B, leaves at A and so takes position 2 of the trunk; with an A-to-A cord position 1.
    [Fact]
    public void One_cord_of_the_other_type_is_found_and_its_mend_is_told()
    {
        using Workbench bench = Bench(LeftCordTurned);
        Outcome outcome = bench.Run("locate", "plant.yaml", "--seen", "seen.csv");
        Assert.Equal("", outcome.Error);
        Assert.Equal(1, outcome.Status);
        string all = string.Join(' ', outcome.Out.Split('\n').Select(l => l.Trim()));
        Assert.Contains("cord SW-L/1~K-L/1 is A-to-A instead of A-to-B", all, StringComparison.Ordinal);
        Assert.Contains("put an A-to-B cord in the place of SW-L/1~K-L/1", all, StringComparison.Ordinal);
        Assert.Contains("searched  single deviations: ", all, StringComparison.Ordinal);
        Assert.Contains("never look into a fibre end", all, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plant_that_is_as_described_is_status_0()
    {
        using Workbench bench = Bench(Head + "lamp,SW-R/1,on,,\nlight,SW-L/1:A,SW-R/1:B,,\nlook,TRUNK,as described,,\n");
        Outcome outcome = bench.Run("locate", "plant.yaml", "--seen", "seen.csv");
        Assert.Equal(0, outcome.Status);
        Assert.Contains("The plant as it is described agrees with everything that was seen.\n", outcome.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Contradictions_are_named_with_both_lines_of_the_file()
    {
        using Workbench bench = Bench(Head + "lamp,SW-R/1,on,,\nlamp,SW-R/1,off,,after lunch\n");
        Outcome outcome = bench.Run("locate", "plant.yaml", "--seen", "seen.csv");
        Assert.Equal(1, outcome.Status);
        Assert.Contains("  seen.csv:2:1: the link lamp of SW-R/1 is on\n  seen.csv:3:1: the link lamp of SW-R/1 is off (after lunch)\n", outcome.Out, StringComparison.Ordinal);
        JsonElement root = Json.Parse(bench.Run("locate", "plant.yaml", "--seen", "seen.csv", "--format", "json").Out, "polaritymap/locate");
        Assert.Equal([0, 1], new[] { "first", "second" }.Select(n => root.GetProperty("contradictions")[0].GetProperty(n).GetInt32()));
    }

    [Fact]
    public void JSON_has_shares_that_add_up_and_shows_every_explanation()
    {
        using Workbench bench = Bench(Head + "lamp,SW-R/1,off,,\n");
        JsonElement root = Json.Parse(bench.Run("locate", "plant.yaml", "--seen", "seen.csv", "--format", "json").Out, "polaritymap/locate");
        JsonElement[] found = [.. root.GetProperty("explanations").EnumerateArray()];
        Assert.True(found.Length > 1);
        Assert.Equal(1, found.Sum(e => e.GetProperty("share").GetDouble()), 1e-4);
        Assert.True(found.Zip(found.Skip(1)).All(p => p.First.GetProperty("share").GetDouble() >= p.Second.GetProperty("share").GetDouble()));
        Assert.Equal(JsonValueKind.Null, root.GetProperty("plan").ValueKind);
        Assert.NotEqual(JsonValueKind.Null, root.GetProperty("next").ValueKind);
    }

    [Fact]
    public void The_plant_may_be_named_in_the_file()
    {
        using Workbench bench = Bench("plant: plant.yaml\nseen:\n  - { lamp: SW-R/1, is: on }\n", "seen.yaml").With("other.yaml", Samples.Clean);
        Assert.Equal(0, bench.Run("locate", "--seen", "seen.yaml").Status);
        Assert.DoesNotContain("remark", bench.Run("locate", "plant.yaml", "--seen", "seen.yaml").Out, StringComparison.Ordinal);
        Assert.Contains("remark  seen.yaml: this file names the plant plant.yaml; it is read as of other.yaml", bench.Run("locate", "other.yaml", "--seen", "seen.yaml").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_leads_from_the_symptom_to_every_explanation()
    {
        using Workbench bench = Bench(Head + "lamp,SW-R/1,off,,\n");
        Outcome outcome = bench.Run("locate", "plant.yaml", "--seen", "seen.csv", "--plan");
        Assert.Equal(1, outcome.Status);
        Assert.Contains("\n  1. ", outcome.Out, StringComparison.Ordinal);
        JsonElement root = Json.Parse(bench.Run("locate", "plant.yaml", "--seen", "seen.csv", "--plan", "--format", "json").Out, "polaritymap/locate");
        IEnumerable<int> Leaves(JsonElement plan) => plan.GetProperty("branches").GetArrayLength() == 0
            ? plan.GetProperty("remaining").EnumerateArray().Select(e => e.GetInt32())
            : plan.GetProperty("branches").EnumerateArray().SelectMany(Leaves);
        Assert.Equal(Enumerable.Range(0, root.GetProperty("explanations").GetArrayLength()), Leaves(root.GetProperty("plan")).Distinct().Order());
    }

    [Theory]
    [InlineData("card.svg", "<svg")]
    [InlineData("card.pdf", "%PDF")]
    public void A_plan_is_drawn_as_a_card(string file, string begins)
    {
        using Workbench bench = Bench(LeftCordTurned);
        Outcome outcome = bench.Run("locate", "plant.yaml", "--seen", "seen.csv", "--plan", "-o", file);
        Assert.Equal("", outcome.Error);
        Assert.Equal(1, outcome.Status);
        Assert.Contains(begins, bench.Read(file), StringComparison.Ordinal);
        Assert.Contains($"Look at {file}\n", outcome.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_of_several_sheets_goes_into_a_folder()
    {
        using Workbench bench = Bench(Head + "lamp,SW-R/1,off,,\n");
        Outcome refused = bench.Run("locate", "plant.yaml", "--seen", "seen.csv", "--plan", "-o", "card.svg");
        Assert.Equal(2, refused.Status);
        Assert.Contains("takes one sheet", refused.Error, StringComparison.Ordinal);
        Assert.Equal(1, bench.Run("locate", "plant.yaml", "--seen", "seen.csv", "--plan", "-o", "cards/").Status);
        Assert.Contains("cards/plan-2.svg", bench.Files());
        Assert.DoesNotContain("card.svg", bench.Files());
    }

    [Fact]
    public void Where_there_is_nothing_to_plan_the_verdict_is_told_and_no_card_is_drawn()
    {
        using Workbench bench = Bench(Head + "lamp,SW-R/1,on,,\n");
        Outcome outcome = bench.Run("locate", "plant.yaml", "--seen", "seen.csv", "--plan", "-o", "card.svg");
        Assert.Equal(0, outcome.Status);
        Assert.Contains("The plant as it is described agrees with everything that was seen.\n", outcome.Out, StringComparison.Ordinal);
        Assert.Equal(["plant.yaml", "seen.csv"], bench.Files());
    }

    [Theory]
    [InlineData("locate plant.yaml", "--seen")]
    [InlineData("locate --seen seen.csv", "polaritymap: name the plant document, or name it in seen.csv under 'plant:'")]
    [InlineData("locate plant.yaml --seen sen.csv", "there is no file 'sen.csv'; did you mean 'seen.csv'?")]
    [InlineData("locate plnt.yaml --seen seen.csv", "there is no file 'plnt.yaml'; did you mean 'plant.yaml'?")]
    [InlineData("locate plant.yaml --seen seen.csv --most 4", "--most 4 is not searched; expected 1, 2 or 3")]
    [InlineData("locate plant.yaml --seen seen.csv -o card.svg", "--output is for the card of --plan; add --plan")]
    [InlineData("locate plant.yaml --seen seen.csv --ask --format json", "--ask talks with you; leave out --format json")]
    [InlineData("locate plant.yaml --seen seen.xlsx --ask", "--ask notes the answers, and nothing can be added to a workbook; name a .yaml or a .csv")]
    [InlineData("locate plant.yaml --seen seen.csv --ask --plan", "--ask talks with you; leave out --plan")]
    public void A_call_that_is_wrong_is_told_what_was_expected(string call, string said)
    {
        using Workbench bench = Bench(Head + "lamp,SW-R/1,off,,\n");
        Outcome outcome = bench.Run(call.Split(' '));
        Assert.Equal(2, outcome.Status);
        Assert.Contains(said, outcome.Error, StringComparison.Ordinal);
        Assert.Equal(["plant.yaml", "seen.csv"], bench.Files());
    }

    [Fact]
    public void A_file_that_is_wrong_is_told_line_by_line_and_as_JSON()
    {
        using Workbench bench = Bench(Head + "lamp,SWR/1,off,,\n");
        Outcome outcome = bench.Run("locate", "plant.yaml", "--seen", "seen.csv");
        Assert.Equal((2, "", "seen.csv:2:6: there is no part 'SWR'; expected a port of an interface, such as SW-L/1; did you mean 'SW-R'?\n"), (outcome.Status, outcome.Out, outcome.Error));
        JsonElement problem = Json.Parse(bench.Run("locate", "plant.yaml", "--seen", "seen.csv", "--format", "json").Out, "polaritymap/problems").GetProperty("problems")[0];
        Assert.Equal("SW-R", problem.GetProperty("suggestion").GetString());
    }

    // The true cause answers every question: one follows the plant with the turned cord by trace.
    [Fact]
    public void A_talk_ends_at_the_cord_that_is_wrong()
    {
        using Workbench bench = Bench(Head + "lamp,SW-R/1,off,,\n");
        bench.With("built.yaml", Samples.Clean.Replace("- SW-L/1..3, A-to-B cord 2 m, K-L/1..3", "- SW-L/1, A-to-A cord 2 m, K-L/1\n  - SW-L/2..3, A-to-B cord 2 m, K-L/2..3", StringComparison.Ordinal));
        string last = "";
        for (int questions = 0; questions < 12; questions++)
        {
            JsonElement root = Json.Parse(bench.Run("locate", "plant.yaml", "--seen", "seen.csv", "--format", "json").Out, "polaritymap/locate");
            if (root.GetProperty("next").ValueKind == JsonValueKind.Null)
            {
                Assert.Contains(root.GetProperty("explanations").EnumerateArray(), e => e.GetProperty("deviations").EnumerateArray().Any(d => d.GetProperty("text").GetString() == "cord SW-L/1~K-L/1 is A-to-A instead of A-to-B"));
                return;
            }

            last = bench.Answer(TruthOf(bench, root.GetProperty("next")) + "\nquit\n", "locate", "plant.yaml", "--seen", "seen.csv", "--ask").Out;
        }

        Assert.Fail(last);
    }

    /// <summary>What a test shows in the plant as built, found by trace and check of that plant alone.</summary>
    private static string TruthOf(Workbench bench, JsonElement next)
    {
        string at = next.GetProperty("at").GetString()!;
        string? look = next.GetProperty("look").GetString();
        switch (next.GetProperty("test").GetString())
        {
            case "look":
                return at == "SW-L/1~K-L/1" ? "different" : "as described";
            case "lamp":
                return at is "SW-L/1" or "SW-R/1" ? "off" : "on";
            case "light":
                JsonElement strand = Json.Parse(bench.Run("trace", "built.yaml", at, "--format", "json").Out, "polaritymap/trace").GetProperty("positions")[0].GetProperty("strand");
                return Seen([.. strand.GetProperty("hops").EnumerateArray()], at, look);
            default:
                return "0.1 dB";
        }
    }

    /// <summary>Where light that is put in at an address comes out of a part, by the hops of its strand.</summary>
    private static string Seen(JsonElement[] hops, string at, string? look)
    {
        int start = Array.FindIndex(hops, h => h.GetProperty("in").GetString() == at || h.GetProperty("out").GetString() == at);
        bool backwards = hops[start].GetProperty("out").GetString() == at && hops[start].GetProperty("in").GetString() is not null
            || (start == hops.Length - 1 && hops[start].GetProperty("out").ValueKind == JsonValueKind.Null);
        for (int i = start; i >= 0 && i < hops.Length; i += backwards ? -1 : 1)
        {
            JsonElement hop = hops[i];
            bool end = hop.GetProperty("in").ValueKind == JsonValueKind.Null || hop.GetProperty("out").ValueKind == JsonValueKind.Null;
            if (end && i == start)
                continue;
            string? comes = end ? hop.GetProperty("in").GetString() ?? hop.GetProperty("out").GetString() : hop.GetProperty(backwards ? "in" : "out").GetString();
            if (look is null ? end : hop.GetProperty("part").GetString() == look)
                return comes!;
        }

        return "nowhere";
    }
}
