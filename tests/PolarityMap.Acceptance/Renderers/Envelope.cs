namespace PolarityMap.Acceptance.Renderers;

/// <summary>How far two pictures disagree.</summary>
/// <param name="Share">Failing pixels as a share of all.</param>
/// <param name="WorstTile">Failing pixels as a share of the worst tile of 16 by 16.</param>
internal readonly record struct Disagreement(double Share, double WorstTile);

/// <summary>
/// Compares two pictures of the same drawing by different renderers, which round edges differently. A pixel fails when one
/// of its channels lies outside the range of the 3 by 3 pixels around it in the other picture by more than a slack; both
/// ways. A line that is missing, moved or of another colour fails; another rounding of the same edge does not.
/// </summary>
internal static class Envelope
{
    public const int Slack = 64;

    private const int Tile = 16;

    public static Disagreement Compare(Picture a, Picture b)
    {
        if (a.Width != b.Width || a.Height != b.Height)
            throw new ArgumentException($"{a.Width} x {a.Height} and {b.Width} x {b.Height} pixels cannot be compared.");
        bool[] fails = new bool[a.Width * a.Height];
        Mark(a, b, fails);
        Mark(b, a, fails);
        int columns = (a.Width + Tile - 1) / Tile;
        int[] tiles = new int[columns * ((a.Height + Tile - 1) / Tile)];
        int count = 0;
        for (int i = 0; i < fails.Length; i++)
        {
            if (!fails[i])
                continue;
            count++;
            tiles[(i / a.Width / Tile * columns) + (i % a.Width / Tile)]++;
        }

        return new Disagreement((double)count / fails.Length, (double)tiles.Max() / (Tile * Tile));
    }

    private static void Mark(Picture picture, Picture other, bool[] fails)
    {
        (byte[] least, byte[] most) = Ranges(other);
        byte[] pixels = picture.Pixels;
        for (int i = 0; i < pixels.Length; i++)
        {
            if (pixels[i] < least[i] - Slack || pixels[i] > most[i] + Slack)
                fails[i / 3] = true;
        }
    }

    /// <summary>The least and the most of each channel in the 3 by 3 pixels around, first along rows, then along columns.</summary>
    private static (byte[] Least, byte[] Most) Ranges(Picture picture)
    {
        byte[] least = Spread(Spread(picture.Pixels, picture, 3, Math.Min), picture, picture.Width * 3, Math.Min);
        byte[] most = Spread(Spread(picture.Pixels, picture, 3, Math.Max), picture, picture.Width * 3, Math.Max);
        return (least, most);
    }

    private static byte[] Spread(byte[] from, Picture picture, int step, Func<byte, byte, byte> choose)
    {
        byte[] to = new byte[from.Length];
        int row = picture.Width * 3;
        for (int i = 0; i < from.Length; i++)
        {
            byte chosen = from[i];
            int before = i - step, after = i + step;
            if (before >= 0 && (step == row || before / row == i / row))
                chosen = choose(chosen, from[before]);
            if (after < from.Length && (step == row || after / row == i / row))
                chosen = choose(chosen, from[after]);
            to[i] = chosen;
        }

        return to;
    }
}
