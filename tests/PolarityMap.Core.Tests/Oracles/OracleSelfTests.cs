using Xunit;

namespace PolarityMap.Core.Tests.Oracles;

/// <summary>The typed tables agree with the slow model, with the parity rules and with the counts of the trade facts.</summary>
public sealed class OracleSelfTests
{
    private static readonly string[] CableTypes = ["Type-A", "Type-B", "Type-C"];
    private static readonly string[] AdapterKinds = ["Type-A", "Type-B"];
    private static readonly string[] CordKinds = ["A-to-B", "A-to-A"];
    private static readonly string[] TransitionKeys = ["straight", "straight-reversed", "U1", "U2"];

    // Source: trade facts 3.1.
    [Theory]
    [InlineData("A")]
    [InlineData("B")]
    [InlineData("C")]
    [InlineData("U1")]
    [InlineData("U2")]
    public void Every_printed_row_of_a_method_is_what_the_slow_model_walks(string method)
    {
        var parts = MethodTables.IngredientsOf(method);
        var link = LinkOf(parts);
        var seen = new HashSet<(int, char)>();
        foreach (var row in MethodTables.Rows(method))
        {
            Assert.True(seen.Add((row.LeftPort, row.LeftPos)));
            Assert.Equal(row.LeftArray, link.LeftTransition[(row.LeftPort, row.LeftPos)]);
            Assert.Equal(row.TrunkNear, link.LeftMating[row.LeftArray]);
            Assert.Equal(row.TrunkFar, link.Trunk[row.TrunkNear]);
            Assert.Equal(row.RightArray, link.RightMating[row.TrunkFar]);
            Assert.Equal(row.RightArray, link.RightTransition[(row.RightPort, row.RightPos)]);

            // With an A-to-B cord the transmitter lights cassette B, with an A-to-A cord cassette A (3.1, first lines).
            Assert.Equal(row.LeftTransmits, row.LeftPos == (parts.LeftCord == "A-to-B" ? 'B' : 'A'));
            var role = row.LeftTransmits ? "Tx" : "Rx";
            var met = row.LeftTransmits ? "Rx" : "Tx";
            Assert.Equal((row.RightPort, met), SlowModel.Answer(parts.LeftCord, link, parts.RightCord, row.LeftPort, role));
        }

        Assert.Equal(12, seen.Count);
    }

    // Source: trade facts 3, 6.1, 6.2 and 10: all five methods pass on 12, 8 and 16 fibres, walked from either end.
    [Theory]
    [InlineData(8)]
    [InlineData(12)]
    [InlineData(16)]
    public void All_five_methods_join_port_to_port_and_transmit_to_receive_from_either_end(int fibres)
    {
        foreach (var parts in MethodTables.Ingredients)
        {
            var link = LinkOf(parts, fibres);
            Assert.True(SlowModel.Works([parts.LeftCord, parts.RightCord], [link], fibres / 2), parts.Method);
            Assert.True(SlowModel.Works([parts.RightCord, parts.LeftCord], [SlowModel.Reversed(link)], fibres / 2), parts.Method);
        }
    }

    // Source: trade facts 3: the A-to-A cord of method A may be at either end, but exactly one.
    [Fact]
    public void Method_a_needs_exactly_one_a_to_a_cord_at_either_end()
    {
        var link = LinkOf(MethodTables.IngredientsOf("A"));
        Assert.True(SlowModel.Works(["A-to-A", "A-to-B"], [link], 6));
        Assert.True(SlowModel.Works(["A-to-B", "A-to-A"], [link], 6));
        Assert.False(SlowModel.Works(["A-to-B", "A-to-B"], [link], 6));
        Assert.False(SlowModel.Works(["A-to-A", "A-to-A"], [link], 6));
    }

    // Source: trade facts 10: A and B exchanged in both cassettes alike, all five still pass.
    [Fact]
    public void Exchanging_a_and_b_in_both_cassettes_changes_nothing()
    {
        foreach (var parts in MethodTables.Ingredients)
        {
            var link = LinkOf(parts);
            var exchanged = link with
            {
                LeftTransition = ExchangedPairs(link.LeftTransition),
                RightTransition = ExchangedPairs(link.RightTransition),
            };
            Assert.True(SlowModel.Works([parts.LeftCord, parts.RightCord], [exchanged], 6), parts.Method);
        }
    }

    // Source: trade facts 3.4: a U1 end and a U2 end work together over one Type-B trunk.
    [Fact]
    public void A_u1_end_and_a_u2_end_work_together()
    {
        var link = SlowModel.Link("U1", "Type-A", "Type-B", "Type-B", "U2");
        Assert.True(SlowModel.Works(["A-to-B", "A-to-B"], [link], 6));
    }

    // Source: trade facts 2.5, the common mistake: port order kept, transmit on transmit.
    [Fact]
    public void Method_b_with_a_and_b_exchanged_on_inversion_keeps_the_ports_and_meets_transmit_with_transmit()
    {
        var wrong = LinkOf(MethodTables.IngredientsOf("B")) with { RightTransition = Typed(PartTables.WronglyInverted12) };
        for (var port = 1; port <= 6; port++)
            Assert.Equal((port, "Tx"), SlowModel.Answer("A-to-B", wrong, "A-to-B", port, "Tx"));
    }

    // Source: trade facts 2.1, 2.5 and 6.1.
    [Theory]
    [InlineData(8)]
    [InlineData(12)]
    public void Typed_cables_and_transitions_are_those_of_the_slow_model(int fibres)
    {
        foreach (var type in CableTypes)
            Assert.Equal(SlowModel.Cable(type, fibres), Typed(PartTables.Cable(type, fibres)));
        foreach (var key in TransitionKeys)
            Assert.Equal(SlowModel.Transition(key, fibres), Typed(PartTables.Transition(key, fibres)));
    }

    // Source: trade facts 2.1 and 4.1.
    [Fact]
    public void Eight_of_twelve_are_the_outer_fours_and_the_middle_four_are_dark()
    {
        Assert.Equal(SlowModel.Populated(8), PartTables.EightOfTwelve);
        Assert.Equal(SlowModel.Populated(12), PartTables.EightOfTwelve.Concat(PartTables.DarkOfTwelve).Order());
    }

    // Source: trade facts 2.3 and 5.
    [Fact]
    public void Typed_adapters_and_two_row_matings_follow_from_the_coordinates()
    {
        Assert.Equal(SlowModel.Mating(1, 12, opposed: true), Typed(PartTables.AdapterTypeA.Joins));
        Assert.Equal(SlowModel.Mating(1, 12, opposed: false), Typed(PartTables.AdapterTypeB.Joins));
        Assert.Equal(SlowModel.Mating(2, 12, opposed: true), Typed(PartTables.TwoRowOpposed));
        Assert.Equal(SlowModel.Mating(2, 12, opposed: false), Typed(PartTables.TwoRowAligned));
    }

    // Source: trade facts 5, the rule for R rows and C columns.
    [Theory]
    [InlineData(1, 12)]
    [InlineData(1, 16)]
    [InlineData(2, 12)]
    [InlineData(2, 16)]
    [InlineData(3, 5)]
    public void Aligned_keeps_the_row_and_mirrors_the_column_and_opposed_does_the_reverse(int rows, int columns)
    {
        var aligned = SlowModel.Mating(rows, columns, opposed: false);
        var opposed = SlowModel.Mating(rows, columns, opposed: true);
        for (var r = 1; r <= rows; r++)
        {
            for (var c = 1; c <= columns; c++)
            {
                Assert.Equal(((r - 1) * columns) + columns + 1 - c, aligned[((r - 1) * columns) + c]);
                Assert.Equal(((rows - r) * columns) + c, opposed[((r - 1) * columns) + c]);
            }
        }
    }

    // Source: trade facts 2.1 and 2.2: uncrossed ribbons with keys alike and keys opposite.
    [Fact]
    public void An_uncrossed_ribbon_gives_type_b_with_keys_alike_and_type_a_with_keys_opposite()
    {
        Assert.Equal(Typed(PartTables.CableTypeB), SlowModel.UncrossedCable(1, 12, keysAlike: true));
        Assert.Equal(Typed(PartTables.CableTypeA), SlowModel.UncrossedCable(1, 12, keysAlike: false));
        Assert.Equal(Typed(PartTables.ReversedInRow), SlowModel.UncrossedCable(2, 12, keysAlike: true));
        Assert.Equal(Typed(PartTables.RowsExchanged), SlowModel.UncrossedCable(2, 12, keysAlike: false));
    }

    // Source: trade facts 1 and 2.4.
    [Fact]
    public void Typed_cords_and_transceiver_lead_a_transmitter_into_the_plug_that_is_printed()
    {
        // A transmitter is entered by plug B, and an A-to-B cord then ends in plug A, which enters a receiver.
        foreach (var (position, role, plug) in PartTables.DuplexTransceiver)
        {
            Assert.Equal(plug, Reached(PartTables.DuplexMating, position));
            foreach (var cord in new[] { PartTables.CordAToB, PartTables.CordAToA })
            {
                var farPlug = Reached(cord, plug);
                var met = Reached(PartTables.DuplexMating, farPlug);
                var metRole = PartTables.DuplexTransceiver.Single(t => t.Position == met).Role;
                Assert.Equal(SlowModel.Answer([cord.Cord], [], 1, role), (1, metRole));
                Assert.Equal(cord.Cord == "A-to-B", metRole != role);
            }
        }
    }

    // Source: trade facts 3.2, rule 1.
    [Fact]
    public void The_array_part_is_reversed_by_an_odd_count_of_type_b_cables_and_aligned_matings()
    {
        for (var cables = 1; cables <= 4; cables++)
        {
            foreach (var types in Choices(CableTypes, cables))
            {
                foreach (var adapters in Choices(AdapterKinds, cables + 1))
                {
                    var steps = new List<Dictionary<int, int>> { SlowModel.Adapter(adapters[0], 12) };
                    for (var i = 0; i < cables; i++)
                    {
                        steps.Add(SlowModel.Cable(types[i], 12));
                        steps.Add(SlowModel.Adapter(adapters[i + 1], 12));
                    }

                    var reversals = types.Count(t => t == "Type-B") + adapters.Count(a => a == "Type-B");
                    var flips = types.Count(t => t == "Type-C");
                    for (var position = 1; position <= 12; position++)
                    {
                        var expected = reversals % 2 == 1 ? 13 - position : position;
                        if (flips % 2 == 1)
                            expected = expected % 2 == 1 ? expected + 1 : expected - 1;
                        Assert.Equal(expected, SlowModel.Walk(steps, position));
                    }
                }
            }
        }
    }

    // Source: trade facts 3.2, rule 2, for every mix of one to three links and every choice of cords.
    [Fact]
    public void Light_lands_on_a_receiver_when_a_to_b_cords_and_crossing_links_are_odd_together()
    {
        for (var count = 1; count <= 3; count++)
        {
            foreach (var methods in Choices(["A", "B", "C", "U1", "U2"], count))
            {
                var links = methods.Select(m => LinkOf(MethodTables.IngredientsOf(m))).ToArray();
                foreach (var cords in Choices(CordKinds, count + 1))
                {
                    var crossings = cords.Count(c => c == "A-to-B") + methods.Count(m => m != "A");
                    for (var port = 1; port <= 6; port++)
                        Assert.Equal((port, crossings % 2 == 1 ? "Rx" : "Tx"), SlowModel.Answer(cords, links, port, "Tx"));
                }
            }
        }
    }

    // Source: trade facts 3.2, rule 2, the example in bold.
    [Fact]
    public void Two_method_a_links_in_series_work_with_three_a_to_b_cords()
    {
        var link = LinkOf(MethodTables.IngredientsOf("A"));
        Assert.True(SlowModel.Works(["A-to-B", "A-to-B", "A-to-B"], [link, link], 6));
    }

    // Source: trade facts 3.2, rules 3 and 4.
    [Fact]
    public void A_parallel_channel_works_when_reversals_are_odd_and_type_c_cables_even()
    {
        for (var cables = 1; cables <= 5; cables++)
        {
            foreach (var types in Choices(CableTypes, cables))
            {
                foreach (var adapters in Choices(AdapterKinds, cables - 1))
                {
                    var reversals = types.Count(t => t == "Type-B") + adapters.Count(a => a == "Type-B") + 2;
                    var expected = reversals % 2 == 1 && types.Count(t => t == "Type-C") % 2 == 0;
                    Assert.Equal(expected, ParallelWorks(types, adapters));
                }
            }

            // Rule 4: all Type-B and all aligned works for any count; all Type-B and all opposed for an odd count only.
            var allB = Enumerable.Repeat("Type-B", cables).ToArray();
            Assert.True(ParallelWorks(allB, Enumerable.Repeat("Type-B", cables - 1).ToArray()));
            Assert.Equal(cables % 2 == 1, ParallelWorks(allB, Enumerable.Repeat("Type-A", cables - 1).ToArray()));
        }
    }

    // Source: trade facts 3.2, no. 5.
    [Fact]
    public void Of_all_10395_pairings_only_k_with_13_minus_k_works_with_one_cassette_and_a_type_b_trunk()
    {
        var tried = 0;
        foreach (var adapter in AdapterKinds)
        {
            var working = new List<(int, int)[]>();
            foreach (var pairs in Pairings([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]))
            {
                tried++;
                var cassette = new Dictionary<(int Port, char Position), int>();
                for (var port = 1; port <= 6; port++)
                {
                    cassette[(port, 'A')] = pairs[port - 1].Item1;
                    cassette[(port, 'B')] = pairs[port - 1].Item2;
                }

                var mating = SlowModel.Adapter(adapter, 12);
                var link = new SlowLink(cassette, mating, SlowModel.Cable("Type-B", 12), mating, cassette);
                if (SlowModel.Works(["A-to-B", "A-to-B"], [link], 6))
                    working.Add(pairs);
            }

            Assert.Equal([(1, 12), (2, 11), (3, 10), (4, 9), (5, 8), (6, 7)], Assert.Single(working));
        }

        Assert.Equal(2 * 10395, tried);
    }

    // Source: trade facts 3.2, no. 6.
    [Fact]
    public void Of_the_768_duplex_combinations_112_pass_and_56_with_equal_adapters()
    {
        int all = 0, passing = 0, passingWithEqualAdapters = 0;
        foreach (var transitions in Choices(TransitionKeys, 2))
        {
            foreach (var trunk in CableTypes)
            {
                foreach (var adapters in Choices(AdapterKinds, 2))
                {
                    var link = SlowModel.Link(transitions[0], adapters[0], trunk, adapters[1], transitions[1]);
                    foreach (var cords in Choices(CordKinds, 2))
                    {
                        all++;
                        if (!SlowModel.Works(cords, [link], 6))
                            continue;
                        passing++;
                        if (adapters[0] == adapters[1])
                            passingWithEqualAdapters++;
                    }
                }
            }
        }

        Assert.Equal((768, 112, 56), (all, passing, passingWithEqualAdapters));
    }

    // Source: trade facts 4 and 10.
    [Fact]
    public void Of_the_54_parallel_combinations_the_14_typed_ones_pass()
    {
        int all = 0, passing = 0;
        foreach (var adapter in AdapterKinds)
        {
            var found = new HashSet<ParallelTriple>();
            foreach (var types in Choices(CableTypes, 3))
            {
                all++;
                if (ParallelWorks(types, [adapter, adapter]))
                    found.Add(new ParallelTriple(types[0], types[1], types[2]));
            }

            passing += found.Count;
            Assert.Equal(PartTables.PassingParallel(adapter).ToHashSet(), found);
        }

        Assert.Equal((54, 14), (all, passing));
    }

    // Source: trade facts 4, the table of methods and the direct cord.
    [Fact]
    public void The_parallel_methods_and_direct_cords_do_what_is_printed()
    {
        foreach (var row in PartTables.ParallelMethods)
        {
            Assert.True(ParallelWorks([row.OneCord, row.Trunk, row.OtherCord], [row.Adapters, row.Adapters]), row.Method);
            Assert.True(ParallelWorks([row.OtherCord, row.Trunk, row.OneCord], [row.Adapters, row.Adapters]), row.Method);
        }

        foreach (var (cord, meets) in PartTables.DirectCords)
        {
            foreach (var lane in PartTables.FourLanes)
            {
                var arrived = SlowModel.Walk(ParallelSteps([cord], []), lane.ReceptacleTx);
                Assert.Contains(PartTables.FourLanes, l => arrived == (meets == "Rx" ? l.ReceptacleRx : l.ReceptacleTx));
            }
        }
    }

    // Source: trade facts 4.1.
    [Fact]
    public void Lanes_on_the_plug_are_the_receptacle_lanes_seen_through_an_aligned_mating()
    {
        foreach (var (rows, places) in new[] { (PartTables.FourLanes, 12), (PartTables.EightLanes, 16) })
        {
            var mating = SlowModel.Mating(1, places, opposed: false);
            foreach (var lane in rows)
            {
                Assert.Equal(lane.PlugTx, mating[lane.ReceptacleTx]);
                Assert.Equal(lane.PlugRx, mating[lane.ReceptacleRx]);
                Assert.Equal(places + 1, lane.ReceptacleTx + lane.ReceptacleRx);
            }
        }

        Assert.Equal(PartTables.EightOfTwelve, PartTables.FourLanes.SelectMany(l => new[] { l.ReceptacleTx, l.ReceptacleRx }).Order());
        Assert.Equal(SlowModel.Populated(16), PartTables.EightLanes.SelectMany(l => new[] { l.ReceptacleTx, l.ReceptacleRx }).Order());
    }

    // Source: trade facts 4.2.
    [Fact]
    public void The_harness_leads_lane_k_to_the_transceiver_on_leg_k()
    {
        var legs = Typed(PartTables.Harness.Select(l => new PortWiring(l.Leg, l.A, l.B)).ToArray());
        var aligned = SlowModel.Adapter("Type-B", 12);
        foreach (var lane in PartTables.FourLanes)
        {
            Assert.Equal((lane.Lane, "Rx"), SlowModel.AnswerHarness(lane.ReceptacleTx, [aligned], legs));
            Assert.Equal((lane.Lane, "Tx"), SlowModel.AnswerHarness(lane.ReceptacleRx, [aligned], legs));
        }
    }

    // Source: trade facts 3.4, breakout check. Cables are named from the array port to the cassette.
    [Theory]
    [InlineData("U2", "Type-B", "A-to-B", true, "Type-B")]
    [InlineData("U2", "Type-B", "A-to-B", true, "Type-B", "Type-B")]
    [InlineData("U2", "Type-B", "A-to-B", true, "Type-B", "Type-B", "Type-B")]
    [InlineData("U1", "Type-A", "A-to-B", true, "Type-B")]
    [InlineData("U1", "Type-A", "A-to-B", true, "Type-B", "Type-B", "Type-B")]
    [InlineData("U1", "Type-A", "A-to-B", true, "Type-A", "Type-B")]
    [InlineData("U1", "Type-A", "A-to-B", false, "Type-B", "Type-B")]
    [InlineData("U1", "Type-A", "A-to-A", true, "Type-B", "Type-B")]
    [InlineData("straight", "Type-A", "A-to-B", false, "Type-B")]
    [InlineData("straight", "Type-B", "A-to-B", false, "Type-B")]
    [InlineData("straight", "Type-A", "A-to-A", false, "Type-B")]
    public void Breakout_behind_a_cassette_works_only_as_printed(string cassette, string adapters, string duplexCord, bool works, params string[] cables)
    {
        var steps = new List<Dictionary<int, int>> { SlowModel.Adapter("Type-B", 12) };
        foreach (var cable in cables)
        {
            steps.Add(SlowModel.Cable(cable, 12));
            steps.Add(SlowModel.Adapter(adapters, 12));
        }

        var transition = SlowModel.Transition(cassette, 12);
        var all = true;
        foreach (var lane in PartTables.FourLanes)
        {
            all &= SlowModel.AnswerBreakout(lane.ReceptacleTx, steps, transition, duplexCord) == (lane.Lane, "Rx");
            all &= SlowModel.AnswerBreakout(lane.ReceptacleRx, steps, transition, duplexCord) == (lane.Lane, "Tx");
        }

        Assert.Equal(works, all);
    }

    // Source: trade facts 5, the two-row trunk with cassettes, with either adapter kind.
    [Fact]
    public void Every_two_row_trunk_works_with_the_cassettes_and_cords_printed_for_it()
    {
        foreach (var row in PartTables.TwoRowTrunks)
        {
            foreach (var opposed in new[] { false, true })
            {
                var mating = SlowModel.Mating(2, 12, opposed);
                var link = new SlowLink(
                    Typed(PartTables.TwoRowStraight),
                    mating,
                    Typed(PartTables.TwoRowCable(row.Trunk)),
                    mating,
                    Typed(PartTables.TwoRowTransition(row.RightTransition)));
                Assert.True(SlowModel.Works(["A-to-B", row.RightCord], [link], 12), row.Trunk);
                Assert.False(SlowModel.Works(["A-to-B", row.RightCord == "A-to-B" ? "A-to-A" : "A-to-B"], [link], 12), row.Trunk);
            }
        }
    }

    // Source: trade facts 5, the ten-lane direct cord.
    [Fact]
    public void A_ten_lane_direct_cord_works_only_with_the_maps_printed_as_passing()
    {
        var aligned = SlowModel.Mating(2, 12, opposed: false);
        foreach (var (cord, works) in PartTables.TenLaneDirectCords)
        {
            var steps = new[] { aligned, Typed(PartTables.TwoRowCable(cord)), aligned };
            var met = PartTables.TenLaneTransmit.Select(p => SlowModel.Walk(steps, p)).ToArray();
            Assert.Equal(works, met.All(p => p is not null && PartTables.TenLaneReceive.Contains(p.Value)));
            if (!works)
                Assert.DoesNotContain(met, p => p is not null && PartTables.TenLaneReceive.Contains(p.Value));
            if (cord == "pair-flipped")
            {
                // Two of the ten transmitters end in the unused outer columns: partly dark.
                Assert.Equal(2, met.Count(p => p is not null && !PartTables.TenLaneTransmit.Contains(p.Value)));
            }
        }
    }

    // Source: trade facts 3.3.
    [Fact]
    public void Every_fault_of_the_catalogue_meets_what_is_printed()
    {
        foreach (var fault in FaultTable.Rows)
        {
            var good = MethodTables.IngredientsOf(fault.Method);
            var leftAdapter = fault.Changed is "left-adapter" or "both-adapters" ? fault.To : good.Adapters;
            var rightAdapter = fault.Changed is "right-adapter" or "both-adapters" ? fault.To : good.Adapters;
            var trunk = fault.Changed == "trunk" ? fault.To : good.Trunk;
            var rightTransition = fault.Changed == "right-transition" ? fault.To : good.RightTransition;
            var leftCord = fault.Changed == "left-cord" ? fault.To : good.LeftCord;
            var rightCord = fault.Changed == "right-cord" ? fault.To : good.RightCord;

            var different = (leftAdapter, rightAdapter, trunk, rightTransition, leftCord, rightCord)
                != (good.Adapters, good.Adapters, good.Trunk, good.RightTransition, good.LeftCord, good.RightCord);
            Assert.True(different, $"{fault.Method} {fault.Changed} {fault.To} changes nothing");

            var link = SlowModel.Link(good.LeftTransition, leftAdapter, trunk, rightAdapter, rightTransition);
            Assert.Equal(6, fault.LeftTransmitters.Count);
            foreach (var meeting in fault.LeftTransmitters)
            {
                Assert.True(
                    SlowModel.Answer(leftCord, link, rightCord, meeting.LeftPort, "Tx") == (meeting.RightPort, meeting.Meets),
                    $"{fault.Method} {fault.Changed} {fault.To}: left port {meeting.LeftPort}");
            }
        }
    }

    // Source: trade facts 9.1.
    [Fact]
    public void The_twelve_colours_are_numbered_in_order_and_every_code_is_its_own()
    {
        Assert.Equal(Enumerable.Range(1, 12), ColourTable.Twelve.Select(c => c.Number));
        Assert.Equal(12, ColourTable.Twelve.Select(c => c.TiaName).Distinct().Count());
        Assert.Equal(12, ColourTable.Twelve.Select(c => c.TiaCode).Distinct().Count());
        Assert.Equal(12, ColourTable.Twelve.Select(c => c.IecCode).Distinct().Count());
    }

    // Source: trade facts 9.1, tube = (n - 1) / 12 + 1 and fibre = (n - 1) mod 12 + 1.
    [Fact]
    public void The_tube_examples_follow_the_rule_of_twelve()
    {
        foreach (var (fibre, tube, tubeColour, inTube, fibreColour) in ColourTable.TubeExamples)
        {
            Assert.Equal(fibre, ((tube - 1) * 12) + inTube);
            Assert.InRange(inTube, 1, 12);
            Assert.Equal(tubeColour, ColourTable.Twelve[tube - 1].TiaName);
            Assert.Equal(fibreColour, ColourTable.Twelve[inTube - 1].TiaName);
        }

        Assert.Equal(ColourTable.TracerColour, ColourTable.Twelve[ColourTable.FibreWithOtherTracer - 13].TiaName);
        Assert.NotEqual(ColourTable.TracerColour, ColourTable.OtherTracerColour);
    }

    private static SlowLink LinkOf(MethodIngredients parts, int fibres = 12) =>
        SlowModel.Link(parts.LeftTransition, parts.Adapters, parts.Trunk, parts.Adapters, parts.RightTransition, fibres);

    private static List<Dictionary<int, int>> ParallelSteps(IReadOnlyList<string> cables, IReadOnlyList<string> adapters)
    {
        // Both transceiver matings are aligned (trade facts 4.1).
        var steps = new List<Dictionary<int, int>> { SlowModel.Adapter("Type-B", 12) };
        for (var i = 0; i < cables.Count; i++)
        {
            steps.Add(SlowModel.Cable(cables[i], 12));
            steps.Add(SlowModel.Adapter(i < adapters.Count ? adapters[i] : "Type-B", 12));
        }

        return steps;
    }

    private static bool ParallelWorks(IReadOnlyList<string> cables, IReadOnlyList<string> adapters)
    {
        var steps = ParallelSteps(cables, adapters);
        foreach (var lane in PartTables.FourLanes)
        {
            if (SlowModel.Walk(steps, lane.ReceptacleTx) != lane.ReceptacleRx || SlowModel.Walk(steps, lane.ReceptacleRx) != lane.ReceptacleTx)
                return false;
        }

        return true;
    }

    private static Dictionary<int, int> Typed(IReadOnlyList<(int From, int To)> rows)
    {
        var map = new Dictionary<int, int>();
        foreach (var (from, to) in rows)
            map.Add(from, to);
        return map;
    }

    private static Dictionary<(int Port, char Position), int> Typed(IReadOnlyList<PortWiring> rows)
    {
        var map = new Dictionary<(int Port, char Position), int>();
        foreach (var row in rows)
        {
            map.Add((row.Port, 'A'), row.A);
            map.Add((row.Port, 'B'), row.B);
        }

        return map;
    }

    private static Dictionary<(int Port, char Position), int> ExchangedPairs(Dictionary<(int Port, char Position), int> transition)
    {
        var map = new Dictionary<(int Port, char Position), int>();
        foreach (var (place, array) in transition)
            map.Add((place.Port, place.Position == 'A' ? 'B' : 'A'), array);
        return map;
    }

    private static char Reached(CordRow cord, char position) => position == 'A' ? cord.NearAReaches : cord.NearBReaches;

    // Every way to fill so many places from the options, in counting order.
    private static IEnumerable<string[]> Choices(string[] options, int places)
    {
        if (places == 0)
        {
            yield return [];
            yield break;
        }

        foreach (var rest in Choices(options, places - 1))
        {
            foreach (var option in options)
                yield return [.. rest, option];
        }
    }

    // Every way to split the positions into pairs; the lowest free position opens each pair, so none comes twice.
    private static IEnumerable<(int, int)[]> Pairings(int[] free)
    {
        if (free.Length == 0)
        {
            yield return [];
            yield break;
        }

        for (var i = 1; i < free.Length; i++)
        {
            var chosen = i;
            foreach (var rest in Pairings(free.Where((_, at) => at != 0 && at != chosen).ToArray()))
                yield return [(free[0], free[chosen]), .. rest];
        }
    }
}
