using System.Text.Json;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;

namespace PolarityMap.Cli.Output;

/// <summary>The findings for programs; the shape is in docs/json.md.</summary>
internal static class CheckJson
{
    public static void Write(CheckReport report, TextWriter output) => JsonText.Write(output, "polaritymap/check", json =>
    {
        Plant plant = report.Traced.Plant;
        json.WriteString("plant", plant.Title.Title);
        json.WriteString("verdict", report.Verdict());
        json.WriteNumber("errors", report.Errors);
        json.WriteNumber("warnings", report.Warnings);
        json.WriteStartArray("links");
        foreach (LinkOutcome outcome in report.Context.Outcomes.All)
        {
            json.WriteStartObject();
            Link written = plant.Links[outcome.Index];
            json.WriteString("from", plant.Address(written.From));
            json.WriteString("to", plant.Address(written.To));
            json.WriteBoolean("proven", report.IsProven(outcome));
            json.WriteStartArray("strands");
            foreach (int strand in outcome.Strands)
                json.WriteNumberValue(report.Traced.NumberOf(strand));
            json.WriteEndArray();
            JsonText.WritePlace(json, outcome.Link.Place);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("findings");
        foreach (Finding finding in report.Findings)
            WriteFinding(json, report, finding);
        json.WriteEndArray();
        json.WriteStartArray("remarks");
        foreach (Remark remark in report.Remarks)
        {
            json.WriteStartObject();
            json.WriteString("text", remark.Text);
            JsonText.WritePlace(json, remark.Place);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });

    private static void WriteFinding(Utf8JsonWriter json, CheckReport report, Finding finding)
    {
        json.WriteStartObject();
        json.WriteString("code", finding.Rule.Code);
        json.WriteString("title", finding.Rule.Title);
        json.WriteString("family", finding.Rule.Family);
        json.WriteString("severity", finding.Rule.Severity == Severity.Error ? "error" : "warning");
        JsonText.WritePlace(json, finding.Place);
        json.WriteString("message", finding.Message);
        json.WriteString("expected", finding.Expected);
        json.WriteString("actual", finding.Actual);
        json.WriteStartArray("links");
        foreach (int link in finding.Links)
            json.WriteNumberValue(link);
        json.WriteEndArray();
        json.WriteStartArray("strands");
        foreach (int strand in finding.Strands)
            JsonText.WriteStrand(json, report.Traced, strand);
        json.WriteEndArray();
        json.WriteStartArray("related");
        foreach (SourcePlace place in finding.Related)
        {
            json.WriteStartObject();
            JsonText.WritePlace(json, place);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("remedies");
        foreach (Remedy remedy in finding.Remedies)
        {
            json.WriteStartObject();
            json.WriteString("text", remedy.Text);
            json.WriteString("proof", remedy.Proof);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
