using PolarityMap.Core.Checks;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Views;

namespace PolarityMap.Benchmarks.Drawing;

/// <summary>What is drawn when drawing is timed: plants of three sizes, each as a document and as the same graph for dot.</summary>
internal static class DrawingFiles
{
    private static readonly int[] Sizes = [144, 864, 3456];

    /// <summary>Writes <c>plant-N.yaml</c> and <c>plant-N.dot</c> for each size, and prints what the graphs hold.</summary>
    public static void Write(string folder)
    {
        Directory.CreateDirectory(folder);
        foreach (int strands in Sizes)
        {
            string path = Path.Combine(folder, $"plant-{strands}");
            File.WriteAllText(path + ".yaml", CampusDocument.Of(strands));
            TracedPlant traced = PlantFile.Trace(path + ".yaml");
            IReadOnlyList<Finding> findings = Checker.Check(traced);
            SelfCheck.Demand(findings.Count == 0, "nothing is found in the plant that is drawn");

            // What `draw` draws when nothing else is chosen.
            IReadOnlyList<int> drawn = Selection.Of(traced, findings, new Choice()).Strands;
            SelfCheck.Demand(drawn.Count == strands, "the drawing shows as many strands as the size says");
            var graph = new DotGraph(traced, drawn);
            SelfCheck.Demand(graph.Edges == strands * CampusDocument.MatingsOfAStrand, "every strand passes six matings");
            File.WriteAllText(path + ".dot", graph.ToString());
            Console.WriteLine($"{strands} strands: {graph.Nodes} parts, {graph.Edges} edges");
        }
    }
}
