using System.Globalization;
using System.Xml.Linq;
using PolarityMap.Drawing.Fonts;

namespace PolarityMap.Acceptance.Renderers;

/// <summary>The size of a picture. Renderers round millimetres to pixels differently, so the size is written into the drawing.</summary>
internal static class Pixels
{
    public const int PerMm = 8;

    /// <summary>The picture's size for a drawing whose user unit is the millimetre.</summary>
    public static (int Width, int Height) Of(string svg)
    {
        double[] box = [.. XElement.Parse(svg).Attribute("viewBox")!.Value.Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture))];
        return ((int)(box[2] * PerMm), (int)(box[3] * PerMm));
    }

    /// <summary>The same drawing with its size given in pixels.</summary>
    public static string Size(string svg, int width, int height)
    {
        XElement root = XElement.Parse(svg, LoadOptions.PreserveWhitespace);
        root.SetAttributeValue("width", width);
        root.SetAttributeValue("height", height);
        return root.ToString(SaveOptions.DisableFormatting);
    }

    /// <summary>The same drawing with each word of a text that begins at its place set by itself, as far along as the font's tables say.</summary>
    public static string WordByWord(string svg)
    {
        XElement root = XElement.Parse(svg, LoadOptions.PreserveWhitespace);
        foreach (XElement text in root.Descendants().Where(e => e.Name.LocalName == "text" && e.Value.Contains(' ')).ToList())
        {
            if (Inherited(text, "text-anchor") is not null)
                continue;
            double cap = Number(Inherited(text, "font-size")!) * FontMetrics.CapHeightPerEm;
            double left = Number(text.Attribute("x")!.Value);
            int from = 0;
            foreach (string word in text.Value.Split(' '))
            {
                var own = new XElement(text) { Value = word };
                own.SetAttributeValue("x", left + FontMetrics.WidthMm(text.Value.AsSpan(0, from), cap));
                text.AddBeforeSelf(own);
                from += word.Length + 1;
            }

            text.Remove();
        }

        return root.ToString(SaveOptions.DisableFormatting);
    }

    private static string? Inherited(XElement element, string name) =>
        element.AncestorsAndSelf().Select(e => e.Attribute(name)?.Value).FirstOrDefault(v => v is not null);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    /// <summary>
    /// The same drawing with each text set in a unit of a sixty-fourth of a millimetre. The packaged librsvg rounds the way from
    /// letter to letter to a share of the user unit, which shows when that is a millimetre; librsvg 2.54 does not.
    /// </summary>
    public static string FineText(string svg)
    {
        const int finer = 64;
        XElement root = XElement.Parse(svg, LoadOptions.PreserveWhitespace);
        foreach (XElement text in root.Descendants().Where(e => e.Name.LocalName == "text"))
        {
            string size = text.AncestorsAndSelf().Select(e => e.Attribute("font-size")?.Value).First(v => v is not null)!;
            text.SetAttributeValue("font-size", size);
            foreach (string name in (string[])["x", "y", "font-size"])
                text.SetAttributeValue(name, double.Parse(text.Attribute(name)!.Value, CultureInfo.InvariantCulture) * finer);
            text.SetAttributeValue("transform", "scale(0.015625)");
        }

        return root.ToString(SaveOptions.DisableFormatting);
    }
}
