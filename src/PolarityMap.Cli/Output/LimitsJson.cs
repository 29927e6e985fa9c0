using System.Text.Json;
using PolarityMap.Core.Budget;
using PolarityMap.Core.Optics;

namespace PolarityMap.Cli.Output;

/// <summary>The loss formula with every limit of every profile, for programs; the shape is in docs/json.md.</summary>
internal static class LimitsJson
{
    public static void Write(TextWriter output) => JsonText.Write(output, "polaritymap/limits", json =>
    {
        json.WriteString("formula", LossSum.Formula);
        json.WriteString("source", LossSum.Source);
        json.WriteStartArray("profiles");
        foreach (LimitProfile profile in LimitProfile.All)
        {
            json.WriteStartObject();
            json.WriteString("name", profile.Name);
            json.WriteBoolean("default", profile == LimitProfile.Default);
            json.WriteString("meaning", profile.Meaning);
            json.WriteString("source", profile.Source);
            WriteRows(json, "limits", LimitRows.Of(profile));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        WriteRows(json, "estimates", LimitRows.Estimates());
    });

    public static void WriteRows(Utf8JsonWriter json, string name, IEnumerable<LimitRow> rows)
    {
        json.WriteStartArray(name);
        foreach (LimitRow row in rows)
        {
            json.WriteStartObject();
            json.WriteString("what", row.What);
            json.WriteString("fibre", row.Fibre);
            OpticsJson.Number(json, "wavelength", row.Wavelength?.Nanometres);
            OpticsJson.Number(json, "value", row.Value);
            json.WriteString("unit", row.Unit);
            json.WriteString("confidence", row.Confidence.ToString());
            json.WriteString("from", row.From);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
