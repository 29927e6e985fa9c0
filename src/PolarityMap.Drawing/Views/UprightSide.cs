using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Drawing.Views;

/// <summary>
/// Which of two mated connectors is drawn with its key up, the other as it lies to it: an interface before other ports, a port of
/// a fixed part before the plug of a cable, since it is the plug that a hand turns, and pins before holes.
/// </summary>
internal static class UprightSide
{
    /// <summary>Negative when the first of two is drawn upright, positive when the second is, 0 where they are alike in this.</summary>
    public static int Compare(Part part, PortShape port, Part otherPart, PortShape otherPort)
    {
        int order = Rank(part).CompareTo(Rank(otherPart));
        return order != 0 ? order : (otherPort.Pinned == true).CompareTo(port.Pinned == true);
    }

    private static int Rank(Part part) => part.Shape.IsInterface ? 0 : part.Shape.IsCable ? 2 : 1;
}
