using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Benchmarks;

/// <summary>Proves that the things compared do the same work, before any of them is timed.</summary>
internal static class SelfCheck
{
    public static void Run()
    {
        var synthetic = new SyntheticPlant(1_000);
        Plant plant = synthetic.Build();
        StrandGraph graph = StrandGraph.Of(plant);
        Demand(graph.PositionCount == synthetic.Positions, "144 positions a channel");
        Demand(Same(graph, synthetic.Feed()), "the graph builder fed in order of mention gives the plant's arrays");
        int[] shuffled = synthetic.Shuffled();
        Demand(Same(graph, StrandGraph.Of(synthetic.Build(shuffled))), "the order in which parts are added does not show");
        StrandGraph raw = synthetic.Feed(shuffled);
        Demand(!Same(graph, raw), "numbering by shuffled order gives other arrays");
        foreach (StrandGraph g in (StrandGraph[])[graph, raw])
        {
            StrandSet strands = Tracer.Trace(g);
            Demand(strands.Count == synthetic.Strands && strands.OpenCount == synthetic.Strands, "12 open strands a channel");
            for (int s = 0; s < strands.Count; s++)
                Demand(IsMethodB(g, strands[s]), "every strand passes 12 positions from a transmitter to a receiver");
        }

        Demand(QuikGraphPlant.Search(QuikGraphPlant.Build(graph)) == synthetic.Strands, "QuikGraph's search finds the same strands");
        Demand(QuikGraphPlant.WalkByHand(QuikGraphPlant.Build(graph)) == synthetic.Strands, "so does the walk by hand");
        Demand(QuikGraphPlant.CountComponents(graph) == synthetic.Strands, "so do QuikGraph's components");
    }

    private static bool Same(StrandGraph a, StrandGraph b) => a.Inside.SequenceEqual(b.Inside) && a.Outside.SequenceEqual(b.Outside);

    private static bool IsMethodB(StrandGraph graph, ReadOnlySpan<int> strand) =>
        strand.Length == SyntheticPlant.PositionsPerStrand
        && graph.LaneAt(strand[0]) is { } first
        && graph.LaneAt(strand[^1]) is { } last
        && (first.Direction == LaneDirection.Transmit) != (last.Direction == LaneDirection.Transmit);

    public static void Demand(bool holds, string fact)
    {
        if (!holds)
            throw new InvalidOperationException($"not so: {fact}");
    }
}
