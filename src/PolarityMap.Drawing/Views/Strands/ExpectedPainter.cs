using System.Runtime.InteropServices;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>Draws where faulty strands should go, beside where they go.</summary>
internal sealed class ExpectedPainter(Layout layout, Placement placement, CrossingLeads leads, double originX, int page, PaintScope scope)
{
    /// <summary>Paper at each side of a dashed line, so that it shows on the wide strands that it leaves, crosses and joins.</summary>
    private const double Rim = 0.2;

    private const double DotRadius = 0.9;

    /// <summary>How far above its row an expected way runs, so that it lies beside the strand that is there and never on it.</summary>
    private const double Beside = 2;

    /// <summary>From a strand to the dashed line beside it.</summary>
    private const double Step = 1.5;

    private readonly List<SceneElement> _lines = [];
    private readonly List<SceneElement> _ends = [];

    /// <summary>The dashed lines with a dot at each end, once painted.</summary>
    public IReadOnlyList<SceneElement> Lines => [.. _lines, .. _ends];

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

        for (int i = 0; i < expected.Ways.Rows.Count; i++)
        {
            (Row from, Row to) = expected.Ways.Rows[i];
            var start = new Point(x0, leads.Y(from));
            var end = new Point(x1, leads.Y(to));
            var segments = new List<RouteSegment>();
            leads.Cross(expected.Ways, i, x0 + Step, x1 - Step, segments, whole: true);
            for (int s = 0; s < segments.Count; s++)
                segments[s] = segments[s].MovedDown(-Beside);
            segments.Add(RouteSegment.Line(new Point(x1 - Step, end.Y - Beside)));
            segments.Add(RouteSegment.Line(end));
            var route = Route.Of(start, CollectionsMarshal.AsSpan(segments));
            _lines.Add(new Curve(route, Palette.Paper, LineWidths.Outline + (2 * Rim)));
            _lines.Add(new Curve(route, Palette.Ink, LineWidths.Outline, DashKind.ShortDashed));
            _ends.Add(Dot(start));
            _ends.Add(Dot(end));
        }
    }

    /// <summary>A dot where an expected way leaves its strand, or where it should arrive.</summary>
    internal static Circle Dot(Point at) => new(at.X, at.Y, DotRadius, Palette.Paper, Rim, Palette.Ink);
}
