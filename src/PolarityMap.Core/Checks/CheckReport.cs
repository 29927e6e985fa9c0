using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Checks;

/// <summary>A plant proved or refuted: its links and what was found. The one verdict that commands, drawings and reports print.</summary>
/// <param name="Traced">The plant with its strands.</param>
/// <param name="Context">What the rules worked out on the way, such as the outcome of every link.</param>
/// <param name="Findings">In the order of <see cref="Checker.Check(CheckContext)"/>.</param>
/// <param name="Remarks">What is worth knowing and no fault.</param>
public sealed record CheckReport(TracedPlant Traced, CheckContext Context, IReadOnlyList<Finding> Findings, IReadOnlyList<Remark> Remarks)
{
    private readonly HashSet<int> _faulty = StrandsWithErrors(Findings);
    private int? _proven;

    public int Errors => Findings.Count(f => f.Rule.Severity == Severity.Error);

    public int Warnings => Findings.Count - Errors;

    public int Proven => _proven ??= Context.Outcomes.All.Count(IsProven);

    /// <summary>
    /// True when light lands where it is meant to and nothing along the way is an error: connectors that cannot mate, fibre that
    /// does not go together, loss or length over the limit. What networks share is a matter of the plant and not of a link.
    /// </summary>
    public bool IsProven(LinkOutcome link) => link.IsProven && (_faulty.Count == 0 || !link.Strands.Any(_faulty.Contains));

    public static CheckReport Of(TracedPlant traced)
    {
        var context = new CheckContext(traced);
        return new CheckReport(traced, context, Checker.Check(context), Remark.Of(context));
    }

    /// <summary>The verdict in one or two sentences.</summary>
    public string Verdict()
    {
        int links = Traced.Plant.Links.Count;
        string proven = links switch
        {
            0 => "No links are declared, so only transmit to receive was checked.",
            1 => Proven == 1 ? "The link is proven." : "The link is not proven.",
            _ => $"{Proven} of {links} links {(Proven == 1 ? "is" : "are")} proven.",
        };
        string found = (Errors, Warnings) switch
        {
            (0, 0) => "Nothing was found.",
            (var e, 0) => $"{Count(e, "error")}.",
            (0, var w) => $"{Count(w, "warning")}.",
            (var e, var w) => $"{Count(e, "error")} and {Count(w, "warning")}.",
        };
        return $"{proven} {found}";
    }

    private static HashSet<int> StrandsWithErrors(IReadOnlyList<Finding> findings)
    {
        var strands = new HashSet<int>();
        foreach (Finding finding in findings)
        {
            if (finding.Rule.Severity == Severity.Error && finding.Rule.Family != "separation")
                strands.UnionWith(finding.Strands);
        }

        return strands;
    }

    private static string Count(int n, string word) => n == 1 ? $"1 {word}" : $"{n} {word}s";
}
