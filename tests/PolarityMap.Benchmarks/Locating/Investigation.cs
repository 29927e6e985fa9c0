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

/// <summary>How a search for injected deviations went.</summary>
/// <param name="IsSilent">True where nothing to see tells of them.</param>
/// <param name="Place">Place of the true cause, or of one that no light test tells from it, when all tests are made; 0 when absent.</param>
/// <param name="IsLost">True when it was missing from the explanations while they were of its size.</param>
/// <param name="Tests">Tests until one part, or one group that light does not tell apart, was left; -1 when that was not reached.</param>
/// <param name="Bits">What had to be learnt: the entropy of belief over groups at first sight.</param>
/// <param name="Milliseconds">Time of the first answer.</param>
internal sealed record Course(bool IsSilent, int Place, bool IsLost, int Tests, double Bits, double Milliseconds);

/// <summary>Searches for injected deviations as an installer would, test after test.</summary>
internal static class Investigation
{
    private const int MostTests = 30;

    public static Course Run(DeviationContext context, IReadOnlyList<Deviation> truth, Way way)
    {
        var site = new SimulatedSite(context, truth);
        List<Observation> seen = site.FirstSight();
        var watch = System.Diagnostics.Stopwatch.StartNew();
        LocateResult result = Locator.Locate(context, seen);
        double first = watch.Elapsed.TotalMilliseconds;
        if (result.IsAsDescribed || HidesOne(context, truth, seen))
            return new Course(true, 0, false, 0, 0, first);
        double bits = Bits(result);
        IEnumerator<SiteTest>? fixedTests = way == Way.Advised ? null : FixedTests(context, seen, site, way).GetEnumerator();
        int isolated = -1;
        bool lost = false;
        for (int tests = 0; tests <= MostTests; tests++)
        {
            lost |= result.Explanations.Count > 0 && result.Explanations[0].Deviations.Count >= truth.Count && PlaceOf(result, truth) == 0;
            isolated = !IsIsolated(result) ? -1 : isolated < 0 ? tests : isolated;
            if (result.Next is null || (way != Way.Advised && isolated >= 0))
                break;
            if (fixedTests is not null && !fixedTests.MoveNext())
                break;
            seen.Add(site.Make(fixedTests?.Current ?? result.Next.Test));
            result = Locator.Locate(context, seen);
        }

        return new Course(false, PlaceOf(result, truth), lost, isolated, bits, first);
    }

    /// <summary>True where first sight would be the same without one of the deviations: it does not tell of it.</summary>
    private static bool HidesOne(DeviationContext context, IReadOnlyList<Deviation> truth, List<Observation> seen) =>
        truth.Count > 1 && truth.Any(left => new SimulatedSite(context, [.. truth.Where(d => d != left)]).FirstSight().ToHashSet().SetEquals(seen));

    /// <summary>One part, or things that light does not tell apart.</summary>
    private static bool IsIsolated(LocateResult result) =>
        result.Explanations.Select(e => e.Group).Distinct().Count() <= 1
        || result.Explanations.Select(e => string.Join(',', e.Deviations.Select(d => d.Parts[0]).Order())).Distinct().Count() == 1;

    /// <summary>The place of the truth, counting groups that light does not tell apart as one.</summary>
    private static int PlaceOf(LocateResult result, IReadOnlyList<Deviation> truth)
    {
        HashSet<DeviationId> ids = [.. truth.Select(d => d.Id)];
        Explanation? found = result.Explanations.FirstOrDefault(e => ids.SetEquals(e.Deviations.Select(d => d.Id)));
        if (found is null)
            return 0;
        return 1 + result.Explanations.TakeWhile(e => e.Group != found.Group).Select(e => e.Group).Distinct().Count();
    }

    private static double Bits(LocateResult result) =>
        -result.Explanations.GroupBy(e => e.Group).Select(g => g.Sum(e => e.Share)).Where(p => p > 0).Sum(p => p * Math.Log2(p));

    /// <summary>
    /// Light from every port in doubt to the parts on its way as described, then a look at each of those parts, and the losses
    /// along ways that lose too much.
    /// </summary>
    private static IEnumerable<SiteTest> FixedTests(DeviationContext context, List<Observation> seen, SimulatedSite site, Way way)
    {
        var trial = new TrialGraph(context.Graph);
        foreach (int start in Doubtful(context, seen))
        {
            trial.Follow(start, -1);
            int[] parts = [.. trial.Walk.Skip(1).Select(context.Graph.PartOf).Distinct()];
            int low = 0, high = parts.Length - 1;
            while (low <= high)
            {
                int at = way == Way.DocumentOrder ? low : (low + high) / 2;
                var test = new LightTest(start, parts[at], 1);
                yield return test;
                if (way == Way.DocumentOrder || ((LightSeen)site.Make(test)).Seen == trial.Follow(start, parts[at]))
                    low = at + 1;
                else
                    high = at - 1;
            }

            foreach (int part in parts)
                yield return new LookTest(part, 1);
        }

        foreach (LossMeasured loss in seen.OfType<LossMeasured>().ToArray())
        {
            trial.Follow(loss.From, -1);
            int[] way2 = [.. trial.Walk];
            for (int i = 1; i < way2.Length; i++)
            {
                if (trial.Follow(loss.From, context.Graph.PartOf(way2[i])) == way2[i])
                    yield return new LossTest(loss.From, way2[i], 1);
            }
        }
    }

    /// <summary>The lanes of ports that are dark, and lanes that were seen to lead elsewhere.</summary>
    private static int[] Doubtful(DeviationContext context, List<Observation> seen)
    {
        var starts = new List<int>();
        foreach (LampSeen lamp in seen.OfType<LampSeen>().Where(l => !l.IsOn))
            starts.AddRange(context.Plant.Parts[lamp.Port.Part].Shape.Lanes.Where(l => l.Port == lamp.Port.Port).Select(l => context.Graph.PositionOf(lamp.Port, l.Position)));
        starts.AddRange(seen.OfType<LightSeen>().Select(l => l.From));
        return [.. starts.Distinct()];
    }
}
