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
        ColumnRanks ranks = all.Ranks;
        ranks.Clear();
        foreach (Piece piece in pieces)
            ranks.Add(Shown(all, piece));
        ranks.Rank(all.Refused);
        var layout = new Layout(pieces.Count);
        foreach (Piece piece in pieces)
            AddWay(all, layout, ranks, new Way(piece, all.GoesOn(piece)), Shown(all, piece));
        foreach (List<Node> column in layout.Columns)
        {
            foreach (Node node in column)
                node.IsOnePortEachSide = IsOnePort(node.Left) && IsOnePort(node.Right);
        }

        return layout;
    }

    /// <summary>
    /// The visits that a piece shows. A strand of one position behind a mating that cannot be made shows it on the side of that
    /// mating, so that the two parts stand face to face.
    /// </summary>
    private static ReadOnlySpan<Hop> Shown(StrandHops all, Piece piece)
    {
        ReadOnlySpan<Hop> hops = all.Of(piece.Strand).AsSpan(piece.First, piece.Count);
        return hops is [{ In: < 0, Out: >= 0 and var only }] && all.Refused.IsRightOfOne(all.Ports.At(only).Ref)
            ? new[] { new Hop(hops[0].Part, only, -1) }
            : hops;
    }

    private static bool IsOnePort(List<Row> rows)
    {
        for (int i = 1; i < rows.Count; i++)
        {
            if (rows[i].Port != rows[0].Port)
                return false;
        }

        return true;
    }

    private static void AddWay(StrandHops all, Layout layout, ColumnRanks ranks, Way way, ReadOnlySpan<Hop> hops)
    {
        int strand = way.Strand;
        int column = ranks.RankOf(hops[0].Part) - 1;
        way.FirstColumn = column + 1;
        way.Passages.EnsureCapacity(hops.Length);
        Row? before = null;
        foreach (Hop hop in hops)
        {
            int target = Math.Max(ranks.RankOf(hop.Part), column + 1);
            layout.Reach(target);
            while (++column < target)
            {
                var passing = new Row(strand, column);
                passing.Join(before);
                before = passing;
                layout.Passing[column].Add(passing);
                way.Passages.Add(new Passage(null, passing, passing));
            }

            Node node = NodeAt(layout, ref ranks.NodeOf(hop.Part), hop.Part, target);
            Row? into = hop.In < 0 ? null : new Row(strand, hop.In, target, all.Ports);
            Row? from = hop.Out < 0 ? null : new Row(strand, hop.Out, target, all.Ports);
            if (into is not null)
            {
                into.Join(before);
                into.Through = from;
                node.Left.Add(into);
            }

            if (from is not null)
                node.Right.Add(from);
            before = from;
            way.Passages.Add(new Passage(node, into, from));
        }

        layout.Ways.Add(way);
    }

    /// <summary>The box of a part in a column, made where there is none yet.</summary>
    private static Node NodeAt(Layout layout, ref Node? last, int part, int column)
    {
        Node? node = last;
        while (node is not null && node.Column != column)
            node = node.Other;
        if (node is not null)
            return node;
        node = new Node(part, column) { Other = last };
        last = node;
        layout.Columns[column].Add(node);
        layout.LastBoxOf[part] = node;
        return node;
    }
}
