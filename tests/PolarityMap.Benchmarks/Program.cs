using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Running;
using PolarityMap.Benchmarks;

// Nothing: the table up to a million strands. --full: ten million as well. --bdn [filter]: BenchmarkDotNet.
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
    default:
        Console.Error.WriteLine("usage: [--full | --bdn [filter]]");
        return 2;
}
