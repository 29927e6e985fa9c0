namespace PolarityMap.Core.Tests.Oracles;

/// <summary>Ferrules with one row of sixteen: what matings join, the three cable maps, and the transitions to eight duplex ports.</summary>
public static partial class PartTables
{
    // Source: trade facts 5, 1x16, aligned: i and 17 - i. Proved from coordinates, on the numbering of section 1
    // (left to right; for sixteen the numbering itself is from memory).
    public static readonly IReadOnlyList<(int From, int To)> SixteenAligned =
    [
        (1, 16), (2, 15), (3, 14), (4, 13), (5, 12), (6, 11), (7, 10), (8, 9),
        (9, 8), (10, 7), (11, 6), (12, 5), (13, 4), (14, 3), (15, 2), (16, 1),
    ];

    // Source: trade facts 5, 1x16, opposed: i and i. Proved, as SixteenAligned.
    public static readonly IReadOnlyList<(int From, int To)> SixteenOpposed =
    [
        (1, 1), (2, 2), (3, 3), (4, 4), (5, 5), (6, 6), (7, 7), (8, 8),
        (9, 9), (10, 10), (11, 11), (12, 12), (13, 13), (14, 14), (15, 15), (16, 16),
    ];

    // Source: trade facts 2.1, the form for N fibres, straight. Proved consistent. That the standard calls it Type-A for
    // sixteen too is from memory; the map is the oracle, the letter is only its name here.
    public static readonly IReadOnlyList<(int Near, int Far)> SixteenFibreTypeA =
    [
        (1, 1), (2, 2), (3, 3), (4, 4), (5, 5), (6, 6), (7, 7), (8, 8),
        (9, 9), (10, 10), (11, 11), (12, 12), (13, 13), (14, 14), (15, 15), (16, 16),
    ];

    // Source: trade facts 2.1, the form for N fibres, reversed. Proved consistent; the letter as for SixteenFibreTypeA.
    public static readonly IReadOnlyList<(int Near, int Far)> SixteenFibreTypeB =
    [
        (1, 16), (2, 15), (3, 14), (4, 13), (5, 12), (6, 11), (7, 10), (8, 9),
        (9, 8), (10, 7), (11, 6), (12, 5), (13, 4), (14, 3), (15, 2), (16, 1),
    ];

    // Source: trade facts 2.1, the form for N fibres, pair-flipped. Proved consistent; the letter as for SixteenFibreTypeA.
    public static readonly IReadOnlyList<(int Near, int Far)> SixteenFibreTypeC =
    [
        (1, 2), (2, 1), (3, 4), (4, 3), (5, 6), (6, 5), (7, 8), (8, 7),
        (9, 10), (10, 9), (11, 12), (12, 11), (13, 14), (14, 13), (15, 16), (16, 15),
    ];

    // Source: trade facts 6.2, straight: port k = (2k - 1, 2k). Proved with all five methods; which fibre of a pair is A
    // is a convention (2.5).
    public static readonly IReadOnlyList<PortWiring> Straight16 =
    [
        new(1, 1, 2),
        new(2, 3, 4),
        new(3, 5, 6),
        new(4, 7, 8),
        new(5, 9, 10),
        new(6, 11, 12),
        new(7, 13, 14),
        new(8, 15, 16),
    ];

    // Source: trade facts 6.2, straight-reversed: port k = (17 - 2k, 18 - 2k). Proved.
    public static readonly IReadOnlyList<PortWiring> StraightReversed16 =
    [
        new(1, 15, 16),
        new(2, 13, 14),
        new(3, 11, 12),
        new(4, 9, 10),
        new(5, 7, 8),
        new(6, 5, 6),
        new(7, 3, 4),
        new(8, 1, 2),
    ];

    // Source: trade facts 6.2, U1: port k = (k, 17 - k). Pairs proved; which fibre is A is derived, unconfirmed (3.4).
    public static readonly IReadOnlyList<PortWiring> U1Of16 =
    [
        new(1, 1, 16),
        new(2, 2, 15),
        new(3, 3, 14),
        new(4, 4, 13),
        new(5, 5, 12),
        new(6, 6, 11),
        new(7, 7, 10),
        new(8, 8, 9),
    ];

    // Source: trade facts 6.2, U2: port k = (17 - k, k). Pairs proved; which fibre is A is derived, unconfirmed (3.4).
    public static readonly IReadOnlyList<PortWiring> U2Of16 =
    [
        new(1, 16, 1),
        new(2, 15, 2),
        new(3, 14, 3),
        new(4, 13, 4),
        new(5, 12, 5),
        new(6, 11, 6),
        new(7, 10, 7),
        new(8, 9, 8),
    ];

    /// <summary>The typed map of a sixteen-fibre array cable by its type.</summary>
    public static IReadOnlyList<(int Near, int Far)> SixteenFibreCable(string type) => type switch
    {
        "Type-A" => SixteenFibreTypeA,
        "Type-B" => SixteenFibreTypeB,
        "Type-C" => SixteenFibreTypeC,
        _ => throw new ArgumentOutOfRangeException(nameof(type), type, "no typed sixteen-fibre cable"),
    };

    /// <summary>The typed wiring of a transition from sixteen fibres to eight duplex ports.</summary>
    public static IReadOnlyList<PortWiring> SixteenFibreTransition(string key) => key switch
    {
        "straight" => Straight16,
        "straight-reversed" => StraightReversed16,
        "U1" => U1Of16,
        "U2" => U2Of16,
        _ => throw new ArgumentOutOfRangeException(nameof(key), key, "no typed sixteen-fibre transition"),
    };
}
