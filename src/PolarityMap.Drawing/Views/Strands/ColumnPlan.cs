using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// Puts parts into columns in the order of flow: a part stands right of every part that a strand passes before it. A strand
/// that comes back to a part finds it drawn once more, further right.
/// </summary>
internal static class ColumnPlan
{
    /// <param name="all">The visits of strands.</param>
    /// <param name="pieces">What is shown.</param>
    /// <param name="highest">The most height that a drawing may take.</param>
    /// <returns>The layout, or null when its rows alone take more height, however they are laid out.</returns>
    public static Layout? Make(StrandHops all, IReadOnlyList<Piece> pieces, double highest)
    {
        // Sums of many heights may differ from their product in the last places.
        const double rounding = 1e-6;
        ColumnRanks ranks = Ranked(all, pieces);
        return LeastHeight(all, ranks, pieces) > highest + rounding ? null : Make(all, ranks, pieces);
    }

    /// <summary>Puts the parts into columns, however many rows they have.</summary>
    public static Layout Make(StrandHops all, IReadOnlyList<Piece> pieces) => Make(all, Ranked(all, pieces), pieces);

    private static ColumnRanks Ranked(StrandHops all, IReadOnlyList<Piece> pieces)
    {
        ColumnRanks ranks = all.Ranks;
        ranks.Clear();
        foreach (Piece piece in pieces)
            ranks.Add(Shown(all, piece));
        ranks.Rank(all.Refused);
        return ranks;
    }

    /// <summary>
    /// The height of the rows at one side of the fullest column, counted before any is made, and of what stands above the first of
    /// them at the least.
    /// </summary>
    private static double LeastHeight(StrandHops all, ColumnRanks ranks, IReadOnlyList<Piece> pieces)
    {
        var left = new List<int>();
        var right = new List<int>();
        foreach (Piece piece in pieces)
        {
            int column = -1;
            foreach (Hop hop in Shown(all, piece))
            {
                int target = Math.Max(ranks.RankOf(hop.Part), column + 1);
                while (left.Count <= target)
                {
                    left.Add(0);
                    right.Add(0);
                }

                // The first visit begins where its part stands; between two a strand passes columns.
                for (int passed = column < 0 ? target : column + 1; passed < target; passed++)
                {
                    left[passed]++;
                    right[passed]++;
                }

                column = target;
                left[column] += hop.In >= 0 ? 1 : 0;
                right[column] += hop.Out >= 0 ? 1 : 0;
            }
        }

        int most = 0;
        bool isEntered = false;
        for (int c = 0; c < left.Count; c++)
        {
            most = Math.Max(most, Math.Max(left[c], right[c]));
            isEntered |= left[c] > 0;
        }

        return (most * Measures.Pitch) + (isEntered ? ColumnText.LeastAbove : 0);
    }

    private static Layout Make(StrandHops all, ColumnRanks ranks, IReadOnlyList<Piece> pieces)
    {
        var layout = new Layout(pieces.Count);
        foreach (Piece piece in pieces)
            AddWay(all, layout, ranks, new Way(layout.Ways.Count, piece, all.GoesOn(piece), piece.Count), Shown(all, piece));
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

            Node node = NodeAt(layout, ranks, hop.Part, target);
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
    private static Node NodeAt(Layout layout, ColumnRanks ranks, int part, int column)
    {
        ref Node? last = ref ranks.NodeOf(part);
        Node? node = last;
        while (node is not null && node.Column != column)
            node = node.Other;
        if (node is not null)
            return node;
        node = new Node(part, ranks.NumberOf(part), column) { Other = last };
        last = node;
        layout.Columns[column].Add(node);
        layout.LastBoxOf[part] = node;
        return node;
    }
}
