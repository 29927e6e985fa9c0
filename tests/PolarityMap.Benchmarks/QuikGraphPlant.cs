using PolarityMap.Core.Strands;
using QuikGraph;
using QuikGraph.Algorithms.ConnectedComponents;
using QuikGraph.Algorithms.Search;

namespace PolarityMap.Benchmarks;

/// <summary>
/// The same plant in QuikGraph 2.5.0: a vertex for each position, an edge for each partner. The edges are read from a finished
/// strand graph, so its build has less to do than the product's.
/// </summary>
/// <remarks>
/// Its undirected algorithms set up a dictionary as large as all edges for every root, so many components cost quadratic
/// time (<see cref="CountComponents"/> shows it at the smallest size). The fastest of its own algorithms is the depth-first
/// search of the directed graph with each edge both ways; its array and compressed-row graphs were not faster to search.
/// </remarks>
internal static class QuikGraphPlant
{
    public static AdjacencyGraph<int, SEquatableEdge<int>> Build(StrandGraph graph)
    {
        var result = new AdjacencyGraph<int, SEquatableEdge<int>>(allowParallelEdges: true, graph.PositionCount, edgeCapacity: 2);
        for (int p = 0; p < graph.PositionCount; p++)
            result.AddVertex(p);
        for (int p = 0; p < graph.PositionCount; p++)
        {
            if (graph.Inside[p] >= 0)
                result.AddEdge(new SEquatableEdge<int>(p, graph.Inside[p]));
            if (graph.Outside[p] >= 0)
                result.AddEdge(new SEquatableEdge<int>(p, graph.Outside[p]));
        }

        return result;
    }

    /// <summary>Number of trees that its own depth-first search finds.</summary>
    public static int Search(AdjacencyGraph<int, SEquatableEdge<int>> graph)
    {
        int roots = 0;
        var search = new DepthFirstSearchAlgorithm<int, SEquatableEdge<int>>(graph);
        search.StartVertex += _ => roots++;
        search.Compute();
        return roots;
    }

    /// <summary>
    /// Number of open strands by a walk written out by hand over its out-edges, with the positions in order as the product
    /// gives them: what the structure costs when its algorithms are left aside.
    /// </summary>
    public static int WalkByHand(AdjacencyGraph<int, SEquatableEdge<int>> graph)
    {
        var seen = new bool[graph.VertexCount];
        var positions = new int[graph.VertexCount];
        int written = 0;
        int strands = 0;
        for (int start = 0; start < seen.Length; start++)
        {
            if (seen[start] || graph.OutDegree(start) == 2)
                continue;
            strands++;
            for (int p = start; p >= 0; p = Next(graph, seen, p))
            {
                seen[p] = true;
                positions[written++] = p;
            }
        }

        return strands;
    }

    /// <summary>Number of components by its undirected algorithm; quadratic in the number of strands.</summary>
    public static int CountComponents(StrandGraph graph)
    {
        var undirected = new UndirectedGraph<int, SUndirectedEdge<int>>(allowParallelEdges: true);
        for (int p = 0; p < graph.PositionCount; p++)
            undirected.AddVertex(p);
        for (int p = 0; p < graph.PositionCount; p++)
        {
            if (graph.Inside[p] > p)
                undirected.AddEdge(new SUndirectedEdge<int>(p, graph.Inside[p]));
            if (graph.Outside[p] > p)
                undirected.AddEdge(new SUndirectedEdge<int>(p, graph.Outside[p]));
        }

        var components = new ConnectedComponentsAlgorithm<int, SUndirectedEdge<int>>(undirected);
        components.Compute();
        return components.ComponentCount;
    }

    private static int Next(AdjacencyGraph<int, SEquatableEdge<int>> graph, bool[] seen, int position)
    {
        int degree = graph.OutDegree(position);
        for (int i = 0; i < degree; i++)
        {
            int target = graph.OutEdge(position, i).Target;
            if (!seen[target])
                return target;
        }

        return -1;
    }
}
