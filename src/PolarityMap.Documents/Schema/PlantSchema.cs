using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using PolarityMap.Core.Parts;
using PolarityMap.Documents.Binding;

namespace PolarityMap.Documents.Schema;

/// <summary>
/// The JSON Schema (draft 2020-12) of plant documents. It is written from the part kinds' own attribute specifications, so
/// that it cannot say anything else than the reader does. What a schema cannot know (whether a named part exists, whether two
/// ports mate) is left to <c>check</c>.
/// </summary>
public static class PlantSchema
{
    private const string LengthPattern = @"^ *([0-9]+\.?[0-9]*|\.[0-9]+) *(mm|cm|m|km|ft) *$";
    private const string DatePattern = "^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$";
    private const string RangePattern = @"^(\[[0-9., by]+\]|[0-9]+(\.\.[0-9]+)?)$";

    /// <summary>No stroke at the start, no backslash or colon, no step out of the folder.</summary>
    private const string PathPattern = @"^(?!(.*/)?\.\.(/|$))[^/\\:][^\\:]*$";

    public static string Text()
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
            WriteRoot(json);
        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    private static void WriteRoot(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
        json.WriteString("title", "Plant document");
        json.WriteString("type", "object");
        json.WriteStartArray("oneOf");
        json.WriteStartObject();
        json.WriteString("title", "A plant");
        Required(json, DocumentKeys.Plant, DocumentKeys.Parts);
        Object(json, "not", () => Required(json, DocumentKeys.Design));
        json.WriteEndObject();
        json.WriteStartObject();
        json.WriteString("title", "As-built differences from a design in another document");
        Required(json, DocumentKeys.Design, DocumentKeys.AsBuilt);
        Object(json, "not", () =>
        {
            json.WriteStartArray("anyOf");
            foreach (string key in (ReadOnlySpan<string>)[DocumentKeys.Networks, DocumentKeys.Types, DocumentKeys.Parts, DocumentKeys.Runs, DocumentKeys.Links])
            {
                json.WriteStartObject();
                Required(json, key);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        });
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteBoolean("additionalProperties", false);
        Object(json, "properties", () => WriteSections(json));
        Object(json, "$defs", () => WriteDefinitions(json));
        json.WriteEndObject();
    }

    private static void WriteSections(Utf8JsonWriter json)
    {
        foreach ((string key, string meaning) in DocumentKeys.Titles)
        {
            Object(json, key, () =>
            {
                json.WriteString("description", meaning);
                if (key == DocumentKeys.Date)
                {
                    json.WriteString("type", "string");
                    json.WriteString("pattern", DatePattern);
                }
                else
                {
                    Scalar(json);
                }
            });
        }

        Object(json, DocumentKeys.Design, () =>
        {
            json.WriteString("description", "The plant document that was built, a path inside this document's folder.");
            json.WriteString("type", "string");
            json.WriteString("pattern", PathPattern);
        });
        Named(json, DocumentKeys.Networks, "The physically separate networks, with their colours.", NetworkReader.MostNetworks, () =>
        {
            json.WriteStartArray("type");
            json.WriteStringValue("object");
            json.WriteStringValue("null");
            json.WriteEndArray();
            json.WriteBoolean("additionalProperties", false);
            Object(json, "properties", () => Object(json, DocumentKeys.Colour, () =>
            {
                json.WriteString("description", "The colour that the network's parts carry, in words.");
                Scalar(json);
            }));
        });
        Named(json, DocumentKeys.Types, "Types that are used repeatedly: a name, then a kind with attributes.", null, () => json.WriteString("$ref", "#/$defs/description"));
        Named(json, DocumentKeys.Parts, "The parts: a name, with ranges such as SW-[1..4], then a kind with attributes.", null, () => json.WriteString("$ref", "#/$defs/description"));
        Object(json, DocumentKeys.Runs, () =>
        {
            json.WriteString("description", "Chains in the order in which a finger would follow; consecutive stops are mated.");
            json.WriteString("type", "array");
            Object(json, "items", () =>
            {
                json.WriteStartArray("anyOf");
                json.WriteStartObject();
                json.WriteString("type", "string");
                json.WriteString("pattern", @"\S.*,.*\S");
                json.WriteEndObject();
                json.WriteStartObject();
                json.WriteString("type", "array");
                json.WriteNumber("minItems", 2);
                Object(json, "items", () => Scalar(json));
                json.WriteEndObject();
                json.WriteEndArray();
            });
        });
        Texts(json, DocumentKeys.Links, "What is meant, such as 'SW-L/1..6 to SW-R/1..6'.", @"^\S.* to .*\S$");
        Object(json, DocumentKeys.AsBuilt, () =>
        {
            json.WriteString("description", "Differences of the site from the design.");
            json.WriteString("type", "object");
            json.WriteBoolean("additionalProperties", false);
            Object(json, "properties", () =>
            {
                Named(json, DocumentKeys.Parts, "Parts of another type than designed, with the attributes that differ.", null, () => json.WriteString("$ref", "#/$defs/attributes"));
                Texts(json, DocumentKeys.Exchanged, "Ports whose plugs have changed places, such as 'K-1/3 and K-1/4'.", @"^\S.* and .*\S$");
                Texts(json, DocumentKeys.Moved, "A plug that sits in another port, such as 'K-1/3 to K-1/4'.", @"^\S.* to .*\S$");
                Texts(json, DocumentKeys.Unplugged, "Ports whose plug was pulled.", @"\S");
            });
        });
    }

    private static void WriteDefinitions(Utf8JsonWriter json)
    {
        Object(json, "description", () =>
        {
            json.WriteString("description", "The name of a kind or type, or a mapping with kind and attributes.");
            json.WriteStartArray("anyOf");
            json.WriteStartObject();
            json.WriteString("type", "string");
            json.WriteNumber("minLength", 1);
            json.WriteEndObject();
            foreach (PartKind kind in PartKinds.All)
                WriteKind(json, kind);
            WriteOwnType(json);
            json.WriteEndArray();
        });
        Object(json, "attributes", () => WriteAnyAttributes(json));
        WriteWiring(json);
    }

    /// <summary>A description whose kind is this one, or a catalogue entry of it, takes exactly this kind's attributes.</summary>
    private static void WriteKind(Utf8JsonWriter json, PartKind kind)
    {
        json.WriteStartObject();
        json.WriteString("title", kind.Name);
        json.WriteString("description", kind.Summary);
        json.WriteString("type", "object");
        Required(json, DocumentKeys.Kind);
        json.WriteBoolean("additionalProperties", false);
        Object(json, "properties", () =>
        {
            Object(json, DocumentKeys.Kind, () => Enum(json, NamesOf(kind)));
            foreach (AttributeSpec spec in kind.AllAttributes)
                Object(json, spec.Name, () => WriteAttribute(json, spec));
        });
        json.WriteEndObject();
    }

    private static List<string> NamesOf(PartKind kind) => [kind.Name, .. Catalogue.All.Where(t => t.Kind == kind.Name).Select(t => t.Name)];

    /// <summary>A description whose kind is a type of the document: the schema cannot know its attributes.</summary>
    private static void WriteOwnType(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("title", "a type of this document");
        json.WriteString("$ref", "#/$defs/attributes");
        Required(json, DocumentKeys.Kind);
        Object(json, "properties", () => Object(json, DocumentKeys.Kind, () =>
        {
            json.WriteString("type", "string");
            Object(json, "not", () => Enum(json, [.. PartKinds.All.SelectMany(NamesOf)]));
        }));
        json.WriteEndObject();
    }

    /// <summary>Attributes of a part whose kind the schema cannot know: any kind's, each as one of the kinds has it.</summary>
    private static void WriteAnyAttributes(Utf8JsonWriter json)
    {
        json.WriteString("description", "Attributes of some kind of part.");
        json.WriteString("type", "object");
        json.WriteBoolean("additionalProperties", false);
        Object(json, "properties", () =>
        {
            Object(json, DocumentKeys.Kind, () =>
            {
                json.WriteString("type", "string");
                json.WriteNumber("minLength", 1);
            });
            foreach (IGrouping<string, AttributeSpec> alike in PartKinds.All.SelectMany(k => k.AllAttributes).GroupBy(a => a.Name))
            {
                Object(json, alike.Key, () =>
                {
                    json.WriteStartArray("anyOf");
                    foreach (AttributeSpec spec in alike.DistinctBy(a => (a.Meaning, a.Default, a.Min, a.Max)))
                    {
                        json.WriteStartObject();
                        WriteAttribute(json, spec);
                        json.WriteEndObject();
                    }

                    json.WriteEndArray();
                });
            }
        });
    }

    private static void WriteAttribute(Utf8JsonWriter json, AttributeSpec spec)
    {
        json.WriteString("description", spec.Meaning);
        switch (spec.Sort)
        {
            case AttributeSort.Choice:
                Enum(json, spec.Words);
                break;
            case AttributeSort.WholeNumber when spec.Numbers.Count > 0:
                json.WriteStartArray("enum");
                foreach (int number in spec.Numbers)
                    json.WriteNumberValue(number);
                json.WriteEndArray();
                break;
            case AttributeSort.WholeNumber:
                json.WriteString("type", "integer");
                json.WriteNumber("minimum", spec.Min);
                json.WriteNumber("maximum", spec.Max);
                break;
            case AttributeSort.Length:
                json.WriteString("type", "string");
                json.WriteString("pattern", LengthPattern);
                break;
            case AttributeSort.Wiring:
                json.WriteString("$ref", "#/$defs/wiring");
                break;
            case AttributeSort.Legs:
                WriteLegs(json);
                break;
            default:
                Scalar(json);
                break;
        }

        if (spec.Default is { } standard && spec.Sort == AttributeSort.WholeNumber)
            json.WriteNumber("default", int.Parse(standard, System.Globalization.CultureInfo.InvariantCulture));
        else if (spec.Default is { } word)
            json.WriteString("default", word);
    }

    private static void WriteLegs(Utf8JsonWriter json)
    {
        json.WriteStartArray("anyOf");
        WriteNumberOrRange(json);
        json.WriteStartObject();
        json.WriteString("type", "array");
        Object(json, "items", () =>
        {
            json.WriteStartArray("anyOf");
            WriteNumberOrRange(json);
            json.WriteEndArray();
        });
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static void WriteNumberOrRange(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("type", "integer");
        json.WriteNumber("minimum", 1);
        json.WriteEndObject();
        json.WriteStartObject();
        json.WriteString("type", "string");
        json.WriteString("pattern", RangePattern);
        json.WriteEndObject();
    }

    private static void WriteWiring(Utf8JsonWriter json) => Object(json, "wiring", () =>
    {
        json.WriteString("description", "A named wiring, or per duplex port its array positions for A and B.");
        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        Enum(json, Transition.Names);
        json.WriteEndObject();
        json.WriteStartObject();
        json.WriteString("type", "array");
        json.WriteNumber("minItems", 1);
        Object(json, "items", () =>
        {
            json.WriteString("type", "array");
            json.WriteNumber("minItems", 2);
            json.WriteNumber("maxItems", 2);
            Object(json, "items", () =>
            {
                json.WriteString("type", "integer");
                json.WriteNumber("minimum", 1);
            });
        });
        json.WriteEndObject();
        json.WriteEndArray();
    });

    /// <summary>A text: a number, a date or yes is read as a text too.</summary>
    private static void Scalar(Utf8JsonWriter json)
    {
        json.WriteStartArray("type");
        foreach (string type in (ReadOnlySpan<string>)["string", "number", "boolean"])
            json.WriteStringValue(type);
        json.WriteEndArray();
        json.WriteNumber("minLength", 1);
    }

    private static void Named(Utf8JsonWriter json, string key, string description, int? most, Action value) => Object(json, key, () =>
    {
        json.WriteString("description", description);
        json.WriteString("type", "object");
        if (most is { } count)
            json.WriteNumber("maxProperties", count);
        Object(json, "additionalProperties", value);
    });

    private static void Texts(Utf8JsonWriter json, string key, string description, string pattern) => Object(json, key, () =>
    {
        json.WriteString("description", description);
        json.WriteString("type", "array");
        Object(json, "items", () =>
        {
            json.WriteString("type", "string");
            json.WriteString("pattern", pattern);
        });
    });

    private static void Object(Utf8JsonWriter json, string key, Action body)
    {
        json.WriteStartObject(key);
        body();
        json.WriteEndObject();
    }

    private static void Required(Utf8JsonWriter json, params ReadOnlySpan<string> keys)
    {
        json.WriteStartArray("required");
        foreach (string key in keys)
            json.WriteStringValue(key);
        json.WriteEndArray();
    }

    private static void Enum(Utf8JsonWriter json, IReadOnlyList<string> words)
    {
        json.WriteStartArray("enum");
        foreach (string word in words)
            json.WriteStringValue(word);
        json.WriteEndArray();
    }
}
