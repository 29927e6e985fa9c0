using PolarityMap.Core.Strands;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Strands;

/// <summary>Ports that send both ways on every fibre, and ports that send from one receptacle and hear at another.</summary>
public sealed class TwoWayChannelTests
{
    private static readonly string[] Cables = ["Type-A", "Type-B", "Type-C"];

    // Source: interface facts 2.2, 400GBASE-SR4.2: positions 1-4 send one wavelength and hear the other, 9-12 the other way
    // about (1 source; which side sends which is from memory and does not matter here). So a low position must meet a high
    // one, which is what the reference model's walk decides.
    [Fact]
    public void Two_way_arrays_work_where_low_positions_meet_high_ones_and_else_their_wavelengths_do_not_meet()
    {
        foreach (string adapter in (string[])["Type-A", "Type-B"])
        {
            foreach (string left in Cables)
            {
                foreach (string trunk in Cables)
                {
                    foreach (string right in Cables)
                    {
                        Dictionary<int, int> plug = SlowModel.Mating(1, 12, opposed: false);
                        Dictionary<int, int> panel = SlowModel.Adapter(adapter, 12);
                        Dictionary<int, int>[] steps = [plug, SlowModel.Cable(left, 12), panel, SlowModel.Cable(trunk, 12), panel, SlowModel.Cable(right, 12), plug];
                        bool works = PartTables.FourLanes.All(l => SlowModel.Walk(steps, l.ReceptacleTx) >= 9 && SlowModel.Walk(steps, l.ReceptacleRx) <= 4);
                        TracedPlant traced = new Runs()
                            .Part("L", "parallel interface", v => v.Set("application", "400GBASE-SR4.2"))
                            .Part("R", "parallel interface", v => v.Set("application", "400GBASE-SR4.2"))
                            .Part("XL", "array cord", v => v.Set("type", left))
                            .Part("T", "trunk", v => v.Set("type", trunk).Set("pins", "both"))
                            .Part("XR", "array cord", v => v.Set("type", right))
                            .Part("P", "array panel", v => v.Set("ports", 2).Set("keys", Channels.Keys(adapter)))
                            .Run("L/1", "XL", "@P/1", "T", "@P/2", "XR", "R/1")
                            .Link("L/1", "R/1")
                            .Write()
                            .Trace();
                        Assert.Equal(works ? "" : "P06", traced.LightCodes());
                    }
                }
            }
        }
    }

    // The application's own note: A sends what B hears and the other way about (common practice). So A must meet B, which an
    // A-to-B cord does between two duplex matings (trade facts 2.4, 6 sources).
    [Fact]
    public void Two_way_duplex_ports_work_with_an_a_to_b_cord_and_not_with_an_a_to_a_cord()
    {
        foreach ((string cord, string codes) in (ReadOnlySpan<(string, string)>)[(PartTables.CordAToB.Cord, ""), (PartTables.CordAToA.Cord, "P06")])
        {
            TracedPlant traced = new Runs()
                .Part("L", "duplex interface", v => v.Set("application", "two-wavelength duplex"))
                .Part("R", "duplex interface", v => v.Set("application", "two-wavelength duplex"))
                .Part("C", "duplex cord", v => v.Set("type", cord))
                .Run("L/1", "C", "R/1")
                .Link("L/1", "R/1")
                .Write()
                .Trace();
            Assert.Equal(codes, traced.LightCodes());
        }
    }

    // Source: interface facts 2.2, 100GBASE-SR10 in two ports: one all transmit, the other all receive, both at 2-11
    // (existence 1 source, positions from memory). 2-11 meets 2-11 through a Type-A or a Type-B cord, by geometry.
    [Fact]
    public void The_two_ports_of_ten_lanes_meet_crosswise_by_cords_that_keep_the_middle_ten()
    {
        foreach (string cord in Cables)
        {
            foreach (bool backwards in (bool[])[false, true])
            {
                Assert.Equal(cord == "Type-C" ? "P03" : "", TenLanes(cord, "R/1b", "R/1a").Write(backwards).Trace().LightCodes());
                Assert.StartsWith("P01 P02", TenLanes(cord, "R/1a", "R/1b").Write(backwards).Trace().LightCodes());
            }
        }
    }

    private static Runs TenLanes(string cord, string farOfA, string farOfB) => new Runs()
        .Part("L", "parallel interface", v => v.Set("application", "100GBASE-SR10").Set("layout", "two ports"))
        .Part("R", "parallel interface", v => v.Set("application", "100GBASE-SR10").Set("layout", "two ports"))
        .Part("XA", "array cord", v => v.Set("type", cord))
        .Part("XB", "array cord", v => v.Set("type", cord))
        .Run("L/1a", "XA", farOfA)
        .Run("L/1b", "XB", farOfB)
        .Link("L/1a", farOfA)
        .Link("L/1b", farOfB);
}
