namespace PolarityMap.Drawing.Views.Overview;

/// <summary>A box in its column, or a line that passes the column.</summary>
internal sealed class Item(BoxGroup? box, IReadOnlyList<int> networks, int index)
{
    public BoxGroup? Box { get; } = box;

    /// <summary>Its networks, as indices in rising order.</summary>
    public IReadOnlyList<int> Networks { get; } = networks;

    /// <summary>Its number in the order in which the strands come to it.</summary>
    public int Index { get; } = index;

    /// <summary>Its place from above.</summary>
    public int Order { get; set; }

    /// <summary>Segments of lines that arrive at its left, from above.</summary>
    public List<Segment> Left { get; } = [];

    /// <summary>Segments of lines that leave at its right, from above.</summary>
    public List<Segment> Right { get; } = [];

    /// <summary>Where among the networks it stands: the middle of its own.</summary>
    public double Among
    {
        get
        {
            double sum = 0;
            for (int i = 0; i < Networks.Count; i++)
                sum += Networks[i];
            return Networks.Count == 0 ? 0 : sum / Networks.Count;
        }
    }
}

/// <summary>The stretch of a line between two columns that follow each other.</summary>
internal sealed class Segment(LineGroup line, int gutter, Item from, Item to)
{
    public LineGroup Line { get; } = line;

    /// <summary>The column at its left.</summary>
    public int Gutter { get; } = gutter;

    public Item From { get; } = from;

    public Item To { get; } = to;

    /// <summary>Its place from above at the right of <see cref="From"/>.</summary>
    public int Place { get; set; } = from.Right.Count;

    /// <summary>True for the first stretch of a line, which carries its words.</summary>
    public bool HasWords => From.Box is not null;
}

/// <summary>Columns of boxes and passing lines, ordered so that few lines cross.</summary>
internal sealed class Grid
{
    private const int Sweeps = 6;

    private readonly Dictionary<BoxGroup, Item> _itemOf = [];
    private readonly Dictionary<LineGroup, List<Segment>> _wayOf = [];

    private Grid(Chart chart)
    {
        Columns = new List<Item>[chart.Columns.Count];
        Gutters = new List<Segment>[Math.Max(0, chart.Columns.Count - 1)];
        for (int g = 0; g < Gutters.Length; g++)
            Gutters[g] = [];
        for (int c = 0; c < Columns.Length; c++)
        {
            Columns[c] = [];
            foreach (BoxGroup box in chart.Columns[c])
                _itemOf[box] = Add(c, box, box.Networks);
        }

        foreach (LineGroup line in chart.Lines)
            Lead(line);
    }

    public List<Item>[] Columns { get; }

    /// <summary>The stretches of lines right of each column but the last.</summary>
    public List<Segment>[] Gutters { get; }

    /// <summary>The stretches of a line from left to right.</summary>
    public IReadOnlyList<Segment> WayOf(LineGroup line) => _wayOf[line];

    /// <summary>
    /// Orders each column by network, and within a network by the middle of what its boxes are joined to, swept to and fro as long
    /// as crossings fall; ties stay as the document has them.
    /// </summary>
    public static Grid Of(Chart chart)
    {
        var grid = new Grid(chart);
        foreach (List<Item> column in grid.Columns)
            Sort(column, static i => i.Index);
        long least = grid.Crossings();
        int[][] best = grid.Orders();
        for (int sweep = 0; sweep < Sweeps && least > 0; sweep++)
        {
            grid.Sweep(toRight: sweep % 2 == 0);
            long crossings = grid.Crossings();
            if (crossings >= least)
                continue;
            least = crossings;
            best = grid.Orders();
        }

        for (int c = 0; c < best.Length; c++)
        {
            int[] order = best[c];
            Sort(grid.Columns[c], i => order[i.Index]);
        }

        grid.SortStretches();
        return grid;
    }

    private Item Add(int column, BoxGroup? box, IReadOnlyList<int> networks)
    {
        var item = new Item(box, networks, Columns[column].Count);
        Columns[column].Add(item);
        return item;
    }

    private void Lead(LineGroup line)
    {
        Item before = _itemOf[line.From];
        var way = new List<Segment>(line.To.Column - line.From.Column);
        _wayOf[line] = way;
        for (int c = line.From.Column + 1; c <= line.To.Column; c++)
        {
            Item item = c == line.To.Column ? _itemOf[line.To] : Add(c, null, line.Networks);
            var segment = new Segment(line, c - 1, before, item);
            way.Add(segment);
            before.Right.Add(segment);
            item.Left.Add(segment);
            Gutters[c - 1].Add(segment);
            before = item;
        }
    }

    /// <summary>Sorts a column by network, then by a key, then as the strands come.</summary>
    private static void Sort(List<Item> column, Func<Item, double> key)
    {
        var keyed = new (double Among, double Key, int Index, Item Item)[column.Count];
        for (int i = 0; i < keyed.Length; i++)
            keyed[i] = (column[i].Among, key(column[i]), column[i].Index, column[i]);
        Array.Sort(keyed, static (a, b) => (a.Among, a.Key, a.Index).CompareTo((b.Among, b.Key, b.Index)));
        for (int i = 0; i < keyed.Length; i++)
        {
            column[i] = keyed[i].Item;
            column[i].Order = i;
        }
    }

    private void Sweep(bool toRight)
    {
        for (int i = 1; i < Columns.Length; i++)
        {
            int c = toRight ? i : Columns.Length - 1 - i;
            double count = Columns[toRight ? c - 1 : c + 1].Count;
            Sort(Columns[c], item => Middle(item, toRight) is { } middle ? middle : item.Order * count / Columns[c].Count);
        }
    }

    private static double? Middle(Item item, bool toRight)
    {
        List<Segment> joined = toRight ? item.Left : item.Right;
        if (joined.Count == 0)
            return null;
        double sum = 0;
        foreach (Segment segment in joined)
            sum += toRight ? segment.From.Order : segment.To.Order;
        return sum / joined.Count;
    }

    private int[][] Orders()
    {
        var orders = new int[Columns.Length][];
        for (int c = 0; c < Columns.Length; c++)
        {
            orders[c] = new int[Columns[c].Count];
            foreach (Item item in Columns[c])
                orders[c][item.Index] = item.Order;
        }

        return orders;
    }

    private long Crossings()
    {
        long count = 0;
        foreach (List<Segment> gutter in Gutters)
        {
            var ends = new (int From, int To)[gutter.Count];
            for (int i = 0; i < ends.Length; i++)
                ends[i] = (gutter[i].From.Order, gutter[i].To.Order);
            Array.Sort(ends);
            int[] right = Array.ConvertAll(ends, static e => e.To);
            count += Inversions.Of(right);
        }

        return count;
    }

    /// <summary>Puts the stretches at each side of a box in the order of what is at their other ends, so that they do not cross.</summary>
    private void SortStretches()
    {
        foreach (List<Item> column in Columns)
        {
            foreach (Item item in column)
            {
                item.Right.Sort(static (a, b) => (a.To.Order, a.Place).CompareTo((b.To.Order, b.Place)));
                for (int i = 0; i < item.Right.Count; i++)
                    item.Right[i].Place = i;
            }
        }

        foreach (List<Item> column in Columns)
        {
            foreach (Item item in column)
                item.Left.Sort(static (a, b) => (a.From.Order, a.Place).CompareTo((b.From.Order, b.Place)));
        }

        foreach (List<Segment> gutter in Gutters)
            gutter.Sort(static (a, b) => (a.From.Order, a.Place).CompareTo((b.From.Order, b.Place)));
    }
}
