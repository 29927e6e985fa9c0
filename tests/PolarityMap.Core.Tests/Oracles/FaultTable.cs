namespace PolarityMap.Core.Tests.Oracles;

/// <summary>What the transmitter of one left port meets: a right port, and that port's "Rx" or "Tx".</summary>
public sealed record FaultMeeting(int LeftPort, int RightPort, string Meets);

/// <summary>
/// A duplex method with one thing changed. <paramref name="Changed"/> is one of trunk, left-adapter, right-adapter,
/// both-adapters, left-cord, right-cord, right-transition; <paramref name="To"/> is what stands there instead.
/// </summary>
public sealed record FaultRow(string Method, string Changed, string To, IReadOnlyList<FaultMeeting> LeftTransmitters);

/// <summary>The fault catalogue: one part wrong, and what the six left transmitters then meet.</summary>
public static class FaultTable
{
    private static readonly IReadOnlyList<FaultMeeting> TransmitMeetsTransmitAtRightPort =
    [
        new(1, 1, "Tx"), new(2, 2, "Tx"), new(3, 3, "Tx"), new(4, 4, "Tx"), new(5, 5, "Tx"), new(6, 6, "Tx"),
    ];

    private static readonly IReadOnlyList<FaultMeeting> TransmitMeetsTransmitReversed =
    [
        new(1, 6, "Tx"), new(2, 5, "Tx"), new(3, 4, "Tx"), new(4, 3, "Tx"), new(5, 2, "Tx"), new(6, 1, "Tx"),
    ];

    private static readonly IReadOnlyList<FaultMeeting> TransmitMeetsReceiveReversed =
    [
        new(1, 6, "Rx"), new(2, 5, "Rx"), new(3, 4, "Rx"), new(4, 3, "Rx"), new(5, 2, "Rx"), new(6, 1, "Rx"),
    ];

    private static readonly IReadOnlyList<FaultMeeting> TransmitMeetsReceiveAtRightPort =
    [
        new(1, 1, "Rx"), new(2, 2, "Rx"), new(3, 3, "Rx"), new(4, 4, "Rx"), new(5, 5, "Rx"), new(6, 6, "Rx"),
    ];

    private static readonly IReadOnlyList<FaultMeeting> Scattered =
    [
        new(1, 1, "Rx"), new(2, 1, "Tx"), new(3, 2, "Rx"), new(4, 2, "Tx"), new(5, 3, "Rx"), new(6, 3, "Tx"),
    ];

    // Source: trade facts 3.3, every row proved. A row that names two faults stands here as two rows, and one that
    // leaves the side open ("one adapter", "one cord") stands once for each side.
    public static readonly IReadOnlyList<FaultRow> Rows =
    [
        new("A", "right-cord", "A-to-B", TransmitMeetsTransmitAtRightPort),
        new("A", "trunk", "Type-B", TransmitMeetsTransmitReversed),
        new("B", "right-transition", "straight", TransmitMeetsReceiveReversed),
        new("B", "left-adapter", "Type-A", TransmitMeetsTransmitReversed),
        new("B", "right-adapter", "Type-A", TransmitMeetsTransmitReversed),
        new("B", "trunk", "Type-A", TransmitMeetsTransmitReversed),
        new("C", "trunk", "Type-A", TransmitMeetsTransmitAtRightPort),
        new("C", "left-cord", "A-to-A", TransmitMeetsTransmitAtRightPort),
        new("C", "right-cord", "A-to-A", TransmitMeetsTransmitAtRightPort),
        new("U1", "left-cord", "A-to-A", TransmitMeetsTransmitAtRightPort),
        new("U1", "right-cord", "A-to-A", TransmitMeetsTransmitAtRightPort),
        new("U2", "left-cord", "A-to-A", TransmitMeetsTransmitAtRightPort),
        new("U2", "right-cord", "A-to-A", TransmitMeetsTransmitAtRightPort),
        new("U1", "trunk", "Type-A", TransmitMeetsTransmitAtRightPort),
        new("U1", "left-adapter", "Type-B", TransmitMeetsTransmitAtRightPort),
        new("U1", "right-adapter", "Type-B", TransmitMeetsTransmitAtRightPort),
        new("U1", "right-transition", "straight", Scattered),
        new("A", "both-adapters", "Type-B", TransmitMeetsReceiveAtRightPort),
        new("B", "both-adapters", "Type-A", TransmitMeetsReceiveAtRightPort),
        new("C", "both-adapters", "Type-B", TransmitMeetsReceiveAtRightPort),
        new("U1", "both-adapters", "Type-B", TransmitMeetsReceiveAtRightPort),
        new("U2", "both-adapters", "Type-A", TransmitMeetsReceiveAtRightPort),
    ];
}
