using PolarityMap.Core.Strands;

namespace PolarityMap.Cli.Output;

/// <summary>Traced strands for programs; the shape is in docs/json.md.</summary>
internal static class TraceJson
{
    public static void Write(TracedPlant traced, IReadOnlyList<int> positions, TextWriter output) => JsonText.Write(output, "polaritymap/trace", json =>
    {
        json.WriteString("plant", traced.Plant.Title.Title);
        json.WriteStartArray("positions");
        foreach (int position in positions)
        {
            json.WriteStartObject();
            json.WriteString("address", traced.Address(position));
            json.WritePropertyName("strand");
            JsonText.WriteStrand(json, traced, traced.StrandOf(position));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });
}
