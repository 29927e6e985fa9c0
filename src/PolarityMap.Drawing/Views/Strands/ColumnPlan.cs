using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// Puts parts into columns in the order of flow: a part stands right of every part that a strand passes before it. A strand
/// that comes back to a part finds it drawn once more, further right.
/// </summary>
internal static class ColumnPlan
{
    public static Layout Make(StrandHops all, IReadOnlyList<Piece> pieces)
    {
        TracedPlant traced = all.Traced;
        var hops = new IReadOnlyList<Hop>[pieces.Count];
        Mating[] refused = [.. traced.Plant.Matings.Where(m => !traced.Plant.Fits(m))];
        HashSet<PortRef> rightOfRefused = [.. refused.Select(m => m.B)];
        for (int i = 0; i < hops.Length; i++)
            hops[i] = Facing(traced, rightOfRefused, Shown(all, pieces[i]));
        Dictionary<int, int> ranks = Ranks(hops, refused);
        var layout = new Layout();
        var nodes = new Dictionary<(int Part, int Column), Node>();
        for (int i = 0; i < hops.Length; i++)
            AddWay(layout, nodes, ranks, new Way(pieces[i], all.GoesOn(pieces[i])), hops[i]);
        foreach (Node node in nodes.Values)
            node.IsOnePortEachSide = IsOnePort(traced, node.Left) && IsOnePort(traced, node.Right);
        return layout;
    }

    private static IReadOnlyList<Hop> Shown(StrandHops all, Piece piece)
    {
        IReadOnlyList<Hop> hops = all.Of(piece.Strand);
        return piece.Count == hops.Count ? hops : [.. hops.Skip(piece.First).Take(piece.Count)];
    }

    /// <summary>
    /// A strand of one position behind a mating that cannot be made shows it on the side of that mating, so that the two parts
    /// stand face to face.
    /// </summary>
    private static IReadOnlyList<Hop> Facing(TracedPlant traced, HashSet<PortRef> rightOfRefused, IReadOnlyList<Hop> hops) =>
        hops is [{ In: < 0, Out: >= 0 and var only }] && rightOfRefused.Contains(traced.Graph.PlaceOf(only).Port)
            ? [new Hop(hops[0].Part, only, -1)]
            : hops;

    private static bool IsOnePort(TracedPlant traced, List<Row> rows) =>
        rows.Select(r => traced.Graph.PlaceOf(r.Position).Port).Distinct().Count() <= 1;

    /// <summary>
    /// The longest path to each part; an edge that would close a circle is left out. A mating that cannot be made joins no
    /// strand, and its parts stand side by side all the same.
    /// </summary>
    private static Dictionary<int, int> Ranks(IReadOnlyList<Hop>[] hops, Mating[] refused)
    {
        var next = new Dictionary<int, List<int>>();
        var order = new List<int>();
        var hasBefore = new HashSet<int>();
        foreach (IReadOnlyList<Hop> way in hops)
        {
            for (int i = 0; i < way.Count; i++)
            {
                if (!next.ContainsKey(way[i].Part))
                {
                    next[way[i].Part] = [];
                    order.Add(way[i].Part);
                }

                if (i > 0 && way[i].Part != way[i - 1].Part && !next[way[i - 1].Part].Contains(way[i].Part))
                    next[way[i - 1].Part].Add(way[i].Part);
            }
        }

        foreach (Mating mating in refused)
        {
            if (mating.A.Part != mating.B.Part && next.TryGetValue(mating.A.Part, out List<int>? after) && next.ContainsKey(mating.B.Part) && !after.Contains(mating.B.Part))
                after.Add(mating.B.Part);
        }

        List<int> sorted = Sorted(next, order);
        var place = new Dictionary<int, int>(sorted.Count);
        for (int i = 0; i < sorted.Count; i++)
            place[sorted[i]] = i;
        var ranks = new Dictionary<int, int>(sorted.Count);
        foreach (int part in sorted)
        {
            int rank = ranks.GetValueOrDefault(part);
            ranks[part] = rank;
            foreach (int after in next[part])
            {
                if (place[after] <= place[part])
                    continue;
                hasBefore.Add(after);
                ranks[after] = Math.Max(ranks.GetValueOrDefault(after), rank + 1);
            }
        }

        // What nothing comes before moves right, next to what it is joined to.
        foreach (int part in sorted)
        {
            int[] after = [.. next[part].Where(a => place[a] > place[part]).Select(a => ranks[a])];
            if (!hasBefore.Contains(part) && after.Length > 0)
                ranks[part] = after.Min() - 1;
        }

        return ranks;
    }

    /// <summary>Parts so that each comes after those before it, as far as circles allow. No recursion: chains may be long.</summary>
    private static List<int> Sorted(Dictionary<int, List<int>> next, List<int> order)
    {
        var done = new HashSet<int>();
        var finished = new List<int>(order.Count);
        var stack = new Stack<(int Part, int Child)>();
        foreach (int root in order)
        {
            if (!done.Add(root))
                continue;
            stack.Push((root, 0));
            while (stack.Count > 0)
            {
                (int part, int child) = stack.Pop();
                if (child == next[part].Count)
                {
                    finished.Add(part);
                    continue;
                }

                stack.Push((part, child + 1));
                if (done.Add(next[part][child]))
                    stack.Push((next[part][child], 0));
            }
        }

        finished.Reverse();
        return finished;
    }

    private static void AddWay(Layout layout, Dictionary<(int Part, int Column), Node> nodes, Dictionary<int, int> ranks, Way way, IReadOnlyList<Hop> hops)
    {
        int strand = way.Strand;
        int column = ranks[hops[0].Part] - 1;
        way.FirstColumn = column + 1;
        foreach (Hop hop in hops)
        {
            int target = Math.Max(ranks[hop.Part], column + 1);
            while (++column < target)
            {
                var passing = new Row(strand, -1, column);
                way.Passages.Add(new Passage(null, passing, passing));
            }

            while (layout.Columns.Count <= target)
                layout.Columns.Add([]);
            if (!nodes.TryGetValue((hop.Part, target), out Node? node))
            {
                nodes[(hop.Part, target)] = node = new Node(hop.Part, target);
                layout.Columns[target].Add(node);
            }

            Row? into = hop.In < 0 ? null : new Row(strand, hop.In, target);
            Row? from = hop.Out < 0 ? null : new Row(strand, hop.Out, target);
            if (into is not null)
                node.Left.Add(into);
            if (from is not null)
                node.Right.Add(from);
            way.Passages.Add(new Passage(node, into, from));
        }

        layout.Ways.Add(way);
    }
}
