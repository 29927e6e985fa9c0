using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Tests.Remedies;

/// <summary>
/// When two findings are the same, written down a second time in addresses instead of numbers, after the words of docs/remedy.md:
/// polarity, loss and a wrong network are known by the lanes at the ends of their strands, destination by its links, all else by
/// its places; rules that name one fault differently count as one.
/// </summary>
internal static class Sameness
{
    public static HashSet<string> Subjects(CheckReport report, Finding finding)
    {
        TracedPlant traced = report.Traced;
        string code = finding.Rule.Code switch
        {
            "D03" or "D04" or "D05" => "D01",
            "P02" or "D02" => "P01",
            "L04" => "L01",
            var own => own,
        };
        string[] lanes =
        [
            .. finding.Strands.SelectMany(s => new[] { traced.Strands[s][0], traced.Strands[s][^1] })
                .Where(p => traced.Graph.LaneAt(p) is not null).Select(traced.Address),
        ];
        IEnumerable<string> subjects = code switch
        {
            "D01" or "P05" or "W04" => finding.Links.Select(l => $"link {l}"),
            _ when code[0] is 'P' or 'L' || code == "D06" => lanes,
            "S01" => finding.At.SelectMany(_ => lanes, (site, lane) => $"{traced.Plant.Parts[site.Part].Name} {lane}"),
            "W03" => finding.Strands.Select(s => traced.Plant.Parts[traced.Graph.PartOf(traced.Strands[s][0])].Name),
            _ => finding.At.Select(site => Place(traced.Plant, site)),
        };
        HashSet<string> all = [.. subjects.Select(s => $"{code} {s}")];
        return all.Count > 0 ? all : [$"{code} {finding.Place}"];
    }

    private static string Place(Plant plant, FindingSite site) => (site.Port, site.Meets) switch
    {
        (null, _) => plant.Parts[site.Part].Name,
        ({ } port, null) => plant.Address(port),
        ({ } port, { } other) => string.Join(" with ", new[] { plant.Address(port), plant.Address(other) }.Order(StringComparer.Ordinal)),
    };
}
