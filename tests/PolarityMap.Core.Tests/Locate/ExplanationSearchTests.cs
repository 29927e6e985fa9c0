using PolarityMap.Core.Deviations;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Core.Tests.Locate;

/// <summary>The search against trying every set there is, each on a plant built anew.</summary>
public sealed class ExplanationSearchTests
{
    public static TheoryData<string, ulong, int> Cases()
    {
        var cases = new TheoryData<string, ulong, int>();
        foreach (string plant in (string[])["cords", "method", "zone"])
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
        var context = new DeviationContext(Plant(plant));
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
        var context = new DeviationContext(Plant("zone"));
        Deviation truth = context.All().First(d => d.Kind.Name == "cords-exchanged");
        LocateResult result = Locator.Locate(context, [.. Lamps(context, [truth])]);
        Assert.Equal(1, result.Explanations.Sum(e => e.Share), 9);
        Assert.Equal(result.Explanations.Select(e => e.Share).OrderDescending(), result.Explanations.Select(e => e.Share));
    }

    private static TracedPlant Plant(string name) => name switch
    {
        "cords" => new Bench().Add("L", "duplex interface", v => v.Set("ports", 3)).Add("R", "duplex interface", v => v.Set("ports", 3))
            .Cord("C1", "L/1", "A-to-B", "R/1").Cord("C2", "L/2", "A-to-B", "R/2").Cord("C3", "L/3", "A-to-B", "R/3").Trace(),
        "method" => Channels.Method("B", 8).Trace(),
        _ => new Bench().Add("L", "duplex interface", v => v.Set("ports", 2)).Add("M", "duplex interface", v => v.Set("ports", 2))
            .Add("K", "cassette", v => v.Set("wiring", "U1").Set("base", 8)).Add("Z", "cassette", v => v.Set("wiring", "U1").Set("base", 8))
            .Add("T", "trunk", v => v.Set("type", "Type-B").Set("base", 8)).Add("R", "duplex interface", v => v.Set("ports", 4))
            .Cord("C1", "L/1", "A-to-B", "K/1").Cord("C2", "M/1", "A-to-B", "K/2").Mate("K/rear", "T/near").Mate("T/far", "Z/rear")
            .Cord("D1", "Z/1", "A-to-B", "R/1").Cord("D2", "Z/2", "A-to-B", "R/2").Trace(),
    };

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

    private static IEnumerable<Observation> Lamps(DeviationContext context, Deviation[] truth)
    {
        var site = new RebuiltSite(context, truth);
        for (int part = 0; part < context.Plant.Parts.Count; part++)
        {
            for (int port = 0; port < context.Plant.Parts[part].Shape.Ports.Count && context.Plant.Parts[part].Shape.IsInterface; port++)
            {
                var at = new PortRef(part, port);
                if (context.Plugs.At(at) >= 0 && site.Lamp(at) is { } on)
                    yield return new LampSeen(at, on);
            }
        }
    }

    /// <summary>Lamps, and some light put in at drawn places.</summary>
    private static IEnumerable<Observation> Seen(DeviationContext context, Deviation[] truth, Lots lots)
    {
        var site = new RebuiltSite(context, truth);
        foreach (Observation lamp in Lamps(context, truth))
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
