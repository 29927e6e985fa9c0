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
        "methods/parallel-A", "methods/parallel-B", "methods/parallel-C",
        "arrays/two-rows-of-twelve", "arrays/breakout-4x", "arrays/sixteen", "arrays/spliced-cable",
    ];

    private static readonly Rows s_singles = new(), s_doubles = new();

    /// <summary>What the rows of the table come to together.</summary>
    private sealed class Rows
    {
        public int Injected { get; set; }

        public List<Course> Told { get; } = [];

        public List<Course> Order { get; } = [];

        public List<Course> Half { get; } = [];
    }

    /// <param name="perKind">The most deviations of one kind that are injected in a plant, spread over it; 0 for every one.</param>
    /// <param name="doubles">Pairs that are injected in a plant.</param>
    /// <param name="only">The one plant of the list to take, or null for all; <c>every-kind</c> and <c>large</c> for those of every kind.</param>
    public static void Print(int perKind, int doubles, string? only = null)
    {
        Console.WriteLine("| plant | injected | silent | first | in first three | absent | alike | tests: advised | of them since that size | bound, bits | of the injected, bits | document order | half-splitting | ms, median | ms, most |");
        Console.WriteLine("| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        foreach (string name in s_plants.Where(p => only is null || p == only))
        {
            TracedPlant plant = PlantFile.Trace(Path.Combine("gallery", name + ".yaml"));
            var context = new DeviationContext(plant);
            Deviation[] all = [.. context.All()];
            Row(name + ", single", context, [.. Sample(all, perKind).Select(d => (Deviation[])[d])]);
            Row(name + ", double", context, Pairs(all, doubles));
        }

        if (only is null or "every-kind")
            EveryKind(units: 2, perKind, doubles);
        if (only is null or "large")
            EveryKind(units: 162, perKind: 3, doubles: 10);
        if (only is not null)
            return;
        Line("all, single", s_singles.Injected, s_singles.Told, s_singles.Order, s_singles.Half);
        Line("all, double", s_doubles.Injected, s_doubles.Told, s_doubles.Order, s_doubles.Half);
    }

    /// <summary>Plants in which every kind can occur; of the large one a few of each kind are injected, since there are too many to inject all.</summary>
    private static void EveryKind(int units, int perKind, int doubles)
    {
        const int partsOfAKind = 40;
        string file = Path.GetTempFileName();
        File.WriteAllText(file, EveryKindDocument.Of(units));
        var context = new DeviationContext(PlantFile.Trace(file));
        File.Delete(file);
        IEnumerable<int> parts = Enumerable.Range(0, context.Plant.Parts.Count).GroupBy(i => context.Plant.Parts[i].Kind).SelectMany(g => Spread([.. g], partsOfAKind));
        Deviation[] all = [.. parts.SelectMany(context.At).DistinctBy(d => d.Id)];
        int kinds = all.Select(d => d.Kind.Name).Distinct().Count();
        string name = $"{units * EveryKindDocument.LinksOfAUnit} links, {kinds} kinds";
        Row(name + ", single", context, [.. Sample(all, perKind).Select(d => (Deviation[])[d])]);
        Row(name + ", double", context, Pairs(all, doubles));
    }

    private static IEnumerable<Deviation> Sample(Deviation[] all, int perKind) => perKind == 0 ? all : all.GroupBy(d => d.Kind.Name).SelectMany(g => Spread([.. g], perKind));

    /// <summary>Some of many, spread over all.</summary>
    private static IEnumerable<T> Spread<T>(T[] all, int most)
    {
        int count = Math.Min(most, all.Length);
        return Enumerable.Range(0, count).Select(i => all[(int)((long)i * all.Length / count)]);
    }

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
        Line(name, injected.Count, told, order, half);
        Rows rows = injected[0].Length == 1 ? s_singles : s_doubles;
        rows.Injected += injected.Count;
        rows.Told.AddRange(told);
        rows.Order.AddRange(order);
        rows.Half.AddRange(half);
        foreach (IGrouping<string, int> kind in heard.Where(i => Array.IndexOf(heard, i) is var h && (told[h].IsLost || told[h].Place != 1)).GroupBy(i => string.Join(" + ", injected[i].Select(d => d.Kind.Name))))
            Console.Error.WriteLine($"  {name}: not first: {kind.Key} {kind.Count()}, such as {string.Join(" + ", injected[kind.First()].Select(d => d.Text))}; left: {advised[kind.First()].Instead}");
        foreach ((string way, Course[] courses) in ((string, Course[])[])[("document order", order), ("half-splitting", half)])
        {
            foreach (IGrouping<string, int> kind in Enumerable.Range(0, heard.Length).Where(h => courses[h].Tests < 0).GroupBy(h => string.Join(" + ", injected[heard[h]].Select(d => d.Kind.Name))))
                Console.Error.WriteLine($"  {name}: {way} not: {kind.Key} {kind.Count()}, such as {string.Join(" + ", injected[heard[kind.First()]].Select(d => d.Text))}; left: {courses[kind.First()].Left} explanations, {courses[kind.First()].Instead}");
        }

    }

    private static void Line(string name, int injected, IReadOnlyList<Course> told, IReadOnlyList<Course> order, IReadOnlyList<Course> half) => Console.WriteLine(
        $"| {name} | {injected} | {injected - told.Count} | {Percent(told, c => c.Place == 1)} | {Percent(told, c => c.Place is >= 1 and <= 3)} | {told.Count(c => c.IsLost || c.Place == 0)} | {told.Count(c => c.IsAlike)} "
        + $"| {Tests(told)} | {Median(told.Where(c => c.Tests >= 0).Select(c => (double)(c.Tests - c.Before))):F0} | {Median(told.Select(c => c.Bits)):F1} | {Median(told.Select(c => c.Surprise)):F1} | {Tests(order)} | {Tests(half)} | {Median(told.Select(c => c.Milliseconds)):F1} | {told.Max(c => c.Milliseconds):F0} |");

    private static string Percent(IReadOnlyList<Course> courses, Func<Course, bool> holds) => $"{100.0 * courses.Count(holds) / courses.Count:F1} %";

    /// <summary>The median; what was not isolated counts as more than any.</summary>
    private static string Tests(IReadOnlyList<Course> courses)
    {
        double median = Median(courses.Select(c => c.Tests < 0 ? double.PositiveInfinity : c.Tests));
        int never = courses.Count(c => c.Tests < 0);
        return (double.IsInfinity(median) ? $"over {Investigation.MostTests}" : $"{median:F0}") + (never > 0 ? $" ({never} not in {Investigation.MostTests})" : "");
    }

    private static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return sorted.Length == 0 ? 0 : sorted[sorted.Length / 2];
    }
}
