using PolarityMap.Drawing.Fonts;

namespace PolarityMap.Drawing.Scene;

/// <summary>Fits one line of text into a width.</summary>
public static class TextFit
{
    private const string Ellipsis = "\u2026";

    /// <summary>
    /// The text and the height of its capitals, chosen so that it is at most <paramref name="widthMm"/> wide: first
    /// smaller in steps of 0.1 mm down to <paramref name="leastCapMm"/>, then cut and closed with an ellipsis.
    /// </summary>
    /// <returns>An empty text when not even the ellipsis fits.</returns>
    public static (string Text, double CapHeightMm) Fit(
        string text, double widthMm, double capHeightMm, double leastCapMm = CapHeights.Least)
    {
        double width = FontMetrics.WidthMm(text, capHeightMm);
        if (width <= widthMm)
            return (text, capHeightMm);
        double shrunk = Math.Floor(capHeightMm * widthMm / width * 10) / 10;
        return shrunk >= leastCapMm
            ? (text, shrunk)
            : (Cut(text, widthMm, leastCapMm), leastCapMm);
    }

    private static string Cut(string text, double widthMm, double capHeightMm)
    {
        if (FontMetrics.WidthMm(text, capHeightMm) <= widthMm)
            return text;
        double room = (widthMm * 1000 / FontMetrics.FontSizeFor(capHeightMm)) - FontMetrics.Advance(Ellipsis[0]);
        if (room < 0)
            return "";

        // The second half of a surrogate pair has no advance, so the loop never stops between the halves.
        int kept = 0;
        long used = 0;
        while (kept < text.Length && used + FontMetrics.Advance(text[kept]) <= room)
            used += FontMetrics.Advance(text[kept++]);
        return text.AsSpan(0, kept).TrimEnd().ToString() + Ellipsis;
    }
}
