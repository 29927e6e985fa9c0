using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>Where a column's boxes and their parts lie, from left to right.</summary>
internal sealed class ColumnPlace
{
    /// <summary>Left edge, from the left end of its band.</summary>
    public double X { get; set; }

    public double Width { get; set; }

    /// <summary>The band it is in, from 0 at the top; a drawing that is not folded has one.</summary>
    public int Band { get; set; }

    /// <summary>The sheet that its band is on, from 0; bands that one sheet does not take go on on the next.</summary>
    public int Page { get; set; }

    /// <summary>Cells at the left edge; 0 without left rows.</summary>
    public double LeftCell { get; init; }

    /// <summary>Words beside the left cells.</summary>
    public double LeftWords { get; init; }

    public double RightCell { get; init; }

    public double RightWords { get; init; }

    public required ColumnText Text { get; init; }

    public double Right => X + Width;

    /// <summary>Room for the lines above a box; captions may stand out a little over a narrow one.</summary>
    public double TextWidth => Math.Max(Width, 15);
}

/// <summary>Where a gutter's labels and its crossing lie.</summary>
/// <param name="ArrowLeft">Room for arrowheads at its left edge.</param>
/// <param name="ArrowRight">Room for arrowheads at its right edge.</param>
/// <param name="Label">Room for one label.</param>
/// <param name="Crossing">Room for a crossing between two labels; 0 where every strand runs straight and one label will do.</param>
internal sealed record GutterPlace(double ArrowLeft, double ArrowRight, double Label, double Crossing)
{
    public double Width => ArrowLeft + ArrowRight + (Crossing > 0 ? (2 * Label) + Crossing : Label);

    /// <summary>Room that the gutter takes at the end of a band and again at the start of the next, with a mark of a width at its end.</summary>
    public double HalfWidth(double mark) => Math.Max(ArrowLeft, ArrowRight) + Label + mark;
}

/// <summary>
/// Turns slots and columns into millimetres. A drawing wider than its sheet is folded: it goes on in a further band below, or
/// on the next sheet, and every strand repeats its label where it leaves one band and enters the next.
/// </summary>
internal sealed class Placement
{
    private readonly TracedPlant _traced;
    private readonly Layout _layout;
    private readonly SheetText _text;
    private readonly double _stage;
    private readonly double _widest;
    private readonly double _mark;
    private readonly double[] _y;
    private readonly Dictionary<int, Keying> _commonKeys = [];

    /// <param name="traced">The plant.</param>
    /// <param name="layout">Its layout with slots.</param>
    /// <param name="text">Its words.</param>
    /// <param name="stage">Horizontal room for one exchange of neighbours.</param>
    /// <param name="widest">The widest a band may be.</param>
    /// <param name="highest">The height of a sheet's drawing space, where bands may go on on the next sheet.</param>
    public Placement(TracedPlant traced, Layout layout, SheetText text, double stage, double widest = double.PositiveInfinity, double highest = double.PositiveInfinity)
    {
        _traced = traced;
        _layout = layout;
        _text = text;
        _stage = stage;
        _widest = widest;
        _mark = double.IsFinite(highest) ? CutMarks.Width : RingWidth;
        _y = new double[layout.SlotCount];
        // The heights do not depend on the widths but for wrapped captions, so they are made twice.
        for (int s = 0; s < _y.Length; s++)
            _y[s] = s * Measures.Pitch;
        Columns = [.. layout.Columns.Select(PlaceColumn)];
        SetHeights();
        SetWidths();
        SetHeights();
        BandsOfPage = double.IsFinite(highest) ? Math.Max(1, (int)((highest + Measures.BandGap) / (BandHeight + Measures.BandGap))) : Bands;
        foreach (ColumnPlace column in Columns)
            column.Page = column.Band / BandsOfPage;
    }

    /// <summary>Room for the ring of a strand that goes on in the next band.</summary>
    private const double RingWidth = Marks.ArrowLength + 1;

    public ColumnPlace[] Columns { get; }

    public GutterPlace[] Gutters { get; private set; } = [];

    /// <summary>Room at the left for strands that begin at an open end.</summary>
    public double LeftMargin { get; private set; }

    /// <summary>Width of the widest band, left margin included.</summary>
    public double Width { get; private set; }

    /// <summary>Number of bands.</summary>
    public int Bands => Columns.Length == 0 ? 1 : Columns[^1].Band + 1;

    /// <summary>Number of bands that one sheet takes.</summary>
    public int BandsOfPage { get; private set; } = 1;

    /// <summary>Number of sheets.</summary>
    public int Pages => (Bands + BandsOfPage - 1) / BandsOfPage;

    /// <summary>Height of one band, from the top of the column heads to below the last box.</summary>
    public double BandHeight { get; private set; }

    /// <summary>Height of the bands of the fullest sheet.</summary>
    public double Height => (Math.Min(Bands, BandsOfPage) * (BandHeight + Measures.BandGap)) - Measures.BandGap;

    /// <summary>Height of a row's middle.</summary>
    public double Y(Row row) => _y[row.Slot] + BandTop(row.Column);

    public double Top(Node node) => _y[node.FirstSlot] + BandTop(node.Column) - (Measures.Pitch / 2) + Measures.Inset;

    public double Bottom(Node node) => _y[node.LastSlot] + BandTop(node.Column) + (Measures.Pitch / 2) - Measures.Inset;

    /// <summary>True when the drawing is folded after this column.</summary>
    public bool IsFoldAfter(int column) => column + 1 < Columns.Length && Columns[column + 1].Band > Columns[column].Band;

    private double BandTop(int column) => Columns[column].Band % BandsOfPage * (BandHeight + Measures.BandGap);

    /// <summary>
    /// Whether a mating shows its keys itself: always between large boxes; between small ones only where it differs from most
    /// of its gutter.
    /// </summary>
    public bool HasOwnKeys(Node left, Node right, Mating mating) =>
        (!left.NameInside && !right.NameInside) || mating.Keys != CommonKeys(left.Column);

    /// <summary>The keying of most array matings of a gutter between small boxes.</summary>
    private Keying CommonKeys(int column)
    {
        if (_commonKeys.TryGetValue(column, out Keying keys))
            return keys;
        int aligned = 0, opposed = 0;
        foreach (Row row in _layout.Columns[column].Where(n => n.NameInside).SelectMany(n => n.Right))
        {
            if (_traced.MatingAt(row.Position) is not { } mating || _traced.Plant.Port(mating.A).Face.Family != ConnectorFamily.Array)
                continue;
            if (mating.Keys == Keying.Aligned)
                aligned++;
            else
                opposed++;
        }

        return _commonKeys[column] = aligned > opposed ? Keying.Aligned : Keying.Opposed;
    }

    /// <summary>A crossing at the heights of this placement.</summary>
    public Braid At(Crossing crossing) => new(crossing.Plan, crossing.Rows.Select(r => Y(r.Left)), crossing.Rows.Select(r => Y(r.Right)));


    private ColumnPlace PlaceColumn(List<Node> nodes)
    {
        (double leftCell, double leftWords) = Zone(nodes, n => n.Left);
        (double rightCell, double rightWords) = Zone(nodes, n => n.Right);
        return new ColumnPlace
        {
            LeftCell = Measures.Tenths(leftCell),
            LeftWords = leftWords,
            RightCell = Measures.Tenths(rightCell),
            RightWords = rightWords,
            Text = ColumnText.Of(nodes, _text),
        };
    }

    private (double Cell, double Words) Zone(List<Node> nodes, Func<Node, List<Row>> side)
    {
        double cell = 0, words = 0;
        foreach (Node node in nodes)
        {
            foreach (Row row in side(node))
                cell = Math.Max(cell, Math.Max(3.6, SheetText.Width(_text.Cell(row)) + (2 * Measures.CellMargin)));
            words = Math.Max(words, Words(node, side(node)).Select(w => w.Width).DefaultIfEmpty(0).Max());
        }

        return (cell, words);
    }

    /// <summary>The words beside the cells of one side: lane and port. Ports are named where a side has several, or at an interface.</summary>
    public IEnumerable<(Row First, Row Last, string Port, double Width)> Words(Node node, List<Row> rows)
    {
        bool named = PortNamesShown(node, rows);
        double lane = LaneWidth(rows);
        for (int i = 0; i < rows.Count;)
        {
            int last = i;
            PortRef port = _traced.Graph.PlaceOf(rows[i].Position).Port;
            while (last + 1 < rows.Count && _traced.Graph.PlaceOf(rows[last + 1].Position).Port == port)
                last++;
            string name = named ? _text.Port(rows[i]) : "";
            double width = (lane > 0 ? lane + 0.9 : 0) + (name.Length > 0 ? SheetText.Width(name) + 1.4 : 0);
            yield return (rows[i], rows[last], name, width);
            i = last + 1;
        }
    }

    /// <summary>Room for the words Tx and Rx of a side.</summary>
    public double LaneWidth(List<Row> rows) => rows.Select(r => SheetText.Width(_text.Lane(r))).DefaultIfEmpty(0).Max();

    private bool PortNamesShown(Node node, List<Row> rows) =>
        !node.NameInside && (_text.Part(node).Shape.IsInterface || _text.Part(node).Shape.Ports.Count(p => p.Side == SideOf(rows)) > 1);

    private Side SideOf(List<Row> rows) => _traced.Plant.Port(_traced.Graph.PlaceOf(rows[0].Position).Port).Side;

    private void SetWidths()
    {
        LeftMargin = 0;
        foreach (Way way in _layout.Ways)
        {
            if (way.FirstColumn == 0 && way.Passages[0].In is not null)
                LeftMargin = Math.Max(LeftMargin, way.ComesIn ? Measures.Tenths(CutMarks.Room(_text, way.Strand)) : Measures.Stub + 1);
        }

        Gutters = new GutterPlace[Math.Max(0, Columns.Length - 1)];
        for (int c = 0; c < Columns.Length; c++)
        {
            ColumnPlace place = Columns[c];
            List<Node> nodes = _layout.Columns[c];
            double middle = 0;
            foreach (Node node in nodes)
            {
                if (node.Left.Count > 0 && node.Right.Count > 0)
                {
                    middle = Math.Max(middle, Math.Max(Room(At(_layout.Inside[node])), 6));
                    if (_layout.ExpectedAt(c, node) is { } expected)
                        middle = Math.Max(middle, Room(At(expected)));
                }
            }

            double width = place.LeftCell + place.LeftWords + place.Text.InsideWidth + middle + place.RightWords + place.RightCell;
            foreach (Node node in nodes.Where(n => !n.NameInside))
                width = Math.Max(width, Math.Max(SheetText.Width(_text.Part(node).IsInline ? "" : _text.Name(node.Part), CapHeights.Part) + 1.5, LongestWord(SheetText.Caption(_text.Part(node))) + 1));
            width = Math.Max(width, LongestWord(place.Text.Head) + 0.5);
            place.Width = Measures.Tenths(width);
            if (c < Columns.Length - 1)
                Gutters[c] = PlaceGutter(c);
        }

        Fold();
    }

    /// <summary>
    /// Sets columns side by side, and starts a new band where the next column would not fit; rather one or two columns earlier
    /// than across a crossing.
    /// </summary>
    private void Fold()
    {
        const int mostBack = 2;
        int band = 0;
        Width = 0;
        for (int first = 0; first < Columns.Length;)
        {
            int end = first + 1;
            while (end < Columns.Length && BandWidth(first, end + 1) <= _widest)
                end++;
            for (int back = 1; end < Columns.Length && back <= mostBack && end - back > first; back++)
            {
                if (Gutters[end - back - 1].Crossing > 0 || Gutters[end - 1].Crossing == 0)
                    continue;
                end -= back;
            }

            double x = first == 0 ? LeftMargin : Measures.Tenths(Gutters[first - 1].HalfWidth(_mark));
            for (int c = first; c < end; c++)
            {
                Columns[c].X = x;
                Columns[c].Band = band;
                x += Columns[c].Width + (c + 1 < end ? Gutters[c].Width : 0);
            }

            Width = Math.Max(Width, x + (end < Columns.Length ? Gutters[end - 1].HalfWidth(_mark) : 0));
            first = end;
            band++;
        }
    }

    /// <summary>Width of a band of the columns from one to before another.</summary>
    private double BandWidth(int first, int end)
    {
        double width = first == 0 ? LeftMargin : Gutters[first - 1].HalfWidth(_mark);
        for (int c = first; c < end; c++)
            width += Columns[c].Width + (c + 1 < end ? Gutters[c].Width : 0);
        return width + (end < Columns.Length ? Gutters[end - 1].HalfWidth(_mark) : 0);
    }

    /// <summary>
    /// The stretch from one x to another in which a braid runs: in the middle, no longer than it needs, so that a small crossing
    /// in a wide box is not flat. Without a crossing the whole stretch.
    /// </summary>
    public (double From, double To) Stretch(Braid braid, double x0, double x1)
    {
        double spare = braid.Stages == 0 ? 0 : Math.Max(0, x1 - x0 - (braid.Stages * braid.StageFor(_stage)));
        return (x0 + (spare / 2), x1 - (spare / 2));
    }

    private double Room(Braid braid) => (braid.Stages * braid.StageFor(_stage)) + (2 * Measures.Lead);

    private static double LongestWord(string text) => text.Split(' ').Select(w => SheetText.Width(w)).DefaultIfEmpty(0).Max();

    /// <summary>Room for an open end with a sign and its code from the left, and one from the right.</summary>
    private const double OpenEnds = (2 * Measures.Stub) + 16;

    private GutterPlace PlaceGutter(int column)
    {
        Crossing crossing = _layout.Between[column];
        double label = crossing.Rows.Select(r => _text.LabelWidth(r.Left.Strand)).DefaultIfEmpty(0).Max() + (2 * Measures.LabelLead);
        bool straight = true;
        double keys = 0;
        foreach ((Row from, Row to) in crossing.Rows)
        {
            straight &= from.Slot == to.Slot;
            if (to.Position >= 0 && _traced.MatingAt(to.Position) is { } mating && _traced.Plant.Port(mating.A).Face.Family == ConnectorFamily.Array)
                keys = Math.Max(keys, Math.Max(SheetText.Width("opposed") + 1.5, mating.Through is { } adapter ? SheetText.Width(_traced.Plant.Address(adapter)) + 2 : 0));
        }

        label = Math.Max(label, keys);
        label = Math.Max(label, LooseEnds(column, crossing));
        Crossing? expected = _layout.ExpectedAt(column, null);
        double left = _layout.Columns[column].Any(n => n.Right.Any(r => _text.Lane(r).Length > 0)) ? Marks.ArrowLength + 0.6 : 0;
        double right = _layout.Columns[column + 1].Any(n => n.Left.Any(r => _text.Lane(r).Length > 0)) ? Marks.ArrowLength + 0.6 : 0;
        return new GutterPlace(Measures.Tenths(left), Measures.Tenths(right), Measures.Tenths(label), straight && expected is null ? 0 : Measures.Tenths(Math.Max(expected is null ? 8 : Room(At(expected)), Room(At(crossing)))));
    }

    /// <summary>Room that strands need which end open at either side of a gutter, or go on on another sheet: for the end and the sign or mark on it.</summary>
    private double LooseEnds(int column, Crossing crossing)
    {
        var joined = new HashSet<Row>(crossing.Rows.Select(r => r.Left));
        joined.UnionWith(crossing.Rows.Select(r => r.Right));
        double left = 0, right = 0;
        bool open = _layout.Columns[column].Any(n => n.Right.Any(r => !joined.Contains(r))) || _layout.Columns[column + 1].Any(n => n.Left.Any(r => !joined.Contains(r)));
        if (!open)
            return 0;
        foreach (Way way in _layout.Ways)
        {
            if (way.GoesOn && way.LastColumn == column)
                left = Math.Max(left, CutMarks.Room(_text, way.Strand));
            if (way.ComesIn && way.FirstColumn == column + 1)
                right = Math.Max(right, CutMarks.Room(_text, way.Strand));
        }

        return Math.Max(OpenEnds, left + right);
    }

    private void SetHeights()
    {
        var gap = new double[_y.Length + 1];
        double head = 0;
        for (int c = 0; c < Columns.Length; c++)
        {
            ColumnPlace place = Columns[c];
            if (place.Text.Head.Length > 0 || _layout.Columns[c].Any(n => n.NameInside && n.Left.Count > 0))
                head = Math.Max(head, Head(place));
            foreach (Node node in _layout.Columns[c])
            {
                if (!node.NameInside)
                    gap[node.FirstSlot] = Math.Max(gap[node.FirstSlot], ColumnText.AboveHeight(_text, node.Part, place.TextWidth));
                GapsWithin(node, node.Left, gap);
                GapsWithin(node, node.Right, gap);
                if (node.NameInside && ShowsOwnKeys(node))
                    gap[node.FirstSlot] = Math.Max(gap[node.FirstSlot], Measures.ConnectorGap);
            }

            // The head of the small boxes stands above the first of them; below a large box it needs room of its own.
            Node? small = _layout.Columns[c].Where(n => n.NameInside).MinBy(n => n.FirstSlot);
            if (small is not null && _layout.Columns.SelectMany(n => n).Any(n => !n.NameInside && n.FirstSlot < small.FirstSlot))
                gap[small.FirstSlot] = Math.Max(gap[small.FirstSlot], Head(place));
        }

        // Heads of columns and names of large boxes stand side by side at the top.
        if (_y.Length > 0)
            gap[0] = Math.Max(gap[0], head);
        double y = Measures.Pitch / 2;
        for (int s = 0; s < _y.Length; s++)
        {
            y += gap[s];
            _y[s] = y;
            y += Measures.Pitch;
        }

        BandHeight = y - (Measures.Pitch / 2);
    }

    /// <summary>Height of a column's head, with room for the two lines that say how the keys beside it lie.</summary>
    private static double Head(ColumnPlace place) =>
        (Math.Max(2, SheetText.Wrapped(place.Text.Head, place.TextWidth).Count) * Measures.LineOfText) + 1.5;

    /// <summary>True for a small box with an array mating at its left that is keyed unlike most of its gutter.</summary>
    private bool ShowsOwnKeys(Node node) => node.Column > 0 && node.Left.Any(r =>
        _traced.MatingAt(r.Position) is { } mating && _traced.Plant.Port(mating.A).Face.Family == ConnectorFamily.Array
        && mating.Keys != CommonKeys(node.Column - 1));

    /// <summary>Room above a further array connector of a part, and where positions of an array are left out.</summary>
    private void GapsWithin(Node node, List<Row> rows, double[] gap)
    {
        for (int i = 1; i < rows.Count; i++)
        {
            PositionPlace before = _traced.Graph.PlaceOf(rows[i - 1].Position);
            PositionPlace here = _traced.Graph.PlaceOf(rows[i].Position);
            if (_traced.Plant.Port(here.Port).Face.Family != ConnectorFamily.Array)
                continue;
            double wanted = before.Port != here.Port ? Measures.ConnectorGap
                : node.LeavesOut(_traced.Plant.Port(here.Port), before.Position, here.Position) && !node.NameInside ? Measures.LeftOutGap : 0;
            gap[rows[i].Slot] = Math.Max(gap[rows[i].Slot], wanted);
        }
    }
}
