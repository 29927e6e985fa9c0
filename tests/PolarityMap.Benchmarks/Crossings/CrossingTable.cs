using System.ComponentModel;
using PolarityMap.Benchmarks.Drawing;
using PolarityMap.Core.Strands;

namespace PolarityMap.Benchmarks.Crossings;

/// <summary>Crossings between parts of every plant in a folder, as this program draws them and as others would. Prints Markdown.</summary>
internal static class CrossingTable
{
    private const string Head =
        """
        Crossings between parts. What crosses inside a part is wiring and counts nowhere.

        drawn           places where two strands cross in the drawing outside every box, found on flattened routes; each place counts.
        own order       inversions of rows between neighbouring columns as drawn: what is left when no two strands cross more often
                        than their rows make them.
        document order  inversions of rows between neighbouring columns: the columns as drawn, the parts of each as the document
                        names them, positions of every connector in number order. No drawing of that order has fewer crossings.
        dot             pairs of edges of different strands that cross outside every node where Graphviz's dot draws the same graph:
                        a record for each part with its positions in number order, an edge for each strand in each mating, rankdir=LR.
                        A pair counts once, however often it crosses. The mating that closes a loop is an edge as well.
        turned          the same two, but handed the order of positions in each part that the drawing has, which turns cables over
                        so that matings run straight: it is the order of parts alone that these differ by.

        """;

    /// <returns>Exit status: 1 when dot is missing or a folder holds no plants.</returns>
    public static int Print(string folder)
    {
        string[] paths = Directory.Exists(folder) ? [.. Directory.EnumerateFiles(folder, "*.yaml", SearchOption.AllDirectories).Where(f => !f.EndsWith(".seen.yaml", StringComparison.Ordinal)).Order(StringComparer.Ordinal)] : [];
        if (paths.Length == 0)
        {
            Console.Error.WriteLine($"no plants in '{folder}'; name the folder to read, from the repository's root: gallery");
            return 1;
        }

        var rows = new List<Row>();
        try
        {
            foreach (string path in paths)
            {
                if (Row.Of(Path.GetRelativePath(folder, path).Replace('\\', '/'), PlantFile.Trace(path)) is { } row)
                    rows.Add(row);
            }
        }
        catch (Win32Exception)
        {
            Console.Error.WriteLine("this needs Graphviz's dot (Debian package graphviz)");
            return 1;
        }

        Console.WriteLine(Head);
        Console.WriteLine("| document | strands | drawn | own order | document order | dot | document order, turned | dot, turned |");
        Console.WriteLine("| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        foreach (Row row in rows)
            Console.WriteLine(row);
        Row total = rows.Aggregate((a, b) => a.Plus(b)) with { Document = $"all {rows.Count}" };
        Console.WriteLine(total);
        Console.WriteLine();
        Console.WriteLine($"Documents without a strand to draw: {paths.Length - rows.Count}.");
        Tell("own order", rows, r => r.Own, total);
        Tell("document order", rows, r => r.Named, total);
        Tell("dot", rows, r => r.Dot, total);
        Tell("document order, turned", rows, r => r.NamedTurned, total);
        Tell("dot, turned", rows, r => r.DotTurned, total);
        return 0;
    }

    private static void Tell(string name, List<Row> rows, Func<Row, int> other, Row total)
    {
        string[] worse = [.. rows.Where(r => r.Drawn > other(r)).Select(r => $"{r.Document} ({r.Drawn} against {other(r)})")];
        Console.WriteLine($"Against {name}: {total.Drawn} of {other(total)} in all; fewer in {rows.Count(r => r.Drawn < other(r))} documents, as many in {rows.Count(r => r.Drawn == other(r))}, "
            + (worse.Length == 0 ? "more in none." : $"more in {worse.Length}: {string.Join(", ", worse)}."));
    }

    private sealed record Row(string Document, int Strands, int Drawn, int Own, int Named, int Dot, int NamedTurned, int DotTurned)
    {
        public static Row? Of(string document, TracedPlant traced)
        {
            if (DrawnColumns.Of(traced) is not { } drawn)
                return null;
            return new Row(
                document,
                drawn.Strands.Count,
                drawn.CrossingsBetweenParts(),
                drawn.Inversions(),
                DocumentOrder.Inversions(traced, drawn, Comparer<int>.Default.Compare),
                DotDrawing.Crossings(new DotGraph(traced, drawn.Strands)),
                DocumentOrder.Inversions(traced, drawn, drawn.AsDrawn),
                DotDrawing.Crossings(new DotGraph(traced, drawn.Strands, drawn.AsDrawn)));
        }

        public Row Plus(Row other) =>
            new("", Strands + other.Strands, Drawn + other.Drawn, Own + other.Own, Named + other.Named, Dot + other.Dot, NamedTurned + other.NamedTurned, DotTurned + other.DotTurned);

        public override string ToString() => $"| {Document} | {Strands} | {Drawn} | {Own} | {Named} | {Dot} | {NamedTurned} | {DotTurned} |";
    }
}
