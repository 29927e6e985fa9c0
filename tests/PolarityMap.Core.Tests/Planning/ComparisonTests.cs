using CsCheck;
using PolarityMap.Core.Planning;
using Xunit;

namespace PolarityMap.Core.Tests.Planning;

/// <summary>Plans side by side: nothing is lost, sums are what they say, and what comes later adds up.</summary>
public sealed class ComparisonTests
{
    [Fact]
    public void Every_candidate_is_compared_or_excluded_with_a_reason_and_the_best_comes_first() => RandomBriefs.Any.Sample(
        static brief =>
        {
            brief = brief with { Method = null, Base = brief.Base ?? 12 };
            PlanComparison compared = PlanComparison.Of(brief);
            Assert.Equal(Planner.Candidates(brief).Select(c => c.ToString()).Order(), compared.Plans.Select(p => p.Candidate).Concat(compared.Excluded.SelectMany(e => e.Proofs).Select(p => p.Candidate)).Select(c => c.ToString()).Order());
            Assert.All(compared.Excluded, e => Assert.NotEmpty(e.Reasons));
            Assert.Equal(compared.Plans.Select(p => p.Score).Order(), compared.Plans.Select(p => p.Score));
            Assert.All(compared.Plans, p => Assert.Equal(p.Pieces.Sum(), p.Score));
            if (compared.Plans.Count > 0)
                Assert.Equal(compared.Plans[0].Candidate, Planner.Plan(brief).Chosen!.Candidate);
        },
        iter: Soak.Times(40));

    // The parts list of now is what stays and what is left over, that of later what stays and what is bought. The trunks
    // stay, but where an array's parallel link gives way to pairs, which take fewer.
    [Fact]
    public void What_stays_what_is_bought_and_what_is_left_over_add_up_and_trunks_stay()
    {
        // Numbered briefs, so that there are always as many.
        int changes = 0;
        foreach (Brief brief in Enumerable.Range(1, Soak.Times(800)).Select(RandomBriefs.Numbered).Where(b => b.Networks.Any(n => n.Later is not null)))
        {
            if (Planner.Served(brief) is not { Later: not null } plan)
                continue;
            changes++;
            LaterChange later = LaterChange.Of(plan)!;
            Assert.Equal(Counted(PlanItem.Of(plan)), Counted([.. later.Stays, .. later.Spare]));
            Assert.Equal(Counted(PlanItem.Of(plan.Later)), Counted([.. later.Stays, .. later.Buy]));
            if (brief.Networks.Any(n => n.Application.IsParallel && n.Later is { IsParallel: false }))
                continue;
            string[] changed = [.. later.Buy.Where(i => i.Kind == "trunk").Select(i => $"buy {i}"), .. later.Spare.Where(i => i.Kind == "trunk").Select(i => $"left over {i}")];
            Assert.True(changed.Length == 0, $"{plan.Candidate}, spare {brief.Spare}, {brief.Separation}: {string.Join("; ", changed)}");
        }

        Assert.True(changes > 10, $"{changes} plans have something later");
    }

    [Fact]
    public void Kinds_and_numbers_are_those_of_the_plant() => RandomBriefs.Any.Sample(
        static brief =>
        {
            if (Planner.Served(brief) is not { } plan)
                return;
            PlanMeasures m = PlanMeasures.Of(plan);
            IReadOnlyList<PlanItem> items = PlanItem.Of(plan);
            int Sum(Func<PlanItem, bool> which) => items.Where(which).Sum(i => i.Quantity);
            Assert.Equal(Sum(i => i.Kind is "duplex cord" or "array cord"), m.CordKinds.Sum(k => k.Count));
            Assert.Equal(Sum(i => i.Kind == "trunk"), m.TrunkKinds.Sum(k => k.Count));
            Assert.Equal(Sum(i => i.Kind is "cassette" or "outlet"), m.CassetteKinds.Sum(k => k.Count));
            Assert.Equal(items.Where(i => i.Kind is "duplex cord" or "array cord").Select(i => i.Type).Distinct().Order(), m.CordKinds.Select(k => k.Name).Order());
            Assert.Equal(Sum(i => !i.IsInterface), m.Parts);
        },
        iter: Soak.Times(100));

    // Twelve links, base 12, by hand: two arrays, so four cassettes, a trunk of two legs, 24 cords, 29 parts; 24 fibres, none idle.
    [Theory]
    [InlineData("A", 1, 2)]
    [InlineData("B", 2, 1)]
    [InlineData("U1", 1, 1)]
    public void Twelve_links_take_what_is_reckoned_by_hand(string method, int cassettes, int cords)
    {
        PlanMeasures m = Plan(new PlanWeights()).Single(p => p.Candidate.Method.Name == method && p.Candidate.Base == 12).Measures;
        Assert.Equal((cassettes, cords, 1, 1), (m.Cassettes, m.Cords, m.Trunks, m.Adapters));
        Assert.Equal((4, 24, 1, 4, 29), (m.CassetteKinds.Sum(k => k.Count), m.CordKinds.Sum(k => k.Count), m.TrunkKinds.Sum(k => k.Count), m.AdapterKinds.Sum(k => k.Count), m.Parts));
        Assert.Equal((24, 0, 4), (m.FibresUsed, m.FibresIdle, m.Matings));
    }

    // Base 12 takes 29 parts, base 8 three arrays with 6 cassettes and 31 parts. Kinds: A 5, B 5, C 4. By hand:
    // A on base 12: 4 x 5/5 + 3 x 29/31 + 1 x 0 + 1 x 4/4 + 2 = 9.806; C: 4 x 4/5 + 3 x 29/31 + 1 = 7.006.
    [Fact]
    public void The_sum_is_each_weight_times_its_share_of_the_most()
    {
        Brief brief = ComparisonStatementTests.Twelve("10GBASE-SR", "OM4");
        string[] methods = ["A", "B", "C"];
        IReadOnlyList<ComparedPlan> plans = PlanComparison.Of(brief, [.. methods.SelectMany(m => new[] { 8, 12 }.Select(b => PlanProof.Of(brief, new PlanCandidate(PlanMethod.Find(m)!, b))))]).Plans;
        Assert.Equal("C base 12, C base 8, A base 12, B base 12, A base 8, B base 8", string.Join(", ", plans.Select(p => $"{p.Candidate.Method} base {p.Candidate.Base}")));
        Assert.Equal(9.806m, Math.Round(plans[2].Score, 3));
        Assert.Equal(7.006m, Math.Round(plans[0].Score, 3));
    }

    // Kinds by hand: a cassette, an adapter, trunks of 2 legs for the twelve pairs that stay and of 12 legs for those that get a leg each
    // later, and two cords: A-to-B, and the array cord that one network takes later. The A-to-B cord of the network that stays is the
    // same kind now and later.
    [Fact]
    public void A_kind_that_is_taken_now_and_later_is_one_kind()
    {
        Brief one = ComparisonStatementTests.Twelve("10GBASE-SR", "OM4");
        BriefNetwork house = one.Networks[0];
        Brief two = one with
        {
            Networks = [house, house with { Network = house.Network with { Name = "stage" }, Label = "S", Later = Core.Optics.Application.Find("40GBASE-SR4") }],
            Outlets = [.. one.Outlets.Select(o => o with { Links = [1, 1] })],
        };
        PlanMeasures m = PlanMeasures.Of(PlanProof.Of(two, new PlanCandidate(PlanMethod.Find("U1")!, 12)));
        Assert.Equal((1, 1, 1, 2, 1, 6), (m.Cassettes, m.Cords, m.LaterCords, m.Trunks, m.Adapters, m.Kinds));
    }

    // Base 24 has two rows of twelve: its sum is larger by the whole weight, that of the others is not.
    [Fact]
    public void Two_rows_are_added_whole()
    {
        IReadOnlyList<ComparedPlan> without = Plan(new PlanWeights(Rows: 0)), with = Plan(new PlanWeights(Rows: 3));
        Assert.Equal(20, with.Count);
        Assert.All(with, p => Assert.Equal(without.Single(o => o.Candidate == p.Candidate).Score + (p.Candidate.Base == 24 ? 3 : 0), p.Score));
    }

    [Fact]
    public void The_order_is_that_of_the_user_s_weights()
    {
        // Base 24 holds twelve links in one array: the fewest parts, and no fibre idle.
        Assert.Equal(24, Plan(new PlanWeights(0, 1, 0, 0, 0, 0))[0].Candidate.Base);
        Assert.True(Plan(new PlanWeights(0, 0, 0, 0, 1, 0)).Take(12).All(p => p.Candidate.Method.Name is "C" or "U1" or "U2"));

        // Nothing weighed: the order in which equals are taken, small bases first.
        Assert.Equal(
            new[] { "U1", "U2", "A", "C", "B" }.SelectMany(m => new[] { 8, 12, 16, 24 }.Select(b => $"method {m}, base {b}")),
            Plan(new PlanWeights(0, 0, 0, 0, 0, 0)).Select(p => p.Candidate.ToString()));
    }

    // 24 cords of 3.50, four cassettes of 41, one trunk of 300: 548 by hand.
    [Fact]
    public void Prices_are_summed_and_an_incomplete_sum_says_so_and_is_not_weighed()
    {
        PriceLine[] all = [new(3.5m) { Kind = "duplex cord" }, new(41m) { Kind = "cassette" }, new(300m) { Kind = "trunk" }];
        ComparedPlan whole = Priced(all).Single(p => p.Candidate.Method.Name == "C" && p.Candidate.Base == 12);
        Assert.Equal(548m, whole.Measures.Price!.Total);
        Assert.True(whole.Measures.Price.IsComplete);
        Assert.True(whole.Pieces[^1] > 0);

        ComparedPlan part = Priced(all[..2]).Single(p => p.Candidate.Method.Name == "C" && p.Candidate.Base == 12);
        Assert.Equal(248m, part.Measures.Price!.Total);
        Assert.False(part.Measures.Price.IsComplete);
        Assert.Equal(1, part.Measures.Price.PartsWithout);
        Assert.Equal(0, part.Pieces[^1]);
    }

    [Fact]
    public void Of_several_lines_that_fit_the_one_that_says_most_counts()
    {
        var list = new PriceList("EUR", [new(1m) { Kind = "trunk" }, new(2m) { Kind = "trunk", Fibres = 24 }, new(3m) { Type = "Type-B trunk", Kind = "trunk", Fibres = 12 }]);
        Assert.Equal(2m, list.Of(new PlanItem("trunk", "Type-B trunk") { Fibres = 24 }));
        Assert.Equal(3m, list.Of(new PlanItem("trunk", "Type-B trunk") { Fibres = 12 }));
        Assert.Equal(1m, list.Of(new PlanItem("trunk", "Type-B trunk") { Fibres = 48 }));
        Assert.Null(list.Of(new PlanItem("cassette", "U1 cassette")));
    }

    private static IReadOnlyList<ComparedPlan> Priced(PriceLine[] lines) =>
        PlanComparison.Of(ComparisonStatementTests.Twelve("10GBASE-SR", "OM4") with { Prices = new PriceList("EUR", lines), Weights = new PlanWeights(Price: 2) }).Plans;

    private static IReadOnlyList<ComparedPlan> Plan(PlanWeights weights) => PlanComparison.Of(ComparisonStatementTests.Twelve("10GBASE-SR", "OM4") with { Weights = weights }).Plans;

    private static SortedDictionary<string, int> Counted(IEnumerable<PlanItem> items) =>
        new(items.GroupBy(i => i.Each().ToString()).ToDictionary(g => g.Key, g => g.Sum(i => i.Quantity)), StringComparer.Ordinal);
}
