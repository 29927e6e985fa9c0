using System.Text.Json;
using PolarityMap.Core.Parts;
using Xunit;

namespace PolarityMap.Cli.Tests.Commands;

public sealed class CatalogueCommandTests
{
    [Fact]
    public void The_list_names_every_kind_and_every_built_in_part()
    {
        using var bench = new Workbench();
        Outcome outcome = bench.Run("catalogue");
        Assert.Equal(0, outcome.Status);
        string[] names = [.. outcome.Out.Split('\n').Where(l => l.StartsWith("  ", StringComparison.Ordinal)).Select(l => l[2..].Split("  ")[0].Trim())];
        Assert.Equal(names.Length, names.Distinct().Count());
        Assert.Equal([.. PartKinds.All.Select(k => k.Name).Concat(Catalogue.All.Select(c => c.Name)).Order(StringComparer.Ordinal)], names.Order(StringComparer.Ordinal));
    }

    // Source: TIA-568.3-E by one public source: pairs 1-12, 2-11 … of a U1 transition; Type-B joins i to 13-i (over 8 sources).
    [Theory]
    [InlineData("U1 cassette", "A ──── rear:3|B ──── rear:10")]
    [InlineData("Type-B trunk", "1 ──── far:12|6 ──── far:7")]
    [InlineData("type-b TRUNK", "12 ──── far:1")]
    [InlineData("4-leg harness", "5    no fibre|12 ──── leg1:A")]
    [InlineData("duplex interface", "A ──> transmit, lane 1|B <── receive, lane 1")]
    [InlineData("3x12 to 4x8 module", "rear3  (12-position array, pinned, keys opposed)|8 ── leads nowhere")]
    public void A_part_is_drawn_with_each_of_its_fibres(string name, string lines)
    {
        using var bench = new Workbench();
        Outcome outcome = bench.Run("catalogue", name);
        Assert.Equal(0, outcome.Status);
        string[] drawn = [.. outcome.Out.Split('\n').Select(l => l.Trim())];
        Assert.All(lines.Split('|'), line => Assert.Contains(line, drawn));
    }

    [Fact]
    public void Json_has_the_same_pairs()
    {
        using var bench = new Workbench();
        JsonElement part = Json.Parse(bench.Run("catalogue", "Type-C cord", "--format", "json").Out, "polaritymap/catalogue").GetProperty("parts")[0];
        Assert.Equal("Type-C", part.GetProperty("fixed").GetProperty("type").GetString());
        string[] joins = [.. part.GetProperty("joins").EnumerateArray().Select(j => $"{j[0].GetString()} {j[1].GetString()}")];

        // Source: Type-C joins 1 to 2, 2 to 1 and so on through twelve (over 8 public sources).
        Assert.Equal(12, joins.Length);
        Assert.Contains("near:1 far:2", joins);
        Assert.Contains("near:12 far:11", joins);
    }

    [Fact]
    public void A_part_that_is_not_there_is_refused_with_the_nearest_name()
    {
        using var bench = new Workbench();
        Outcome outcome = bench.Run("catalogue", "U1 casette");
        Assert.Equal(2, outcome.Status);
        Assert.Equal("polaritymap: there is no part 'U1 casette' in the catalogue; did you mean 'U1 cassette'?\n", outcome.Error);
    }

    [Fact]
    public void The_reference_of_all_rules_takes_no_topic()
    {
        using var bench = new Workbench();
        Assert.Equal(2, bench.Run("explain", "P01", "--format", "markdown").Status);
        Assert.StartsWith("# Rules\n", bench.Run("explain", "--format", "markdown").Out, StringComparison.Ordinal);
    }
}
