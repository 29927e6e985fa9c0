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
        WriteLinks(json, report);
        json.WriteStartArray("findings");
        foreach (Finding finding in report.Findings)
            WriteFinding(json, report, finding, strandsInFull: true);
        json.WriteEndArray();
        WriteRemarks(json, report);
    });

    /// <summary>What was meant, and whether it is proven.</summary>
    public static void WriteLinks(Utf8JsonWriter json, CheckReport report)
    {
        Plant plant = report.Traced.Plant;
        json.WriteStartArray("links");
        foreach (LinkOutcome outcome in report.Context.Outcomes.All)
        {
            json.WriteStartObject();
            Link written = plant.Links[outcome.Index];
            json.WriteString("from", plant.Address(written.From));
            json.WriteString("to", plant.Address(written.To));
            json.WriteBoolean("proven", report.IsProven(outcome));
            JsonText.WriteNumbers(json, "strands", outcome.Strands.Select(report.Traced.NumberOf));
            JsonText.WritePlace(json, outcome.Link.Place);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    public static void WriteRemarks(Utf8JsonWriter json, CheckReport report)
    {
        json.WriteStartArray("remarks");
        foreach (Remark remark in report.Remarks)
        {
            json.WriteStartObject();
            json.WriteString("text", remark.Text);
            JsonText.WritePlace(json, remark.Place);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>A finding as an object; its strands with their hops, or by their numbers where the reader has them elsewhere.</summary>
    public static void WriteFinding(Utf8JsonWriter json, CheckReport report, Finding finding, bool strandsInFull)
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
        JsonText.WriteNumbers(json, "links", finding.Links);
        if (strandsInFull)
            WriteStrands(json, report, finding);
        else
            JsonText.WriteNumbers(json, "strands", finding.Strands.Select(report.Traced.NumberOf));
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

    private static void WriteStrands(Utf8JsonWriter json, CheckReport report, Finding finding)
    {
        json.WriteStartArray("strands");
        foreach (int strand in finding.Strands)
            JsonText.WriteStrand(json, report.Traced, strand);
        json.WriteEndArray();
    }
}
