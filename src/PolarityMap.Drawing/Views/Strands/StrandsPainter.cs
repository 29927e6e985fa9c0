using PolarityMap.Core.Checks;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// Draws one sheet of a placed layout: the strands with their labels, arrowheads and marks; boxes and keys have painters of
/// their own.
/// </summary>
/// <param name="sheetful">What is laid out and placed.</param>
/// <param name="page">Which of its sheets.</param>
/// <param name="place">That sheet's place in the set.</param>
/// <param name="scope">How much of it, and under which names.</param>
internal sealed class StrandsPainter(Sheetful sheetful, int page, SheetPlace place, PaintScope scope)
{
    /// <summary>Room at the right for the marks of findings.</summary>
    public const double MarkWidth = 13;

    private const double RingRadius = 1.1;

    private readonly Layout layout = sheetful.Layout;
    private readonly Placement placement = sheetful.Placement;
    private readonly SheetText text = sheetful.Text;
    private readonly double originX = sheetful.OriginX;
    private readonly double originY = sheetful.OriginY;
    private readonly TracedPlant _traced = sheetful.Input.Traced;
    private readonly Dictionary<int, Finding> _findingOf = FindingByStrand(sheetful.Input.Findings);
    private readonly List<SceneElement> _strands = [];
    private readonly HashSet<int> _drawn = [];
    private readonly List<Label> _labels = [];
    private readonly List<SceneElement> _marks = [];
    private readonly List<SheetLink> _links = [];
    private readonly CrossingLeads _leads = new(sheetful.Placement, sheetful.OriginY);

    // Of the stretch at hand.
    private readonly List<RouteSegment> _segments = [];

    /// <summary>The keys that were painted, for the legend.</summary>
    public SheetSigns KeySigns { get; private set; }

    /// <summary>Where a click leads, once painted.</summary>
    public IReadOnlyList<SheetLink> Links => _links;

    /// <summary>The layers in drawing order.</summary>
    public IReadOnlyList<SceneGroup> Paint()
    {
        var changed = new HashSet<int>(sheetful.Input.Findings.SelectMany(f => f.Remedies).Select(r => r.Part));
        var boxes = new BoxPainter(layout, placement, text, originX, originY, page, scope, changed);
        boxes.Paint();
        // Strands with a finding are drawn last, so that nothing covers them.
        foreach (Way way in InDrawingOrder())
            PaintWay(way);
        var expected = new ExpectedPainter(layout, placement, _leads, originX, page, scope);
        expected.Paint();
        var keys = new KeyPainter(layout, placement, _traced, originX, originY, page, scope);
        IReadOnlyList<SceneElement> tabs = keys.Paint();
        KeySigns = keys.Signs;
        var labels = new List<SceneElement>(boxes.Cells.Count + tabs.Count + _labels.Count + boxes.Labels.Count + keys.Words.Count);
        labels.AddRange(boxes.Cells);
        labels.AddRange(tabs);
        AddInStyles(_labels, [], labels);
        AddInStyles(boxes.Labels, keys.Words, labels);
        return
        [
            new SceneGroup("parts", boxes.Boxes),
            new SceneGroup("strands", _strands),
            new SceneGroup("expected", expected.Lines),
            new SceneGroup("outlines", boxes.Outlines),
            new SceneGroup("labels", labels),
            new SceneGroup("findings", _marks),
        ];
    }

    private IEnumerable<Way> InDrawingOrder()
    {
        bool isInOrder = _findingOf.Count == 0;
        for (int i = 1; i < layout.Ways.Count && isInOrder; i++)
            isInOrder = _traced.NumberOf(layout.Ways[i - 1].Strand) <= _traced.NumberOf(layout.Ways[i].Strand);
        return isInOrder ? layout.Ways : layout.Ways.OrderBy(w => _findingOf.ContainsKey(w.Strand)).ThenBy(w => _traced.NumberOf(w.Strand));
    }

    /// <summary>
    /// Labels of one style side by side, so that a file says the style once: the smallest first, of one height by their anchors.
    /// There are a handful of styles, so each is looked for by itself.
    /// </summary>
    private static void AddInStyles(IReadOnlyList<Label> first, IReadOnlyList<Label> then, List<SceneElement> to)
    {
        var styles = new SortedSet<(double CapHeight, Anchor Anchor)>();
        (double CapHeight, Anchor Anchor) last = default;
        foreach (IReadOnlyList<Label> labels in (ReadOnlySpan<IReadOnlyList<Label>>)[first, then])
        {
            for (int i = 0; i < labels.Count; i++)
            {
                (double, Anchor) style = (labels[i].CapHeightMm, labels[i].Anchor);
                if (style != last)
                    styles.Add(last = style);
            }
        }

        foreach ((double capHeight, Anchor anchor) in styles)
        {
            foreach (IReadOnlyList<Label> labels in (ReadOnlySpan<IReadOnlyList<Label>>)[first, then])
            {
                for (int i = 0; i < labels.Count; i++)
                {
                    if (labels[i].CapHeightMm == capHeight && labels[i].Anchor == anchor)
                        to.Add(labels[i]);
                }
            }
        }
    }

    private static Dictionary<int, Finding> FindingByStrand(IReadOnlyList<Finding> findings)
    {
        var map = new Dictionary<int, Finding>();
        foreach (Finding finding in findings)
        {
            foreach (int strand in finding.Strands)
                map.TryAdd(strand, finding);
        }

        return map;
    }

    private double X(double x) => originX + x;

    private double Y(Row row) => originY + placement.Y(row);

    private bool IsHere(int column) => placement.Columns[column].Page == page;

    /// <summary>Paints the stretches of a strand that are on this sheet; a stretch ends where the drawing is folded.</summary>
    private void PaintWay(Way way)
    {
        var routes = new List<Route>();
        int from = way.FirstColumn;
        int last = Math.Min(way.LastColumn, scope.Through);
        while (from <= last)
        {
            int to = from;
            while (to < last && !placement.IsFoldAfter(to))
                to++;
            if (IsHere(from))
                routes.Add(PaintStretch(way, from, to));
            from = to + 1;
        }

        if (routes.Count == 0)
            return;
        AddStrand(way, routes);
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
                AddGutter(c, way.Strand, passage.Out!, way.Passages[c + 1 - way.FirstColumn].In!, segments);
        }

        if (last < way.LastColumn && last == scope.Through)
            segments.Add(RouteSegment.Line(new Point(X(placement.Columns[last].Right), Y(way.Passages[last - way.FirstColumn].Out!))));
        else if (last < way.LastColumn)
            AddFoldEnd(last, way, way.Passages[last - way.FirstColumn].Out!, segments);
        else
            AddEnd(way, segments);
        return Route.Of(start, segments);
    }

    /// <summary>Where a strand begins: at an interface, at an open end, or where it comes from another sheet.</summary>
    private Point AddStart(Way way, List<RouteSegment> segments)
    {
        ColumnPlace column = placement.Columns[way.FirstColumn];
        if (way.Passages[0].In is not { } open)
            return new Point(X(column.Right - (column.RightCell / 2)), Y(way.Passages[0].Out!));
        segments.Add(RouteSegment.Line(new Point(X(column.X), Y(open))));
        if (way.ComesIn)
            return new Point(X(column.X) - AddCutLeft(way, X(column.X), open, new Cut(way.Strand, way.Piece.First - 1)), Y(open));
        var start = new Point(X(column.X - Measures.Stub), Y(open));
        _marks.Add(EndMark(way.Strand, start.X, start.Y));
        return start;
    }

    /// <summary>Label and mark of a strand that arrives from another sheet at a box's left edge; returns how far they reach.</summary>
    private double AddCutLeft(Way way, double right, Row row, Cut cut)
    {
        double label = text.LabelWidth(way.Strand) + (2 * Measures.LabelLead);
        AddLabel(right - originX - (label / 2), Y(row), way.Strand);
        if (sheetful.Cuts.Before(cut) is { } end)
            AddReference(CutMarks.Arriving(place.Sheet + end.Sheet - sheetful.FirstSheet - page, end.Zone), right - label - 0.6, Y(row), Anchor.End, end);
        return label;
    }

    /// <summary>Label and mark of a strand that goes on on another sheet from a box's right edge; returns how far the line reaches.</summary>
    private double AddCutRight(Way way, double left, Row row, Cut cut)
    {
        double label = text.LabelWidth(way.Strand) + (2 * Measures.LabelLead);
        AddLabel(left - originX + (label / 2), Y(row), way.Strand);
        if (sheetful.Cuts.After(cut) is { } end)
            AddReference(CutMarks.Leaving(place.Sheet + end.Sheet - sheetful.FirstSheet - page, end.Zone), left + label + 0.6, Y(row), Anchor.Start, end);
        return label;
    }

    private void AddReference(string words, double x, double y, Anchor anchor, CutRegister.End end)
    {
        var label = Label.CentredOn(x, y, words, CapHeights.Strand, anchor, Palette.Ink);
        _labels.Add(label);
        Area extent = label.Extent();
        _links.Add(new SheetLink(new Area(extent.X, extent.Y - 0.8, extent.Width, extent.Height + 1.6), place.Sheet + end.Sheet - sheetful.FirstSheet - page));
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
            AddLabel(x + (gutter.Label / 2), Y(from), way.Strand);
            end = X(x + gutter.Label + RingRadius + 0.5);
            _marks.Add(GoesOn(end, Y(from)));
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
        AddLabel(x + (gutter.Label / 2), Y(to), way.Strand);
        double start = X(x - RingRadius - 0.5);
        _marks.Add(GoesOn(start, Y(to)));
        return new Point(start, Y(to));
    }

    /// <summary>A bar at an open end; at a loop, which has none, the ring that says it goes on, here back to its start.</summary>
    private SceneElement EndMark(int strand, double x, double y) => _traced.Strands.IsLoop(strand) ? GoesOn(x, y) : Marks.DeadEnd(x, y);

    /// <summary>A ring: the strand goes on at the ring with its number in the next band, or at a loop back at its start.</summary>
    private static Circle GoesOn(double x, double y) => new(x, y, RingRadius, Palette.Ink, LineWidths.Inner, Palette.Paper);

    private void AddGutter(int column, int strand, Row from, Row to, List<RouteSegment> segments)
    {
        GutterPlace gutter = placement.Gutters[column];
        double left = placement.Columns[column].Right;
        double right = placement.Columns[column + 1].X;
        if (gutter.Crossing == 0)
        {
            AddLabel((left + gutter.ArrowLeft + right - gutter.ArrowRight) / 2, Y(from), strand);
            segments.Add(RouteSegment.Line(new Point(X(right), Y(to))));
            return;
        }

        double x0 = left + gutter.ArrowLeft + gutter.Label;
        double x1 = right - gutter.ArrowRight - gutter.Label;
        AddLabel(x0 - (gutter.Label / 2), Y(from), strand);
        AddLabel(x1 + (gutter.Label / 2), Y(to), strand);
        _leads.Cross(layout.Between[column], from.Index, X(x0), X(x1), segments);
        segments.Add(RouteSegment.Line(new Point(X(right), Y(to))));
    }

    /// <summary>From a label's end to its first tick.</summary>
    private const double TickLead = 1.3;

    /// <summary>The strand's label, and behind it a tick for each tracer of its colour.</summary>
    private void AddLabel(double x, double y, int strand)
    {
        StrandLabels.Entry label = text.Hops.Labels.Of(strand);
        _labels.Add(Label.CentredOn(X(x), y, label.Text, CapHeights.Strand, Anchor.Middle, Palette.Ink, Underlay.Paper));
        int tracers = label.Colour.Tracers;
        if (tracers > 0)
            _marks.Add(Marks.Ticks(X(x + (label.TextWidth / 2)) + TickLead + ((tracers - 1) / 2.0), y, tracers));
    }

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
                _marks.Add(Marks.DeadEnd(X(column.X + column.LeftCell + 2), y));
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

            x = column.Right + Measures.Stub;
            segments.Add(RouteSegment.Line(new Point(X(x), y)));
            _marks.Add(EndMark(way.Strand, X(x), y));
        }

        if (!_findingOf.TryGetValue(way.Strand, out Finding? finding))
            return;
        bool error = finding.Rule.Severity == Severity.Error;
        _marks.Add(error ? Marks.Error(X(x + 3.2), y, 4) : Marks.Warning(X(x + 3.2), y, 4));
        if (way.LastColumn == layout.Columns.Count - 1 || end is null)
            _marks.Add(Label.CentredOn(X(x + 6), y, sheetful.HasRoomForWords && way.LastColumn == layout.Columns.Count - 1 ? $"{finding.Rule.Code} {finding.Rule.Title}" : finding.Rule.Code, CapHeights.Strand, Anchor.Start, Palette.Ink));
    }

    private void AddStrand(Way way, IReadOnlyList<Route> routes)
    {
        FibreColour colour = text.Colour(way.Strand);
        int number = _traced.NumberOf(way.Strand);
        ReadOnlySpan<int> positions = _traced.Strands[way.Strand];
        string name = $"Strand {number}, {colour.Name}, {Words(positions[0])} to {Words(positions[^1])}";
        string? description = _findingOf.TryGetValue(way.Strand, out Finding? finding) ? $"{finding.Rule.Code} {finding.Rule.Title}: {finding.Message}" : null;
        Colour fill = StrandColours.Drawn(colour);

        // A strand that comes to a sheet twice has two groups.
        string again = _drawn.Add(way.Strand) ? "" : $"-{way.Piece.First}";
        var children = new SceneElement[routes.Count];
        for (int i = 0; i < children.Length; i++)
            children[i] = new StrandPath(routes[i], fill, finding is not null);
        _strands.Add(new SceneGroup($"{scope.IdPrefix}strand-{number}{again}", GroupRole.GraphicsSymbol, name, description, children));
    }

    private string Words(int position) => $"{HopLine.EndWord(_traced, position)} of {_traced.Address(position)}";

    /// <summary>Arrowheads where light leaves a transmitter and where it reaches a receiver.</summary>
    private void AddArrows(Way way)
    {
        ReadOnlySpan<int> positions = _traced.Strands[way.Strand];
        Lane? left = _traced.Graph.LaneAt(positions[0]);
        Lane? right = _traced.Graph.LaneAt(positions[^1]);
        double leftX = X(placement.Columns[way.FirstColumn].Right);
        double rightX = X(placement.Columns[way.LastColumn].X);
        bool lightFromLeft = left?.Direction is LaneDirection.Transmit or LaneDirection.Both;
        bool lightFromRight = right?.Direction is LaneDirection.Transmit or LaneDirection.Both;
        if (IsHere(way.FirstColumn) && way.Passages[0] is { In: null, Out: { } from })
        {
            if (lightFromLeft)
                AddArrow(Marks.ArrowRight(leftX + Marks.ArrowLength, Y(from), Palette.Ink));
            else if (left is not null && lightFromRight)
                AddArrow(Marks.ArrowLeft(leftX, Y(from), Palette.Ink));
        }

        if (way.LastColumn <= scope.Through && IsHere(way.LastColumn) && way.Passages[^1] is { Out: null, In: { } to })
        {
            if (lightFromRight)
                AddArrow(Marks.ArrowLeft(rightX - Marks.ArrowLength, Y(to), Palette.Ink));
            else if (right is not null && lightFromLeft)
                AddArrow(Marks.ArrowRight(rightX, Y(to), Palette.Ink));
        }
    }

    /// <summary>An arrowhead with a rim of paper, so that it stands out from a wide dark strand.</summary>
    private void AddArrow(Polygon arrow)
    {
        _marks.Add(arrow with { Stroke = Palette.Paper, StrokeWidthMm = 0.9, Fill = Palette.Paper });
        _marks.Add(arrow);
    }

}
