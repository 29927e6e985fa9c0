using System.Text.Json;
using Xunit;

namespace PolarityMap.Cli.Tests.Commands;

/// <summary>What <c>separation</c> says of documents whose sharing and keys can be read off them.</summary>
public sealed class SeparationCommandTests
{
    [Fact]
    public void Networks_that_share_nothing_have_status_0()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        Outcome outcome = bench.Run("separation", "plant.yaml");
        Assert.Equal(0, outcome.Status);
        Assert.Contains("shared: 0 of 8 sheaths, 0 of 2 cassettes, 0 of 2 array connectors", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("Nothing was found. No network says what it may share, so sharing was not judged.", outcome.Out, StringComparison.Ordinal);
        Assert.Equal("", outcome.Error);
    }

    // Of the separation family D06 alone is not, and yet the networks do not keep apart.
    [Theory]
    [InlineData("S01", 1)]
    [InlineData("S02", 1)]
    [InlineData("S03", 1)]
    [InlineData("S04", 1)]
    [InlineData("S05", 1)]
    [InlineData("D06", 1)]
    [InlineData("S06", 0)]
    [InlineData("S07", 0)]
    [InlineData("S08", 0)]
    [InlineData("S09", 0)]
    public void Errors_have_status_1_and_warnings_0_and_both_are_listed(string code, int status)
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Fault(code));
        Outcome outcome = bench.Run("separation", "plant.yaml");
        Assert.Equal(status, outcome.Status);
        Assert.Contains($"{(status == 1 ? "error" : "warning")} {code} ", outcome.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Faults_of_other_families_are_left_to_check()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Fault("D02"));
        Outcome outcome = bench.Run("separation", "plant.yaml");
        Assert.Equal(0, outcome.Status);
        Assert.DoesNotContain("D02", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("names no network, so there is nothing to keep apart", outcome.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_document_has_status_2_in_text_and_in_json()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Broken);
        Outcome text = bench.Run("separation", "plant.yaml");
        Assert.Equal(2, text.Status);
        Assert.Equal("", text.Out);
        Outcome json = bench.Run("separation", "plant.yaml", "--format", "json");
        Assert.Equal(2, json.Status);
        Assert.Equal(3, Json.Parse(json.Out, "polaritymap/problems").GetProperty("count").GetInt32());
    }

    [Fact]
    public void What_one_line_describes_is_one_row_and_another_line_s_is_its_own()
    {
        using var bench = new Workbench()
            .With("one.yaml", Samples.Desks)
            .With("two.yaml", Samples.Desks.Replace("  DC[1..3]: ", "  DC3: { kind: Type-B trunk, base: 8, length: 40 m }\n  DC[1..2]: ", StringComparison.Ordinal));
        Assert.Equal(["DC1 … DC3"], Sheaths("one.yaml"));
        Assert.Equal(["DC1, DC2", "DC3"], Sheaths("two.yaml"));

        string[] Sheaths(string document) =>
        [
            .. bench.Run("separation", document).Out.Split('\n').Where(l => l.StartsWith("  sheath ", StringComparison.Ordinal))
                .Select(l => l["  sheath    ".Length..].Split("  ")[0]),
        ];
    }

    [Fact]
    public void Json_has_the_documented_fields()
    {
        using var bench = new Workbench().With("desks.yaml", Samples.Desks);
        Outcome outcome = bench.Run("separation", "desks.yaml", "--format", "json");
        Assert.Equal(1, outcome.Status);
        JsonElement report = Json.Parse(outcome.Out, "polaritymap/separation");
        Assert.Equal(["format", "version", "plant", "verdict", "errors", "warnings", "networks", "totals", "shared", "fits", "findings"], Json.Names(report));
        Assert.Equal(["name", "colour", "key", "plainFits", "mayShare", "file", "line", "column"], Json.Names(report.GetProperty("networks")[0]));
        Assert.Equal(JsonValueKind.Null, report.GetProperty("networks")[2].GetProperty("mayShare").ValueKind);
        Assert.Equal(["sheath", "cassette", "array", "panel"], Json.Names(report.GetProperty("totals")));
        Assert.Equal(["shared", "all"], Json.Names(report.GetProperty("totals").GetProperty("array")));
        JsonElement shared = report.GetProperty("shared")[0];
        Assert.Equal(["what", "verdict", "networks", "astray", "forbiddenBy", "file", "line", "column", "items"], Json.Names(shared));
        Assert.Equal(["part", "port", "meets"], Json.Names(shared.GetProperty("items")[0]));
        JsonElement fits = report.GetProperty("fits")[0];
        Assert.Equal(["kind", "parts", "file", "line", "column", "ports"], Json.Names(fits));
        Assert.Equal(["name", "network", "key", "cords"], Json.Names(fits.GetProperty("ports")[0]));
        Assert.Equal(["network", "key", "fit"], Json.Names(fits.GetProperty("ports")[0].GetProperty("cords")[0]));
        Assert.Equal(
            ["code", "title", "severity", "file", "line", "column", "message", "expected", "actual", "strands"],
            Json.Names(report.GetProperty("findings")[0]));
    }

    // The document says: lighting and sound in each cable; lighting may share a sheath and nothing else. The four ports
    // name office as well, so that the dark pairs of office lie in the same cable, and office says nothing.
    [Fact]
    public void Json_tells_what_is_shared_by_whom_and_whose_policy_forbids_it()
    {
        using var bench = new Workbench().With("desks.yaml", Samples.Desks);
        JsonElement report = Json.Parse(bench.Run("separation", "desks.yaml", "--format", "json").Out, "polaritymap/separation");
        string[] rows = [.. report.GetProperty("shared").EnumerateArray().Select(g =>
            $"{g.GetProperty("what").GetString()} {g.GetProperty("items").GetArrayLength()} {g.GetProperty("verdict").GetString()}: {Words(g, "networks")}; {Words(g, "forbiddenBy")}")];
        Assert.Equal(
            [
                "sheath 3 not stated: lighting sound office; ",
                "cassette 3 against the policy: lighting sound office; lighting",
                "cassette 3 against the policy: lighting sound office; lighting",
                "array 3 against the policy: lighting sound office; lighting",
                "array 3 against the policy: lighting sound office; lighting",
            ],
            rows);

        // The matings of one stop are one group, each with both its addresses.
        JsonElement array = report.GetProperty("shared")[3].GetProperty("items")[1];
        Assert.Equal("ZB2", array.GetProperty("part").GetString());
        Assert.Equal("ZB2/rear", array.GetProperty("port").GetString());
        Assert.Equal("DC2/near", array.GetProperty("meets").GetString());
    }

    // K1 and K2 keep all others out of the ports of lighting and sound. The ports of office are plain, and the cords of the other
    // two have a plain end, for the device, that goes into them.
    [Fact]
    public void Json_tells_which_cords_go_into_which_ports()
    {
        using var bench = new Workbench().With("desks.yaml", Samples.Desks);
        JsonElement report = Json.Parse(bench.Run("separation", "desks.yaml", "--format", "json").Out, "polaritymap/separation");
        JsonElement desk = report.GetProperty("fits").EnumerateArray().Single(f => f.GetProperty("kind").GetString() == "outlet");
        Assert.Equal("DESK1 DESK2 DESK3", Words(desk, "parts"));
        Assert.Equal(
            ["K1: own blocked blocked", "K2: blocked own blocked", "plain: fits fits own", "plain: fits fits own"],
            desk.GetProperty("ports").EnumerateArray().Select(p =>
                $"{p.GetProperty("key").GetString() ?? "plain"}: {string.Join(' ', p.GetProperty("cords").EnumerateArray().Select(c => c.GetProperty("fit").GetString()))}"));
    }

    [Fact]
    public void Text_and_json_have_the_same_status_and_findings()
    {
        foreach (string code in (string[])["S01", "S03", "S06", "D06"])
        {
            using var bench = new Workbench().With("plant.yaml", Samples.Fault(code));
            Outcome text = bench.Run("separation", "plant.yaml");
            Outcome json = bench.Run("separation", "plant.yaml", "--format", "json");
            Assert.Equal(text.Status, json.Status);
            string[] messages = [.. Json.Parse(json.Out, "polaritymap/separation").GetProperty("findings").EnumerateArray().Select(f => f.GetProperty("message").GetString()!)];
            Assert.NotEmpty(messages);
            Assert.All(messages, m => Assert.Contains(m, text.Out, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Colour_repeats_what_the_words_say()
    {
        using var plain = new Workbench().With("desks.yaml", Samples.Desks);
        using var coloured = new Workbench { Colour = true }.With("desks.yaml", Samples.Desks);
        string painted = coloured.Run("separation", "desks.yaml").Out;
        Assert.Contains("\u001b[1;31magainst the policy of lighting\u001b[0m", painted, StringComparison.Ordinal);
        Assert.Equal(plain.Run("separation", "desks.yaml").Out, System.Text.RegularExpressions.Regex.Replace(painted, "\u001b\\[[0-9;]*m", ""));
    }

    /// <summary>A list of texts, in a row.</summary>
    private static string Words(JsonElement element, string name) => string.Join(' ', element.GetProperty(name).EnumerateArray().Select(e => e.GetString()));
}
