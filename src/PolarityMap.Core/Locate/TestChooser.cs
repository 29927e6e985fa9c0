using PolarityMap.Core.Deviations;

namespace PolarityMap.Core.Locate;

/// <summary>
/// Chooses the test that tells most for its work: the entropy of its outcomes under the belief in each explanation, in bits, by
/// the minutes it makes.
/// </summary>
/// <param name="context">The plant.</param>
/// <param name="table">What each test shows under each explanation.</param>
/// <param name="share">The belief in each explanation of the table.</param>
/// <param name="index">The index of each explanation of the table among all.</param>
internal sealed class TestChooser(DeviationContext context, TestTable table, double[] share, int[] index)
{
    private const double LeastBits = 1e-9;

    /// <summary>The best test for some of the explanations, or null when none tells any two of them apart.</summary>
    public NextTest? Choose(IReadOnlyList<int> explanations) => Best(explanations) is >= 0 and int best ? Told(best, explanations, out _) : null;

    /// <summary>The index of an explanation of the table among all.</summary>
    public int IndexOf(int explanation) => index[explanation];

    /// <summary>The index of the best test, or -1.</summary>
    public int Best(IReadOnlyList<int> explanations)
    {
        int best = -1;
        double most = 0;
        for (int t = 0; t < table.Tests.Count && explanations.Count > 1; t++)
        {
            double bits = Bits(t, explanations);
            double worth = bits / table.Tests[t].Minutes;
            if (bits > LeastBits && worth > most * (1 + 1e-9))
            {
                most = worth;
                best = t;
            }
        }

        return best;
    }

    /// <summary>The information expected of a test, in bits.</summary>
    public double Bits(int test, IReadOnlyList<int> explanations)
    {
        var mass = new Dictionary<int, double>();
        double open = 0, all = 0;
        foreach (int e in explanations)
        {
            int shown = table.Of(test, e);
            all += share[e];
            if (shown == TestTable.Open)
                open += share[e];
            else
                mass[shown] = mass.GetValueOrDefault(shown) + share[e];
        }

        double told = all - open, bits = 0;
        foreach (double part in mass.Values)
        {
            if (part > 0)
                bits -= part / told * Math.Log2(part / told);
        }

        // What is open either way is taken to follow the rest, and tells nothing of itself.
        return told > 0 ? bits * told / all : 0;
    }

    /// <summary>A test with what it can show.</summary>
    /// <param name="test">Its number in the table.</param>
    /// <param name="explanations">Explanations of the table that are left.</param>
    /// <param name="under">For each outcome the explanations of the table that lead one to expect it.</param>
    public NextTest Told(int test, IReadOnlyList<int> explanations, out IReadOnlyList<IReadOnlyList<int>> under)
    {
        double told = explanations.Where(e => table.Of(test, e) != TestTable.Open).Sum(e => share[e]);
        var outcomes = new List<(TestOutcome Outcome, List<int> Under)>();
        foreach ((int shown, List<int> list) in table.Split(test, explanations))
        {
            double mass = list.Where(e => table.Of(test, e) != TestTable.Open).Sum(e => share[e]);
            outcomes.Add((new TestOutcome(Observed(table.Tests[test], shown), told > 0 ? mass / told : 0, [.. list.Select(IndexOf)]), list));
        }

        (TestOutcome Outcome, List<int> Under)[] ordered = [.. outcomes.OrderByDescending(o => o.Outcome.Share)];
        under = [.. ordered.Select(o => o.Under)];
        return new NextTest(table.Tests[test], Bits(test, explanations), [.. ordered.Select(o => o.Outcome)]);
    }

    private Observation Observed(SiteTest test, int shown) => test switch
    {
        LightTest light => new LightSeen(light.From, light.Look, shown),
        LampTest lamp => new LampSeen(lamp.Port, shown == 1),
        LookTest look => new PartLooked(look.Part, shown == 0),
        LossTest loss when shown is TestTable.TooMuch or TestTable.AsStated => new LossExpected(loss.From, loss.Seen, shown == TestTable.TooMuch),
        LossTest loss => new LightSeen(loss.From, context.Graph.PartOf(loss.Seen), shown),
        _ => throw new ArgumentException($"no outcome is known for {test}", nameof(test)),
    };
}
