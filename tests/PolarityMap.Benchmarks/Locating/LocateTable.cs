using PolarityMap.Benchmarks.Drawing;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Strands;

namespace PolarityMap.Benchmarks.Locating;

/// <summary>
/// Injects single deviations and a seeded sample of double ones into plants, lets the search find them, and prints how well and
/// how fast. Prints Markdown.
/// </summary>
internal static class LocateTable
{
    private static readonly string[] s_plants =
    [
        "opera-house/plant", "methods/duplex-A", "methods/duplex-B", "methods/duplex-C", "methods/duplex-U1", "methods/duplex-U2",
        "arrays/two-rows-of-twelve", "arrays/breakout-4x", "arrays/sixteen", "arrays/spliced-cable",
    ];

    /// <param name="perKind">The most deviations of one kind that are injected in a plant, spread over it; 0 for every one.</param>
    /// <param name="doubles">Pairs that are injected in a plant.</param>
    /// <param name="only">The one plant of the list to take, or null for all; <c>large</c> for the large one.</param>
    public static void Print(int perKind, int doubles, string? only = null)
    {
        Console.WriteLine("| plant | injected | silent | first | in first three | absent | tests: advised | document order | half-splitting | bound | ms, median | ms, most |");
        Console.WriteLine("| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        foreach (string name in s_plants.Where(p => only is null || p == only))
        {
            TracedPlant plant = PlantFile.Trace(Path.Combine("gallery", name + ".yaml"));
            var context = new DeviationContext(plant);
            Deviation[] all = [.. context.All()];
            Row(name + ", single", context, [.. Sample(all, perKind).Select(d => (Deviation[])[d])]);
            Row(name + ", double", context, Pairs(all, doubles));
        }

        if (only is null or "large")
            Large();
    }

    /// <summary>A plant of 5,016 links, in which a few of each kind are injected: there are too many to inject all.</summary>
    private static void Large()
    {
        const int strands = 10_032;
        const int perKind = 3;
        const int doubles = 10;
        string file = Path.GetTempFileName();
        File.WriteAllText(file, CampusDocument.Of(strands));
        var context = new DeviationContext(PlantFile.Trace(file));
        File.Delete(file);
        int parts = context.Plant.Parts.Count;
        const int places = 400;
        Deviation[] all = [.. Enumerable.Range(0, places).SelectMany(i => context.At((int)((long)i * parts / places))).DistinctBy(d => d.Id)];
        Row("5,016 links, single", context, [.. Sample(all, perKind).Select(d => (Deviation[])[d])]);
        Row("5,016 links, double", context, Pairs(all, doubles));
    }

    private static IEnumerable<Deviation> Sample(Deviation[] all, int perKind) => perKind == 0 ? all : all.GroupBy(d => d.Kind.Name).SelectMany(g =>
    {
        Deviation[] ofKind = [.. g];
        int count = Math.Min(perKind, ofKind.Length);
        return Enumerable.Range(0, count).Select(i => ofKind[(int)((long)i * ofKind.Length / count)]);
    });

    private static Deviation[][] Pairs(Deviation[] all, int count)
    {
        var random = new Random(568);
        var pairs = new List<Deviation[]>();
        for (int drawn = 0; all.Length > 1 && pairs.Count < count && drawn < 10 * count; drawn++)
        {
            Deviation a = all[random.Next(all.Length)], b = all[random.Next(all.Length)];
            if (a.GoesWith(b))
                pairs.Add([a, b]);
        }

        return [.. pairs];
    }

    private static void Row(string name, DeviationContext context, IReadOnlyList<Deviation[]> injected)
    {
        Course[] advised = [.. injected.Select(t => Investigation.Run(context, t, Way.Advised))];
        int[] heard = [.. Enumerable.Range(0, injected.Count).Where(i => !advised[i].IsSilent)];
        Course[] told = [.. heard.Select(i => advised[i])];
        if (told.Length == 0)
            return;
        Course[] order = [.. heard.Select(i => Investigation.Run(context, injected[i], Way.DocumentOrder))];
        Course[] half = [.. heard.Select(i => Investigation.Run(context, injected[i], Way.HalfSplitting))];
        Console.WriteLine($"| {name} | {injected.Count} | {injected.Count - told.Length} | {Percent(told, c => c.Place == 1)} | {Percent(told, c => c.Place is >= 1 and <= 3)} | {told.Count(c => c.IsLost || c.Place == 0)} "
            + $"| {Tests(told)} | {Tests(order)} | {Tests(half)} | {Median(told.Select(c => c.Bits)):F1} | {Median(told.Select(c => c.Milliseconds)):F1} | {told.Max(c => c.Milliseconds):F0} |");
        foreach (IGrouping<string, int> kind in heard.Where(i => Array.IndexOf(heard, i) is var h && (told[h].IsLost || told[h].Place != 1)).GroupBy(i => string.Join(" + ", injected[i].Select(d => d.Kind.Name))))
            Console.Error.WriteLine($"  {name}: not first: {kind.Key} {kind.Count()}, such as {string.Join(" + ", injected[kind.First()].Select(d => d.Text))}");
    }

    private static string Percent(Course[] courses, Func<Course, bool> holds) => $"{100.0 * courses.Count(holds) / courses.Length:F1} %";

    /// <summary>The median; what was not isolated counts as more than any.</summary>
    private static string Tests(Course[] courses)
    {
        double median = Median(courses.Select(c => c.Tests < 0 ? double.PositiveInfinity : c.Tests));
        int never = courses.Count(c => c.Tests < 0);
        return (double.IsInfinity(median) ? "never" : $"{median:F0}") + (never > 0 ? $" ({never} never)" : "");
    }

    private static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return sorted.Length == 0 ? 0 : sorted[sorted.Length / 2];
    }
}
