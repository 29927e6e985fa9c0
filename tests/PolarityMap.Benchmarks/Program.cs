using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Running;
using PolarityMap.Benchmarks;
using PolarityMap.Benchmarks.Crossings;
using PolarityMap.Benchmarks.Drawing;
using PolarityMap.Benchmarks.Locating;

// Nothing: the table up to a million strands. --full: ten million as well. --bdn [filter]: BenchmarkDotNet.
// --drawing FOLDER: plants and the same as graphs for dot. --crossings [FOLDER]: crossings of the plants in a folder.
// --plan: how long a brief of ten thousand links takes. --growth: how long plants take to grow.
// --locate [--every | PLANT]: how well and how fast injected deviations are found.
switch (args)
{
    case []:
        RatioTable.Print(full: false);
        return 0;
    case ["--full"]:
        RatioTable.Print(full: true);
        return 0;
    case ["--bdn", .. string[] rest]:
        BenchmarkSwitcher.FromTypes([typeof(TraceBenchmarks)])
            .Run(rest is [] ? ["--filter", "*"] : rest is [var one] ? ["--filter", one] : rest, DefaultConfig.Instance.AddColumn(new StrandColumn()));
        return 0;
    case ["--drawing", var folder]:
        DrawingFiles.Write(folder);
        return 0;
    case ["--locate"]:
        LocateTable.Print(perKind: 20, doubles: 40);
        return 0;
    case ["--locate", "--every"]:
        LocateTable.Print(perKind: 0, doubles: 400);
        return 0;
    case ["--locate", var plant]:
        LocateTable.Print(perKind: 20, doubles: 40, plant);
        return 0;
    case ["--plan"]:
        PlanRun.Print(links: 10_000);
        return 0;
    case ["--growth"]:
        GrowthRun.Print();
        return 0;
    case ["--crossings"]:
        return CrossingTable.Print("gallery");
    case ["--crossings", var folder]:
        return CrossingTable.Print(folder);
    default:
        Console.Error.WriteLine("usage: [--full | --bdn [filter] | --drawing FOLDER | --crossings [FOLDER] | --locate [--every | PLANT] | --plan | --growth]");
        return 2;
}
