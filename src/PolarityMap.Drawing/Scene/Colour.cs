namespace PolarityMap.Drawing.Scene;

/// <summary>An opaque sRGB colour, 8 bits a channel.</summary>
public readonly record struct Colour(byte R, byte G, byte B)
{
    /// <summary>The colour as <c>#RRGGBB</c>, upper case.</summary>
    public string Hex => string.Create(7, this, static (span, colour) => colour.WriteHex(span));

    /// <summary>Relative luminance, 0 for black to 1 for white (definition in WCAG 2.2).</summary>
    public double RelativeLuminance => (0.2126 * Linear(R)) + (0.7152 * Linear(G)) + (0.0722 * Linear(B));

    /// <summary>Reads <c>#RRGGBB</c>, either case.</summary>
    /// <exception cref="FormatException">The text has another form.</exception>
    public static Colour FromHex(string hex)
    {
        if (hex.Length != 7 || hex[0] != '#')
            throw new FormatException($"A colour is written #RRGGBB, not '{hex}'.");
        return new Colour(Pair(hex, 1), Pair(hex, 3), Pair(hex, 5));
    }

    /// <summary>Contrast ratio of two colours, 1 to 21, in either order (definition in WCAG 2.2).</summary>
    public static double Contrast(Colour a, Colour b)
    {
        double la = a.RelativeLuminance;
        double lb = b.RelativeLuminance;
        return (Math.Max(la, lb) + 0.05) / (Math.Min(la, lb) + 0.05);
    }

    /// <summary>Writes <c>#RRGGBB</c> into the first seven places of <paramref name="span"/>.</summary>
    internal void WriteHex(Span<char> span)
    {
        const string Digits = "0123456789ABCDEF";
        span[0] = '#';
        span[1] = Digits[R >> 4];
        span[2] = Digits[R & 15];
        span[3] = Digits[G >> 4];
        span[4] = Digits[G & 15];
        span[5] = Digits[B >> 4];
        span[6] = Digits[B & 15];
    }

    private static double Linear(byte channel)
    {
        double value = channel / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
    }

    private static byte Pair(string hex, int start) => (byte)((Digit(hex, start) << 4) | Digit(hex, start + 1));

    private static int Digit(string hex, int index) => char.IsAsciiHexDigit(hex[index])
        ? Convert.ToInt32(hex.Substring(index, 1), 16)
        : throw new FormatException($"A colour is written #RRGGBB, not '{hex}'.");
}
