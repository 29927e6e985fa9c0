using PolarityMap.Core.Checks.Remarks;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks;

/// <summary>Something worth knowing that is no fault. It changes neither verdict nor exit status.</summary>
/// <param name="Text">One sentence without a full stop.</param>
/// <param name="Place">The place in the document that it is about.</param>
public sealed record Remark(string Text, SourcePlace Place)
{
    /// <summary>All remarks on a plant, kind by kind, each kind in the order of the document. One file per kind, listed here.</summary>
    public static IReadOnlyList<Remark> Of(CheckContext context)
    {
        var remarks = new List<Remark>();
        UnusedFibres.Add(context, remarks);
        OrderOfLanes.Add(context, remarks);
        LossByStandard.Add(context, remarks);
        return remarks;
    }
}
