using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// Gives every row its slot, column by column from the left, so that a mating runs straight wherever its connector can be
/// drawn in the order of its partner. Positions inside a connector keep their order; only whole parts change places.
/// </summary>
internal sealed class SlotPlan
{
    private readonly TracedPlant _traced;
    private readonly Layout _layout;
    private readonly Dictionary<Row, Row> _before = [];
    private readonly List<Row>[] _passing;

    private SlotPlan(TracedPlant traced, Layout layout)
    {
        _traced = traced;
        _layout = layout;
        _passing = new List<Row>[layout.Columns.Count];
        for (int c = 0; c < _passing.Length; c++)
            _passing[c] = [];
        foreach (Way way in layout.Ways)
        {
            for (int i = 0; i < way.Passages.Count; i++)
            {
                Passage passage = way.Passages[i];
                if (passage.Node is null)
                    _passing[way.FirstColumn + i].Add(passage.In!);
                if (i > 0 && passage.In is { } into && way.Passages[i - 1].Out is { } from)
                    _before[into] = from;
            }
        }
    }

    /// <summary>A box or a passing strand in a column.</summary>
    private sealed record Item(Node? Node, Row? Passing)
    {
        /// <summary>The middle of the rows that it is joined to at its left; NaN when it is joined to none.</summary>
        public double Wish { get; init; }

        /// <summary>Slots of its rows, counted from its first.</summary>
        public int[] Offsets { get; set; } = [];

        /// <summary>Where its first row would best be.</summary>
        public double Start { get; set; }

        public int Part => Node?.Part ?? -1;
    }

    /// <summary>
    /// Orders the boxes of each column as the document names them, or by the middle of what they are joined to, whichever has
    /// fewer crossings between columns; as the document has it where both have as many, so that a wrong joint crosses where it is.
    /// </summary>
    public static void Make(TracedPlant traced, Layout layout)
    {
        var plan = new SlotPlan(traced, layout);
        plan.Run(asNamed: true);
        long named = plan.Crossings();
        plan.Run(asNamed: false);
        if (named <= plan.Crossings())
            plan.Run(asNamed: true);
        plan.PlanCrossings();
    }

    /// <summary>Plans how strands cross inside boxes and between columns, now that every row has its slot.</summary>
    private void PlanCrossings()
    {
        foreach (Node node in _layout.Columns.SelectMany(c => c))
        {
            Dictionary<int, Row> right = node.Right.ToDictionary(r => r.Strand);
            _layout.Inside[node] = new Crossing(node.Left.Where(l => right.ContainsKey(l.Strand)).Select(l => (l, right[l.Strand])));
        }

        ILookup<int, (Row, Row)> gutters = _before.ToLookup(p => p.Value.Column, p => (p.Value, p.Key));
        for (int c = 0; c + 1 < _layout.Columns.Count; c++)
            _layout.Between[c] = new Crossing(gutters[c]);
    }

    private void Run(bool asNamed)
    {
        int slots = 0;
        for (int c = 0; c < _layout.Columns.Count; c++)
            slots = Math.Max(slots, PlaceColumn(_layout.Columns[c], _passing[c], asNamed));
        _layout.SlotCount = slots;
    }

    /// <summary>Inversions between columns, which no drawing can have fewer crossings than.</summary>
    private long Crossings()
    {
        long count = 0;
        foreach (IGrouping<int, KeyValuePair<Row, Row>> gutter in _before.GroupBy(p => p.Key.Column))
        {
            int[] right = [.. gutter.OrderBy(p => p.Value.Slot).Select(p => p.Key.Slot)];
            for (int i = 0; i < right.Length; i++)
            {
                for (int j = i + 1; j < right.Length; j++)
                    count += right[i] > right[j] ? 1 : 0;
            }
        }

        return count;
    }

    /// <summary>Places a column; returns the first slot below it.</summary>
    private int PlaceColumn(List<Node> nodes, List<Row> passing, bool asNamed)
    {
        var items = new List<Item>(nodes.Count + passing.Count);
        foreach (Node node in nodes)
        {
            node.Turns.Clear();
            Turn(node);
            Sort(node, node.Left);
            Sort(node, node.Right);
            double[] slots = [.. node.Left.Where(_before.ContainsKey).Select(r => (double)_before[r].Slot)];
            items.Add(new Item(node, null) { Wish = slots.Length > 0 ? slots.Average() : double.NaN });
        }

        if (asNamed)
            items.Sort(InOrderOfTheDocument(nodes));
        else
            items.Sort((a, b) => (Last(a.Wish), a.Part).CompareTo((Last(b.Wish), b.Part)));

        // A passing strand goes before the first box that stands lower.
        foreach (Row row in passing.OrderBy(r => _before.TryGetValue(r, out Row? from) ? from.Slot : 0))
        {
            double wish = _before.TryGetValue(row, out Row? from) ? from.Slot : 0;
            int at = items.FindIndex(i => i.Wish > wish);
            items.Insert(at < 0 ? items.Count : at, new Item(null, row) { Wish = wish });
        }

        foreach (Item item in items)
            Shape(item, items);
        int below = Settle(items);
        nodes.Clear();
        nodes.AddRange(items.Where(i => i.Node is not null).Select(i => i.Node!));
        return below;
    }

    /// <summary>
    /// Named parts as the document describes them, numbers in names counted as numbers; a column with cords that have no name
    /// of their own as the runs mention them.
    /// </summary>
    private Comparison<Item> InOrderOfTheDocument(List<Node> nodes)
    {
        if (nodes.Any(n => _traced.Plant.Parts[n.Part].IsInline))
            return (a, b) => a.Part.CompareTo(b.Part);
        return (a, b) =>
        {
            Part pa = _traced.Plant.Parts[a.Part];
            Part pb = _traced.Plant.Parts[b.Part];
            int order = string.CompareOrdinal(pa.Place.File, pb.Place.File);
            if (order == 0)
                order = (pa.Place.Line, pa.Place.Column).CompareTo((pb.Place.Line, pb.Place.Column));
            if (order == 0)
                order = NaturalOrder.Compare(pa.Name, pb.Name);
            return order != 0 ? order : a.Part.CompareTo(b.Part);
        };
    }

    private static double Last(double wish) => double.IsNaN(wish) ? double.MaxValue : wish;

    /// <summary>The slots of an item's rows among themselves: spread as what they are joined to, unless something else stands between.</summary>
    private void Shape(Item item, List<Item> items)
    {
        if (item.Node is not { } node)
        {
            item.Offsets = [0];
            item.Start = item.Wish;
            return;
        }

        int count = node.RowCount;
        List<int> wished = [.. node.Left.Where(_before.ContainsKey).Select(r => _before[r].Slot).Order()];
        bool spread = wished.Count > 1 && wished[^1] - wished[0] >= wished.Count
            && !items.Any(o => o != item && o.Wish > wished[0] && o.Wish < wished[^1]);
        var offsets = new List<int>(count);
        if (spread)
            offsets.AddRange(wished.Select(w => w - wished[0]));
        while (offsets.Count < count)
            offsets.Add(offsets.Count == 0 ? 0 : offsets[^1] + 1);
        item.Offsets = [.. offsets];
        item.Start = wished.Count == 0 ? double.NaN : spread ? wished[0] : wished.Average() - ((wished.Count - 1) / 2.0);
    }

    /// <summary>
    /// Puts the items one below the other, each as near to its wish as the others let it (isotonic regression by pooling
    /// adjacent violators). Returns the first slot below.
    /// </summary>
    private static int Settle(List<Item> items)
    {
        var pools = new List<(double Sum, int Count)>();
        int above = 0;
        foreach (Item item in items)
        {
            double lastMean = pools.Count > 0 ? pools[^1].Sum / pools[^1].Count : 0;
            pools.Add((double.IsNaN(item.Start) ? lastMean : item.Start - above, 1));
            while (pools.Count > 1 && pools[^2].Sum / pools[^2].Count > pools[^1].Sum / pools[^1].Count)
            {
                pools[^2] = (pools[^2].Sum + pools[^1].Sum, pools[^2].Count + pools[^1].Count);
                pools.RemoveAt(pools.Count - 1);
            }

            above += item.Offsets.Length == 0 ? 0 : item.Offsets[^1] + 1;
        }

        int next = 0;
        above = 0;
        foreach ((double sum, int count) in pools)
        {
            int shift = Math.Max(0, (int)Math.Round(sum / count));
            for (int k = 0; k < count; k++)
            {
                Item item = items[next++];
                SetSlots(item, above + shift);
                above += item.Offsets.Length == 0 ? 0 : item.Offsets[^1] + 1;
            }
        }

        return items.Max(i => i.Offsets.Length == 0 ? 0 : (i.Node?.LastSlot ?? i.Passing!.Slot) + 1);
    }

    private static void SetSlots(Item item, int start)
    {
        if (item.Passing is { } row)
        {
            row.Slot = start;
            return;
        }

        Node node = item.Node!;
        for (int i = 0; i < node.Left.Count; i++)
            node.Left[i].Slot = start + item.Offsets[i];
        for (int i = 0; i < node.Right.Count; i++)
            node.Right[i].Slot = start + item.Offsets[i];
    }

    /// <summary>Decides for each leg of a cable whether it is drawn turned over, from the mating at its left.</summary>
    private void Turn(Node node)
    {
        Part part = _traced.Plant.Parts[node.Part];
        if (!part.Shape.IsCable)
            return;
        var decided = new HashSet<int>();
        foreach (Row row in node.Left)
        {
            PortRef port = _traced.Graph.PlaceOf(row.Position).Port;
            int leg = part.Shape.Ports[port.Port].Leg;
            int mate = _traced.Graph.Outside[row.Position];
            if (mate < 0 || !_before.ContainsKey(row) || !decided.Add(leg) || _traced.MatingAt(row.Position) is not { } mating)
                continue;
            PortRef other = _traced.Graph.PlaceOf(mate).Port;
            node.Turns[leg] = TurnOf(other, node.Column - 1).Over(_traced.Plant.Port(other).Face, mating.Keys);
        }

        // The legs of a harness have no left end of their own: they turn to what they meet at the right, unless that turns too.
        foreach (Row row in node.Right)
        {
            int leg = part.Shape.Ports[_traced.Graph.PlaceOf(row.Position).Port.Port].Leg;
            int mate = _traced.Graph.Outside[row.Position];
            if (leg == 0 || mate < 0 || !decided.Add(leg) || _traced.MatingAt(row.Position) is not { } mating)
                continue;
            PortRef other = _traced.Graph.PlaceOf(mate).Port;
            if (!_traced.Plant.Parts[other.Part].Shape.IsCable)
                node.Turns[leg] = default(Turn).Over(_traced.Plant.Port(other).Face, mating.Keys);
        }
    }

    /// <summary>How a port is drawn in the nearest column left of the given one in which it stands.</summary>
    private Turn TurnOf(PortRef port, int column)
    {
        for (int c = column; c >= 0; c--)
        {
            foreach (Node node in _layout.Columns[c])
            {
                if (node.Part == port.Part)
                    return node.Turns.GetValueOrDefault(_traced.Plant.Port(port).Leg);
            }
        }

        return default;
    }

    /// <summary>Ports in their order, positions in theirs as the leg is turned.</summary>
    private void Sort(Node node, List<Row> rows)
    {
        rows.Sort((a, b) =>
        {
            PositionPlace pa = _traced.Graph.PlaceOf(a.Position);
            PositionPlace pb = _traced.Graph.PlaceOf(b.Position);
            if (pa.Port != pb.Port)
                return pa.Port.Port.CompareTo(pb.Port.Port);
            PortShape port = _traced.Plant.Port(pa.Port);
            Turn turn = node.Turns.GetValueOrDefault(port.Leg);
            return turn.Place(port.Face, pa.Position).CompareTo(turn.Place(port.Face, pb.Position));
        });
    }
}
