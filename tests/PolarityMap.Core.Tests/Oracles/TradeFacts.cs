namespace PolarityMap.Core.Tests.Oracles;

/// <summary>
/// Simple counts of the trade. Throughout this folder a source comment names a section of the trade facts and how well
/// the fact is attested: a number of independent public sources, "proved" (follows from geometry or algebra under the
/// conventions of section 1), "derived", "common practice" or "from memory".
/// </summary>
public static class TradeFacts
{
    // Source: arithmetic; a trunk of eight legs with eight fibres each. Common practice.
    public const int LegsOfTrunk = 8;

    // Source: as LegsOfTrunk.
    public const int FibresOfLeg = 8;

    // Source: as LegsOfTrunk.
    public const int FibresOfEightLegsOfEight = 64;

    // Source: trade facts 2.5 and 6.1, base 12 has six duplex ports and base 8 has four. Positions 4 sources.
    public static readonly IReadOnlyList<(int Fibres, int Pairs)> PairsOfCable =
    [
        (8, 4),
        (12, 6),
    ];

    // Source: trade facts 6.3, a twelve-fibre trunk used for one four-lane port. 3 sources.
    public const int UnusedOfTwelveBehindFourLanes = 4;
}
