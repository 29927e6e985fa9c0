namespace PolarityMap.Core.Tests.Oracles;

/// <summary>One lane of an array transceiver port: where it transmits and receives, counted on the receptacle and on the plug in it.</summary>
public sealed record LaneRow(int Lane, int ReceptacleTx, int ReceptacleRx, int PlugTx, int PlugRx);

/// <summary>A parallel channel of cord, trunk and cord that passes; both adapters are of the kind the list is for.</summary>
public sealed record ParallelTriple(string LeftCord, string Trunk, string RightCord);

/// <summary>A parallel method as printed: its trunk, its adapters and its two cords, which may stand in either order.</summary>
public sealed record ParallelMethodRow(string Method, string Trunk, string Adapters, string OneCord, string OtherCord);

/// <summary>Parallel optics: lanes, passing channels, and the breakout harness.</summary>
public static partial class PartTables
{
    // Source: trade facts 4.1, four lanes on one row of twelve. IEEE 802.3 clauses 86 and 95 from memory; 2 sources.
    // The plug's numbers are 13 minus the receptacle's, because the plug goes in key up to key up (proved).
    public static readonly IReadOnlyList<LaneRow> FourLanes =
    [
        new(1, 1, 12, 12, 1),
        new(2, 2, 11, 11, 2),
        new(3, 3, 10, 10, 3),
        new(4, 4, 9, 9, 4),
    ];

    // Source: interface facts 3, eight lanes on one row of sixteen: lane k is Tx k with Rx 17-k; pairing 1 source, positions
    // derived. Sixteen fibres, 8 and 8: 4 sources (trade facts 4.1).
    public static readonly IReadOnlyList<LaneRow> EightLanes =
    [
        new(1, 1, 16, 16, 1),
        new(2, 2, 15, 15, 2),
        new(3, 3, 14, 14, 3),
        new(4, 4, 13, 13, 4),
        new(5, 5, 12, 12, 5),
        new(6, 6, 11, 11, 6),
        new(7, 7, 10, 10, 7),
        new(8, 8, 9, 9, 8),
    ];

    // Source: trade facts 4.1, ten lanes on two rows of twelve: transmit in the middle ten of the bottom row.
    // Which row is from memory, so tests use the rows only where either choice gives the same verdict; two rows of twelve: 2
    // sources. The order of the lanes is not stated.
    public static readonly IReadOnlyList<int> TenLaneTransmit = [14, 15, 16, 17, 18, 19, 20, 21, 22, 23];

    // Source: as TenLaneTransmit; receive in the middle ten of the top row.
    public static readonly IReadOnlyList<int> TenLaneReceive = [2, 3, 4, 5, 6, 7, 8, 9, 10, 11];

    // Source: trade facts 4, the seven that pass with Type-A adapters on both sides of the trunk. Proved.
    public static readonly IReadOnlyList<ParallelTriple> PassingWithTypeAAdapters =
    [
        new("Type-A", "Type-A", "Type-B"),
        new("Type-B", "Type-A", "Type-A"),
        new("Type-A", "Type-B", "Type-A"),
        new("Type-B", "Type-B", "Type-B"),
        new("Type-C", "Type-B", "Type-C"),
        new("Type-B", "Type-C", "Type-C"),
        new("Type-C", "Type-C", "Type-B"),
    ];

    // Source: trade facts 4, the seven that pass with Type-B adapters on both sides of the trunk. Proved.
    public static readonly IReadOnlyList<ParallelTriple> PassingWithTypeBAdapters =
    [
        new("Type-A", "Type-A", "Type-B"),
        new("Type-B", "Type-A", "Type-A"),
        new("Type-A", "Type-B", "Type-A"),
        new("Type-B", "Type-B", "Type-B"),
        new("Type-C", "Type-B", "Type-C"),
        new("Type-B", "Type-C", "Type-C"),
        new("Type-C", "Type-C", "Type-B"),
    ];

    // Source: trade facts 4. A: TIA-568-C.0 and 568.3-D, 1 source, proved. B: 1 source, proved. C: from memory, proved.
    // U1 parts: derived and proved, not found named for parallel use. U2 parts: same as B, proved.
    public static readonly IReadOnlyList<ParallelMethodRow> ParallelMethods =
    [
        new("A", "Type-A", "Type-A", "Type-A", "Type-B"),
        new("B", "Type-B", "Type-B", "Type-B", "Type-B"),
        new("C", "Type-C", "Type-A", "Type-B", "Type-C"),
        new("U1", "Type-B", "Type-A", "Type-B", "Type-B"),
        new("U1", "Type-B", "Type-A", "Type-A", "Type-A"),
        new("U2", "Type-B", "Type-B", "Type-B", "Type-B"),
    ];

    // Source: trade facts 4, direct cord between two array ports. Type-B works: 4 sources, proved.
    // Type-A and Type-C let transmit meet transmit: proved.
    public static readonly IReadOnlyList<(string Cord, string LeftTransmittersMeet)> DirectCords =
    [
        ("Type-A", "Tx"),
        ("Type-B", "Rx"),
        ("Type-C", "Tx"),
    ];

    // Source: trade facts 4.2, harness in a four-lane port, plug numbering. Derived and proved;
    // "each leg pairs one transmit with one receive": 2 sources.
    public static readonly IReadOnlyList<(int Leg, int A, int B)> Harness =
    [
        (1, 12, 1),
        (2, 11, 2),
        (3, 10, 3),
        (4, 9, 4),
    ];

    /// <summary>The seven triples that pass with two adapters of the given kind.</summary>
    public static IReadOnlyList<ParallelTriple> PassingParallel(string adapters) => adapters switch
    {
        "Type-A" => PassingWithTypeAAdapters,
        "Type-B" => PassingWithTypeBAdapters,
        _ => throw new ArgumentOutOfRangeException(nameof(adapters), adapters, "no such adapter kind"),
    };
}
