using System.Runtime.InteropServices;

namespace PolarityMap.Benchmarks;

/// <summary>
/// Compares everything within one run, because numbers of different runs on a shared machine do not compare. Prints Markdown.
/// </summary>
internal static class RatioTable
{
    public static void Print(bool full)
    {
        SelfCheck.Run();
        new SizeRun(1_000, rounds: 20).Measure(); // Lets the compiler reach its last tier.
        var runs = new List<SizeRun> { new(1_000, 7), new(10_000, 7), new(100_000, 7), new(1_000_000, 5) };
        if (full)
            runs.Add(new SizeRun(10_000_000, 5));
        foreach (SizeRun run in runs)
        {
            run.Measure();
            Console.Error.WriteLine($"measured {run.Strands} strands");
        }

        Console.WriteLine($"{RuntimeInformation.FrameworkDescription}, {RuntimeInformation.ProcessArchitecture}, {Environment.ProcessorCount} cores");
        Console.WriteLine("Median of the rounds (smallest-largest).");
        Console.WriteLine();
        Head("ns per strand", runs);
        Rows(runs, r => r.Times);
        Console.WriteLine();
        Head("ratio, round by round", runs);
        Rows(runs, r => r.Ratios);
        Console.WriteLine();
        Head("bytes per position", runs);
        Row("graph, held", runs, r => $"{r.Footprint.Graph:F2}");
        Row("strands, held", runs, r => $"{r.Footprint.Strands:F2}");
        Row("held together (aim: at most 16)", runs, r => $"{r.Footprint.Graph + r.Footprint.Strands:F2}");
        Row("allocated by the build", runs, r => $"{r.Footprint.BuildAllocates:F2}");
        Row("allocated by the trace", runs, r => $"{r.Footprint.TraceAllocates:F2}");
    }

    private static void Head(string title, List<SizeRun> runs)
    {
        Row(title, runs, r => $"{r.Strands} strands");
        Row("---", runs, _ => "---:");
    }

    private static void Rows(List<SizeRun> runs, Func<SizeRun, IReadOnlyList<Sample>> samples)
    {
        for (int i = 0; i < samples(runs[0]).Count; i++)
        {
            int row = i;
            Row(samples(runs[0])[row].Name, runs, r => samples(r)[row].ToString());
        }
    }

    private static void Row(string name, List<SizeRun> runs, Func<SizeRun, string> cell) =>
        Console.WriteLine($"| {name} | {string.Join(" | ", runs.Select(cell))} |");
}
