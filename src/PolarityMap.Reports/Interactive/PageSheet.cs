using System.Globalization;
using System.Text;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Svg;
using PolarityMap.Drawing.Views;
using PolarityMap.Reports.Model;

namespace PolarityMap.Reports.Interactive;

/// <summary>One sheet as it stands in the page: drawn, with ids of its own and its places to point at.</summary>
internal sealed class PageSheet
{
    private PageSheet(int number, string subject, DrawingSheet drawing, IReadOnlyList<HitArea> hitAreas)
    {
        Number = number;
        Subject = subject;
        WidthMm = drawing.WidthMm;
        HeightMm = drawing.HeightMm;
        Svg = SvgWriter.Write(drawing, new SvgOptions { IdPrefix = IdPrefix });
        Links = drawing.Links;
        HitAreas = hitAreas;
    }

    /// <summary>Its number in the set, from 1.</summary>
    public int Number { get; }

    public string Subject { get; }

    public double WidthMm { get; }

    public double HeightMm { get; }

    public string Svg { get; }

    public IReadOnlyList<SheetLink> Links { get; }

    public IReadOnlyList<HitArea> HitAreas { get; }

    /// <summary>The id of its figure in the page.</summary>
    public string Id => $"sheet-{Number}";

    /// <summary>Before every id of its drawing.</summary>
    public string IdPrefix => $"s{Number}-";

    public string Title => Subject.Length > 0 ? $"Sheet {Number}: {Subject}" : $"Sheet {Number}";

    /// <summary>The class of all sheets of its size, and the name of their page in print.</summary>
    public string Paper => $"paper-{Name(WidthMm)}-{Name(HeightMm)}";

    public static IReadOnlyList<PageSheet> Of(IReadOnlyList<PlannedSheet> sheets)
    {
        var drawn = new PageSheet[sheets.Count];
        for (int i = 0; i < drawn.Length; i++)
            drawn[i] = new PageSheet(i + 1, sheets[i].Subject, sheets[i].Draw(new SheetPlace(i + 1, drawn.Length)), sheets[i].HitAreas());
        return drawn;
    }

    /// <summary>The figure, with its drawing in a box of its own that scrolls.</summary>
    public void Append(StringBuilder html, int sheets)
    {
        html.Append("<figure class=\"sheet ").Append(Paper).Append("\" id=\"").Append(Id).Append("\">\n<figcaption>")
            .Append(CultureInfo.InvariantCulture, $"Sheet {Number} of {sheets}");
        if (Subject.Length > 0)
            html.Append(": ").AppendText(Subject);
        html.Append("</figcaption>\n<div class=\"view\" tabindex=\"0\" role=\"group\" aria-label=\"Drawing of ").AppendText(Title).Append("\">\n")
            .Append(Svg).Append("</div>\n</figure>\n");
    }

    /// <summary>For each size of paper the rule that prints its sheets at their own size, one to a page.</summary>
    public static string PageRules(IReadOnlyList<PageSheet> sheets)
    {
        var rules = new StringBuilder();
        foreach (PageSheet sheet in sheets.DistinctBy(s => s.Paper))
        {
            rules.Append(CultureInfo.InvariantCulture, $"@page {sheet.Paper} {{ size: {sheet.WidthMm}mm {sheet.HeightMm}mm; margin: 0 }}\n")
                .Append(CultureInfo.InvariantCulture, $".diagram .{sheet.Paper} {{ page: {sheet.Paper} }}\n");
        }

        return rules.ToString();
    }

    private static string Name(double length) => length.ToString("0.##", CultureInfo.InvariantCulture).Replace('.', '_');
}
