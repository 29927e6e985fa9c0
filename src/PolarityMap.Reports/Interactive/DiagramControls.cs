using System.Globalization;
using System.Text;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Drawing.Views;
using PolarityMap.Reports.Model;

namespace PolarityMap.Reports.Interactive;

/// <summary>The controls that the page's script brings to life; hidden until it does.</summary>
internal static class DiagramControls
{
    public static void Append(StringBuilder html, ViewInput input, IReadOnlyList<StrandFacts> strands)
    {
        html.Append("""
            <div class="controls" id="diagram-controls" hidden>
            <div class="control" role="search">
            <h3 id="diagram-find-title">Find a label</h3>
            <label for="diagram-find">Part, port, strand number or room</label>
            <input id="diagram-find" type="search" autocomplete="off" spellcheck="false">
            <p id="diagram-found" role="status"></p>
            <ul id="diagram-matches" aria-labelledby="diagram-find-title"></ul>
            </div>
            <div class="control" role="group" aria-labelledby="diagram-here-title">
            <h3 id="diagram-here-title">I am at this port</h3>
            <label for="diagram-part">Part</label>
            <select id="diagram-part"><option value="">choose a part</option></select>
            <label for="diagram-port">Port</label>
            <select id="diagram-port" disabled><option value="">choose a part first</option></select>
            </div>
            <div class="control" role="group" aria-labelledby="diagram-filter-title">
            <h3 id="diagram-filter-title">Show only</h3>

            """);
        Plant plant = input.Traced.Plant;
        if (plant.Networks.Count > 0)
            AppendFilter(html, "network", "Network", "all networks", plant.Networks.Select((n, i) => (i.ToString(CultureInfo.InvariantCulture), n.Name)));
        if (plant.Links.Count > 0)
            AppendFilter(html, "link", "Link", "all links", plant.Links.Select((l, i) => (i.ToString(CultureInfo.InvariantCulture), $"{plant.Address(l.From)} to {plant.Address(l.To)}")));
        AppendFilter(html, "finding", "Finding", "all strands", Findings(input, strands));
        html.Append("""
            <button type="button" id="diagram-all">Show all strands</button>
            <p id="diagram-count" role="status"></p>
            </div>
            </div>

            """);
    }

    /// <summary>The place at the foot of the window where the script says what is lit.</summary>
    public static void AppendPanel(StringBuilder html) => html.Append("""
        <div class="panel" id="diagram-panel" role="group" aria-label="What is lit" hidden>
        <div class="words" tabindex="0" role="group" aria-label="Its way in words">
        <div id="diagram-words" role="status" aria-live="polite"><p>Point at a strand, a port or a position, or choose one, to see its whole way.</p></div>
        <ul id="diagram-choices"></ul>
        </div>
        <div class="deeds" id="diagram-deeds" hidden>
        <button type="button" id="diagram-show">Show on sheet</button>
        <button type="button" id="diagram-copy">Copy link</button>
        <button type="button" id="diagram-clear">Clear</button>
        <div id="diagram-copying" hidden><label for="diagram-address">Link to copy</label><input id="diagram-address" readonly></div>
        <p id="diagram-copied" role="status"></p>
        </div>
        </div>

        """);

    private static IEnumerable<(string Value, string Words)> Findings(ViewInput input, IReadOnlyList<StrandFacts> strands)
    {
        yield return ("with", "with a finding");
        yield return ("without", "without a finding");
        var told = new HashSet<int>(strands.SelectMany(s => s.Findings));
        foreach (Rule rule in told.Order().Select(f => input.Findings[f].Rule).DistinctBy(r => r.Code))
            yield return (rule.Code, $"{rule.Code} {rule.Title}");
    }

    private static void AppendFilter(StringBuilder html, string name, string label, string all, IEnumerable<(string Value, string Words)> options)
    {
        html.Append(CultureInfo.InvariantCulture, $"<label for=\"diagram-{name}\">{label}</label>\n<select id=\"diagram-{name}\"><option value=\"\">{all}</option>");
        foreach ((string value, string words) in options)
            html.Append("<option value=\"").AppendText(value).Append("\">").AppendText(words).Append("</option>");
        html.Append("</select>\n");
    }
}
