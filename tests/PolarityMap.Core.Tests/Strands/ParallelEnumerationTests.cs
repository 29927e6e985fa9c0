using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Strands;

/// <summary>
/// Parallel channels of four lanes on twelve positions and of eight on sixteen, written from either end: the trace and the
/// checker against the reference model.
/// </summary>
public sealed class ParallelEnumerationTests
{
    private static readonly string[] Cables = ["Type-A", "Type-B", "Type-C"];
    private static readonly string[] Adapters = ["Type-A", "Type-B"];

    public static TheoryData<int> Sizes => [12, 16];

    // Source: trade facts 4, the parallel methods as printed, with one cord or the other at the left. A and B 1 source each,
    // C from memory, U1 and U2 derived; all proved. On sixteen: the maps are of the form for N fibres (2.1).
    [Theory]
    [MemberData(nameof(Sizes))]
    public void Every_parallel_method_works_lane_for_lane(int positions)
    {
        foreach (ParallelMethodRow row in PartTables.ParallelMethods)
        {
            foreach (string[] cables in (string[][])[[row.OneCord, row.Trunk, row.OtherCord], [row.OtherCord, row.Trunk, row.OneCord]])
                AssertChannel(cables, row.Adapters, positions, right: true);
        }
    }

    // Source: trade facts 4: of the 54 the typed 14 pass. Proved for twelve; for sixteen by the reference model alone.
    [Theory]
    [MemberData(nameof(Sizes))]
    public void Of_the_54_combinations_exactly_the_14_typed_ones_work(int positions)
    {
        int pass = 0;
        foreach (string adapter in Adapters)
        {
            foreach (string left in Cables)
            {
                foreach (string trunk in Cables)
                {
                    foreach (string right in Cables)
                    {
                        bool typed = PartTables.PassingParallel(adapter).Contains(new ParallelTriple(left, trunk, right));
                        pass += typed ? 1 : 0;
                        AssertChannel([left, trunk, right], adapter, positions, typed);
                    }
                }
            }
        }

        Assert.Equal(14, pass);
    }

    // Source: trade facts 3.2, rule 4: all Type-B with all aligned is odd for any number of cables; with opposed adapters it
    // works only for an odd number. Proved.
    [Theory]
    [MemberData(nameof(Sizes))]
    public void All_type_b_works_with_aligned_adapters_for_any_number_of_cables_and_with_opposed_for_an_odd_one(int positions)
    {
        for (int cables = 1; cables <= 6; cables++)
        {
            string[] chain = [.. Enumerable.Repeat("Type-B", cables)];
            AssertChannel(chain, "Type-B", positions, right: true);
            AssertChannel(chain, "Type-A", positions, right: cables % 2 == 1);
        }
    }

    // Source: trade facts 6.3: a 12-fibre trunk used for one four-lane port leaves 4 of 12 unused, 3 sources; 2.1: 5 to 8.
    [Fact]
    public void A_four_lane_port_leaves_the_middle_of_a_twelve_fibre_trunk_dark_and_eight_lanes_fill_sixteen()
    {
        foreach (bool backwards in (bool[])[false, true])
        {
            TracedPlant twelve = Channel(["Type-B", "Type-B", "Type-B"], "Type-B", 12, backwards).Write(backwards).Trace();
            int[] dark = [.. Enumerable.Range(1, 12).Where(p => IsDark(twelve, $"X2/near:{p}"))];
            Assert.Equal(PartTables.DarkOfTwelve, dark);
            Assert.Equal(TradeFacts.UnusedOfTwelveBehindFourLanes, dark.Length);
            Assert.Equal(dark, Enumerable.Range(1, 12).Where(p => IsDark(twelve, $"X2/far:{p}")));

            TracedPlant sixteen = Channel(["Type-B", "Type-B", "Type-B"], "Type-B", 16, backwards).Write(backwards).Trace();
            Assert.DoesNotContain(Enumerable.Range(1, 16), p => IsDark(sixteen, $"X2/near:{p}"));
        }
    }

    /// <summary>True where neither end of the strand is a lane.</summary>
    private static bool IsDark(TracedPlant traced, string address)
    {
        ReadOnlySpan<int> strand = traced.Strands[traced.StrandOf(traced.Position(address))];
        return traced.Graph.LaneAt(strand[0]) is null && traced.Graph.LaneAt(strand[^1]) is null;
    }

    private static void AssertChannel(IReadOnlyList<string> cables, string adapter, int positions, bool right)
    {
        IReadOnlyList<LaneRow> lanes = Lanes(positions);
        var steps = new List<Dictionary<int, int>> { SlowModel.Mating(1, positions, opposed: false) };
        for (int i = 0; i < cables.Count; i++)
        {
            steps.Add(SlowModel.Cable(cables[i], positions));
            steps.Add(i + 1 < cables.Count ? SlowModel.Adapter(adapter, positions) : SlowModel.Mating(1, positions, opposed: false));
        }

        string what = $"{string.Join(", ", cables)} with {adapter} adapters on {positions}";
        Assert.True(right == lanes.All(l => SlowModel.Walk(steps, l.ReceptacleTx) == l.ReceptacleRx && SlowModel.Walk(steps, l.ReceptacleRx) == l.ReceptacleTx), what);
        bool anyReceiver = lanes.All(l => lanes.Any(far => SlowModel.Walk(steps, l.ReceptacleTx) == far.ReceptacleRx));
        foreach (bool backwards in (bool[])[false, true])
        {
            Runs byPort = Channel(cables, adapter, positions, backwards).Link("L/1", "R/1");
            Runs byLane = Channel(cables, adapter, positions, backwards);
            foreach (LaneRow lane in lanes)
                byLane.Link($"L/1:{lane.Lane}", $"R/1:{lane.Lane}");

            TracedPlant traced = byLane.Write(backwards).Trace();
            foreach (LaneRow lane in lanes)
            {
                Assert.Equal($"R/1:{SlowModel.Walk(steps, lane.ReceptacleTx)}", traced.Meets($"L/1:{lane.ReceptacleTx}"));
                Assert.Equal($"R/1:{SlowModel.Walk(steps, lane.ReceptacleRx)}", traced.Meets($"L/1:{lane.ReceptacleRx}"));
            }

            traced.AssertVerdict(right, what);

            // The receivers of one port put its lanes in order: any of them will do (trade facts 4.1, from memory).
            byPort.Write(backwards).Trace().AssertVerdict(anyReceiver, what);
        }
    }

    /// <summary>
    /// Ports L and R, cables X1, X2, … with panels between them. Cords at the ends have no pins, but the second of two alone; the
    /// first trunk has them at both ends and those that follow at the far one, so that every mating has pins on one side.
    /// </summary>
    private static Runs Channel(IReadOnlyList<string> cables, string adapter, int positions, bool backwards)
    {
        DuplexPair[] lanes = [.. Lanes(positions).Select(l => new DuplexPair(l.ReceptacleTx, l.ReceptacleRx))];
        Runs runs = new Runs();
        foreach (string end in (string[])["L", "R"])
            runs.Part(end, "parallel interface", v => v.Set("base", positions).Set("lanes", lanes));
        var stops = new List<string> { "L/1" };
        for (int i = 1; i <= cables.Count; i++)
        {
            string type = cables[i - 1];
            bool cord = i == 1 || i == cables.Count;
            (string toTheLeft, string toTheRight) = backwards ? ("far", "near") : ("near", "far");
            string pins = cord ? i == 2 ? toTheLeft : "none" : i == 2 ? "both" : toTheRight;
            runs.Part($"X{i}", cord ? "array cord" : "trunk", v => v.Set("type", type).Set("base", positions).Set("pins", pins));
            stops.Add($"X{i}");
            if (i == cables.Count)
                break;
            runs.Part($"P{i}", "array panel", v => v.Set("base", positions).Set("keys", Channels.Keys(adapter)).Set("ports", 1));
            stops.Add($"@P{i}/1");
        }

        stops.Add("R/1");
        return runs.Run([.. stops]);
    }

    private static IReadOnlyList<LaneRow> Lanes(int positions) => positions == 12 ? PartTables.FourLanes : PartTables.EightLanes;
}
