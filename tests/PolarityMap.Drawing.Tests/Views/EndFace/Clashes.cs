using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Tests.Views.EndFace;

/// <summary>Words that touch something: each other, a line, the edge of a box, a circle or a mark. Told by the extents of the letters.</summary>
internal static class Clashes
{
    /// <summary>Descenders reach this far below the foot of the capitals, as a share of their height; measured generously.</summary>
    private const double Descender = 0.3;

    public static List<string> On(DrawingSheet sheet)
    {
        SceneElement[] all = [.. Faces.All(sheet)];
        (string Text, Area Extent)[] labels = [.. all.OfType<Label>().Where(l => l.Text.Length > 0).Select(l => (l.Text, ExtentOf(l)))];
        Stroke[] strokes = [.. all.SelectMany(Strokes)];
        Circle[] circles = [.. all.OfType<Circle>()];
        var found = new List<string>();
        for (int i = 0; i < labels.Length; i++)
        {
            (string text, Area extent) = labels[i];
            if (extent.X < 0 || extent.Y < 0 || extent.Right > sheet.WidthMm || extent.Bottom > sheet.HeightMm)
                found.Add($"'{text}' leaves the sheet");
            for (int j = i + 1; j < labels.Length; j++)
            {
                if (Meet(extent, labels[j].Extent))
                    found.Add($"'{text}' on '{labels[j].Text}'");
            }

            found.AddRange(strokes.Where(s => Hits(s, extent)).Select(s => $"'{text}' on a line at {s.X1:0.0},{s.Y1:0.0} {s.X2:0.0},{s.Y2:0.0}"));
            found.AddRange(circles.Where(c => Hits(c, extent)).Select(c => $"'{text}' on a circle at {c.CentreX:0.0},{c.CentreY:0.0}"));
        }

        return found;
    }

    private readonly record struct Stroke(double X1, double Y1, double X2, double Y2, double Half);

    private static Area ExtentOf(Label label)
    {
        Area area = label.Extent();
        return label.Text.IndexOfAny(['g', 'j', 'p', 'q', 'y', ',', ';', '(', ')', '/', '~']) < 0 ? area : area with { Height = area.Height * (1 + Descender) };
    }

    private static IEnumerable<Stroke> Strokes(SceneElement element)
    {
        switch (element)
        {
            case Line line:
                return [new Stroke(line.X1, line.Y1, line.X2, line.Y2, line.WidthMm / 2)];
            case Box { Stroke: not null } box:
                return Around([(box.X, box.Y), (box.X + box.Width, box.Y), (box.X + box.Width, box.Y + box.Height), (box.X, box.Y + box.Height)], box.StrokeWidthMm / 2);
            case Polygon polygon:
                return Around(polygon.Points, polygon.Stroke is null ? 0 : polygon.StrokeWidthMm / 2);
            default:
                return [];
        }
    }

    private static IEnumerable<Stroke> Around(IReadOnlyList<Point> points, double half)
    {
        for (int i = 0; i < points.Count; i++)
        {
            Point next = points[(i + 1) % points.Count];
            yield return new Stroke(points[i].X, points[i].Y, next.X, next.Y, half);
        }
    }

    private static bool Meet(Area a, Area b) => a.X < b.Right && b.X < a.Right && a.Y < b.Bottom && b.Y < a.Bottom;

    private static bool Hits(Circle circle, Area area)
    {
        double x = Math.Clamp(circle.CentreX, area.X, area.Right) - circle.CentreX;
        double y = Math.Clamp(circle.CentreY, area.Y, area.Bottom) - circle.CentreY;
        double reach = circle.Radius + (circle.Stroke is null ? 0 : circle.StrokeWidthMm / 2);
        return Math.Sqrt((x * x) + (y * y)) < reach;
    }

    /// <summary>Clips the stroke's middle line to the area grown by half its width (Liang and Barsky).</summary>
    private static bool Hits(Stroke s, Area area)
    {
        double from = 0, to = 1;
        double dx = s.X2 - s.X1, dy = s.Y2 - s.Y1;
        foreach ((double p, double q) in new[]
        {
            (-dx, s.X1 - (area.X - s.Half)), (dx, area.Right + s.Half - s.X1), (-dy, s.Y1 - (area.Y - s.Half)), (dy, area.Bottom + s.Half - s.Y1),
        })
        {
            if (p == 0)
            {
                if (q <= 0)
                    return false;
                continue;
            }

            double r = q / p;
            if (p < 0)
                from = Math.Max(from, r);
            else
                to = Math.Min(to, r);
            if (from >= to)
                return false;
        }

        return true;
    }
}
