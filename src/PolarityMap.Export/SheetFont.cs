using System.Text;
using PolarityMap.Drawing.Fonts;
using PolarityMap.Drawing.Scene;
using SkiaSharp;

namespace PolarityMap.Export;

/// <summary>The embedded font, and text made ready to be set in it: it is the only font there is.</summary>
internal sealed class SheetFont : IDisposable
{
    /// <summary>Stands for a character without a glyph, which would else leave nothing at all.</summary>
    public const char Missing = '\u25A1';

    /// <summary>The size in which one unit of the canvas is one unit of the font's tables.</summary>
    public const float UnitsPerEm = 1000;

    private readonly SKTypeface _typeface;

    public SheetFont()
    {
        using SKData data = SKData.CreateCopy(EmbeddedFont.Bytes());
        _typeface = SKTypeface.FromData(data) ?? throw new InvalidOperationException("The embedded font cannot be read.");

        // Letters keep the widths of the font's own tables at every size, as the layout reckons with them.
        Font = new SKFont(_typeface, UnitsPerEm)
        {
            Edging = SKFontEdging.Antialias,
            Hinting = SKFontHinting.None,
            Subpixel = true,
            LinearMetrics = true,
        };
    }

    /// <summary>The font to set <see cref="Ready"/> text with, in its size of <see cref="UnitsPerEm"/>.</summary>
    public SKFont Font { get; }

    /// <summary>
    /// The text as SVG would show it: cleaned, spaces run together and trimmed, without characters that are never seen. Each
    /// character that the font lacks is one <see cref="Missing"/>.
    /// </summary>
    public static string Ready(string text)
    {
        text = CleanText.Of(text);
        if (FontMetrics.Contains(text) && !text.Contains("  ", StringComparison.Ordinal) && !text.Contains('\u00AD') && text.AsSpan().Trim(' ').Length == text.Length)
            return text;
        var ready = new StringBuilder(text.Length);
        foreach (char c in text)
        {
            // The first half of a surrogate pair stands for both.
            if (char.IsLowSurrogate(c) || IsUnseen(c) || (c == ' ' && (ready.Length == 0 || ready[^1] == ' ')))
                continue;
            ready.Append(FontMetrics.Has(c) ? c : Missing);
        }

        return ready.ToString().TrimEnd(' ');
    }

    /// <summary>Where each character of a <see cref="Ready"/> text starts, in units of the font, and how wide all are.</summary>
    public static float[] Places(string ready, out float width)
    {
        float[] places = new float[ready.Length];
        int place = 0;
        for (int i = 0; i < places.Length; i++)
        {
            places[i] = place;
            place += FontMetrics.Advance(ready[i]);
        }

        width = place;
        return places;
    }

    public void Dispose()
    {
        Font.Dispose();
        _typeface.Dispose();
    }

    /// <summary>Soft hyphens, joiners, byte order marks and variation selectors of the basic plane (Unicode: default ignorable).</summary>
    private static bool IsUnseen(char c) =>
        c is '\u00AD' or (>= '\u200B' and <= '\u200D') or (>= '\u2060' and <= '\u2064') or (>= '\uFE00' and <= '\uFE0F') or '\uFEFF';
}
