using System.Text.Json;
using PolarityMap.Core.Parts;

namespace PolarityMap.Cli.Output;

/// <summary>The catalogue for programs; the shape is in docs/json.md.</summary>
internal static class CatalogueJson
{
    public static void Write(IReadOnlyList<CataloguePart> parts, TextWriter output) => JsonText.Write(output, "polaritymap/catalogue", json =>
    {
        json.WriteStartArray("parts");
        foreach (CataloguePart part in parts)
        {
            json.WriteStartObject();
            json.WriteString("name", part.Name);
            json.WriteString("kind", part.Kind.Name);
            json.WriteString("summary", part.Kind.Summary);
            json.WriteStartObject("fixed");
            foreach ((string attribute, string word) in part.Fixed)
                json.WriteString(attribute, word);
            json.WriteEndObject();
            WritePorts(json, part.Shape);
            WriteJoins(json, part.Shape);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });

    private static void WritePorts(Utf8JsonWriter json, Shape shape)
    {
        json.WriteStartArray("ports");
        foreach (PortShape port in shape.Ports)
        {
            json.WriteStartObject();
            json.WriteString("name", port.Name);
            json.WriteString("face", port.Face.ToString());
            json.WriteString("side", port.Side == Side.Near ? "near" : "far");
            json.WriteBoolean("adapter", port.IsAdapter);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Pairs of addresses within the part, each pair once.</summary>
    public static void WriteJoins(Utf8JsonWriter json, Shape shape)
    {
        json.WriteStartArray("joins");
        for (int p = 0; p < shape.PositionCount; p++)
        {
            if (shape.Inside[p] <= p)
                continue;
            json.WriteStartArray();
            json.WriteStringValue(Address(shape, p));
            json.WriteStringValue(Address(shape, shape.Inside[p]));
            json.WriteEndArray();
        }

        json.WriteEndArray();
    }

    private static string Address(Shape shape, int position)
    {
        PortShape port = shape.Ports.Last(p => p.PositionCount > 0 && p.FirstPosition <= position);
        string name = port.Face.PositionName(position - port.FirstPosition + 1);
        return name.Length == 0 ? port.Name : $"{port.Name}:{name}";
    }
}
