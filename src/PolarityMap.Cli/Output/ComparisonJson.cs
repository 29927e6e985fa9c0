using System.Text.Json;
using PolarityMap.Core.Planning;

namespace PolarityMap.Cli.Output;

/// <summary>Plans side by side for programs; the shape is in docs/json.md.</summary>
internal static class ComparisonJson
{
    public static void Write(PlanComparison comparison, Func<PlanCandidate, bool> asked, IReadOnlyList<string> written, TextWriter output) => JsonText.Write(output, "polaritymap/plan-comparison", json =>
    {
        json.WriteString("brief", comparison.Brief.Title.Title);
        json.WriteNumber("candidates", comparison.Candidates);
        WriteWeights(json, "weights", comparison.Weights.Values);
        json.WriteString("currency", comparison.Brief.Prices?.Currency);
        json.WriteBoolean("priceLeftOut", comparison is { IsPriceLeftOut: true, Brief.Prices: not null });
        WriteUnused(json, UnusedPrices.Of(comparison));
        json.WriteStartArray("plans");
        foreach (ComparedPlan plan in comparison.Plans)
            WritePlan(json, plan, asked(plan.Candidate));
        json.WriteEndArray();
        json.WriteStartArray("excluded");
        foreach (PlanProof proof in comparison.Excluded.SelectMany(e => e.Proofs))
            WriteExcluded(json, comparison.Brief, proof);
        json.WriteEndArray();
        PlanJson.WriteRemarks(json, comparison.Brief);
        json.WriteStartArray("written");
        foreach (string path in written)
            json.WriteStringValue(path);
        json.WriteEndArray();
    });

    private static void WriteUnused(Utf8JsonWriter json, IReadOnlyList<PriceLine> unused)
    {
        json.WriteStartArray("pricesUnused");
        foreach (PriceLine line in unused)
        {
            json.WriteStartObject();
            JsonText.WritePlace(json, line.Place);
            json.WriteString("text", UnusedPrices.Words(line));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteWeights(Utf8JsonWriter json, string name, IReadOnlyList<decimal> values)
    {
        json.WriteStartObject(name);
        for (int i = 0; i < values.Count; i++)
            json.WriteNumber(PlanWeights.Names[i], Math.Round(values[i], 6));
        json.WriteEndObject();
    }

    private static void WritePlan(Utf8JsonWriter json, ComparedPlan plan, bool asked)
    {
        json.WriteStartObject();
        json.WriteString("method", plan.Candidate.Method.Name);
        json.WriteNumber("base", plan.Candidate.Base);
        json.WriteBoolean("asked", asked);
        json.WriteNumber("sum", Math.Round(plan.Score, 6));
        WriteWeights(json, "pieces", plan.Pieces);
        json.WritePropertyName("measures");
        PlanJson.WriteMeasures(json, plan.Measures);
        WriteKinds(json, "cassettes", plan.Measures.CassetteKinds);
        WriteKinds(json, "cords", plan.Measures.CordKinds);
        WriteKinds(json, "trunks", plan.Measures.TrunkKinds);
        WriteKinds(json, "adapters", plan.Measures.AdapterKinds);
        WriteLater(json, plan.Measures.Later);
        WritePrice(json, plan.Measures.Price);
        json.WriteEndObject();
    }

    private static void WriteKinds(Utf8JsonWriter json, string name, IReadOnlyList<KindCount> kinds)
    {
        json.WriteStartArray(name);
        foreach (KindCount kind in kinds)
        {
            json.WriteStartObject();
            json.WriteString("kind", kind.Name);
            json.WriteNumber("count", kind.Count);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteLater(Utf8JsonWriter json, LaterChange? later)
    {
        if (later is null)
        {
            json.WriteNull("later");
            return;
        }

        json.WriteStartObject("later");
        WriteItems(json, "buy", later.Buy);
        WriteItems(json, "stays", later.Stays);
        WriteItems(json, "leftOver", later.Spare);
        json.WriteEndObject();
    }

    private static void WritePrice(Utf8JsonWriter json, PriceSum? price)
    {
        if (price is null)
        {
            json.WriteNull("price");
            return;
        }

        json.WriteStartObject("price");
        json.WriteNumber("total", price.Total);
        json.WriteBoolean("complete", price.IsComplete);
        WriteItems(json, "without", price.Without);
        json.WriteEndObject();
    }

    private static void WriteItems(Utf8JsonWriter json, string name, IReadOnlyList<PlanItem> items)
    {
        json.WriteStartArray(name);
        foreach (PlanItem item in items)
        {
            json.WriteStartObject();
            json.WriteNumber("quantity", item.Quantity);
            json.WriteString("type", item.Type);
            json.WriteString("kind", item.Kind);
            WriteNumber(json, "fibres", item.Fibres);
            json.WriteString("fibreClass", item.FibreClass);
            WriteNumber(json, "length", item.Metres);
            json.WriteString("keyCode", item.KeyCode);
            json.WriteString("description", item.Description);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteNumber(Utf8JsonWriter json, string name, decimal? number)
    {
        if (number is { } value)
            json.WriteNumber(name, value);
        else
            json.WriteNull(name);
    }

    private static void WriteExcluded(Utf8JsonWriter json, Brief brief, PlanProof proof)
    {
        json.WriteStartObject();
        json.WriteString("method", proof.Candidate.Method.Name);
        json.WriteNumber("base", proof.Candidate.Base);
        json.WriteStartArray("refusals");
        foreach (Refusal refusal in proof.Refusals)
            PlanJson.WriteRefusal(json, brief, refusal);
        json.WriteEndArray();
        json.WriteEndObject();
    }
}
