using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>
/// Puts the hops of one or two strands into rows. As on a strand sheet every connector is drawn turned so that its mating runs
/// straight; what is left are the crossings inside parts, which the standards count.
/// </summary>
internal static class RowPlan
{
    /// <summary>
    /// The rows from top to foot. Two strands share a row while they pass the same part; where they part for good, the first is
    /// told to its end and then the second.
    /// </summary>
    public static List<CardRow> Of(TracedPlant traced, Trail[] trails)
    {
        var rows = new List<CardRow>();
        if (trails.Length == 1)
        {
            Alone(trails[0], 0, 0, rows);
            return rows;
        }

        int common = Math.Min(trails[0].Hops.Count, trails[1].Hops.Count);
        bool crossed = false;
        var turn = default(Turn);
        int i = 0;
        for (; i < common && trails[0].Hops[i].Part == trails[1].Hops[i].Part; i++)
        {
            bool entered = crossed;
            crossed = Crossed(traced, trails[0].Hops[i].Out, trails[1].Hops[i].Out, turn) ?? crossed;
            if (i == 0)
                entered = Crossed(traced, trails[0].Hops[0].In, trails[1].Hops[0].In, turn) ?? crossed;
            // A strand that ends here, and one that begins, leaves and enters where it is.
            rows.Add(new CardRow(trails[0].Hops[i].Part,
            [
                new Visit(trails[0], i, entered ? 1 : 0, crossed ? 1 : 0),
                new Visit(trails[1], i, entered ? 0 : 1, crossed ? 0 : 1),
            ]));
            if (trails[0].Hops[i].Out >= 0)
                turn = After(traced, turn, trails[0].Hops[i].Out);
        }

        bool bothGoOn = i > 0 && i < common;
        if (bothGoOn)
        {
            CardRow last = rows[^1];
            rows[^1] = last with { Visits = [last.Visits[0], last.Visits[1] with { GoesAfar = true }] };
        }

        Alone(trails[0], i, crossed ? 1 : 0, rows);
        int second = rows.Count;
        Alone(trails[1], i, crossed ? 0 : 1, rows);
        if (bothGoOn)
            rows[second] = rows[second] with { Visits = [rows[second].Visits[0] with { ComesFromAfar = true }] };
        return rows;
    }

    private static void Alone(Trail trail, int from, int column, List<CardRow> rows)
    {
        for (int i = from; i < trail.Hops.Count; i++)
            rows.Add(new CardRow(trail.Hops[i].Part, [new Visit(trail, i, column, column)]));
    }

    /// <summary>
    /// True when the first of two positions lies to the right of the second, null where they are not on one connector or lie one
    /// above the other.
    /// </summary>
    private static bool? Crossed(TracedPlant traced, int first, int second, Turn turn)
    {
        if (first < 0 || second < 0)
            return null;
        PositionPlace one = traced.Graph.PlaceOf(first), other = traced.Graph.PlaceOf(second);
        if (one.Port != other.Port)
            return null;
        Face face = traced.Plant.Port(one.Port).Face;
        int columns = face.Columns;
        int here = turn.Place(face, one.Position) % columns, there = turn.Place(face, other.Position) % columns;
        return here == there ? null : here > there;
    }

    private static Turn After(TracedPlant traced, Turn turn, int position) =>
        turn.Over(traced.Plant.Port(traced.Graph.PlaceOf(position).Port).Face, traced.MatingAt(position)?.Keys ?? Keying.Aligned);
}
