using System.Text.Json;
using PolarityMap.Core.Checks;
using Xunit;

namespace PolarityMap.Cli.Tests.Commands;

public sealed class BudgetCommandTests
{
    public static TheoryData<string, int> Examples
    {
        get
        {
            var examples = new TheoryData<string, int>();
            foreach (Rule rule in RuleCatalogue.All.Where(r => r.Family == "loss"))
                examples.Add(rule.Code, rule.Severity == Severity.Error ? 1 : 0);
            return examples;
        }
    }

    // Status 1 is for what exceeds a limit; a warning leaves it 0.
    [Theory]
    [MemberData(nameof(Examples))]
    public void The_status_says_whether_something_exceeds(string code, int status)
    {
        using var bench = new Workbench().With("faulty.yaml", RuleCatalogue.Find(code)!.Example).With("right.yaml", RuleCatalogue.Find(code)!.Repaired);
        Assert.Equal(status, bench.Run("budget", "faulty.yaml").Status);
        Assert.Equal(0, bench.Run("budget", "right.yaml").Status);
    }

    [Fact]
    public void A_document_that_cannot_be_read_has_status_2()
    {
        using var bench = new Workbench().With("broken.yaml", Samples.Broken);
        Assert.Equal(2, bench.Run("budget", "broken.yaml").Status);
        Outcome json = bench.Run("budget", "broken.yaml", "--format", "json");
        Assert.Equal(2, json.Status);
        Json.Parse(json.Out, "polaritymap/problems");
    }

    // 93 m of OM4 and 91 m at 3.5 dB/km; 4 x 0.35 + 4 x 0.15 = 2.0 dB, and with one plain cord 4 x 0.35 + 3 x 0.15 + 0.75 = 2.6 dB.
    [Fact]
    public void The_table_has_a_row_of_figures_for_each_link()
    {
        using var bench = new Workbench().With("losses.yaml", Samples.Losses);
        Outcome outcome = bench.Run("budget", "losses.yaml");
        Assert.Equal(1, outcome.Status);
        string[] lines = outcome.Out.Split('\n');
        Assert.All(lines, l => Assert.InRange(l.Length, 0, 120));
        Assert.Contains("SW-L/1 to SW-R/1: 10GBASE-SR, 850 nm, OM4: fits, 0.57 dB left", lines);
        Assert.Contains(lines, l => Cells(l) is ["93", "m", "8", "0", "6.33", "dB", "2.33", "dB", ..]);
        Assert.Contains("SW-L/2 to SW-R/2: 10GBASE-SR, 850 nm, OM4: over by 0.02 dB", lines);
        Assert.Contains(lines, l => Cells(l) is ["≥", "91", "m", "8", "0", "6.32", "dB", "2.92", "dB", ..]);
        Assert.Contains("PLAIN-3/1 to PLAIN-4/1: not lit from end to end; 'polaritymap check' says why", lines);
        Assert.Contains("5 links: 2 fit (1 only by what the parts state), 1 exceeds its limit, 2 are not judged.", lines);
        Assert.Contains(lines, l => l.Contains("never look into a fibre", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.Contains("one-cord reference of IEC 61280-4-1", StringComparison.Ordinal));
    }

    [Fact]
    public void One_link_is_told_by_either_end()
    {
        using var bench = new Workbench().With("losses.yaml", Samples.Losses);
        Outcome near = bench.Run("budget", "losses.yaml", "--link", "SW-L/1");
        Assert.Equal(0, near.Status);
        Assert.Equal(near, bench.Run("budget", "losses.yaml", "--link", "SW-R/1"));
        Assert.Contains("The link fits, but only by what its parts state.", near.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("SW-L/2", near.Out, StringComparison.Ordinal);
        Assert.Contains("The link exceeds its limit.", bench.Run("budget", "losses.yaml", "--link", "SW-L/2").Out, StringComparison.Ordinal);
        Assert.Contains("The link is not judged.", bench.Run("budget", "losses.yaml", "--link", "PLAIN-1/1").Out, StringComparison.Ordinal);
        Assert.Contains("The link fits.", bench.Run("budget", "losses.yaml", "--link", "BX-U/1").Out, StringComparison.Ordinal);
    }

    // Source: interface facts 8, no. 5: 3.0 dB/km on OM4 by TIA-568.3: 93 m are 0.279 dB.
    [Fact]
    public void Other_limits_may_be_asked_for()
    {
        using var bench = new Workbench().With("losses.yaml", Samples.Losses);
        JsonElement root = Json.Parse(bench.Run("budget", "losses.yaml", "--limits", "TIA-568.3-D", "--format", "json").Out, "polaritymap/budget");
        Assert.Equal("TIA-568.3-D", root.GetProperty("limits").GetString());
        JsonElement first = root.GetProperty("links")[0].GetProperty("strands")[0];
        Assert.Equal(0.279m, first.GetProperty("standard").GetProperty("fibre").GetDecimal());
        Assert.Equal("one-jumper reference of TIA-526-14", first.GetProperty("acceptance").GetProperty("method").GetString());
    }

    [Theory]
    [InlineData("--limits TIA-568.3", "there are no limits 'TIA-568.3'; expected one of ISO/IEC 11801, TIA-568.3-D, TIA-568.3-E; did you mean 'TIA-568.3-D'?")]
    [InlineData("--link SW-L/9", "no link has an end at 'SW-L/9'; did you mean 'SW-L/1'?")]
    [InlineData("--link SW-L/1:2", "no link has an end at 'SW-L/1:2'")]
    public void A_wrong_word_is_told_the_nearest(string options, string expected)
    {
        using var bench = new Workbench().With("losses.yaml", Samples.Losses);
        Outcome outcome = bench.Run(["budget", "losses.yaml", .. options.Split(' ')]);
        Assert.Equal((2, ""), (outcome.Status, outcome.Out));
        Assert.Contains(expected, outcome.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_has_the_documented_fields_and_all_strands_when_asked()
    {
        using var bench = new Workbench().With("losses.yaml", Samples.Losses);
        JsonElement root = Json.Parse(bench.Run("budget", "losses.yaml", "--format", "json").Out, "polaritymap/budget");
        Assert.Equal(["format", "version", "plant", "limits", "formula", "verdict", "exceeding", "askedMargin", "links"], Json.Names(root));
        JsonElement[] links = [.. root.GetProperty("links").EnumerateArray()];
        Assert.All(links, l => Assert.Equal(["from", "to", "link", "lit", "judged", "exceeds", "failsByStandard", "verdict", "strands"], Json.Names(l)));
        Assert.Equal([true, false, false, false, false], links.Select(l => l.GetProperty("failsByStandard").GetBoolean()));
        Assert.Equal([true, true, true, false, true], links.Select(l => l.GetProperty("lit").GetBoolean()));
        Assert.Equal([0, 1, 2, 3, null], links.Select(l => l.GetProperty("link").ValueKind == JsonValueKind.Null ? null : (int?)l.GetProperty("link").GetInt32()));
        JsonElement strand = Assert.Single(links[0].GetProperty("strands").EnumerateArray());
        Assert.Equal(
            [
                "number", "from", "to", "application", "wavelength", "wavelengthIsAssumed", "fibre", "fibresMissing", "length", "lengthsMissing", "distanceLimit",
                "matings", "splices", "standard", "stated", "expected", "limit", "margin", "delay", "verdict", "remarks", "acceptance",
            ],
            Json.Names(strand));
        Assert.Equal(["fibre", "matings", "splices", "total"], Json.Names(strand.GetProperty("stated")));
        Assert.Equal(["from", "to", "singleCord", "length", "method", "referencePlug", "tests"], Json.Names(strand.GetProperty("acceptance")));
        Assert.Equal(2.3255m, strand.GetProperty("stated").GetProperty("total").GetDecimal());

        JsonElement all = Json.Parse(bench.Run("budget", "losses.yaml", "--all", "--format", "json").Out, "polaritymap/budget");
        Assert.Equal([2, 2, 2, 0, 2], all.GetProperty("links").EnumerateArray().Select(l => l.GetProperty("strands").GetArrayLength()));
    }

    [Fact]
    public void A_plant_without_interfaces_has_nothing_to_reckon()
    {
        using var bench = new Workbench().With("dark.yaml", Samples.EmptyOfLight);
        Outcome outcome = bench.Run("budget", "dark.yaml");
        Assert.Equal(0, outcome.Status);
        Assert.Contains("No light goes from one interface to another.", outcome.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_document_gives_the_same_bytes()
    {
        using var bench = new Workbench().With("losses.yaml", Samples.Losses);
        Assert.Equal(bench.Run("budget", "losses.yaml", "--all"), bench.Run("budget", "losses.yaml", "--all"));
    }

    private static string[] Cells(string line) => line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
}
