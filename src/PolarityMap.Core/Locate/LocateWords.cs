using System.Globalization;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Locate;

/// <summary>What a search found, in the sentences that screens, pages and cards share.</summary>
public static class LocateWords
{
    /// <summary>Before the observations that are in doubt where nothing explains everything.</summary>
    public const string Doubtful = "Without one of these a single deviation would explain the rest. Look at them again, one may be a mistake:";

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
    public static string? Look(TracedPlant traced, Deviation deviation) =>
        deviation.Kind.LookMinutes == 0 || deviation.Parts.Count == 0 ? null : $"a look at {FieldWords.Name(traced, deviation.Parts[0])} shows it ({deviation.Kind.LookMinutes} min)";

    /// <summary>An observation with the note that somebody made at it.</summary>
    public static string Saw(TracedPlant traced, Observation observation) =>
        FieldWords.Saw(traced, observation) + (observation.Note is { } note ? $" ({note})" : "");

    /// <summary>The explanations that are not told one by one, in one clause; null where all are.</summary>
    /// <param name="result">What was found.</param>
    /// <param name="told">How many are told, the most likely first.</param>
    public static string? Rest(LocateResult result, int told) => result.Explanations.Count <= told ? null
        : $"and {Count(result.Explanations.Count - told, "less likely explanation")}, {Percent(result.Explanations.Skip(told).Sum(e => e.Share))} together";

    /// <summary>Explanations for which what was seen speaks in the same words as for an earlier one, by its number from 1.</summary>
    public static string SameAs(int number) => $"the same was seen as for {number}";

    /// <summary>How many more observations agree with an explanation without telling it from the plant as described.</summary>
    public static string Agrees(int others) => $"with {Count(others, "more observation")}, which the plant as described would show too";

    /// <summary>For every group of explanations that no light test tells apart, one sentence with what to look at.</summary>
    public static IEnumerable<string> Groups(TracedPlant traced, LocateResult result)
    {
        const int mostNamed = 6;
        foreach (var group in result.Explanations.Select((e, i) => (Explanation: e, Index: i)).GroupBy(e => e.Explanation.Group).Where(g => g.Count() > 1))
        {
            string[] parts = [.. group.SelectMany(e => e.Explanation.Deviations).Where(d => d.Kind.LookMinutes > 0 && d.Parts.Count > 0).Select(d => FieldWords.Name(traced, d.Parts[0])).Distinct().Take(mostNamed)];
            string look = parts.Length == 0 ? "mend one after the other" : $"look at {string.Join(", ", parts)}";
            yield return $"No light test tells explanations {Numbers([.. group.Select(e => e.Index)])} apart: {look}.";
        }
    }

    /// <summary>The next test, what it needs of time first.</summary>
    public static string NextTest(NextTest next) => $"Next test, about {next.Test.Minutes} min: ";

    /// <summary>What to mind when light is put in and when some explanations are mended, in the order in which it is said.</summary>
    public static IEnumerable<string> CautionsFor(IEnumerable<Explanation> explanations) =>
        new[] { Cautions.Light, Cautions.Source, FieldWords.Cautions(explanations), Cautions.Codes }.Where(c => c.Length > 0);

    /// <summary>A share of belief, such as <c>8 %</c>.</summary>
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

    /// <summary>A number with its noun.</summary>
    public static string Count(int number, string noun) => $"{number} {noun}{(number == 1 ? "" : "s")}";

    private static string Number(long number) => number.ToString("N0", CultureInfo.InvariantCulture);

    private static string MostTried(LocateResult result) =>
        result.Searched.Sizes.Count == 0 ? "" : $", up to {Count(result.Searched.Sizes.Max(s => s.Size), "deviation")} at once";
}
