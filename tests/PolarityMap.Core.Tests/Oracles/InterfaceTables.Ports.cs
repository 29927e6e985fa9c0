namespace PolarityMap.Core.Tests.Oracles;

/// <summary>Where an array port sends and receives, in the port's own numbers. The order inside a list is not the lane order.</summary>
public sealed record ArrayPortRow(
    string Interface,
    int Positions,
    IReadOnlyList<int> Transmit,
    IReadOnlyList<int> Receive,
    IReadOnlyList<int> Unused,
    string Attestation);

/// <summary>How many positions of which ferrule an array port uses.</summary>
public sealed record ArrayPortShape(string Interface, int Rows, int Columns, int FibresUsed, string Attestation);

/// <summary>
/// A direct cord between two array ports: the far position that a transmitting position reaches, in the ports' own
/// numbers, and whether it receives there.
/// </summary>
public sealed record DirectCordRow(string Cord, int Positions, int PortTx, int FarPosition, bool MeetsReceive);

/// <summary>One end of a single-fibre pair: what it sends, what it hears, and the interface it must meet. Wavelengths in nanometres.</summary>
public sealed record SingleFibreRow(string Interface, int? Clause, int TransmitNm, int ReceiveNm, string Counterpart, string Attestation);

/// <summary>The end face that an array interface is confirmed to have.</summary>
public sealed record FerruleRow(string Interface, string EndFace, string Attestation);

/// <summary>The ports of the interfaces: positions, shapes, direct cords, and the wavelength pairs of single fibres.</summary>
public static partial class InterfaceTables
{
    // Source: interface facts 2.2, the rows whose positions have two sources or more. All others are from memory.
    public static readonly IReadOnlyList<ArrayPortRow> ArrayPorts =
    [
        new("40GBASE-SR4", 12, [1, 2, 3, 4], [9, 10, 11, 12], [5, 6, 7, 8], "3 sources"),
        new("100GBASE-SR4", 12, [1, 2, 3, 4], [9, 10, 11, 12], [5, 6, 7, 8], "2 sources"),
    ];

    // Source: interface facts 2.2 and trade facts 4.1. Which positions or which row transmits is from memory and not said here.
    public static readonly IReadOnlyList<ArrayPortShape> ArrayPortShapes =
    [
        new("40GBASE-SR4", 1, 12, 8, "3 sources"),
        new("100GBASE-SR4", 1, 12, 8, "2 sources"),
        new("400GBASE-SR8", 1, 16, 16, "port 2 sources, fibres 4 sources"),
        new("800GBASE-DR8", 1, 16, 16, "port 3 sources, fibres 4 sources"),
        new("100GBASE-SR10", 2, 12, 20, "2 sources"),
        new("400GBASE-SR16", 2, 16, 32, "1 source"),
    ];

    // Source: interface facts 2.2, the one-port form of 100GBASE-SR10: 20 of 24 used, the ends of both rows dark. 2 sources.
    public static readonly IReadOnlyList<int> DarkOfTenLanePort = [1, 12, 13, 24];

    // Source: interface facts 2.2, the rows whose ferrule is confirmed. "angled" is the usual form of 400GBASE-SR8; both are sold.
    public static readonly IReadOnlyList<FerruleRow> Ferrules =
    [
        new("400GBASE-SR4", "angled", "2 sources"),
        new("400GBASE-VR4", "angled", "2 sources"),
        new("400GBASE-SR8", "angled", "2 sources"),
        new("400GBASE-DR4", "angled", "2 sources"),
        new("800GBASE-SR8", "angled", "2 sources"),
        new("800GBASE-VR8", "angled", "2 sources"),
    ];

    // Source: interface facts 1, direct-cord oracle, ports of twelve, no adapter. Derived.
    public static readonly IReadOnlyList<DirectCordRow> DirectCordsOfTwelve =
    [
        new("Type-A", 12, 1, 1, false),
        new("Type-A", 12, 2, 2, false),
        new("Type-A", 12, 3, 3, false),
        new("Type-A", 12, 4, 4, false),
        new("Type-B", 12, 1, 12, true),
        new("Type-B", 12, 2, 11, true),
        new("Type-B", 12, 3, 10, true),
        new("Type-B", 12, 4, 9, true),
        new("Type-C", 12, 1, 2, false),
        new("Type-C", 12, 2, 1, false),
        new("Type-C", 12, 3, 4, false),
        new("Type-C", 12, 4, 3, false),
    ];

    // Source: interface facts 1, direct-cord oracle, ports of sixteen: k, 17 - k, and the neighbour in the pair. Derived.
    public static readonly IReadOnlyList<DirectCordRow> DirectCordsOfSixteen =
    [
        new("Type-A", 16, 1, 1, false),
        new("Type-A", 16, 2, 2, false),
        new("Type-A", 16, 3, 3, false),
        new("Type-A", 16, 4, 4, false),
        new("Type-A", 16, 5, 5, false),
        new("Type-A", 16, 6, 6, false),
        new("Type-A", 16, 7, 7, false),
        new("Type-A", 16, 8, 8, false),
        new("Type-B", 16, 1, 16, true),
        new("Type-B", 16, 2, 15, true),
        new("Type-B", 16, 3, 14, true),
        new("Type-B", 16, 4, 13, true),
        new("Type-B", 16, 5, 12, true),
        new("Type-B", 16, 6, 11, true),
        new("Type-B", 16, 7, 10, true),
        new("Type-B", 16, 8, 9, true),
        new("Type-C", 16, 1, 2, false),
        new("Type-C", 16, 2, 1, false),
        new("Type-C", 16, 3, 4, false),
        new("Type-C", 16, 4, 3, false),
        new("Type-C", 16, 5, 6, false),
        new("Type-C", 16, 6, 5, false),
        new("Type-C", 16, 7, 8, false),
        new("Type-C", 16, 8, 7, false),
    ];

    // Source: interface facts 2.1. Clause 59 is from memory, so null. 25G and 50G on a single fibre are from memory and left out.
    public static readonly IReadOnlyList<SingleFibreRow> SingleFibrePairs =
    [
        new("1000BASE-BX10-U", null, 1310, 1490, "1000BASE-BX10-D", "wavelengths 2 sources"),
        new("1000BASE-BX10-D", null, 1490, 1310, "1000BASE-BX10-U", "wavelengths 2 sources"),
        new("10GBASE-BR10-U", 158, 1270, 1330, "10GBASE-BR10-D", "pair 3 sources, direction 1 source"),
        new("10GBASE-BR10-D", 158, 1330, 1270, "10GBASE-BR10-U", "pair 3 sources, direction 1 source"),
        new("10GBASE-BR20-U", 158, 1270, 1330, "10GBASE-BR20-D", "pair 3 sources, direction 1 source"),
        new("10GBASE-BR20-D", 158, 1330, 1270, "10GBASE-BR20-U", "pair 3 sources, direction 1 source"),
        new("10GBASE-BR40-U", 158, 1270, 1330, "10GBASE-BR40-D", "pair 3 sources, direction 1 source"),
        new("10GBASE-BR40-D", 158, 1330, 1270, "10GBASE-BR40-U", "pair 3 sources, direction 1 source"),
    ];

    // Source: interface facts 2.2, allowances for parallel links, in nanoseconds. 1 source (400GBASE-SR8 and 400GBASE-SR4.2).
    public const decimal SkewAllowanceNs = 79m;

    // Source: as SkewAllowanceNs.
    public const decimal SkewVariationNs = 2.4m;

    // Source: interface facts 2.2, minimum length of a link in metres. 1 source.
    public const decimal MinimumMultimodeMetres = 0.5m;

    // Source: as MinimumMultimodeMetres.
    public const decimal MinimumSingleModeMetres = 2m;
}
