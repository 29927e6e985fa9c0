namespace PolarityMap.Core.Tests.Oracles;

/// <summary>Ferrules with two rows of sixteen: what matings join, all 32 positions typed.</summary>
public static partial class PartTables
{
    // Source: trade facts 5, 2x16, aligned: row kept, row reversed (1 and 16, 17 and 32). Proved from coordinates, on the
    // numbering of section 1 (top row first; for 2x16 the numbering itself is from memory).
    public static readonly IReadOnlyList<(int From, int To)> ThirtyTwoAligned =
    [
        (1, 16), (2, 15), (3, 14), (4, 13), (5, 12), (6, 11), (7, 10), (8, 9),
        (9, 8), (10, 7), (11, 6), (12, 5), (13, 4), (14, 3), (15, 2), (16, 1),
        (17, 32), (18, 31), (19, 30), (20, 29), (21, 28), (22, 27), (23, 26), (24, 25),
        (25, 24), (26, 23), (27, 22), (28, 21), (29, 20), (30, 19), (31, 18), (32, 17),
    ];

    // Source: trade facts 5, 2x16, opposed: rows exchanged, column kept (1 and 17, 16 and 32). Proved, as ThirtyTwoAligned.
    public static readonly IReadOnlyList<(int From, int To)> ThirtyTwoOpposed =
    [
        (1, 17), (2, 18), (3, 19), (4, 20), (5, 21), (6, 22), (7, 23), (8, 24),
        (9, 25), (10, 26), (11, 27), (12, 28), (13, 29), (14, 30), (15, 31), (16, 32),
        (17, 1), (18, 2), (19, 3), (20, 4), (21, 5), (22, 6), (23, 7), (24, 8),
        (25, 9), (26, 10), (27, 11), (28, 12), (29, 13), (30, 14), (31, 15), (32, 16),
    ];
}
