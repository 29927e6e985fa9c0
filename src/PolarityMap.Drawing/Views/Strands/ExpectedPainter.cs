using System.Runtime.InteropServices;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>Draws where faulty strands should go, beside where they go.</summary>
internal sealed class ExpectedPainter(Layout layout, Placement placement, CrossingLeads leads, double originX, int page, PaintScope scope)
{
    private readonly List<SceneElement> _lines = [];

    /// <summary>The dashed lines, once painted.</summary>
    public IReadOnlyList<SceneElement> Lines => _lines;

    public void Paint()
    {
        foreach (Expected expected in layout.Expected)
            Paint(expected);
    }

    private double X(double x) => originX + x;

    private bool IsHere(int column) => placement.Columns[column].Page == page;

    /// <summary>The expected ways, dashed, from the rows of the faulty strands to the rows that lead where they should come out.</summary>
    private void Paint(Expected expected)
    {
        if (expected.Column >= scope.Through || !IsHere(expected.Column) || (expected.Box is null && placement.IsFoldAfter(expected.Column)))
            return;
        ColumnPlace column = placement.Columns[expected.Column];
        double x0, x1;
        if (expected.Box is not null)
        {
            (x0, x1) = (X(column.InsideFrom), X(column.InsideTo));
        }
        else
        {
            GutterPlace gutter = placement.Gutters[expected.Column];
            x0 = X(column.Right + gutter.ArrowLeft + gutter.Label);
            x1 = X(placement.Columns[expected.Column + 1].X - gutter.ArrowRight - gutter.Label);
        }

        Crossing actual = expected.Box?.Inside ?? layout.Between[expected.Column];
        IReadOnlyList<Point>[] taken = [.. actual.Rows.Select((r, i) => Led(actual, i, x0, x1, whole: false))];
        for (int i = 0; i < expected.Ways.Rows.Count; i++)
        {
            (Row from, Row to) = expected.Ways.Rows[i];
            int own = actual.IndexOf(from.Strand), tail = actual.IndexOf(to.Strand);
            foreach (Route route in Apart(Led(expected.Ways, i, x0, x1, whole: true), taken[own], taken[tail]))
            {
                _lines.Add(new Curve(route, Palette.Paper, LineWidths.Outline + 0.6));
                _lines.Add(new Curve(route, Palette.Ink, LineWidths.Outline, DashKind.ShortDashed));
            }
        }
    }

    /// <summary>The points of a strand through a crossing.</summary>
    private IReadOnlyList<Point> Led(Crossing crossing, int index, double x0, double x1, bool whole)
    {
        const double tolerance = 0.02;
        (Row from, Row to) = crossing.Rows[index];
        var segments = new List<RouteSegment>();
        leads.Cross(crossing, index, x0, x1, segments, whole);
        segments.Add(RouteSegment.Line(new Point(x1, leads.Y(to))));
        return Route.Of(new Point(x0, leads.Y(from)), CollectionsMarshal.AsSpan(segments)).Flatten(tolerance);
    }

    /// <summary>The stretches of an expected way that do not lie on the strand itself or on the one it should join.</summary>
    private static IEnumerable<Route> Apart(IReadOnlyList<Point> way, IReadOnlyList<Point> own, IReadOnlyList<Point> tail)
    {
        const double clear = (StrandPath.PlainHaloMm + StrandPath.EmphasisMm) / 2;
        const double step = 0.25;
        Route? route = null;
        for (double x = way[0].X; x <= way[^1].X; x += step)
        {
            double y = HeightAt(way, x);
            if (Math.Abs(y - HeightAt(own, x)) > clear && Math.Abs(y - HeightAt(tail, x)) > clear)
            {
                route = route is null ? Route.From(x, y) : route.LineTo(x, y);
                continue;
            }

            if (route is { Segments.Count: > 0 })
                yield return route;
            route = null;
        }

        if (route is { Segments.Count: > 0 })
            yield return route;
    }

    /// <summary>The height of a line that runs from left to right.</summary>
    private static double HeightAt(IReadOnlyList<Point> line, double x)
    {
        int i = 1;
        while (i < line.Count - 1 && line[i].X < x)
            i++;
        double width = line[i].X - line[i - 1].X;
        double share = width <= 0 ? 1 : Math.Clamp((x - line[i - 1].X) / width, 0, 1);
        return (line[i - 1].Y * (1 - share)) + (line[i].Y * share);
    }
}
