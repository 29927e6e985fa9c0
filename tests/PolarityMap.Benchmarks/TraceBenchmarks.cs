using BenchmarkDotNet.Attributes;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using QuikGraph;

namespace PolarityMap.Benchmarks;

/// <summary>The single numbers, each on its own. QuikGraph's build reads the edges from the finished graph.</summary>
[MemoryDiagnoser]
[MaxIterationCount(20)]
public class TraceBenchmarks
{
    private SyntheticPlant _synthetic = null!;
    private Plant _plant = null!;
    private StrandGraph _graph = null!;
    private AdjacencyGraph<int, SEquatableEdge<int>> _quik = null!;

    [Params(1_000, 10_000, 100_000, 1_000_000)]
    public int AtLeastStrands { get; set; }

    [GlobalSetup(Targets = [nameof(Trace), nameof(ReadPlainly), nameof(QuikGraphBuild)])]
    public void FeedGraph() => _graph = new SyntheticPlant(AtLeastStrands).Feed();

    [GlobalSetup(Target = nameof(TraceNumberedShuffled))]
    public void FeedShuffled()
    {
        _synthetic = new SyntheticPlant(AtLeastStrands);
        _graph = _synthetic.Feed(_synthetic.Shuffled());
    }

    [GlobalSetup(Target = nameof(BuildGraph))]
    public void BuildPlant() => _plant = new SyntheticPlant(AtLeastStrands).Build();

    [GlobalSetup(Target = nameof(BuildGraphAddedShuffled))]
    public void BuildShuffledPlant()
    {
        _synthetic = new SyntheticPlant(AtLeastStrands);
        _plant = _synthetic.Build(_synthetic.Shuffled());
    }

    [GlobalSetup(Targets = [nameof(QuikGraphSearch), nameof(QuikGraphWalkByHand)])]
    public void BuildQuikGraph() => _quik = QuikGraphPlant.Build(new SyntheticPlant(AtLeastStrands).Feed());

    [Benchmark]
    public StrandGraph BuildGraph() => StrandGraph.Of(_plant);

    [Benchmark]
    public StrandGraph BuildGraphAddedShuffled() => StrandGraph.Of(_plant);

    [Benchmark]
    public StrandSet Trace() => Tracer.Trace(_graph);

    [Benchmark]
    public StrandSet TraceNumberedShuffled() => Tracer.Trace(_graph);

    [Benchmark(Baseline = true)]
    public long ReadPlainly() => PlainRead.Sum(_graph);

    [Benchmark]
    public object QuikGraphBuild() => QuikGraphPlant.Build(_graph);

    [Benchmark]
    public int QuikGraphSearch() => QuikGraphPlant.Search(_quik);

    [Benchmark]
    public int QuikGraphWalkByHand() => QuikGraphPlant.WalkByHand(_quik);
}
