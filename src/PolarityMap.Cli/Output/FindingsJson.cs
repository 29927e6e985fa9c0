using PolarityMap.Core.Checks;

namespace PolarityMap.Cli.Output;

/// <summary>What was found, beside the plant and the strands in texts of their own; the shape is in docs/json.md.</summary>
internal static class FindingsJson
{
    public static byte[] Bytes(CheckReport report) => JsonText.Bytes("polaritymap/findings", json =>
    {
        json.WriteString("plant", report.Traced.Plant.Title.Title);
        json.WriteString("verdict", report.Verdict());
        json.WriteNumber("errors", report.Errors);
        json.WriteNumber("warnings", report.Warnings);
        CheckJson.WriteLinks(json, report);
        json.WriteStartArray("findings");
        foreach (Finding finding in report.Findings)
            CheckJson.WriteFinding(json, report, finding, strandsInFull: false);
        json.WriteEndArray();
        CheckJson.WriteRemarks(json, report);
    });
}
