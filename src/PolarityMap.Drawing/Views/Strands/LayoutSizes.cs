using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// Measures a layout and its words once, so that it can be placed again and again: with more or less room for crossings, folded
/// or not, on one paper or another.
/// </summary>
internal sealed class LayoutSizes
{
    private readonly TracedPlant _traced;
    private readonly double[] _gaps;
    private readonly double[] _firstHeights;

    /// <param name="layout">What is measured.</param>
    /// <param name="text">Its words.</param>
    /// <param name="isTight">True where signs of findings have to do without their codes beside them, and words with less room between them.</param>
    public LayoutSizes(Layout layout, SheetText text, bool isTight = false)
    {
        IsTight = isTight;
        _traced = text.Traced;
        Layout = layout;
        Text = text;
        Keys = new CommonKeys(_traced, layout);
        Columns = new ColumnSize[layout.Columns.Count];
        for (int c = 0; c < Columns.Length; c++)
            Columns[c] = MeasureColumn(c, layout.Columns[c]);
        _gaps = FixedGaps();

        // Crossings are measured at the heights of narrow columns: the heights depend on the widths but for wrapped captions.
        _firstHeights = new double[layout.SlotCount];
        var narrow = new double[Columns.Length];
        Array.Fill(narrow, ColumnPlace.LeastTextWidth);
        SetHeights(_firstHeights, narrow);
        Gutters = new GutterSize[Math.Max(0, Columns.Length - 1)];
        for (int c = 0; c < Columns.Length; c++)
        {
            MeasureCrossings(c);
            if (c < Gutters.Length)
                Gutters[c] = MeasureGutter(c);
        }

        foreach (Way way in layout.Ways)
        {
            if (way.FirstColumn == 0 && way.Passages[0].In is not null)
                LeftMargin = Math.Max(LeftMargin, way.ComesIn ? Measures.Tenths(CutMarks.Room(text, way.Strand)) : OpenEnds.Length(text, way, way.Passages[0].In!) + 1);
        }

        LeftMargin += FaultSigns.RoomAtStarts(layout, 0);
    }

    public Layout Layout { get; }

    /// <summary>True where signs of findings have no codes beside them.</summary>
    public bool IsTight { get; }

    public SheetText Text { get; }

    /// <summary>How most array matings of a gutter are keyed.</summary>
    public CommonKeys Keys { get; }

    public ColumnSize[] Columns { get; }

    public GutterSize[] Gutters { get; }

    /// <summary>Room at the left for strands that begin at an open end.</summary>
    public double LeftMargin { get; }

    /// <summary>Sets the height of each slot's middle; returns the height of all, from the top of the column heads to below the last box.</summary>
    /// <param name="heights">For each slot.</param>
    /// <param name="textWidths">For each column the width for the lines above its boxes.</param>
    public double SetHeights(Span<double> heights, ReadOnlySpan<double> textWidths)
    {
        double[] gap = [.. _gaps];
        double head = 0;
        for (int c = 0; c < Columns.Length; c++)
        {
            ColumnSize column = Columns[c];
            if (column.HasHead)
                head = Math.Max(head, Head(column, textWidths[c]));
            foreach ((int slot, bool hasName, CaptionText caption) in column.Large)
                gap[slot] = Math.Max(gap[slot], ColumnText.AboveHeight(hasName, caption.LinesIn(textWidths[c])));
            if (column.HeadSlot >= 0)
                gap[column.HeadSlot] = Math.Max(gap[column.HeadSlot], Head(column, textWidths[c]));
        }

        // Heads of columns and names of large boxes stand side by side at the top.
        if (heights.Length > 0)
            gap[0] = Math.Max(gap[0], head);
        double y = Measures.Pitch / 2;
        for (int s = 0; s < heights.Length; s++)
        {
            y += gap[s];
            heights[s] = y;
            y += Measures.Pitch;
        }

        return y - (Measures.Pitch / 2);
    }

    /// <summary>Height of a column's head, with room for the two lines that say how the keys beside it lie.</summary>
    private static double Head(ColumnSize column, double width) => Head(column.Text.HeadText.LinesIn(width));

    private static double Head(int lines) => (Math.Max(2, lines) * Measures.LineOfText) + 1.5;

    private ColumnSize MeasureColumn(int column, List<Node> nodes)
    {
        double leftCell = 0, leftWords = 0, rightCell = 0, rightWords = 0;
        foreach (Node node in nodes)
        {
            Measure(node, node.Left, ref leftCell, ref leftWords);
            Measure(node, node.Right, ref rightCell, ref rightWords);
        }

        var size = new ColumnSize
        {
            LeftCell = Measures.Tenths(leftCell),
            LeftWords = leftWords + FaultSigns.RoomInBox(Layout, column, left: true, IsTight),
            RightCell = Measures.Tenths(rightCell),
            RightWords = rightWords + FaultSigns.RoomInBox(Layout, column, left: false, IsTight),
            Text = ColumnText.Of(nodes, Text),
        };
        double least = size.Text.HeadText.LongestWord + 0.5;
        foreach (Node node in nodes)
        {
            if (node.NameInside)
                continue;
            string name = ColumnText.NameAbove(Text, node.Part);
            CaptionText caption = Text.Hops.Captions.Of(node.Part);
            least = Math.Max(least, Math.Max(SheetText.Width(name, CapHeights.Part) + Text.Hops.SpareOfName(node.Part, CapHeights.Part) + 1.5, caption.LongestWord + 1));
            size.Large.Add((node.FirstSlot, name.Length > 0, caption));
        }

        size.LeastWidth = least;
        return size;
    }

    private void Measure(Node node, List<Row> rows, ref double cell, ref double words)
    {
        foreach (Row row in rows)
            cell = Math.Max(cell, Math.Max(3.6, SheetText.Width(SheetText.Cell(row)) + (2 * Measures.CellMargin)));
        if (!SideWords.AreNone(node, rows))
        {
            foreach (SideWords side in SideWords.Of(Text, node, rows))
                words = Math.Max(words, side.Width);
        }
    }

    private void MeasureCrossings(int column)
    {
        ColumnSize size = Columns[column];
        foreach (Node node in Layout.Columns[column])
        {
            if (node.Left.Count == 0 || node.Right.Count == 0)
                continue;
            size.HasInside = true;
            if (node.Inside is { } inside)
                Add(size.Crossings, inside);
            if (Layout.Expected.Count > 0 && Layout.ExpectedAt(column, node) is { } expected)
                size.Crossings.Add(Wide(expected));
        }
    }

    private void Add(List<CrossingSize> sizes, Crossing crossing)
    {
        if (crossing.Plan.Stages == 0)
            return;
        var size = new CrossingSize(crossing.Plan.Stages, crossing.At(_firstHeights, 0, 0).WidestGap());
        if (sizes.Count == 0 || sizes[^1] != size)
            sizes.Add(size);
    }

    /// <summary>Room for a sign and its code at an open end from the left.</summary>
    private const double EndSign = 16;

    private static readonly double OpposedWidth = SheetText.Width("opposed");

    private GutterSize MeasureGutter(int column)
    {
        Crossing crossing = Layout.Between[column];
        double widest = 0, keys = 0;
        bool straight = true;
        Mating? last = null;
        foreach ((Row from, Row to) in crossing.Rows)
        {
            widest = Math.Max(widest, Text.LabelWidth(from.Strand));
            straight &= from.Slot == to.Slot;
            if (to.Position < 0 || to.Mating is not { } mating || ReferenceEquals(mating, last))
                continue;
            last = mating;
            if (_traced.Plant.Port(mating.A).Face.Family == ConnectorFamily.Array)
                keys = Math.Max(keys, Math.Max(OpposedWidth + (Layout.IsMarked && !IsTight ? 4.5 : 1.5), mating.Through is { } adapter ? SheetText.Width(_traced.Plant.Address(adapter)) + Text.Hops.SpareOfName(adapter.Part, CapHeights.Strand) + 2 : 0));
        }

        double label = Math.Max(widest + (2 * Measures.LabelLead), keys);
        label = Math.Max(label, LooseEnds(column));
        Crossing? expected = Layout.ExpectedAt(column, null);
        double adapters = 0;
        foreach (Adapter adapter in Adapter.In(crossing))
            adapters = Math.Max(adapters, adapter.Room(Text));
        double left = (HasLight(Layout.Columns[column], right: true) ? Marks.ArrowLength + 0.6 : 0) + adapters;
        double right = (HasLight(Layout.Columns[column + 1], right: false) ? Marks.ArrowLength + 0.6 : 0) + FaultSigns.RoomBefore(Layout, column + 1, IsTight);
        straight &= expected is null;
        return new GutterSize(Measures.Tenths(left), Measures.Tenths(right), Measures.Tenths(label), straight)
        {
            Adapters = adapters,
            Crossings = straight ? [] : expected is null ? [SizeOf(crossing)] : [Wide(expected), SizeOf(crossing)],
        };
    }

    /// <summary>An expected way runs flatter than a strand, so that enough of it shows between the wide strands it leaves and joins.</summary>
    private CrossingSize Wide(Crossing expected)
    {
        const int least = 4;
        CrossingSize size = SizeOf(expected);
        return size with { Stages = Math.Max(least, size.Stages + (size.Stages / 2)) };
    }

    private CrossingSize SizeOf(Crossing crossing) => new(crossing.Plan.Stages, crossing.At(_firstHeights, 0, 0).WidestGap());

    /// <summary>True when an interface is at the side of a column.</summary>
    private static bool HasLight(List<Node> nodes, bool right)
    {
        foreach (Node node in nodes)
        {
            foreach (Row row in right ? node.Right : node.Left)
            {
                if (row.Lane is not null)
                    return true;
            }
        }

        return false;
    }

    /// <summary>Room that strands need which end open at either side of a gutter, or go on on another sheet: for the end and the sign or mark on it.</summary>
    private double LooseEnds(int column)
    {
        if (!HasLooseEnd(column))
            return 0;
        double left = 0, right = 0, leftEnd = Measures.Stub, rightEnd = Measures.Stub;
        foreach (Way way in Layout.Ways)
        {
            if (!way.GoesOn && way.LastColumn == column && way.Passages[^1].Out is { } end)
                leftEnd = Math.Max(leftEnd, OpenEnds.Length(Text, way, end));
            if (!way.ComesIn && way.FirstColumn == column + 1 && way.Passages[0].In is { } start)
                rightEnd = Math.Max(rightEnd, OpenEnds.Length(Text, way, start));
            if (way.GoesOn && way.LastColumn == column)
                left = Math.Max(left, CutMarks.Room(Text, way.Strand));
            if (way.ComesIn && way.FirstColumn == column + 1)
                right = Math.Max(right, CutMarks.Room(Text, way.Strand));
        }

        return Math.Max(leftEnd + EndSign + FaultSigns.RoomAtStarts(Layout, column + 1) + rightEnd, left + right);
    }

    private bool HasLooseEnd(int column)
    {
        foreach (Node node in Layout.Columns[column])
        {
            foreach (Row row in node.Right)
            {
                if (!row.GoesOn)
                    return true;
            }
        }

        foreach (Node node in Layout.Columns[column + 1])
        {
            foreach (Row row in node.Left)
            {
                if (row.Before is null)
                    return true;
            }
        }

        return false;
    }

    /// <summary>The gaps above slots that do not depend on widths; marks also where heads stand.</summary>
    private double[] FixedGaps()
    {
        var gap = new double[Layout.SlotCount + 1];
        int firstLarge = int.MaxValue;
        foreach (ColumnSize column in Columns)
        {
            foreach ((int slot, _, _) in column.Large)
                firstLarge = Math.Min(firstLarge, slot);
        }

        for (int c = 0; c < Columns.Length; c++)
        {
            ColumnSize column = Columns[c];
            column.HasHead = column.Text.Head.Length > 0;
            int firstSmall = int.MaxValue;
            foreach (Node node in Layout.Columns[c])
            {
                GapsWithin(node, node.Left, gap);
                GapsWithin(node, node.Right, gap);
                if (!node.NameInside)
                    continue;
                int slot = node.FirstSlot;
                firstSmall = Math.Min(firstSmall, slot);
                column.HasHead |= node.Left.Count > 0;
                if (ShowsOwnKeys(node))
                    gap[slot] = Math.Max(gap[slot], Measures.ConnectorGap);
            }

            // The head of the small boxes stands above the first of them; below a large box it needs room of its own.
            if (firstSmall < int.MaxValue && firstLarge < firstSmall)
                column.HeadSlot = firstSmall;
        }

        foreach (FaultSign sign in Layout.Faults)
        {
            if (sign.Spot == FaultSpot.Keys)
                gap[sign.Row.Slot] = Math.Max(gap[sign.Row.Slot], FaultSign.AboveKeys);
        }

        return gap;
    }

    /// <summary>True for a small box with an array mating at its left that is keyed unlike most of its gutter.</summary>
    private bool ShowsOwnKeys(Node node)
    {
        if (node.Column == 0)
            return false;
        foreach (Row row in node.Left)
        {
            if (row.Mating is { } mating && _traced.Plant.Port(mating.A).Face.Family == ConnectorFamily.Array && mating.Keys != Keys.Of(node.Column - 1))
                return true;
        }

        return false;
    }

    /// <summary>Room above a further array connector of a part, and where positions of an array are left out.</summary>
    private static void GapsWithin(Node node, List<Row> rows, double[] gap)
    {
        for (int i = 1; i < rows.Count; i++)
        {
            if (!rows[i].Port.IsArray)
                continue;
            double wanted = rows[i - 1].Port != rows[i].Port ? Measures.ConnectorGap
                : !node.NameInside && node.LeavesOut(rows[i - 1], rows[i]) ? Measures.LeftOutGap : 0;
            gap[rows[i].Slot] = Math.Max(gap[rows[i].Slot], wanted);
        }
    }
}
