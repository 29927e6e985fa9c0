namespace PolarityMap.Drawing.Fonts;

/// <summary>
/// Widths of text set in PolarityMap Sans, from the advances of its glyphs.
/// </summary>
/// <remarks>
/// Lettering is specified by the height of a capital, as in ISO 3098, never by font size. Kerning is left out:
/// most pairs draw closer, so a width from here errs on the wide side for ordinary words.
/// </remarks>
public static class FontMetrics
{
    /// <summary>Family name as written in the font's own name table.</summary>
    public const string Family = "PolarityMap Sans";

    /// <summary>Height of a capital as a share of the font size.</summary>
    public const double CapHeightPerEm = FontAdvances.CapHeight / 1000.0;

    /// <summary>Font size in mm that prints capitals <paramref name="capHeightMm"/> high.</summary>
    public static double FontSizeFor(double capHeightMm) => capHeightMm / CapHeightPerEm;

    /// <summary>
    /// Advance of one UTF-16 unit in thousandths of an em. A character outside the font counts as a figure; of a
    /// surrogate pair only the first half counts, so that the pair is one character.
    /// </summary>
    public static int Advance(char c)
    {
        if (char.IsLowSurrogate(c))
            return 0;
        int advance = FontAdvances.Of(c);
        return advance == 0 ? FontAdvances.Figure : advance;
    }

    /// <summary>Advances of a text in thousandths of an em.</summary>
    public static long Advances(ReadOnlySpan<char> text)
    {
        long thousandths = 0;
        foreach (char c in text)
            thousandths += Advance(c);
        return thousandths;
    }

    /// <summary>True when the font has a glyph for the character.</summary>
    public static bool Has(char c) => FontAdvances.Of(c) != 0;

    /// <summary>Width in mm of one line of text whose capitals are <paramref name="capHeightMm"/> high.</summary>
    public static double WidthMm(ReadOnlySpan<char> text, double capHeightMm) => WidthMm(Advances(text), capHeightMm);

    /// <summary>Width in mm of advances in thousandths of an em.</summary>
    public static double WidthMm(long advances, double capHeightMm) => advances * FontSizeFor(capHeightMm) / 1000.0;

    /// <summary>True when the font has a glyph for every character of the text.</summary>
    public static bool Contains(string text)
    {
        foreach (char c in text)
        {
            if (!Has(c))
                return false;
        }

        return true;
    }
}
