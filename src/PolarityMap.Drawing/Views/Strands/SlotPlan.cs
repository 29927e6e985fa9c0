using System.Runtime.InteropServices;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// Gives every row its slot, column by column from the left, so that a mating runs straight wherever its connector can be
/// drawn in the order of its partner. Positions inside a connector keep their order; only whole parts change places.
/// </summary>
internal sealed class SlotPlan
{
    private readonly StrandHops _hops;
    private readonly TracedPlant _traced;
    private readonly Layout _layout;
    private readonly LegTurns _turns;

    // Used by one column after the other.
    private readonly List<Item> _items = [];
    private readonly List<int> _wished = [];
    private readonly List<(double Sum, int Count)> _pools = [];

    private SlotPlan(StrandHops hops, Layout layout)
    {
        _hops = hops;
        _traced = hops.Traced;
        _layout = layout;
        _turns = new LegTurns(hops, layout);
    }

    /// <summary>A box or a passing strand in a column.</summary>
    private sealed class Item(Node? node, Row? passing, double wish)
    {
        public Node? Node => node;

        public Row? Passing => passing;

        /// <summary>The middle of the rows that it is joined to at its left; NaN when it is joined to none.</summary>
        public double Wish { get; } = wish;

        /// <summary>Number of its rows, one below the other.</summary>
        public int Rows { get; } = node?.RowCount ?? 1;

        /// <summary>Slots of its rows, counted from its first; null where they follow each other.</summary>
        public int[]? Offsets { get; set; }

        /// <summary>Where its first row would best be.</summary>
        public double Start { get; set; } = wish;

        public int Part => node?.Part ?? -1;

        /// <summary>How many slots it takes, those between its rows included.</summary>
        public int Extent => Rows == 0 ? 0 : OffsetOf(Rows - 1) + 1;

        public int OffsetOf(int row) => Offsets is null ? row : Offsets[row];

        /// <summary>The first slot below it.</summary>
        public int Below => Rows == 0 ? 0 : (node?.LastSlot ?? passing!.Slot) + 1;
    }

    /// <summary>
    /// Orders the boxes of each column as the document names them, or by the middle of what they are joined to, whichever has
    /// fewer crossings between columns; as the document has it where both have as many, so that a wrong joint crosses where it is.
    /// </summary>
    public static void Make(StrandHops hops, Layout layout)
    {
        var plan = new SlotPlan(hops, layout);
        plan.Run(asNamed: true);
        long named = GutterInversions.Of(layout);

        // Fewer crossings than none there are not. Rows start in the order of the strands, which may turn a leg otherwise than
        // their final order does; then the second look is needed.
        if (named > 0 || plan._turns.DependOnOrder)
        {
            plan.Run(asNamed: false);
            if (named <= GutterInversions.Of(layout))
                plan.Run(asNamed: true);
        }

        plan.PlanCrossings();
    }

    /// <summary>Plans how strands cross inside boxes and between columns, now that every row has its slot.</summary>
    private void PlanCrossings()
    {
        var rows = new List<(Row, Row)>();
        foreach (List<Node> column in _layout.Columns)
        {
            foreach (Node node in column)
            {
                rows.Clear();
                foreach (Row row in node.Left)
                {
                    if (row.Through is { } from)
                        rows.Add((row, from));
                }

                if (rows.Count > 0)
                    node.Inside = Crossing.Of([.. rows], _hops.Braids);
            }
        }

        var byLeftSlot = new Row?[_layout.SlotCount];
        _layout.Between = new Crossing[Math.Max(0, _layout.Columns.Count - 1)];
        for (int c = 0; c < _layout.Between.Length; c++)
        {
            foreach (Row row in _layout.RowsAtLeft(c + 1))
                byLeftSlot[row.Before!.Slot] = row;
            rows.Clear();
            foreach (Row? row in byLeftSlot)
            {
                if (row is not null)
                    rows.Add((row.Before!, row));
            }

            Array.Clear(byLeftSlot);
            _layout.Between[c] = Crossing.Of([.. rows], _hops.Braids);
        }
    }

    private void Run(bool asNamed)
    {
        int slots = 0;
        for (int c = 0; c < _layout.Columns.Count; c++)
            slots = Math.Max(slots, PlaceColumn(_layout.Columns[c], _layout.Passing[c], asNamed));
        _layout.SlotCount = slots;
    }

    /// <summary>Places a column; returns the first slot below it.</summary>
    private int PlaceColumn(List<Node> nodes, List<Row> passing, bool asNamed)
    {
        _items.Clear();
        bool inline = false;
        foreach (Node node in nodes)
        {
            node.ClearTurns();
            _turns.Turn(node);
            Sort(node, node.Left);
            Sort(node, node.Right, right: true);
            _items.Add(new Item(node, null, MiddleBefore(node)));
            inline |= _traced.Plant.Parts[node.Part].IsInline;
        }

        SortItems(!asNamed ? ByWish : inline ? ByPart : AsTheDocumentNames);

        // A passing strand goes before the first box that stands lower.
        foreach (Row row in passing.Count > 1 ? passing.OrderBy(r => r.Before?.Slot ?? 0) : passing.AsEnumerable())
        {
            double wish = row.Before?.Slot ?? 0;
            int at = _items.FindIndex(i => i.Wish > wish);
            _items.Insert(at < 0 ? _items.Count : at, new Item(null, row, wish));
        }

        foreach (Item item in _items)
            Shape(item);
        int below = Settle();
        nodes.Clear();
        foreach (Item item in _items)
        {
            if (item.Node is { } node)
                nodes.Add(node);
        }

        return below;
    }

    private static double MiddleBefore(Node node)
    {
        double sum = 0;
        int count = 0;
        foreach (Row row in node.Left)
        {
            if (row.Before is { } from)
            {
                sum += from.Slot;
                count++;
            }
        }

        return count > 0 ? sum / count : double.NaN;
    }

    /// <summary>Most columns are in order already.</summary>
    private void SortItems(Comparison<Item> order)
    {
        for (int i = 1; i < _items.Count; i++)
        {
            if (order(_items[i - 1], _items[i]) > 0)
            {
                _items.Sort(order);
                return;
            }
        }
    }

    private static int ByWish(Item a, Item b) => (Last(a.Wish), a.Part).CompareTo((Last(b.Wish), b.Part));

    private static double Last(double wish) => double.IsNaN(wish) ? double.MaxValue : wish;

    /// <summary>A column with cords that have no name of their own: as the runs mention them.</summary>
    private static int ByPart(Item a, Item b) => a.Part.CompareTo(b.Part);

    /// <summary>Named parts as the document describes them.</summary>
    private int AsTheDocumentNames(Item a, Item b) => DocumentOrder.Compare(_traced.Plant, a.Part, b.Part);

    /// <summary>The slots of an item's rows among themselves: spread as what they are joined to, unless something else stands between.</summary>
    private void Shape(Item item)
    {
        if (item.Node is not { } node)
            return;
        _wished.Clear();
        bool sorted = true;
        double sum = 0;
        foreach (Row row in node.Left)
        {
            if (row.Before is not { } from)
                continue;
            sorted &= _wished.Count == 0 || _wished[^1] <= from.Slot;
            _wished.Add(from.Slot);
            sum += from.Slot;
        }

        if (_wished.Count == 0)
        {
            item.Start = double.NaN;
            return;
        }

        if (!sorted)
            _wished.Sort();
        if (_wished.Count > 1 && _wished[^1] - _wished[0] >= _wished.Count && !AnotherWishesBetween(item, _wished[0], _wished[^1]))
        {
            var offsets = new int[item.Rows];
            for (int i = 0; i < offsets.Length; i++)
                offsets[i] = i < _wished.Count ? _wished[i] - _wished[0] : offsets[i - 1] + 1;
            item.Offsets = offsets;
            item.Start = _wished[0];
            return;
        }

        item.Start = (sum / _wished.Count) - ((_wished.Count - 1) / 2.0);
    }

    private bool AnotherWishesBetween(Item item, int first, int last)
    {
        foreach (Item other in _items)
        {
            if (other != item && other.Wish > first && other.Wish < last)
                return true;
        }

        return false;
    }

    /// <summary>
    /// Puts the items one below the other, each as near to its wish as the others let it (isotonic regression by pooling
    /// adjacent violators). Returns the first slot below.
    /// </summary>
    private int Settle()
    {
        _pools.Clear();
        int above = 0;
        foreach (Item item in _items)
        {
            double lastMean = _pools.Count > 0 ? _pools[^1].Sum / _pools[^1].Count : 0;
            _pools.Add((double.IsNaN(item.Start) ? lastMean : item.Start - above, 1));
            while (_pools.Count > 1 && _pools[^2].Sum / _pools[^2].Count > _pools[^1].Sum / _pools[^1].Count)
            {
                _pools[^2] = (_pools[^2].Sum + _pools[^1].Sum, _pools[^2].Count + _pools[^1].Count);
                _pools.RemoveAt(_pools.Count - 1);
            }

            above += item.Extent;
        }

        int next = 0, below = 0;
        above = 0;
        foreach ((double sum, int count) in _pools)
        {
            int shift = Math.Max(0, (int)Math.Round(sum / count));
            for (int k = 0; k < count; k++)
            {
                Item item = _items[next++];
                SetSlots(item, above + shift);
                above += item.Extent;
                below = Math.Max(below, item.Below);
            }
        }

        return below;
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
            node.Left[i].Slot = start + item.OffsetOf(i);
        for (int i = 0; i < node.Right.Count; i++)
            node.Right[i].Slot = start + item.OffsetOf(i);
    }

    /// <summary>Ports in their order, positions in theirs as the leg is turned.</summary>
    private static void Sort(Node node, List<Row> rows, bool right = false)
    {
        const int mostOnStack = 128;
        Span<long> keys = rows.Count <= mostOnStack ? stackalloc long[rows.Count] : new long[rows.Count];
        bool sorted = true;
        for (int i = 0; i < keys.Length; i++)
        {
            PortShape port = rows[i].Port.Shape;
            keys[i] = ((long)rows[i].Port.Ref.Port << 32) | (uint)(right ? node.RightTurnOf(port.Leg) : node.TurnOf(port.Leg)).Place(port.Face, rows[i].Place);
            sorted &= i == 0 || keys[i - 1] <= keys[i];
        }

        if (!sorted)
            keys.Sort(CollectionsMarshal.AsSpan(rows));
    }
}
