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
        json.WriteString("met", result.Met?.Words);
        WriteRemarks(json, result.Brief);
        json.WriteStartArray("written");
        foreach (string path in written)
            json.WriteStringValue(path);
        json.WriteEndArray();
    });

    public static void WriteRemarks(Utf8JsonWriter json, Brief brief)
    {
        json.WriteStartArray("remarks");
        foreach (BriefRemark remark in BriefRemark.Of(brief))
        {
            json.WriteStartObject();
            json.WriteString("about", remark.About);
            JsonText.WritePlace(json, brief.PlaceOf(remark.About));
            json.WriteString("text", remark.Words);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

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
                string field = FieldOf(parts.Columns[i].Key);
                if (row[i].Number is { } number)
                    json.WriteNumber(field, number);
                else
                    json.WriteString(field, row[i].Text);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>A column's key as a field's name: <c>fibreClass</c> for <c>fibre-class</c>.</summary>
    private static string FieldOf(string key)
    {
        string[] words = key.Split('-');
        return words[0] + string.Concat(words.Skip(1).Select(w => char.ToUpperInvariant(w[0]) + w[1..]));
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

    public static void WriteMeasures(Utf8JsonWriter json, PlanMeasures measures)
    {
        json.WriteStartObject();
        json.WriteNumber("cassetteKinds", measures.Cassettes);
        json.WriteNumber("cordKinds", measures.Cords);
        json.WriteNumber("laterCordKinds", measures.LaterCords);
        json.WriteNumber("trunkKinds", measures.Trunks);
        json.WriteNumber("adapterKinds", measures.Adapters);
        json.WriteNumber("parts", measures.Parts);
        json.WriteNumber("fibresUsed", measures.FibresUsed);
        json.WriteNumber("fibresIdle", measures.FibresIdle);
        json.WriteNumber("matings", measures.Matings);
        if (measures.WorstMargin is { } margin)
            json.WriteNumber("worstMargin", margin.Value);
        else
            json.WriteNull("worstMargin");
        json.WriteBoolean("alikeAtBothEnds", measures.IsAlikeAtBothEnds);
        json.WriteNumber("arrayRows", measures.ArrayRows);
        if (measures.LinksLater.Now > 0)
        {
            json.WriteStartObject("linksLater");
            json.WriteNumber("goOn", measures.LinksLater.GoOn);
            json.WriteNumber("now", measures.LinksLater.Now);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("linksLater");
        }
        json.WriteEndObject();
    }

    public static void WriteRefusal(Utf8JsonWriter json, Brief brief, Refusal refusal)
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
