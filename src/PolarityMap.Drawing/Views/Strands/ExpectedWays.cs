using PolarityMap.Core.Checks;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// The ways that faulty strands should take from where they leave their actual ones: over one gutter, or through one part, to the
/// rows from which other strands lead where these are meant to come out.
/// </summary>
/// <param name="Column">The column right of which they lie, or in whose part.</param>
/// <param name="Box">The part where a proved remedy changes how it joins; null in a gutter.</param>
/// <param name="Ways">For each strand its own row and the row it should be joined to.</param>
internal sealed record Expected(int Column, Node? Box, Crossing Ways);

/// <summary>
/// Finds where to draw the expected ways. Strands of one finding leave their actual ways in the same gutter: the one where the
/// expected ways are straightest, the last of equal ones. Where a remedy is proved, they are drawn in the part it changes.
/// </summary>
internal static class ExpectedWays
{
    public static List<Expected> Of(StrandHops hops, ViewInput input, Layout layout)
    {
        if (input.ExpectedEnds.Count == 0)
            return [];
        var found = new Dictionary<(int Column, Node? Box), List<(Row, Row)>>();
        Dictionary<int, Way> ending = [];
        Dictionary<int, Way> ways = [];
        foreach (Way way in layout.Ways)
        {
            ways.TryAdd(way.Strand, way);
            if (way.Passages[^1] is { Out: null, In: { Position: >= 0 } end })
                ending.TryAdd(end.Position, way);
        }

        var done = new HashSet<int>();
        foreach (Finding finding in input.Findings)
        {
            var pairs = new List<(Way Way, Way Tail)>();
            foreach (int strand in finding.Strands)
            {
                if (input.ExpectedEnds.TryGetValue(strand, out int end) && ways.TryGetValue(strand, out Way? way) && ending.TryGetValue(end, out Way? tail) && tail != way && done.Add(strand))
                    pairs.Add((way, tail));
            }

            if (pairs.Count == 0)
                continue;
            if (Changed(finding, pairs) is { } inside)
                Add(inside.Box.Column, inside.Box, inside.Rows);
            else if ((Straightest(layout, pairs, c => IsMarked(input, pairs, c)) ?? Straightest(layout, pairs)) is { } column)
                Add(column, null, pairs.Select(p => (OutAt(p.Way, column)!, InAt(p.Tail, column + 1)!)));
        }

        return [.. found.Select(f => new Expected(f.Key.Column, f.Key.Box, Crossing.OfFurther(f.Value, hops.Braids)))];

        void Add(int column, Node? box, IEnumerable<(Row, Row)> rows)
        {
            if (!found.TryGetValue((column, box), out List<(Row, Row)>? own))
                found[(column, box)] = own = [];
            own.AddRange(rows);
        }
    }

    /// <summary>The findings of which at least one strand has an expected way on the layout.</summary>
    public static IReadOnlyList<Finding> Shown(ViewInput input, Layout layout)
    {
        if (layout.Expected.Count == 0)
            return [];
        HashSet<int> strands = [.. layout.Expected.SelectMany(e => e.Ways.Rows).Select(r => r.Left.Strand)];
        return [.. input.Findings.Where(f => f.Strands.Any(strands.Contains))];
    }

    /// <summary>The ways through the part that a remedy changes; null where none is known, or not all strands pass it.</summary>
    private static (Node Box, List<(Row, Row)> Rows)? Changed(Finding finding, List<(Way Way, Way Tail)> pairs)
    {
        foreach (Remedy remedy in finding.Remedies.Where(r => r.IsInside))
        {
            var inside = new List<(Row, Row)>();
            Node? changed = null;
            foreach ((Way way, Way tail) in pairs)
            {
                for (int i = 0; i < way.Passages.Count; i++)
                {
                    if (way.Passages[i] is { Node: { } box, In: { } from } && box.Part == remedy.Part && OutAt(tail, box.Column) is { } to && PassageAt(tail, box.Column)!.Value.Node == box)
                    {
                        inside.Add((from, to));
                        changed = box;
                    }
                }
            }

            if (changed is not null && inside.Count == pairs.Count)
                return (changed, inside);
        }

        return null;
    }

    /// <summary>Where a hand can move the strands; anywhere, if there is no such place.</summary>
    private static int? Straightest(Layout layout, List<(Way Way, Way Tail)> pairs) =>
        Straightest(layout, pairs, c => IsMovable(pairs, c)) ?? Straightest(layout, pairs, _ => true);

    /// <summary>True where a finding that knows what to do points at the mating of one of the strands, as the first suspect does.</summary>
    private static bool IsMarked(ViewInput input, List<(Way Way, Way Tail)> pairs, int column) =>
        pairs.Exists(p => OutAt(p.Way, column) is { Position: >= 0 } from && InAt(p.Way, column + 1) is { Position: >= 0 } to
            && input.Findings.Any(f => f.Rule.Severity == Severity.Note && f.Remedies.Count > 0 && f.At.Any(s => s.Port == from.Port.Ref || s.Port == to.Port.Ref)));

    /// <summary>False where some of an array plug's strands should go elsewhere and others not: it is moved as a whole.</summary>
    private static bool IsMovable(List<(Way Way, Way Tail)> pairs, int column)
    {
        foreach ((Way way, _) in pairs)
        {
            if (PassageAt(way, column) is not { Node: { } box, Out: { Position: >= 0, Port.IsArray: true } row })
                continue;
            int all = box.Right.Count(r => r.Port == row.Port);
            if (pairs.Count(p => OutAt(p.Way, column) is { Position: >= 0 } other && other.Port == row.Port) < all)
                return false;
        }

        return true;
    }

    private static int? Straightest(Layout layout, List<(Way Way, Way Tail)> pairs, Func<int, bool> isAllowed)
    {
        int? best = null;
        long least = long.MaxValue;
        for (int c = 0; c + 1 < layout.Columns.Count; c++)
        {
            if (!isAllowed(c))
                continue;
            long jump = 0;
            foreach ((Way way, Way tail) in pairs)
            {
                if (OutAt(way, c) is not { } from || InAt(tail, c + 1) is not { } to)
                {
                    jump = -1;
                    break;
                }

                jump += Math.Abs(from.Slot - to.Slot);
            }

            if (jump >= 0 && jump <= least)
                (best, least) = (c, jump);
        }

        return best;
    }

    private static Passage? PassageAt(Way way, int column) =>
        column >= way.FirstColumn && column <= way.LastColumn ? way.Passages[column - way.FirstColumn] : null;

    private static Row? OutAt(Way way, int column) => PassageAt(way, column)?.Out;

    private static Row? InAt(Way way, int column) => PassageAt(way, column)?.In;
}
