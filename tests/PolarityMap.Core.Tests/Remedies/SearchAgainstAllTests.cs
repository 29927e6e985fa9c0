using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Remedies;
using Xunit;

namespace PolarityMap.Core.Tests.Remedies;

/// <summary>The search against trying every set of changes on plants built, traced and checked anew.</summary>
public sealed class SearchAgainstAllTests
{
    /// <summary>Plants with what is wrong in them, and the most changes of a set that trying all can bear.</summary>
    private static readonly Dictionary<string, (Func<Bench> Make, int Most)> s_plants = new()
    {
        ["one wrong cord"] = (() => FaultyPlants.Cords(("A-to-A", 1), ("A-to-B", 2)), 3),
        ["two cords exchanged"] = (() => FaultyPlants.Cords(("A-to-B", 2), ("A-to-B", 1)), 3),
        ["two cords exchanged, one of them wrong"] = (() => FaultyPlants.Cords(("A-to-A", 2), ("A-to-B", 1)), 3),
        ["three cords in a ring"] = (() => FaultyPlants.Cords(("A-to-B", 2), ("A-to-B", 3), ("A-to-B", 1)), 3),
        ["a cord one port too far"] = (() => FaultyPlants.Cords(("A-to-B", 1), ("A-to-A", 3)), 3),
        ["a wrong trunk"] = (() => FaultyPlants.Legs(1, 1, "Type-A"), 3),
        ["a wrong trunk under a wrong cord"] = (() => FaultyPlants.Legs(1, 2, "Type-A", rightCord: n => n == 1 ? "A-to-A" : "A-to-B"), 2),
        ["a wrong trunk with angled plugs"] = (() => FaultyPlants.Legs(1, 2, "Type-A", "OS2"), 2),
        ["a wrong trunk of another map"] = (() => FaultyPlants.Legs(1, 2, "Type-C"), 2),
        ["a wrong cord that turns by hand"] = (() => FaultyPlants.Legs(1, 2, rightCord: n => n == 0 ? "A-to-A" : "A-to-B", reversible: true), 2),
        ["two legs"] = (() => FaultyPlants.Legs(2, 1, "Type-A"), 2),
        ["connectors"] = (FaultyPlants.Connectors, 2),
    };

    public static TheoryData<string> Plants => [.. s_plants.Keys];

    [Theory]
    [MemberData(nameof(Plants))]
    public void The_search_finds_just_the_least_sets_that_trying_all_finds(string name)
    {
        (Func<Bench> make, int most) = s_plants[name];
        CheckReport before = make().Report();
        Assert.NotEmpty(before.Findings);
        var search = new RemedySearch(before, new RemedyOptions { MostChanges = most, MostProofs = 100_000, MostProofsEach = 10_000, MostTrialsEach = 1_000_000 });
        RemedyResult result = search.Run();

        Assert.Null(result.Work.Bound);
        IReadOnlyList<IReadOnlyList<Change[]>> all = TriedAll.Remedies(before, Pool(before, search), most);
        for (int i = 0; i < before.Findings.Count; i++)
        {
            string what = $"{name}, {before.Findings[i].Rule.Code}";
            Assert.Equal((what, Words(all[i])), (what, Words(result.Findings[i].Sets.Select(s => s.Changes))));
        }
    }

    [Fact]
    public void Every_one_of_these_plants_has_a_plan_that_clears_all()
    {
        foreach ((string name, (Func<Bench> make, _)) in s_plants)
        {
            RemedyResult result = RemedySearch.Of(make().Report());
            Assert.True(result.Plan is { Remaining.Count: 0 }, name);
            Assert.Empty(result.Plan.After.Findings);
        }
    }

    /// <summary>Every change at every part and port, and those that the search came to look at besides.</summary>
    private static Change[] Pool(CheckReport report, RemedySearch search)
    {
        var context = new ChangeContext(report.Context);
        var pool = new Dictionary<ChangeId, Change>();
        for (int part = 0; part < context.Plant.Parts.Count; part++)
        {
            foreach (Change change in context.AtPart(part))
                pool.TryAdd(change.Id, change);
            for (int port = 0; port < context.Plant.Parts[part].Shape.Ports.Count; port++)
            {
                foreach (Change change in context.AtPort(new PortRef(part, port)))
                    pool.TryAdd(change.Id, change);
            }
        }

        foreach (Change change in search.Looked)
            pool.TryAdd(change.Id, change);
        return [.. pool.Values];
    }

    private static string Words(IEnumerable<IReadOnlyList<Change>> sets) =>
        string.Join('\n', sets.Select(s => string.Join(" + ", s.Select(c => c.Text).Order(StringComparer.Ordinal))).Order(StringComparer.Ordinal));
}
