using PolarityMap.Core.Checks;
using PolarityMap.Core.Remedies;

namespace PolarityMap.Cli.Output;

/// <summary>What is said of remedies in text and JSON alike.</summary>
internal static class RemedyWords
{
    /// <summary>What was proved of a set of changes.</summary>
    public static string Proof(RemedyResult result, RemedySet set) =>
        $"the whole plant traced and checked again: {Cleared(set.Clears.Count)}, nothing is raised{Proven(result.Before, set.Proven)}";

    /// <summary>What was proved of the plan.</summary>
    public static string Proof(RemedyPlan plan) =>
        $"the whole plant traced and checked again: {Cleared(plan.Clears.Count)}, nothing is raised. {plan.After.Verdict()}";

    /// <summary>Why there is nothing to advise for a finding.</summary>
    public static string Nothing(Finding finding, FindingRemedies remedies)
    {
        string tried = Tried(remedies);
        return remedies.IsComplete
            ? $"no change of a part or plug clears it without raising another; {tried}. {finding.Rule.Clears}"
            : $"no change was found before the search ended; {tried}. {finding.Rule.Clears}";
    }

    /// <summary>A number of minutes.</summary>
    public static string Minutes(int minutes) => minutes == 1 ? "1 minute" : $"{minutes} minutes";

    /// <summary>A number of findings.</summary>
    public static string Findings(int count) => count == 1 ? "1 finding" : $"{count} findings";

    private static string Cleared(int count) => count == 1 ? "1 finding is gone" : $"{count} findings are gone";

    private static string Proven(CheckReport before, int proven) =>
        before.Traced.Plant.Links.Count is > 0 and int links ? $", {proven} of {links} {(links == 1 ? "link is" : "links are")} proven" : "";

    private static string Tried(FindingRemedies remedies)
    {
        string[] names = ["single changes", "sets of two", "sets of three", "sets of four"];
        string[] counts = [.. remedies.Tried.Select((n, i) => $"{n} {(i < names.Length ? names[i] : "larger sets")}")];
        return remedies.Tried.Sum() == 0 ? "there is none that bears on it" : $"tried: {string.Join(", ", counts)}";
    }
}
