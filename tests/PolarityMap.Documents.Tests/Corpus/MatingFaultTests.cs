using PolarityMap.Core.Checks;
using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Documents.Tests.Corpus;

/// <summary>Faults of matings as runs make them: what is told once, and what is not told besides.</summary>
public class MatingFaultTests
{
    private const string Switches = """
        plant: p
        types:
          SC cord: { kind: A-to-B cord, connector: SC }
          red cord: { kind: A-to-B cord, network: red }
        networks:
          red: { key: R }
        parts:
          L: { kind: duplex interface, ports: 4 }
          R: { kind: duplex interface, ports: 4 }
          P: { kind: duplex panel, ports: 4, keyed: no }
          A: { kind: array panel, ports: 4 }
          C: A-to-B cord
        runs:

        """;

    // Source: a port holds one plug, and each plug fits its own connector (trade facts polarity 7.3 and 8).
    [Theory]
    [InlineData("L/1, A-to-B cord, P/1, A-to-B cord, P/2, A-to-B cord, R/1", "L/2, A-to-B cord, P/1", "M08")]
    [InlineData("L/1, C, R/1", "C/far, P/1, A-to-B cord, R/2", "M08")]
    [InlineData("L/1, C, R/1", "L/2, A-to-B cord, P/1, C/far", "M08")]
    [InlineData("L/1..4, A-to-B cord, R/1..4", "L/1..4, A-to-B cord, P/1..4", "M08")]
    [InlineData("L/1..4, A-to-B cord, A/1..4", "C, P/1", "M03")]
    [InlineData("L/1, C, P/1", "L/2..4, SC cord, R/2..4", "M03 M03 P03")]
    [InlineData("L/1..4, red cord, R/1..4", "C, P/1", "M07 M07")]
    public void Two_runs_raise_these_codes(string first, string second, string codes)
    {
        IReadOnlyList<Finding> findings = Check($"  - {first}\n  - {second}\n");
        Assert.Equal(codes, string.Join(' ', findings.Select(f => f.Rule.Code).Where(c => c[0] != 'W').Order(StringComparer.Ordinal)));
    }

    [Fact]
    public void A_range_that_meets_a_range_names_both_lines_and_counts_the_rest()
    {
        Finding finding = Check("  - L/1..4, A-to-B cord, R/1..4\n  - L/1..4, A-to-B cord, P/1..4\n").Single(f => f.Rule.Code == "M08");
        Assert.Equal("L/1 is used twice, at line 14 and at line 15, and 3 more at the same stop", finding.Message);
    }

    [Fact]
    public void A_link_that_a_wrong_connector_cuts_off_is_refuted_by_that_finding_alone()
    {
        Finding finding = Assert.Single(Check("  - L/1, C, A/1\n  - R/1, A-to-B cord, A/2\nlinks:\n  - L/1 to R/1\n"), f => f.Links.Count > 0 && f.Place.Line == 14);
        Assert.Equal("M03", finding.Rule.Code);
    }

    private static IReadOnlyList<Finding> Check(string runs) => Checker.Check(TracedPlant.Of(Reading.Plant(Switches + runs)));
}
