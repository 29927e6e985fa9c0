using PolarityMap.Core.Checks;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Locate;

/// <summary>A plant as the likeliest cause of what was seen has it, for drawings.</summary>
/// <param name="Report">What the checker finds of it.</param>
/// <param name="Findings">The suspects and the next test, and what the checker finds at the far ends.</param>
/// <param name="Strands">The strands that any of them is about, in the order of their numbers.</param>
public sealed record SuspectPlant(CheckReport Report, IReadOnlyList<Finding> Findings, IReadOnlyList<int> Strands)
{
    /// <summary>How many strands to try, one after the other, until they go on a sheet that a reader takes in.</summary>
    public static IReadOnlyList<int> Fewer { get; } = [24, 16, 8, 4];

    /// <summary>What the drawing takes for granted, one sentence: it shows one explanation of several as if it were so.</summary>
    public required string Premise { get; init; }

    /// <summary>The same for a drawing of some of the strands.</summary>
    public string PremiseFor(IReadOnlyList<int> drawn) => drawn.Count >= Strands.Count ? Premise : $"{Premise} {drawn.Count} of {Strands.Count} strands concerned are drawn.";

    /// <summary>The plant as the first explanation has it; null where nothing is suspect.</summary>
    /// <param name="context">The plant as it is described.</param>
    /// <param name="result">What was found of what was seen of it.</param>
    public static SuspectPlant? Of(DeviationContext context, LocateResult result)
    {
        if (result.Explanations.Count == 0 || result.IsAsDescribed)
            return null;
        Plant built = context.Build(result.Explanations[0].Deviations.SelectMany(d => d.Differences))!;
        CheckReport report = CheckReport.Of(TracedPlant.Of(built));

        // The place of a fault is what is looked for: beside the suspects only the far ends show what is wrong, and the part to
        // change is that of the likeliest cause, not all those whose change would hide it.
        Finding[] findings = [.. SuspectFindings.Of(result, report.Traced), .. report.Findings.Where(f => f.At.Count == 0).Select(f => f with { Remedies = [] })];
        return new SuspectPlant(report, findings, StrandsOf(findings, report.Traced, int.MaxValue)) { Premise = PremiseOf(result) };
    }

    /// <summary>The strands that matter most, those of the first suspect first; in the order of their numbers.</summary>
    /// <param name="most">How many.</param>
    public IReadOnlyList<int> FirstStrands(int most) => StrandsOf(Findings, Report.Traced, most);

    private static string PremiseOf(LocateResult result)
    {
        Explanation first = result.Explanations[0];
        string suspects = string.Join(" and ", Enumerable.Range(1, first.Deviations.Count).Select(n => $"S{n}")), were = first.Deviations.Count == 1 ? "was" : "were";
        return result.Explanations.Count == 1
            ? $"Drawn as if {suspects} {were} so, the only explanation of what was seen."
            : $"Drawn as if {suspects} {were} so, the likeliest of {result.Explanations.Count} explanations of what was seen; not proven.";
    }

    private static int[] StrandsOf(IReadOnlyList<Finding> findings, TracedPlant traced, int most) =>
        [.. findings.SelectMany(f => f.Strands).SelectMany(s => WithNeighbours(traced, s)).Distinct().Take(most).OrderBy(traced.NumberOf)];

    /// <summary>The strands of the plant as it is described that begin or end at the same interface positions, in the order of their numbers.</summary>
    /// <param name="described">The plant as it is described.</param>
    /// <param name="strands">Strands of the plant as built.</param>
    public IReadOnlyList<int> Described(TracedPlant described, IReadOnlyList<int> strands)
    {
        TracedPlant built = Report.Traced;
        return [.. strands.SelectMany(s => Ends(built, s)).Where(built.Graph.HasLane).Select(built.Graph.PlaceOf)
            .Select(p => described.StrandOf(described.Graph.PositionOf(p.Port, p.Position))).Distinct().OrderBy(described.NumberOf)];
    }

    /// <summary>A strand with those of the interface ports that it begins and ends at: a pair is drawn together.</summary>
    private static IEnumerable<int> WithNeighbours(TracedPlant traced, int strand)
    {
        yield return strand;
        foreach (int end in Ends(traced, strand))
        {
            PortRef port = traced.Graph.PlaceOf(end).Port;
            for (int position = 1; traced.Graph.HasLane(end) && position <= traced.Plant.Port(port).PositionCount; position++)
                yield return traced.StrandOf(traced.Graph.PositionOf(port, position));
        }
    }

    private static int[] Ends(TracedPlant traced, int strand) => [traced.Strands[strand][0], traced.Strands[strand][^1]];
}
