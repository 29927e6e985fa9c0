namespace PolarityMap.Acceptance.Svg;

/// <summary>One straight piece of a strand: the band it is in, and its number along the band.</summary>
internal readonly record struct Piece(DrawnStrand Strand, int Route, int Number)
{
    public Spot From => Strand.Routes[Route][Number];

    public Spot To => Strand.Routes[Route][Number + 1];
}

/// <summary>A place where pieces of two strands cross, the strand with the lower number first; the acute angle is in degrees.</summary>
internal sealed record Crossing(Piece A, Piece B, Spot At, double Angle);

/// <summary>Plane geometry on flattened strands.</summary>
internal static class Geometry
{
    private const double Tile = 5;

    // A crossing at a corner of both flattened lines can be met by two pairs of pieces.
    private const double SamePlace = 0.05;

    /// <summary>True when any piece of the route passes through the rectangle.</summary>
    public static bool Enters(Spot[] route, Rect rect)
    {
        for (int i = 0; i + 1 < route.Length; i++)
        {
            if (Near(route[i], route[i + 1], rect) && Enters(route[i], route[i + 1], rect))
                return true;
        }

        return false;
    }

    /// <summary>All crossings of different strands on a sheet.</summary>
    public static List<Crossing> Crossings(IReadOnlyList<DrawnStrand> strands)
    {
        var tiles = new Dictionary<(int, int), List<Piece>>();
        foreach (Piece piece in strands.OrderBy(s => s.Number).SelectMany(Pieces))
        {
            foreach ((int, int) tile in Tiles(piece.From, piece.To))
            {
                if (!tiles.TryGetValue(tile, out List<Piece>? list))
                    tiles[tile] = list = [];
                list.Add(piece);
            }
        }

        var found = new Dictionary<(int, int), List<Crossing>>();
        foreach (List<Piece> list in tiles.Values)
        {
            for (int i = 0; i < list.Count; i++)
            {
                for (int j = i + 1; j < list.Count; j++)
                {
                    if (list[i].Strand == list[j].Strand || Cross(list[i], list[j]) is not { } crossing)
                        continue;
                    (int, int) pair = (list[i].Strand.Number, list[j].Strand.Number);
                    if (!found.TryGetValue(pair, out List<Crossing>? those))
                        found[pair] = those = [];
                    if (!those.Exists(c => c.At.DistanceTo(crossing.At) < SamePlace))
                        those.Add(crossing);
                }
            }
        }

        return [.. found.Values.SelectMany(c => c)];
    }

    private static IEnumerable<Piece> Pieces(DrawnStrand strand)
    {
        for (int r = 0; r < strand.Routes.Count; r++)
        {
            for (int i = 0; i + 1 < strand.Routes[r].Length; i++)
                yield return new Piece(strand, r, i);
        }
    }

    private static Crossing? Cross(Piece a, Piece b)
    {
        double ax = a.To.X - a.From.X, ay = a.To.Y - a.From.Y, bx = b.To.X - b.From.X, by = b.To.Y - b.From.Y;
        double cross = (ax * by) - (ay * bx);
        if (Math.Abs(cross) < 1e-9)
            return null;
        double t = (((b.From.X - a.From.X) * by) - ((b.From.Y - a.From.Y) * bx)) / cross;
        double u = (((b.From.X - a.From.X) * ay) - ((b.From.Y - a.From.Y) * ax)) / cross;

        // A corner of the flattened line belongs to the piece that begins there.
        if (t is < 0 or >= 1 || u is < 0 or >= 1)
            return null;
        double sine = Math.Abs(cross) / Math.Sqrt(((ax * ax) + (ay * ay)) * ((bx * bx) + (by * by)));
        return new Crossing(a, b, new Spot(a.From.X + (t * ax), a.From.Y + (t * ay)), Math.Asin(Math.Min(1, sine)) * 180 / Math.PI);
    }

    private static IEnumerable<(int, int)> Tiles(Spot a, Spot b)
    {
        for (int x = (int)(Math.Min(a.X, b.X) / Tile); x <= (int)(Math.Max(a.X, b.X) / Tile); x++)
        {
            for (int y = (int)(Math.Min(a.Y, b.Y) / Tile); y <= (int)(Math.Max(a.Y, b.Y) / Tile); y++)
                yield return (x, y);
        }
    }

    private static bool Near(Spot a, Spot b, Rect rect) =>
        (a.X >= rect.X || b.X >= rect.X) && (a.X <= rect.Right || b.X <= rect.Right)
        && (a.Y >= rect.Y || b.Y >= rect.Y) && (a.Y <= rect.Bottom || b.Y <= rect.Bottom);

    /// <summary>Clips a piece against the rectangle's four sides (the method of Liang and Barsky).</summary>
    private static bool Enters(Spot a, Spot b, Rect rect)
    {
        double from = 0, to = 1, dx = b.X - a.X, dy = b.Y - a.Y;
        return Clip(-dx, a.X - rect.X, ref from, ref to) && Clip(dx, rect.Right - a.X, ref from, ref to)
            && Clip(-dy, a.Y - rect.Y, ref from, ref to) && Clip(dy, rect.Bottom - a.Y, ref from, ref to) && from < to;
    }

    private static bool Clip(double p, double q, ref double from, ref double to)
    {
        if (p == 0)
            return q > 0;
        double r = q / p;
        if (p < 0)
            from = Math.Max(from, r);
        else
            to = Math.Min(to, r);
        return from < to;
    }
}
