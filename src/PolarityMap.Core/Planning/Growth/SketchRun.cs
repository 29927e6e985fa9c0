using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>One stop of one chain.</summary>
/// <param name="Family">The parts; null for a cord without a name.</param>
/// <param name="Port">Which part and port.</param>
/// <param name="PortName">The name of a port without a number.</param>
/// <param name="Cord">The type of a cord without a name.</param>
/// <param name="Length">Its length.</param>
internal readonly record struct SketchStop(PlannedFamily? Family, PlannedPort Port, string PortName, PlannedType? Cord, Length Length)
{
    /// <summary>What has to be the same for chains in step.</summary>
    public bool GoesWith(SketchStop other) => Family == other.Family && PortName == other.PortName && Cord == other.Cord && Length == other.Length && (Port.Port > 0) == (other.Port.Port > 0);
}

/// <summary>Collects chains that go through the same parts into runs in step.</summary>
internal sealed class SketchRun(List<PlannedRun> runs)
{
    private readonly List<IReadOnlyList<SketchStop>> _chains = [];

    public void Add(IReadOnlyList<SketchStop> chain)
    {
        if (_chains.Count > 0 && (_chains[0].Count != chain.Count || !_chains[0].Zip(chain).All(p => p.First.GoesWith(p.Second))))
            End();
        _chains.Add(chain);
    }

    public void End()
    {
        if (_chains.Count == 0)
            return;
        runs.Add(new PlannedRun([.. Enumerable.Range(0, _chains[0].Count).Select(s => _chains[0][s] is { Cord: { } cord } inline
            ? new PlannedStop(null, []) { Cord = cord, Length = inline.Length }
            : new PlannedStop(_chains[0][s].Family, [.. _chains.Select(c => c[s].Port)]) { PortName = _chains[0][s].PortName })]));
        _chains.Clear();
    }
}
