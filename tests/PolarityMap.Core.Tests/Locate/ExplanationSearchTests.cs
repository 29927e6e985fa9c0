using PolarityMap.Core.Deviations;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Plants;
using Xunit;

namespace PolarityMap.Core.Tests.Locate;

/// <summary>The search against trying every set there is, each on a plant built anew.</summary>
public sealed class ExplanationSearchTests
{
    public static TheoryData<string, ulong, int> Cases()
    {
        var cases = new TheoryData<string, ulong, int>();
        foreach (string plant in SearchPlants.Names)
        {
            foreach (ulong seed in Lots.Seeds.Take(4))
            {
                for (int size = 1; size <= 3; size++)
                    cases.Add(plant, seed, size);
            }
        }

        return cases;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_search_finds_just_the_smallest_sets_that_trying_all_finds(string plant, ulong seed, int size)
    {
        var context = new DeviationContext(SearchPlants.Of(plant));
        var lots = new Lots(seed);
        Deviation[] all = [.. context.All()];
        Deviation[] truth = Drawn(lots, all, size);
        Observation[] seen = [.. Seen(context, truth, lots)];

        LocateResult result = Locator.Locate(context, seen, new LocateOptions { MostTried = long.MaxValue, MostExplanations = int.MaxValue });

        Assert.Empty(result.Contradictions);
        Assert.Null(result.Searched.Bound);
        Assert.Equal(Words(ByTrying(context, all, seen)), Words(result.Explanations.Select(e => e.Deviations)));
        Assert.NotEmpty(result.Explanations);
    }

    [Fact]
    public void Explanations_share_all_belief_between_them()
    {
        var context = new DeviationContext(SearchPlants.Of("zone"));
        Deviation truth = context.All().First(d => d.Kind.Name == "cords-exchanged");
        LocateResult result = Locator.Locate(context, [.. SearchPlants.Lamps(context, [truth])]);
        Assert.Equal(1, result.Explanations.Sum(e => e.Share), 9);
        Assert.Equal(result.Explanations.Select(e => e.Share).OrderDescending(), result.Explanations.Select(e => e.Share));
    }

    [Fact]
    public void Where_nothing_explains_everything_the_observation_that_stands_alone_is_doubted()
    {
        // Light that runs through a cord and back is in no set of deviations.
        var context = new DeviationContext(SearchPlants.Of("cords"));
        Deviation truth = context.All().First(d => d.Kind.Name == "other-cord");
        int transmit = context.Graph.PositionOf(new PortRef(context.Plant.Parts.ToList().FindIndex(p => p.Name == "R"), 2), 1);
        var mistaken = new LightSeen(transmit, -1, transmit + 1);
        LocateResult result = Locator.Locate(context, [.. SearchPlants.Lamps(context, [truth]), mistaken]);
        Assert.Empty(result.Explanations);
        Assert.Null(result.Searched.Bound);
        Assert.Equal([mistaken], result.Doubtful);
    }

    [Fact]
    public void Observations_that_exclude_each_other_are_named_and_nothing_is_searched()
    {
        var context = new DeviationContext(SearchPlants.Of("cords"));
        int a = context.Graph.PositionOf(new PortRef(context.Plant.Parts.ToList().FindIndex(p => p.Name == "L"), 0), 1);
        var first = new LightSeen(a, -1, -1);
        var second = new LightSeen(a, context.Graph.PartOf(context.Traced.OtherEnd(a)), context.Traced.OtherEnd(a));
        LocateResult result = Locator.Locate(context, [first, second]);
        Assert.Equal([(first, second)], result.Contradictions.Select(c => ((LightSeen)c.First, (LightSeen)c.Second)));
        Assert.Empty(result.Explanations);
        Assert.Empty(result.Searched.Sizes);
    }

    private static Deviation[] Drawn(Lots lots, Deviation[] all, int size)
    {
        var set = new List<Deviation>();
        while (set.Count < size)
        {
            Deviation next = lots.Of(all);
            if (set.TrueForAll(d => d.GoesWith(next)))
                set.Add(next);
        }

        return [.. set];
    }

    /// <summary>Lamps, and some light put in at drawn places.</summary>
    private static IEnumerable<Observation> Seen(DeviationContext context, Deviation[] truth, Lots lots)
    {
        var site = new RebuiltSite(context, truth);
        foreach (Observation lamp in SearchPlants.Lamps(context, truth))
            yield return lamp;
        int[] asked = [.. Enumerable.Range(0, context.Graph.PositionCount).Where(p => context.Graph.Inside[p] >= 0 || context.Graph.Outside[p] >= 0)];
        for (int i = 0; i < 3; i++)
        {
            int from = lots.Of(asked);
            int look = lots.Coin() ? -1 : lots.Next(context.Plant.Parts.Count);
            if (context.Graph.HasLane(from) && look == context.Graph.PartOf(from))
                continue;
            yield return new LightSeen(from, look, site.Light(from, look).Seen);
        }
    }

    private static List<Deviation[]> ByTrying(DeviationContext context, Deviation[] all, Observation[] seen)
    {
        if (Agree([]))
            return [[]];
        for (int size = 1; size <= 3; size++)
        {
            List<Deviation[]> found = [.. SetsOf(all, size, 0).Where(Agree)];
            if (found.Count > 0)
                return found;
        }

        return [];

        bool Agree(Deviation[] set)
        {
            var site = new RebuiltSite(context, set);
            return seen.All(site.Agrees);
        }
    }

    /// <summary>Every set of a size whose members can be there at once.</summary>
    private static IEnumerable<Deviation[]> SetsOf(Deviation[] all, int size, int from)
    {
        if (size == 0)
        {
            yield return [];
            yield break;
        }

        for (int i = from; i < all.Length; i++)
        {
            foreach (Deviation[] rest in SetsOf(all, size - 1, i + 1))
            {
                if (rest.All(d => d.GoesWith(all[i])))
                    yield return [all[i], .. rest];
            }
        }
    }

    private static string Words(IEnumerable<IReadOnlyList<Deviation>> sets) =>
        string.Join('\n', sets.Select(s => string.Join(" + ", s.Select(d => d.Text).Order(StringComparer.Ordinal))).Order(StringComparer.Ordinal));
}
