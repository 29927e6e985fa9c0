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
    private static readonly FixedList<Rejoined> s_nothing = new([]);

    private GraphPatch(Rejoined[] inside, Rejoined[] outside)
    {
        Inside = ListOf(inside);
        Outside = ListOf(outside);
    }

    /// <summary>The patch of what leaves all light on its way.</summary>
    public static GraphPatch None { get; } = new([], []);

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

    /// <summary>What differences change, or null when they cannot be laid over the plant.</summary>
    /// <param name="traced">The plant.</param>
    /// <param name="plugs">Its plugs.</param>
    /// <param name="differences">The differences, laid one after the other.</param>
    public static GraphPatch? Of(TracedPlant traced, PlugTable plugs, params ReadOnlySpan<Difference> differences) =>
        Site.Of(traced.Plant, plugs, differences.ToArray()) is { } site ? new GraphPatch(InsideOf(traced, site), OutsideOf(traced, [.. site.Matings.Select(m => (m.Key, m.Value))])) : null;

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

    /// <summary>What changes when some matings are others, or pulled.</summary>
    /// <param name="traced">The plant.</param>
    /// <param name="matings">Which matings, each once, and what each is now, or null.</param>
    internal static GraphPatch OfMatings(TracedPlant traced, params ReadOnlySpan<(int Index, Mating? Now)> matings) => new([], OutsideOf(traced, matings));

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

    /// <summary>There are very many patches, and most have nothing on one of the two sides.</summary>
    private static FixedList<Rejoined> ListOf(Rejoined[] items) => items.Length == 0 ? s_nothing : new FixedList<Rejoined>(items);

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

    private static Rejoined[] OutsideOf(TracedPlant traced, ReadOnlySpan<(int Index, Mating? Now)> matings)
    {
        int most = 0;
        foreach ((int index, Mating? now) in matings)
            most += 2 * (Before(traced, index).Count + (now is null ? 0 : new Joints(traced, now).Count));
        Span<Rejoined> buffer = most <= 128 ? stackalloc Rejoined[most] : new Rejoined[most];
        int count = 0;

        // What is pulled leaves both sides open before anything is joined anew.
        foreach ((int index, _) in matings)
        {
            Joints before = Before(traced, index);
            for (int i = 0; i < before.Count; i++)
            {
                (int a, int b) = before[i];
                buffer[count++] = new Rejoined(a, -1);
                buffer[count++] = new Rejoined(b, -1);
            }
        }

        foreach ((_, Mating? now) in matings)
        {
            if (now is null)
                continue;
            var after = new Joints(traced, now);
            for (int i = 0; i < after.Count; i++)
            {
                (int a, int b) = after[i];
                buffer[count++] = new Rejoined(a, b);
                buffer[count++] = new Rejoined(b, a);
            }
        }

        return Changed(buffer[..count], traced.Graph.Outside);
    }

    /// <summary>What a mating joins in the plant as described; nothing where it is a new one.</summary>
    private static Joints Before(TracedPlant traced, int index) => index < traced.Plant.Matings.Count ? new Joints(traced, traced.Plant.Matings[index]) : default;

    /// <summary>Of each position what it is joined to in the end, where that is not what it was. Nothing comes before a partner.</summary>
    private static Rejoined[] Changed(Span<Rejoined> all, ReadOnlySpan<int> before)
    {
        all.Sort(static (x, y) => x.Position != y.Position ? x.Position.CompareTo(y.Position) : x.Partner.CompareTo(y.Partner));
        int count = 0;
        for (int i = 0; i < all.Length; i++)
        {
            bool isLast = i + 1 == all.Length || all[i + 1].Position != all[i].Position;
            if (isLast && before[all[i].Position] != all[i].Partner)
                all[count++] = all[i];
        }

        return all[..count].ToArray();
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
