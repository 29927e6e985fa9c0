using PolarityMap.Cli.Output;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Cli.Input;

/// <summary>A plant as the likeliest cause of what was seen has it.</summary>
/// <param name="Report">What the checker finds of it.</param>
/// <param name="Findings">The suspects and the next test, and what the checker finds.</param>
/// <param name="Strands">The strands that any of them is about, in the order of their numbers.</param>
/// <param name="Verdict">What was found, in one sentence.</param>
internal sealed record SuspectPlant(CheckReport Report, IReadOnlyList<Finding> Findings, IReadOnlyList<int> Strands, string Verdict)
{
    /// <summary>Reads a plant and what was seen of it; null after problems were written.</summary>
    /// <exception cref="CallException">Nothing is suspect.</exception>
    public static SuspectPlant? Of(string plant, string seen, CommandContext context)
    {
        if (SeenSource.Read(plant, seen, SeenSource.Bytes(seen, mayBeAbsent: false, context), "text", context) is not var (traced, notes))
            return null;
        var deviations = new DeviationContext(traced);
        LocateResult result = Locator.Locate(deviations, notes.Observations);
        string verdict = LocateWords.Verdict(result);
        if (result.Explanations.Count == 0 || result.IsAsDescribed)
            throw new CallException($"{verdict} There is no suspect to draw; see 'polaritymap locate {plant} --seen {seen}'");
        Plant built = deviations.Build(result.Explanations[0].Deviations.SelectMany(d => d.Differences))!;
        CheckReport report = CheckReport.Of(TracedPlant.Of(built));
        // The place of a fault is what is looked for: beside the suspects only the far ends show what is wrong.
        Finding[] findings = [.. SuspectFindings.Of(result, report.Traced), .. report.Findings.Where(f => f.At.Count == 0)];
        int[] strands = [.. findings.SelectMany(f => f.Strands).SelectMany(s => WithNeighbours(report.Traced, s)).Distinct().OrderBy(report.Traced.NumberOf)];
        return new SuspectPlant(report, findings, strands, verdict);
    }

    /// <summary>A strand with those of the interface ports that it begins and ends at: a pair is drawn together.</summary>
    private static IEnumerable<int> WithNeighbours(TracedPlant traced, int strand)
    {
        yield return strand;
        foreach (int end in (int[])[traced.Strands[strand][0], traced.Strands[strand][^1]])
        {
            PortRef port = traced.Graph.PlaceOf(end).Port;
            for (int position = 1; traced.Graph.HasLane(end) && position <= traced.Plant.Port(port).PositionCount; position++)
                yield return traced.StrandOf(traced.Graph.PositionOf(port, position));
        }
    }
}
