namespace PolarityMap.Core.Tests.Oracles;

/// <summary>What one kind of array adapter joins on a ferrule with one row of twelve: position to position.</summary>
public sealed record AdapterRow(string Adapter, string Keys, IReadOnlyList<(int From, int To)> Joins);

/// <summary>A duplex cord: what its near plug's positions reach on the far plug.</summary>
public sealed record CordRow(string Cord, char NearAReaches, char NearBReaches);

/// <summary>The array positions behind one duplex port of a transition.</summary>
public sealed record PortWiring(int Port, int A, int B);

/// <summary>Array cables, adapters, cords and transitions, typed out position by position. Nothing here is computed.</summary>
public static partial class PartTables
{
    // Source: trade facts 2.1, Type-A. TIA-568, more than 8 sources.
    public static readonly IReadOnlyList<(int Near, int Far)> CableTypeA =
    [
        (1, 1), (2, 2), (3, 3), (4, 4), (5, 5), (6, 6),
        (7, 7), (8, 8), (9, 9), (10, 10), (11, 11), (12, 12),
    ];

    // Source: trade facts 2.1, Type-B. TIA-568, more than 8 sources.
    public static readonly IReadOnlyList<(int Near, int Far)> CableTypeB =
    [
        (1, 12), (2, 11), (3, 10), (4, 9), (5, 8), (6, 7),
        (7, 6), (8, 5), (9, 4), (10, 3), (11, 2), (12, 1),
    ];

    // Source: trade facts 2.1, Type-C. TIA-568, more than 8 sources.
    public static readonly IReadOnlyList<(int Near, int Far)> CableTypeC =
    [
        (1, 2), (2, 1), (3, 4), (4, 3), (5, 6), (6, 5),
        (7, 8), (8, 7), (9, 10), (10, 9), (11, 12), (12, 11),
    ];

    // Source: trade facts 2.1, eight fibres on a twelve-position ferrule. Use of 1-4 and 9-12: 4 sources.
    public static readonly IReadOnlyList<int> EightOfTwelve = [1, 2, 3, 4, 9, 10, 11, 12];

    // Source: trade facts 2.1 and 4.1. The positions that stay dark with eight fibres, proved.
    public static readonly IReadOnlyList<int> DarkOfTwelve = [5, 6, 7, 8];

    // Source: trade facts 2.1, eight fibres. Proved: all three types keep the set.
    public static readonly IReadOnlyList<(int Near, int Far)> EightFibreTypeA =
    [
        (1, 1), (2, 2), (3, 3), (4, 4), (9, 9), (10, 10), (11, 11), (12, 12),
    ];

    // Source: as EightFibreTypeA.
    public static readonly IReadOnlyList<(int Near, int Far)> EightFibreTypeB =
    [
        (1, 12), (2, 11), (3, 10), (4, 9), (9, 4), (10, 3), (11, 2), (12, 1),
    ];

    // Source: as EightFibreTypeA.
    public static readonly IReadOnlyList<(int Near, int Far)> EightFibreTypeC =
    [
        (1, 2), (2, 1), (3, 4), (4, 3), (9, 10), (10, 9), (11, 12), (12, 11),
    ];

    // Source: trade facts 2.3. TIA-568, 5 sources; proved.
    public static readonly AdapterRow AdapterTypeA = new(
        "Type-A",
        "opposed",
        [
            (1, 1), (2, 2), (3, 3), (4, 4), (5, 5), (6, 6),
            (7, 7), (8, 8), (9, 9), (10, 10), (11, 11), (12, 12),
        ]);

    // Source: trade facts 2.3. TIA-568, 5 sources; proved.
    public static readonly AdapterRow AdapterTypeB = new(
        "Type-B",
        "aligned",
        [
            (1, 12), (2, 11), (3, 10), (4, 9), (5, 8), (6, 7),
            (7, 6), (8, 5), (9, 4), (10, 3), (11, 2), (12, 1),
        ]);

    // Source: trade facts 2.4. TIA-568 and ISO/IEC 11801, 6 sources.
    public static readonly CordRow CordAToB = new("A-to-B", 'B', 'A');

    // Source: trade facts 2.4. TIA-568-C.0, 2 sources.
    public static readonly CordRow CordAToA = new("A-to-A", 'A', 'B');

    // Source: trade facts 1, rule 3: a duplex mating joins A to B. 1 source; proved.
    public static readonly CordRow DuplexMating = new("mating", 'B', 'A');

    // Source: trade facts 1, rule 4: seen at the port the transmitter is left, so A transmits and B receives.
    // Plug A enters the receiver and plug B the transmitter: 3 sources; transmitter left: 2 sources.
    public static readonly IReadOnlyList<(char Position, string Role, char PlugThatEnters)> DuplexTransceiver =
    [
        ('A', "Tx", 'B'),
        ('B', "Rx", 'A'),
    ];

    // Source: trade facts 2.5. Kinds 4 sources; which fibre of a pair is A is a convention.
    public static readonly IReadOnlyList<PortWiring> Straight12 =
    [
        new(1, 1, 2),
        new(2, 3, 4),
        new(3, 5, 6),
        new(4, 7, 8),
        new(5, 9, 10),
        new(6, 11, 12),
    ];

    // Source: trade facts 2.5. 4 sources; A and B proved.
    public static readonly IReadOnlyList<PortWiring> StraightReversed12 =
    [
        new(1, 11, 12),
        new(2, 9, 10),
        new(3, 7, 8),
        new(4, 5, 6),
        new(5, 3, 4),
        new(6, 1, 2),
    ];

    // Source: trade facts 2.5. Pairs TIA-568.3-E, 1 source, and proved unique; which fibre is A is derived, unconfirmed.
    public static readonly IReadOnlyList<PortWiring> U1Of12 =
    [
        new(1, 1, 12),
        new(2, 2, 11),
        new(3, 3, 10),
        new(4, 4, 9),
        new(5, 5, 8),
        new(6, 6, 7),
    ];

    // Source: trade facts 2.5. Pairs proved unique; which fibre is A is derived, unconfirmed.
    public static readonly IReadOnlyList<PortWiring> U2Of12 =
    [
        new(1, 12, 1),
        new(2, 11, 2),
        new(3, 10, 3),
        new(4, 9, 4),
        new(5, 8, 5),
        new(6, 7, 6),
    ];

    // Source: trade facts 2.5, the common mistake: the second cassette of method B with A and B exchanged in each port,
    // port 1 = (A 12, B 11). It keeps the port order and lands transmit on transmit. Proved.
    public static readonly IReadOnlyList<PortWiring> WronglyInverted12 =
    [
        new(1, 12, 11),
        new(2, 10, 9),
        new(3, 8, 7),
        new(4, 6, 5),
        new(5, 4, 3),
        new(6, 2, 1),
    ];

    // Source: trade facts 6.1. Positions 4 sources; wiring proved.
    public static readonly IReadOnlyList<PortWiring> Straight8 =
    [
        new(1, 1, 2),
        new(2, 3, 4),
        new(3, 9, 10),
        new(4, 11, 12),
    ];

    // Source: as Straight8.
    public static readonly IReadOnlyList<PortWiring> StraightReversed8 =
    [
        new(1, 11, 12),
        new(2, 9, 10),
        new(3, 3, 4),
        new(4, 1, 2),
    ];

    // Source: as Straight8; which fibre is A is derived, unconfirmed (trade facts 3.4).
    public static readonly IReadOnlyList<PortWiring> U1Of8 =
    [
        new(1, 1, 12),
        new(2, 2, 11),
        new(3, 3, 10),
        new(4, 4, 9),
    ];

    // Source: as Straight8; which fibre is A is derived, unconfirmed (trade facts 3.4).
    public static readonly IReadOnlyList<PortWiring> U2Of8 =
    [
        new(1, 12, 1),
        new(2, 11, 2),
        new(3, 10, 3),
        new(4, 9, 4),
    ];

    /// <summary>The typed map of an array cable type, with 12 fibres or with 8 of 12.</summary>
    public static IReadOnlyList<(int Near, int Far)> Cable(string type, int fibres) => (type, fibres) switch
    {
        ("Type-A", 12) => CableTypeA,
        ("Type-B", 12) => CableTypeB,
        ("Type-C", 12) => CableTypeC,
        ("Type-A", 8) => EightFibreTypeA,
        ("Type-B", 8) => EightFibreTypeB,
        ("Type-C", 8) => EightFibreTypeC,
        _ => throw new ArgumentOutOfRangeException(nameof(type), type, "no typed table for this cable"),
    };

    /// <summary>The typed wiring of a transition, base 12 (6 ports) or base 8 (4 ports).</summary>
    public static IReadOnlyList<PortWiring> Transition(string key, int fibres) => (key, fibres) switch
    {
        ("straight", 12) => Straight12,
        ("straight-reversed", 12) => StraightReversed12,
        ("U1", 12) => U1Of12,
        ("U2", 12) => U2Of12,
        ("straight", 8) => Straight8,
        ("straight-reversed", 8) => StraightReversed8,
        ("U1", 8) => U1Of8,
        ("U2", 8) => U2Of8,
        _ => throw new ArgumentOutOfRangeException(nameof(key), key, "no typed table for this transition"),
    };
}
