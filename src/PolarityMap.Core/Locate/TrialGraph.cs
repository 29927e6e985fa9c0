using PolarityMap.Core.Deviations;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Locate;

/// <summary>
/// A strand graph on which deviations are laid and lifted again, last laid first lifted. What a walk costs does not depend on how
/// many are laid.
/// </summary>
public sealed class TrialGraph
{
    private readonly StrandGraph _graph;
    private readonly int[] _inside;
    private readonly int[] _outside;
    private readonly Dictionary<int, int> _lossy = [];
    private readonly Stack<Deviation> _laid = new();

    public TrialGraph(StrandGraph graph)
    {
        _graph = graph;
        _inside = graph.Inside.ToArray();
        _outside = graph.Outside.ToArray();
    }

    /// <summary>The positions of the last walk, in the order in which light passes them.</summary>
    public List<int> Walk { get; } = [];

    /// <summary>True when the last walk passed a place that loses light.</summary>
    public bool PassedLoss { get; private set; }

    /// <summary>The deviations that are laid, the last first.</summary>
    public IReadOnlyCollection<Deviation> Deviations => _laid;

    /// <summary>Lays a deviation. Its patch must have no position in common with those that are laid.</summary>
    public void Lay(Deviation deviation)
    {
        foreach (Rejoined change in deviation.Patch.Inside)
            _inside[change.Position] = change.Partner;
        foreach (Rejoined change in deviation.Patch.Outside)
            _outside[change.Position] = change.Partner;
        foreach (int position in deviation.Lossy)
            _lossy[position] = _lossy.GetValueOrDefault(position) + 1;
        _laid.Push(deviation);
    }

    /// <summary>Lifts the deviation that was laid last.</summary>
    public void Lift()
    {
        Deviation deviation = _laid.Pop();
        foreach (Rejoined change in deviation.Patch.Inside)
            _inside[change.Position] = _graph.Inside[change.Position];
        foreach (Rejoined change in deviation.Patch.Outside)
            _outside[change.Position] = _graph.Outside[change.Position];
        foreach (int position in deviation.Lossy)
        {
            if (--_lossy[position] == 0)
                _lossy.Remove(position);
        }
    }

    /// <summary>
    /// Follows light from a position to where somebody looks for it: out of a part, where the mating is open, or at an interface.
    /// Leaves the way in <see cref="Walk"/>.
    /// </summary>
    /// <param name="from">The position where it is put in: at an interface into the plug there, else into the part's port.</param>
    /// <param name="look">Index of the part where one looks, or -1 for every interface.</param>
    /// <returns>The position where it comes out, or -1 where it does not come there.</returns>
    public int Follow(int from, int look)
    {
        Walk.Clear();
        PassedLoss = false;
        Pass(from);
        int at = from;
        if (!_graph.HasLane(from) && Ends(from, look, ref at, out int here))
            return here;
        for (int steps = 0; steps <= _graph.PositionCount; steps++)
        {
            int next = _outside[at];
            if (next < 0)
                return -1;
            Pass(next);
            if (_graph.HasLane(next))
                return look < 0 || _graph.PartOf(next) == look ? next : -1;
            if (Ends(next, look, ref at, out int seen))
                return seen;
        }

        return -1;
    }

    /// <summary>Light through one part; true where it ends: where the part is dark, or comes out before the eye that looks there.</summary>
    /// <param name="position">Where it enters.</param>
    /// <param name="look">The part where one looks, or -1.</param>
    /// <param name="way">Where it leaves.</param>
    /// <param name="seen">Where it is seen, or -1.</param>
    private bool Ends(int position, int look, ref int way, out int seen)
    {
        seen = -1;
        int inside = _inside[position];
        if (inside < 0)
            return true;
        way = inside;
        Pass(way);
        if (look < 0 || _graph.PartOf(way) != look)
            return false;
        seen = way;
        return true;
    }

    private void Pass(int position)
    {
        Walk.Add(position);
        PassedLoss |= _lossy.Count > 0 && _lossy.ContainsKey(position);
    }
}
