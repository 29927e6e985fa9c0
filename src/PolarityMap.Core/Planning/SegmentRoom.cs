namespace PolarityMap.Core.Planning;

/// <summary>A segment of a plan: of a network to a room, to a zone box or to an outlet, or the cable of an outlet that networks share.</summary>
/// <param name="Network">Index of the network; -1 for a cable that networks share.</param>
/// <param name="Room">Index of the room.</param>
/// <param name="IsGathered">True for what comes before and after a zone box.</param>
/// <param name="Outlet">The outlet that it ends at, or the first of several that are alike; null where it ends in the room.</param>
internal readonly record struct SegmentKey(int Network, int Room, bool IsGathered, string? Outlet);

/// <summary>How many arrays a segment takes, and which of its links need none since their place is there already.</summary>
/// <param name="AreThere">For each link of a landing, in order, whether its place is there.</param>
/// <param name="Arrays">Arrays for the others and for what is spare.</param>
internal sealed record SegmentRoom(IReadOnlyList<bool> AreThere, int Arrays)
{
    /// <summary>Arrays of so many ports for links none of which has a place, and for what is spare.</summary>
    public static SegmentRoom New(int links, Percentage spare, int ports) => new(new bool[links], Ceiling(spare.Over(links), ports));

    /// <summary>With those for links whose place is there. They come last, so that nothing of them has to be bought.</summary>
    public int AllArrays(int ports) => Arrays + Ceiling(AreThere.Count(t => t), ports);

    /// <summary>For each link its place, counted from 0 through the arrays.</summary>
    public int[] Places(int ports)
    {
        int bought = 0, there = Arrays * ports;
        return [.. AreThere.Select(t => t ? there++ : bought++)];
    }

    internal static int Ceiling(int count, int each) => (count + each - 1) / each;
}
