namespace PolarityMap.Core.Tests.Oracles;

/// <summary>A two-row trunk that works with one universal transition at both ends and A-to-B cords at both ends.</summary>
public sealed record TwoRowUniversalRow(string Trunk, string Transition, string BothCords);

/// <summary>Channels of two rows of twelve that the first two-row tables leave out: universal cassettes, and where a direct cord leads.</summary>
public static partial class PartTables
{
    // Source: trade facts 5, two-row trunk with cassettes, the second way named in two of its rows. Proved, with both
    // adapters alike and of either kind.
    public static readonly IReadOnlyList<TwoRowUniversalRow> TwoRowUniversals =
    [
        new("reversed-in-row", "universal in each row", "A-to-B"),
        new("fully-reversed", "universal over both rows", "A-to-B"),
    ];

    // Source: trade facts 5, universal {i, 13 - i} per row. The pairs are proved; the order of the ports and which fibre
    // is A are a convention, free as long as both ends agree (3.2, no. 5).
    public static readonly IReadOnlyList<PortWiring> TwoRowUniversalInEachRow =
    [
        new(1, 1, 12), new(2, 2, 11), new(3, 3, 10), new(4, 4, 9), new(5, 5, 8), new(6, 6, 7),
        new(7, 13, 24), new(8, 14, 23), new(9, 15, 22), new(10, 16, 21), new(11, 17, 20), new(12, 18, 19),
    ];

    // Source: trade facts 5, universal {i, 25 - i}. As TwoRowUniversalInEachRow.
    public static readonly IReadOnlyList<PortWiring> TwoRowUniversalOverBothRows =
    [
        new(1, 1, 24), new(2, 2, 23), new(3, 3, 22), new(4, 4, 21), new(5, 5, 20), new(6, 6, 19),
        new(7, 7, 18), new(8, 8, 17), new(9, 9, 16), new(10, 10, 15), new(11, 11, 14), new(12, 12, 13),
    ];

    // Source: interface facts 2.2, cable oracle of the single 2x12 port: a full reversal leads port 14..23 to far port 11..2.
    // Derived. Which of the two rows transmits is from memory and not said here.
    public static readonly IReadOnlyList<(int Port, int FarPort)> TenLaneThroughFullyReversed =
    [
        (14, 11), (15, 10), (16, 9), (17, 8), (18, 7), (19, 6), (20, 5), (21, 4), (22, 3), (23, 2),
    ];

    // Source: interface facts 2.2, the same oracle: a straight row swap leads port 14..23 to far port 2..11. Derived.
    public static readonly IReadOnlyList<(int Port, int FarPort)> TenLaneThroughRowsExchanged =
    [
        (14, 2), (15, 3), (16, 4), (17, 5), (18, 6), (19, 7), (20, 8), (21, 9), (22, 10), (23, 11),
    ];

    /// <summary>The typed wiring of a two-row universal transition by the words of the table that names it.</summary>
    public static IReadOnlyList<PortWiring> TwoRowUniversal(string key) => key switch
    {
        "universal in each row" => TwoRowUniversalInEachRow,
        "universal over both rows" => TwoRowUniversalOverBothRows,
        _ => throw new ArgumentOutOfRangeException(nameof(key), key, "no such two-row universal transition"),
    };
}
