using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views;

namespace PolarityMap.Reports.Interactive;

/// <summary>
/// What the page's script knows of the plant. Ports are numbers into <c>ports</c>, positions are a port and a place in it, so
/// that names are written once:
/// <code>
/// { networks: [name], links: [words], findings: [{code, title, severity, message}],
///   parts: [{name, room, is, own}],             own is false for a cord that has no name of its own
///   ports: [{name, part, face, of, plug}],      of: number of positions; plug: the port that sits in this adapter
///   strands: [{n, colour, code, net, link, find, loop, from, to, hops, at: [port, place, …],
///              light: [[1 from the first end or -1 from the last, wavelength, lane or 0]], meant: [port, place]}],
///   sheets: [{id, svg, title, spots: [x, y, width, height, port, place or 0 for all, …], links: [x, y, width, height, sheet, …]}] }
/// </code>
/// Lengths are mm from the sheet's upper left corner. The text holds no <c>&lt;</c>, so that it can stand in an HTML element.
/// </summary>
internal static class DiagramJson
{
    private static readonly JsonWriterOptions s_options = new() { Encoder = JavaScriptEncoder.Create(UnicodeRanges.All) };

    public static string Write(ViewInput input, IReadOnlyList<StrandFacts> strands, IReadOnlyList<PageSheet> sheets)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, s_options))
        {
            var ports = new DiagramPorts(input.Traced, strands);
            Plant plant = input.Traced.Plant;
            json.WriteStartObject();
            Array(json, "networks", plant.Networks, n => Text(json, n.Name));
            Array(json, "links", plant.Links, l => Text(json, $"{plant.Address(l.From)} to {plant.Address(l.To)}"));
            Array(json, "findings", input.Findings, f => WriteFinding(json, f));
            Array(json, "parts", plant.Parts, p => WritePart(json, p));
            Array(json, "ports", ports.All, p => WritePort(json, plant, ports, p));
            Array(json, "strands", strands, s => WriteStrand(json, input, ports, s));
            Array(json, "sheets", sheets, s => WriteSheet(json, ports, s));
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.GetBuffer(), 0, (int)bytes.Length);
    }

    private static void Array<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (T item in items)
            write(item);
        json.WriteEndArray();
    }

    private static void Text(Utf8JsonWriter json, string text) => json.WriteStringValue(CleanText.Of(text));

    private static void Text(Utf8JsonWriter json, string name, string text) => json.WriteString(name, CleanText.Of(text));

    private static void WriteFinding(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartObject();
        Text(json, "code", finding.Rule.Code);
        Text(json, "title", finding.Rule.Title);
        Text(json, "severity", finding.Rule.Severity == Severity.Error ? "error" : "warning");
        Text(json, "message", finding.Message);
        json.WriteEndObject();
    }

    private static void WritePart(Utf8JsonWriter json, Part part)
    {
        json.WriteStartObject();
        Text(json, "name", part.Name);
        if (part.Room is { } room)
            Text(json, "room", room);
        Text(json, "is", string.Join(' ', part.Caption) + (part.Length is { } length ? $" {length}" : ""));
        json.WriteBoolean("own", !part.IsInline);
        json.WriteEndObject();
    }

    private static void WritePort(Utf8JsonWriter json, Plant plant, DiagramPorts ports, PortRef port)
    {
        PortShape shape = plant.Port(port);
        json.WriteStartObject();
        Text(json, "name", plant.Address(port));
        json.WriteNumber("part", port.Part);
        json.WriteString("face", shape.Face.Family switch
        {
            ConnectorFamily.Simplex => "simplex",
            ConnectorFamily.Duplex => "duplex",
            ConnectorFamily.Bare => "bare",
            _ => "array",
        });
        json.WriteNumber("of", shape.PositionCount);
        if (shape.IsAdapter && ports.PlugIn(port) is >= 0 and int plug)
            json.WriteNumber("plug", plug);
        json.WriteEndObject();
    }

    private static void WriteStrand(Utf8JsonWriter json, ViewInput input, DiagramPorts ports, StrandFacts facts)
    {
        TracedPlant traced = input.Traced;
        json.WriteStartObject();
        json.WriteNumber("n", facts.Number);
        Text(json, "colour", facts.Colour.Name);
        Text(json, "code", facts.Colour.Code);
        Array(json, "net", facts.Networks, json.WriteNumberValue);
        Array(json, "link", facts.Links, json.WriteNumberValue);
        Array(json, "find", facts.Findings, json.WriteNumberValue);
        if (facts.IsLoop)
            json.WriteBoolean("loop", true);
        Text(json, "from", facts.From);
        Text(json, "to", facts.To);
        Array(json, "hops", facts.Hops, h => Text(json, h));
        json.WriteStartArray("at");
        foreach (int position in traced.Strands[facts.Strand])
            WritePosition(json, traced, ports, position);
        json.WriteEndArray();
        json.WriteStartArray("light");
        foreach (StrandLight light in facts.Lights)
        {
            json.WriteStartArray();
            json.WriteNumberValue(light.FromFirst ? 1 : -1);
            Text(json, light.Wavelength?.ToString() ?? "");
            json.WriteNumberValue(light.Lane);
            json.WriteEndArray();
        }

        json.WriteEndArray();
        if (input.ExpectedEnds.TryGetValue(facts.Strand, out int meant))
        {
            json.WriteStartArray("meant");
            WritePosition(json, traced, ports, meant);
            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    private static void WritePosition(Utf8JsonWriter json, TracedPlant traced, DiagramPorts ports, int position)
    {
        PositionPlace place = traced.Graph.PlaceOf(position);
        json.WriteNumberValue(ports[place.Port]);
        json.WriteNumberValue(place.Position);
    }

    private static void WriteSheet(Utf8JsonWriter json, DiagramPorts ports, PageSheet sheet)
    {
        json.WriteStartObject();
        json.WriteString("id", sheet.Id);
        json.WriteString("svg", sheet.IdPrefix);
        Text(json, "title", sheet.Title);
        json.WriteStartArray("spots");
        foreach (HitArea area in sheet.HitAreas)
        {
            if (ports[area.Port] is not (>= 0 and int port))
                continue;
            WriteArea(json, area.Area);
            json.WriteNumberValue(port);
            json.WriteNumberValue(area.Position);
        }

        json.WriteEndArray();
        json.WriteStartArray("links");
        foreach (SheetLink link in sheet.Links)
        {
            WriteArea(json, link.Area);
            json.WriteNumberValue(link.Sheet);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteArea(Utf8JsonWriter json, Area area)
    {
        foreach (double length in (ReadOnlySpan<double>)[area.X, area.Y, area.Width, area.Height])
            json.WriteNumberValue(Math.Round(length, 2));
    }
}
