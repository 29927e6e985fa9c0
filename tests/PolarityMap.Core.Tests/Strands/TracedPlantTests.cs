using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Core.Tests.Strands;

public sealed class TracedPlantTests
{
    [Fact]
    public void Active_strands_are_numbered_first_and_in_the_order_of_mention()
    {
        // The second port is mentioned first by no run; the order is that of the interface's positions.
        TracedPlant traced = new Bench()
            .Add("SPARE", "duplex cord", v => v.Set("type", "A-to-B"))
            .Add("L", "duplex interface", v => v.Set("ports", 2))
            .Add("R", "duplex interface", v => v.Set("ports", 2))
            .Cord("C2", "L/2", "A-to-B", "R/2")
            .Cord("C1", "L/1", "A-to-B", "R/1")
            .Trace();
        Assert.Equal(["L", "C2", "R", "C1", "SPARE"], traced.Plant.Parts.Select(p => p.Name));
        Assert.Equal([1, 2, 3, 4], ((string[])["L/1:A", "L/1:B", "L/2:A", "L/2:B"]).Select(a => traced.NumberOf(traced.StrandOf(traced.Position(a)))));
        Assert.Equal([5, 6], ((string[])["SPARE/near:A", "SPARE/near:B"]).Select(a => traced.NumberOf(traced.StrandOf(traced.Position(a)))).Order());
    }

    [Fact]
    public void Every_strand_has_a_number_of_its_own_from_1()
    {
        TracedPlant traced = Channels.Method("U1", 8).Trace();
        Assert.Equal(Enumerable.Range(1, traced.Strands.Count), Enumerable.Range(0, traced.Strands.Count).Select(traced.NumberOf).Order());
    }

    [Fact]
    public void An_unplugged_port_is_not_active()
    {
        TracedPlant traced = new Bench().Add("L", "duplex interface").Trace();
        Assert.False(traced.IsActive(traced.StrandOf(traced.Position("L/1:A"))));
    }

    [Fact]
    public void Hops_visit_the_parts_from_end_to_end()
    {
        TracedPlant traced = Channels.Method("B").Trace();
        IReadOnlyList<Hop> hops = traced.Hops(traced.StrandOf(traced.Position("L/1:A")));
        Assert.Equal(["L", "C1-1", "KL1", "T1", "KR1", "C2-1", "R"], hops.Select(h => traced.Plant.Parts[h.Part].Name));
        Assert.Equal((-1, -1), (hops[0].In, hops[^1].Out));
        Assert.All(hops.Skip(1).SkipLast(1), h => Assert.Equal(h.Out, traced.Graph.Inside[h.In]));
    }

    [Fact]
    public void A_mating_is_found_at_every_position_that_it_joins()
    {
        TracedPlant traced = new Bench()
            .Add("L", "duplex interface")
            .Add("R", "duplex interface")
            .Cord("S", "L/1:B", "simplex", "R/1:A")
            .Trace();
        Assert.Same(traced.Plant.Matings[0], traced.MatingAt(traced.Position("L/1:B")));
        Assert.Same(traced.Plant.Matings[0], traced.MatingAt(traced.Position("S/near")));
        Assert.Same(traced.Plant.Matings[1], traced.MatingAt(traced.Position("S/far")));
        Assert.Same(traced.Plant.Matings[1], traced.MatingAt(traced.Position("R/1:A")));
        Assert.Null(traced.MatingAt(traced.Position("L/1:A")));
    }

    [Fact]
    public void The_line_of_hops_names_ends_parts_and_positions()
    {
        TracedPlant traced = Channels.Method("U2").Trace();
        Assert.Equal(
            "L/1:A (transmit) → C1-1 B→A → KL1 1:B→rear:1 → T1 12→1 → KR1 rear:12→1:A → C2-1 B→A → R/1:B (receive)",
            HopLine.Of(traced, traced.StrandOf(traced.Position("L/1:A"))));
    }

    [Fact]
    public void An_end_without_an_interface_is_said_to_be_open_or_without_a_fibre()
    {
        TracedPlant open = new Bench().Add("L", "duplex interface").Add("C", "duplex cord", v => v.Set("type", "A-to-B")).Mate("L/1", "C/near").Trace();
        Assert.Equal("open end", HopLine.EndWord(open, open.Position("C/far:A")));
        TracedPlant dark = DarkMiddle();
        Assert.Equal("no fibre here", HopLine.EndWord(dark, dark.Position("K/rear:5")));
        // Opposed keys lead rear 5 to near 5, and Type-B on to far 8 (trade facts 2.1 and 2.3).
        Assert.Equal("X/far:8", dark.Meets("K/rear:5"));
    }

    [Fact]
    public void The_line_of_hops_says_that_an_end_is_open()
    {
        TracedPlant open = new Bench().Add("L", "duplex interface").Add("C", "duplex cord", v => v.Set("type", "A-to-B")).Mate("L/1", "C/near").Trace();
        Assert.Contains("open end", HopLine.Of(open, open.StrandOf(open.Position("L/1:A"))));
    }

    [Fact]
    public void The_line_of_hops_says_that_a_place_has_no_fibre()
    {
        TracedPlant dark = new Bench()
            .Add("L", "duplex interface")
            .Add("K", "cassette", v => v.Set("wiring", "U1"))
            .Cord("C", "L/1", "A-to-B", "K/6")
            .Add("X", "array cord", v => v.Set("type", "Type-B").Set("base", 8))
            .Mate("K/rear", "X/near")
            .Trace();
        // U1 has port 6 on 6 and 7, and its B is lit (trade facts 2.5 and 3.1).
        Assert.EndsWith("K 6:B→rear:7 → X/near:7 (no fibre here)", HopLine.Of(dark, dark.StrandOf(dark.Position("L/1:A"))));
    }

    [Fact]
    public void Loops_come_last_and_say_so()
    {
        TracedPlant traced = new Bench()
            .Add("L", "duplex interface")
            .Add("C", "duplex cord", v => v.Set("type", "A-to-B"))
            .Mate("C/near", "C/far")
            .Trace();
        Assert.Equal((4, 2), (traced.Strands.Count, traced.Strands.OpenCount));
        Assert.True(traced.Strands.IsLoop(traced.StrandOf(traced.Position("C/near:A"))));
        Assert.False(traced.Strands.IsLoop(traced.StrandOf(traced.Position("L/1:A"))));
        Assert.Single(traced.Hops(3));
    }

    [Fact]
    public void A_plant_without_parts_has_no_strand()
    {
        TracedPlant traced = new Bench().Trace();
        Assert.Equal((0, 0), (traced.Strands.Count, traced.Graph.PositionCount));
    }

    private static TracedPlant DarkMiddle() => new Bench()
        .Add("K", "cassette", v => v.Set("wiring", "U1").Set("base", 8))
        .Add("X", "array cord", v => v.Set("type", "Type-B"))
        .Mate("K/rear", "X/near")
        .Trace();
}
