using PolarityMap.Core.Optics;
using PolarityMap.Core.Planning;
using PolarityMap.Core.Planning.Growth;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Core.Tests.Planning.Growth;

/// <summary>Plants of pairs in which what comes later was planned for, when it comes.</summary>
public sealed class GrowthToLaterTests
{
    private static readonly SourcePlace s_nowhere = new("brief", 0, 0);

    public static TheoryData<string, int, int[], int> Cases { get; } = Made();

    // A leg lies for every link, whatever sizes trunks come in, so that nothing is laid; and a cable to an outlet serves that outlet.
    [Theory]
    [MemberData(nameof(Cases))]
    public void No_cable_is_laid_and_none_leads_to_another_outlet(string method, int fibres, int[] legs, int spare)
    {
        for (int outlets = 1; outlets <= 13; outlets++)
        {
            Brief now = Of(method, fibres, legs, spare, outlets);
            PlanProof plan = Planner.Served(now)!;
            Brief later = now with { Networks = [now.Networks[0] with { Application = now.Networks[0].Later!, Later = null }] };
            GrowthResult result = GrowthPlanner.Plan(plan.Report!.Traced, later);
            Assert.True(result.IsMet, $"{outlets}: {result.Reason}");
            Assert.DoesNotContain(result.Difference!.Added, p => result.Difference.Parts[p].Kind == "trunk");
            TracedPlant grown = result.After!.Report!.Traced;
            foreach (var outcome in result.After.Report.Context.Outcomes.All)
            {
                string outlet = grown.Plant.Parts[grown.Plant.Links[outcome.Index].To.Port.Part].Name["LX-".Length..];
                string[] passed =
                [
                    .. outcome.Strands.SelectMany(s => grown.Strands[s].ToArray()).SelectMany(p => new[] { grown.Graph.PartOf(p), grown.MatingAt(p)?.Through?.Part ?? -1 }).Where(p => p >= 0).Distinct()
                        .Where(p => !grown.Plant.Parts[p].IsInline).Select(p => grown.Plant.Parts[p].Name).Where(n => n.StartsWith("LX-Q-F", StringComparison.Ordinal) || n.StartsWith("LX-T-F", StringComparison.Ordinal)),
                ];
                Assert.All(passed, n => Assert.True(n == $"{n[..5]}{outlet}" || n.StartsWith($"{n[..5]}{outlet}-", StringComparison.Ordinal), $"{outlet} passes {n}"));
            }

            GrowthResult again = GrowthPlanner.Plan(grown, later);
            Assert.Empty(again.Difference!.Added);
            Assert.Empty(again.Steps);
        }
    }

    private static TheoryData<string, int, int[], int> Made()
    {
        var cases = new TheoryData<string, int, int[], int>();
        foreach (string method in new[] { "U1", "A", "B" })
        {
            cases.Add(method, 8, [1, 2, 4, 6, 8, 12, 24], 0);
            cases.Add(method, 12, [1], 25);
            cases.Add(method, 8, [1, 3], 0);
        }

        return cases;
    }

    /// <summary>Outlets in the room, and two of them at the end of cables of their own.</summary>
    private static Brief Of(string method, int fibres, int[] legs, int spare, int outlets) => new()
    {
        Title = new PlantTitle("Later"),
        Fibre = FibreClass.Find("OM4")!,
        Networks = [new BriefNetwork(new Network("light", "red", s_nowhere), "LX", Application.Find("10GBASE-SR")!) { Later = Application.Find("400GBASE-SR4") }],
        Rooms = [new BriefRoom("Main", "M", s_nowhere), new BriefRoom("Hall", "H", s_nowhere) { Distance = Length.FromMillimetres(20_000), From = 0 }],
        Outlets =
        [
            new BriefOutlets(new PlannedName("D", 1, outlets, ""), 1, [1], s_nowhere),
            new BriefOutlets(new PlannedName("F", 1, 2, ""), 1, [1 + (outlets % 3)], s_nowhere) { Distance = Length.FromMillimetres(9_000) },
        ],
        Method = PlanMethod.Find(method),
        Base = fibres,
        TrunkLegs = legs,
        Spare = new Percentage(spare),
        ArrayLoss = new Decibel(0.25m),
        DuplexLoss = new Decibel(0.1m),
    };
}
