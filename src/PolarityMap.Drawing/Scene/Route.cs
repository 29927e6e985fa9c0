namespace PolarityMap.Drawing.Scene;

/// <summary>
/// The way of a line across the sheet: a start and straight or curved segments. Immutable; each builder method
/// returns a longer route.
/// </summary>
public sealed class Route
{
    private readonly RouteSegment[] _segments;

    private Route(Point start, RouteSegment[] segments)
    {
        Start = start;
        _segments = segments;
    }

    public Point Start { get; }

    public IReadOnlyList<RouteSegment> Segments => _segments;

    /// <summary>The segments without a copy.</summary>
    internal ReadOnlySpan<RouteSegment> SegmentsSpan => _segments;

    /// <summary>Where the route ends so far.</summary>
    public Point End => _segments.Length == 0 ? Start : _segments[^1].End;

    /// <summary>A route from its start and its segments. Level pieces that run on in one direction become one, so that a long straight way is short to write.</summary>
    public static Route Of(Point start, ReadOnlySpan<RouteSegment> segments)
    {
        int count = 0;
        for (int i = 0; i < segments.Length; i++)
            count += RunsOn(start, segments, i) ? 0 : 1;
        var own = new RouteSegment[count];
        int next = 0;
        for (int i = 0; i < segments.Length; i++)
        {
            if (!RunsOn(start, segments, i + 1))
                own[next++] = segments[i];
        }

        return new Route(start, own);
    }

    /// <summary>A route that has only its start.</summary>
    public static Route From(double x, double y) => new(new Point(x, y), []);

    /// <summary>Goes straight to a point.</summary>
    public Route LineTo(double x, double y) => Then(RouteSegment.Line(new Point(x, y)));

    /// <summary>
    /// Goes to a point along a cubic that leaves and arrives horizontally: control points at
    /// <c>(x0 + k w, y0)</c> and <c>(x1 - k w, y1)</c>, w being the width. It never turns back in x or y; a larger
    /// <paramref name="k"/> is steeper in the middle, and at 1 it is upright there.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">k is not above 0 and at most 1.</exception>
    public Route CurveTo(double x, double y, double k = 0.5)
    {
        if (!(k > 0 && k <= 1))
            throw new ArgumentOutOfRangeException(nameof(k), k, "The curve's k lies above 0 and at most at 1.");
        Point from = End;
        double reach = k * (x - from.X);
        return Then(RouteSegment.Cubic(new Point(from.X + reach, from.Y), new Point(x - reach, y), new Point(x, y)));
    }

    /// <summary>The route as a chain of points no farther from it than <paramref name="tolerance"/> mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not a positive length.</exception>
    public IReadOnlyList<Point> Flatten(double tolerance)
    {
        if (!(tolerance > 0))
            throw new ArgumentOutOfRangeException(nameof(tolerance), tolerance, "The tolerance is a positive length.");
        var points = new List<Point>(1 + (_segments.Length * 8)) { Start };
        Point from = Start;
        foreach (RouteSegment segment in _segments)
        {
            segment.AppendPoints(from, tolerance, points);
            from = segment.End;
        }

        return points;
    }

    /// <summary>True when a segment is level and runs on in the direction of a level one before it.</summary>
    private static bool RunsOn(Point start, ReadOnlySpan<RouteSegment> segments, int at)
    {
        // Heights are sums, which may differ in the last places.
        const double rounding = 1e-6;
        if (at <= 0 || at >= segments.Length || segments[at].IsCurve || segments[at - 1].IsCurve)
            return false;
        Point from = at >= 2 ? segments[at - 2].End : start, corner = segments[at - 1].End, end = segments[at].End;
        return Math.Abs(corner.Y - from.Y) < rounding && Math.Abs(end.Y - corner.Y) < rounding && (corner.X - from.X) * (end.X - corner.X) >= 0;
    }

    private Route Then(RouteSegment segment) => new(Start, [.. _segments, segment]);
}
