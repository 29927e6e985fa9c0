using System.Text;
using PolarityMap.Drawing.Views;
using PolarityMap.Reports.Model;
using PolarityMap.Reports.Templates;

namespace PolarityMap.Reports.Interactive;

/// <summary>
/// The strand diagram of a page: the sheets inline, a table of all strands, and what a script needs to light up a strand, to
/// find a label, to filter, and to say what should arrive at a port. Without the script sheets and table are there all the same.
/// <para>
/// The page puts <see cref="Html"/> where the section belongs, <see cref="Style"/> into a <c>style</c> element and
/// <see cref="Script"/> into a <c>script</c> element behind the section. Neither needs more of a content security policy than the
/// hashes of these two elements and <c>font-src data:</c>.
/// </para>
/// </summary>
public sealed class InteractiveDiagram
{
    private InteractiveDiagram(string html, string style, string script)
    {
        Html = html;
        Style = style;
        Script = script;
    }

    /// <summary>A <c>section</c> with the id <c>diagram</c> and a heading of the second level.</summary>
    public string Html { get; }

    /// <summary>Its style sheet, with the sizes of the pages in print; the page brings the font.</summary>
    public string Style { get; }

    /// <summary>Its script.</summary>
    public string Script { get; }

    /// <summary>The templates that the style sheet is put together from, in order.</summary>
    public static IReadOnlyList<string> StyleFiles { get; } = ["diagram.css"];

    /// <summary>The templates that the script is put together from, in order.</summary>
    public static IReadOnlyList<string> ScriptFiles { get; } =
        ["diagram-data.js", "diagram-words.js", "diagram-light.js", "diagram-panel.js", "diagram-find.js", "diagram-sheets.js", "diagram-start.js"];

    /// <summary>Makes the diagram of the chosen strands.</summary>
    /// <param name="input">The traced plant, the strands and the findings about them.</param>
    /// <param name="sheets">The sheets of the drawing in the order in which they are bound, as <see cref="SheetSet.Of"/> plans them.</param>
    /// <param name="templates">Where its style sheet and its script come from.</param>
    /// <exception cref="TemplateException">One of them would end the element that it stands in.</exception>
    public static InteractiveDiagram Of(ViewInput input, IReadOnlyList<PlannedSheet> sheets, TemplateFolder templates)
    {
        IReadOnlyList<StrandFacts> strands = StrandFacts.Of(input);
        IReadOnlyList<PageSheet> drawn = PageSheet.Of(sheets);
        return new InteractiveDiagram(Section(input, strands, drawn), StyleOf(drawn, templates), ScriptOf(templates));
    }

    private static string Section(ViewInput input, IReadOnlyList<StrandFacts> strands, IReadOnlyList<PageSheet> sheets)
    {
        var html = new StringBuilder("""
            <section id="diagram" class="diagram" aria-labelledby="diagram-title">
            <h2 id="diagram-title">Strand diagram</h2>
            <p class="caution">Assume every fibre is live and never look into a fibre end. What light to expect is what the plant document says, not a measurement.</p>

            """);
        DiagramControls.Append(html, input, strands);
        AppendContents(html, sheets);
        html.Append("<div class=\"sheets\" id=\"diagram-sheets\">\n");
        foreach (PageSheet sheet in sheets)
            sheet.Append(html, sheets.Count);
        html.Append("</div>\n<h3 id=\"diagram-table\">Strands in a table</h3>\n");
        StrandTable.Append(html, input, strands);
        DiagramControls.AppendPanel(html);
        html.Append("<script type=\"application/json\" id=\"diagram-data\">").Append(DiagramJson.Write(input, strands, sheets)).Append("</script>\n</section>\n");
        return html.ToString();
    }

    /// <summary>Links past the sheets to the table, and to the sheets where there are several.</summary>
    private static void AppendContents(StringBuilder html, IReadOnlyList<PageSheet> sheets)
    {
        html.Append("<p class=\"contents\"><a href=\"#diagram-table\">Go to the table of strands</a></p>\n");
        if (sheets.Count < 2)
            return;
        html.Append("<details class=\"contents\"><summary>Go to a sheet</summary>\n<ol>\n");
        foreach (PageSheet sheet in sheets)
            html.Append("<li><a href=\"#").Append(sheet.Id).Append("\">").AppendText(sheet.Title).Append("</a></li>\n");
        html.Append("</ol>\n</details>\n");
    }

    private static string StyleOf(IReadOnlyList<PageSheet> sheets, TemplateFolder templates)
    {
        var style = new StringBuilder();
        foreach (string file in StyleFiles)
            style.Append(templates.TextFor("style", file));
        return style.Append(PageSheet.PageRules(sheets)).ToString();
    }

    /// <summary>The files share one scope and leave no name behind in the page.</summary>
    private static string ScriptOf(TemplateFolder templates)
    {
        var script = new StringBuilder("(() => {\n'use strict';\n");
        foreach (string file in ScriptFiles)
            script.Append(templates.TextFor("script", file));
        return script.Append("})();\n").ToString();
    }
}
