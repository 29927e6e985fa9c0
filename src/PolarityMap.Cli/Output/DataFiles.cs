using PolarityMap.Core.Checks;

namespace PolarityMap.Cli.Output;

/// <summary>
/// What a plant is, where its strands run and what was found, as bytes of files for other programs. The commands <c>data</c>
/// and <c>report</c> write the same; shapes are in docs/json.md.
/// </summary>
internal static class DataFiles
{
    /// <summary>Every file with its name.</summary>
    public static IReadOnlyList<(string Name, Func<CheckReport, byte[]> Write)> All { get; } =
        [("plant.json", Plant), ("strands.json", Strands), ("findings.json", Findings), ("findings.sarif", Sarif)];

    /// <summary>The bound plant: networks, parts with ports and wiring, matings, links.</summary>
    public static byte[] Plant(CheckReport report) => PlantJson.Bytes(report.Traced.Plant);

    /// <summary>Every strand with ends, hops, networks, links and findings.</summary>
    public static byte[] Strands(CheckReport report) => StrandsJson.Bytes(report);

    /// <summary>Verdict, links, findings and remarks; strands by their numbers.</summary>
    public static byte[] Findings(CheckReport report) => FindingsJson.Bytes(report);

    /// <summary>The findings as a SARIF 2.1.0 log.</summary>
    public static byte[] Sarif(CheckReport report) => SarifLog.Bytes(report);
}
