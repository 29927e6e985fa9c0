using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// The parts that drawings frame as those to change: of each finding those of its first remedy, where another part or another
/// wiring is needed, or a cord is plugged elsewhere. A trunk of which two plugs change places stays what it is, and so does
/// what is only cleaned.
/// </summary>
internal static class ChangedParts
{
    public static HashSet<int> Of(ViewInput input)
    {
        var changed = new HashSet<int>();
        foreach (Finding finding in input.Findings)
        {
            if (finding.Remedies is [var first, ..])
                changed.UnionWith(first.Parts.Where(p => p >= 0 && (first.IsInside || IsCord(input.Traced.Plant.Parts[p]))));
        }

        return changed;
    }

    private static bool IsCord(Part part) => part.Shape.IsCable && !part.Shape.Ports.Any(p => p.Leg > 0);
}
