using PolarityMap.Core.Optics;

namespace PolarityMap.Cli.Output;

/// <summary>A class of fibre for programs; the shape is in docs/json.md.</summary>
internal static class FibreJson
{
    public static void Write(FibreClass fibre, TextWriter output) => JsonText.Write(output, "polaritymap/fibre", json =>
    {
        json.WriteString("name", fibre.Name);
        json.WriteString("core", FibreText.CoreWords(fibre));
        json.WriteString("modalBandwidth", fibre.ModalBandwidth.Length == 0 ? null : fibre.ModalBandwidth);
        json.WriteString("source", fibre.Source);
        json.WriteStartArray("groupIndex");
        foreach (Wavelength wavelength in LimitRows.Columns(fibre))
        {
            json.WriteStartObject();
            OpticsJson.Number(json, "wavelength", wavelength.Nanometres);
            OpticsJson.Number(json, "value", fibre.GroupIndex(wavelength));
            json.WriteString("confidence", FibreClass.GroupIndexConfidence.ToString());
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("profiles");
        foreach (LimitProfile profile in LimitProfile.All)
        {
            json.WriteStartObject();
            json.WriteString("name", profile.Name);
            LimitsJson.WriteRows(json, "limits", LimitRows.Of(profile, fibre));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("applications");
        foreach (Core.Optics.Application application in Core.Optics.Application.All)
        {
            if (application.Limit(LimitProfile.Default, fibre.Name) is not { } limit)
                continue;
            json.WriteStartObject();
            json.WriteString("name", application.Name);
            OpticsJson.Number(json, "distance", limit.Distance is { } distance ? OpticsJson.Metres(distance) : null);
            json.WriteString("distanceConfidence", limit.DistanceConfidence.ToString());
            OpticsJson.Number(json, "loss", limit.Loss?.Value);
            json.WriteString("lossConfidence", limit.LossConfidence.ToString());
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });
}
