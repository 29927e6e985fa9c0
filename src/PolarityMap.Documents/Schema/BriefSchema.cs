using System.Text.Json;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Planning;
using PolarityMap.Documents.Binding;
using PolarityMap.Documents.Planning;

namespace PolarityMap.Documents.Schema;

/// <summary>The JSON Schema (draft 2020-12) of briefs. What a schema cannot know, such as whether a named room is there, is left to <c>plan</c>.</summary>
public static class BriefSchema
{
    private const string LengthPattern = "^ *(?=[0-9.]*[1-9])" + DescriptionSchema.Number + " *(mm|cm|m|km|ft) *$";
    private const string SharePattern = "^ *" + DescriptionSchema.Number + " *% *$";
    private const string SlackPattern = "^ *" + DescriptionSchema.Number + " *(%|mm|cm|m|km|ft)( and " + DescriptionSchema.Number + " *(%|mm|cm|m|km|ft))? *$";

    public static string Text() => SchemaJson.Text(WriteRoot);

    private static void WriteRoot(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
        json.WriteString("title", "Brief");
        json.WriteString("type", "object");
        json.WriteBoolean("additionalProperties", false);
        json.Required(BriefKeys.Brief, BriefKeys.Networks, BriefKeys.Rooms, BriefKeys.Outlets, BriefKeys.Fibre);
        json.Object("properties", () =>
        {
            json.Described(BriefKeys.Brief, "The title of the plant.", json.Scalar);
            foreach (string title in BriefKeys.Titles)
                json.Described(title, DocumentKeys.Titles.First(t => t.Key == title).Meaning, json.Scalar);
            WriteNetworks(json);
            WriteRooms(json);
            WriteOutlets(json);
            WriteChoices(json);
            WriteMeasures(json);
            WriteComparison(json);
        });
        json.WriteEndObject();
    }

    private static void WriteNetworks(Utf8JsonWriter json) => Entries(json, BriefKeys.Networks, "The separate networks.", true, () =>
    {
        json.Described(BriefKeys.Label, "Short letters that names of its parts begin with; made of its name and the number at its end without it.", json.Scalar);
        WriteApplications(json);
        json.Described(BriefKeys.Switches, "The most switches it may have in one equipment room.", () => json.Integer(1, 10_000));
        json.Described(DocumentKeys.Colour, "The colour of its cords, in words.", json.Scalar);
        json.Described(DocumentKeys.Key, "The key code of its keyed duplex connectors.", json.Scalar);
        json.Described(DocumentKeys.PlainFits, "Whether plain plugs and its keyed connectors go together.", () => json.Enum("yes", "no"));
    });

    private static void WriteApplications(Utf8JsonWriter json)
    {
        json.Described(BriefKeys.Application, "What links are for now.", () => json.Enum(Application.Names));
        json.Described(BriefKeys.Later, "What the trunks have to carry later.", () => json.Enum(Application.Names));
        json.Described(BriefKeys.LaterLinks, "Which links go on to it where pairs give way to arrays: all, each with a leg of its own from the beginning, or as many as there are arrays for the pairs.", () => json.Enum(LaterLinksWords.All));
    }

    private static void WriteRooms(Utf8JsonWriter json) => Entries(json, BriefKeys.Rooms, "The rooms: those without a distance hold switches, and something is reached from each of them.", true, () =>
    {
        json.Described(BriefKeys.Label, "Short letters for names; made of the room's name and the number at its end without it.", json.Scalar);
        json.Described(BriefKeys.Distance, "The cable way from the room with the switches.", () => json.Pattern(LengthPattern));
        json.Described(BriefKeys.From, "The room with the switches, where there are several.", json.Scalar);
        json.Described(BriefKeys.Rack, "The first rack, or none.", json.Scalar);
    });

    private static void WriteOutlets(Utf8JsonWriter json) => Entries(json, BriefKeys.Outlets, "The outlets: a name, or several such as DESK[1..16], D[01..12] or F[1..3,7], then room and links.", false, () =>
    {
        json.Described(BriefKeys.Room, "The room.", json.Scalar);
        json.Described(BriefKeys.Distance, "The cable way on from where the room's trunks end; without it the outlet is there. It must be there in a room with switches.", () => json.Pattern(LengthPattern));
        json.Named(BriefKeys.Links, "Links of each outlet, by network.", null, () => json.Integer(0, 1_000));
    });

    private static void WriteChoices(Utf8JsonWriter json)
    {
        WriteApplications(json);
        json.Described(BriefKeys.Fibre, "The class of fibre.", () => json.Enum(FibreClass.Names));
        json.Described(BriefKeys.Method, "The polarity method; compare, or nothing, takes the best.", () => json.Enum(BriefKeys.Methods));
        json.Described(BriefKeys.Base, "Fibres in an array connector; compare, or nothing, takes the best.", () =>
        {
            json.WriteStartArray("enum");
            foreach (int fibres in PlanCandidate.Bases)
                json.WriteNumberValue(fibres);
            json.WriteStringValue(BriefKeys.Compare);
            json.WriteEndArray();
        });
        json.Described(BriefKeys.Separation, "own: trunks of its own for each network; gathered: one cable to each outlet from a zone box; the outlets have a distance then, and keyed networks.", () => json.Enum(SeparationWords.All));
        json.Described(BriefKeys.OneCassette, "Whether every cassette is of one kind.", () => json.Enum("yes", "no"));
        json.Described(BriefKeys.Angled, "Whether array connectors are angled; without it the fibre decides.", () => json.Enum("yes", "no"));
        json.Described(BriefKeys.Limits, "The set of limits that losses are judged by.", () => json.Enum(LimitProfile.Names));
    }

    private static void WriteMeasures(Utf8JsonWriter json)
    {
        json.Described(BriefKeys.Spare, "How much more than the links is ready to be patched, such as '25 %'.", () => json.Pattern(SharePattern));
        json.Described(BriefKeys.Slack, "What cable is longer than its way: a share, a length, or both.", () => json.Pattern(SlackPattern));
        json.Described(BriefKeys.Cords, "Lengths of patch cords.", () =>
        {
            json.WriteString("type", "object");
            json.WriteBoolean("additionalProperties", false);
            json.Object("properties", () =>
            {
                json.Described(BriefKeys.Switch, "From a switch.", () => json.Pattern(LengthPattern));
                json.Described(BriefKeys.Zone, "In a zone box.", () => json.Pattern(LengthPattern));
                json.Described(BriefKeys.Device, "To a device.", () => json.Pattern(LengthPattern));
            });
        });
        json.Described(BriefKeys.StockLengths, "Lengths that trunks are stocked in; without it they are made to the metre.", () => json.List(() => json.Pattern(LengthPattern), 1));
        json.Described(BriefKeys.TrunkLegs, "Numbers of legs that trunks come with.", () => json.List(() => json.Integer(1, 24), 1));
        json.Described(BriefKeys.ArrayLoss, "Largest loss of an array mating that the maker states.", () => json.Pattern(DescriptionSchema.LossPattern));
        json.Described(BriefKeys.DuplexLoss, "Largest loss of a duplex mating that the maker states.", () => json.Pattern(DescriptionSchema.LossPattern));
        json.Described(BriefKeys.Margin, "The margin that every link keeps.", () => json.Pattern(DescriptionSchema.LossPattern));
        json.Described(BriefKeys.CassettesPerPanel, "Cassettes side by side in one rack unit.", () => json.Integer(1, 96));
        json.Described(BriefKeys.AdaptersPerPanel, "Array adapters side by side in one rack unit.", () => json.Integer(1, 96));
        json.Described(BriefKeys.RackUnits, "Units of a rack.", () => json.Integer(1, 100));
        json.Described(BriefKeys.PortsPerSwitch, "Ports of a switch.", () => json.Integer(1, 4096));
    }

    private static void WriteComparison(Utf8JsonWriter json)
    {
        json.Described(BriefKeys.Weights, "How much each measure counts when plans are compared.", () =>
        {
            json.WriteString("type", "object");
            json.WriteBoolean("additionalProperties", false);
            json.Object("properties", () =>
            {
                foreach (string name in BriefKeys.OfWeights)
                {
                    json.Object(name, () =>
                    {
                        json.WriteString("type", "number");
                        json.WriteNumber("minimum", 0);
                        json.WriteNumber("maximum", PlanWeights.Most);
                    });
                }
            });
        });
        json.Described(BriefKeys.Prices, "A price list, in the folder of the brief unless a flag lets it lie elsewhere: a parts list with a column 'price'.", () => json.WriteString("type", "string"));
        json.Described(BriefKeys.Currency, "The currency of the prices, in your own words.", () => json.WriteString("type", "string"));
    }

    /// <summary>A mapping from names to attributes; some need none.</summary>
    private static void Entries(Utf8JsonWriter json, string key, string description, bool mayBeEmpty, Action properties) => json.Described(key, description, () =>
    {
        json.WriteString("type", "object");
        json.WriteNumber("minProperties", 1);
        json.Object("additionalProperties", () =>
        {
            json.WriteStartArray("type");
            json.WriteStringValue("object");
            if (mayBeEmpty)
                json.WriteStringValue("null");
            json.WriteEndArray();
            json.WriteBoolean("additionalProperties", false);
            if (!mayBeEmpty)
                json.Required(BriefKeys.Room, BriefKeys.Links);
            json.Object("properties", properties);
        });
    });
}
