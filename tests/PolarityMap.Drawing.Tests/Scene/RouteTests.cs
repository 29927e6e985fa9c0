using PolarityMap.Drawing.Scene;
using Xunit;

namespace PolarityMap.Drawing.Tests.Scene;

public sealed class RouteTests
{
    [Theory]
    [InlineData(60, 40, 0.5)]
    [InlineData(60, -40, 1)]
    [InlineData(-30, 12, 0.25)]
    public void A_curve_leaves_and_arrives_horizontally(double dx, double dy, double k)
    {
        var points = Route.From(10, 20).CurveTo(10 + dx, 20 + dy, k).Flatten(1e-6);
        Assert.InRange(Slope(points[0], points[1]), 0, 0.02);
        Assert.InRange(Slope(points[^2], points[^1]), 0, 0.02);
        Assert.Equal(new Point(10, 20), points[0]);
        Assert.Equal(new Point(10 + dx, 20 + dy), points[^1]);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(1)]
    public void A_curve_never_turns_back_in_x_or_y(double k)
    {
        var points = Route.From(0, 0).CurveTo(60, 55, k).Flatten(0.001);
        for (int i = 1; i < points.Count; i++)
        {
            Assert.True(points[i].X >= points[i - 1].X - 1e-9);
            Assert.True(points[i].Y >= points[i - 1].Y - 1e-9);
        }
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(0.05)]
    [InlineData(0.005)]
    public void Flattening_stays_within_its_tolerance(double tolerance)
    {
        // Points of the same cubic by repeated halving (de Casteljau), an independent evaluation.
        var chain = Route.From(0, 0).CurveTo(60, 55, 0.8).Flatten(tolerance);
        for (int i = 0; i <= 400; i++)
        {
            Point p = Casteljau([(0, 0), (48, 0), (12, 55), (60, 55)], i / 400.0);
            double nearest = Enumerable.Range(1, chain.Count - 1).Min(j => Distance(p, chain[j - 1], chain[j]));
            Assert.True(nearest <= tolerance, $"{nearest} at {i}");
        }
    }

    [Fact]
    public void Flattening_is_not_wasteful() =>
        Assert.InRange(Route.From(0, 0).CurveTo(60, 55).Flatten(0.1).Count, 4, 40);

    [Fact]
    public void Straight_pieces_flatten_to_their_ends()
    {
        var points = Route.From(1, 2).LineTo(3, 4).LineTo(5, 4).Flatten(0.1);
        Assert.Equal([new Point(1, 2), new Point(3, 4), new Point(5, 4)], points);
    }

    [Fact]
    public void Building_on_does_not_change_the_shorter_route()
    {
        Route stem = Route.From(0, 0).LineTo(10, 0);
        Route left = stem.CurveTo(20, 5);
        Route right = stem.LineTo(20, -5);
        Assert.Single(stem.Segments);
        Assert.Equal(new Point(20, 5), left.End);
        Assert.Equal(new Point(20, -5), right.End);
        Assert.Equal(new Point(15, 0), left.Segments[1].Control1);
        Assert.Equal(new Point(15, 5), left.Segments[1].Control2);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-0.5)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void A_curve_that_would_turn_back_is_refused(double k) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Route.From(0, 0).CurveTo(10, 10, k));

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void A_tolerance_that_is_no_length_is_refused(double tolerance) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Route.From(0, 0).LineTo(1, 1).Flatten(tolerance));

    private static double Slope(Point a, Point b) => Math.Abs((b.Y - a.Y) / (b.X - a.X));

    private static Point Casteljau(Point[] p, double t)
    {
        while (p.Length > 1)
        {
            p = [.. Enumerable.Range(0, p.Length - 1).Select(i => new Point(
                p[i].X + ((p[i + 1].X - p[i].X) * t), p[i].Y + ((p[i + 1].Y - p[i].Y) * t)))];
        }

        return p[0];
    }

    private static double Distance(Point p, Point a, Point b)
    {
        double dx = b.X - a.X;
        double dy = b.Y - a.Y;
        double t = Math.Clamp((((p.X - a.X) * dx) + ((p.Y - a.Y) * dy)) / ((dx * dx) + (dy * dy)), 0, 1);
        return Math.Sqrt(Math.Pow(p.X - a.X - (t * dx), 2) + Math.Pow(p.Y - a.Y - (t * dy), 2));
    }
}
