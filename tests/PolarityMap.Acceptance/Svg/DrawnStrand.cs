namespace PolarityMap.Acceptance.Svg;

internal readonly record struct Spot(double X, double Y)
{
    public double DistanceTo(Spot other) => Math.Sqrt(((X - other.X) * (X - other.X)) + ((Y - other.Y) * (Y - other.Y)));
}

/// <summary>One strand's group.</summary>
/// <param name="Number">The number in its id.</param>
/// <param name="Title">Its name for a reader that cannot see it.</param>
/// <param name="Routes">Its lines as corner points, one list for each band of a folded drawing.</param>
/// <param name="Strokes">The three strokes of each route in drawing order: path data, colour, width.</param>
internal sealed record DrawnStrand(
    int Number, string Title, IReadOnlyList<Spot[]> Routes, IReadOnlyList<(string Data, string Stroke, double Width)> Strokes)
{
    /// <summary>The least distance from a point to the strand's middle line.</summary>
    public double DistanceTo(Spot p) => Routes.Min(r => DistanceTo(r, p));

    private static double DistanceTo(Spot[] route, Spot p)
    {
        double best = double.MaxValue;
        for (int i = 0; i + 1 < route.Length; i++)
        {
            Spot a = route[i], b = route[i + 1];
            double dx = b.X - a.X, dy = b.Y - a.Y, square = (dx * dx) + (dy * dy);
            double t = square == 0 ? 0 : Math.Clamp((((p.X - a.X) * dx) + ((p.Y - a.Y) * dy)) / square, 0, 1);
            best = Math.Min(best, p.DistanceTo(new Spot(a.X + (t * dx), a.Y + (t * dy))));
        }

        return best;
    }
}
