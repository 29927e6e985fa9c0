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

    /// <summary>What differences change, or null when they cannot be laid over the plant.</summary>
    /// <param name="traced">The plant.</param>
    /// <param name="plugs">Its plugs.</param>
    /// <param name="differences">The differences, laid one after the other.</param>
    public static GraphPatch? Of(TracedPlant traced, PlugTable plugs, params ReadOnlySpan<Difference> differences) =>
        Site.Of(traced.Plant, plugs, differences.ToArray()) is { } site ? Of(traced, site) : null;

    private static GraphPatch Of(TracedPlant traced, Site site)
    {
        var inside = new SortedDictionary<int, int>();
        foreach ((int index, Part part) in site.Parts)
        {
            int start = traced.Graph.FirstPositionOf(index);
            for (int i = 0; i < part.Shape.PositionCount; i++)
            {
                int partner = part.Shape.Inside[i];
                inside[start + i] = partner < 0 ? -1 : start + partner;
            }
        }

        // What is pulled leaves both sides open before anything is joined anew.
        var outside = new SortedDictionary<int, int>();
        foreach (int index in site.Matings.Keys)
        {
            if (index >= traced.Plant.Matings.Count)
                continue;
            foreach ((int a, int b) in Joints(traced, traced.Plant.Matings[index]))
                outside[a] = outside[b] = -1;
        }

        foreach (Mating? mating in site.Matings.Values)
        {
            if (mating is null)
                continue;
            foreach ((int a, int b) in Joints(traced, mating))
            {
                outside[a] = b;
                outside[b] = a;
            }
        }

        return new GraphPatch(Changed(inside, traced.Graph.Inside), Changed(outside, traced.Graph.Outside));
    }

    /// <summary>The positions that a mating joins; none where the faces do not fit.</summary>
    private static IEnumerable<(int A, int B)> Joints(TracedPlant traced, Mating mating)
    {
        if (!traced.Plant.Fits(mating))
            yield break;
        if (mating.PositionOfA > 0 || mating.PositionOfB > 0)
        {
            yield return (traced.Graph.PositionOf(mating.A, Math.Max(1, mating.PositionOfA)), traced.Graph.PositionOf(mating.B, Math.Max(1, mating.PositionOfB)));
            yield break;
        }

        Face face = traced.Plant.Port(mating.A).Face;
        for (int i = 1; i <= face.Count; i++)
            yield return (traced.Graph.PositionOf(mating.A, i), traced.Graph.PositionOf(mating.B, face.Facing(mating.Keys, i)));
    }

    private static Rejoined[] Changed(SortedDictionary<int, int> now, ReadOnlySpan<int> before)
    {
        var changed = new List<Rejoined>(now.Count);
        foreach ((int position, int partner) in now)
        {
            if (before[position] != partner)
                changed.Add(new Rejoined(position, partner));
        }

        return [.. changed];
    }
}
