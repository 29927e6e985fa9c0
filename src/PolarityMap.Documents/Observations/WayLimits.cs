using PolarityMap.Core.Budget;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Strands;

namespace PolarityMap.Documents.Observations;

/// <summary>What measured losses are held against: what the way as described may lose.</summary>
internal sealed class WayLimits(TracedPlant traced)
{
    private readonly TrialGraph _graph = new(traced.Graph);
    private readonly BudgetTable _budgets = BudgetTable.Of(traced);

    /// <summary>
    /// The most that light may lose from one position to another. Where it does not come there as described, the limit is that
    /// of its way to the end, and a remark says so. Null where no way begins.
    /// </summary>
    public Decibel? Of(int from, int seen, Action<string> remark)
    {
        bool comes = _graph.Follow(from, traced.Graph.PartOf(seen)) == seen;
        if (!comes)
            _ = _graph.Follow(from, -1);
        int[] way = Passed();
        if (_budgets.Way(way) is not { } limit)
            return null;
        if (!comes)
            remark($"as described, light from {traced.Address(from)} does not come to {traced.Address(seen)}; the loss is held against the way to {traced.Address(way[^1])}, {limit.Limit}");
        if (limit.FibreLossIsUnknown)
            remark($"the limit of {limit.Limit} leaves out the fibre: the plant does not say of which class it is");
        else if (limit.LengthsMissing > 0)
            remark($"the limit of {limit.Limit} leaves out the fibre of {limit.LengthsMissing} {(limit.LengthsMissing == 1 ? "cable that states" : "cables that state")} no length");
        return limit.Limit;
    }

    /// <summary>The last walk without interfaces and without a part that it enters and does not leave.</summary>
    private int[] Passed()
    {
        List<int> walk = _graph.Walk;
        int first = walk.Count > 0 && traced.Graph.HasLane(walk[0]) ? 1 : 0;
        int count = walk.Count - first;
        return [.. walk.Skip(first).Take(count - (count % 2))];
    }
}
