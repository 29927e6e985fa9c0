using Xunit;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>A link joins two ends and has no direction: a fault has the same name when some links are written from the other side.</summary>
public sealed class LinkDirectionTests
{
    [Fact]
    public void Right_links_are_right_from_either_side() => Assert.Equal("", Alternating(Method("U1"), 4).Codes());

    [Fact]
    public void Two_transposed_links_may_be_written_from_different_sides()
    {
        Bench bench = new Bench()
            .Add("L", "duplex interface", v => v.Set("ports", 2)).Add("R", "duplex interface", v => v.Set("ports", 2))
            .Cord("C1", "L/1", "A-to-B", "R/2").Cord("C2", "L/2", "A-to-B", "R/1");
        Assert.Equal("D03", Alternating(bench, 2).Codes());
    }

    // Source: trade facts 3.3, method B with the same cassette at both ends. Proved.
    [Fact]
    public void Links_in_reversed_order_may_be_written_from_different_sides() =>
        Assert.Equal("D04", Alternating(Channels.Series(["A-to-B", "A-to-B"], [new LinkParts("straight", "Type-B", "Type-B", "Type-B", "straight")], 8), 4).Codes());

    [Fact]
    public void Links_on_exchanged_legs_may_be_written_from_different_sides()
    {
        Bench bench = new Bench()
            .Add("L", "parallel interface", v => v.Set("ports", 2)).Add("R", "parallel interface", v => v.Set("ports", 2))
            .Add("T", "trunk", v => v.Set("type", "Type-B").Set("legs", 2))
            .Mate("L/1", "T/near1").Mate("T/far1", "R/2").Mate("L/2", "T/near2").Mate("T/far2", "R/1");
        Assert.Equal("D05", Alternating(bench, 2).Codes());
    }

    [Fact]
    public void A_crossed_pair_may_be_written_from_the_side_its_neighbours_are_not()
    {
        Bench bench = Method("U1", wrongRightCord: 2);
        Assert.Equal("D02", bench.Link("L/1", "R/1").Link("R/2", "L/2").Link("L/3", "R/3").Link("L/4", "R/4").Codes());
    }

    /// <summary>Odd ports linked from the left, even ones from the right.</summary>
    private static Bench Alternating(Bench bench, int ports)
    {
        for (int port = 1; port <= ports; port++)
            bench.Link(port % 2 == 1 ? $"L/{port}" : $"R/{port}", port % 2 == 1 ? $"R/{port}" : $"L/{port}");
        return bench;
    }

    /// <summary>The same cassette on both sides of a Type-B trunk, four ports, one right cord of the wrong type where asked for.</summary>
    private static Bench Method(string wiring, int wrongRightCord = 0)
    {
        Bench bench = new Bench()
            .Add("L", "duplex interface", v => v.Set("ports", 4)).Add("R", "duplex interface", v => v.Set("ports", 4))
            .Add("KL", "cassette", v => v.Set("wiring", wiring).Set("base", 8))
            .Add("T", "trunk", v => v.Set("type", "Type-B").Set("base", 8))
            .Add("KR", "cassette", v => v.Set("wiring", wiring).Set("base", 8))
            .Mate("KL/rear", "T/near").Mate("T/far", "KR/rear");
        for (int port = 1; port <= 4; port++)
        {
            bench.Cord($"CL{port}", $"L/{port}", "A-to-B", $"KL/{port}")
                .Cord($"CR{port}", $"KR/{port}", port == wrongRightCord ? "A-to-A" : "A-to-B", $"R/{port}");
        }

        return bench;
    }
}
