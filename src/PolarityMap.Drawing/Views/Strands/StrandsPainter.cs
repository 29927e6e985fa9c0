using PolarityMap.Core.Checks;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>Draws a placed layout: the strands with their labels, arrowheads and marks; boxes and keys have painters of their own.</summary>
internal sealed class StrandsPainter(ViewInput input, Layout layout, Placement placement, SheetText text, double originX, double originY)
{
    /// <summary>Room at the right for the marks of findings.</summary>
    public const double MarkWidth = 13;

    private const double RingRadius = 1.1;

    private readonly TracedPlant _traced = input.Traced;
    private readonly Dictionary<int, Finding> _findingOf = FindingByStrand(input.Findings);
    private readonly List<SceneElement> _strands = [];
    private readonly List<SceneElement> _labels = [];
    private readonly List<SceneElement> _marks = [];
    private readonly Dictionary<Crossing, Braid> _braids = [];

    /// <summary>The layers in drawing order.</summary>
    public IReadOnlyList<SceneGroup> Paint()
    {
        var boxes = new BoxPainter(layout, placement, text, originX, originY);
        boxes.Paint();
        // Strands with a finding are drawn last, so that nothing covers them.
        foreach (Way way in layout.Ways.OrderBy(w => _findingOf.ContainsKey(w.Strand)).ThenBy(w => _traced.NumberOf(w.Strand)))
            PaintWay(way);
        IReadOnlyList<SceneElement> keys = new KeyPainter(layout, placement, _traced, originX, originY).Paint();
        return
        [
            new SceneGroup("parts", boxes.Boxes),
            new SceneGroup("strands", _strands),
            new SceneGroup("outlines", boxes.Outlines),
            new SceneGroup("labels", [.. boxes.Labels, .. _labels, .. keys]),
            new SceneGroup("findings", _marks),
        ];
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

    private void PaintWay(Way way)
    {
        Passage first = way.Passages[0];
        ColumnPlace column = placement.Columns[way.FirstColumn];
        var routes = new List<Route>();
        var segments = new List<RouteSegment>();
        Point start;
        if (first.In is { } open)
        {
            start = new Point(X(column.X - Measures.Stub), Y(open));
            _marks.Add(EndMark(way.Strand, start.X, start.Y));
            segments.Add(RouteSegment.Line(new Point(X(column.X), Y(open))));
        }
        else
        {
            start = new Point(X(column.Right - (column.RightCell / 2)), Y(first.Out!));
        }

        Row? end = null;
        for (int i = 0; i < way.Passages.Count; i++)
        {
            Passage passage = way.Passages[i];
            column = placement.Columns[way.FirstColumn + i];
            if (passage.Node is { } node && passage.In is { } into && passage.Out is { } from)
                AddInside(node, column, into, from, segments);
            else if (passage.Out is { } passing)
                segments.Add(RouteSegment.Line(new Point(X(column.Right), Y(passing))));
            if (passage.Out is null)
                end = passage.In;
            else if (i + 1 < way.Passages.Count && placement.IsFoldAfter(way.FirstColumn + i))
            {
                segments.Add(AddFoldEnd(way.FirstColumn + i, way.Strand, passage.Out));
                routes.Add(Route.Of(start, segments));
                segments = [];
                start = AddFoldStart(way.FirstColumn + i, way.Strand, way.Passages[i + 1].In!, segments);
            }
            else if (i + 1 < way.Passages.Count)
                AddGutter(way.FirstColumn + i, way.Strand, passage.Out, way.Passages[i + 1].In!, segments);
        }

        AddEnd(way, end, column, segments);
        routes.Add(Route.Of(start, segments));
        AddStrand(way, routes);
        AddArrows(way);
    }

    private void AddInside(Node node, ColumnPlace column, Row into, Row from, List<RouteSegment> segments)
    {
        double x0 = X(column.X + column.LeftCell + column.LeftWords + column.Text.InsideWidth);
        double x1 = X(column.Right - column.RightCell - column.RightWords);
        Cross(layout.Inside[node], into, x0, x1, segments);
        segments.Add(RouteSegment.Line(new Point(X(column.Right), Y(from))));
    }

    /// <summary>The strand's end at the right of a band: its label, and a ring that says it goes on below.</summary>
    private RouteSegment AddFoldEnd(int column, int strand, Row from)
    {
        GutterPlace gutter = placement.Gutters[column];
        double x = placement.Columns[column].Right + gutter.ArrowLeft;
        AddLabel(x + (gutter.Label / 2), Y(from), strand);
        double end = X(x + gutter.Label + RingRadius + 0.5);
        _marks.Add(GoesOn(end, Y(from)));
        return RouteSegment.Line(new Point(end, Y(from)));
    }

    /// <summary>The strand's start at the left of the next band.</summary>
    private Point AddFoldStart(int column, int strand, Row to, List<RouteSegment> segments)
    {
        GutterPlace gutter = placement.Gutters[column];
        double right = placement.Columns[column + 1].X;
        double x = right - gutter.ArrowRight - gutter.Label;
        AddLabel(x + (gutter.Label / 2), Y(to), strand);
        double start = X(x - RingRadius - 0.5);
        _marks.Add(GoesOn(start, Y(to)));
        segments.Add(RouteSegment.Line(new Point(X(right), Y(to))));
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
        Cross(layout.Between[column], from, X(x0), X(x1), segments);
        segments.Add(RouteSegment.Line(new Point(X(right), Y(to))));
    }

    /// <summary>From a label's end to its first tick.</summary>
    private const double TickLead = 1.3;

    /// <summary>The strand's label, and behind it a tick for each tracer of its colour.</summary>
    private void AddLabel(double x, double y, int strand)
    {
        string label = text.Strand(strand);
        _labels.Add(Label.CentredOn(X(x), y, label, CapHeights.Strand, Anchor.Middle, Palette.Ink, Underlay.Paper));
        int tracers = StrandColours.Of(_traced, strand).Tracers;
        if (tracers > 0)
            _marks.Add(Marks.Ticks(X(x + (SheetText.Width(label) / 2)) + TickLead + ((tracers - 1) / 2.0), y, tracers));
    }

    /// <summary>Leads a strand from its row through a crossing that has the room from one x to another.</summary>
    private void Cross(Crossing crossing, Row from, double x0, double x1, List<RouteSegment> segments)
    {
        if (!_braids.TryGetValue(crossing, out Braid? braid))
            _braids[crossing] = braid = placement.At(crossing);
        (x0, x1) = placement.Stretch(braid, x0, x1);
        segments.Add(RouteSegment.Line(new Point(x0, Y(from))));
        foreach (RouteSegment s in braid.Route(crossing.IndexOf(from.Strand), x0, x1))
            segments.Add(s.MovedDown(originY));
    }

    private void AddEnd(Way way, Row? end, ColumnPlace column, List<RouteSegment> segments)
    {
        int lastColumn = way.FirstColumn + way.Passages.Count - 1;
        double x, y;
        if (end is not null)
        {
            // It ends at a cell: of an interface, or at a place without a fibre, where a bar says so.
            y = Y(end);
            segments.Add(RouteSegment.Line(new Point(X(column.X + (column.LeftCell / 2)), y)));
            x = column.Right;
            if (text.Lane(end).Length == 0)
            {
                segments.Add(RouteSegment.Line(new Point(X(column.X + column.LeftCell + 2), y)));
                _marks.Add(Marks.DeadEnd(X(column.X + column.LeftCell + 2), y));
            }
        }
        else
        {
            Row from = way.Passages[^1].Out!;
            y = Y(from);
            x = column.Right + Measures.Stub;
            segments.Add(RouteSegment.Line(new Point(X(x), y)));
            _marks.Add(EndMark(way.Strand, X(x), y));
        }

        if (!_findingOf.TryGetValue(way.Strand, out Finding? finding))
            return;
        bool error = finding.Rule.Severity == Severity.Error;
        _marks.Add(error ? Marks.Error(X(x + 3.2), y, 4) : Marks.Warning(X(x + 3.2), y, 4));
        if (lastColumn == layout.Columns.Count - 1 || end is null)
            _marks.Add(Label.CentredOn(X(x + 6), y, finding.Rule.Code, CapHeights.Strand, Anchor.Start, Palette.Ink));
    }

    private void AddStrand(Way way, IReadOnlyList<Route> routes)
    {
        FibreColour colour = StrandColours.Of(_traced, way.Strand);
        int number = _traced.NumberOf(way.Strand);
        ReadOnlySpan<int> positions = _traced.Strands[way.Strand];
        string name = $"Strand {number}, {colour.Name}, {Words(positions[0])} to {Words(positions[^1])}";
        string? description = _findingOf.TryGetValue(way.Strand, out Finding? finding) ? $"{finding.Rule.Code} {finding.Rule.Title}: {finding.Message}" : null;
        Colour fill = StrandColours.Drawn(colour);
        SceneElement[] children = [.. routes.Select(route => new StrandPath(route, fill, finding is not null))];
        _strands.Add(new SceneGroup($"strand-{number}", GroupRole.GraphicsSymbol, name, description, children));
    }

    private string Words(int position) => $"{HopLine.EndWord(_traced, position)} of {_traced.Address(position)}";

    /// <summary>Arrowheads where light leaves a transmitter and where it reaches a receiver.</summary>
    private void AddArrows(Way way)
    {
        ReadOnlySpan<int> positions = _traced.Strands[way.Strand];
        Lane? left = _traced.Graph.LaneAt(positions[0]);
        Lane? right = _traced.Graph.LaneAt(positions[^1]);
        double leftX = X(placement.Columns[way.FirstColumn].Right);
        double rightX = X(placement.Columns[way.FirstColumn + way.Passages.Count - 1].X);
        bool lightFromLeft = left?.Direction is LaneDirection.Transmit or LaneDirection.Both;
        bool lightFromRight = right?.Direction is LaneDirection.Transmit or LaneDirection.Both;
        if (way.Passages[0].Out is { } from && way.Passages[0].In is null)
        {
            if (lightFromLeft)
                AddArrow(Marks.ArrowRight(leftX + Marks.ArrowLength, Y(from), Palette.Ink));
            else if (left is not null && lightFromRight)
                AddArrow(Marks.ArrowLeft(leftX, Y(from), Palette.Ink));
        }

        if (way.Passages[^1] is { Out: null, In: { } to })
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
