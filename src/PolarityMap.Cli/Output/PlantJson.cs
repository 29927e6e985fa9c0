using System.Text.Json;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Cli.Output;

/// <summary>
/// The bound plant for programs: all that tracing and checking know of it, without ranges, types and defaults of the document.
/// The shape is in docs/json.md.
/// </summary>
internal static class PlantJson
{
    public static byte[] Bytes(Plant plant) => JsonText.Bytes("polaritymap/plant", json =>
    {
        json.WriteString("plant", plant.Title.Title);
        json.WriteString("site", plant.Title.Site);
        json.WriteString("revision", plant.Title.Revision);
        json.WriteString("date", plant.Title.Date);
        json.WriteString("author", plant.Title.Author);
        json.WriteString("number", plant.Title.Number);
        json.WriteString("limits", plant.Practice.Limits.Name);
        json.WriteString("colours", plant.Practice.Colours.Name);
        OpticsJson.Number(json, "askedMargin", plant.Practice.Margin?.Value);
        OpticsJson.Number(json, "groupIndex", plant.Practice.GroupIndex);
        SeparationJson.WriteNetworks(json, plant);
        json.WriteStartArray("parts");
        for (int i = 0; i < plant.Parts.Count; i++)
            WritePart(json, plant, i);
        json.WriteEndArray();
        WriteMatings(json, plant);
        json.WriteStartArray("links");
        foreach (Link link in plant.Links)
        {
            json.WriteStartObject();
            json.WriteString("from", plant.Address(link.From));
            json.WriteString("to", plant.Address(link.To));
            JsonText.WritePlace(json, link.Place);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });

    private static void WritePart(Utf8JsonWriter json, Plant plant, int index)
    {
        Part part = plant.Parts[index];
        json.WriteStartObject();
        json.WriteString("name", part.Name);
        json.WriteString("kind", part.Kind);
        json.WriteStartArray("caption");
        foreach (string line in part.Caption)
            json.WriteStringValue(line);
        json.WriteEndArray();
        json.WriteString("network", part.Network < 0 ? null : plant.Networks[part.Network].Name);
        json.WriteString("room", part.Room);
        json.WriteString("note", part.Note);
        OpticsJson.Number(json, "length", part.Length is { } length ? OpticsJson.Metres(length) : null);
        json.WriteString("fibre", part.Fibre?.Name);
        OpticsJson.Number(json, "attenuation", part.Attenuation?.DecibelPerKm);
        json.WriteNumber("splices", part.Shape.Splices);
        OpticsJson.Number(json, "spliceLoss", part.SpliceLoss?.Value);
        json.WriteString("jacket", part.Jacket);
        json.WriteString("key", part.Key);
        json.WriteBoolean("reversible", part.IsReversible);
        JsonText.WriteNumbers(json, "spareLegs", part.SpareLegs);
        json.WriteBoolean("cable", part.Shape.IsCable);
        json.WriteBoolean("interface", part.Shape.IsInterface);
        json.WriteBoolean("inline", part.IsInline);
        json.WriteBoolean("asBuilt", part.IsAsBuilt);
        JsonText.WritePlace(json, part.Place);
        json.WriteStartArray("ports");
        for (int port = 0; port < part.Shape.Ports.Count; port++)
            WritePort(json, plant, new PortRef(index, port));
        json.WriteEndArray();
        CatalogueJson.WriteJoins(json, part.Shape);
        json.WriteEndObject();
    }

    private static void WritePort(Utf8JsonWriter json, Plant plant, PortRef at)
    {
        PortShape port = plant.Port(at);
        json.WriteStartObject();
        json.WriteString("name", port.Name);
        json.WriteString("face", port.Face.ToString());
        json.WriteNumber("rows", port.Face.Rows);
        json.WriteNumber("columns", port.Face.Columns);
        json.WriteBoolean("offsetKey", port.Face.OffsetKey);
        json.WriteString("side", port.Side == Side.Near ? "near" : "far");
        json.WriteBoolean("adapter", port.IsAdapter);
        if (port.Leg > 0)
            json.WriteNumber("leg", port.Leg);
        else
            json.WriteNull("leg");
        json.WriteString("connector", port.Connector.Length == 0 ? null : port.Connector);
        json.WriteString("keys", port.Keys?.Word());
        if (port.Pinned is { } pinned)
            json.WriteBoolean("pinned", pinned);
        else
            json.WriteNull("pinned");
        json.WriteString("polish", port.Polish?.Word());
        json.WriteString("network", plant.NetworkOf(at) is >= 0 and int network ? plant.Networks[network].Name : null);
        json.WriteString("key", plant.KeyOf(at));
        OpticsJson.Number(json, "statedLoss", port.StatedLoss?.Value);
        OpticsJson.Number(json, "expectedLoss", port.ExpectedLoss?.Value);
        json.WriteString("application", port.Application?.Name);
        WriteLanes(json, plant.Parts[at.Part].Shape, at.Port);
        json.WriteEndObject();
    }

    private static void WriteLanes(Utf8JsonWriter json, Shape shape, int port)
    {
        json.WriteStartArray("lanes");
        foreach (Lane lane in shape.Lanes)
        {
            if (lane.Port != port)
                continue;
            json.WriteStartObject();
            json.WriteNumber("position", lane.Position);
            json.WriteString("use", lane.Direction switch { LaneDirection.Transmit => "transmit", LaneDirection.Receive => "receive", _ => "both" });
            json.WriteNumber("lane", lane.Number);
            json.WriteNumber("link", lane.Group);
            OpticsJson.Number(json, "sends", lane.Sends?.Nanometres);
            OpticsJson.Number(json, "hears", lane.Hears?.Nanometres);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteMatings(Utf8JsonWriter json, Plant plant)
    {
        json.WriteStartArray("matings");
        foreach (Mating mating in plant.Matings)
        {
            json.WriteStartObject();
            json.WriteString("a", Address(plant, mating.A, mating.PositionOfA));
            json.WriteString("b", Address(plant, mating.B, mating.PositionOfB));
            json.WriteString("keys", plant.Port(mating.A).Face.Family == ConnectorFamily.Array ? mating.Keys.Word() : null);
            json.WriteString("adapter", mating.Through is { } adapter ? plant.Address(adapter) : null);
            json.WriteBoolean("fits", plant.Fits(mating));
            JsonText.WritePlace(json, mating.Place);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("openPlugs");
        foreach (OpenPlug open in plant.OpenPlugs)
        {
            json.WriteStartObject();
            json.WriteString("plug", plant.Address(open.Plug));
            json.WriteString("adapter", plant.Address(open.Adapter));
            JsonText.WritePlace(json, open.Place);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("clashes");
        foreach (PortClash clash in plant.Clashes)
        {
            json.WriteStartObject();
            json.WriteString("port", Address(plant, clash.Port, clash.Position));
            json.WriteString("refused", clash.Refused is { } refused ? plant.Address(refused) : null);
            JsonText.WritePlace(json, "first", clash.First);
            JsonText.WritePlace(json, clash.Place);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>The address of a port, or of the one position of it that a simplex plug takes.</summary>
    private static string Address(Plant plant, PortRef port, int position) => position == 0 ? plant.Address(port) : plant.Address(port, position);
}
