using System.Text.Json;
using PolarityMap.Core.Optics;

namespace PolarityMap.Cli.Output;

/// <summary>An application for programs; the shape is in docs/json.md.</summary>
internal static class ApplicationJson
{
    public static void Write(Core.Optics.Application application, TextWriter output) => JsonText.Write(output, "polaritymap/application", json =>
    {
        json.WriteString("name", application.Name);
        json.WriteString("clause", application.Clause);
        json.WriteString("clauseConfidence", application.ClauseConfidence.ToString());
        json.WriteStartArray("wavelengths");
        foreach (Wavelength wavelength in application.Wavelengths)
            json.WriteNumberValue(wavelength.Nanometres);
        json.WriteEndArray();
        json.WriteString("wavelengthConfidence", application.WavelengthConfidence.ToString());
        json.WriteString("wavelengthRange", application.WavelengthRange.Length == 0 ? null : application.WavelengthRange);
        json.WriteString("counterpart", application.Counterpart);
        json.WriteStartArray("layouts");
        foreach (PortLayout layout in application.Layouts)
            WriteLayout(json, layout);
        json.WriteEndArray();
        json.WriteStartArray("limits");
        foreach (LimitProfile profile in LimitProfile.All)
        {
            foreach (FibreLimit limit in application.Limits(profile))
                WriteLimit(json, profile, limit);
        }

        json.WriteEndArray();
        json.WriteStartArray("breakouts");
        foreach (Breakout breakout in Breakouts.All.Where(b => b.From == application.Name || b.To == application.Name))
        {
            json.WriteStartObject();
            json.WriteString("name", breakout.Name);
            json.WriteString("from", breakout.From);
            json.WriteString("to", breakout.To);
            json.WriteNumber("groups", breakout.Groups);
            json.WriteNumber("lanesPerGroup", breakout.LanesPerGroup);
            json.WriteString("source", breakout.Source);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("note", application.Note);
    });

    private static void WriteLayout(Utf8JsonWriter json, PortLayout layout)
    {
        json.WriteStartObject();
        json.WriteString("name", layout.Name);
        json.WriteString("face", PortWords.Face(layout.Form));
        json.WriteNumber("receptacles", layout.Receptacles);
        if (layout.Angled is { } angled)
            json.WriteBoolean("angled", angled);
        else
            json.WriteNull("angled");
        json.WriteString("source", layout.PositionsSource);
        json.WriteStartArray("lanes");
        foreach (LaneSpec lane in layout.Lanes)
        {
            json.WriteStartObject();
            json.WriteNumber("receptacle", lane.Receptacle + 1);
            json.WriteNumber("position", lane.Position);
            json.WriteString("use", lane.Use switch { LaneUse.Transmit => "transmit", LaneUse.Receive => "receive", _ => "both" });
            json.WriteNumber("lane", lane.Lane);
            OpticsJson.Number(json, "sends", lane.Transmit?.Nanometres);
            OpticsJson.Number(json, "hears", lane.Receive?.Nanometres);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteLimit(Utf8JsonWriter json, LimitProfile profile, FibreLimit limit)
    {
        json.WriteStartObject();
        json.WriteString("profile", profile.Name);
        json.WriteString("fibre", limit.Fibre);
        OpticsJson.Number(json, "distance", limit.Distance is { } distance ? OpticsJson.Metres(distance) : null);
        json.WriteString("distanceConfidence", limit.DistanceConfidence.ToString());
        OpticsJson.Number(json, "loss", limit.Loss?.Value);
        json.WriteString("lossConfidence", limit.LossConfidence.ToString());
        OpticsJson.Number(json, "connectionShare", limit.ConnectionShare?.Value);
        json.WriteString("connectionShareConfidence", limit.ConnectionShareConfidence.ToString());
        OpticsJson.Number(json, "assumedCable", limit.AssumedCable?.DecibelPerKm);
        OpticsJson.Number(json, "leastLoss", limit.LeastLoss?.Value);
        json.WriteString("note", limit.Note);
        json.WriteEndObject();
    }
}
