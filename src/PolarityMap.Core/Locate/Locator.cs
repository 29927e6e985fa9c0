using PolarityMap.Core.Deviations;

namespace PolarityMap.Core.Locate;

/// <summary>
/// Finds what explains what was seen, and what to test next: consistency-based diagnosis on the exact model of the plant, by
/// smallest sets of deviations, and tests chosen by expected entropy for their work.
/// </summary>
public static class Locator
{
    /// <summary>The explanations that tests are chosen for.</summary>
    private const int MostForTests = 200;

    private const int LikeliestForTests = 150;

    /// <summary>The explanations of which the evidence is told.</summary>
    private const int MostWithEvidence = 100;

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
        int[] chosen = ForTests(result.Explanations.Count);
        Deviation[][] sets = [.. chosen.Select(e => result.Explanations[e].Deviations.ToArray())];
        var table = new TestTable(context, CandidateTests.Of(context, result.Observations, result.Refuting, sets), sets);
        var chooser = new TestChooser(context, table, [.. chosen.Select(e => result.Explanations[e].Share)], chosen);
        return Plan(result, chooser, [.. Enumerable.Range(0, chosen.Length)], depth);
    }

    private static TestPlan Plan(LocateResult result, TestChooser chooser, IReadOnlyList<int> left, int depth)
    {
        int best = depth > 0 ? chooser.Best(left) : -1;
        IReadOnlyList<Explanation> remaining = [.. left.Select(e => result.Explanations[chooser.IndexOf(e)])];
        if (best < 0)
            return new TestPlan(null, remaining, []);
        NextTest next = chooser.Told(best, left, out IReadOnlyList<IReadOnlyList<int>> under);
        return new TestPlan(next, remaining, [.. under.Select(u => Plan(result, chooser, u, depth - 1))]);
    }

    private static LocateResult Told(DeviationContext context, IReadOnlyList<Observation> observations, ExplanationSearch search, Deviation[][] ranked, SearchReport report)
    {
        double all = ranked.Sum(Odds);
        double[] share = [.. ranked.Select(e => Odds(e) / all)];
        int[] chosen = ForTests(ranked.Length);
        Deviation[][] sets = [.. chosen.Select(e => ranked[e])];
        IReadOnlyList<SiteTest> tests = sets.Length > 1 ? CandidateTests.Of(context, observations, search.Refuting, sets) : [];
        var table = new TestTable(context, tests, sets);
        int[] groups = table.Groups(sets.Length);
        var groupOf = new int[ranked.Length];
        for (int i = 0; i < chosen.Length; i++)
            groupOf[chosen[i]] = groups[i];
        var words = new EvidenceWords(context, observations, search);
        var explanations = new Explanation[ranked.Length];
        for (int e = 0; e < ranked.Length; e++)
            explanations[e] = new Explanation(ranked[e], share[e], groupOf[e] > 0 ? groupOf[e] : ranked.Length + e, e < MostWithEvidence ? words.Of(ranked[e]) : []);
        var chooser = new TestChooser(context, table, [.. chosen.Select(e => share[e])], chosen);
        NextTest? next = chooser.Choose([.. Enumerable.Range(0, chosen.Length)]) ?? Confirming(context, observations, explanations, search);
        return new LocateResult(observations, [], explanations, report, next) { Refuting = search.Refuting };
    }

    /// <summary>
    /// The explanations that tests are chosen for: all of them, or where there are very many the likeliest and some spread over the
    /// rest.
    /// </summary>
    private static int[] ForTests(int count) => count <= MostForTests
        ? [.. Enumerable.Range(0, count)]
        : [.. Enumerable.Range(0, LikeliestForTests), .. Enumerable.Range(0, MostForTests - LikeliestForTests).Select(i => LikeliestForTests + (int)((long)i * (count - LikeliestForTests) / (MostForTests - LikeliestForTests)))];

    /// <summary>Where one cause is left, a test of the place itself, unless it was made.</summary>
    private static NextTest? Confirming(DeviationContext context, IReadOnlyList<Observation> observations, Explanation[] explanations, ExplanationSearch search)
    {
        if (explanations.Length == 0 || explanations[0].Deviations.Count == 0)
            return null;
        Deviation[][] sets = [.. explanations.Select(e => e.Deviations.ToArray())];
        IReadOnlyList<SiteTest> tests = CandidateTests.AtTheCauses(context, observations, sets[0], search.Doubted());
        if (tests.Count == 0)
            return null;
        var table = new TestTable(context, [tests[0]], sets);
        var chooser = new TestChooser(context, table, [.. explanations.Select(e => e.Share)], [.. Enumerable.Range(0, sets.Length)]);
        return chooser.Told(0, [.. Enumerable.Range(0, sets.Length)], out _) with { IsToConfirm = true };
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
