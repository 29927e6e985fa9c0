using PolarityMap.Core.Checks;

namespace PolarityMap.Core.Remedies;

/// <summary>
/// Gives each finding that its rule proved no remedy for the one that the plan for the whole plant has for it, so that drawings and
/// pages mark the part to change: one trunk before twelve cords. The work is bounded by numbers of trials and proofs, so that the
/// same plant always gets the same.
/// </summary>
public static class ProvedRemedies
{
    /// <summary>Work for a drawing, which is to stay quick: about a tenth of a second.</summary>
    public const int ForDrawing = 600_000;

    /// <summary>Work for a report, which takes longer anyway.</summary>
    public const int ForReport = 6_000_000;

    /// <summary>The findings that remedies are looked for; of more, the first.</summary>
    private const int MostFindings = 40;

    /// <summary>The work of a finding in a proof, beside that of a position.</summary>
    private const int WorkOfFinding = 100;

    /// <summary>Fewer proofs than this find too little to be worth the search.</summary>
    private const int FewestProofs = 8;

    private const int MostProofs = 200;

    /// <summary>
    /// The same report with the remedy of the plan, or where the plan has none the best one by itself, at each finding without one
    /// for which the work sufficed.
    /// </summary>
    /// <param name="report">The plant, checked.</param>
    /// <param name="work">The most work for all proofs together, in positions that are traced and checked.</param>
    public static CheckReport In(CheckReport report, int work)
    {
        HashSet<int> wanted = [.. Enumerable.Range(0, report.Findings.Count).Where(i => report.Findings[i].Remedies.Count == 0).Take(MostFindings)];
        int proofs = Math.Min(MostProofs, work / (report.Traced.Graph.PositionCount + (WorkOfFinding * report.Findings.Count) + 1));
        if (wanted.Count == 0 || proofs < FewestProofs)
            return report;
        var options = new RemedyOptions { MostChanges = 2, MostProofs = proofs, MostProofsEach = 10, MostTrialsEach = 1000, Wanted = wanted.Contains };
        RemedyResult result = RemedySearch.Of(report, options);
        Finding[] findings = [.. report.Findings];
        foreach (FindingRemedies remedies in result.Findings)
        {
            if (remedies.Sets is [var best, ..])
                findings[remedies.Finding] = findings[remedies.Finding] with { Remedies = [Of(best, report)] };
        }

        return report with { Findings = findings };
    }

    private static Remedy Of(RemedySet set, CheckReport report)
    {
        int[] parts = [.. set.Changes.Select(c => c.Parts[0]).Distinct()];
        int links = report.Traced.Plant.Links.Count;
        string left = report.Findings.Count == set.Clears.Count ? "nothing is found any more" : $"{set.Clears.Count} of {report.Findings.Count} findings are gone and none is new";
        string proof = links == 0 ? left : $"{left}, {set.Proven} of {links} {(links == 1 ? "link" : "links")} proven";
        return new Remedy(string.Join("; and ", set.Changes.Select(c => c.Text)), proof, parts[0]) { With = parts[1..], IsInside = set.Changes[0].Patch.Inside.Count > 0 };
    }
}
