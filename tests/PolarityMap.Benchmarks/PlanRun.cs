using System.Diagnostics;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Planning;
using PolarityMap.Core.Plants;
using PolarityMap.Documents.Planning;

namespace PolarityMap.Benchmarks;

/// <summary>How long a large brief takes to plan, to check and to count, step by step; and a brief of that size for the published program.</summary>
internal static class PlanRun
{
    private const int Rounds = 5;

    /// <summary>Prints the median of each step, in milliseconds, for duplex links that are gathered and that have trunks of their own.</summary>
    public static void Print(int links)
    {
        Console.WriteLine("| links | separation | generate | build | trace and check | count | write | allocated MB |");
        Console.WriteLine("| ---: | --- | ---: | ---: | ---: | ---: | ---: | ---: |");
        foreach (SeparationPolicy separation in Enum.GetValues<SeparationPolicy>())
        {
            Brief brief = Make(links, separation);
            var rounds = new List<double[]>();
            long allocated = 0;
            for (int round = 0; round <= Rounds; round++)
            {
                long before = GC.GetTotalAllocatedBytes();
                double[] steps = Steps(brief);
                allocated = GC.GetTotalAllocatedBytes() - before;
                if (round > 0)
                    rounds.Add(steps);
            }

            IEnumerable<string> medians = Enumerable.Range(0, rounds[0].Length).Select(i => rounds.Select(r => r[i]).Order().ElementAt(Rounds / 2).ToString("0.0", System.Globalization.CultureInfo.InvariantCulture));
            Console.WriteLine($"| {brief.LinkCount} | {separation.Word()} | {string.Join(" | ", medians)} | {allocated / 1_000_000} |");
        }
    }

    private static double[] Steps(Brief brief)
    {
        var candidate = new PlanCandidate(PlanMethod.Find("U1")!, 12);
        long start = Stopwatch.GetTimestamp();
        PlannedPlant planned = PlanGenerator.Generate(brief, candidate).Planned!;
        long generated = Stopwatch.GetTimestamp();
        Plant plant = PlantAssembly.Of(planned, out _)!;
        long built = Stopwatch.GetTimestamp();
        Core.Checks.CheckReport report = Core.Checks.CheckReport.Of(Core.Strands.TracedPlant.Of(plant));
        var proof = new PlanProof(candidate, planned, report, []);
        if (report.Findings.Count > 0 || report.Proven != brief.LinkCount)
            throw new InvalidOperationException(report.Verdict());
        long proven = Stopwatch.GetTimestamp();
        PlanMeasures.Of(proof);
        IReadOnlyList<string> parts = PlanParts.Lines(PlanParts.Of(proof));
        long counted = Stopwatch.GetTimestamp();
        PlanDocument.Write(planned, parts);
        long written = Stopwatch.GetTimestamp();
        return [Between(start, generated), Between(generated, built), Between(built, proven), Between(proven, counted), Between(counted, written)];
    }

    private static double Between(long from, long to) => Stopwatch.GetElapsedTime(from, to).TotalMilliseconds;

    /// <summary>A brief of so many links in two rooms, half of them at outlets with a cable of their own.</summary>
    public static Brief Make(int links, SeparationPolicy separation)
    {
        var place = new SourcePlace("brief", 0, 0);
        int each = links / 8;
        return new Brief
        {
            Title = new PlantTitle($"{links} links"),
            Fibre = FibreClass.Find("OM4")!,
            Networks = [.. new[] { "house", "stage" }.Select((n, i) => new BriefNetwork(new Network(n, null, place) { Key = $"K{i}" }, n[..1].ToUpperInvariant(), Application.Find("10GBASE-SR")!))],
            Rooms =
            [
                new BriefRoom("Main", "M", place),
                new BriefRoom("First floor", "F1", place) { Distance = Length.FromMillimetres(40_000) },
                new BriefRoom("Second floor", "F2", place) { Distance = Length.FromMillimetres(60_000) },
            ],
            Outlets =
            [
                new BriefOutlets(new PlannedName("A", 1, each, ""), 1, [2, 2], place),
                new BriefOutlets(new PlannedName("B", 1, each, ""), 2, [2, 2], place) { Distance = Length.FromMillimetres(12_000) },
            ],
            Separation = separation,
            Spare = new Percentage(20),
            ArrayLoss = new Decibel(0.35m),
            DuplexLoss = new Decibel(0.15m),
        };
    }
}
