using System.Globalization;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Locate;

namespace PolarityMap.Cli.Output;

/// <summary>What a search found, in the sentences that all its outputs share.</summary>
internal static class LocateWords
{
    /// <summary>The verdict in one sentence.</summary>
    public static string Verdict(LocateResult result)
    {
        if (result.Contradictions.Count > 0)
            return $"{Count(result.Contradictions.Count, "pair")} of observations contradict each other; look again at both before anything is concluded.";
        if (result.IsAsDescribed)
            return result.Observations.Count == 0 ? "Nothing has been seen yet." : "The plant as it is described agrees with everything that was seen.";
        return result.Explanations.Count switch
        {
            0 => $"Nothing that was searched agrees with everything that was seen{MostTried(result)}.",
            1 => "What was seen does not agree with the description; one explanation agrees with all of it.",
            var n when IsOneGroup(result) => $"What was seen does not agree with the description; {n} explanations agree with all of it, and no light test tells them apart.",
            var n => $"What was seen does not agree with the description; {n} explanations agree with all of it.",
        };
    }

    /// <summary>True when something is found and all of it does the same to all light.</summary>
    public static bool IsOneGroup(LocateResult result) => result.Explanations.Count > 0 && result.Explanations.All(e => e.Group == result.Explanations[0].Group);

    /// <summary>Where a look shows the deviation, or null where none does.</summary>
    public static string? Look(Deviation deviation, Func<int, string> nameOf) =>
        deviation.Kind.LookMinutes == 0 || deviation.Parts.Count == 0 ? null : $"a look at {nameOf(deviation.Parts[0])} shows it ({deviation.Kind.LookMinutes} min)";

    public static string Percent(double share) => share is > 0 and < 0.005 ? "<1 %" : string.Create(CultureInfo.InvariantCulture, $"{Math.Round(share * 100, MidpointRounding.AwayFromZero):0} %");

    /// <summary>What was searched: a sentence for each number of deviations at once, and one for the bound.</summary>
    public static IEnumerable<string> Searched(SearchReport report)
    {
        foreach (SizeSearched size in report.Sizes)
        {
            string what = size.Size switch
            {
                0 => "the plant as described",
                1 => "single deviations",
                _ => $"{size.Size} deviations at once",
            };
            string agree = size.Found == 0 ? "none agrees" : size.Found == 1 ? "1 agrees" : $"{Number(size.Found)} agree";
            yield return size.Size == 0 ? $"{what}: {(size.Found == 0 ? "does not agree" : "agrees")}"
                : $"{what}: {Number(size.Tried)} that can bear on what was seen{(size.IsComplete ? "" : ", and not all of those")}; {agree}";
        }

        if (report.Sizes is [.., { Size: > 0, Found: > 0 } last] && report.Bound is null)
            yield return $"more than {Count(last.Size, "deviation")} at once: not searched, since fewer explain everything";
        if (report.Bound is { } bound)
            yield return report.Sizes.Count == 0 ? bound : $"bound hit: {bound}";
    }

    /// <summary>Numbers from 1 of explanations, the first of them where they are many.</summary>
    public static string Numbers(IReadOnlyList<int> indices)
    {
        const int most = 8;
        if (indices.Count == 0)
            return "none of them";
        string listed = string.Join(", ", indices.Take(most).Select(i => i + 1));
        return indices.Count > most ? $"{listed} and {indices.Count - most} more" : listed;
    }

    public static string Count(int number, string noun) => $"{number} {noun}{(number == 1 ? "" : "s")}";

    private static string Number(long number) => number.ToString("N0", CultureInfo.InvariantCulture);

    private static string MostTried(LocateResult result) =>
        result.Searched.Sizes.Count == 0 ? "" : $", up to {Count(result.Searched.Sizes.Max(s => s.Size), "deviation")} at once";
}
