using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Cli.Output;

/// <summary>What all JSON output has in common: format and version first, two-space indentation, a line end at the end.</summary>
internal static class JsonText
{
    /// <summary>Raised when a field changes its meaning or goes away; new fields do not raise it.</summary>
    public const int Version = 1;

    public static void Write(TextWriter output, string format, Action<Utf8JsonWriter> body) => output.Write(Encoding.UTF8.GetString(Bytes(format, body)));

    /// <summary>The text as a file holds it: UTF-8 without a mark.</summary>
    public static byte[] Bytes(string format, Action<Utf8JsonWriter> body) => Bytes(json =>
    {
        json.WriteString("format", format);
        json.WriteNumber("version", Version);
        body(json);
    });

    /// <summary>An object of a form that is not ours, laid out as all others.</summary>
    public static byte[] Bytes(Action<Utf8JsonWriter> body)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            body(json);
            json.WriteEndObject();
        }

        buffer.Write("\n"u8);
        return buffer.WrittenSpan.ToArray();
    }

    public static void WritePlace(Utf8JsonWriter json, SourcePlace place)
    {
        json.WriteString("file", place.File);
        json.WriteNumber("line", place.Line);
        json.WriteNumber("column", place.Column);
    }

    public static void WritePlace(Utf8JsonWriter json, string name, SourcePlace place)
    {
        json.WriteStartObject(name);
        WritePlace(json, place);
        json.WriteEndObject();
    }

    public static void WriteNumbers(Utf8JsonWriter json, string name, IEnumerable<int> numbers)
    {
        json.WriteStartArray(name);
        foreach (int number in numbers)
            json.WriteNumberValue(number);
        json.WriteEndArray();
    }

    /// <summary>A strand as an object: number, both ends, and its hops.</summary>
    public static void WriteStrand(Utf8JsonWriter json, TracedPlant traced, int strand)
    {
        json.WriteStartObject();
        WriteStrandFields(json, traced, strand);
        json.WriteEndObject();
    }

    /// <summary>The fields of a strand, into an object that may have more of them.</summary>
    public static void WriteStrandFields(Utf8JsonWriter json, TracedPlant traced, int strand)
    {
        ReadOnlySpan<int> positions = traced.Strands[strand];
        json.WriteNumber("number", traced.NumberOf(strand));
        json.WriteBoolean("loop", traced.Strands.IsLoop(strand));
        if (!traced.Strands.IsLoop(strand))
        {
            WriteEnd(json, "from", traced, positions[0]);
            WriteEnd(json, "to", traced, positions[^1]);
        }

        json.WriteStartArray("hops");
        foreach (Hop hop in traced.Hops(strand))
            WriteHop(json, traced, hop);
        json.WriteEndArray();
    }

    public static void WriteHop(Utf8JsonWriter json, TracedPlant traced, Hop hop)
    {
        Part part = traced.Plant.Parts[hop.Part];
        json.WriteStartObject();
        json.WriteString("part", part.Name);
        json.WriteString("kind", part.Kind);
        json.WriteString("in", hop.In < 0 ? null : traced.Address(hop.In));
        json.WriteString("out", hop.Out < 0 ? null : traced.Address(hop.Out));
        int joint = hop.Out >= 0 ? hop.Out : hop.In;
        if (hop.Out >= 0 && traced.Graph.Outside[joint] >= 0 && traced.MatingAt(joint) is { } mating)
        {
            json.WriteStartObject("mating");
            json.WriteString("keys", traced.Plant.Port(mating.A).Face.Family == ConnectorFamily.Array ? mating.Keys.Word() : null);
            json.WriteString("adapter", mating.Through is { } adapter ? traced.Plant.Address(adapter) : null);
            WritePlace(json, mating.Place);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void WriteEnd(Utf8JsonWriter json, string name, TracedPlant traced, int position)
    {
        json.WriteStartObject(name);
        json.WriteString("address", traced.Address(position));
        json.WriteString("is", HopLine.EndWord(traced, position));
        if (traced.Graph.LaneAt(position) is { } lane)
            json.WriteNumber("lane", lane.Number);
        json.WriteEndObject();
    }
}
