using System.Globalization;
using System.Text;
using PolarityMap.Core.Checks;
using PolarityMap.Drawing.Views;
using PolarityMap.Reports.Model;

namespace PolarityMap.Reports.Interactive;

/// <summary>The strands as a table: what the sheets show, for readers that cannot see them or have no script.</summary>
internal static class StrandTable
{
    /// <summary>From this many rows on a browser lays the table out only when one comes to it.</summary>
    private const int Many = 500;

    public static void Append(StringBuilder html, ViewInput input, IReadOnlyList<StrandFacts> strands)
    {
        html.Append(strands.Count < Many ? "<div class=\"rows\"" : "<div class=\"rows many\"").Append("""
             tabindex="0" role="group" aria-label="Table of strands">
            <table>
            <caption>Every strand from end to end, in the order of their numbers</caption>
            <thead><tr><th scope="col">Strand</th><th scope="col">Colour</th><th scope="col">From</th><th scope="col">To</th><th scope="col">Parts passed</th><th scope="col">Network</th><th scope="col">Finding</th></tr></thead>
            <tbody>

            """);
        foreach (StrandFacts facts in strands)
            AppendRow(html, input, facts);
        html.Append("</tbody>\n</table>\n</div>\n");
    }

    private static void AppendRow(StringBuilder html, ViewInput input, StrandFacts facts)
    {
        html.Append(CultureInfo.InvariantCulture, $"<tr id=\"strand-{facts.Number}\"><th scope=\"row\">{facts.Number}</th><td>").AppendText($"{facts.Colour.Code} {facts.Colour.Name}");
        if (facts.Colour.Tracers > 0)
            html.Append(facts.Colour.Tracers == 1 ? ", 1 tracer" : string.Create(CultureInfo.InvariantCulture, $", {facts.Colour.Tracers} tracers"));
        html.Append("</td><td>").AppendText(facts.From).Append("</td><td>").AppendText(facts.IsLoop ? "a closed loop: no end to put light into" : facts.To);
        html.Append("</td><td>").AppendText(facts.Passed.Count > 0 ? string.Join(" → ", facts.Passed) : "none")
            .Append("</td><td>").AppendText(facts.Networks.Count > 0 ? string.Join(", ", facts.Networks.Select(n => input.Traced.Plant.Networks[n].Name)) : "not stated")
            .Append("</td><td>");
        bool first = true;
        if (facts.Findings.Count == 0)
            html.Append("none");
        foreach (Rule rule in facts.Findings.Select(f => input.Findings[f].Rule).DistinctBy(r => r.Code))
        {
            html.Append(first ? "" : "; ").AppendText($"{(rule.Severity == Severity.Error ? "error" : "warning")} {rule.Code} {rule.Title}");
            first = false;
        }

        html.Append("</td></tr>\n");
    }
}
