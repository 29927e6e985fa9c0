using PolarityMap.Core.Checks;
using PolarityMap.Core.Strands;

namespace PolarityMap.Cli.Output;

/// <summary>What <c>check</c> has to say: the plant, its links, the findings.</summary>
internal sealed record CheckReport(TracedPlant Traced, CheckContext Context, IReadOnlyList<Finding> Findings, IReadOnlyList<Remark> Remarks)
{
    public int Errors => Findings.Count(f => f.Rule.Severity == Severity.Error);

    public int Warnings => Findings.Count - Errors;

    public int Proven => Context.Outcomes.All.Count(o => o.IsProven);

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

    private static string Count(int n, string word) => n == 1 ? $"1 {word}" : $"{n} {word}s";
}
