using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Strands;

/// <summary>Every breakout end to end: port, harness and far ports, each link to its own far port.</summary>
public sealed class BreakoutChannelTests
{
    public static TheoryData<string, string> All
    {
        get
        {
            var all = new TheoryData<string, string>();
            foreach (Breakout breakout in Breakouts.All)
                all.Add(breakout.From, breakout.Name);
            return all;
        }
    }

    // Source: interface facts 3, tables of legs: port Tx k to the far receiver of leg k, the far transmitter to Rx N+1-k, and
    // sixteen to two plugs lane k of each half to lane k of its far port. Derived; order of legs and halves common practice.
    [Theory]
    [MemberData(nameof(All))]
    public void Every_lane_reaches_its_own_far_port_transmit_on_receive(string from, string mode)
    {
        Breakout breakout = Breakouts.Find(from, mode)!;
        foreach (bool backwards in (bool[])[false, true])
        {
            TracedPlant traced = Channel(breakout, [.. Enumerable.Range(1, breakout.Groups)], reversed: true).Write(backwards).Trace();
            IReadOnlyList<LaneRow> lanes = breakout.LanesPerGroup * breakout.Groups == 4 ? PartTables.FourLanes : PartTables.EightLanes;
            foreach (LaneRow lane in lanes)
            {
                int link = ((lane.Lane - 1) / breakout.LanesPerGroup) + 1;
                LaneRow far = PartTables.FourLanes[(lane.Lane - 1) % 4];
                Assert.Equal(mode == "2x" ? $"F/{link}:{far.ReceptacleRx}" : $"F/{link}:B", traced.Meets($"Q/1:{lane.ReceptacleTx}"));
                Assert.Equal(mode == "2x" ? $"F/{link}:{far.ReceptacleTx}" : $"F/{link}:A", traced.Meets($"Q/1:{lane.ReceptacleRx}"));
            }

            traced.AssertVerdict(right: true, $"{from} {mode}");
        }
    }

    // Source: the same tables; two legs at each other's ports are two links at the wrong far port.
    [Theory]
    [MemberData(nameof(All))]
    public void Two_legs_that_changed_places_are_a_destination_fault_and_no_polarity_fault(string from, string mode)
    {
        Breakout breakout = Breakouts.Find(from, mode)!;
        int[] order = [2, 1, .. Enumerable.Range(3, breakout.Groups - 2)];
        string codes = Channel(breakout, order, reversed: true).Write().Trace().LightCodes();
        Assert.StartsWith("D", codes);
        Assert.DoesNotContain("P", codes);
    }

    // Source: interface facts 3, sixteen to two plugs: the typed harness mirrors each half. Not mirrored, port position k
    // comes out at far position k or its neighbour half: transmit meets transmit (geometry of interface facts 1).
    [Fact]
    public void A_straight_conversion_harness_in_place_of_a_reversed_one_lets_transmit_meet_transmit()
    {
        foreach (Breakout breakout in Breakouts.All.Where(b => b.Name == "2x"))
            Assert.Equal("P01", Channel(breakout, [1, 2], reversed: false).Write().Trace().LightCodes());
    }

    // Source: trade facts 4.2: a straight cassette or harness does not break out, pairs (1, 2) are two transmits. Proved; 1 source.
    [Fact]
    public void A_straight_harness_breaks_nothing_out()
    {
        Runs runs = new Runs()
            .Part("Q", "parallel interface", v => v.Set("breakout", "4x"))
            .Part("H", "harness", v => v.Set("wiring", "straight"))
            .Part("F", "duplex interface", v => v.Set("ports", 4))
            .Run("Q/1", "H/array");
        for (int leg = 1; leg <= 4; leg++)
            runs.Run($"H/leg{leg}", $"F/{leg}").Link($"Q/1:{leg}", $"F/{leg}");
        TracedPlant traced = runs.Write().Trace();
        foreach (LaneRow lane in PartTables.FourLanes)
        {
            (int Port, string Role) far = SlowModel.AnswerHarness(lane.ReceptacleTx, [SlowModel.Mating(1, 12, opposed: false)], SlowModel.Transition("straight", 8))!.Value;
            Assert.Equal($"F/{far.Port}:{(far.Role == "Tx" ? "A" : "B")}", traced.Meets($"Q/1:{lane.ReceptacleTx}"));
        }

        traced.AssertVerdict(right: false, "straight harness");
    }

    // Source: positions of the two-row port from memory and doubtful (interface facts 2.2); the pairing by the rule of the
    // sheet (3: lane k is Tx k with Rx N+1-k), here pairs that add to 25, which is the two-row transition across the rows.
    [Fact]
    public void The_two_row_port_of_eight_lanes_breaks_out_by_the_middle_legs_of_a_harness_across_the_rows()
    {
        foreach (bool backwards in (bool[])[false, true])
        {
            Runs runs = new Runs()
                .Part("Q", "parallel interface", v => v.Set("application", "400GBASE-SR8").Set("layout", "two rows").Set("breakout", "8x"))
                .Part("H", "harness", v => v.Set("base", 24).Set("wiring", "U2-across-rows").Set("spare", [1, 2, 11, 12]))
                .Part("F", "duplex interface", v => v.Set("ports", 8).Set("application", "50GBASE-SR"))
                .Run("Q/1", "H/array");
            for (int lane = 1; lane <= 8; lane++)
                runs.Run($"H/leg{lane + 2}", $"F/{lane}").Link($"Q/1:{lane}", $"F/{lane}");
            TracedPlant traced = runs.Write(backwards).Trace();
            traced.AssertVerdict(right: true, "two rows");
            for (int lane = 1; lane <= 8; lane++)
                Assert.Equal(($"F/{lane}:B", $"F/{lane}:A"), (traced.Meets($"Q/1:{14 + lane}"), traced.Meets($"Q/1:{11 - lane}")));
        }
    }

    // Source: interface facts 3: ten lanes by the user's own lists, of the port and of the harness. Plug columns are mirrored
    // (trade facts 4.1, two rows: row kept, column reversed).
    [Fact]
    public void Ten_lanes_break_out_by_own_lists_of_port_and_harness()
    {
        DuplexPair[] lanes = [.. Enumerable.Range(1, 10).Select(k => new DuplexPair(13 + k, 1 + k))];
        DuplexPair[] legs = [.. lanes.Select(l => new DuplexPair(37 - l.A, 13 - l.B))];
        Runs runs = new Runs()
            .Part("Q", "parallel interface", v => v.Set("application", "100GBASE-SR10").Set("lanes", lanes).Set("breakout", "10x"))
            .Part("H", "harness", v => v.Set("base", 24).Set("wiring", legs))
            .Part("F", "duplex interface", v => v.Set("ports", 10))
            .Run("Q/1", "H/array");
        for (int leg = 1; leg <= 10; leg++)
            runs.Run($"H/leg{leg}", $"F/{leg}").Link($"Q/1:{leg}", $"F/{leg}");
        TracedPlant traced = runs.Write().Trace();
        traced.AssertVerdict(right: true, "ten lanes");
        for (int lane = 1; lane <= 10; lane++)
            Assert.Equal(($"F/{lane}:B", $"F/{lane}:A"), (traced.Meets($"Q/1:{13 + lane}"), traced.Meets($"Q/1:{1 + lane}")));
    }

    // Source: interface facts 3: each receptacle of a two-port interface is a port of four lanes and needs no harness. 2 sources.
    [Fact]
    public void The_two_ports_of_an_eight_lane_interface_each_meet_a_four_lane_port_by_a_type_b_cord()
    {
        foreach ((string eight, string four) in (ReadOnlySpan<(string, string)>)[("800GBASE-DR8", "400GBASE-DR4"), ("800GBASE-SR8", "400GBASE-SR4")])
        {
            Assert.Equal("", TwoPorts(eight, four, "Type-B", "1", "2").Trace().LightCodes());
            Assert.StartsWith("D", TwoPorts(eight, four, "Type-B", "2", "1").Trace().LightCodes());
            Assert.Equal("P01", TwoPorts(eight, four, "Type-A", "1", "2").Trace().LightCodes());
        }
    }

    // Source: interface facts 2.2: both layouts are ports of one interface; whole port to whole port by cords of Type-B.
    [Fact]
    public void Both_layouts_of_an_eight_lane_interface_meet_their_like()
    {
        Runs one = new Runs()
            .Part("L", "parallel interface", v => v.Set("application", "800GBASE-DR8"))
            .Part("R", "parallel interface", v => v.Set("application", "800GBASE-DR8").Set("layout", "one port"))
            .Part("X", "array cord", v => v.Set("base", 16).Set("type", "Type-B"))
            .Run("L/1", "X", "R/1")
            .Link("L/1", "R/1");
        Runs two = new Runs()
            .Part("L", "parallel interface", v => v.Set("application", "800GBASE-DR8").Set("layout", "two ports"))
            .Part("R", "parallel interface", v => v.Set("application", "800GBASE-DR8").Set("layout", "two ports"));
        foreach (string receptacle in (string[])["1a", "1b"])
        {
            two.Part($"X{receptacle}", "array cord", v => v.Set("type", "Type-B"))
                .Run($"L/{receptacle}", $"X{receptacle}", $"R/{receptacle}")
                .Link($"L/{receptacle}", $"R/{receptacle}");
        }

        foreach (bool backwards in (bool[])[false, true])
        {
            Assert.Equal("", one.Write(backwards).Trace().LightCodes());
            Assert.Equal("", two.Write(backwards).Trace().LightCodes());
        }
    }

    private static Bench TwoPorts(string eight, string four, string cord, string farOfA, string farOfB) => new Runs()
        .Part("L", "parallel interface", v => v.Set("application", eight).Set("layout", "two ports"))
        .Part("R", "parallel interface", v => v.Set("application", four).Set("ports", 2))
        .Part("XA", "array cord", v => v.Set("type", cord))
        .Part("XB", "array cord", v => v.Set("type", cord))
        .Run("L/1a", "XA", $"R/{farOfA}")
        .Run("L/1b", "XB", $"R/{farOfB}")
        .Link("L/1a", "R/1")
        .Link("L/1b", "R/2")
        .Write();

    /// <summary>The split port Q, its harness H and the far ports F; leg n goes to the far port that the order gives it.</summary>
    private static Runs Channel(Breakout breakout, int[] order, bool reversed)
    {
        bool arrays = breakout.Name == "2x";
        Runs runs = new Runs().Part("Q", "parallel interface", v => v.Set("application", breakout.From).Set("breakout", breakout.Name));
        if (arrays)
        {
            runs.Part("H", "conversion harness", v => v.Set("conversion", "16 to 2x8").Set("type", reversed ? "reversed" : "straight"))
                .Part("F", "parallel interface", v => v.Set("ports", breakout.Groups).Set("application", breakout.To));
        }
        else
        {
            runs.Part("H", "harness", v => v.Set("base", breakout.Groups == 4 ? 8 : 16))
                .Part("F", "duplex interface", v => v.Set("ports", breakout.Groups).Set("application", breakout.To));
        }

        runs.Run("Q/1", "H/array");
        for (int leg = 1; leg <= breakout.Groups; leg++)
            runs.Run($"H/leg{leg}", $"F/{order[leg - 1]}").Link($"Q/1:{leg}", $"F/{leg}");
        return runs;
    }
}
