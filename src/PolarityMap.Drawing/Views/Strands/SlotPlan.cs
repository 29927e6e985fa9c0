using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// Gives every row its slot, column by column from the left, so that a mating runs straight wherever its connector can be
/// drawn in the order of its partner. Positions inside a connector keep their order; only whole parts change places.
/// </summary>
internal sealed class SlotPlan(TracedPlant traced, Layout layout)
{
    /// <summary>A box or a passing strand in a column.</summary>
    private sealed record Item(Node? Node, Row? Passing)
    {
        public double Wish { get; set; }
    }

    public static void Make(TracedPlant traced, Layout layout) => new SlotPlan(traced, layout).Run();

    private void Run()
    {
        var before = new Dictionary<Row, Row>();
        var passing = new List<Row>[layout.Columns.Count];
        for (int c = 0; c < passing.Length; c++)
            passing[c] = [];
        foreach (Way way in layout.Ways)
        {
            for (int i = 0; i < way.Passages.Count; i++)
            {
                Passage passage = way.Passages[i];
                if (passage.Node is null)
                    passing[way.FirstColumn + i].Add(passage.In!);
                if (i > 0 && passage.In is { } into && way.Passages[i - 1].Out is { } from)
                    before[into] = from;
            }
        }

        for (int c = 0; c < layout.Columns.Count; c++)
            PlaceColumn(layout.Columns[c], passing[c], before);
        layout.SlotCount = 1 + Math.Max(
            layout.Columns.SelectMany(c => c).Select(n => n.LastSlot).DefaultIfEmpty(-1).Max(),
            passing.SelectMany(p => p).Select(r => r.Slot).DefaultIfEmpty(-1).Max());
    }

    private void PlaceColumn(List<Node> nodes, List<Row> passing, Dictionary<Row, Row> before)
    {
        var items = new List<Item>(nodes.Count + passing.Count);
        foreach (Node node in nodes)
        {
            Turn(node, before);
            Sort(node, node.Left);
            Sort(node, node.Right);
            double[] slots = [.. node.Left.Where(before.ContainsKey).Select(r => (double)before[r].Slot)];
            items.Add(new Item(node, null) { Wish = slots.Length > 0 ? slots.Average() : double.MaxValue });
        }

        foreach (Row row in passing)
            items.Add(new Item(null, row) { Wish = before.TryGetValue(row, out Row? from) ? from.Slot : double.MaxValue });
        Item[] ordered = [.. items.OrderBy(i => i.Wish).ThenBy(i => i.Node?.Part ?? -1)];
        int free = 0;
        for (int i = 0; i < ordered.Length; i++)
            free = Place(ordered, i, free, before);
        nodes.Clear();
        nodes.AddRange(ordered.Where(i => i.Node is not null).Select(i => i.Node!));
    }

    /// <summary>Places one item at or below slot <paramref name="free"/>; returns the next free slot.</summary>
    private static int Place(Item[] items, int index, int free, Dictionary<Row, Row> before)
    {
        Item item = items[index];
        if (item.Passing is { } row)
        {
            row.Slot = Math.Max(free, before.TryGetValue(row, out Row? from) ? from.Slot : 0);
            return row.Slot + 1;
        }

        Node node = item.Node!;
        int count = node.RowCount;
        List<int> wished = [.. node.Left.Where(before.ContainsKey).Select(r => before[r].Slot).Order()];
        bool holesTaken = wished.Count > 1 && wished[^1] - wished[0] >= wished.Count
            && items.Any(o => o != item && o.Wish > wished[0] && o.Wish < wished[^1]);
        int start = wished.Count == 0 ? free : wished[0];
        if (holesTaken)
        {
            start = (int)Math.Round(wished.Average() - ((count - 1) / 2.0));
            wished = [];
        }

        var slots = new List<int>(count);
        int shift = Math.Max(0, free - start);
        foreach (int wish in wished)
            slots.Add(wish + shift);
        while (slots.Count < count)
            slots.Add(slots.Count == 0 ? start + shift : slots[^1] + 1);
        for (int i = 0; i < node.Left.Count; i++)
            node.Left[i].Slot = slots[i];
        for (int i = 0; i < node.Right.Count; i++)
            node.Right[i].Slot = slots[i];
        return slots.Count == 0 ? free : slots[^1] + 1;
    }

    /// <summary>Decides for each leg of a cable whether it is drawn turned over, from the mating at its left.</summary>
    private void Turn(Node node, Dictionary<Row, Row> before)
    {
        Part part = traced.Plant.Parts[node.Part];
        if (!part.Shape.IsCable)
            return;
        var decided = new HashSet<int>();
        foreach (Row row in node.Left)
        {
            PortRef port = traced.Graph.PlaceOf(row.Position).Port;
            int leg = part.Shape.Ports[port.Port].Leg;
            int mate = traced.Graph.Outside[row.Position];
            if (mate < 0 || !before.ContainsKey(row) || !decided.Add(leg) || traced.MatingAt(row.Position) is not { } mating)
                continue;
            PortRef other = traced.Graph.PlaceOf(mate).Port;
            bool otherTurned = IsTurned(other, node.Column - 1);
            if (mating.Keys == Keying.Aligned ? !otherTurned : otherTurned)
                node.Turned.Add(leg);
        }
    }

    /// <summary>Whether a port is drawn turned over in the nearest column left of the given one in which it stands.</summary>
    private bool IsTurned(PortRef port, int column)
    {
        for (int c = column; c >= 0; c--)
        {
            foreach (Node node in layout.Columns[c])
            {
                if (node.Part == port.Part)
                    return node.Turned.Contains(traced.Plant.Port(port).Leg);
            }
        }

        return false;
    }

    /// <summary>Ports in their order, positions in theirs, from the last to the first where the leg is turned.</summary>
    private void Sort(Node node, List<Row> rows)
    {
        rows.Sort((a, b) =>
        {
            PositionPlace pa = traced.Graph.PlaceOf(a.Position);
            PositionPlace pb = traced.Graph.PlaceOf(b.Position);
            if (pa.Port != pb.Port)
                return pa.Port.Port.CompareTo(pb.Port.Port);
            int order = pa.Position.CompareTo(pb.Position);
            return node.Turned.Contains(traced.Plant.Port(pa.Port).Leg) ? -order : order;
        });
    }
}
