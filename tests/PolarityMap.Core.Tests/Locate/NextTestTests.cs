using PolarityMap.Core.Deviations;
using PolarityMap.Core.Locate;
using Xunit;

namespace PolarityMap.Core.Tests.Locate;

/// <summary>What the advised test promises, against plants that are built anew.</summary>
public sealed class NextTestTests
{
    public static TheoryData<string> Plants() => new(SearchPlants.Names);

    [Theory]
    [MemberData(nameof(Plants))]
    public void Every_explanation_shows_just_the_outcome_that_the_advised_test_says_of_it(string plant)
    {
        int advised = 0;
        foreach ((DeviationContext context, LocateResult result) in Results(plant))
        {
            if (result.Next is not { } next)
                continue;
            advised++;
            for (int e = 0; e < result.Explanations.Count; e++)
            {
                var site = new RebuiltSite(context, result.Explanations[e].Deviations);
                bool[] expected = [.. next.Outcomes.Select(o => o.Explanations.Contains(e))];
                Assert.Equal(expected, next.Outcomes.Select(o => Shows(site, o.Observation)));
                Assert.Contains(true, expected);
            }
        }

        Assert.NotEqual(0, advised);
    }

    [Theory]
    [MemberData(nameof(Plants))]
    public void The_information_of_a_test_is_the_entropy_of_its_outcomes(string plant)
    {
        foreach ((_, LocateResult result) in Results(plant))
        {
            if (result.Next is not { } next || next.Outcomes.Sum(o => o.Explanations.Count) != result.Explanations.Count)
                continue;
            double[] shares = [.. next.Outcomes.Select(o => o.Explanations.Sum(e => result.Explanations[e].Share))];
            Assert.Equal(shares, next.Outcomes.Select(o => o.Share), (a, b) => Math.Abs(a - b) < 1e-9);
            Assert.Equal(-shares.Sum(p => p * Math.Log2(p)), next.Bits, 9);
        }
    }

    [Theory]
    [MemberData(nameof(Plants))]
    public void A_plan_leads_from_every_explanation_to_an_end_that_holds_it(string plant)
    {
        foreach ((DeviationContext context, LocateResult result) in Results(plant))
        {
            TestPlan plan = Locator.Plan(context, result, depth: 20);
            Assert.Equal(result.Explanations, plan.Remaining);
            foreach (Explanation explanation in result.Explanations)
            {
                var site = new RebuiltSite(context, explanation.Deviations);
                TestPlan at = plan;
                while (at.Next is { } next)
                    at = at.Branches[next.Outcomes.ToList().FindIndex(o => Shows(site, o.Observation))];
                Assert.Contains(explanation, at.Remaining);
                Assert.All(at.Remaining, r => Assert.Equal(explanation.Group, r.Group));
            }
        }
    }

    [Fact]
    public void No_test_is_advised_at_a_part_that_cannot_be_reached()
    {
        var context = new DeviationContext(SearchPlants.Of("method"));
        int cassette = context.Plant.Parts.ToList().FindIndex(p => p.Kind == "cassette");
        Deviation truth = context.All().First(d => d.Kind.Name == "other-cord");
        var seen = new List<Observation>(SearchPlants.Lamps(context, [truth])) { new NotReached(cassette) };
        for (int tests = 0; tests < 20; tests++)
        {
            LocateResult result = Locator.Locate(context, seen);
            if (result.Next is not { } next)
                break;
            Assert.DoesNotContain(cassette, Places(context, next.Test));
            var site = new RebuiltSite(context, [truth]);
            seen.Add(next.Outcomes.First(o => Shows(site, o.Observation)).Observation);
        }
    }

    private static IEnumerable<int> Places(DeviationContext context, SiteTest test) => test switch
    {
        LightTest light => [context.Graph.PartOf(light.From), light.Look],
        LossTest loss => [context.Graph.PartOf(loss.From), context.Graph.PartOf(loss.Seen)],
        LookTest look => [look.Part],
        LampTest lamp => [lamp.Port.Part],
        _ => [],
    };

    private static bool Shows(RebuiltSite site, Observation observation) => site.Agrees(observation);

    private static IEnumerable<(DeviationContext Context, LocateResult Result)> Results(string plant)
    {
        var context = new DeviationContext(SearchPlants.Of(plant));
        foreach (Deviation[] ofKind in context.All().GroupBy(d => d.Kind.Name).Select(g => g.ToArray()))
        {
            foreach (Deviation truth in (Deviation[])[ofKind[0], ofKind[^1]])
                yield return (context, Locator.Locate(context, [.. SearchPlants.Lamps(context, [truth])]));
        }
    }
}
