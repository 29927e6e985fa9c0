using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Benchmarks.Crossings;

/// <summary>
/// The inversions of the columns that are drawn, when the parts of each stand as the document names them: the fewest crossings
/// that any drawing of that order has.
/// </summary>
internal static class DocumentOrder
{
    /// <param name="traced">The plant.</param>
    /// <param name="drawn">Its drawing, of which only the columns are taken.</param>
    /// <param name="order">Order of the positions at one side of a part.</param>
    public static int Inversions(TracedPlant traced, DrawnColumns drawn, Comparison<int> order)
    {
        // For each strand its place at the right edge of the column before.
        var before = new Dictionary<int, int>();
        int inversions = 0;
        for (int c = 0; c < drawn.ColumnCount; c++)
        {
            List<Item> items = ItemsOf(traced, drawn, c, before);
            Dictionary<int, int> left = PlacesOf(items, i => i.Left, order);
            inversions += Inverted(before, left);
            before = PlacesOf(items, i => i.Right, order);
        }

        return inversions;
    }

    /// <summary>A part in a column, or a strand that passes the column without one.</summary>
    private sealed class Item(int part)
    {
        public int Part => part;

        /// <summary>Strands and the positions where they enter at the left.</summary>
        public List<(int Strand, int Position)> Left { get; } = [];

        /// <summary>Strands and the positions where they leave at the right.</summary>
        public List<(int Strand, int Position)> Right { get; } = [];
    }

    private static List<Item> ItemsOf(TracedPlant traced, DrawnColumns drawn, int column, Dictionary<int, int> before)
    {
        var parts = new Dictionary<int, Item>();
        var passing = new List<int>();
        for (int s = 0; s < drawn.Hops.Count; s++)
        {
            DrawnHop[] hops = drawn.Hops[s];
            if (column < hops[0].Column || column > hops[^1].Column)
                continue;
            int at = Array.FindIndex(hops, h => h.Column == column);
            if (at < 0)
            {
                passing.Add(s);
                continue;
            }

            Hop hop = hops[at].Hop;
            if (!parts.TryGetValue(hop.Part, out Item? item))
                parts[hop.Part] = item = new Item(hop.Part);
            if (hop.In >= 0)
                item.Left.Add((s, hop.In));
            if (hop.Out >= 0)
                item.Right.Add((s, hop.Out));
        }

        List<Item> items = [.. parts.Values];
        items.Sort((a, b) => AsNamed(traced.Plant, a.Part, b.Part));

        // The document has no place for a strand that passes by. It goes where it crosses little: before the first part that is
        // joined to lower rows than its own.
        Dictionary<Item, double> middles = items.Where(i => i.Left.Exists(l => before.ContainsKey(l.Strand)))
            .ToDictionary(i => i, i => i.Left.Where(l => before.ContainsKey(l.Strand)).Average(l => before[l.Strand]));
        foreach (int strand in passing.OrderBy(s => before[s]))
        {
            int at = items.FindIndex(i => middles.TryGetValue(i, out double middle) && middle > before[strand]);
            var item = new Item(-1);
            item.Left.Add((strand, -1));
            item.Right.Add((strand, -1));
            items.Insert(at < 0 ? items.Count : at, item);
        }

        return items;
    }

    /// <summary>By the line that names the part, then by its number within a range; cords without a name as runs mention them.</summary>
    private static int AsNamed(Plant plant, int a, int b)
    {
        Part pa = plant.Parts[a], pb = plant.Parts[b];
        int order = string.CompareOrdinal(pa.Place.File, pb.Place.File);
        if (order == 0)
            order = (pa.Place.Line, pa.Place.Column).CompareTo((pb.Place.Line, pb.Place.Column));
        if (order == 0 && !pa.IsInline && !pb.IsInline)
            order = NaturalOrder.Compare(pa.Name, pb.Name);
        return order != 0 ? order : a.CompareTo(b);
    }

    private static Dictionary<int, int> PlacesOf(List<Item> items, Func<Item, List<(int Strand, int Position)>> side, Comparison<int> order)
    {
        var places = new Dictionary<int, int>();
        foreach (Item item in items)
        {
            side(item).Sort((a, b) => order(a.Position, b.Position));
            foreach ((int strand, _) in side(item))
                places.Add(strand, places.Count);
        }

        return places;
    }

    private static int Inverted(Dictionary<int, int> left, Dictionary<int, int> right)
    {
        int[] order = [.. left.Where(p => right.ContainsKey(p.Key)).OrderBy(p => p.Value).Select(p => right[p.Key])];
        int count = 0;
        for (int i = 0; i < order.Length; i++)
        {
            for (int j = i + 1; j < order.Length; j++)
                count += order[i] > order[j] ? 1 : 0;
        }

        return count;
    }
}
