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
        for (int i = 0; i < a.Pixels.Length; i++)
        {
            // Where the two are close to each other, each is close to the range around the other.
            if (Math.Abs(a.Pixels[i] - b.Pixels[i]) > Slack && (LiesOutside(a, b, i) || LiesOutside(b, a, i)))
                fails[i / 3] = true;
        }

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

    /// <summary>Whether a channel lies outside its range in the 3 by 3 pixels around the same place of the other picture.</summary>
    private static bool LiesOutside(Picture picture, Picture other, int index)
    {
        int x = index / 3 % other.Width, y = index / 3 / other.Width;
        int least = byte.MaxValue, most = byte.MinValue;
        for (int row = Math.Max(y - 1, 0); row <= Math.Min(y + 1, other.Height - 1); row++)
        {
            for (int column = Math.Max(x - 1, 0); column <= Math.Min(x + 1, other.Width - 1); column++)
            {
                byte channel = other.Pixels[(((row * other.Width) + column) * 3) + (index % 3)];
                least = Math.Min(least, channel);
                most = Math.Max(most, channel);
            }
        }

        return picture.Pixels[index] < least - Slack || picture.Pixels[index] > most + Slack;
    }
}
