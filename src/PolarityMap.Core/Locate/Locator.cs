using PolarityMap.Core.Deviations;

namespace PolarityMap.Core.Locate;

/// <summary>
/// Finds what explains what was seen, and what to test next: consistency-based diagnosis on the exact model of the plant, by
/// smallest sets of deviations, and tests chosen by expected entropy for their work.
/// </summary>
public static class Locator
{
    /// <summary>The likelier explanations that tests are chosen for; those behind them have hardly any share.</summary>
    private const int MostForTests = 200;

    /// <summary>The weight at which a deviation is as likely to be there as not: what is seldom twice is seldomer together.</summary>
    private const double EvenWeight = 1000;

    /// <summary>The smallest explanations of what was seen, and the next test.</summary>
    /// <param name="context">The plant as it is described.</param>
    /// <param name="observations">What was seen.</param>
    /// <param name="options">How far to search.</param>
    public static LocateResult Locate(DeviationContext context, IReadOnlyList<Observation> observations, LocateOptions? options = null)
    {
        options ??= new LocateOptions();
        IReadOnlyList<Contradiction> contradictions = Contradictions.Of(context, observations);
        if (contradictions.Count > 0)
            return new LocateResult(observations, contradictions, [], new SearchReport([], "nothing was searched: the observations contradict each other"), null);
        var search = new ExplanationSearch(context, observations, options);
        (IReadOnlyList<Deviation[]> found, SearchReport report) = search.Run();
        Deviation[][] ranked = [.. found.OrderByDescending(Odds)];
        if (ranked.Length > options.MostExplanations)
        {
            report = report with { Bound = $"{ranked.Length} explanations were found; the {options.MostExplanations} likeliest are kept. {report.Bound}".TrimEnd() };
            ranked = ranked[..options.MostExplanations];
        }

        LocateResult result = Told(context, observations, search, ranked, report);
        return ranked.Length > 0 ? result : result with { Doubtful = Doubtful(context, observations, search.Refuting) };
    }

    /// <summary>The observations that refute the plant as described, and without which one deviation explains the rest.</summary>
    private static IReadOnlyList<Observation> Doubtful(DeviationContext context, IReadOnlyList<Observation> observations, IReadOnlyList<int> refuting)
    {
        const int mostAsked = 50;
        var doubtful = new List<Observation>();
        foreach (int index in refuting.Take(mostAsked))
        {
            var rest = new ExplanationSearch(context, [.. observations.Where((_, i) => i != index)], new LocateOptions { MostDeviations = 1 });
            if (rest.Run().Found.Count > 0)
                doubtful.Add(observations[index]);
        }

        return doubtful;
    }

    /// <summary>The whole decision tree from what is known.</summary>
    /// <param name="context">The plant as it is described.</param>
    /// <param name="result">What is known.</param>
    /// <param name="depth">The most tests one after the other.</param>
    public static TestPlan Plan(DeviationContext context, LocateResult result, int depth = 8)
    {
        int count = Math.Min(result.Explanations.Count, MostForTests);
        Deviation[][] sets = [.. result.Explanations.Take(count).Select(e => e.Deviations.ToArray())];
        var refuting = new ExplanationSearch(context, result.Observations, new LocateOptions()).Refuting;
        var table = new TestTable(context, CandidateTests.Of(context, result.Observations, refuting, sets), sets);
        var chooser = new TestChooser(context, table, [.. result.Explanations.Take(count).Select(e => e.Share)]);
        return Plan(result, chooser, [.. Enumerable.Range(0, count)], depth);
    }

    private static TestPlan Plan(LocateResult result, TestChooser chooser, IReadOnlyList<int> left, int depth)
    {
        NextTest? next = depth > 0 ? chooser.Choose(left) : null;
        IReadOnlyList<Explanation> remaining = [.. left.Select(e => result.Explanations[e])];
        return next is null
            ? new TestPlan(null, remaining, [])
            : new TestPlan(next, remaining, [.. next.Outcomes.Select(o => Plan(result, chooser, o.Explanations, depth - 1))]);
    }

    private static LocateResult Told(DeviationContext context, IReadOnlyList<Observation> observations, ExplanationSearch search, Deviation[][] ranked, SearchReport report)
    {
        double all = ranked.Sum(Odds);
        Deviation[][] likely = [.. ranked.Take(MostForTests)];
        IReadOnlyList<SiteTest> tests = likely.Length > 1 ? CandidateTests.Of(context, observations, search.Refuting, likely) : [];
        var table = new TestTable(context, tests, likely);
        int[] groups = table.Groups(likely.Length);
        double[] share = [.. ranked.Select(e => Odds(e) / all)];
        var words = new EvidenceWords(context, observations, search);
        var explanations = new Explanation[ranked.Length];
        for (int e = 0; e < ranked.Length; e++)
            explanations[e] = new Explanation(ranked[e], share[e], e < groups.Length ? groups[e] : e + 1, words.Of(ranked[e]));
        NextTest? next = new TestChooser(context, table, share).Choose([.. Enumerable.Range(0, likely.Length)]);
        return new LocateResult(observations, [], explanations, report, next);
    }

    /// <summary>How likely a set of deviations is beside others.</summary>
    private static double Odds(Deviation[] set)
    {
        double odds = 1;
        foreach (Deviation deviation in set)
            odds *= deviation.Weight / EvenWeight;
        return odds;
    }
}
