using System.Text.Json;
using PolarityMap.Core.Parts;
using PolarityMap.Documents.Binding;

namespace PolarityMap.Documents.Schema;

/// <summary>The part of the schema that describes parts and types, written from the kinds' own attribute specifications.</summary>
internal static class DescriptionSchema
{
    /// <summary>An unsigned number with a point, as losses, lengths and the like begin.</summary>
    public const string Number = @"([0-9]+\.?[0-9]*|\.[0-9]+)";

    public const string LossPattern = "^ *" + Number + " *dB *$";
    private const string AttenuationPattern = "^ *" + Number + " *dB/km *$";
    private const string LengthPattern = "^ *" + Number + " *(mm|cm|m|km|ft) *$";
    private const string RangePattern = @"^(\[[0-9., by]+\]|[0-9]+(\.\.[0-9]+)?)$";
    private const string WidePositionPattern = "^(none|-|(0*[1-9][0-9]*:)?0*[1-9][0-9]*)$";

    /// <summary>Writes the definitions <c>description</c>, <c>attributes</c> and <c>pairs</c>.</summary>
    public static void Write(Utf8JsonWriter json)
    {
        json.Described("description", "The name of a kind or type, or a mapping with kind and attributes.", () =>
        {
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
        json.Described("attributes", "Attributes of some kind of part.", () => WriteAnyAttributes(json));
        json.Described("pairs", "Positions in pairs, such as [[1, 12], [2, 11]].", () =>
            json.List(() => json.List(() => json.Integer(1), 2, 2), 1, AttributeLists.MostEntries));
    }

    /// <summary>A description whose kind is this one, or a catalogue entry of it, takes exactly this kind's attributes.</summary>
    private static void WriteKind(Utf8JsonWriter json, PartKind kind)
    {
        json.WriteStartObject();
        json.WriteString("title", kind.Name);
        json.WriteString("description", kind.Summary);
        json.WriteString("type", "object");
        json.Required(DocumentKeys.Kind);
        json.WriteBoolean("additionalProperties", false);
        json.Object("properties", () =>
        {
            json.Object(DocumentKeys.Kind, () => json.Enum(NamesOf(kind)));
            foreach (AttributeSpec spec in kind.AllAttributes)
                json.Object(spec.Name, () => WriteAttribute(json, spec));
        });

        // One attribute at most stands instead of another in any kind.
        if (kind.Attributes.FirstOrDefault(a => a.InsteadOf is not null) is { } other)
            json.Object("not", () => json.Required(other.Name, other.InsteadOf!));
        json.WriteEndObject();
    }

    private static List<string> NamesOf(PartKind kind) => [kind.Name, .. Catalogue.All.Where(t => t.Kind == kind.Name).Select(t => t.Name)];

    /// <summary>A description whose kind is a type of a document: the schema cannot know its attributes.</summary>
    private static void WriteOwnType(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("title", "a type of this document or of a catalogue file");
        json.WriteString("$ref", "#/$defs/attributes");
        json.Required(DocumentKeys.Kind);
        json.Object("properties", () => json.Object(DocumentKeys.Kind, () =>
        {
            json.WriteString("type", "string");
            json.Object("not", () => json.Enum([.. PartKinds.All.SelectMany(NamesOf)]));
        }));
        json.WriteEndObject();
    }

    /// <summary>Attributes of a part whose kind the schema cannot know: any kind's, each as one of the kinds has it.</summary>
    private static void WriteAnyAttributes(Utf8JsonWriter json)
    {
        json.WriteString("type", "object");
        json.WriteBoolean("additionalProperties", false);
        json.Object("properties", () =>
        {
            json.Object(DocumentKeys.Kind, () =>
            {
                json.WriteString("type", "string");
                json.WriteNumber("minLength", 1);
            });
            foreach (IGrouping<string, AttributeSpec> alike in PartKinds.All.SelectMany(k => k.AllAttributes).GroupBy(a => a.Name))
            {
                json.Object(alike.Key, () =>
                {
                    json.WriteStartArray("anyOf");
                    foreach (AttributeSpec spec in alike.DistinctBy(a => (a.Sort, a.Meaning, a.Default, a.Min, a.Max, string.Join('|', a.Words))))
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
                json.Enum(spec.Words);
                break;
            case AttributeSort.WholeNumber when spec.Numbers.Count > 0:
                json.WriteStartArray("enum");
                foreach (int number in spec.Numbers)
                    json.WriteNumberValue(number);
                json.WriteEndArray();
                break;
            case AttributeSort.WholeNumber:
                json.Integer(spec.Min, spec.Max);
                break;
            case AttributeSort.Length:
                json.Pattern(LengthPattern);
                break;
            case AttributeSort.Loss:
                json.Pattern(LossPattern);
                break;
            case AttributeSort.Attenuation:
                json.Pattern(AttenuationPattern);
                break;
            case AttributeSort.Wiring:
                json.AnyOf(() => json.Enum(spec.Words), () => WritePairs(json));
                break;
            case AttributeSort.Pairs:
                WritePairs(json);
                break;
            case AttributeSort.Conversion:
                json.List(() => json.List(() => json.AnyOf(() => json.Integer(1), () => json.Pattern(WidePositionPattern)), 1), 1);
                break;
            case AttributeSort.Networks:
                json.List(json.Scalar, 1);
                break;
            case AttributeSort.Legs:
                json.AnyOf(() => json.Integer(1), () => json.Pattern(RangePattern), () =>
                    json.List(() => json.AnyOf(() => json.Integer(1), () => json.Pattern(RangePattern))));
                break;
            default:
                json.Scalar();
                break;
        }

        if (spec.Default is { } standard && spec.Sort == AttributeSort.WholeNumber)
            json.WriteNumber("default", int.Parse(standard, System.Globalization.CultureInfo.InvariantCulture));
        else if (spec.Default is { } word)
            json.WriteString("default", word);
    }

    private static void WritePairs(Utf8JsonWriter json) => json.WriteString("$ref", "#/$defs/pairs");
}
