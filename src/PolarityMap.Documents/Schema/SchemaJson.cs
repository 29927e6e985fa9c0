using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace PolarityMap.Documents.Schema;

/// <summary>The pieces that the schema is written from again and again.</summary>
internal static class SchemaJson
{
    /// <summary>The text of a schema: indented, with a line feed at each line's end.</summary>
    public static string Text(Action<Utf8JsonWriter> root)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
            root(json);
        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    public static void Object(this Utf8JsonWriter json, string key, Action body)
    {
        json.WriteStartObject(key);
        body();
        json.WriteEndObject();
    }

    /// <summary>A list of alternatives, each written by one action.</summary>
    public static void AnyOf(this Utf8JsonWriter json, params ReadOnlySpan<Action> alternatives)
    {
        json.WriteStartArray("anyOf");
        foreach (Action alternative in alternatives)
        {
            json.WriteStartObject();
            alternative();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    public static void Required(this Utf8JsonWriter json, params ReadOnlySpan<string> keys)
    {
        json.WriteStartArray("required");
        foreach (string key in keys)
            json.WriteStringValue(key);
        json.WriteEndArray();
    }

    /// <summary>None of these keys.</summary>
    public static void Without(this Utf8JsonWriter json, params IReadOnlyList<string> keys) => json.Object("not", () =>
    {
        json.WriteStartArray("anyOf");
        foreach (string key in keys)
        {
            json.WriteStartObject();
            json.Required(key);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });

    public static void Enum(this Utf8JsonWriter json, params IReadOnlyList<string> words)
    {
        json.WriteStartArray("enum");
        foreach (string word in words)
            json.WriteStringValue(word);
        json.WriteEndArray();
    }

    public static void Described(this Utf8JsonWriter json, string key, string description, Action body) => json.Object(key, () =>
    {
        json.WriteString("description", description);
        body();
    });

    /// <summary>A text: a number, a date or yes is read as a text too.</summary>
    public static void Scalar(this Utf8JsonWriter json)
    {
        json.WriteStartArray("type");
        foreach (string type in (ReadOnlySpan<string>)["string", "number", "boolean"])
            json.WriteStringValue(type);
        json.WriteEndArray();
        json.WriteNumber("minLength", 1);
    }

    public static void Pattern(this Utf8JsonWriter json, string pattern)
    {
        json.WriteString("type", "string");
        json.WriteString("pattern", pattern);
    }

    public static void Integer(this Utf8JsonWriter json, int least, int? most = null)
    {
        json.WriteString("type", "integer");
        json.WriteNumber("minimum", least);
        if (most is { } number)
            json.WriteNumber("maximum", number);
    }

    public static void List(this Utf8JsonWriter json, Action item, int? least = null, int? most = null)
    {
        json.WriteString("type", "array");
        if (least is { } few)
            json.WriteNumber("minItems", few);
        if (most is { } many)
            json.WriteNumber("maxItems", many);
        json.Object("items", item);
    }

    /// <summary>A mapping from names of the user's own to values that are all alike.</summary>
    public static void Named(this Utf8JsonWriter json, string key, string description, int? most, Action value) => json.Described(key, description, () =>
    {
        json.WriteString("type", "object");
        if (most is { } count)
            json.WriteNumber("maxProperties", count);
        json.Object("additionalProperties", value);
    });

    public static void Texts(this Utf8JsonWriter json, string key, string description, string pattern) =>
        json.Described(key, description, () => json.List(() => json.Pattern(pattern)));
}
