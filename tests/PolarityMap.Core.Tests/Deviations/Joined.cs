using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Tests.Oracles;
using QuikGraph;
using QuikGraph.Algorithms;

namespace PolarityMap.Core.Tests.Deviations;

/// <summary>
/// The positions of a plant and what joins them, read from its parts and, for matings, from the coordinates of the reference model;
/// its strands are found by a general graph library.
/// </summary>
internal static class Joined
{
    /// <summary>For each position the end of its strand that is farther away or, at an end, the other end; -1 on a loop.</summary>
    /// <returns>Both ends of the strand of every position, the smaller first; equal where it is alone.</returns>
    public static (int, int)[] Ends(Plant plant)
    {
        (int count, List<(int A, int B)> joins) = Of(plant);
        var graph = new UndirectedGraph<int, SEquatableEdge<int>>(allowParallelEdges: true);
        graph.AddVertexRange(Enumerable.Range(0, count));
        foreach ((int a, int b) in joins)
            graph.AddEdge(new SEquatableEdge<int>(a, b));
        var component = new Dictionary<int, int>();
        graph.ConnectedComponents(component);
        var ends = new Dictionary<int, (int, int)>();
        foreach (IGrouping<int, int> strand in component.GroupBy(c => c.Value, c => c.Key))
        {
            int[] open = [.. strand.Where(p => graph.AdjacentDegree(p) < 2).Order()];
            ends[strand.Key] = open.Length == 0 ? (-1, -1) : (open[0], open[^1]);
        }

        return [.. Enumerable.Range(0, count).Select(p => ends[component[p]])];
    }

    private static (int Count, List<(int A, int B)> Joins) Of(Plant plant)
    {
        var first = new int[plant.Parts.Count];
        var joins = new List<(int, int)>();
        int count = 0;
        for (int part = 0; part < first.Length; part++)
        {
            Shape shape = plant.Parts[part].Shape;
            first[part] = count;
            for (int i = 0; i < shape.Inside.Count; i++)
            {
                if (shape.Inside[i] > i)
                    joins.Add((count + i, count + shape.Inside[i]));
            }

            count += shape.PositionCount;
        }

        foreach (Mating mating in plant.Matings)
        {
            PortShape a = plant.Port(mating.A), b = plant.Port(mating.B);
            int startA = first[mating.A.Part] + a.FirstPosition - 1, startB = first[mating.B.Part] + b.FirstPosition - 1;
            if (mating.PositionOfA > 0 || mating.PositionOfB > 0)
                joins.Add((startA + Math.Max(1, mating.PositionOfA), startB + Math.Max(1, mating.PositionOfB)));
            else if (a.Face == b.Face)
                joins.AddRange(Meetings(a.Face, mating.Keys).Select(m => (startA + m.Here, startB + m.There)));
        }

        return (count, joins);
    }

    /// <summary>Bare fibres are joined by their numbers; faces as they meet in space.</summary>
    private static IEnumerable<(int Here, int There)> Meetings(Face face, Keying keys) => face.Family == ConnectorFamily.Bare
        ? Enumerable.Range(1, face.Count).Select(n => (n, n))
        : SlowModel.Mating(face.Rows, face.Columns, keys == Keying.Opposed).Select(m => (m.Key, m.Value));
}
