using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>P01 to P04 and D02 beyond their examples.</summary>
public sealed class PolarityRuleTests
{
    // Base-8 cassettes wired U1 with some pairs exchanged. Source of the wiring: trade facts 6.1, U1.
    private static readonly DuplexPair[] U1Pairs = [.. PartTables.U1Of8.Select(w => new DuplexPair(w.A, w.B))];

    [Fact]
    public void Ports_that_are_not_used_raise_nothing() => Assert.Equal(
        "",
        new Bench()
            .Add("L", "duplex interface", v => v.Set("ports", 48))
            .Add("R", "duplex interface", v => v.Set("ports", 48))
            .Add("Q", "parallel interface", v => v.Set("ports", 2))
            .Add("X", "harness")
            .Cord("C", "L/48", "A-to-B", "R/1")
            .Mate("Q/2", "X/array")
            .Mate("X/leg1", "L/1").Mate("X/leg2", "L/2").Mate("X/leg3", "R/3").Mate("X/leg4", "R/4")
            .Codes());

    [Fact]
    public void Transmit_meets_transmit_is_found_without_any_link()
    {
        Finding finding = Assert.Single(Pair().Cord("C", "L/1", "A-to-A", "R/1").Check());
        Assert.Equal("P01", finding.Rule.Code);
        Assert.Equal(2, finding.Strands.Count);
        Assert.Empty(finding.Links);
        // The place is then that of the first mating along the strand.
        Assert.Equal(4, finding.Place.Line);
        Assert.Equal([4, 5], finding.Related.Select(p => p.Line));
    }

    [Fact]
    public void A_finding_about_a_linked_port_stands_at_the_link()
    {
        Finding finding = Assert.Single(Pair().Cord("C", "L/1", "A-to-A", "R/1").Link("R/1", "L/1").Check());
        Assert.Equal(6, finding.Place.Line);
        Assert.Equal([0], finding.Links);
    }

    [Fact]
    public void Only_transmitters_that_face_each_other_are_p01_and_only_receivers_p02()
    {
        Finding transmit = Assert.Single(Pair().Cord("S", "L/1:A", "simplex", "R/1:A").Check());
        Assert.Equal("P01", transmit.Rule.Code);
        Assert.DoesNotContain("receivers", transmit.Message);
        Finding receive = Assert.Single(Pair().Cord("S", "L/1:B", "simplex", "R/1:B").Check());
        Assert.Equal("P02", receive.Rule.Code);
    }

    [Fact]
    public void A_single_strand_from_transmit_to_receive_is_right() =>
        Assert.Equal("", Pair().Cord("S", "L/1:A", "simplex", "R/1:B").Codes());

    [Fact]
    public void Transmitters_of_one_port_that_face_two_ports_are_two_findings()
    {
        Bench bench = new Bench()
            .Add("L", "duplex interface").Add("R", "duplex interface", v => v.Set("ports", 2))
            .Cord("S1", "L/1:A", "simplex", "R/1:A")
            .Cord("S2", "L/1:B", "simplex", "R/2:B");
        Assert.Equal("P01 P02", bench.Codes());
    }

    [Fact]
    public void A_dark_transmit_names_the_open_end()
    {
        Finding finding = Assert.Single(new Bench()
            .Add("L", "duplex interface")
            .Add("C", "duplex cord", v => v.Set("type", "A-to-B"))
            .Mate("L/1", "C/near")
            .Check());
        Assert.Equal("P03", finding.Rule.Code);
        Assert.Equal("the transmit of L/1 ends at the open end C/far:A", finding.Message);
        Assert.Single(finding.Strands);
    }

    [Fact]
    public void A_dark_transmit_names_the_open_adapter()
    {
        Finding finding = Assert.Single(new Bench()
            .Add("L", "duplex interface")
            .Add("PANEL", "duplex panel")
            .Add("C", "duplex cord", v => v.Set("type", "A-to-B"))
            .Mate("L/1", "C/near")
            .Open("C/far", "PANEL/7")
            .Check());
        Assert.Equal("the transmit of L/1 ends at the open adapter PANEL/7", finding.Message);
    }

    [Fact]
    public void A_dark_transmit_of_a_link_says_where_it_was_meant_to_go()
    {
        Finding finding = new Bench()
            .Add("L", "duplex interface").Add("R", "duplex interface")
            .Add("C", "duplex cord", v => v.Set("type", "A-to-B"))
            .Mate("L/1", "C/near")
            .Link("R/1", "L/1")
            .Check().Single(f => f.Rule.Code == "P03");
        Assert.Equal("transmit of L/1 on a receive of R/1", finding.Expected);
        Assert.Equal([0], finding.Links);
    }

    [Fact]
    public void Both_ends_of_a_cut_channel_are_dark_each_with_its_own_finding()
    {
        Bench bench = new Bench().Add("L", "duplex interface").Add("R", "duplex interface");
        foreach (string side in (string[])["L", "R"])
            bench.Add("C" + side, "duplex cord", v => v.Set("type", "A-to-B")).Mate(side + "/1", $"C{side}/near");
        Assert.Equal("P03 P03", bench.Codes());
    }

    // Source: trade facts 2.1 and 6.1: positions 5 to 8 of an eight-fibre array carry nothing. 4 sources.
    [Fact]
    public void A_transmit_that_arrives_at_an_unpopulated_array_position_is_dark()
    {
        Bench bench = new Bench()
            .Add("L", "duplex interface", v => v.Set("ports", 6))
            .Add("KL", "cassette", v => v.Set("wiring", "U1"))
            .Add("T", "trunk", v => v.Set("type", "Type-B"))
            .Add("KR", "cassette", v => v.Set("wiring", "U1").Set("base", 8))
            .Add("R", "duplex interface", v => v.Set("ports", 4))
            .Mate("KL/rear", "T/near")
            .Mate("T/far", "KR/rear");
        for (int port = 1; port <= 6; port++)
            bench.Cord($"CL{port}", $"L/{port}", "A-to-B", $"KL/{port}");
        for (int port = 1; port <= 4; port++)
            bench.Cord($"CR{port}", $"KR/{port}", "A-to-B", $"R/{port}").Link($"L/{port}", $"R/{port}");
        IReadOnlyList<Finding> findings = bench.Check();
        Assert.Equal(["P03", "P03"], findings.Select(f => f.Rule.Code));
        // U1 has port 5 on 5 and 8; cassette B is lit, so 8, which Type-B leads to 5 (trade facts 2.1 and 3.1).
        Assert.Contains("KR/rear:5, a place without a fibre", findings.Single(f => f.Message.Contains("L/5")).Message);
        Assert.Contains("KR/rear:6, a place without a fibre", findings.Single(f => f.Message.Contains("L/6")).Message);
    }

    [Fact]
    public void A_dark_parallel_port_is_one_finding_with_a_strand_for_each_lane()
    {
        Finding finding = Assert.Single(new Bench()
            .Add("Q", "parallel interface")
            .Add("X", "array cord", v => v.Set("type", "Type-B").Set("base", 8))
            .Mate("Q/1", "X/near")
            .Check());
        Assert.Equal("P03", finding.Rule.Code);
        Assert.Equal(4, finding.Strands.Count);
    }

    [Fact]
    public void A_strand_back_to_its_own_port_is_p04_and_one_to_another_port_of_the_interface_is_not()
    {
        Assert.Equal("P04", new Bench().Add("L", "duplex interface").Cord("S", "L/1:A", "simplex", "L/1:B").Codes());
        Assert.Equal("", new Bench().Add("L", "duplex interface", v => v.Set("ports", 2)).Cord("C", "L/1", "A-to-B", "L/2").Codes());
    }

    // Source: the rule's own words: one pair at fault while its neighbours are right. U1 pairs: trade facts 6.1.
    [Theory]
    [InlineData(1, "D02")]
    [InlineData(2, "D02 D02")]
    [InlineData(3, "P01 P01 P01")]
    [InlineData(4, "P01 P01 P01 P01")]
    public void Crossed_pairs_are_named_so_only_while_as_many_neighbours_are_right(int crossed, string codes) =>
        Assert.Equal(codes, CrossedChannel([.. Enumerable.Range(0, crossed)], links: 4).Codes());

    [Fact]
    public void A_crossed_pair_without_a_neighbour_to_compare_with_is_p01() =>
        Assert.Equal("P01", CrossedChannel([0], links: 1, used: 1).Codes());

    [Fact]
    public void A_crossed_pair_without_a_link_is_p01() =>
        Assert.Equal("P01", CrossedChannel([2], links: 0).Codes());

    [Fact]
    public void A_crossed_pair_names_its_link_and_its_two_strands()
    {
        Finding finding = Assert.Single(CrossedChannel([2], links: 4).Check());
        Assert.Equal([2], finding.Links);
        Assert.Equal(2, finding.Strands.Count);
        Assert.Contains("L/3", finding.Message);
    }

    [Fact]
    public void One_cord_of_the_wrong_type_among_right_ones_is_a_crossed_pair()
    {
        Bench bench = new Bench()
            .Add("L", "duplex interface", v => v.Set("ports", 4)).Add("R", "duplex interface", v => v.Set("ports", 4))
            .Add("KL", "cassette", v => v.Set("wiring", "straight").Set("base", 8))
            .Add("T", "trunk", v => v.Set("type", "Type-C").Set("base", 8))
            .Add("KR", "cassette", v => v.Set("wiring", "straight").Set("base", 8))
            .Mate("KL/rear", "T/near").Mate("T/far", "KR/rear");
        for (int port = 1; port <= 4; port++)
        {
            bench.Cord($"CL{port}", $"L/{port}", "A-to-B", $"KL/{port}")
                .Cord($"CR{port}", $"KR/{port}", port == 3 ? "A-to-A" : "A-to-B", $"R/{port}");
        }

        Finding finding = Assert.Single(Channels.Links(bench, 4).Check());
        Assert.Equal("D02", finding.Rule.Code);
        Assert.Equal([2], finding.Links);
    }

    // Without an array there is no common way on which neighbours could prove the method.
    [Fact]
    public void A_wrong_cord_between_two_interfaces_is_p01_whatever_lies_beside_it()
    {
        Bench bench = new Bench().Add("L", "duplex interface", v => v.Set("ports", 3)).Add("R", "duplex interface", v => v.Set("ports", 3));
        for (int port = 1; port <= 3; port++)
            bench.Cord($"C{port}", $"L/{port}", port == 2 ? "A-to-A" : "A-to-B", $"R/{port}");
        Assert.Equal("P01", Channels.Links(bench, 3).Codes());
    }

    private static Bench Pair() => new Bench().Add("L", "duplex interface").Add("R", "duplex interface");

    private static Bench CrossedChannel(int[] crossed, int links, int used = 4)
    {
        DuplexPair[] right = [.. U1Pairs.Select((p, i) => crossed.Contains(i) ? new DuplexPair(p.B, p.A) : p)];
        Bench bench = new Bench()
            .Add("L", "duplex interface", v => v.Set("ports", 4)).Add("R", "duplex interface", v => v.Set("ports", 4))
            .Add("KL", "cassette", v => v.Set("wiring", U1Pairs).Set("base", 8))
            .Add("T", "trunk", v => v.Set("type", "Type-B").Set("base", 8))
            .Add("KR", "cassette", v => v.Set("wiring", right).Set("base", 8))
            .Mate("KL/rear", "T/near").Mate("T/far", "KR/rear");
        for (int port = 1; port <= used; port++)
            bench.Cord($"CL{port}", $"L/{port}", "A-to-B", $"KL/{port}").Cord($"CR{port}", $"KR/{port}", "A-to-B", $"R/{port}");
        return Channels.Links(bench, links);
    }
}
