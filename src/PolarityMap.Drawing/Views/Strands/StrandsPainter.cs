using PolarityMap.Core.Checks;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>Draws a placed layout: boxes, strands, cells, labels, keys, arrowheads and the marks of findings.</summary>
internal sealed class StrandsPainter(ViewInput input, Layout layout, Placement placement, SheetText text, double originX, double originY)
{
    /// <summary>Room at the right for the marks of findings.</summary>
    public const double MarkWidth = 13;

    private const double RingRadius = 1.1;

    /// <summary>Both keys stand above their connectors, the turned one upside down, so that the pair is seen at one glance.</summary>
    private const double KeyHeight = 1.4;

    private readonly TracedPlant _traced = input.Traced;
    private readonly Dictionary<int, Finding> _findingOf = FindingByStrand(input.Findings);
    private readonly HashSet<int> _keyedGutters = [];
    private readonly List<SceneElement> _boxes = [];
    private readonly List<SceneElement> _outlines = [];
    private readonly List<SceneElement> _strands = [];
    private readonly List<SceneElement> _labels = [];
    private readonly List<SceneElement> _marks = [];
    private readonly Dictionary<Node, (Braid, List<int>)> _inside = [];
    private readonly Dictionary<int, (Braid, List<int>)> _between = [];

    /// <summary>The layers in drawing order.</summary>
    public IReadOnlyList<SceneGroup> Paint()
    {
        for (int c = 0; c < layout.Columns.Count; c++)
        {
            PaintHead(c);
            foreach (Node node in layout.Columns[c])
                PaintBox(node, placement.Columns[c]);
        }

        // Strands with a finding are drawn last, so that nothing covers them.
        foreach (Way way in layout.Ways.OrderBy(w => _findingOf.ContainsKey(w.Strand)).ThenBy(w => _traced.NumberOf(w.Strand)))
            PaintWay(way);
        PaintKeys();
        return
        [
            new SceneGroup("parts", _boxes),
            new SceneGroup("strands", _strands),
            new SceneGroup("outlines", _outlines),
            new SceneGroup("labels", _labels),
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

    private void PaintHead(int column)
    {
        ColumnPlace place = placement.Columns[column];
        if (place.Text.Head.Length == 0)
            return;
        List<string> lines = SheetText.Wrapped(place.Text.Head, Math.Max(place.Width, 15));

        // The head stands close above the column's first small box.
        double bottom = layout.Columns[column].Where(n => n.NameInside).Select(placement.Top).Min();
        for (int i = 0; i < lines.Count; i++)
        {
            double baseline = originY + bottom - 1.4 - ((lines.Count - 1 - i) * Measures.LineOfText);
            _labels.Add(new Label(X(place.X + (place.Width / 2)), baseline, lines[i], CapHeights.Strand, Anchor.Middle, Palette.Ink));
        }
    }

    private void PaintBox(Node node, ColumnPlace place)
    {
        double top = originY + placement.Top(node);
        double bottom = originY + placement.Bottom(node);
        Part part = text.Part(node);
        var outline = new Box(X(place.X), top, place.Width, bottom - top, 0.8, Palette.Ink, part.Shape.IsCable ? LineWidths.Inner : LineWidths.Outline);
        _boxes.Add(outline with { Stroke = null, Fill = Palette.PartFill });

        // The outline is drawn over the strands, whose halos would cut it.
        _outlines.Add(outline);
        if (node.NameInside)
        {
            string inside = place.Text.Inside[node];
            if (inside.Length > 0)
            {
                double x = place.X + place.LeftCell + place.LeftWords + (place.Text.InsideWidth / 2);
                if (node.Left.Count == 0)
                    x = place.X + (place.Text.InsideWidth / 2);
                _labels.Add(Label.CentredOn(X(x), (top + bottom) / 2, inside, CapHeights.Strand, Anchor.Middle, Palette.Ink));
            }
        }
        else
        {
            PaintName(part, place, top);
        }

        PaintSide(node, node.Left, place, left: true);
        PaintSide(node, node.Right, place, left: false);
    }

    private void PaintName(Part part, ColumnPlace place, double top)
    {
        (string name, List<string> caption) = ColumnText.Above(part, Math.Max(place.Width, 15));
        double baseline = top - 1.4;
        for (int i = caption.Count - 1; i >= 0; i--)
        {
            _labels.Add(new Label(X(place.X + (place.Width / 2)), baseline, caption[i], CapHeights.Strand, Anchor.Middle, Palette.Ink));
            baseline -= Measures.LineOfText;
        }

        if (name.Length > 0)
            _labels.Add(new Label(X(place.X + (place.Width / 2)), baseline - 0.4, name, CapHeights.Part, Anchor.Middle, Palette.Ink));
    }

    private void PaintSide(Node node, List<Row> rows, ColumnPlace place, bool left)
    {
        if (rows.Count == 0)
            return;
        double cell = left ? place.LeftCell : place.RightCell;
        double x = left ? place.X : place.Right - cell;
        foreach (Row row in rows)
        {
            _labels.Add(new Box(X(x), Y(row) - (Measures.CellHeight / 2), cell, Measures.CellHeight, 0, Palette.Ink, LineWidths.Leader, Palette.Paper));
            string name = text.Cell(row);
            if (name.Length > 0)
                _labels.Add(Label.CentredOn(X(x + (cell / 2)), Y(row), name, CapHeights.Strand, Anchor.Middle, Palette.Ink));
        }

        double laneWidth = placement.LaneWidth(rows);
        foreach ((Row first, Row last, string port, _) in placement.Words(node, rows))
        {
            double inner = left ? x + cell + 0.7 : x - 0.7;
            Anchor anchor = left ? Anchor.Start : Anchor.End;
            if (laneWidth > 0)
            {
                foreach (Row row in rows.Where(r => r.Slot >= first.Slot && r.Slot <= last.Slot && text.Lane(r).Length > 0))
                    _labels.Add(Label.CentredOn(X(inner), Y(row), text.Lane(row), CapHeights.Strand, anchor, Palette.Ink));
                inner += left ? laneWidth + 0.9 : -(laneWidth + 0.9);
            }

            if (port.Length > 0)
                _labels.Add(Label.CentredOn(X(inner), NameHeight(rows, first, last), port, CapHeights.Strand, anchor, Palette.Ink));
        }

        PaintLeftOut(rows, x + (cell / 2));
    }

    /// <summary>The middle of a port's rows; between two rows, so that the name covers no strand.</summary>
    private double NameHeight(List<Row> rows, Row first, Row last)
    {
        int from = rows.IndexOf(first);
        int to = rows.IndexOf(last);
        int upper = (from + to - ((to - from) % 2 == 0 && to > from ? 1 : 0)) / 2;
        return to == from ? Y(first) : (Y(rows[upper]) + Y(rows[upper + 1])) / 2;
    }

    /// <summary>Dots where positions of an array are left out because no strand of the sheet uses them.</summary>
    private void PaintLeftOut(List<Row> rows, double x)
    {
        for (int i = 1; i < rows.Count; i++)
        {
            PositionPlace before = _traced.Graph.PlaceOf(rows[i - 1].Position);
            PositionPlace here = _traced.Graph.PlaceOf(rows[i].Position);
            if (before.Port != here.Port || Math.Abs(before.Position - here.Position) < 2 || Y(rows[i]) - Y(rows[i - 1]) < Measures.Pitch + 2)
                continue;
            double middle = (Y(rows[i - 1]) + Y(rows[i])) / 2;
            foreach (double offset in (ReadOnlySpan<double>)[-0.9, 0, 0.9])
                _labels.Add(new Circle(X(x), middle + offset, 0.25, null, LineWidths.Leader, Palette.Ink));
        }
    }

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
        if (!_inside.TryGetValue(node, out (Braid Braid, List<int> Strands) plan))
            _inside[node] = plan = placement.Inside(node);
        double x0 = X(column.X + column.LeftCell + column.LeftWords + column.Text.InsideWidth);
        double x1 = X(column.Right - column.RightCell - column.RightWords);
        (x0, x1) = placement.Stretch(plan.Braid, x0, x1);
        segments.Add(RouteSegment.Line(new Point(x0, Y(into))));
        segments.AddRange(Shifted(plan.Braid, plan.Strands.IndexOf(into.Strand), x0, x1));
        segments.Add(RouteSegment.Line(new Point(X(column.Right), Y(from))));
    }

    /// <summary>The strand's end at the right of a band: its label, and a ring that says it goes on below.</summary>
    private RouteSegment AddFoldEnd(int column, int strand, Row from)
    {
        GutterPlace gutter = placement.Gutters[column];
        double x = placement.Columns[column].Right + gutter.ArrowLeft;
        AddLabel(x + (gutter.Label / 2), Y(from), text.Strand(strand));
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
        AddLabel(x + (gutter.Label / 2), Y(to), text.Strand(strand));
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
        string label = text.Strand(strand);
        if (gutter.Crossing == 0)
        {
            AddLabel((left + gutter.ArrowLeft + right - gutter.ArrowRight) / 2, Y(from), label);
            segments.Add(RouteSegment.Line(new Point(X(right), Y(to))));
            return;
        }

        double x0 = left + gutter.ArrowLeft + gutter.Label;
        double x1 = right - gutter.ArrowRight - gutter.Label;
        AddLabel(x0 - (gutter.Label / 2), Y(from), label);
        AddLabel(x1 + (gutter.Label / 2), Y(to), label);
        if (!_between.TryGetValue(column, out (Braid Braid, List<int> Strands) plan))
            _between[column] = plan = placement.Between(column);
        (x0, x1) = placement.Stretch(plan.Braid, x0, x1);
        segments.Add(RouteSegment.Line(new Point(X(x0), Y(from))));
        segments.AddRange(Shifted(plan.Braid, plan.Strands.IndexOf(strand), X(x0), X(x1)));
        segments.Add(RouteSegment.Line(new Point(X(right), Y(to))));
    }

    private void AddLabel(double x, double y, string label) =>
        _labels.Add(Label.CentredOn(X(x), y, label, CapHeights.Strand, Anchor.Middle, Palette.Ink, Underlay.Paper));

    /// <summary>A braid's segments moved from the layout's heights to the sheet's.</summary>
    private IEnumerable<RouteSegment> Shifted(Braid braid, int strand, double x0, double x1)
    {
        foreach (RouteSegment s in braid.Route(strand, x0, x1))
        {
            yield return RouteSegment.Cubic(
                new Point(s.Control1.X, s.Control1.Y + originY),
                new Point(s.Control2.X, s.Control2.Y + originY),
                new Point(s.End.X, s.End.Y + originY));
        }
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
        if (lastColumn == layout.Columns.Count - 1)
            _marks.Add(Label.CentredOn(X(x + 6), y, finding.Rule.Code, CapHeights.Strand, Anchor.Start, Palette.Ink));
    }

    private void AddStrand(Way way, IReadOnlyList<Route> routes)
    {
        FibreColour colour = StrandColours.Of(_traced, way.Strand);
        int number = _traced.NumberOf(way.Strand);
        ReadOnlySpan<int> positions = _traced.Strands[way.Strand];
        string name = $"Strand {number}, {colour.Name}, {Words(positions[0])} to {Words(positions[^1])}";
        string? description = _findingOf.TryGetValue(way.Strand, out Finding? finding) ? $"{finding.Rule.Code} {finding.Rule.Title}: {finding.Message}" : null;
        var fill = new Colour((byte)(colour.Rgb >> 16), (byte)(colour.Rgb >> 8), (byte)colour.Rgb);
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
        bool lightFromLeft = left?.Direction == LaneDirection.Transmit;
        bool lightFromRight = right?.Direction == LaneDirection.Transmit;
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

    /// <summary>The keys of every array mating: a tab on each connector and the word, above the connectors.</summary>
    private void PaintKeys()
    {
        var seen = new HashSet<PortRef>();
        foreach (Way way in layout.Ways)
        {
            for (int i = 0; i + 1 < way.Passages.Count; i++)
            {
                if (way.Passages[i].Out is not { Position: >= 0 } from || way.Passages[i + 1].In is not { Position: >= 0 } to)
                    continue;
                PortRef port = _traced.Graph.PlaceOf(from.Position).Port;
                if (_traced.Plant.Port(port).Face.Family != ConnectorFamily.Array || !seen.Add(port) || _traced.MatingAt(from.Position) is not { } mating)
                    continue;
                if (!placement.HasOwnKeys(way.Passages[i].Node!, way.Passages[i + 1].Node!, mating))
                {
                    PaintSharedKeys(way.FirstColumn + i, mating);
                    continue;
                }

                PaintKey(way.FirstColumn + i, way.Passages[i].Node!.Right, way.Passages[i + 1].Node!.Left, port, _traced.Graph.PlaceOf(to.Position).Port, mating);
            }
        }
    }

    /// <summary>Between small boxes that are all keyed alike the word stands once, at the top of the gutter.</summary>
    private void PaintSharedKeys(int column, Mating mating)
    {
        if (!_keyedGutters.Add(column))
            return;
        double top = layout.Columns[column].Concat(layout.Columns[column + 1]).Where(n => n.NameInside).Select(placement.Top).Min();
        double left = placement.Columns[column].Right;
        double right = placement.IsFoldAfter(column) ? left + placement.Gutters[column].Width : placement.Columns[column + 1].X;
        double middle = X((left + right) / 2);
        _labels.Add(new Label(middle, originY + top - 1.4, mating.Keys.Word(), CapHeights.Strand, Anchor.Middle, Palette.Ink));
        _labels.Add(new Label(middle, originY + top - 1.4 - Measures.LineOfText, "keys", CapHeights.Strand, Anchor.Middle, Palette.Ink));
    }

    private void PaintKey(int column, List<Row> leftRows, List<Row> rightRows, PortRef leftPort, PortRef rightPort, Mating mating)
    {
        Row[] left = [.. leftRows.Where(r => _traced.Graph.PlaceOf(r.Position).Port == leftPort)];
        Row[] right = [.. rightRows.Where(r => _traced.Graph.PlaceOf(r.Position).Port == rightPort)];
        bool folded = placement.IsFoldAfter(column);
        double leftX = X(placement.Columns[column].Right) + 1.1;
        double rightX = X(placement.Columns[column + 1].X) - 1.1;
        double topLeft = Y(left[0]) - (Measures.Pitch / 2) + Measures.Inset;
        double topRight = Y(right[0]) - (Measures.Pitch / 2) + Measures.Inset;
        _labels.Add(Marks.KeyUp(leftX, topLeft));
        if (mating.Keys == Keying.Aligned)
            _labels.Add(Marks.KeyUp(rightX, topRight));
        else
            _labels.Add(Marks.KeyDown(rightX, topRight - KeyHeight));
        // Where the two do not lie side by side the word stands at the left one.
        string word = mating.Keys.Word();
        bool apart = folded || Math.Abs(topLeft - topRight) > 0.1;
        double middle = apart ? leftX + (placement.Gutters[column].Label / 2) : (leftX + rightX) / 2;
        double baseline = topLeft - 2.1;
        _labels.Add(new Label(middle, baseline, word, CapHeights.Strand, Anchor.Middle, Palette.Ink));
        if (mating.Through is { } adapter)
            _labels.Add(new Label(middle, baseline - Measures.LineOfText, _traced.Plant.Address(adapter), CapHeights.Strand, Anchor.Middle, Palette.Ink));
    }
}
