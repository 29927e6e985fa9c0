using Xunit;

namespace PolarityMap.Cli.Tests.Commands;

/// <summary>What a sheet says of boxes that are small, and what it refuses when too much is chosen.</summary>
public sealed class DrawLimitTests
{
    [Fact]
    public void A_small_box_with_two_ports_names_both()
    {
        using var bench = new Workbench().With("plant.yaml", """
            plant: Two ports in one small box
            parts:
              SW-L: { kind: duplex interface, ports: 8 }
              SW-R: { kind: duplex interface, ports: 8 }
            runs:
              - SW-L/[3,7]:A, simplex cord 2 m, SW-R/[4,8]:B
            """);
        Assert.Equal(0, bench.Run("draw", "plant.yaml", "--without-font", "-o", "out.svg").Status);
        string svg = bench.Read("out.svg");
        Assert.All(["3", "7", "4", "8"], port => Assert.Contains($">{port}</text>", svg, StringComparison.Ordinal));
        Assert.DoesNotContain(">SW-L/3</text>", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void A_small_box_of_one_port_names_it_by_its_address()
    {
        using var bench = new Workbench().With("plant.yaml", Straight(8, "SW-L/5, A-to-B cord 2 m, SW-R/6"));
        Assert.Equal(0, bench.Run("draw", "plant.yaml", "--without-font", "-o", "out.svg").Status);
        Assert.Contains(">SW-L/5</text>", bench.Read("out.svg"), StringComparison.Ordinal);
        Assert.Contains(">SW-R/6</text>", bench.Read("out.svg"), StringComparison.Ordinal);
    }

    [Fact]
    public void More_strands_than_a_sheet_takes_are_refused_with_what_to_choose()
    {
        using var bench = new Workbench().With("plant.yaml", Straight(1600, "SW-L/1..1600, A-to-B cord 2 m, SW-R/1..1600"));
        Outcome outcome = bench.Run("draw", "plant.yaml", "-o", "out.svg");
        Assert.Equal(2, outcome.Status);
        Assert.Contains("3200 strands are too many for one sheet, which takes 3000; name a folder or a .pdf for a set of sheets, or choose some with --network or --part", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(["plant.yaml"], bench.Files());
    }

    [Fact]
    public void Hundreds_of_links_in_reversed_order_are_drawn()
    {
        using var bench = new Workbench().With("plant.yaml", Straight(200, "SW-L/1..200, A-to-B cord 2 m, SW-R/200..1"));
        Assert.Equal(0, bench.Run("draw", "plant.yaml", "--without-font", "-o", "out.svg").Status);
        Assert.Contains("id=\"strand-400\"", bench.Read("out.svg"), StringComparison.Ordinal);
    }

    private static string Straight(int ports, string run) => $"""
        plant: Straight from one to the other
        parts:
          SW-L: [ kind: duplex interface, ports: {ports} ]
          SW-R: [ kind: duplex interface, ports: {ports} ]
        runs:
          - {run}
        """.Replace('[', '{').Replace(']', '}');
}
