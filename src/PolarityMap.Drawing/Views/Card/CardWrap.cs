using PolarityMap.Drawing.Fonts;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>Breaks text into lines that never leave the card.</summary>
internal static class CardWrap
{
    /// <summary>Words in lines no wider than given; a word wider than that is broken where the line ends.</summary>
    /// <param name="text">The text.</param>
    /// <param name="width">The widest that a line may be, mm.</param>
    /// <param name="capHeight">Height of its capitals, mm.</param>
    /// <param name="most">The most lines; what is beyond is left out, with an ellipsis.</param>
    public static List<string> Lines(string text, double width, double capHeight = CapHeights.Strand, int most = int.MaxValue)
    {
        if (text.Length > 0 && FontMetrics.WidthMm(text, capHeight) <= width)
            return [text];
        var lines = new List<string>();
        foreach (string line in SheetText.Wrapped(text, width, capHeight))
        {
            string rest = line;
            while (FontMetrics.WidthMm(rest, capHeight) > width)
            {
                int kept = Kept(rest, width, capHeight);
                lines.Add(rest[..kept]);
                rest = rest[kept..];
            }

            lines.Add(rest);
        }

        if (lines.Count <= most)
            return lines;
        string cut = lines[most - 1];
        lines.RemoveRange(most - 1, lines.Count - most + 1);
        while (cut.Length > 0 && FontMetrics.WidthMm(cut + "\u2026", capHeight) > width)
            cut = cut[..^1];
        lines.Add(cut.TrimEnd() + "\u2026");
        return lines;
    }

    /// <summary>How many characters from the start fit, at least one, and never half of a pair.</summary>
    private static int Kept(string text, double width, double capHeight)
    {
        double room = width * 1000 / FontMetrics.FontSizeFor(capHeight);
        int kept = 0;
        double used = 0;
        while (kept < text.Length && used + FontMetrics.Advance(text[kept]) <= room)
            used += FontMetrics.Advance(text[kept++]);
        if (kept == 0)
            kept = 1;
        return kept < text.Length && char.IsLowSurrogate(text[kept]) ? kept + 1 : kept;
    }
}
