using PolarityMap.Core.Deviations;
using PolarityMap.Core.Locate;

namespace PolarityMap.Benchmarks.Locating;

/// <summary>How tests are chosen.</summary>
internal enum Way
{
    /// <summary>The advised test.</summary>
    Advised,

    /// <summary>From the interface hop by hop, in the order of the document.</summary>
    DocumentOrder,

    /// <summary>In the middle of what is left of the way.</summary>
    HalfSplitting,
}

/// <summary>Searches for injected deviations as an installer would, test after test.</summary>
internal static class Investigation
{
    /// <summary>Nobody tests for longer.</summary>
    public const int MostTests = 100;

    public static Course Run(DeviationContext context, IReadOnlyList<Deviation> truth, Way way)
    {
        var site = new SimulatedSite(context, truth);
        List<Observation> seen = site.FirstSight();
        var watch = System.Diagnostics.Stopwatch.StartNew();
        LocateResult result = Locator.Locate(context, seen);
        double first = watch.Elapsed.TotalMilliseconds;
        if (result.IsAsDescribed || HidesOne(context, truth, seen))
            return new Course(true, 0, false, false, 0, 0, 0, 0, first, "");
        var light = new LightOf(context.Graph, truth);
        IEnumerator<SiteTest>? fixedTests = way == Way.Advised ? null : new FixedTests(context, seen, site, way).InOrder(() => result).GetEnumerator();
        int isolated = -1, before = -1;
        double bits = 0, surprise = 0;
        bool lost = false;
        for (int tests = 0; tests <= MostTests; tests++)
        {
            int place = PlaceOf(result, light, out _);
            bool isLarge = result.Explanations.Count > 0 && result.Explanations[0].Deviations.Count >= truth.Count;
            lost |= isLarge && place == 0;
            if (before < 0 && (isLarge || place > 0))
                (before, bits, surprise) = (tests, Bits(result), Surprise(result, light));
            isolated = place != 1 || !IsIsolated(result) ? -1 : isolated < 0 ? tests : isolated;
            if (result.Next is null || (way != Way.Advised && isolated >= 0))
                break;
            if (fixedTests is not null && !fixedTests.MoveNext())
                break;
            seen.Add(site.Make(fixedTests?.Current ?? result.Next.Test));
            result = Locator.Locate(context, seen);
        }

        int last = PlaceOf(result, light, out bool isAlike);
        return new Course(false, last, isAlike, lost, isolated, Math.Max(0, before), bits, surprise, first, result.Explanations.Count == 0 ? "nothing" : FieldWords.Wrong(result.Explanations[0]), result.Explanations.Count);
    }

    /// <summary>True where first sight would be the same without one of the deviations: it does not tell of it.</summary>
    private static bool HidesOne(DeviationContext context, IReadOnlyList<Deviation> truth, List<Observation> seen) =>
        truth.Count > 1 && truth.Any(left => new SimulatedSite(context, [.. truth.Where(d => d != left)]).FirstSight().ToHashSet().SetEquals(seen));

    /// <summary>One part, or things that light does not tell apart.</summary>
    private static bool IsIsolated(LocateResult result) =>
        result.Explanations.Select(e => e.Group).Distinct().Count() <= 1
        || result.Explanations.Select(e => string.Join(',', e.Deviations.Select(d => d.Parts[0]).Order())).Distinct().Count() == 1;

    /// <summary>The place of the truth or of what does the same to all light, counting groups that light does not tell apart as one.</summary>
    private static int PlaceOf(LocateResult result, LightOf truth, out bool isAlike)
    {
        Explanation? found = result.Explanations.FirstOrDefault(e => truth.IsOf(e.Deviations)) ?? result.Explanations.FirstOrDefault(e => truth.IsLike(e.Deviations));
        isAlike = found is not null && !truth.IsOf(found.Deviations);
        if (found is null)
            return 0;
        return 1 + result.Explanations.TakeWhile(e => e.Group != found.Group).Select(e => e.Group).Distinct().Count();
    }

    private static double Bits(LocateResult result) =>
        -result.Explanations.GroupBy(e => e.Group).Select(g => g.Sum(e => e.Share)).Where(p => p > 0).Sum(p => p * Math.Log2(p));

    /// <summary>The bits of the share of the truth with its group; none where it is absent.</summary>
    private static double Surprise(LocateResult result, LightOf truth) =>
        result.Explanations.FirstOrDefault(e => truth.IsOf(e.Deviations)) is { } found ? -Math.Log2(result.Explanations.Where(e => e.Group == found.Group).Sum(e => e.Share)) : 0;
}
