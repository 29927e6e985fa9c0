using System.Text.Json;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Remedies;
using PolarityMap.Documents.Editing;

namespace PolarityMap.Cli.Output;

/// <summary>Remedies for programs; the shape is in docs/json.md.</summary>
internal static class RemedyJson
{
    public static void Write(RemedyResult result, string? written, TextWriter output) => JsonText.Write(output, "polaritymap/remedy", json =>
    {
        Plant plant = result.Before.Traced.Plant;
        json.WriteString("plant", plant.Title.Title);
        json.WriteString("verdict", result.Before.Verdict());
        json.WriteNumber("errors", result.Before.Errors);
        json.WriteNumber("warnings", result.Before.Warnings);
        WritePlan(json, result);
        json.WriteStartArray("findings");
        foreach (FindingRemedies finding in result.Findings)
            WriteFinding(json, result, finding);
        json.WriteEndArray();
        json.WriteNumber("tried", result.Work.Tried);
        json.WriteNumber("proved", result.Work.Proved);
        json.WriteString("bound", result.Work.Bound);
        json.WriteString("written", written);
    });

    private static void WritePlan(Utf8JsonWriter json, RemedyResult result)
    {
        if (result.Plan is not { } plan)
        {
            json.WriteNull("plan");
            return;
        }

        Plant plant = result.Before.Traced.Plant;
        json.WriteStartObject("plan");
        json.WriteNumber("minutes", plan.Minutes);
        json.WriteStartArray("steps");
        foreach (PlanStep step in plan.Steps)
        {
            json.WriteStartObject();
            WriteChange(json, plant, step.Change);
            JsonText.WriteNumbers(json, "clears", step.Clears);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        JsonText.WriteNumbers(json, "clears", plan.Clears);
        JsonText.WriteNumbers(json, "remaining", plan.Remaining);
        json.WriteString("proof", RemedyWords.Proof(plan));
        json.WriteString("overlay", OverlayText.Section(OverlayEntries.Of(plant, plan.Changes)));
        json.WriteStartArray("cautions");
        foreach (string caution in RemedyCautions.For(plan.Changes))
            json.WriteStringValue(caution);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteFinding(Utf8JsonWriter json, RemedyResult result, FindingRemedies remedies)
    {
        Finding finding = result.Before.Findings[remedies.Finding];
        json.WriteStartObject();
        json.WriteNumber("finding", remedies.Finding);
        json.WriteString("code", finding.Rule.Code);
        json.WriteString("title", finding.Rule.Title);
        json.WriteString("severity", finding.Rule.Severity == Severity.Error ? "error" : "warning");
        JsonText.WritePlace(json, finding.Place);
        json.WriteString("message", finding.Message);
        json.WriteStartArray("remedies");
        foreach (RemedySet set in remedies.Sets)
            WriteSet(json, result, set);
        json.WriteEndArray();
        json.WriteString("none", remedies.Sets.Count > 0 || result.Plan?.Clears.Contains(remedies.Finding) == true ? null : RemedyWords.Nothing(finding, remedies));
        JsonText.WriteNumbers(json, "tried", remedies.Tried);
        json.WriteBoolean("complete", remedies.IsComplete);
        json.WriteEndObject();
    }

    private static void WriteSet(Utf8JsonWriter json, RemedyResult result, RemedySet set)
    {
        json.WriteStartObject();
        json.WriteNumber("minutes", set.Minutes);
        json.WriteStartArray("changes");
        foreach (Change change in set.Changes)
        {
            json.WriteStartObject();
            WriteChange(json, result.Before.Traced.Plant, change);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        JsonText.WriteNumbers(json, "clears", set.Clears);
        json.WriteNumber("proven", set.Proven);
        json.WriteString("proof", RemedyWords.Proof(result, set));
        json.WriteEndObject();
    }

    private static void WriteChange(Utf8JsonWriter json, Plant plant, Change change)
    {
        json.WriteString("change", change.Kind.Name);
        json.WriteString("text", change.Text);
        json.WriteNumber("minutes", change.Minutes);
        json.WriteStartArray("parts");
        foreach (int part in change.Parts)
            json.WriteStringValue(plant.Parts[part].Name);
        json.WriteEndArray();
    }
}
