using PolarityMap.Core.Checks;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Planning;
using PolarityMap.Core.Planning.Growth;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Core.Tests.Planning.Growth;

/// <summary>What must hold of every growth, tried on random plants and random new briefs for them.</summary>
public sealed class GrowthPropertyTests
{
    private static readonly int s_count = Soak.Times(300);

    private static readonly Lazy<(TracedPlant Plant, Brief Brief, Brief Next)?[]> s_cases = new(() => [.. Enumerable.Range(0, s_count).Select(Made)]);

    [Fact]
    public void The_steps_turn_the_one_plant_into_the_other_and_links_that_stay_are_proven_all_along()
    {
        int met = 0, over = 0, moved = 0;
        for (int number = 0; number < s_count; number++)
        {
            if (Case(number) is not { } c)
                continue;
            GrowthResult result = GrowthPlanner.Plan(c.Plant, c.Next);
            if (result.Difference is not { } difference)
            {
                Assert.True(result.Reason is not null || result.Refused is { Chosen: null }, $"case {number} says nothing");
                continue;
            }

            string why = $"case {number}";
            Assert.True(result.IsMet, $"{why}: {string.Join("; ", result.Steps.SelectMany(s => s.Errors))}");
            met++;
            over += difference.Links.Count(l => l is { IsKept: false, Before: >= 0, After: not null });
            moved += difference.Moved.Count;
            Steps(c.Plant.Plant, result, difference, why);
            MeetsTheBrief(c.Next, result, difference, why);

            // Where what comes later was planned for, no cable is laid when it comes.
            if (number % 5 == 4)
                Assert.DoesNotContain(difference.Added, p => difference.Parts[p].Kind == "trunk");
        }

        Assert.True(met > 35 && over > 40 && moved > 60, $"{met} grown, {over} links over, {moved} parts moved: too few to mean anything");
    }

    [Fact]
    public void A_plant_that_meets_the_brief_already_is_left_as_it_is()
    {
        int met = 0;
        for (int number = 0; number < s_count; number++)
        {
            if (Case(number) is not { } c)
                continue;
            GrowthResult result = GrowthPlanner.Plan(c.Plant, c.Brief);
            Assert.True(result.IsMet, $"case {number}: {result.Reason}");
            Assert.True(result.Steps.Count == 0, $"case {number}: {c.Brief.Separation} {c.Brief.Method?.Name} {c.Brief.Base} spare {c.Brief.Spare} {string.Join(';', c.Brief.Networks.Select(n => n.Application.Name))} {string.Join(';', c.Brief.Outlets)} {string.Join(',', result.Difference!.Added.Select(p => result.Difference.Parts[p].Name))} legs {string.Join(',', c.Brief.TrunkLegs)}");
            Assert.Empty(result.Difference!.Added);
            met++;
        }

        Assert.True(met > 35, $"{met} cases");
    }

    private static void Steps(Plant before, GrowthResult result, GrowthDifference difference, string why)
    {
        HashSet<Joint> joints = [.. difference.Before];
        HashSet<int> parts = [.. Enumerable.Range(0, before.Parts.Count)];
        foreach (GrowthStep step in result.Steps)
        {
            Assert.All(step.Opened, j => Assert.True(joints.Remove(j), why));
            InOrder(difference, step, why);
            Assert.All(step.PartsIn, p => Assert.True(parts.Add(p), why));
            Assert.All(step.Made, j => Assert.True(joints.Add(j), why));
            Assert.All(step.Cleared, j => Assert.True(joints.Remove(j), why));
            Assert.All(step.PartsOut, p => Assert.True(parts.Remove(p), why));
            Assert.Equal(joints.Sum(j => j.Ports.Count()), joints.SelectMany(j => j.Ports).Distinct().Count());
            Assert.All(joints.SelectMany(j => j.Ports), p => Assert.Contains(p.Part, parts));
            Assert.DoesNotContain(step.Dark, l => difference.Links[l].IsKept);
            Assert.Equal(step.Live.Count, step.Proven);
        }

        Assert.True(joints.SetEquals(difference.After), why);
        int[] changed = [.. Enumerable.Range(0, difference.Links.Count).Where(l => difference.Links[l] is { IsKept: false, Before: >= 0, After: not null })];
        int[] dark = [.. result.Steps.SelectMany(s => s.Dark)];
        Assert.Equal(dark.Length, dark.Distinct().Count());
        Assert.Subset(changed.ToHashSet(), dark.ToHashSet());
        Assert.Equal(result.After!.Report!.Traced.Plant.Parts.Count, parts.Count);
    }

    /// <summary>Plugs at interfaces go out before any other and come in after all others; a port that is plugged into is free by then.</summary>
    private static void InOrder(GrowthDifference difference, GrowthStep step, string why)
    {
        bool IsAtInterface(Joint j) => j.Ports.Any(p => difference.Parts[p.Part].Shape.IsInterface);
        Assert.True(step.Opened.SkipWhile(IsAtInterface).All(j => !IsAtInterface(j)), why);
        Assert.True(step.Made.SkipWhile(j => !IsAtInterface(j)).All(IsAtInterface), why);
        Assert.DoesNotContain(step.Cleared, IsAtInterface);
        Assert.Empty(step.Cleared.SelectMany(j => j.Ports).Intersect(step.Made.SelectMany(j => j.Ports)));
    }

    /// <summary>Counted apart from the planner: every outlet of the brief has its links, of the right application, and no other link is there.</summary>
    private static void MeetsTheBrief(Brief brief, GrowthResult result, GrowthDifference difference, string why)
    {
        CheckReport report = result.After!.Report!;
        Plant plant = report.Traced.Plant;
        Assert.Equal(brief.LinkCount, plant.Links.Count);
        Assert.Equal(brief.LinkCount, report.Proven);
        Assert.Empty(report.Findings);
        foreach ((BriefNetwork network, int n) in brief.Networks.Select((w, n) => (w, n)))
        {
            Link[] own = [.. plant.Links.Where(l => plant.NetworkOf(l.From.Port) is >= 0 and int of && plant.Networks[of].Name == network.Name)];
            Assert.True(own.Length == brief.Outlets.Sum(o => o.Name.Count * o.Links[n]), why);
            Assert.All(own, l => Assert.Equal(network.Application, plant.Port(l.From.Port).Application));
        }

        Assert.Equal(difference.OldParts, difference.Staying + difference.Moved.Count + difference.TakenOut.Count);
        Assert.True(PlantAssembly.Of(result.After.Planned!, out _) is { } again && CheckReport.Of(TracedPlant.Of(again)).Proven == report.Proven, why);
        Assert.True(result.IsWritable, why);
    }

    private static (TracedPlant Plant, Brief Brief, Brief Next)? Case(int number) => s_cases.Value[number];

    private static (TracedPlant Plant, Brief Brief, Brief Next)? Made(int number)
    {
        Brief brief = RandomBriefs.Numbered(number);
        if (Planner.Served(brief) is not { } plan)
            return null;
        brief = brief with { Method = plan.Candidate.Method, Base = plan.Candidate.Base };
        return (plan.Report!.Traced, brief, Next(brief, number));
    }

    private static Brief Next(Brief brief, int number)
    {
        BriefOutlets first = brief.Outlets[0];
        return (number % 5) switch
        {
            // More at the same outlets.
            0 => brief with { Outlets = [first with { Links = [.. first.Links.Select((l, n) => l + (n == 0 ? 1 : 0))] }, .. brief.Outlets.Skip(1)] },

            // Another application.
            1 => brief with { Networks = [.. brief.Networks.Select((n, i) => i == 0 && !n.Application.IsParallel ? n with { Application = Application.Find(brief.Fibre.IsMultimode ? "1000BASE-SX" : "1000BASE-LX10")!, Later = null } : n)] },

            // More outlets.
            2 => brief with { Outlets = [.. brief.Outlets, first with { Name = PlannedName.Of("NEW", 3) }] },

            // One more network at each outlet.
            3 => brief with
            {
                Networks = [.. brief.Networks, new BriefNetwork(new Network("more", "yellow", default) { Key = brief.Networks[0].Network.Key is null ? null : "K9" }, "MO", brief.Networks[0].Application)],
                Outlets = [.. brief.Outlets.Select(o => o with { Links = [.. o.Links, 1] })],
            },

            // What is later now.
            _ => brief with { Spare = default, Networks = [.. brief.Networks.Select(n => n with { Application = n.Later ?? n.Application, Later = null })] },
        };
    }
}
