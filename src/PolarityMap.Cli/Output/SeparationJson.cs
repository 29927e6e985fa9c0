using System.Text.Json;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;

namespace PolarityMap.Cli.Output;

/// <summary>How the networks keep apart, for programs; the shape is in docs/json.md.</summary>
internal static class SeparationJson
{
    public static void Write(SeparationReport report, TextWriter output) => JsonText.Write(output, "polaritymap/separation", json =>
    {
        Plant plant = report.Plant;
        json.WriteString("plant", plant.Title.Title);
        json.WriteString("verdict", report.Verdict());
        json.WriteNumber("errors", report.Errors);
        json.WriteNumber("warnings", report.Warnings);
        WriteNetworks(json, plant);
        json.WriteStartObject("totals");
        foreach (SharedPlace place in Enum.GetValues<SharedPlace>())
        {
            json.WriteStartObject(place.Word());
            json.WriteNumber("shared", report.Separation.Sharing.Shared(place));
            json.WriteNumber("all", report.Separation.Sharing.Total(place));
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteStartArray("shared");
        foreach (SharedGroup group in report.Separation.Sharing.Groups)
            WriteGroup(json, plant, group);
        json.WriteEndArray();
        json.WriteStartArray("fits");
        foreach (FitTable table in report.Separation.Fits)
            WriteTable(json, plant, table);
        json.WriteEndArray();
        json.WriteStartArray("findings");
        foreach (Finding finding in report.Findings)
            WriteFinding(json, report, finding);
        json.WriteEndArray();
    });

    /// <summary>The networks of a plant with what they may share.</summary>
    public static void WriteNetworks(Utf8JsonWriter json, Plant plant)
    {
        json.WriteStartArray("networks");
        foreach (Network network in plant.Networks)
        {
            json.WriteStartObject();
            json.WriteString("name", network.Name);
            json.WriteString("colour", network.Colour);
            json.WriteString("key", network.Key);
            json.WriteBoolean("plainFits", network.PlainFits);
            if (network.MayShare is { } may)
            {
                json.WriteStartArray("mayShare");
                foreach (SharedPlace place in may)
                    json.WriteStringValue(place.Word());
                json.WriteEndArray();
            }
            else
            {
                json.WriteNull("mayShare");
            }

            JsonText.WritePlace(json, network.Place);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteGroup(Utf8JsonWriter json, Plant plant, SharedGroup group)
    {
        json.WriteStartObject();
        json.WriteString("what", group.Place.Word());
        json.WriteString("verdict", group.Verdict.Word());
        WriteNames(json, "networks", plant, group.Networks);
        WriteNames(json, "astray", plant, group.Astray);
        WriteNames(json, "forbiddenBy", plant, group.ForbiddenBy);
        JsonText.WritePlace(json, group.Source);
        json.WriteStartArray("items");
        foreach (SharedUse use in group.Uses)
        {
            json.WriteStartObject();
            json.WriteString("part", plant.Parts[use.Part].Name);
            json.WriteString("port", use.Port is { } port ? plant.Address(port) : null);
            json.WriteString("meets", use.Mating is { } mating ? plant.Address(mating.B) : null);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteTable(Utf8JsonWriter json, Plant plant, FitTable table)
    {
        json.WriteStartObject();
        json.WriteString("kind", table.Kind);
        json.WriteStartArray("parts");
        foreach (int part in table.Parts)
            json.WriteStringValue(plant.Parts[part].Name);
        json.WriteEndArray();
        JsonText.WritePlace(json, table.Source);
        json.WriteStartArray("ports");
        foreach (FitPort port in table.Ports)
        {
            json.WriteStartObject();
            json.WriteString("name", port.Name);
            json.WriteString("network", port.Network < 0 ? null : plant.Networks[port.Network].Name);
            json.WriteString("key", port.Key);
            json.WriteStartArray("cords");
            for (int i = 0; i < port.Cords.Count; i++)
            {
                json.WriteStartObject();
                json.WriteString("network", plant.Networks[table.Networks[i]].Name);
                json.WriteString("key", plant.Networks[table.Networks[i]].Key);
                json.WriteString("fit", port.Cords[i].Word());
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteFinding(Utf8JsonWriter json, SeparationReport report, Finding finding)
    {
        json.WriteStartObject();
        json.WriteString("code", finding.Rule.Code);
        json.WriteString("title", finding.Rule.Title);
        json.WriteString("severity", finding.Rule.Severity == Severity.Error ? "error" : "warning");
        JsonText.WritePlace(json, finding.Place);
        json.WriteString("message", finding.Message);
        json.WriteString("expected", finding.Expected);
        json.WriteString("actual", finding.Actual);
        json.WriteStartArray("strands");
        foreach (int strand in finding.Strands)
            json.WriteNumberValue(report.Traced.NumberOf(strand));
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteNames(Utf8JsonWriter json, string name, Plant plant, IReadOnlyList<int> networks)
    {
        json.WriteStartArray(name);
        foreach (int network in networks)
            json.WriteStringValue(plant.Networks[network].Name);
        json.WriteEndArray();
    }
}
