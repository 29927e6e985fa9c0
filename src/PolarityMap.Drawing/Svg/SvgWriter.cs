using System.Text;
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
    public static string Write(DrawingSheet sheet, SvgOptions options)
    {
        if (options.IdPrefix.Length > 0 && !SceneId.IsValid(options.IdPrefix))
            throw new ArgumentException($"'{options.IdPrefix}' cannot begin an id.", nameof(options));
        var output = new StringBuilder(options.EmbedFont ? 1 << 18 : 1 << 16);
        Open(output, sheet, options);
        var elements = new SvgElements(output, options.IdPrefix);
        foreach (SceneGroup layer in sheet.Layers)
            elements.Append(layer);
        return output.Append("</g>\n</svg>\n").ToString();
    }

    private static void Open(StringBuilder output, DrawingSheet sheet, SvgOptions options)
    {
        bool described = !string.IsNullOrWhiteSpace(sheet.Description);
        output.Append("<svg xmlns=\"http://www.w3.org/2000/svg\"");
        Length(output, " width=\"", sheet.WidthMm, "mm\"");
        Length(output, " height=\"", sheet.HeightMm, "mm\"");
        Length(output, " viewBox=\"0 0 ", sheet.WidthMm, "");
        Length(output, " ", sheet.HeightMm, "\"");
        output.Append(" role=\"graphics-document\" aria-labelledby=\"").Append(options.IdPrefix).Append("title");
        if (described)
            output.Append(' ').Append(options.IdPrefix).Append("desc");
        output.Append("\">\n<title id=\"").Append(options.IdPrefix).Append("title\">");
        SvgText.Append(output, sheet.Title);
        output.Append("</title>\n");
        if (described)
        {
            output.Append("<desc id=\"").Append(options.IdPrefix).Append("desc\">");
            SvgText.Append(output, sheet.Description);
            output.Append("</desc>\n");
        }

        if (options.EmbedFont)
        {
            output.Append("<style>@font-face{font-family:'").Append(FontMetrics.Family)
                .Append("';src:url(data:font/ttf;base64,").Append(Convert.ToBase64String(EmbeddedFont.Bytes()))
                .Append(") format('truetype')}</style>\n");
        }

        Length(output, "<rect x=\"0\" y=\"0\" width=\"", sheet.WidthMm, "\"");
        Length(output, " height=\"", sheet.HeightMm, "\" fill=\"#FFFFFF\"/>\n");

        // Inherited by everything below, which keeps the file small and loads faster than repeating it.
        output.Append("<g font-family=\"").Append(FontFamilies).Append('"');
        Length(output, " font-size=\"", FontMetrics.FontSizeFor(SvgElements.InheritedCapMm), "\" fill=\"none\">\n");
    }

    private static void Length(StringBuilder output, string before, double value, string after)
    {
        output.Append(before);
        SvgNumber.Append(output, value);
        output.Append(after);
    }
}
