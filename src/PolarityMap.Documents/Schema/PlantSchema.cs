using System.Text.Json;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Plants;
using PolarityMap.Documents.Binding;

namespace PolarityMap.Documents.Schema;

/// <summary>
/// The JSON Schema (draft 2020-12) of plant documents and catalogue files. It is written from the part kinds' own attribute
/// specifications, so that it cannot say anything else than the reader does. What a schema cannot know (whether a named part
/// exists, whether two ports mate) is left to <c>check</c>.
/// </summary>
public static class PlantSchema
{
    private const string DatePattern = "^[0-9]{4}-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$";

    /// <summary>No stroke at the start, no backslash, colon or control character, no step out of the folder.</summary>
    private const string PathPattern = @"^(?!(.*/)?\.\.(/|$))[^/\\:\x00-\x1f\x7f-\x9f][^\\:\x00-\x1f\x7f-\x9f]*$";

    /// <summary>A number from 1.3 to 1.7 written as a text.</summary>
    private const string GroupIndexPattern = @"^0*1\.([3-6][0-9]*|70*)$";

    public static string Text() => SchemaJson.Text(WriteRoot);

    private static void WriteRoot(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
        json.WriteString("title", "Plant document");
        json.WriteString("type", "object");
        json.WriteStartArray("oneOf");
        WriteForm(json, "A plant", [DocumentKeys.Plant, DocumentKeys.Parts], DocumentKeys.OfPlant);
        WriteForm(json, "As-built differences from a design in another document", [DocumentKeys.Design, DocumentKeys.AsBuilt], DocumentKeys.OfOverlay);
        WriteForm(json, "A catalogue file, which plants include", [DocumentKeys.Catalogue], DocumentKeys.OfCatalogue);
        json.WriteEndArray();
        json.WriteBoolean("additionalProperties", false);
        json.Object("properties", () => WriteSections(json));
        json.Object("$defs", () => DescriptionSchema.Write(json));
        json.WriteEndObject();
    }

    /// <summary>One form of document: the keys that it must have, and none of those that only other forms have.</summary>
    private static void WriteForm(Utf8JsonWriter json, string title, string[] required, IReadOnlyList<string> known)
    {
        json.WriteStartObject();
        json.WriteString("title", title);
        json.Required(required);
        json.Without([.. DocumentKeys.OfPlant.Concat(DocumentKeys.OfOverlay).Concat(DocumentKeys.OfCatalogue).Distinct().Except(known)]);
        json.WriteEndObject();
    }

    private static void WriteSections(Utf8JsonWriter json)
    {
        foreach ((string key, string meaning) in DocumentKeys.Titles)
        {
            json.Described(key, meaning, () =>
            {
                if (key == DocumentKeys.Date)
                    json.Pattern(DatePattern);
                else
                    json.Scalar();
            });
        }

        json.Described(DocumentKeys.Catalogue, "The title of a catalogue file.", json.Scalar);
        json.Described(DocumentKeys.Design, "The plant document that was built, a path inside this document's folder.", () => WritePath(json));
        json.Described(DocumentKeys.Include, "Catalogue files whose types are used here: a path inside this document's folder, or a list of them.", () =>
            json.AnyOf(() => WritePath(json), () => json.List(() => WritePath(json), most: References.MostIncludes)));
        WriteNetworks(json);
        WriteDefaults(json);
        json.Named(DocumentKeys.Types, "Types that are used repeatedly: a name, then a kind with attributes.", null, () => json.WriteString("$ref", "#/$defs/description"));
        json.Named(DocumentKeys.Parts, "The parts: a name, with ranges such as SW-[1..4], then a kind with attributes.", null, () => json.WriteString("$ref", "#/$defs/description"));
        json.Described(DocumentKeys.Runs, "Chains in the order in which a finger would follow; consecutive stops are mated.", () =>
            json.List(() => json.AnyOf(() => json.Pattern(@"\S.*,.*\S"), () => json.List(json.Scalar, 2))));
        json.Texts(DocumentKeys.Links, "What is meant, such as 'SW-L/1..6 to SW-R/1..6'.", @"^\S.* to .*\S$");
        json.Described(DocumentKeys.AsBuilt, "Differences of the site from the design.", () =>
        {
            json.WriteString("type", "object");
            json.WriteBoolean("additionalProperties", false);
            json.Object("properties", () =>
            {
                json.Named(DocumentKeys.Parts, "Parts of another type than designed, with the attributes that differ.", null, () => json.WriteString("$ref", "#/$defs/attributes"));
                json.Texts(DocumentKeys.Exchanged, "Ports whose plugs have changed places, such as 'K-1/3 and K-1/4'.", @"^\S.* and .*\S$");
                json.Texts(DocumentKeys.Moved, "A plug that sits in another port, such as 'K-1/3 to K-1/4'.", @"^\S.* to .*\S$");
                json.Texts(DocumentKeys.Unplugged, "Ports whose plug was pulled.", @"\S");
                json.Texts(DocumentKeys.Plugged, "A cable's plug and the port that it sits in, wherever it was before, such as 'CORD/far to K-1/4'.", @"^\S.* to .*\S$");
            });
        });
    }

    private static void WritePath(Utf8JsonWriter json)
    {
        json.Pattern(PathPattern);
        json.WriteNumber("maxLength", References.LongestPath);
    }

    private static void WriteNetworks(Utf8JsonWriter json) =>
        json.Named(DocumentKeys.Networks, "The physically separate networks, with their colours and what they may share.", NetworkReader.MostNetworks, () =>
        {
            json.WriteStartArray("type");
            json.WriteStringValue("object");
            json.WriteStringValue("null");
            json.WriteEndArray();
            json.WriteBoolean("additionalProperties", false);
            json.Object("properties", () =>
            {
                json.Described(DocumentKeys.Colour, "The colour that the network's parts carry, in words.", json.Scalar);
                json.Described(DocumentKeys.Key, "The key code of its keyed duplex connectors.", json.Scalar);
                json.Described(DocumentKeys.PlainFits, "Whether plain plugs and its keyed connectors go together.", () => json.Enum("yes", "no"));
                json.Described(DocumentKeys.MayShare, "What it may share with other networks; without it nothing is judged.", () =>
                    json.AnyOf(() => json.Enum(NetworkReader.Nothing), () => json.List(() => json.Enum(SharedWords.All))));
            });
        });

    private static void WriteDefaults(Utf8JsonWriter json) =>
        json.Described(DocumentKeys.Defaults, "What the plant says once for all of its parts, and what it is judged by.", () =>
        {
            json.WriteString("type", "object");
            json.WriteBoolean("additionalProperties", false);
            json.Object("properties", () =>
            {
                json.Described(DocumentKeys.Fibre, "The fibre class of parts that state none.", () => json.Enum(FibreClass.Names));
                json.Described(DocumentKeys.Pins, "Which side of a cassette's rear carries guide pins.", () => json.Enum(DefaultsReader.PinWords));
                json.Described(DocumentKeys.Limits, "The set of limits that losses are judged by.", () => json.Enum(LimitProfile.Names));
                json.Described(DocumentKeys.Colours, "The order of fibre colours: the name of a sequence, or a list of colours.", () =>
                    json.AnyOf(() => json.Enum(ColourSequence.Names), () => json.List(json.Scalar, 1)));
                json.Described(DocumentKeys.Margin, "The margin that every link must keep.", () => json.Pattern(DescriptionSchema.LossPattern));
                json.Described(DocumentKeys.GroupIndex, "A group index for the delay, instead of those of the fibre classes.", () =>
                    json.AnyOf(
                        () =>
                        {
                            json.WriteString("type", "number");
                            json.WriteNumber("minimum", DefaultsReader.LeastGroupIndex);
                            json.WriteNumber("maximum", DefaultsReader.MostGroupIndex);
                        },
                        () => json.Pattern(GroupIndexPattern)));
            });
        });
}
