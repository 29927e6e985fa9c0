using PolarityMap.Core.Deviations;
using PolarityMap.Core.Strands;

namespace PolarityMap.Benchmarks.Locating;

/// <summary>What a set of deviations does to all light: every partner that is another one, and every place that loses light.</summary>
internal sealed class LightOf
{
    private readonly StrandGraph _graph;
    private readonly HashSet<DeviationId> _ids;
    private readonly HashSet<(bool Inside, int Position, int Partner)> _joined;
    private readonly HashSet<int> _lossy;

    public LightOf(StrandGraph graph, IReadOnlyList<Deviation> set)
    {
        _graph = graph;
        _ids = [.. set.Select(d => d.Id)];
        _joined = Joined(set);
        _lossy = [.. set.SelectMany(d => d.Lossy)];
    }

    /// <summary>True for the same set.</summary>
    public bool IsOf(IReadOnlyList<Deviation> other) => _ids.SetEquals(other.Select(d => d.Id));

    /// <summary>True for a set under which light goes and is lost in the same places everywhere, so that no light test tells the two apart.</summary>
    public bool IsLike(IReadOnlyList<Deviation> other) => _joined.SetEquals(Joined(other)) && _lossy.SetEquals(other.SelectMany(d => d.Lossy));

    private HashSet<(bool, int, int)> Joined(IReadOnlyList<Deviation> set) =>
    [
        .. set.SelectMany(d => d.Patch.Inside).Where(c => _graph.Inside[c.Position] != c.Partner).Select(c => (true, c.Position, c.Partner)),
        .. set.SelectMany(d => d.Patch.Outside).Where(c => _graph.Outside[c.Position] != c.Partner).Select(c => (false, c.Position, c.Partner)),
    ];
}
