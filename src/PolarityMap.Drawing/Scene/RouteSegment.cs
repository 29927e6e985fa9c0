namespace PolarityMap.Drawing.Scene;

/// <summary>One piece of a route: a straight line, or a cubic with two control points.</summary>
public readonly record struct RouteSegment
{
    private RouteSegment(bool isCurve, Point control1, Point control2, Point end)
    {
        IsCurve = isCurve;
        Control1 = control1;
        Control2 = control2;
        End = end;
    }

    public bool IsCurve { get; }

    /// <summary>First control point; of a straight line, its end.</summary>
    public Point Control1 { get; }

    /// <summary>Second control point; of a straight line, its end.</summary>
    public Point Control2 { get; }

    public Point End { get; }

    public static RouteSegment Line(Point end) => new(false, end, end, end);

    public static RouteSegment Cubic(Point control1, Point control2, Point end) => new(true, control1, control2, end);

    /// <summary>The same piece further down.</summary>
    public RouteSegment MovedDown(double by) =>
        new(IsCurve, new Point(Control1.X, Control1.Y + by), new Point(Control2.X, Control2.Y + by), new Point(End.X, End.Y + by));

    /// <summary>Appends the points after <paramref name="from"/>, the segment's start.</summary>
    internal void AppendPoints(Point from, double tolerance, List<Point> points)
    {
        if (IsCurve)
        {
            // A chord of a cubic cut into n equal steps strays by at most 3/4 of the larger second difference
            // of its control points, divided by n squared.
            double bend = Math.Max(SecondDifference(from, Control1, Control2), SecondDifference(Control1, Control2, End));
            int steps = Math.Max(1, (int)Math.Ceiling(Math.Sqrt(0.75 * bend / tolerance)));
            for (int i = 1; i < steps; i++)
                points.Add(At(from, (double)i / steps));
        }

        points.Add(End);
    }

    private Point At(Point from, double t)
    {
        double u = 1 - t;
        double a = u * u * u;
        double b = 3 * u * u * t;
        double c = 3 * u * t * t;
        double d = t * t * t;
        return new Point(
            (a * from.X) + (b * Control1.X) + (c * Control2.X) + (d * End.X),
            (a * from.Y) + (b * Control1.Y) + (c * Control2.Y) + (d * End.Y));
    }

    private static double SecondDifference(Point a, Point b, Point c)
    {
        double x = a.X - (2 * b.X) + c.X;
        double y = a.Y - (2 * b.Y) + c.Y;
        return Math.Sqrt((x * x) + (y * y));
    }
}
