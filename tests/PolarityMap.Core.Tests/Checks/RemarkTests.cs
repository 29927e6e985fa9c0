using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>What is worth knowing and no fault.</summary>
public sealed class RemarkTests
{
    // Source: trade facts 6.3: a twelve-fibre trunk behind one four-lane port leaves four fibres unused (3 sources), 5 to 8 (4 sources).
    [Fact]
    public void Fibres_that_no_lane_lights_are_told_with_their_positions()
    {
        string[] texts = Texts(Channels.Parallel(["Type-B"], []));
        Assert.Equal($"X1: {TradeFacts.UnusedOfTwelveBehindFourLanes} of 12 fibres unused, at 5-8", Assert.Single(texts));
    }

    [Fact]
    public void A_cable_whose_fibres_are_all_lit_is_not_remarked_on() =>
        Assert.Empty(Texts(Direct(v => v.Set("type", "Type-B").Set("base", 8))));

    [Fact]
    public void A_cable_that_nothing_lights_is_left_to_the_rules() =>
        Assert.Empty(Texts(new Bench().Add("T", "trunk", v => v.Set("type", "Type-B"))));

    [Fact]
    public void Fibres_that_a_wiring_of_its_own_leaves_out_lead_nowhere()
    {
        DuplexPair[] three = [new(1, 12), new(2, 11), new(3, 10), new(12, 1), new(11, 2), new(10, 3)];
        Assert.Equal(["X: 2 of 8 fibres lead nowhere, at 4, 9"], Texts(Direct(v => v.Set("wiring", three).Set("base", 8))));
    }

    [Fact]
    public void Legs_left_over_on_purpose_are_not_told()
    {
        Bench bench = new Bench()
            .Add("QL", "parallel interface").Add("QR", "parallel interface")
            .Add("T", "trunk", v => v.Set("type", "Type-B").Set("base", 8).Set("legs", 2), -1, 2)
            .Mate("QL/1", "T/near1").Mate("T/far1", "QR/1");
        Assert.Empty(Texts(bench));
    }

    // Source: trade facts 3.2, rule 3, and 4.1: with an odd count of reversals and one pair flip each lane lands on another one.
    [Fact]
    public void Lanes_of_one_link_in_another_order_are_a_remark_and_lanes_that_are_links_a_finding()
    {
        string[] cables = ["Type-A", "Type-C", "Type-B"];
        string[] adapters = ["Type-A", "Type-A"];
        Assert.Contains(Texts(Channels.Parallel(cables, adapters)), t => t.Contains("in another order", StringComparison.Ordinal) && t.Contains("QL/1", StringComparison.Ordinal));
        Bench byLane = Channels.Parallel(cables, adapters, byLane: true);
        Assert.DoesNotContain(Texts(byLane), t => t.Contains("in another order", StringComparison.Ordinal));
        Assert.Equal("P05", byLane.Codes());
        Assert.DoesNotContain(Texts(Channels.Parallel(["Type-B"], [])), t => t.Contains("in another order", StringComparison.Ordinal));
    }

    private static Bench Direct(Action<AttributeValues> set) => new Bench()
        .Add("QL", "parallel interface").Add("QR", "parallel interface").Add("X", "array cord", set)
        .Mate("QL/1", "X/near").Mate("X/far", "QR/1").Link("QL/1", "QR/1");

    private static string[] Texts(Bench bench) => [.. Remark.Of(new CheckContext(bench.Trace())).Select(r => r.Text)];
}
