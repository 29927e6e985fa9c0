using PolarityMap.Core.Deviations;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Deviations;

/// <summary>
/// What the installer sees of each cause, typed from the sheets: interface facts 5, causes and symptoms, column "trace" and "site";
/// polarity facts 2 and 3.3 where those are more exact.
/// </summary>
public sealed class SymptomTests
{
    private static readonly (int Port, string Role)[] s_sixRight = [(1, "Rx"), (2, "Rx"), (3, "Rx"), (4, "Rx"), (5, "Rx"), (6, "Rx")];

    public static TheoryData<string> Methods => ["A", "B", "C", "U1", "U2"];

    public static TheoryData<int> FaultRows => [.. Enumerable.Range(0, FaultTable.Rows.Count)];

    // Source: polarity facts 3.3, every row proved: one part of a method is of another type.
    [Theory]
    [MemberData(nameof(FaultRows))]
    public void One_part_of_another_type_gives_what_the_fault_catalogue_says(int row)
    {
        FaultRow fault = FaultTable.Rows[row];
        Trial trial = Trial.Of(Channels.Method(fault.Method));
        switch (fault.Changed)
        {
            case "left-cord" or "right-cord":
                for (int port = 1; port <= 6; port++)
                    trial.Lay("other-cord", $"C{(fault.Changed == "left-cord" ? 1 : 2)}-{port}", "type", fault.To);
                break;
            case "trunk":
                trial.Lay("other-trunk", "T1", "type", fault.To);
                break;
            case "right-transition":
                trial.Lay("other-wiring", "KR1", "wiring", fault.To);
                break;
            default:
                foreach (string cassette in fault.Changed == "both-adapters" ? ["KL1", "KR1"] : (string[])[fault.Changed == "left-adapter" ? "KL1" : "KR1"])
                    trial.Lay("other-keying", cassette, "keys", Channels.Keys(fault.To));
                break;
        }

        foreach (FaultMeeting meeting in fault.LeftTransmitters)
            Assert.Equal((meeting.RightPort, meeting.Meets), trial.Answer(meeting.LeftPort, "Tx"));
    }

    // Source: interface facts 5, no. 2: one pair Tx-Tx and Rx-Rx. The far port stays.
    [Theory]
    [MemberData(nameof(Methods))]
    public void One_cord_of_the_other_type_lets_transmit_meet_transmit_and_receive_meet_receive_on_exactly_that_link(string method)
    {
        for (int port = 1; port <= 6; port++)
        {
            foreach (int row in (int[])[1, 2])
            {
                Trial trial = Trial.Of(Channels.Method(method)).Lay("other-cord", d => d.Text.StartsWith($"cord C{row}-{port} ", StringComparison.Ordinal));
                Assert.Equal((port, "Tx"), trial.Answer(port, "Tx"));
                Assert.Equal((port, "Rx"), trial.Answer(port, "Rx"));
                Assert.Equal([$"L/{port}:A", $"L/{port}:B", $"R/{port}:A", $"R/{port}:B"], trial.Changed().Order(StringComparer.Ordinal));
            }
        }
    }

    // Source: interface facts 5, no. 3: two such cords, right again.
    [Fact]
    public void Two_cords_of_the_other_type_in_one_link_cancel()
    {
        Trial trial = Trial.Of(Channels.Method("C")).Lay("other-cord", "C1-4", "type", "A-to-A").Lay("other-cord", "C2-4", "type", "A-to-A");
        Assert.Equal(s_sixRight, Transmitters(trial));
        Assert.Empty(trial.Changed());
        Assert.Equal((4, "Tx"), trial.Lift().Answer(4, "Tx"));
    }

    // Source: polarity facts 2.4: reversing one end turns A-to-B into A-to-A and back. Proved.
    [Theory]
    [InlineData("near")]
    [InlineData("far")]
    public void A_cord_reversed_at_either_end_is_an_A_to_A_cord(string end)
    {
        Trial trial = new Trial(SmallPlants.Of("zone boxes")).Lay("cord-reversed", "LX-W1", "reversed", end);
        Assert.Equal(("LX-D1/1:A", "LX-D1/1:B"), (trial.From("LX-SW/1:A"), trial.From("LX-SW/1:B")));
        Assert.Equal(["LX-D1/1:A", "LX-D1/1:B", "LX-SW/1:A", "LX-SW/1:B"], trial.Changed().Order(StringComparer.Ordinal));
    }

    // Source: interface facts 5, no. 4: every pair wrong in the same way; port 1 shows at port 6 with 12 fibres.
    [Fact]
    public void A_trunk_of_another_type_shows_port_1_at_port_6_and_every_port_at_its_mirror()
    {
        Trial trial = Trial.Of(Channels.Method("A")).Lay("other-trunk", "T1", "type", "Type-B");
        Assert.Equal([(6, "Tx"), (5, "Tx"), (4, "Tx"), (3, "Tx"), (2, "Tx"), (1, "Tx")], Transmitters(trial));
    }

    // Source: interface facts 1, direct-cord oracle: Type A 1,2,3,4; Type C 2,1,4,3; Type B 12,11,10,9.
    [Theory]
    [InlineData("Type-A", new[] { 1, 2, 3, 4 })]
    [InlineData("Type-C", new[] { 2, 1, 4, 3 })]
    public void A_direct_array_cord_of_another_type_lets_all_lanes_meet_transmitters(string type, int[] reached)
    {
        Trial trial = Trial.Of(new Bench().Add("QL", "parallel interface").Add("QR", "parallel interface")
            .Add("X", "array cord", v => v.Set("type", "Type-B")).Mate("QL/1", "X/near").Mate("X/far", "QR/1"));
        Assert.Equal(["QR/1:12", "QR/1:11", "QR/1:10", "QR/1:9"], Lanes(trial));
        trial.Lay("other-array-cord", "X", "type", type);
        Assert.Equal(reached.Select(p => $"QR/1:{p}"), Lanes(trial));
    }

    // Source: interface facts 1, parallel channels: method A with two A cords and method B with an A trunk give 1 to 1 up to 4 to 4.
    [Fact]
    public void A_wrong_cord_or_trunk_of_a_parallel_channel_lets_lane_k_meet_transmitter_k()
    {
        string[] transmitters = ["QR/1:1", "QR/1:2", "QR/1:3", "QR/1:4"];
        Assert.Equal(transmitters, Lanes(new Trial(SmallPlants.Of("parallel A")).Lay("other-array-cord", "X3", "type", "Type-A")));
        Assert.Equal(transmitters, Lanes(new Trial(SmallPlants.Of("parallel B by lane")).Lay("other-trunk", "X2", "type", "Type-A")));
    }

    // Source: interface facts 5, no. 5: lane k lands on its neighbour's transmitter.
    [Fact]
    public void A_trunk_of_type_c_under_parallel_ports_leads_each_lane_to_its_neighbours_transmitter() =>
        Assert.Equal(["QR/1:2", "QR/1:1", "QR/1:4", "QR/1:3"], Lanes(new Trial(SmallPlants.Of("parallel B by lane")).Lay("other-trunk", "X2", "type", "Type-C")));

    // Source: interface facts 5, no. 6: light comes out at the mirror place. Polarity facts 2.5: inverting a cassette does not
    // exchange A and B of a duplex plug; straight turned over is port 1 = (A 11, B 12) up to port 6 = (A 1, B 2). Proved.
    [Fact]
    public void A_cassette_upside_down_sends_each_port_to_its_mirror_place_with_polarity_right()
    {
        Trial trial = Trial.Of(Channels.Method("A")).Lay("upside-down", d => d.Text.StartsWith("cassette KL1 ", StringComparison.Ordinal));
        Assert.Equal([(6, "Rx"), (5, "Rx"), (4, "Rx"), (3, "Rx"), (2, "Rx"), (1, "Rx")], Transmitters(trial));
        for (int port = 1; port <= 6; port++)
            Assert.Equal(($"KL1/rear:{13 - (2 * port)}", $"KL1/rear:{14 - (2 * port)}"), (trial.From($"KL1/{port}:A", "KL1"), trial.From($"KL1/{port}:B", "KL1")));
    }

    // Source: interface facts 5, no. 6: counted from the left A and B change sides, 1-12 reads 12-1. That is so where simplex plugs
    // are put into the halves by hand, here at ports 1 and 2 of KL1.
    [Fact]
    public void Simplex_plugs_in_a_cassette_upside_down_read_12_to_1_from_the_left()
    {
        Trial trial = new Trial(SmallPlants.Of("simplex cords")).Lay("upside-down", d => d.Text.StartsWith("cassette KL1 ", StringComparison.Ordinal));
        string[] places = ["KL1/1:A", "KL1/1:B", "KL1/2:A", "KL1/2:B"];
        Assert.Equal(["KL1/rear:12", "KL1/rear:11", "KL1/rear:10", "KL1/rear:9"], places.Select(p => trial.From(p, "KL1")));
    }

    // Source: as above, for a panel: the cord at adapter k meets what is behind adapter N + 1 - k.
    [Fact]
    public void A_panel_upside_down_lets_cords_meet_what_is_behind_the_mirrored_adapters()
    {
        // Cords at 1, 2, 3 of six; a leg waits in 4 and a cord in 6: cord 3 meets leg 4, cord 6 leg 1, and nothing is behind cord 2.
        // Cord, aligned adapter and leg reverse three times (polarity facts 2.1, 2.3): 1 comes out at 12.
        Trial trial = new Trial(SmallPlants.Of("parallel ports side by side")).Lay("upside-down", d => d.Text.StartsWith("array panel PL ", StringComparison.Ordinal));
        Assert.Equal("T/far4:12", trial.From("XL3/near:1", "T"));
        Assert.Equal("T/far1:1", trial.From("IDLE/far:12", "T"));
        Assert.Null(trial.From("QL/2:1"));
        Assert.Null(trial.From("QL/1:1"));
    }

    // Source: interface facts 5, no. 7: all ports of one cassette, none of its neighbours.
    [Fact]
    public void A_cassette_of_another_wiring_disturbs_its_own_ports_and_none_of_its_neighbours()
    {
        Trial trial = new Trial(SmallPlants.Of("zone boxes")).Lay("other-wiring", "LX-K1", "wiring", "U2");
        Assert.Equal("LX-D1/1:A", trial.From("LX-SW/1:A"));
        Assert.Equal(["LX-D1/1:A", "LX-D1/1:B", "LX-SW/1:A", "LX-SW/1:B"], trial.Changed().Order(StringComparer.Ordinal));
    }

    // Source: interface facts 5, no. 8, and 1: aligned joins 1 to 12, opposed 1 to 1; limited to the panel.
    [Fact]
    public void A_panel_of_the_other_keying_mirrors_what_passes_it_and_one_adapter_only_its_own()
    {
        var design = new Trial(SmallPlants.Of("parallel ports side by side"));

        // The Type-B cord brings 1 to 12; aligned that is 1 of the leg, opposed 12 of it; the leg reverses once more.
        Assert.Equal("T/far1:12", design.From("XL1/near:1", "T"));
        Trial panel = new Trial(design.Context.Traced).Lay("other-keying", "PL", "keys", "opposed");
        Assert.Equal("T/far1:1", panel.From("XL1/near:1", "T"));
        Assert.Equal(["1", "2", "3"], panel.Changed().Where(a => a.StartsWith("QL/", StringComparison.Ordinal)).Select(a => a[3..4]).Distinct());
        Trial one = new Trial(design.Context.Traced).Lay("other-keying", "the adapter PL/2 has opposed keys instead of aligned");
        Assert.Equal(["2"], one.Changed().Where(a => a.StartsWith("QL/", StringComparison.Ordinal)).Select(a => a[3..4]).Distinct());
    }

    // Source: interface facts 5, no. 9: exactly one pair swapped, others right; one circuit dead.
    [Fact]
    public void A_crossed_pair_in_a_termination_kills_exactly_one_circuit()
    {
        var trial = new Trial(SmallPlants.Of("splice and termination"));
        Assert.Equal(((1, "Rx"), (2, "Rx")), (trial.Answer(1, "Tx"), trial.Answer(2, "Tx")));
        trial.Lay("pair-crossed", d => d.Text.StartsWith("the pair at FL/2 ", StringComparison.Ordinal));
        Assert.Equal(((2, "Tx"), (2, "Rx")), (trial.Answer(2, "Tx"), trial.Answer(2, "Rx")));
        Assert.Equal(["L/2:A", "L/2:B", "R/2:A", "R/2:B"], trial.Changed().Order(StringComparer.Ordinal));
    }

    // Source: interface facts 5, no. 10: two circuits exchange destinations, polarity right.
    [Fact]
    public void Transposed_pairs_exchange_the_destinations_of_two_circuits_with_polarity_right()
    {
        Trial trial = new Trial(SmallPlants.Of("splice and termination")).Lay("pairs-transposed", "the pairs at FR/1 and FR/2 sit in each other's places");
        Assert.Equal(((2, "Rx"), (1, "Rx"), (4, "Rx")), (trial.Answer(1, "Tx"), trial.Answer(2, "Tx"), trial.Answer(4, "Tx")));
    }

    // Source: interface facts 5, nos. 9 and 10 for a splice tray: two strands change places and no other does.
    [Theory]
    [InlineData(1, 2, new[] { "L/1:A", "L/1:B", "R/1:A", "R/1:B" })]
    [InlineData(2, 3, new[] { "L/1:A", "L/2:B", "R/1:B", "R/2:A" })]
    public void Two_fibres_exchanged_in_a_tray_change_exactly_two_strands(int n, int m, string[] changed) =>
        Assert.Equal(changed, new Trial(SmallPlants.Of("splice and termination")).Lay("fibres-exchanged", $"fibres {n} and {m} have changed places in S").Changed().Order(StringComparer.Ordinal));

    // Source: interface facts 5, no. 11: destination wrong, polarity right; or dark.
    [Fact]
    public void Exchanged_cords_reach_each_others_far_ports_with_polarity_right_and_a_cord_in_a_free_port_is_dark()
    {
        Trial exchanged = Trial.Of(Channels.Method("B")).Lay("cords-exchanged", "cords C1-2 and C1-5 sit in each other's ports, KL1/2 and KL1/5");
        Assert.Equal([(1, "Rx"), (5, "Rx"), (3, "Rx"), (4, "Rx"), (2, "Rx"), (6, "Rx")], Transmitters(exchanged));
        Trial next = new Trial(SmallPlants.Of("two rows of 12")).Lay("cord-in-next-port", "cord CL3 sits in KL/4 instead of KL/3");
        Assert.Null(next.Answer(3, "Tx"));
        Assert.Equal(["L/3:A", "L/3:B", "R/3:A", "R/3:B"], next.Changed().Order(StringComparer.Ordinal));
    }

    // Source: as above, with a lit port in the neighbour: link up, wrong neighbour.
    [Fact]
    public void A_cord_in_the_neighbouring_port_brings_another_link_up_where_that_is_wired()
    {
        Bench bench = Channels.Series(["A-to-B"], [], 12).Add("N", "duplex panel").Add("D1", "duplex cord", v => v.Set("type", "A-to-B"));
        bench = bench.Add("X", "duplex interface", v => v.Set("ports", 2)).Add("Y", "duplex interface", v => v.Set("ports", 2))
            .Cord("E1", "X/1", "A-to-B", "Y/1");
        Trial trial = Trial.Of(bench).Lay("cord-in-next-port", "cord E1 sits in Y/2 instead of Y/1");
        Assert.Equal(("Y/2:B", "Y/2:A"), (trial.From("X/1:A"), trial.From("X/1:B")));
    }

    // Source: interface facts 5, no. 12: circuit j on lane k; link up, wrong sub-port.
    [Fact]
    public void Exchanged_legs_of_a_harness_bring_circuit_j_on_lane_k()
    {
        var trial = new Trial(SmallPlants.Of("breakout"));
        Assert.Equal(("F/1:B", "F/2:B"), (trial.From("Q/1:1"), trial.From("Q/1:2")));
        trial.Lay("legs-exchanged", d => d.Text.StartsWith("legs H1/leg1 and H1/leg2 ", StringComparison.Ordinal));
        Assert.Equal(("F/2:B", "F/1:B", "F/3:B"), (trial.From("Q/1:1"), trial.From("Q/1:2"), trial.From("Q/1:3")));
    }

    // Source: as above: a leg that is spare, or a port that should be free; all of the leg is dark.
    [Fact]
    public void A_leg_in_a_wrong_port_is_dark_with_all_its_fibres()
    {
        var design = new Trial(SmallPlants.Of("zone boxes"));
        foreach (string text in (string[])["leg LX-T/far1 sits in LX-Z3/rear instead of LX-Z1/rear", "leg LX-T/far3 sits in LX-Z1/rear instead of leg LX-T/far1"])
        {
            Trial trial = new Trial(design.Context.Traced).Lay("leg-in-wrong-port", text);
            Assert.Null(trial.From("LX-SW/1:A"));
            Assert.Equal(["LX-D1/1:A", "LX-D1/1:B", "LX-SW/1:A", "LX-SW/1:B"], trial.Changed().Order(StringComparer.Ordinal));
        }
    }

    // Source: interface facts 5, no. 18: the strand ends inside a part; exactly one position dark, from both ends.
    [Theory]
    [MemberData(nameof(Methods))]
    public void A_broken_fibre_darkens_exactly_one_strand_from_both_ends(string method)
    {
        var design = new Trial(Channels.Method(method).Trace());
        Dictionary<string, string?> lit = design.Lanes();
        foreach (Deviation broken in design.Context.All().Where(d => d.Kind.Name == "fibre-broken"))
        {
            Trial trial = new Trial(design.Context.Traced).Lay("fibre-broken", broken.Text);
            List<string> changed = trial.Changed();
            Assert.Equal(2, changed.Count);
            Assert.Equal(changed[0], lit[changed[1]]);
            Assert.All(changed, c => Assert.Null(trial.From(c)));
        }
    }

    // Source: interface facts 5: seating; what does not touch is dark, all positions of the connector and no other.
    [Fact]
    public void A_connector_that_is_not_seated_darkens_all_its_strands_and_no_other()
    {
        Trial array = Trial.Of(Channels.Method("B")).Lay("not-seated", "T1/near in KL1/rear is not seated");
        Assert.Equal(24, array.Changed().Count);
        Trial duplex = Trial.Of(Channels.Method("B")).Lay("not-seated", "C1-3/far in KL1/3 is not seated");
        Assert.Equal(["L/3:A", "L/3:B", "R/3:A", "R/3:B"], duplex.Changed().Order(StringComparer.Ordinal));
        Assert.Null(duplex.Answer(3, "Tx"));
    }

    // Source: interface facts 5, no. 1: mapping right, loss up.
    [Fact]
    public void Dirt_leaves_light_on_its_way_and_loses_it_on_the_strands_that_pass()
    {
        Trial trial = Trial.Of(Channels.Method("B")).Lay("dirty", "the end faces of C1-3/far in KL1/3 are dirty");
        Assert.Empty(trial.Changed());
        Assert.Equal(["L/3:A", "L/3:B", "R/3:A", "R/3:B"], trial.Lossy().Order(StringComparer.Ordinal));
        Assert.Equal(24, Trial.Of(Channels.Method("B")).Lay("dirty", "the end faces of T1/near in KL1/rear are dirty").Lossy().Count);
    }

    // Source: interface facts 5, no. 20: class or core mix is loss, not another way. The classes in their order: ISO/IEC 11801-1.
    [Theory]
    [InlineData("zone boxes", "LX-T", "OM3")]
    [InlineData("zone boxes", "PLAIN", "OM2")]
    [InlineData("splice and termination", "CA", "OS1a")]
    [InlineData("conversion harness", "H", "OM1")]
    [InlineData("duplex panels", "H", "OM2")]
    public void A_cable_of_another_fibre_class_leaves_light_on_its_way_and_loses_it(string plant, string cable, string instead)
    {
        Trial trial = new Trial(SmallPlants.Of(plant)).Lay("other-fibre", cable, "fibre", instead);
        Assert.Empty(trial.Changed());
        Assert.NotEmpty(trial.Lossy());
    }

    // Source: single-mode has no class below OS1 (ISO/IEC 11801-1).
    [Fact]
    public void A_cable_of_the_lowest_single_mode_class_has_no_lower_one()
    {
        var context = new DeviationContext(SmallPlants.Of("splice and termination"));
        Assert.DoesNotContain(context.All(), d => d.Kind.Name == "other-fibre" && d.Text.StartsWith("cable CB ", StringComparison.Ordinal));
    }

    // Source: interface facts 5, no. 23: a cord that fits the wrong outlet; a key code that refuses keeps it out.
    [Fact]
    public void The_cord_of_another_network_changes_no_light_and_is_not_thought_of_where_its_key_keeps_it_out()
    {
        Trial trial = new Trial(SmallPlants.Of("zone boxes")).Lay("foreign-cord", "PLAIN", "network", "lighting");
        Assert.Empty(trial.Changed());
        Assert.Empty(trial.Lossy());
        Assert.Single(trial.Context.All(), d => d.Kind.Name == "foreign-cord");
    }

    // Source: interface facts 5, no. 23, and the rule for keys: equal codes go in, others do not (common practice).
    [Fact]
    public void Cords_that_keys_keep_apart_are_not_exchanged_and_plain_ones_are()
    {
        var context = new DeviationContext(SmallPlants.Of("zone boxes"));
        string[] texts = [.. context.All().Where(d => d.Kind.Name == "cords-exchanged").Select(d => d.Text)];
        Assert.Contains("cords LX-J1 and SD-J1 sit in each other's ports, ZB1/1 and ZB1/2", texts);
        Assert.DoesNotContain(texts, t => t.Contains("DESK", StringComparison.Ordinal));
        Assert.DoesNotContain(context.All(), d => d.Kind.Name == "upside-down" && d.Text.Contains("DESK", StringComparison.Ordinal));
    }

    // Source: interface facts 5, no. 14: pinned to pinned cannot seat. Unpinned to unpinned seats.
    [Theory]
    [InlineData("none", "pinned", 2)]
    [InlineData("both", "unpinned", 0)]
    public void Legs_that_pins_keep_apart_are_not_exchanged(string pins, string cassettes, int exchanges)
    {
        var bench = new Bench();
        for (int n = 1; n <= 2; n++)
        {
            string own = n == 1 ? "none" : pins, rear = n == 1 ? "pinned" : cassettes;
            bench.Add($"K{n}", "cassette", v => v.Set("wiring", "U1").Set("pins", rear)).Add($"Z{n}", "cassette", v => v.Set("wiring", "U1").Set("pins", rear))
                .Add($"T{n}", "trunk", v => v.Set("type", "Type-B").Set("pins", own))
                .Mate($"K{n}/rear", $"T{n}/near").Mate($"T{n}/far", $"Z{n}/rear");
        }

        Assert.Equal(exchanges, new DeviationContext(bench.Trace()).All().Count(d => d.Kind.Name == "legs-exchanged"));
    }

    private static IEnumerable<(int Port, string Role)> Transmitters(Trial trial) => Enumerable.Range(1, 6).Select(p => trial.Answer(p, "Tx")!.Value);

    private static IEnumerable<string?> Lanes(Trial trial) => PartTables.FourLanes.Select(l => trial.From($"QL/1:{l.ReceptacleTx}"));
}
