using PolarityMap.Core.Deviations;

namespace PolarityMap.Cli.Output;

/// <summary>Kinds of deviations for programs; the shape is in docs/json.md.</summary>
internal static class DeviationJson
{
    public static void Write(IReadOnlyList<DeviationKind> kinds, TextWriter output) => JsonText.Write(output, "polaritymap/deviations", json =>
    {
        json.WriteStartArray("deviations");
        foreach (DeviationKind kind in kinds)
        {
            json.WriteStartObject();
            json.WriteString("name", kind.Name);
            json.WriteString("title", kind.Title);
            json.WriteString("symptom", kind.Symptom);
            json.WriteNumber("weight", kind.Weight);
            json.WriteBoolean("seenByLooking", kind.LookMinutes > 0);
            json.WriteNumber("lookMinutes", kind.LookMinutes);
            json.WriteNumber("mendMinutes", kind.MendMinutes);
            json.WriteString("source", kind.Source);
            json.WriteString("caution", kind.Caution);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });
}
