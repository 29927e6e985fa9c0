using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using QuikGraph;

namespace PolarityMap.Benchmarks;

/// <summary>Everything that is measured at one size, the measures taking turns round by round.</summary>
internal sealed class SizeRun(int strands, int rounds)
{
    private const int LargestWithRecords = 1_000_000;
    private const int LargestForComponents = 1_000;

    private readonly SyntheticPlant _plant = new(strands);
    private readonly Sample _build = new("graph of the plant");
    private readonly Sample _buildShuffled = new("graph of the plant, parts added in shuffled order");
    private readonly Sample _feed = new("graph fed to its builder without a plant's records");
    private readonly Sample _trace = new("trace");
    private readonly Sample _traceShuffled = new("trace, parts added in shuffled order");
    private readonly Sample _traceRaw = new("trace, positions numbered in shuffled order");
    private readonly Sample _read = new("plain read of both arrays");
    private readonly Sample _quikBuild = new("QuikGraph: build");
    private readonly Sample _quikSearch = new("QuikGraph: its depth-first search alone");
    private readonly Sample _quikHand = new("QuikGraph: a walk by hand alone");
    private readonly Sample _quikComponents = new("QuikGraph: undirected build and components (quadratic)");

    public int Strands => _plant.Strands;

    public Footprint Footprint { get; private set; }

    public IReadOnlyList<Sample> Times =>
        [_build, _buildShuffled, _feed, _trace, _traceShuffled, _traceRaw, _read, _quikBuild, _quikSearch, _quikHand, _quikComponents];

    public IReadOnlyList<Sample> Ratios =>
    [
        _trace.Over(_read, "trace / plain read (aim: at most 8)"),
        Measured(_quikSearch, "QuikGraph's search / trace (aim: at least 50)"),
        Measured(_quikHand, "QuikGraph by hand / trace"),
        Measured(_traceShuffled, "trace, added shuffled / trace"),
        Measured(_traceRaw, "trace, numbered shuffled / trace"),
    ];

    public void Measure()
    {
        StrandGraph graph;
        StrandGraph? addedShuffled = null;
        StrandGraph? raw = null;
        if (strands <= LargestWithRecords)
        {
            (graph, addedShuffled) = MeasureBuilds();
            raw = _plant.Feed(_plant.Shuffled());
        }
        else
        {
            graph = _plant.Feed();
        }

        for (int round = 0; round < rounds; round++)
        {
            _feed.Time(Strands, () => _plant.Feed());
            _trace.Time(Strands, () => Tracer.Trace(graph));
            _read.Time(Strands, () => PlainRead.Sum(graph));
            if (addedShuffled is null || raw is null)
                continue;
            _traceShuffled.Time(Strands, () => Tracer.Trace(addedShuffled));
            _traceRaw.Time(Strands, () => Tracer.Trace(raw));
            MeasureQuikGraph(graph);
        }

        Footprint = Footprint.Of(_plant);
    }

    /// <summary>The plants are dropped on return, so that the collector has nothing of them to look at later.</summary>
    private (StrandGraph Graph, StrandGraph AddedShuffled) MeasureBuilds()
    {
        Plant plant = _plant.Build();
        Plant shuffled = _plant.Build(_plant.Shuffled());
        for (int round = 0; round < rounds; round++)
        {
            _build.Time(Strands, () => StrandGraph.Of(plant));
            _buildShuffled.Time(Strands, () => StrandGraph.Of(shuffled));
        }

        return (StrandGraph.Of(plant), StrandGraph.Of(shuffled));
    }

    private void MeasureQuikGraph(StrandGraph graph)
    {
        AdjacencyGraph<int, SEquatableEdge<int>> quik = _quikBuild.Time(Strands, () => QuikGraphPlant.Build(graph));
        _quikSearch.Time(Strands, () => QuikGraphPlant.Search(quik));
        _quikHand.Time(Strands, () => QuikGraphPlant.WalkByHand(quik));
        if (strands <= LargestForComponents)
            _quikComponents.Time(Strands, () => QuikGraphPlant.CountComponents(graph));
    }

    private Sample Measured(Sample sample, string name) => sample.Rounds.Count == 0 ? new Sample(name) : sample.Over(_trace, name);
}
