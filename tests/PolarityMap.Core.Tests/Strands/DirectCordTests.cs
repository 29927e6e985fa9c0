using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Strands;

/// <summary>One array cord straight between two ports of 12, 16 and 2x12, against the typed oracles.</summary>
public sealed class DirectCordTests
{
    public static TheoryData<string, int> Cords
    {
        get
        {
            var cords = new TheoryData<string, int>();
            foreach (string type in (string[])["Type-A", "Type-B", "Type-C"])
            {
                cords.Add(type, 12);
                cords.Add(type, 16);
            }

            return cords;
        }
    }

    // Source: interface facts 1, direct-cord oracle. Derived.
    [Theory]
    [MemberData(nameof(Cords))]
    public void Every_transmitting_position_reaches_the_far_position_that_is_typed(string cord, int positions)
    {
        DirectCordRow[] rows = [.. InterfaceTables.DirectCordsOfTwelve.Concat(InterfaceTables.DirectCordsOfSixteen).Where(r => r.Cord == cord && r.Positions == positions)];
        Assert.Equal(positions == 12 ? 4 : 8, rows.Length);
        foreach (bool backwards in (bool[])[false, true])
        {
            TracedPlant traced = Direct(positions == 12 ? "100GBASE-SR4" : "400GBASE-SR8", positions, cord).Write(backwards).Trace();
            foreach (DirectCordRow row in rows)
            {
                Assert.Equal($"R/1:{row.FarPosition}", traced.Meets($"L/1:{row.PortTx}"));
                Assert.Equal($"L/1:{row.FarPosition}", traced.Meets($"R/1:{row.PortTx}"));
                Assert.Equal(row.MeetsReceive ? LaneDirection.Receive : LaneDirection.Transmit, DirectionAt(traced, $"R/1:{row.FarPosition}"));
            }

            Assert.Equal(rows[0].MeetsReceive ? "" : "P01", traced.LightCodes());
        }
    }

    // Source: trade facts 5, ten-lane direct cord. Proved, whichever row transmits.
    [Fact]
    public void A_ten_lane_cord_lights_every_receiver_with_the_typed_maps_and_no_other()
    {
        Assert.Equal(ArrayMap.NamesFor(2).Order(), PartTables.TenLaneDirectCords.Select(c => c.Cord).Order());
        foreach ((string cord, bool everyTransmitMeetsReceive) in PartTables.TenLaneDirectCords)
        {
            foreach (bool backwards in (bool[])[false, true])
            {
                TracedPlant traced = Direct("100GBASE-SR10", 24, cord).Write(backwards).Trace();
                IReadOnlyList<Lane> lanes = traced.Plant.Parts.Single(p => p.Name == "L").Shape.Lanes;
                string[] receivers = [.. lanes.Where(l => l.Direction == LaneDirection.Receive).Select(l => $"R/1:{l.Position}")];
                bool every = lanes.Where(l => l.Direction == LaneDirection.Transmit).All(l => receivers.Contains(traced.Meets($"L/1:{l.Position}")));
                Assert.Equal(everyTransmitMeetsReceive, every);
                traced.AssertVerdict(everyTransmitMeetsReceive, cord);
            }
        }
    }

    // Source: interface facts 2.2, cable oracle of the single 2x12 port. Derived.
    [Fact]
    public void A_ten_lane_cord_leads_every_transmitter_where_it_is_typed()
    {
        foreach ((string cord, IReadOnlyList<(int Port, int FarPort)> rows) in
            new[] { ("fully-reversed", PartTables.TenLaneThroughFullyReversed), ("rows-exchanged", PartTables.TenLaneThroughRowsExchanged) })
        {
            TracedPlant traced = Direct("100GBASE-SR10", 24, cord).Write().Trace();
            Assert.Equal(10, rows.Count);
            Assert.All(rows, r => Assert.Equal($"R/1:{r.FarPort}", traced.Meets($"L/1:{r.Port}")));
        }
    }

    // Source: trade facts 5: pair-flipped leaves ten-lane ports partly dark; proved. 1 and 12, 13 and 24 are dark places.
    [Fact]
    public void Maps_that_keep_the_row_let_transmit_meet_transmit_and_a_pair_flip_leaves_some_of_it_dark()
    {
        Assert.Equal("P01", Direct("100GBASE-SR10", 24, "straight-by-number").Write().Trace().LightCodes());
        Assert.Equal("P01", Direct("100GBASE-SR10", 24, "reversed-in-row").Write().Trace().LightCodes());
        Assert.Equal("P01 P03", Direct("100GBASE-SR10", 24, "pair-flipped").Write().Trace().LightCodes());
    }

    private static Runs Direct(string application, int fibres, string cord) => new Runs()
        .Part("L", "parallel interface", v => v.Set("application", application))
        .Part("R", "parallel interface", v => v.Set("application", application))
        .Part("X", "array cord", v => v.Set("base", fibres).Set("type", cord))
        .Run("L/1", "X", "R/1")
        .Link("L/1", "R/1");

    private static LaneDirection DirectionAt(TracedPlant traced, string address) =>
        traced.Graph.LaneAt(traced.Position(address))!.Value.Direction;
}
