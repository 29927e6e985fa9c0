using Xunit;

namespace PolarityMap.Core.Tests.Oracles;

/// <summary>The wider typed tables agree with themselves, with each other and with the slow model. No product code is called.</summary>
public sealed class OracleTableTests
{
    private static readonly string[] CableTypes = ["Type-A", "Type-B", "Type-C"];
    private static readonly string[] TransitionKeys = ["straight", "straight-reversed", "U1", "U2"];

    // Source: trade facts 5: a mating read from either face is the same mating.
    [Fact]
    public void Every_mating_is_an_involution_and_covers_every_position_once()
    {
        foreach (var (rows, positions) in new[]
        {
            (PartTables.SixteenAligned, 16), (PartTables.SixteenOpposed, 16),
            (PartTables.TwoRowAligned, 24), (PartTables.TwoRowOpposed, 24),
            (PartTables.ThirtyTwoAligned, 32), (PartTables.ThirtyTwoOpposed, 32),
        })
        {
            var map = Bijection(rows, positions);
            Assert.All(map, pair => Assert.Equal(pair.Key, map[pair.Value]));
        }
    }

    // Source: trade facts 5, the rule for R rows and C columns, by coordinates.
    [Fact]
    public void Matings_of_sixteen_and_thirty_two_follow_from_the_coordinates()
    {
        Assert.Equal(SlowModel.Mating(1, 16, opposed: false), Map(PartTables.SixteenAligned));
        Assert.Equal(SlowModel.Mating(1, 16, opposed: true), Map(PartTables.SixteenOpposed));
        Assert.Equal(SlowModel.Mating(2, 16, opposed: false), Map(PartTables.ThirtyTwoAligned));
        Assert.Equal(SlowModel.Mating(2, 16, opposed: true), Map(PartTables.ThirtyTwoOpposed));
    }

    // Source: trade facts 2.1 and 2.2.
    [Fact]
    public void Every_cable_map_is_a_bijection_and_reads_alike_from_both_ends()
    {
        foreach (var (rows, positions) in new[]
        {
            (PartTables.SixteenFibreTypeA, 16), (PartTables.SixteenFibreTypeB, 16), (PartTables.SixteenFibreTypeC, 16),
            (PartTables.StraightByNumber, 24), (PartTables.RowsExchanged, 24), (PartTables.ReversedInRow, 24),
            (PartTables.FullyReversed, 24), (PartTables.PairFlipped, 24),
        })
        {
            var map = Bijection(rows, positions);
            Assert.All(map, pair => Assert.Equal(pair.Key, map[pair.Value]));
        }

        foreach (var type in CableTypes)
            Assert.Equal(SlowModel.Cable(type, 16), Map(PartTables.SixteenFibreCable(type)));
    }

    // Source: trade facts 6.2.
    [Fact]
    public void Every_transition_of_sixteen_fills_eight_ports_and_uses_every_position_once()
    {
        foreach (var key in TransitionKeys)
        {
            var wiring = PartTables.SixteenFibreTransition(key);
            Assert.Equal(Enumerable.Range(1, 8), wiring.Select(p => p.Port));
            Assert.Equal(Enumerable.Range(1, 16), wiring.SelectMany(p => new[] { p.A, p.B }).Order());
            Assert.Equal(SlowModel.Transition(key, 16), Wiring(wiring));
        }
    }

    // Source: trade facts 6.2: all five methods pass on sixteen, here with the typed parts.
    [Fact]
    public void All_five_methods_pass_on_the_typed_parts_of_sixteen()
    {
        foreach (var parts in MethodTables.Ingredients)
        {
            var mating = Map(parts.Adapters == "Type-B" ? PartTables.SixteenAligned : PartTables.SixteenOpposed);
            var link = new SlowLink(
                Wiring(PartTables.SixteenFibreTransition(parts.LeftTransition)),
                mating,
                Map(PartTables.SixteenFibreCable(parts.Trunk)),
                mating,
                Wiring(PartTables.SixteenFibreTransition(parts.RightTransition)));
            Assert.True(SlowModel.Works([parts.LeftCord, parts.RightCord], [link], 8), parts.Method);
        }
    }

    // Source: trade facts 5, the universal transitions of the table of two-row trunks.
    [Fact]
    public void A_two_row_trunk_works_with_its_universal_transition_at_both_ends_and_no_other_trunk_does()
    {
        foreach (var row in PartTables.TwoRowUniversals)
        {
            var cassette = PartTables.TwoRowUniversal(row.Transition);
            Assert.Equal(Enumerable.Range(1, 24), cassette.SelectMany(p => new[] { p.A, p.B }).Order());
            foreach (var trunk in PartTables.TwoRowTrunks.Select(t => t.Trunk))
            {
                foreach (var opposed in new[] { false, true })
                {
                    var mating = SlowModel.Mating(2, 12, opposed);
                    var link = new SlowLink(Wiring(cassette), mating, Map(PartTables.TwoRowCable(trunk)), mating, Wiring(cassette));
                    Assert.Equal(trunk == row.Trunk, SlowModel.Works([row.BothCords, row.BothCords], [link], 12));
                }
            }
        }
    }

    // Source: interface facts 2.2, cable oracle of the two-row port.
    [Fact]
    public void A_two_row_direct_cord_leads_where_it_is_printed_and_into_the_other_row()
    {
        var aligned = Map(PartTables.TwoRowAligned);
        var reversed = PartTables.TenLaneThroughFullyReversed.Select(r => (Cord: "fully-reversed", r.Port, r.FarPort));
        var exchanged = PartTables.TenLaneThroughRowsExchanged.Select(r => (Cord: "rows-exchanged", r.Port, r.FarPort));
        foreach (var rows in new[] { reversed.ToArray(), exchanged.ToArray() })
        {
            Assert.Equal(Enumerable.Range(14, 10), rows.Select(r => r.Port));
            Assert.Equal(Enumerable.Range(2, 10), rows.Select(r => r.FarPort).Order());
            Assert.All(rows, r => Assert.Equal(r.FarPort, SlowModel.Walk([aligned, Map(PartTables.TwoRowCable(r.Cord)), aligned], r.Port)));
        }
    }

    // Source: trade facts 6.3: every port is complete, and no fibre is used twice or left over.
    [Fact]
    public void Every_conversion_is_a_bijection()
    {
        foreach (var (rows, trunks, positions, portPositions) in Conversions())
        {
            var places = rows.Select(r => (r.Port, r.PortPosition)).ToHashSet();
            var ends = rows.Select(r => (r.Trunk, r.TrunkPosition)).ToHashSet();
            Assert.Equal(rows.Count, places.Count);
            Assert.Equal(trunks * positions, ends.Count);
            Assert.Equal(rows.Count, ends.Count);
            Assert.All(ends, e => Assert.True(e.Trunk >= 1 && e.Trunk <= trunks && e.TrunkPosition >= 1 && e.TrunkPosition <= positions));
            foreach (var port in rows.GroupBy(r => r.Port))
                Assert.Equal(portPositions, port.Select(r => r.PortPosition).Order());
        }
    }

    // Source: trade facts 6.3, the derived rule: f(port, 13 - p) is the reversed partner of f(port, p) on the same trunk.
    [Fact]
    public void Opposite_positions_of_a_port_are_reversed_partners_of_one_trunk()
    {
        AssertReversedPartners(PartTables.CableTypeB, ConversionTables.TwoTwelvesToThreeEights);
        AssertReversedPartners(PartTables.SixteenFibreTypeB, ConversionTables.SixteenToTwoEights);
        AssertReversedPartners(PartTables.ReversedInRow, ConversionTables.TwentyFourToTwoTwelves);
        AssertReversedPartners(PartTables.ReversedInRow, ConversionTables.TwentyFourToThreeEightsReversedInRow);
        AssertReversedPartners(PartTables.FullyReversed, ConversionTables.TwentyFourToThreeEightsFullyReversed);
    }

    // Source: trade facts 6.3: for reversed-in-row trunks the 2x12 table with trunk 1 = row 1 and trunk 2 = row 2.
    [Fact]
    public void The_reversed_in_row_reading_of_24_is_the_table_of_two_trunks_row_for_row()
    {
        Assert.Equal(
            ConversionTables.TwoTwelvesToThreeEights,
            ConversionTables.TwentyFourToThreeEightsReversedInRow.Select(r =>
                r.TrunkPosition > 12 ? r with { Trunk = 2, TrunkPosition = r.TrunkPosition - 12 } : r));
    }

    // Source: interface facts 3, "checked end to end": near lane k of sixteen meets lane k, then k - 4, of the far ports.
    [Fact]
    public void The_split_of_sixteen_leads_every_lane_to_the_receiver_of_its_lane_and_back()
    {
        var rows = ConversionTables.SixteenPlugToTwoTwelvePlugs;
        Assert.Equal(Enumerable.Range(1, 16), rows.Select(r => r.SixteenPosition));
        Assert.Equal(16, rows.Select(r => (r.Leg, r.TwelvePosition)).Distinct().Count());
        var near = Map(PartTables.SixteenAligned);
        var far = Map(PartTables.AdapterTypeB.Joins);
        foreach (var lane in PartTables.EightLanes)
        {
            var leg = lane.Lane <= 4 ? 1 : 2;
            var farLane = PartTables.FourLanes[(lane.Lane - 1) % 4];
            var sent = rows.Single(r => r.SixteenPosition == near[lane.ReceptacleTx]);
            var heard = rows.Single(r => r.SixteenPosition == near[lane.ReceptacleRx]);
            Assert.Equal((leg, farLane.ReceptacleRx), (sent.Leg, far[sent.TwelvePosition]));
            Assert.Equal((leg, farLane.ReceptacleTx), (heard.Leg, far[heard.TwelvePosition]));
        }
    }

    // Source: interface facts 3: the leg's plug A enters the far receiver, its plug B the far transmitter.
    [Fact]
    public void A_breakout_leg_pairs_one_transmitter_with_one_receiver_through_an_aligned_mating()
    {
        foreach (var (rows, mating, lanes) in new[]
        {
            (ConversionTables.FourLanesOnTwelve, PartTables.AdapterTypeB.Joins, PartTables.FourLanes),
            (ConversionTables.EightLanesOnSixteen, PartTables.SixteenAligned, PartTables.EightLanes),
        })
        {
            var aligned = Map(mating);
            Assert.Equal(lanes.Select(l => (l.Lane, l.ReceptacleTx, l.ReceptacleRx)), rows.Select(r => (r.Leg, r.PortTx, r.PortRx)));
            foreach (var row in rows)
            {
                Assert.Equal(row.PlugToFarRx, aligned[row.PortTx]);
                Assert.Equal(row.PlugFromFarTx, aligned[row.PortRx]);
                Assert.Equal((row.PlugToFarRx, row.PlugFromFarTx), (row.DuplexA, row.DuplexB));
            }
        }

        Assert.Equal(PartTables.Harness, ConversionTables.FourLanesOnTwelve.Select(r => (r.Leg, r.DuplexA, r.DuplexB)));
    }

    // Source: interface facts 1, direct-cord oracle.
    [Fact]
    public void A_direct_cord_reaches_what_is_printed_and_only_type_b_meets_receivers()
    {
        foreach (var row in InterfaceTables.DirectCordsOfTwelve.Concat(InterfaceTables.DirectCordsOfSixteen))
        {
            var aligned = SlowModel.Mating(1, row.Positions, opposed: false);
            Assert.Equal(row.FarPosition, SlowModel.Walk([aligned, SlowModel.Cable(row.Cord, row.Positions), aligned], row.PortTx));
            var lanes = row.Positions == 12 ? PartTables.FourLanes : PartTables.EightLanes;
            Assert.Contains(lanes, l => l.ReceptacleTx == row.PortTx);
            Assert.Contains(lanes, l => row.FarPosition == (row.MeetsReceive ? l.ReceptacleRx : l.ReceptacleTx));
            Assert.Equal(row.Cord == "Type-B", row.MeetsReceive);
        }

        Assert.Equal(12, InterfaceTables.DirectCordsOfTwelve.Distinct().Count());
        Assert.Equal(24, InterfaceTables.DirectCordsOfSixteen.Distinct().Count());
    }

    // Source: interface facts 1 and 2.2.
    [Fact]
    public void An_array_port_uses_every_position_once_and_receives_where_its_mirror_transmits()
    {
        foreach (var port in InterfaceTables.ArrayPorts)
        {
            Assert.Equal(Enumerable.Range(1, port.Positions), port.Transmit.Concat(port.Receive).Concat(port.Unused).Order());
            Assert.Equal(port.Receive, port.Transmit.Select(p => port.Positions + 1 - p).Order());
            Assert.Equal(PartTables.DarkOfTwelve, port.Unused);
            var shape = InterfaceTables.ArrayPortShapes.Single(s => s.Interface == port.Interface);
            Assert.Equal(shape.FibresUsed, port.Transmit.Count + port.Receive.Count);
        }

        Assert.All(InterfaceTables.ArrayPortShapes, s => Assert.InRange(s.FibresUsed, 2, s.Rows * s.Columns));
        var tenLanes = InterfaceTables.ArrayPortShapes.Single(s => s.Interface == "100GBASE-SR10");
        Assert.Equal(tenLanes.FibresUsed, (tenLanes.Rows * tenLanes.Columns) - InterfaceTables.DarkOfTenLanePort.Count);
    }

    // Source: interface facts 2.1.
    [Fact]
    public void Single_fibre_interfaces_come_in_pairs_that_hear_what_the_other_sends()
    {
        foreach (var row in InterfaceTables.SingleFibrePairs)
        {
            var other = InterfaceTables.SingleFibrePairs.Single(r => r.Interface == row.Counterpart);
            Assert.Equal((row.ReceiveNm, row.TransmitNm, row.Interface), (other.TransmitNm, other.ReceiveNm, other.Counterpart));
            Assert.NotEqual(row.TransmitNm, row.ReceiveNm);
        }
    }

    // Source: interface facts 2: one row for one interface on one fibre, and no row without a confirmed figure.
    [Fact]
    public void Every_interface_row_is_its_own_and_confirms_something()
    {
        var rows = InterfaceTables.DuplexAndSingleFibre.Concat(InterfaceTables.Arrays).ToArray();
        Assert.Equal(rows.Length, rows.Select(r => (r.Interface, r.Fibre)).Distinct().Count());
        foreach (var row in rows)
        {
            Assert.True(row.Metres is > 0 || row.LossDb is > 0 || row.WavelengthsNm.Count > 0, row.Interface);
            Assert.True(row.AllocDb is null || row.AllocDb <= row.LossDb, row.Interface);
            Assert.Single(rows.Where(r => r.Interface == row.Interface).Select(r => r.Clause).Distinct());
        }

        foreach (var window in InterfaceTables.TransmitWindows)
        {
            var row = rows.First(r => r.Interface == window.Interface);
            Assert.All(row.WavelengthsNm, nm => Assert.InRange(nm, window.LowNm, window.HighNm));
        }

        foreach (var cable in InterfaceTables.DistancesByCable.GroupBy(d => d.Interface))
            Assert.Equal(cable.First().Metres, rows.Single(r => r.Interface == cable.Key).Metres);
    }

    // Source: interface facts 2.2, the arithmetic check.
    [Fact]
    public void A_printed_loss_is_its_sum_to_within_the_rounding_and_stands_in_the_table()
    {
        var rows = InterfaceTables.DuplexAndSingleFibre.Concat(InterfaceTables.Arrays).ToArray();
        foreach (var sum in InterfaceTables.LossSums)
        {
            Assert.Equal(sum.UnroundedDb, sum.AllocDb + (sum.Metres / 1000m * sum.DbPerKm));
            Assert.InRange(sum.PrintedDb - sum.UnroundedDb, -0.055m, 0.055m);
            var row = rows.Single(r => r.Interface == sum.Interface && r.Fibre == sum.Fibre);
            Assert.Equal(sum.PrintedDb, row.LossDb);
            Assert.Equal(sum.Metres, row.Metres);
            Assert.True(row.AllocDb is null || row.AllocDb == sum.AllocDb, sum.Interface);
        }
    }

    // Source: interface facts 4.4.
    [Fact]
    public void Every_worked_example_adds_up_to_the_figure_that_is_printed()
    {
        Assert.Equal(11, LossTables.WorkedExamples.Select(e => e.Id).Distinct().Count());
        foreach (var example in LossTables.WorkedExamples)
        {
            foreach (var item in example.Items)
                Assert.True(item.PrintedDb is null || item.PrintedDb == item.Count * item.EachDb, $"{example.Id} {item.What}");
            if (example.Items.Count > 0)
                AssertNear(example.TotalDb, example.Items.Sum(i => i.Count * i.EachDb), example.Id);
            if (example.MarginDb is not null)
                AssertNear(example.MarginDb, example.LimitDb - example.TotalDb, example.Id);

            // The cable of the sum is as long as the channel that is judged, and loses what its class may lose.
            if (example.Metres is not null && example.Items.Count > 0)
            {
                Assert.Equal(example.Metres.Value, example.Items[0].Count * 1000m);
                Assert.Contains(LossTables.Attenuation, a => a.Class == example.Fibre && a.DbPerKm == example.Items[0].EachDb);
            }
        }
    }

    // Source: interface facts 4.3, application check, and 4.4.
    [Fact]
    public void Every_verdict_of_a_worked_example_follows_from_loss_and_length()
    {
        var rows = InterfaceTables.DuplexAndSingleFibre.Concat(InterfaceTables.Arrays).ToArray();
        foreach (var example in LossTables.WorkedExamples.Where(e => e.Verdict is not null))
        {
            var fibre = example.Fibre!.StartsWith("OS", StringComparison.Ordinal) ? "OS" : example.Fibre;
            var row = rows.Single(r => r.Interface == example.Interface && r.Fibre == fibre);
            var lossFits = example.TotalDb is null || example.TotalDb <= example.LimitDb;
            var lengthFits = example.Metres <= row.Metres;
            Assert.True(example.LimitDb is null || example.LimitDb == row.LossDb, example.Id);
            Assert.True(example.MetresLimit is null || example.MetresLimit == row.Metres, example.Id);
            var expected = (lossFits, lengthFits) switch
            {
                (false, _) => "fail",
                (_, false) => "fail on length",
                _ => fibre == "OS" && example.Items[0].EachDb > 0.5m ? "warn" : "pass",
            };
            Assert.Equal(expected, example.Verdict);
        }
    }

    // Source: interface facts 4.4, W1b.
    [Fact]
    public void The_statistical_example_gives_12_86_with_a_system_variance_of_0_05_and_not_with_0_04()
    {
        var example = LossTables.W1b;
        Assert.Equal(example.PrintedVariance, example.Variances.Sum(v => v.Count * v.Variance));
        Assert.Equal(example.PrintedDeviationDb, Deviation(example.PrintedVariance + example.SystemVariance));
        Assert.Equal(example.TotalDb, Total(example.PrintedDeviationDb));
        Assert.Equal(12.82m, Total(Deviation(example.PrintedVariance + 0.04m)));
        AssertNear(example.MeanDb, LossTables.WorkedExamples.Single(e => e.Id == "W1").TotalDb, example.Id);

        static decimal Deviation(decimal variance) => decimal.Round((decimal)Math.Sqrt((double)variance), 3);

        decimal Total(decimal deviation) => decimal.Round(example.MeanDb + (example.Sigmas * deviation) + example.FixedDb, 2);
    }

    // Source: interface facts 4.5: ns per m = group index / 0.299792458.
    [Fact]
    public void The_delay_of_a_fibre_is_its_group_index_over_the_speed_of_light()
    {
        foreach (var row in LossTables.Delay)
            Assert.Equal(row.NsPerMetre, decimal.Round(row.GroupIndex / 0.299792458m, row.PrintedDecimals));
    }

    // Source: interface facts 4.1 and 4.2: one figure for one class, wavelength and standard.
    [Fact]
    public void No_limit_is_typed_twice()
    {
        var attenuation = LossTables.Attenuation.Select(a => (a.Class, a.WavelengthNm, a.Standard)).ToArray();
        Assert.Equal(attenuation.Length, attenuation.Distinct().Count());
        var limits = LossTables.ConnectionLimits.Select(c => (c.Item, c.FibreKind, c.Standard, c.Edition)).ToArray();
        Assert.Equal(limits.Length, limits.Distinct().Count());
        Assert.All(LossTables.ConnectionLimits, c => Assert.InRange(c.Db, 0.01m, 0.75m));
        Assert.All(LossTables.TypicalAttenuation, t => Assert.True(t.LowDbPerKm <= t.HighDbPerKm));
        Assert.Equal(2.2m, LossTables.WorkedExamples.Single(e => e.Id == "W4").Items[^1].EachDb);
        Assert.Contains(LossTables.CoreSteps, s => s.FromUm > s.ToUm && s.Db == 2.2m);
        Assert.All(LossTables.CoreSteps, s => Assert.Equal(s.FromUm > s.ToUm, s.Db > 0));
    }

    private static (IReadOnlyList<ConversionRow> Rows, int Trunks, int Positions, IEnumerable<int> PortPositions)[] Conversions() =>
    [
        (ConversionTables.TwoTwelvesToThreeEights, 2, 12, PartTables.EightOfTwelve),
        (ConversionTables.SixteenToTwoEights, 1, 16, PartTables.EightOfTwelve),
        (ConversionTables.TwentyFourToTwoTwelves, 1, 24, Enumerable.Range(1, 12)),
        (ConversionTables.TwentyFourToThreeEightsReversedInRow, 1, 24, PartTables.EightOfTwelve),
        (ConversionTables.TwentyFourToThreeEightsFullyReversed, 1, 24, PartTables.EightOfTwelve),
    ];

    private static void AssertReversedPartners(IReadOnlyList<(int Near, int Far)> trunk, IReadOnlyList<ConversionRow> rows)
    {
        var reversed = Map(trunk);
        foreach (var row in rows)
        {
            var opposite = rows.Single(r => r.Port == row.Port && r.PortPosition == 13 - row.PortPosition);
            Assert.Equal((row.Trunk, reversed[row.TrunkPosition]), (opposite.Trunk, opposite.TrunkPosition));
        }
    }

    private static void AssertNear(decimal? printed, decimal? worked, string what) =>
        Assert.True(printed is not null && worked is not null && Math.Abs(printed.Value - worked.Value) < 0.01m, $"{what}: {printed} against {worked}");

    private static Dictionary<int, int> Bijection(IReadOnlyList<(int From, int To)> rows, int positions)
    {
        var map = Map(rows);
        Assert.Equal(Enumerable.Range(1, positions), map.Keys.Order());
        Assert.Equal(Enumerable.Range(1, positions), map.Values.Order());
        return map;
    }

    private static Dictionary<int, int> Map(IReadOnlyList<(int From, int To)> rows) => rows.ToDictionary(r => r.From, r => r.To);

    private static Dictionary<(int Port, char Position), int> Wiring(IReadOnlyList<PortWiring> rows) =>
        rows.SelectMany(r => new[] { ((r.Port, 'A'), r.A), ((r.Port, 'B'), r.B) }).ToDictionary(p => p.Item1, p => p.Item2);
}
