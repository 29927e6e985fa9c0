namespace PolarityMap.Core.Tests.Oracles;

/// <summary>One fibre of a conversion: which position of which trunk stands behind a position of a port. All count from 1.</summary>
public sealed record ConversionRow(int Port, int PortPosition, int Trunk, int TrunkPosition);

/// <summary>One fibre of a harness from one sixteen-position plug to two twelve-position plugs, in the plugs' own numbers.</summary>
public sealed record SplitRow(int SixteenPosition, int Leg, int TwelvePosition);

/// <summary>
/// One leg of a breakout harness. The port's positions are those of its own face; the plug's are its own numbers, seen at
/// its end face. <paramref name="DuplexA"/> and <paramref name="DuplexB"/> are the array fibres in plug A (which enters
/// the far receiver) and plug B (which enters the far transmitter) of the leg.
/// </summary>
public sealed record BreakoutRow(int Leg, int PortTx, int PortRx, int PlugToFarRx, int PlugFromFarTx, int DuplexA, int DuplexB);

/// <summary>Conversions from array to array and breakouts, typed fibre by fibre. Nothing here is computed.</summary>
public static class ConversionTables
{
    // Source: trade facts 6.3, 2x12 to 3x8. Derived: the same module at both ends, Type-B trunks, and every port then acts
    // as one Type-B link (proved). No wiring table was found in a source; a document may replace it.
    public static readonly IReadOnlyList<ConversionRow> TwoTwelvesToThreeEights =
    [
        new(1, 1, 1, 1), new(1, 2, 1, 2), new(1, 3, 1, 3), new(1, 4, 1, 4),
        new(1, 9, 1, 9), new(1, 10, 1, 10), new(1, 11, 1, 11), new(1, 12, 1, 12),
        new(2, 1, 2, 1), new(2, 2, 2, 2), new(2, 3, 2, 3), new(2, 4, 2, 4),
        new(2, 9, 2, 9), new(2, 10, 2, 10), new(2, 11, 2, 11), new(2, 12, 2, 12),
        new(3, 1, 1, 5), new(3, 2, 1, 6), new(3, 3, 2, 5), new(3, 4, 2, 6),
        new(3, 9, 2, 7), new(3, 10, 2, 8), new(3, 11, 1, 7), new(3, 12, 1, 8),
    ];

    // Source: trade facts 6.3, 16 to 2x8. Derived and proved, as TwoTwelvesToThreeEights.
    public static readonly IReadOnlyList<ConversionRow> SixteenToTwoEights =
    [
        new(1, 1, 1, 1), new(1, 2, 1, 2), new(1, 3, 1, 3), new(1, 4, 1, 4),
        new(1, 9, 1, 13), new(1, 10, 1, 14), new(1, 11, 1, 15), new(1, 12, 1, 16),
        new(2, 1, 1, 5), new(2, 2, 1, 6), new(2, 3, 1, 7), new(2, 4, 1, 8),
        new(2, 9, 1, 9), new(2, 10, 1, 10), new(2, 11, 1, 11), new(2, 12, 1, 12),
    ];

    // Source: trade facts 6.3, 24 to 2x12: row 1 to the first twelve, row 2 to the second. Common practice, unsourced.
    public static readonly IReadOnlyList<ConversionRow> TwentyFourToTwoTwelves =
    [
        new(1, 1, 1, 1), new(1, 2, 1, 2), new(1, 3, 1, 3), new(1, 4, 1, 4), new(1, 5, 1, 5), new(1, 6, 1, 6),
        new(1, 7, 1, 7), new(1, 8, 1, 8), new(1, 9, 1, 9), new(1, 10, 1, 10), new(1, 11, 1, 11), new(1, 12, 1, 12),
        new(2, 1, 1, 13), new(2, 2, 1, 14), new(2, 3, 1, 15), new(2, 4, 1, 16), new(2, 5, 1, 17), new(2, 6, 1, 18),
        new(2, 7, 1, 19), new(2, 8, 1, 20), new(2, 9, 1, 21), new(2, 10, 1, 22), new(2, 11, 1, 23), new(2, 12, 1, 24),
    ];

    // Source: trade facts 6.3, 24 to 3x8 for reversed-in-row trunks: the 2x12 table with trunk 1 = row 1, trunk 2 = row 2. Derived.
    public static readonly IReadOnlyList<ConversionRow> TwentyFourToThreeEightsReversedInRow =
    [
        new(1, 1, 1, 1), new(1, 2, 1, 2), new(1, 3, 1, 3), new(1, 4, 1, 4),
        new(1, 9, 1, 9), new(1, 10, 1, 10), new(1, 11, 1, 11), new(1, 12, 1, 12),
        new(2, 1, 1, 13), new(2, 2, 1, 14), new(2, 3, 1, 15), new(2, 4, 1, 16),
        new(2, 9, 1, 21), new(2, 10, 1, 22), new(2, 11, 1, 23), new(2, 12, 1, 24),
        new(3, 1, 1, 5), new(3, 2, 1, 6), new(3, 3, 1, 17), new(3, 4, 1, 18),
        new(3, 9, 1, 19), new(3, 10, 1, 20), new(3, 11, 1, 7), new(3, 12, 1, 8),
    ];

    // Source: trade facts 6.3, 24 to 3x8 for fully-reversed trunks: port n, lane k: position k from 4(n - 1) + k, position
    // 13 - k from 25 - (4(n - 1) + k). Derived.
    public static readonly IReadOnlyList<ConversionRow> TwentyFourToThreeEightsFullyReversed =
    [
        new(1, 1, 1, 1), new(1, 2, 1, 2), new(1, 3, 1, 3), new(1, 4, 1, 4),
        new(1, 9, 1, 21), new(1, 10, 1, 22), new(1, 11, 1, 23), new(1, 12, 1, 24),
        new(2, 1, 1, 5), new(2, 2, 1, 6), new(2, 3, 1, 7), new(2, 4, 1, 8),
        new(2, 9, 1, 17), new(2, 10, 1, 18), new(2, 11, 1, 19), new(2, 12, 1, 20),
        new(3, 1, 1, 9), new(3, 2, 1, 10), new(3, 3, 1, 11), new(3, 4, 1, 12),
        new(3, 9, 1, 13), new(3, 10, 1, 14), new(3, 11, 1, 15), new(3, 12, 1, 16),
    ];

    // Source: interface facts 3, 16-position plug to two 12-position plugs. Positions derived, checked end to end; that
    // lanes 1-4 go to the first leg and 5-8 to the second is common practice (its standing in the standards from memory).
    public static readonly IReadOnlyList<SplitRow> SixteenPlugToTwoTwelvePlugs =
    [
        new(1, 1, 12), new(2, 1, 11), new(3, 1, 10), new(4, 1, 9),
        new(5, 2, 12), new(6, 2, 11), new(7, 2, 10), new(8, 2, 9),
        new(9, 2, 4), new(10, 2, 3), new(11, 2, 2), new(12, 2, 1),
        new(13, 1, 4), new(14, 1, 3), new(15, 1, 2), new(16, 1, 1),
    ];

    // Source: interface facts 3, four lanes on twelve positions. Positions derived; lane pairing 1 source; that leg k is
    // lane k is common practice. Duplex fibres: A carries 13 - k, B carries k, derived.
    public static readonly IReadOnlyList<BreakoutRow> FourLanesOnTwelve =
    [
        new(1, 1, 12, 12, 1, 12, 1),
        new(2, 2, 11, 11, 2, 11, 2),
        new(3, 3, 10, 10, 3, 10, 3),
        new(4, 4, 9, 9, 4, 9, 4),
    ];

    // Source: interface facts 3, eight lanes on sixteen positions: leg k is port Tx k and Rx 17 - k; fibre 17 - k goes to
    // duplex plug A, fibre k comes from duplex plug B. Derived; that leg k is lane k is common practice.
    public static readonly IReadOnlyList<BreakoutRow> EightLanesOnSixteen =
    [
        new(1, 1, 16, 16, 1, 16, 1),
        new(2, 2, 15, 15, 2, 15, 2),
        new(3, 3, 14, 14, 3, 14, 3),
        new(4, 4, 13, 13, 4, 13, 4),
        new(5, 5, 12, 12, 5, 12, 5),
        new(6, 6, 11, 11, 6, 11, 6),
        new(7, 7, 10, 10, 7, 10, 7),
        new(8, 8, 9, 9, 8, 9, 8),
    ];
}
