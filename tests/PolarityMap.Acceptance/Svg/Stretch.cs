namespace PolarityMap.Acceptance.Svg;

/// <summary>A strand's way between two boxes of parts.</summary>
/// <param name="Points">Its corner points.</param>
/// <param name="IsOpenEnd">True for the short stub at an end where nothing is plugged in.</param>
internal sealed record Stretch(IReadOnlyList<Spot> Points, bool IsOpenEnd)
{
    // A stub beyond an open end is shorter than any gutter that holds a label.
    private const double Stub = 5;

    public Spot From => Points[0];

    public Spot To => Points[^1];

    /// <summary>What is left of a strand when its pieces inside boxes are taken away.</summary>
    public static IEnumerable<Stretch> OutsideBoxes(DrawnStrand strand, IReadOnlyList<Rect> boxes)
    {
        foreach (Spot[] whole in strand.Routes)
        {
            Spot[] route = Fine(whole);
            var points = new List<Spot>();
            int first = 0;
            for (int i = 0; i + 1 < route.Length; i++)
            {
                if (Inside(route[i], route[i + 1], boxes))
                {
                    if (points.Count > 1)
                        yield return Make(points, first == 0);
                    points = [];
                    continue;
                }

                if (points.Count == 0)
                {
                    points.Add(route[i]);
                    first = i;
                }

                points.Add(route[i + 1]);
            }

            if (points.Count > 1)
                yield return Make(points, true);
        }
    }

    /// <summary>The how-manieth box or gutter of its strand a spot on a piece lies in; one straight piece may run through several.</summary>
    public static (int Strand, int Route, int Index) IndexAt(Piece piece, Spot at, IReadOnlyList<Rect> boxes)
    {
        Spot[] points = Fine([.. piece.Strand.Routes[piece.Route][..(piece.Number + 1)], at]);
        int index = 0;
        for (int i = 1; i + 1 < points.Length; i++)
        {
            if (Inside(points[i - 1], points[i], boxes) != Inside(points[i], points[i + 1], boxes))
                index++;
        }

        return (piece.Strand.Number, piece.Route, index);
    }

    public double DistanceTo(Spot p) => new DrawnStrand(0, "", [[.. Points]], []).DistanceTo(p);

    private static Stretch Make(List<Spot> points, bool atEnd) => new(points, atEnd && Math.Abs(points[^1].X - points[0].X) < Stub);

    /// <summary>The same line with a corner at least every half millimetre, so that boxes cut it nearly where they end.</summary>
    private static Spot[] Fine(Spot[] route)
    {
        var points = new List<Spot> { route[0] };
        for (int i = 0; i + 1 < route.Length; i++)
        {
            Spot a = route[i], b = route[i + 1];
            int steps = (int)Math.Ceiling(a.DistanceTo(b) / 0.5);
            for (int k = 1; k <= steps; k++)
                points.Add(new Spot(a.X + ((b.X - a.X) * k / steps), a.Y + ((b.Y - a.Y) * k / steps)));
        }

        return [.. points];
    }

    private static bool Inside(Spot a, Spot b, IReadOnlyList<Rect> boxes)
    {
        double x = (a.X + b.X) / 2, y = (a.Y + b.Y) / 2;
        foreach (Rect box in boxes)
        {
            if (box.Contains(x, y))
                return true;
        }

        return false;
    }
}
