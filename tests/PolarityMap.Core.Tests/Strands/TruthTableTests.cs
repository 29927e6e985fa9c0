using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Strands;

/// <summary>Every combination of duplex and of parallel ingredients through the product.</summary>
public sealed class TruthTableTests
{
    private static readonly string[] Transitions = ["straight", "straight-reversed", "U1", "U2"];
    private static readonly string[] Cables = ["Type-A", "Type-B", "Type-C"];
    private static readonly string[] Adapters = ["Type-A", "Type-B"];
    private static readonly string[] Cords = ["A-to-B", "A-to-A"];

    // Source: trade facts 3.2, rule 6: 768 combinations, 112 pass, 56 of them with equal adapters. Proved by enumeration;
    // every single answer is the reference model's.
    [Fact]
    public void Of_the_768_duplex_combinations_the_same_112_pass_as_in_the_reference_model()
    {
        int all = 0;
        int pass = 0;
        int equalAdapters = 0;
        foreach (LinkParts link in EveryLink())
        {
            SlowLink slow = link.Slow();
            foreach ((string leftCord, string rightCord) in Cords.SelectMany(l => Cords.Select(r => (l, r))))
            {
                all++;
                TracedPlant traced = Channels.Duplex(link, leftCord, rightCord).Trace();
                for (int port = 1; port <= 6; port++)
                {
                    foreach (string role in (string[])["Tx", "Rx"])
                        Assert.Equal(SlowModel.Answer(leftCord, slow, rightCord, port, role), traced.Answer(port, role));
                }

                bool works = SlowModel.Works([leftCord, rightCord], [slow], 6);
                Assert.Equal(works, Checker.Check(traced).Count == 0);
                if (!works)
                    continue;
                pass++;
                equalAdapters += link.LeftAdapter == link.RightAdapter ? 1 : 0;
            }
        }

        Assert.Equal((768, 112, 56), (all, pass, equalAdapters));
    }

    // Source: trade facts 4: of 54 combinations of trunk, adapter kind and two cords the typed 14 pass. Proved.
    [Fact]
    public void Of_the_54_parallel_combinations_exactly_the_14_typed_ones_pass()
    {
        int all = 0;
        int pass = 0;
        foreach (string adapter in Adapters)
        {
            foreach (string left in Cables)
            {
                foreach (string trunk in Cables)
                {
                    foreach (string right in Cables)
                    {
                        all++;
                        bool typed = PartTables.PassingParallel(adapter).Contains(new ParallelTriple(left, trunk, right));
                        Bench bench = Channels.Parallel([left, trunk, right], [adapter, adapter], byLane: true);
                        Assert.Equal(typed, LaneForLane(bench.Trace()));
                        Assert.Equal(typed, bench.Codes().Length == 0);
                        pass += typed ? 1 : 0;
                    }
                }
            }
        }

        Assert.Equal((54, 14), (all, pass));
    }

    // Source: trade facts 4.1: receivers reorder the lanes of one port (IEEE 802.3 clause 82, from memory). An odd count
    // of reversals and one pair flip bring every transmit to a receive, of another lane (rule 3 of 3.2, proved).
    [Fact]
    public void A_link_of_whole_parallel_ports_is_lit_in_another_order_of_lanes_and_raises_nothing()
    {
        string[] cables = ["Type-A", "Type-C", "Type-B"];
        string[] adapters = ["Type-A", "Type-A"];
        Assert.False(LaneForLane(Channels.Parallel(cables, adapters).Trace()));
        Assert.Equal("", Channels.Parallel(cables, adapters).Codes());
        Assert.Equal("P05", Channels.Parallel(cables, adapters, byLane: true).Codes());
    }

    // Source: trade facts 4, the parallel methods. A and B 1 source, C from memory, U1 derived; all proved.
    [Fact]
    public void The_parallel_methods_work_with_their_cords_in_either_order()
    {
        foreach (ParallelMethodRow row in PartTables.ParallelMethods)
        {
            Assert.Equal("", Channels.Parallel([row.OneCord, row.Trunk, row.OtherCord], [row.Adapters, row.Adapters]).Codes());
            Assert.Equal("", Channels.Parallel([row.OtherCord, row.Trunk, row.OneCord], [row.Adapters, row.Adapters]).Codes());
        }
    }

    // Source: trade facts 4, direct cord. Type-B 4 sources, proved; the others let transmit meet transmit: proved.
    [Fact]
    public void Of_the_direct_cords_between_parallel_ports_only_type_b_lights_the_receivers()
    {
        foreach ((string cord, string meets) in PartTables.DirectCords)
        {
            Bench bench = Channels.Parallel([cord], []);
            TracedPlant traced = bench.Trace();
            foreach (LaneRow lane in PartTables.FourLanes)
            {
                int end = traced.OtherEnd(traced.Position($"QL/1:{lane.ReceptacleTx}"));
                Assert.Equal(meets == "Tx" ? LaneDirection.Transmit : LaneDirection.Receive, traced.Graph.LaneAt(end)!.Value.Direction);
            }

            Assert.Equal(meets == "Tx" ? "P01" : "", bench.Codes());
        }
    }

    private static IEnumerable<LinkParts> EveryLink() =>
        from leftTransition in Transitions
        from leftAdapter in Adapters
        from trunk in Cables
        from rightAdapter in Adapters
        from rightTransition in Transitions
        select new LinkParts(leftTransition, leftAdapter, trunk, rightAdapter, rightTransition);

    private static bool LaneForLane(TracedPlant traced) => PartTables.FourLanes.All(lane =>
        traced.Meets($"QL/1:{lane.ReceptacleTx}") == $"QR/1:{lane.ReceptacleRx}"
        && traced.Meets($"QR/1:{lane.ReceptacleTx}") == $"QL/1:{lane.ReceptacleRx}");
}
