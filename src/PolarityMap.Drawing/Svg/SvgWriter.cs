using PolarityMap.Drawing.Fonts;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Svg;

/// <summary>
/// Prints a sheet as SVG in the subset that word processors, slides, vector editors and renderers draw alike:
/// presentation attributes, hex colours, numeric coordinates, one <c>text</c> element a line. The user unit is the
/// millimetre. The same sheet always gives the same text.
/// </summary>
public static class SvgWriter
{
    /// <summary>The families to look for, quoted because one of them has a digit.</summary>
    public const string FontFamilies = "'" + FontMetrics.Family + "', 'Source Sans 3', sans-serif";

    /// <summary>The sheet as one <c>svg</c> element with a final line break, without XML declaration.</summary>
    /// <exception cref="ArgumentException">The id prefix does not have the form of an id.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is not a finite number.</exception>
    public static string Write(DrawingSheet sheet, SvgOptions options) => Print(sheet, options, NewText(options)).ToString();

    /// <summary>The same in UTF-8, as a file holds it.</summary>
    /// <inheritdoc cref="Write"/>
    public static ReadOnlyMemory<byte> WriteUtf8(DrawingSheet sheet, SvgOptions options) => Print(sheet, options, NewText(options)).Written;

    /// <summary>The same into a buffer that serves sheet after sheet, and is replaced by a larger one where it is too short.</summary>
    /// <returns>How many bytes of the buffer are the sheet.</returns>
    /// <inheritdoc cref="Write"/>
    public static int WriteUtf8(DrawingSheet sheet, SvgOptions options, ref byte[] buffer)
    {
        Utf8Text output = Print(sheet, options, buffer.Length > 0 ? new Utf8Text(buffer) : NewText(options));
        buffer = output.Bytes;
        return output.Length;
    }

    private static Utf8Text NewText(SvgOptions options) => new(options.EmbedFont ? 1 << 18 : 1 << 16);

    private static Utf8Text Print(DrawingSheet sheet, SvgOptions options, Utf8Text output)
    {
        if (options.IdPrefix.Length > 0 && !SceneId.IsValid(options.IdPrefix))
            throw new ArgumentException($"'{options.IdPrefix}' cannot begin an id.", nameof(options));
        Open(output, sheet, options);
        var elements = new SvgElements(output, options.IdPrefix);
        foreach (SceneGroup layer in sheet.Layers)
            elements.Append(layer);
        return output.Append("</g>\n</svg>\n"u8);
    }

    private static void Open(Utf8Text output, DrawingSheet sheet, SvgOptions options)
    {
        bool described = !string.IsNullOrWhiteSpace(sheet.Description);
        output.Append("<svg xmlns=\"http://www.w3.org/2000/svg\""u8);
        Length(output, " width=\""u8, sheet.WidthMm, "mm\""u8);
        Length(output, " height=\""u8, sheet.HeightMm, "mm\""u8);
        Length(output, " viewBox=\"0 0 "u8, sheet.WidthMm, ""u8);
        Length(output, " "u8, sheet.HeightMm, "\""u8);
        output.Append(" role=\"graphics-document\" aria-labelledby=\""u8).Append(options.IdPrefix).Append("title"u8);
        if (described)
            output.Append((byte)' ').Append(options.IdPrefix).Append("desc"u8);
        output.Append("\">\n<title id=\""u8).Append(options.IdPrefix).Append("title\">"u8);
        SvgText.Append(output, sheet.Title);
        output.Append("</title>\n"u8);
        if (described)
        {
            output.Append("<desc id=\""u8).Append(options.IdPrefix).Append("desc\">"u8);
            SvgText.Append(output, sheet.Description);
            output.Append("</desc>\n"u8);
        }

        if (options.EmbedFont)
        {
            output.Append("<style>@font-face{font-family:'"u8).Append(FontMetrics.Family)
                .Append("';src:url(data:font/ttf;base64,"u8).Append(EmbeddedFont.Base64)
                .Append(") format('truetype')}</style>\n"u8);
        }

        Length(output, "<rect x=\"0\" y=\"0\" width=\""u8, sheet.WidthMm, "\""u8);
        Length(output, " height=\""u8, sheet.HeightMm, "\" fill=\"#FFFFFF\"/>\n"u8);

        // Inherited by everything below, which keeps the file small and loads faster than repeating it.
        output.Append("<g font-family=\""u8).Append(FontFamilies).Append((byte)'"');
        Length(output, " font-size=\""u8, FontMetrics.FontSizeFor(SvgElements.InheritedCapMm), "\" fill=\"none\">\n"u8);
    }

    private static void Length(Utf8Text output, ReadOnlySpan<byte> before, double value, ReadOnlySpan<byte> after)
    {
        output.Append(before);
        SvgNumber.Append(output, value);
        output.Append(after);
    }
}
