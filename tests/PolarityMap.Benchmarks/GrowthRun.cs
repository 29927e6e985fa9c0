using System.Diagnostics;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Planning;
using PolarityMap.Core.Planning.Growth;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Benchmarks;

/// <summary>How long plants take to grow, held against planning the new brief anew in the same run.</summary>
internal static class GrowthRun
{
    /// <summary>Prints for plants of several sizes how long a network more takes, which touches nothing, and another application, to which every link goes over.</summary>
    public static void Print()
    {
        Console.WriteLine("| links | growth | steps | bought | planned anew ms | grown ms | ratio |");
        Console.WriteLine("| ---: | --- | ---: | ---: | ---: | ---: | ---: |");
        foreach (int links in new[] { 640, 1280, 2560 })
        {
            Brief brief = PlanRun.Make(links, SeparationPolicy.Own) with { Method = PlanMethod.Find("U1"), Base = 12 };
            TracedPlant plant = Planner.Served(brief)!.Report!.Traced;
            Row("a network more", plant, brief with
            {
                Networks = [.. brief.Networks, new BriefNetwork(new Network("more", null, default) { Key = "K9" }, "MO", brief.Networks[0].Application)],
                Outlets = [.. brief.Outlets.Select(o => o with { Links = [.. o.Links, 1] })],
            });
            Row("another application", plant, brief with { Networks = [.. brief.Networks.Select(n => n with { Application = Application.Find("1000BASE-SX")! })] });
        }
    }

    private static void Row(string growth, TracedPlant plant, Brief next)
    {
        Planner.Served(next);
        long start = Stopwatch.GetTimestamp();
        Planner.Served(next);
        double anew = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        start = Stopwatch.GetTimestamp();
        GrowthResult result = GrowthPlanner.Plan(plant, next);
        double grown = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        if (!result.IsMet)
            throw new InvalidOperationException(result.Reason);
        Console.WriteLine(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"| {plant.Plant.Links.Count} | {growth} | {result.Steps.Count} | {result.Difference!.Added.Count} | {anew:0} | {grown:0} | {grown / anew:0.0} |"));
    }
}
