using PolarityMap.Core.Strands;

namespace PolarityMap.Benchmarks;

/// <summary>Bytes of managed memory for each position of the plant.</summary>
/// <param name="Graph">Held by the graph: both arrays, part starts and references to shapes.</param>
/// <param name="Strands">Held by the result of the trace: positions and starts.</param>
/// <param name="BuildAllocates">Allocated while the graph is built, what is held included.</param>
/// <param name="TraceAllocates">Allocated while the strands are traced, what is held included.</param>
internal readonly record struct Footprint(double Graph, double Strands, double BuildAllocates, double TraceAllocates)
{
    public static Footprint Of(SyntheticPlant synthetic)
    {
        long held0 = GC.GetTotalMemory(forceFullCollection: true);
        long allocated0 = GC.GetTotalAllocatedBytes(precise: true);
        StrandGraph graph = synthetic.Feed();
        long allocated1 = GC.GetTotalAllocatedBytes(precise: true);
        long held1 = GC.GetTotalMemory(forceFullCollection: true);
        long allocated2 = GC.GetTotalAllocatedBytes(precise: true);
        StrandSet strands = Tracer.Trace(graph);
        long allocated3 = GC.GetTotalAllocatedBytes(precise: true);
        long held2 = GC.GetTotalMemory(forceFullCollection: true);
        GC.KeepAlive(graph);
        GC.KeepAlive(strands);
        double positions = synthetic.Positions;
        return new Footprint(
            (held1 - held0) / positions,
            (held2 - held1) / positions,
            (allocated1 - allocated0) / positions,
            (allocated3 - allocated2) / positions);
    }
}
