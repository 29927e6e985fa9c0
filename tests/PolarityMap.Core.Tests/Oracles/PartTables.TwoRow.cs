namespace PolarityMap.Core.Tests.Oracles;

/// <summary>A two-row trunk map between cassettes: the second transition and the right cord it needs, with a straight cassette and an A-to-B cord at the left.</summary>
public sealed record TwoRowWorksRow(string Trunk, string RightTransition, string RightCord);

/// <summary>Ferrules with two rows of twelve: what matings join, and the five trunk maps met in the trade.</summary>
public static partial class PartTables
{
    // Source: trade facts 5, 2x12, aligned: row kept, row reversed. Numbering 1 source; proved from coordinates.
    public static readonly IReadOnlyList<(int From, int To)> TwoRowAligned =
    [
        (1, 12), (2, 11), (3, 10), (4, 9), (5, 8), (6, 7),
        (7, 6), (8, 5), (9, 4), (10, 3), (11, 2), (12, 1),
        (13, 24), (14, 23), (15, 22), (16, 21), (17, 20), (18, 19),
        (19, 18), (20, 17), (21, 16), (22, 15), (23, 14), (24, 13),
    ];

    // Source: trade facts 5, 2x12, opposed: rows exchanged, column kept. Numbering 1 source; proved from coordinates.
    public static readonly IReadOnlyList<(int From, int To)> TwoRowOpposed =
    [
        (1, 13), (2, 14), (3, 15), (4, 16), (5, 17), (6, 18),
        (7, 19), (8, 20), (9, 21), (10, 22), (11, 23), (12, 24),
        (13, 1), (14, 2), (15, 3), (16, 4), (17, 5), (18, 6),
        (19, 7), (20, 8), (21, 9), (22, 10), (23, 11), (24, 12),
    ];

    // Source: trade facts 2.2. Called Type-A: 1 source. Not settled, so named by what it does.
    public static readonly IReadOnlyList<(int Near, int Far)> StraightByNumber =
    [
        (1, 1), (2, 2), (3, 3), (4, 4), (5, 5), (6, 6),
        (7, 7), (8, 8), (9, 9), (10, 10), (11, 11), (12, 12),
        (13, 13), (14, 14), (15, 15), (16, 16), (17, 17), (18, 18),
        (19, 19), (20, 20), (21, 21), (22, 22), (23, 23), (24, 24),
    ];

    // Source: trade facts 2.2. What an uncrossed cable with keys opposite gives: proved.
    public static readonly IReadOnlyList<(int Near, int Far)> RowsExchanged =
    [
        (1, 13), (2, 14), (3, 15), (4, 16), (5, 17), (6, 18),
        (7, 19), (8, 20), (9, 21), (10, 22), (11, 23), (12, 24),
        (13, 1), (14, 2), (15, 3), (16, 4), (17, 5), (18, 6),
        (19, 7), (20, 8), (21, 9), (22, 10), (23, 11), (24, 12),
    ];

    // Source: trade facts 2.2. What an uncrossed cable with keys alike gives: proved. Called Type-B: from memory.
    public static readonly IReadOnlyList<(int Near, int Far)> ReversedInRow =
    [
        (1, 12), (2, 11), (3, 10), (4, 9), (5, 8), (6, 7),
        (7, 6), (8, 5), (9, 4), (10, 3), (11, 2), (12, 1),
        (13, 24), (14, 23), (15, 22), (16, 21), (17, 20), (18, 19),
        (19, 18), (20, 17), (21, 16), (22, 15), (23, 14), (24, 13),
    ];

    // Source: trade facts 2.2. Also called Type-B: from memory.
    public static readonly IReadOnlyList<(int Near, int Far)> FullyReversed =
    [
        (1, 24), (2, 23), (3, 22), (4, 21), (5, 20), (6, 19),
        (7, 18), (8, 17), (9, 16), (10, 15), (11, 14), (12, 13),
        (13, 12), (14, 11), (15, 10), (16, 9), (17, 8), (18, 7),
        (19, 6), (20, 5), (21, 4), (22, 3), (23, 2), (24, 1),
    ];

    // Source: trade facts 2.2. Called Type-C: from memory.
    public static readonly IReadOnlyList<(int Near, int Far)> PairFlipped =
    [
        (1, 2), (2, 1), (3, 4), (4, 3), (5, 6), (6, 5),
        (7, 8), (8, 7), (9, 10), (10, 9), (11, 12), (12, 11),
        (13, 14), (14, 13), (15, 16), (16, 15), (17, 18), (18, 17),
        (19, 20), (20, 19), (21, 22), (22, 21), (23, 24), (24, 23),
    ];

    // Source: trade facts 5, two-row trunk with cassettes, both adapters alike. Proved.
    public static readonly IReadOnlyList<TwoRowWorksRow> TwoRowTrunks =
    [
        new("straight-by-number", "straight", "A-to-A"),
        new("rows-exchanged", "straight, rows exchanged", "A-to-A"),
        new("reversed-in-row", "straight, ports reversed in each row", "A-to-B"),
        new("fully-reversed", "straight, all ports reversed", "A-to-B"),
        new("pair-flipped", "straight", "A-to-B"),
    ];

    // Source: trade facts 5, a cord straight between two ten-lane ports. Proved.
    public static readonly IReadOnlyList<(string Cord, bool EveryTransmitMeetsReceive)> TenLaneDirectCords =
    [
        ("rows-exchanged", true),
        ("fully-reversed", true),
        ("straight-by-number", false),
        ("reversed-in-row", false),
        ("pair-flipped", false),
    ];

    // Source: trade facts 5. The positions of the straight cassette of two rows, ports 1..12, and of its three companions.
    // Wiring derived from the printed words; proved.
    public static readonly IReadOnlyList<PortWiring> TwoRowStraight =
    [
        new(1, 1, 2), new(2, 3, 4), new(3, 5, 6), new(4, 7, 8), new(5, 9, 10), new(6, 11, 12),
        new(7, 13, 14), new(8, 15, 16), new(9, 17, 18), new(10, 19, 20), new(11, 21, 22), new(12, 23, 24),
    ];

    // Source: as TwoRowStraight.
    public static readonly IReadOnlyList<PortWiring> TwoRowStraightRowsExchanged =
    [
        new(1, 13, 14), new(2, 15, 16), new(3, 17, 18), new(4, 19, 20), new(5, 21, 22), new(6, 23, 24),
        new(7, 1, 2), new(8, 3, 4), new(9, 5, 6), new(10, 7, 8), new(11, 9, 10), new(12, 11, 12),
    ];

    // Source: as TwoRowStraight.
    public static readonly IReadOnlyList<PortWiring> TwoRowStraightReversedInEachRow =
    [
        new(1, 11, 12), new(2, 9, 10), new(3, 7, 8), new(4, 5, 6), new(5, 3, 4), new(6, 1, 2),
        new(7, 23, 24), new(8, 21, 22), new(9, 19, 20), new(10, 17, 18), new(11, 15, 16), new(12, 13, 14),
    ];

    // Source: as TwoRowStraight.
    public static readonly IReadOnlyList<PortWiring> TwoRowStraightAllReversed =
    [
        new(1, 23, 24), new(2, 21, 22), new(3, 19, 20), new(4, 17, 18), new(5, 15, 16), new(6, 13, 14),
        new(7, 11, 12), new(8, 9, 10), new(9, 7, 8), new(10, 5, 6), new(11, 3, 4), new(12, 1, 2),
    ];

    /// <summary>The typed map of a two-row cable by its key.</summary>
    public static IReadOnlyList<(int Near, int Far)> TwoRowCable(string key) => key switch
    {
        "straight-by-number" => StraightByNumber,
        "rows-exchanged" => RowsExchanged,
        "reversed-in-row" => ReversedInRow,
        "fully-reversed" => FullyReversed,
        "pair-flipped" => PairFlipped,
        _ => throw new ArgumentOutOfRangeException(nameof(key), key, "no such two-row cable"),
    };

    /// <summary>The typed wiring of a two-row transition by the words of the table that names it.</summary>
    public static IReadOnlyList<PortWiring> TwoRowTransition(string key) => key switch
    {
        "straight" => TwoRowStraight,
        "straight, rows exchanged" => TwoRowStraightRowsExchanged,
        "straight, ports reversed in each row" => TwoRowStraightReversedInEachRow,
        "straight, all ports reversed" => TwoRowStraightAllReversed,
        _ => throw new ArgumentOutOfRangeException(nameof(key), key, "no such two-row transition"),
    };
}
