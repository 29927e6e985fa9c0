using PolarityMap.Core.Strands;

namespace PolarityMap.Benchmarks;

/// <summary>The least that a trace could cost: reading both arrays once from front to back.</summary>
internal static class PlainRead
{
    public static long Sum(StrandGraph graph)
    {
        long sum = 0;
        foreach (int partner in graph.Inside)
            sum += partner;
        foreach (int partner in graph.Outside)
            sum += partner;
        return sum;
    }
}
