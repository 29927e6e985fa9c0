using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Deviations;

/// <summary>Another partner of a position.</summary>
/// <param name="Position">The position.</param>
/// <param name="Partner">Its partner now, or -1.</param>
public readonly record struct Rejoined(int Position, int Partner);

/// <summary>
/// What differences change in a strand graph: the positions that have another partner inside or outside, and nothing else. Two
/// patches with no position in common can be laid over each other in any order.
/// </summary>
public sealed class GraphPatch
{
    private GraphPatch(Rejoined[] inside, Rejoined[] outside)
    {
        Inside = new FixedList<Rejoined>(inside);
        Outside = new FixedList<Rejoined>(outside);
    }

    /// <summary>Positions with another partner through the part, in the order of their numbers.</summary>
    public FixedList<Rejoined> Inside { get; }

    /// <summary>Positions with another partner through the mating, in the order of their numbers.</summary>
    public FixedList<Rejoined> Outside { get; }

    public bool IsEmpty => Inside.Count == 0 && Outside.Count == 0;

    /// <summary>True when the two change no position both.</summary>
    public bool IsApartFrom(GraphPatch other) => AreApart(Inside.Span, other.Inside.Span) && AreApart(Outside.Span, other.Outside.Span);

    private static bool AreApart(ReadOnlySpan<Rejoined> a, ReadOnlySpan<Rejoined> b)
    {
        for (int i = 0, j = 0; i < a.Length && j < b.Length;)
        {
            if (a[i].Position == b[j].Position)
                return false;
            if (a[i].Position < b[j].Position)
                i++;
            else
                j++;
        }

        return true;
    }

    /// <summary>The patch of what leaves all light on its way.</summary>
    public static GraphPatch None { get; } = new([], []);

    /// <summary>What differences change, or null when they cannot be laid over the plant.</summary>
    /// <param name="traced">The plant.</param>
    /// <param name="plugs">Its plugs.</param>
    /// <param name="differences">The differences, laid one after the other.</param>
    public static GraphPatch? Of(TracedPlant traced, PlugTable plugs, params ReadOnlySpan<Difference> differences) =>
        Site.Of(traced.Plant, plugs, differences.ToArray()) is { } site ? new GraphPatch(InsideOf(traced, site), OutsideOf(traced, site.Matings)) : null;

    /// <summary>What changes when single positions have other partners through their part.</summary>
    /// <param name="graph">The graph.</param>
    /// <param name="now">The positions, each once, in any order.</param>
    internal static GraphPatch OfInside(StrandGraph graph, params ReadOnlySpan<Rejoined> now)
    {
        var changed = new List<Rejoined>(now.Length);
        foreach (Rejoined one in now)
        {
            if (graph.Inside[one.Position] != one.Partner)
                changed.Add(one);
        }

        changed.Sort(static (a, b) => a.Position.CompareTo(b.Position));
        return new GraphPatch([.. changed], []);
    }

    /// <summary>What changes when one mating is another one, or pulled.</summary>
    /// <param name="traced">The plant.</param>
    /// <param name="index">Which mating.</param>
    /// <param name="now">What it is now, or null.</param>
    internal static GraphPatch OfMating(TracedPlant traced, int index, Mating? now) =>
        new([], OutsideOf(traced, new Dictionary<int, Mating?> { [index] = now }));

    /// <summary>The positions of both sides that a mating joins, in the order of their numbers; none where the faces do not fit.</summary>
    internal static int[] PositionsOf(TracedPlant traced, Mating mating)
    {
        var joints = new Joints(traced, mating);
        var positions = new int[2 * joints.Count];
        for (int i = 0; i < joints.Count; i++)
            (positions[2 * i], positions[(2 * i) + 1]) = joints[i];
        Array.Sort(positions);
        return positions;
    }

    private static Rejoined[] InsideOf(TracedPlant traced, Site site)
    {
        if (site.Parts.Count == 0)
            return [];
        var changed = new List<Rejoined>();
        foreach (int index in site.Parts.Keys.Order())
        {
            FixedList<int> inside = site.Parts[index].Shape.Inside;
            int start = traced.Graph.FirstPositionOf(index);
            for (int i = 0; i < inside.Count; i++)
            {
                int partner = inside[i] < 0 ? -1 : start + inside[i];
                if (traced.Graph.Inside[start + i] != partner)
                    changed.Add(new Rejoined(start + i, partner));
            }
        }

        return [.. changed];
    }

    private static Rejoined[] OutsideOf(TracedPlant traced, Dictionary<int, Mating?> matings)
    {
        if (matings.Count == 0)
            return [];

        // What is pulled leaves both sides open before anything is joined anew.
        var outside = new Dictionary<int, int>();
        foreach (int index in matings.Keys)
        {
            var before = new Joints(traced, traced.Plant.Matings[index]);
            for (int i = 0; i < before.Count; i++)
            {
                (int a, int b) = before[i];
                outside[a] = outside[b] = -1;
            }
        }

        foreach (Mating? mating in matings.Values)
        {
            if (mating is null)
                continue;
            var after = new Joints(traced, mating);
            for (int i = 0; i < after.Count; i++)
            {
                (int a, int b) = after[i];
                outside[a] = b;
                outside[b] = a;
            }
        }

        return Changed(outside, traced.Graph.Outside);
    }

    private static Rejoined[] Changed(Dictionary<int, int> now, ReadOnlySpan<int> before)
    {
        var changed = new Rejoined[now.Count];
        int count = 0;
        foreach ((int position, int partner) in now)
        {
            if (before[position] != partner)
                changed[count++] = new Rejoined(position, partner);
        }

        Array.Resize(ref changed, count);
        Array.Sort(changed, static (a, b) => a.Position.CompareTo(b.Position));
        return changed;
    }

    /// <summary>The pairs of positions that a mating joins; none where the faces do not fit.</summary>
    private readonly struct Joints
    {
        private readonly int _a;
        private readonly int _b;
        private readonly Face _face;
        private readonly Keying _keys;

        public Joints(TracedPlant traced, Mating mating)
        {
            if (!traced.Plant.Fits(mating))
                return;
            bool single = mating.PositionOfA > 0 || mating.PositionOfB > 0;
            _a = traced.Graph.PositionOf(mating.A, Math.Max(1, mating.PositionOfA));
            _b = traced.Graph.PositionOf(mating.B, Math.Max(1, mating.PositionOfB));
            _face = single ? Face.Simplex : traced.Plant.Port(mating.A).Face;
            _keys = mating.Keys;
            Count = _face.Count;
        }

        public int Count { get; }

        public (int A, int B) this[int index] => (_a + index, _b + _face.Facing(_keys, index + 1) - 1);
    }
}
