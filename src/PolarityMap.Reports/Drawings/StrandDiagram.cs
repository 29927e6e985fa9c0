using System.Globalization;
using System.Text;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Svg;
using PolarityMap.Drawing.Views;
using PolarityMap.Drawing.Views.Strands;
using PolarityMap.Reports.Model;

namespace PolarityMap.Reports.Drawings;

/// <summary>The sheets of the drawing inline, and the strands in a table for whoever cannot see them.</summary>
internal static class StrandDiagram
{
    /// <summary>The most characters of sheets in one page; the others are files of the report.</summary>
    public const int MostCharacters = 12_000_000;

    public static DiagramSection Of(ReportInput input)
    {
        var html = new StringBuilder("<section id=\"diagram\" class=\"diagram\" aria-labelledby=\"diagram-title\">\n<h2 id=\"diagram-title\">Strand diagram</h2>\n");
        if (input.SheetsMissing is { } why)
            html.Append("<p>").Append(HtmlText.Of(why)).Append("</p>\n");
        AppendSheets(html, input.Sheets);
        AppendTable(html, input);
        html.Append("</section>\n");
        return new DiagramSection(new Markup(html.ToString()), PageRules(input.Sheets), "");
    }

    private static void AppendSheets(StringBuilder html, IReadOnlyList<PlannedSheet> sheets)
    {
        int start = html.Length;
        for (int i = 0; i < sheets.Count; i++)
        {
            if (html.Length - start > MostCharacters)
            {
                html.Append(CultureInfo.InvariantCulture, $"<p>Sheets {i + 1} to {sheets.Count} are too many for this page; they are drawn in the files beside it.</p>\n");
                return;
            }

            PlannedSheet sheet = sheets[i];
            string subject = HtmlText.Of(sheet.Subject.Length > 0 ? sheet.Subject : sheet.DocumentType);
            html.Append(CultureInfo.InvariantCulture, $"<figure class=\"sheet\" id=\"sheet-{i + 1}\" data-page=\"{PageName(sheet.Format)}\">\n<figcaption>Sheet {i + 1} of {sheets.Count}: {subject}</figcaption>\n")
                .Append(CultureInfo.InvariantCulture, $"<div class=\"scroll\" role=\"group\" aria-label=\"Drawing, sheet {i + 1}\" tabindex=\"0\">\n")
                .Append(SvgWriter.Write(sheet.Draw(new SheetPlace(i + 1, sheets.Count)), new SvgOptions { IdPrefix = $"s{i + 1}-" }))
                .Append("</div>\n</figure>\n");
        }
    }

    private static void AppendTable(StringBuilder html, ReportInput input)
    {
        TracedPlant traced = input.Traced;
        Selection selection = input.View.Selection;
        var codes = new Dictionary<int, List<Rule>>();
        foreach (Finding finding in selection.Findings)
        {
            foreach (int strand in finding.Strands)
            {
                if (!codes.TryGetValue(strand, out List<Rule>? own))
                    codes[strand] = own = [];
                if (!own.Contains(finding.Rule))
                    own.Add(finding.Rule);
            }
        }

        html.Append("<div class=\"strand-table\">\n<h3 id=\"strands\">Strands in a table</h3>\n<div class=\"scroll rows\" role=\"group\" aria-label=\"Table of strands\" tabindex=\"0\">\n<table>\n<caption>Every strand from end to end, in the order of their numbers</caption>\n<thead><tr>");
        foreach (string head in (string[])["Strand", "Colour", "From", "To", "Parts passed", "Findings"])
            html.Append("<th scope=\"col\">").Append(head).Append("</th>");
        html.Append("</tr></thead>\n<tbody>\n");
        foreach (int strand in selection.Strands)
        {
            ReadOnlySpan<int> positions = traced.Strands[strand];
            FibreColour colour = StrandColours.Of(traced, strand);
            html.Append(CultureInfo.InvariantCulture, $"<tr id=\"strand-{traced.NumberOf(strand)}\"><th scope=\"row\">{traced.NumberOf(strand)}</th><td>{colour.Code} {colour.Name}</td>");
            Cell(html, End(traced, positions[0]));
            Cell(html, traced.Strands.IsLoop(strand) ? "back to its start" : End(traced, positions[^1]));
            Cell(html, string.Join(" → ", Passed(traced, strand)));
            Cell(html, codes.TryGetValue(strand, out List<Rule>? rules) ? string.Join("; ", rules.Select(r => $"{(r.Severity == Severity.Error ? "error" : "warning")} {r.Code} {r.Title}")) : "");
            html.Append("</tr>\n");
        }

        html.Append("</tbody>\n</table>\n</div>\n</div>\n");
    }

    private static void Cell(StringBuilder html, string text) => html.Append("<td>").Append(HtmlText.Of(text)).Append("</td>");

    private static string End(TracedPlant traced, int position) => $"{traced.Address(position)} ({HopLine.EndWord(traced, position)})";

    private static IEnumerable<string> Passed(TracedPlant traced, int strand) =>
        traced.Hops(strand).Where(h => h.In >= 0 && h.Out >= 0).Select(h => HopLine.Words(traced, h));

    /// <summary>In print every sheet gets a page of its own size.</summary>
    private static string PageRules(IReadOnlyList<PlannedSheet> sheets)
    {
        var rules = new StringBuilder();
        foreach (SheetFormat format in sheets.Select(s => s.Format).DistinctBy(PageName))
        {
            string name = PageName(format);
            rules.Append(CultureInfo.InvariantCulture, $"@page {name} {{ size: {format.WidthMm}mm {format.HeightMm}mm; margin: 0; @bottom-left {{ content: none }} @bottom-right {{ content: none }} }}\n")
                .Append(CultureInfo.InvariantCulture, $"@media print {{ .sheet[data-page=\"{name}\"] {{ page: {name} }} }}\n");
        }

        return rules.ToString();
    }

    private static string PageName(SheetFormat format) =>
        string.Create(CultureInfo.InvariantCulture, $"sheet-{(long)Math.Round(format.WidthMm * 10)}-{(long)Math.Round(format.HeightMm * 10)}");
}
