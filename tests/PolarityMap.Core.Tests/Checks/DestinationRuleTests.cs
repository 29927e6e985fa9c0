using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using Xunit;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>D01 and D03 to D06 beyond their examples.</summary>
public sealed class DestinationRuleTests
{
    [Fact]
    public void A_link_may_be_written_from_either_end()
    {
        Assert.Equal("", Direct([1, 2, 3]).Link("R/1", "L/1").Link("L/2", "R/2").Link("R/3", "L/3").Codes());
        Finding finding = Assert.Single(Direct([1, 2]).Link("R/1", "L/2").Check());
        Assert.Equal("D01", finding.Rule.Code);
        Assert.Contains("the link from L/2 comes out at R/2, not at R/1", finding.Message);
    }

    [Fact]
    public void Without_links_no_destination_is_wrong() => Assert.Equal("", Direct([3, 1, 2]).Codes());

    [Fact]
    public void Strands_of_one_link_that_come_out_at_two_ports_are_a_wrong_far_port()
    {
        Finding finding = Assert.Single(new Bench()
            .Add("L", "duplex interface").Add("R", "duplex interface", v => v.Set("ports", 2))
            .Cord("S1", "L/1:A", "simplex", "R/1:B")
            .Cord("S2", "L/1:B", "simplex", "R/2:A")
            .Link("L/1", "R/1")
            .Check());
        Assert.Equal("D01", finding.Rule.Code);
        Assert.Contains("R/1 and R/2", finding.Message);
    }

    [Fact]
    public void Two_links_at_each_others_ports_are_one_finding_and_three_in_a_ring_are_three()
    {
        Finding transposed = Assert.Single(Linked(Direct([1, 3, 2, 4]), 4).Check());
        Assert.Equal("D03", transposed.Rule.Code);
        Assert.Equal([1, 2], transposed.Links);
        Assert.Equal("D01 D01 D01", Linked(Direct([2, 3, 1]), 3).Codes());
    }

    [Fact]
    public void A_cord_in_a_port_that_no_link_wants_is_a_wrong_far_port_and_nothing_else() =>
        Assert.Equal("D01", Linked(Direct([1, 3], ports: 3), 2).Codes());

    // Source: trade facts 3.3, method B with the same cassette at both ends: port order reversed, every lamp lit. Proved.
    // Two links in reversed order are two transposed pairs.
    [Fact]
    public void Two_links_in_reversed_order_are_transposed() => Assert.Equal("D03", Reversed([1, 6]).Codes());

    // Source: as above.
    [Fact]
    public void Four_of_six_links_in_reversed_order_are_reversed_order()
    {
        Finding finding = Assert.Single(Reversed([1, 2, 5, 6]).Check());
        Assert.Equal("D04", finding.Rule.Code);
        Assert.Equal([0, 1, 2, 3], finding.Links);
    }

    // Source: as above; the order is that of the ports, however the document lists its links.
    [Theory]
    [InlineData(new[] { 1, 2, 3, 4, 5, 6 })]
    [InlineData(new[] { 6, 5, 4, 3, 2, 1 })]
    [InlineData(new[] { 2, 1, 3, 4, 5, 6 })]
    public void Reversed_order_is_found_in_whichever_order_the_links_are_listed(int[] linked) => Assert.Equal("D04", Reversed(linked).Codes());

    // Source: as above; a transition of three ports has one in the middle that reversing leaves in place (trade facts 2.1, 2.3).
    [Fact]
    public void The_middle_link_of_an_odd_number_in_reversed_order_may_be_right()
    {
        DuplexPair[] pairs = [new(1, 2), new(6, 7), new(11, 12)];
        Bench bench = Between(v => v.Set("wiring", pairs).Set("keys", "aligned"), 3);
        Finding finding = Assert.Single(Linked(bench, 3).Check());
        Assert.Equal("D04", finding.Rule.Code);
        Assert.Equal([0, 1, 2], finding.Links);
    }

    [Fact]
    public void Links_that_land_where_no_link_is_wanted_are_not_reversed_order() =>
        Assert.Equal("D01 D01 D01", Reversed([1, 2, 3]).Codes());

    [Fact]
    public void Two_legs_exchanged_are_one_finding_for_the_leg_and_not_for_its_pairs()
    {
        Finding finding = Assert.Single(TwoLegs(rightCassettes: [2, 1], rightPorts: [1, 2, 3, 4, 5, 6, 7, 8]).Check());
        Assert.Equal("D05", finding.Rule.Code);
        Assert.Equal(8, finding.Links.Count);
        Assert.StartsWith("legs 1 and 2 of T have changed places", finding.Message);
    }

    [Fact]
    public void Two_pairs_exchanged_across_two_legs_are_transposed_pairs()
    {
        Finding finding = Assert.Single(TwoLegs(rightCassettes: [1, 2], rightPorts: [1, 2, 3, 5, 4, 6, 7, 8]).Check());
        Assert.Equal("D03", finding.Rule.Code);
        Assert.Equal([3, 4], finding.Links);
    }

    [Fact]
    public void Two_pairs_exchanged_within_a_leg_are_transposed_pairs()
    {
        Finding finding = Assert.Single(TwoLegs(rightCassettes: [1, 2], rightPorts: [2, 1, 3, 4, 5, 6, 7, 8]).Check());
        Assert.Equal("D03", finding.Rule.Code);
        Assert.Equal([0, 1], finding.Links);
    }

    [Fact]
    public void Links_in_reversed_order_within_their_leg_are_reversed_order_and_no_wrong_leg()
    {
        Finding finding = Assert.Single(TwoLegs(rightCassettes: [1, 2], rightPorts: [4, 3, 2, 1, 5, 6, 7, 8]).Check());
        Assert.Equal("D04", finding.Rule.Code);
        Assert.Equal([0, 1, 2, 3], finding.Links);
    }

    [Fact]
    public void Two_legs_exchanged_are_found_when_the_links_are_written_from_the_right()
    {
        Bench bench = TwoLegs(rightCassettes: [2, 1], rightPorts: [1, 2, 3, 4, 5, 6, 7, 8], links: false);
        for (int port = 1; port <= 8; port++)
            bench.Link($"R/{port}", $"L/{port}");
        Assert.Equal("D05", bench.Codes());
    }

    [Fact]
    public void Three_legs_moved_round_are_a_finding_for_each_leg()
    {
        Bench bench = new Bench()
            .Add("QL", "parallel interface", v => v.Set("ports", 3)).Add("QR", "parallel interface", v => v.Set("ports", 3))
            .Add("T", "trunk", v => v.Set("type", "Type-B").Set("legs", 3).Set("base", 8));
        for (int leg = 1; leg <= 3; leg++)
            bench.Mate($"QL/{leg}", $"T/near{leg}").Mate($"T/far{leg}", $"QR/{(leg % 3) + 1}").Link($"QL/{leg}", $"QR/{leg}");
        IReadOnlyList<Finding> findings = bench.Check();
        Assert.Equal(["D05", "D05", "D05"], findings.Select(f => f.Rule.Code));
        Assert.StartsWith("leg 1 of T comes out where leg 2 should", findings[0].Message);
    }

    [Fact]
    public void Two_networks_joined_are_found_without_links()
    {
        Finding finding = Assert.Single(Networks(left: 0, right: 1).Check());
        Assert.Equal("D06", finding.Rule.Code);
        Assert.Equal(2, finding.Strands.Count);
        Assert.Contains("of network lighting is joined to R/1 of network sound", finding.Message);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(-1, 1)]
    [InlineData(0, -1)]
    [InlineData(-1, -1)]
    public void One_network_or_an_interface_without_a_network_is_no_bridge(int left, int right) =>
        Assert.Equal("", Networks(left, right).Codes());

    [Fact]
    public void A_link_that_comes_out_in_another_network_is_told_once_as_such()
    {
        Bench bench = new Bench();
        bench.Network("lighting");
        bench.Network("sound");
        bench.Add("SW", "duplex interface", network: 0).Add("DESK", "duplex interface", network: 0).Add("MIXER", "duplex interface", network: 1)
            .Cord("C", "SW/1", "A-to-B", "MIXER/1")
            .Link("SW/1", "DESK/1");
        // That nothing is plugged into the desk follows from it; that no run comes to the desk is told.
        Assert.Equal("D06 W02", bench.Codes());
        Finding finding = bench.Check().Single(f => f.Rule.Code == "D06");
        Assert.Equal([0], finding.Links);
        Assert.Equal("SW/1 at DESK/1", finding.Expected);
    }

    // Source: trade facts 4.2: leg k of the harness is lane k. Derived and proved.
    [Fact]
    public void A_parallel_port_split_into_lanes_reaches_a_duplex_port_with_each_lane()
    {
        Assert.Equal("", Breakout([1, 2, 3, 4], fromLanes: true).Codes());
        Assert.Equal("", Breakout([1, 2, 3, 4], fromLanes: false).Codes());
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Two_legs_of_a_harness_exchanged_are_wrong_legs(bool fromLanes)
    {
        Finding finding = Assert.Single(Breakout([1, 3, 2, 4], fromLanes).Check());
        Assert.Equal("D05", finding.Rule.Code);
        Assert.Equal([1, 2], finding.Links);
        Assert.StartsWith("legs 2 and 3 of H have changed places", finding.Message);
    }

    [Fact]
    public void A_link_of_whole_ports_does_not_ask_for_the_order_of_lanes()
    {
        // Lane 1 of the left port on lane 2 of the right one, by way of two harnesses leg to leg.
        Assert.Equal("", LegToLeg([2, 1, 3, 4]).Link("QL/1", "QR/1").Codes());
    }

    [Fact]
    public void Links_of_lanes_do_ask_for_the_order_of_lanes()
    {
        Bench bench = LegToLeg([2, 1, 3, 4]);
        for (int lane = 1; lane <= 4; lane++)
            bench.Link($"QL/1:{lane}", $"QR/1:{lane}");
        Finding finding = Assert.Single(bench.Check());
        Assert.Equal("P05", finding.Rule.Code);
        Assert.Equal([0, 1], finding.Links);
    }

    /// <summary>Port k of the left interface in port <c>far[k - 1]</c> of the right one.</summary>
    private static Bench Direct(int[] far, int ports = 0)
    {
        Bench bench = new Bench()
            .Add("L", "duplex interface", v => v.Set("ports", Math.Max(far.Length, ports)))
            .Add("R", "duplex interface", v => v.Set("ports", Math.Max(far.Length, ports)));
        for (int port = 1; port <= far.Length; port++)
            bench.Cord($"C{port}", $"L/{port}", "A-to-B", $"R/{far[port - 1]}");
        return bench;
    }

    private static Bench Linked(Bench bench, int links) => Channels.Links(bench, links);

    /// <summary>Method B with the same straight cassette at both ends, and links for some of its six ports.</summary>
    private static Bench Reversed(int[] linked)
    {
        Bench bench = Between(v => v.Set("wiring", "straight").Set("keys", "aligned"), 6);
        foreach (int port in linked)
            bench.Link($"L/{port}", $"R/{port}");
        return bench;
    }

    /// <summary>The same cassette at both ends of a Type-B trunk, A-to-B cords throughout.</summary>
    private static Bench Between(Action<AttributeValues> cassette, int ports)
    {
        Bench bench = new Bench()
            .Add("L", "duplex interface", v => v.Set("ports", ports)).Add("R", "duplex interface", v => v.Set("ports", ports))
            .Add("KL", "cassette", cassette)
            .Add("T", "trunk", v => v.Set("type", "Type-B"))
            .Add("KR", "cassette", cassette)
            .Mate("KL/rear", "T/near").Mate("T/far", "KR/rear");
        for (int port = 1; port <= ports; port++)
            bench.Cord($"CL{port}", $"L/{port}", "A-to-B", $"KL/{port}").Cord($"CR{port}", $"KR/{port}", "A-to-B", $"R/{port}");
        return bench;
    }

    /// <summary>Eight links over a trunk of two legs; leg n goes to a right cassette, and cassette port p to a right interface port.</summary>
    private static Bench TwoLegs(int[] rightCassettes, int[] rightPorts, bool links = true)
    {
        Bench bench = new Bench()
            .Add("L", "duplex interface", v => v.Set("ports", 8)).Add("R", "duplex interface", v => v.Set("ports", 8))
            .Add("T", "trunk", v => v.Set("type", "Type-B").Set("base", 8).Set("legs", 2));
        for (int n = 1; n <= 2; n++)
        {
            bench.Add($"KL{n}", "cassette", v => v.Set("wiring", "U1").Set("base", 8))
                .Add($"KR{n}", "cassette", v => v.Set("wiring", "U1").Set("base", 8));
        }

        for (int n = 1; n <= 2; n++)
            bench.Mate($"KL{n}/rear", $"T/near{n}").Mate($"T/far{n}", $"KR{rightCassettes[n - 1]}/rear");
        for (int port = 0; port < 8; port++)
        {
            string cassettePort = $"{(port / 4) + 1}/{(port % 4) + 1}";
            bench.Cord($"CL{port}", $"L/{port + 1}", "A-to-B", "KL" + cassettePort)
                .Cord($"CR{port}", "KR" + cassettePort, "A-to-B", $"R/{rightPorts[port]}");
        }

        return links ? Channels.Links(bench, 8) : bench;
    }

    private static Bench Networks(int left, int right)
    {
        var bench = new Bench();
        bench.Network("lighting");
        bench.Network("sound");
        return bench.Add("L", "duplex interface", network: left).Add("R", "duplex interface", network: right).Cord("C", "L/1", "A-to-B", "R/1");
    }

    /// <summary>A harness in a four-lane port, leg k in duplex port <c>far[k - 1]</c>; lane k is meant for port k.</summary>
    private static Bench Breakout(int[] far, bool fromLanes)
    {
        Bench bench = new Bench()
            .Add("Q", "parallel interface").Add("S", "duplex interface", v => v.Set("ports", 4)).Add("H", "harness")
            .Mate("Q/1", "H/array");
        for (int leg = 1; leg <= 4; leg++)
        {
            bench.Mate($"H/leg{leg}", $"S/{far[leg - 1]}");
            if (fromLanes)
                bench.Link($"Q/1:{leg}", $"S/{leg}");
            else
                bench.Link($"S/{leg}", $"Q/1:{leg}");
        }

        return bench;
    }

    /// <summary>Two four-lane ports with a harness each, left leg k joined to right leg <c>far[k - 1]</c> by an A-to-B cord.</summary>
    private static Bench LegToLeg(int[] far)
    {
        Bench bench = new Bench()
            .Add("QL", "parallel interface").Add("QR", "parallel interface").Add("HL", "harness").Add("HR", "harness")
            .Mate("QL/1", "HL/array").Mate("QR/1", "HR/array");
        for (int leg = 1; leg <= 4; leg++)
            bench.Cord($"C{leg}", $"HL/leg{leg}", "A-to-B", $"HR/leg{far[leg - 1]}");
        return bench;
    }
}
