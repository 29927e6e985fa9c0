using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Parts;

public sealed class InterfaceTests
{
    // Source: trade facts 1, rule 4: A transmits and B receives. Plugs 3 sources; transmitter left 2 sources.
    [Fact]
    public void A_duplex_interface_transmits_at_a_and_receives_at_b()
    {
        Shape shape = Bench.ShapeOf("duplex interface", v => v.Set("ports", 48));
        Assert.Equal(48, shape.Ports.Count);
        Assert.Equal(96, shape.Lanes.Count);
        foreach ((char position, string role, char plug) in PartTables.DuplexTransceiver)
        {
            Assert.True(Face.Duplex.TryParsePosition($"{position}", out int number));
            Assert.All(
                shape.Lanes.Where(l => l.Position == number),
                l => Assert.Equal((role == "Tx" ? LaneDirection.Transmit : LaneDirection.Receive, 1), (l.Direction, l.Number)));
            TracedPlant traced = new Bench().Add("S", "duplex interface").Add("C", "duplex cord", v => v.Set("type", "A-to-B")).Mate("S/1", "C/near").Trace();
            Assert.Equal($"C/near:{plug}", traced.WalkFrom($"S/1:{position}")[1]);
        }
    }

    // Source: trade facts 4.1, four lanes on one row of twelve. IEEE 802.3 clauses 86 and 95 from memory; 2 sources.
    [Fact]
    public void A_parallel_interface_has_its_lanes_where_the_typed_table_has_them()
    {
        Shape shape = Bench.ShapeOf("parallel interface", v => v.Set("ports", 2));
        Assert.Equal(2 * 2 * PartTables.FourLanes.Count, shape.Lanes.Count);
        for (int port = 0; port < 2; port++)
        {
            foreach (LaneRow row in PartTables.FourLanes)
            {
                Assert.Contains(new Lane(port, row.ReceptacleTx, LaneDirection.Transmit, row.Lane), shape.Lanes);
                Assert.Contains(new Lane(port, row.ReceptacleRx, LaneDirection.Receive, row.Lane), shape.Lanes);
            }
        }
    }

    // Source: trade facts 4.1: the plug goes in key up to key up. IEEE 802.3 from memory; mirrored numbers proved.
    [Fact]
    public void The_plug_in_a_parallel_interface_sees_the_lanes_mirrored()
    {
        TracedPlant traced = new Bench()
            .Add("Q", "parallel interface")
            .Add("X", "array cord", v => v.Set("type", "Type-B"))
            .Mate("Q/1", "X/near")
            .Trace();
        foreach (LaneRow row in PartTables.FourLanes)
        {
            Assert.Equal($"X/near:{row.PlugTx}", traced.WalkFrom($"Q/1:{row.ReceptacleTx}")[1]);
            Assert.Equal($"X/near:{row.PlugRx}", traced.WalkFrom($"Q/1:{row.ReceptacleRx}")[1]);
        }
    }

    [Fact]
    public void The_keys_of_a_parallel_interface_are_its_own()
    {
        PortShape port = Bench.ShapeOf("parallel interface").Ports[0];
        Assert.Equal(Keying.Aligned, port.Keys);
        Assert.True(port.KeysFixed);
    }
}
