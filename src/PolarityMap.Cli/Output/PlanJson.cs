using System.Text.Json;
using PolarityMap.Core.Planning;
using PolarityMap.Core.Schedules;

namespace PolarityMap.Cli.Output;

/// <summary>A planned brief for programs; the shape is in docs/json.md.</summary>
internal static class PlanJson
{
    public static void Write(PlanResult result, IReadOnlyList<string> written, TextWriter output) => JsonText.Write(output, "polaritymap/plan", json =>
    {
        json.WriteString("brief", result.Brief.Title.Title);
        json.WriteBoolean("planned", result.Chosen is not null);
        json.WritePropertyName("chosen");
        if (result.Chosen is { } chosen)
            WriteChosen(json, chosen);
        else
            json.WriteNullValue();
        json.WriteStartArray("candidates");
        foreach (PlanProof proof in result.Proofs)
            WriteCandidate(json, result.Brief, proof);
        json.WriteEndArray();
        json.WriteStartArray("refusals");
        foreach (Refusal refusal in result.Refusals)
            WriteRefusal(json, result.Brief, refusal);
        json.WriteEndArray();
        json.WriteStartArray("written");
        foreach (string path in written)
            json.WriteStringValue(path);
        json.WriteEndArray();
    });

    private static void WriteChosen(Utf8JsonWriter json, PlanProof plan)
    {
        json.WriteStartObject();
        json.WriteString("method", plan.Candidate.Method.Name);
        json.WriteNumber("base", plan.Candidate.Base);
        json.WriteString("verdict", plan.Report!.Verdict());
        json.WriteNumber("links", plan.Report.Traced.Plant.Links.Count);
        json.WriteNumber("proven", plan.Report.Proven);
        json.WriteStartArray("decisions");
        foreach (PlanDecision decision in plan.Planned!.Decisions)
        {
            json.WriteStartObject();
            json.WriteString("about", decision.About);
            json.WriteString("what", decision.What);
            json.WriteString("why", decision.Why);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        WriteParts(json, PlanParts.Of(plan));
        json.WriteEndObject();
    }

    private static void WriteParts(Utf8JsonWriter json, Schedule parts)
    {
        json.WriteStartArray("parts");
        foreach (IReadOnlyList<Cell> row in parts.Rows)
        {
            json.WriteStartObject();
            for (int i = 0; i < row.Count; i++)
            {
                if (row[i].Number is { } number)
                    json.WriteNumber(parts.Columns[i].Key, number);
                else
                    json.WriteString(parts.Columns[i].Key, row[i].Text);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteCandidate(Utf8JsonWriter json, Brief brief, PlanProof proof)
    {
        json.WriteStartObject();
        json.WriteString("method", proof.Candidate.Method.Name);
        json.WriteNumber("base", proof.Candidate.Base);
        json.WriteBoolean("serves", proof.Serves);
        json.WritePropertyName("measures");
        if (proof.Report is null)
            json.WriteNullValue();
        else
            WriteMeasures(json, PlanMeasures.Of(proof));
        json.WriteStartArray("refusals");
        foreach (Refusal refusal in proof.Refusals)
            WriteRefusal(json, brief, refusal);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteMeasures(Utf8JsonWriter json, PlanMeasures measures)
    {
        json.WriteStartObject();
        json.WriteNumber("cassette-kinds", measures.Cassettes);
        json.WriteNumber("cord-kinds", measures.Cords);
        json.WriteNumber("trunk-kinds", measures.Trunks);
        json.WriteNumber("adapter-kinds", measures.Adapters);
        json.WriteNumber("parts", measures.Parts);
        json.WriteNumber("fibres-used", measures.FibresUsed);
        json.WriteNumber("fibres-idle", measures.FibresIdle);
        json.WriteNumber("matings", measures.Matings);
        if (measures.WorstMargin is { } margin)
            json.WriteNumber("worst-margin-db", margin.Value);
        else
            json.WriteNull("worst-margin-db");
        json.WriteBoolean("alike-at-both-ends", measures.IsAlikeAtBothEnds);
        json.WriteEndObject();
    }

    private static void WriteRefusal(Utf8JsonWriter json, Brief brief, Refusal refusal)
    {
        json.WriteStartObject();
        json.WriteString("requirement", refusal.Requirement);
        JsonText.WritePlace(json, brief.PlaceOf(refusal.Requirement));
        json.WriteString("kind", refusal.Code.ToString().ToLowerInvariant());
        json.WriteString("finding", refusal.Finding);
        json.WriteString("reason", refusal.Reason);
        json.WriteStartArray("nearest");
        foreach (NearestBrief nearest in refusal.Nearest)
            json.WriteStringValue(nearest.Words);
        json.WriteEndArray();
        json.WriteEndObject();
    }
}
