using PolarityMap.Core.Plants;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>Draws parts: boxes with their names, the cells of their positions, and the words beside them.</summary>
internal sealed class BoxPainter(Sheetful sheetful, int page, PaintScope scope, IReadOnlySet<int> changed)
{
    private readonly Layout layout = sheetful.Layout;
    private readonly Placement placement = sheetful.Placement;
    private readonly SheetText text = sheetful.Text;
    private readonly double originX = sheetful.OriginX;
    private readonly double originY = sheetful.OriginY;

    /// <summary>Filled boxes, to lie under the strands.</summary>
    public List<SceneElement> Boxes { get; } = [];

    /// <summary>Their outlines, to lie over the strands.</summary>
    public List<SceneElement> Outlines { get; } = [];

    /// <summary>Cells of positions, to lie over both.</summary>
    public List<SceneElement> Cells { get; } = new(sheetful.Layout.RowCount());

    /// <summary>Words, to lie over all.</summary>
    public List<Label> Labels { get; } = new(2 * sheetful.Layout.RowCount());

    /// <summary>What the legend has to explain of them, once painted.</summary>
    public SheetSigns Signs { get; private set; }

    /// <summary>Words that name the parts, to lie over all.</summary>
    public List<NamePlace> Names { get; } = [];

    public void Paint()
    {
        for (int c = 0; c < layout.Columns.Count; c++)
        {
            if (c > scope.Through || placement.Columns[c].Page != page)
                continue;
            PaintHead(c);
            foreach (Node node in layout.Columns[c])
                PaintBox(node, placement.Columns[c]);
            if (c < scope.Through && c + 1 < layout.Columns.Count && placement.Gutters[c].Adapters > 0)
                PaintAdapters(c, placement.Gutters[c]);
        }
    }

    private double X(double x) => originX + x;

    private double Y(Row row) => originY + placement.Y(row);

    private void PaintHead(int column)
    {
        ColumnPlace place = placement.Columns[column];
        if (place.Text.Head.Length == 0)
            return;
        List<string> lines = SheetText.Wrapped(place.Text.Head, place.TextWidth);

        // The head stands close above the column's first small box.
        double bottom = double.MaxValue;
        foreach (Node node in layout.Columns[column])
        {
            if (node.NameInside)
                bottom = Math.Min(bottom, placement.Top(node));
        }

        for (int i = 0; i < lines.Count; i++)
        {
            double baseline = originY + bottom - 1.4 - ((lines.Count - 1 - i) * Measures.LineOfText);
            Labels.Add(new Label(X(place.X + (place.Width / 2)), baseline, lines[i], CapHeights.Strand, Anchor.Middle, Palette.Ink));
        }
    }

    private void PaintBox(Node node, ColumnPlace place)
    {
        double top = originY + placement.Top(node);
        double bottom = originY + placement.Bottom(node);
        Part part = text.Part(node);
        var outline = new Box(X(place.X), top, place.Width, bottom - top, 0.8, Palette.Ink, part.Shape.IsCable ? LineWidths.Inner : LineWidths.Outline);
        Boxes.Add(outline with { Stroke = null, Fill = Palette.PartFill });

        // The outline is drawn over the strands, whose halos would cut it.
        Outlines.Add(changed.Contains(node.Part) || node.Column == scope.Through ? outline with { StrokeWidthMm = LineWidths.Change } : outline);
        if (node.NameInside)
        {
            string inside = node.InsideText;
            if (inside.Length > 0)
            {
                double x = place.X + place.LeftCell + place.LeftWords + (place.Text.InsideWidth / 2);
                if (node.Left.Count == 0)
                    x = place.X + (place.Text.InsideWidth / 2);
                var label = Label.CentredOn(X(x), (top + bottom) / 2, inside, CapHeights.Strand, Anchor.Middle, Palette.Ink);
                if (part.IsInline)
                    Labels.Add(label);
                else
                    Names.Add(new NamePlace(label, node, true));
            }
        }
        else
        {
            PaintName(node, place, top);
        }

        PaintSide(node, node.Left, place, left: true);
        PaintSide(node, node.Right, place, left: false);
    }

    /// <summary>The adapters in the gutter right of a column, each with its address.</summary>
    private void PaintAdapters(int column, GutterPlace gutter)
    {
        double left = placement.Columns[column].Right + gutter.ArrowLeft - gutter.Adapters;
        double middle = X(left + Adapter.Middle(gutter.Adapters));
        double width = Adapter.WidthIn(gutter.Adapters);
        foreach (Adapter adapter in Adapter.In(layout.Between[column]))
        {
            double top = Y(adapter.First) - (Measures.Pitch / 2) + Measures.Inset;
            double bottom = Y(adapter.Last) + (Measures.Pitch / 2) - Measures.Inset;
            var outline = new Box(middle - (width / 2), top, width, bottom - top, 0, Palette.Ink, LineWidths.Leader);
            Outlines.Add(changed.Contains(adapter.At.Part) ? outline with { StrokeWidthMm = LineWidths.Change } : outline);
            string address = text.Traced.Plant.Address(adapter.At);
            var label = Label.CentredOn(middle, (top + bottom) / 2, address, CapHeights.Strand, Anchor.Middle, Palette.Ink);
            Node box = layout.Columns[column].First(n => n.Right.Contains(adapter.First));
            Names.Add(new NamePlace(adapter.First == adapter.Last ? label with { Underlay = Underlay.Paper } : label, box, false, adapter.First));
        }
    }

    private void PaintName(Node node, ColumnPlace place, double top)
    {
        (string name, List<string> caption) = ColumnText.Above(text, node.Part, place.TextWidth);
        double baseline = top - 1.4;
        for (int i = caption.Count - 1; i >= 0; i--)
        {
            Labels.Add(new Label(X(place.X + (place.Width / 2)), baseline, caption[i], CapHeights.Strand, Anchor.Middle, Palette.Ink));
            baseline -= Measures.LineOfText;
        }

        if (name.Length > 0)
            Names.Add(new NamePlace(new Label(X(place.X + (place.Width / 2)), baseline - 0.4, name, CapHeights.Part, Anchor.Middle, Palette.Ink), node, false));
    }

    private void PaintSide(Node node, List<Row> rows, ColumnPlace place, bool left)
    {
        if (rows.Count == 0)
            return;
        double cell = left ? place.LeftCell : place.RightCell;
        double x = left ? place.X : place.Right - cell;
        foreach (Row row in rows)
        {
            double y = Y(row);
            Cells.Add(new Box(X(x), y - (Measures.CellHeight / 2), cell, Measures.CellHeight, 0, Palette.Ink, LineWidths.Leader, Palette.Paper));
            string name = SheetText.Cell(row);
            if (name.Length > 0)
                Labels.Add(Label.CentredOn(X(x + (cell / 2)), y, name, CapHeights.Strand, Anchor.Middle, Palette.Ink));
        }

        if (!SideWords.AreNone(node, rows))
            PaintWords(node, rows, left ? x + cell + 0.7 : x - 0.7, left);
        PaintLeftOut(node, rows, x + (cell / 2));
    }

    /// <summary>Lanes and ports beside the cells.</summary>
    private void PaintWords(Node node, List<Row> rows, double x, bool left)
    {
        double laneWidth = SideWords.LaneWidth(rows);
        foreach (SideWords words in SideWords.Of(text, node, rows))
        {
            double inner = x;
            Anchor anchor = left ? Anchor.Start : Anchor.End;
            if (laneWidth > 0)
            {
                for (int i = words.First; i <= words.Last; i++)
                {
                    if (SheetText.Lane(rows[i]) is { Length: > 0 } lane)
                        Labels.Add(Label.CentredOn(X(inner), Y(rows[i]), lane, CapHeights.Strand, anchor, Palette.Ink));
                }

                inner += left ? laneWidth + 0.9 : -(laneWidth + 0.9);
            }

            if (words.Port.Length > 0)
                Labels.Add(Label.CentredOn(X(inner), NameHeight(rows, words.First, words.Last), words.Port, CapHeights.Strand, anchor, Palette.Ink));
        }
    }

    /// <summary>The middle of a port's rows; between two rows, so that the name covers no strand.</summary>
    private double NameHeight(List<Row> rows, int from, int to)
    {
        int upper = (from + to - ((to - from) % 2 == 0 && to > from ? 1 : 0)) / 2;
        return to == from ? Y(rows[from]) : (Y(rows[upper]) + Y(rows[upper + 1])) / 2;
    }

    /// <summary>Dots where positions of an array are left out because no strand of the sheet uses them.</summary>
    private void PaintLeftOut(Node node, List<Row> rows, double x)
    {
        for (int i = 1; i < rows.Count; i++)
        {
            if (rows[i - 1].Port != rows[i].Port || !node.LeavesOut(rows[i - 1], rows[i]) || Y(rows[i]) - Y(rows[i - 1]) < Measures.Pitch + 2)
                continue;
            Signs |= SheetSigns.LeftOut;
            double middle = (Y(rows[i - 1]) + Y(rows[i])) / 2;
            Cells.AddRange(Legend.LeftOut(X(x), middle));
        }
    }
}
