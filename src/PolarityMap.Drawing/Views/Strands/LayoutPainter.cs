using System.Runtime.InteropServices;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// Paints what a placed layout shows whoever stands in it: the routes of strands, arrowheads, open ends, boxes and keys, and
/// where labels go.
/// </summary>
/// <param name="sheetful">What is laid out and placed.</param>
/// <param name="page">Which of its sheets.</param>
/// <param name="scope">How much of it.</param>
internal sealed class LayoutPainter(Sheetful sheetful, int page, PaintScope scope)
{
    private const double RingRadius = 1.1;

    private readonly Layout layout = sheetful.Layout;
    private readonly Placement placement = sheetful.Placement;
    private readonly SheetText text = sheetful.Text;
    private readonly double originX = sheetful.OriginX;
    private readonly double originY = sheetful.OriginY;
    private readonly StrandSet _strands = sheetful.Input.Traced.Strands;
    private readonly StrandGraph _graph = sheetful.Input.Traced.Graph;
    private readonly CrossingLeads _leads = new(sheetful.Placement, sheetful.OriginY);
    private readonly WayPaths?[] _paths = new WayPaths?[sheetful.Layout.Ways.Count];
    private readonly List<LabelPlace> _labels = [];
    private readonly List<CutPlace> _cuts = [];
    private readonly List<EndPlace> _ends = [];
    private readonly List<SceneElement> _signs = [];
    private readonly List<Polygon> _arrows = [];

    // Of the way and the stretch at hand.
    private readonly List<Route> _stretches = [];
    private readonly List<RouteSegment> _segments = [];

    public PaintedLayout Paint()
    {
        HashSet<int> changed = ChangedParts.Of(sheetful.Input);
        var boxes = new BoxPainter(sheetful, page, scope, changed);
        boxes.Paint();
        foreach (Way way in layout.Ways)
            PaintWay(way);
        var expected = new ExpectedPainter(layout, placement, _leads, originX, page, scope);
        expected.Paint();
        var keys = new KeyPainter(sheetful, page, scope);
        IReadOnlyList<SceneElement> tabs = keys.Paint();
        boxes.Labels.AddRange(keys.Words);
        boxes.Names.AddRange(keys.Adapters);

        // Sheets that look alike share these, and a file's text for them is made once.
        bool repeats = sheetful.IsModel;
        return new PaintedLayout
        {
            Boxes = new SceneGroup("parts", boxes.Boxes) { Repeats = repeats },
            Outlines = new SceneGroup("outlines", boxes.Outlines) { Repeats = repeats },
            Cells = new SceneGroup(null, [.. boxes.Cells, .. tabs]) { Repeats = repeats },
            Words = new SceneGroup(null, LabelStyles.SideBySide(boxes.Labels)) { Repeats = repeats },
            Signs = new SceneGroup(null, [.. Arrows(), .. _signs]) { Repeats = repeats },
            Expected = new SceneGroup("expected", expected.Lines),
            KeySigns = keys.Signs | boxes.Signs | (_arrows.Count > 0 ? SheetSigns.Light : SheetSigns.None),
            Ranks = DrawingOrder.Of(layout),
            Paths = _paths,
            Labels = _labels,
            Names = boxes.Names,
            Cuts = _cuts,
            Ends = _ends,
        };
    }

    private double X(double x) => originX + x;

    private double Y(Row row) => originY + placement.Y(row);

    private bool IsHere(int column) => placement.Columns[column].Page == page;

    /// <summary>Paints the stretches of a strand that are on this sheet; a stretch ends where the drawing is folded.</summary>
    private void PaintWay(Way way)
    {
        _stretches.Clear();
        int from = way.FirstColumn;
        int last = Math.Min(way.LastColumn, scope.Through);
        while (from <= last)
        {
            int to = from;
            while (to < last && !placement.IsFoldAfter(to))
                to++;
            if (IsHere(from))
                _stretches.Add(PaintStretch(way, from, to));
            from = to + 1;
        }

        if (_stretches.Count == 0)
            return;
        _paths[way.Number] = new WayPaths([.. _stretches], sheetful.IsModel);
        AddArrows(way);
    }

    private Route PaintStretch(Way way, int first, int last)
    {
        List<RouteSegment> segments = _segments;
        segments.Clear();
        Point start = first == way.FirstColumn ? AddStart(way, segments) : AddFoldStart(first - 1, way, way.Passages[first - way.FirstColumn].In!, segments);
        for (int c = first; c <= last; c++)
        {
            Passage passage = way.Passages[c - way.FirstColumn];
            ColumnPlace column = placement.Columns[c];
            if (passage.Node is { } node && passage.In is { } into && passage.Out is { } from)
                AddInside(node, column, into, from, segments);
            else if (passage.Out is { } passing)
                segments.Add(RouteSegment.Line(new Point(X(column.Right), Y(passing))));
            if (c < last)
                AddGutter(c, way, passage.Out!, way.Passages[c + 1 - way.FirstColumn].In!, segments);
        }

        if (last < way.LastColumn && last == scope.Through)
            segments.Add(RouteSegment.Line(new Point(X(placement.Columns[last].Right), Y(way.Passages[last - way.FirstColumn].Out!))));
        else if (last < way.LastColumn)
            AddFoldEnd(last, way, way.Passages[last - way.FirstColumn].Out!, segments);
        else
            AddEnd(way, segments);
        return Route.Of(start, CollectionsMarshal.AsSpan(segments));
    }

    /// <summary>Where a strand begins: at an interface, at an open end, or where it comes from another sheet.</summary>
    private Point AddStart(Way way, List<RouteSegment> segments)
    {
        ColumnPlace column = placement.Columns[way.FirstColumn];
        if (way.Passages[0].In is not { } open)
        {
            // It begins at a cell: of an interface, or at a place without a fibre, where a bar says so.
            Row first = way.Passages[0].Out!;
            bool leadsNowhere = first.Lane is null && !way.ComesIn;
            var at = new Point(X(column.Right - (leadsNowhere ? column.RightCell + 2 : column.RightCell / 2)), Y(first));
            if (leadsNowhere)
                _signs.Add(Marks.DeadEnd(at.X, at.Y));
            return at;
        }

        segments.Add(RouteSegment.Line(new Point(X(column.X), Y(open))));
        if (way.ComesIn)
            return new Point(X(column.X) - AddCutLeft(way, X(column.X), open, new Cut(way.Strand, way.Piece.First - 1)), Y(open));
        var start = new Point(X(column.X - OpenEnds.Length(text, way, open)), Y(open));
        AddLabel(column.X - OpenEnds.LabelAt(text, way, open), Y(open), way);
        _signs.Add(EndMark(way.Strand, start.X, start.Y));
        return start;
    }

    /// <summary>Label and mark of a strand that arrives from another sheet at a box's left edge; returns how far they reach.</summary>
    private double AddCutLeft(Way way, double right, Row row, Cut cut)
    {
        double label = text.LabelWidth(way.Strand) + (2 * Measures.LabelLead);
        AddLabel(right - originX - (label / 2), Y(row), way);
        _cuts.Add(new CutPlace(cut, false, right - label - 0.6, Y(row)));
        return label;
    }

    /// <summary>Label and mark of a strand that goes on on another sheet from a box's right edge; returns how far the line reaches.</summary>
    private double AddCutRight(Way way, double left, Row row, Cut cut)
    {
        double label = text.LabelWidth(way.Strand) + (2 * Measures.LabelLead);
        AddLabel(left - originX + (label / 2), Y(row), way);
        _cuts.Add(new CutPlace(cut, true, left + label + 0.6, Y(row)));
        return label;
    }

    private void AddInside(Node node, ColumnPlace column, Row into, Row from, List<RouteSegment> segments)
    {
        _leads.Cross(node.Inside!, into.Index, X(column.InsideFrom), X(column.InsideTo), segments);
        segments.Add(RouteSegment.Line(new Point(X(column.Right), Y(from))));
    }

    /// <summary>The strand's end at the right of a band: its label, and a ring that says it goes on below, or the mark of another sheet.</summary>
    private void AddFoldEnd(int column, Way way, Row from, List<RouteSegment> segments)
    {
        GutterPlace gutter = placement.Gutters[column];
        double x = placement.Columns[column].Right + gutter.ArrowLeft;
        double end;
        if (IsHere(column + 1))
        {
            AddLabel(x + (gutter.Label / 2), Y(from), way);
            end = X(x + gutter.Label + RingRadius + 0.5);
            _signs.Add(GoesOn(end, Y(from)));
        }
        else
        {
            end = X(x) + AddCutRight(way, X(x), from, Cut.AfterColumn(way.Strand, column));
        }

        segments.Add(RouteSegment.Line(new Point(end, Y(from))));
    }

    /// <summary>The strand's start at the left of the next band.</summary>
    private Point AddFoldStart(int column, Way way, Row to, List<RouteSegment> segments)
    {
        GutterPlace gutter = placement.Gutters[column];
        double right = placement.Columns[column + 1].X;
        double x = right - gutter.ArrowRight - gutter.Label;
        segments.Add(RouteSegment.Line(new Point(X(right), Y(to))));
        if (!IsHere(column))
            return new Point(X(right - gutter.ArrowRight) - AddCutLeft(way, X(right - gutter.ArrowRight), to, Cut.AfterColumn(way.Strand, column)), Y(to));
        AddLabel(x + (gutter.Label / 2), Y(to), way);
        double start = X(x - RingRadius - 0.5);
        _signs.Add(GoesOn(start, Y(to)));
        return new Point(start, Y(to));
    }

    /// <summary>A bar at an open end; at a loop, which has none, the ring that says it goes on, here back to its start.</summary>
    private SceneElement EndMark(int strand, double x, double y) => _strands.IsLoop(strand) ? GoesOn(x, y) : Marks.DeadEnd(x, y);

    /// <summary>A ring: the strand goes on at the ring with its number in the next band, or at a loop back at its start.</summary>
    private static Circle GoesOn(double x, double y) => new(x, y, RingRadius, Palette.Ink, LineWidths.Inner, Palette.Paper);

    private void AddGutter(int column, Way way, Row from, Row to, List<RouteSegment> segments)
    {
        GutterPlace gutter = placement.Gutters[column];
        double left = placement.Columns[column].Right;
        double right = placement.Columns[column + 1].X;
        if (gutter.Crossing == 0)
        {
            AddLabel((left + gutter.ArrowLeft + right - gutter.ArrowRight) / 2, Y(from), way);
            segments.Add(RouteSegment.Line(new Point(X(right), Y(to))));
            return;
        }

        double x0 = left + gutter.ArrowLeft + gutter.Label;
        double x1 = right - gutter.ArrowRight - gutter.Label;
        AddLabel(x0 - (gutter.Label / 2), Y(from), way);
        AddLabel(x1 + (gutter.Label / 2), Y(to), way);
        _leads.Cross(layout.Between[column], from.Index, X(x0), X(x1), segments);
        segments.Add(RouteSegment.Line(new Point(X(right), Y(to))));
    }

    private void AddLabel(double x, double y, Way way) => _labels.Add(new LabelPlace(way.Number, X(x), y, sheetful.IsModel ? new LabelSpot() : null));

    private void AddEnd(Way way, List<RouteSegment> segments)
    {
        ColumnPlace column = placement.Columns[way.LastColumn];
        Row? end = way.Passages[^1].Out is null ? way.Passages[^1].In : null;
        double x, y;
        if (end is not null)
        {
            // It ends at a cell: of an interface, or at a place without a fibre, where a bar says so.
            y = Y(end);
            segments.Add(RouteSegment.Line(new Point(X(column.X + (column.LeftCell / 2)), y)));
            x = column.Right;
            if (end.Lane is null)
            {
                segments.Add(RouteSegment.Line(new Point(X(column.X + column.LeftCell + 2), y)));
                _signs.Add(Marks.DeadEnd(X(column.X + column.LeftCell + 2), y));
            }
        }
        else
        {
            Row from = way.Passages[^1].Out!;
            y = Y(from);
            if (way.GoesOn)
            {
                segments.Add(RouteSegment.Line(new Point(X(column.Right) + AddCutRight(way, X(column.Right), from, new Cut(way.Strand, way.Piece.First + way.Piece.Count - 1)), y)));
                return;
            }

            x = column.Right + OpenEnds.Length(text, way, from);
            AddLabel(column.Right + OpenEnds.LabelAt(text, way, from), y, way);
            segments.Add(RouteSegment.Line(new Point(X(x), y)));
            _signs.Add(EndMark(way.Strand, X(x), y));
            x += OpenEnds.Ring(text, way);
        }

        bool last = way.LastColumn == layout.Columns.Count - 1;
        _ends.Add(new EndPlace(way.Number, X(x), y, last || end is null, last));
    }

    /// <summary>Arrowheads where light leaves a transmitter and where it reaches a receiver.</summary>
    private void AddArrows(Way way)
    {
        ReadOnlySpan<int> positions = _strands[way.Strand];
        Lane? left = _graph.LaneAt(positions[0]);
        Lane? right = _graph.LaneAt(positions[^1]);
        double leftX = X(placement.Columns[way.FirstColumn].Right);
        double rightX = X(placement.Columns[way.LastColumn].X);
        bool lightFromLeft = left?.Direction is LaneDirection.Transmit or LaneDirection.Both;
        bool lightFromRight = right?.Direction is LaneDirection.Transmit or LaneDirection.Both;
        if (IsHere(way.FirstColumn) && way.Passages[0] is { In: null, Out: { } from })
        {
            if (lightFromLeft)
                _arrows.Add(Marks.ArrowRight(leftX + Marks.ArrowLength, Y(from), Palette.Ink));
            else if (left is not null && lightFromRight)
                _arrows.Add(Marks.ArrowLeft(leftX, Y(from), Palette.Ink));
        }

        if (way.LastColumn <= scope.Through && IsHere(way.LastColumn) && way.Passages[^1] is { Out: null, In: { } to })
        {
            if (lightFromRight)
                _arrows.Add(Marks.ArrowLeft(rightX - Marks.ArrowLength, Y(to), Palette.Ink));
            else if (right is not null && lightFromLeft)
                _arrows.Add(Marks.ArrowRight(rightX, Y(to), Palette.Ink));
        }
    }

    /// <summary>Arrowheads with a rim of paper, so that they stand out from wide dark strands; all rims first, so that a file says each style once.</summary>
    private IEnumerable<SceneElement> Arrows() =>
        [.. _arrows.Select(a => a with { Stroke = Palette.Paper, StrokeWidthMm = 0.9, Fill = Palette.Paper }), .. _arrows];
}
