using PolarityMap.Core.Optics;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>Parts that are alike.</summary>
/// <param name="What">What they are, such as <c>Type-B trunk</c>.</param>
/// <param name="Fibres">Fibres of each; 0 where that says nothing.</param>
/// <param name="Length">Their length, or null.</param>
/// <param name="Network">Their network, or empty.</param>
/// <param name="Parts">Their numbers.</param>
public sealed record GrowthLot(string What, int Fibres, Length? Length, string Network, IReadOnlyList<int> Parts);

/// <summary>Counts parts of a growth by what they are.</summary>
public static class GrowthParts
{
    /// <summary>The parts list of some of its parts, as of a plant that has no others.</summary>
    public static Schedule List(GrowthResult result, IEnumerable<int> parts)
    {
        Stage stage = Stage.Of(result.Difference!, result.Brief.Title, new PlantPractice(), parts, [], []);
        return PlanParts.Of(new PlanProof(result.Candidate!.Value, null, stage.Report, []));
    }

    /// <summary>Lots in the order in which their first parts come.</summary>
    public static IReadOnlyList<GrowthLot> Lots(GrowthDifference difference, IEnumerable<int> parts) =>
    [
        .. parts.GroupBy(p => Key(difference, difference.Parts[p])).Select(g => new GrowthLot(g.Key.What, g.Key.Fibres, g.Key.Length, g.Key.Network, [.. g])),
    ];

    private static (string What, int Fibres, Length? Length, string Network) Key(GrowthDifference difference, Part part)
    {
        string type = PartFacts.Type(part);
        string what = type.Contains(part.Kind.Split(' ')[^1], StringComparison.Ordinal) ? type : $"{type} {part.Kind}";
        if (part.Shape.IsInterface)
            what = $"{part.Shape.Ports[0].Application?.Name} {(part.Shape.Ports.Count > 1 ? $"interface of {part.Shape.Ports.Count} ports" : "interface")}";
        if (part.Kind == "array panel")
            what += $" of {part.Shape.Ports.Count}";
        int fibres = part.Shape.IsInterface ? 0 : PartFacts.Fibres(part);
        string network = part.PortNetworks.Count > 0
            ? string.Join(", ", part.PortNetworks.Where(n => n >= 0).Distinct().Select(n => difference.Networks[n].Name))
            : part.Network >= 0 ? difference.Networks[part.Network].Name : "";
        return (what, fibres, part.Length, network);
    }
}
