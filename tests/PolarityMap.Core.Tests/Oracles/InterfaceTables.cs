namespace PolarityMap.Core.Tests.Oracles;

/// <summary>
/// What is confirmed of one interface on one fibre class. A null, or an empty list of wavelengths, means that the figure
/// is known from memory only, and so is no oracle; it does not mean that the interface has none.
/// </summary>
/// <param name="Interface">The name in IEEE Std 802.3, or the name of a multi-source agreement.</param>
/// <param name="Clause">The clause of IEEE Std 802.3.</param>
/// <param name="WavelengthsNm">Nominal transmit wavelengths in nanometres.</param>
/// <param name="Fibre">OM1..OM5, OS for cabled single-mode, or a core and its bandwidth where no class name fits.</param>
/// <param name="Metres">Maximum operating distance.</param>
/// <param name="LossDb">Maximum channel insertion loss.</param>
/// <param name="AllocDb">The share of connections and splices inside that loss.</param>
/// <param name="Attestation">Which figures have how many independent public sources.</param>
public sealed record InterfaceRow(
    string Interface,
    int? Clause,
    IReadOnlyList<decimal> WavelengthsNm,
    string Fibre,
    int? Metres,
    decimal? LossDb,
    decimal? AllocDb,
    string Attestation);

/// <summary>A loss limit that ANSI/TIA-568.3 prints beside the one of IEEE Std 802.3.</summary>
public sealed record TiaLossRow(string Interface, string Fibre, decimal LossDb, string Attestation);

/// <summary>The wavelength window of a transmitter, in nanometres.</summary>
public sealed record TransmitWindow(string Interface, decimal LowNm, decimal HighNm, string Attestation);

/// <summary>Distance by the attenuation of the cable; beyond the first row of an interface the figure is for information only.</summary>
public sealed record DistanceByCable(string Interface, decimal DbPerKm, int Metres);

/// <summary>A printed loss as a sum: allocation plus distance times attenuation gives <paramref name="UnroundedDb"/>, printed as <paramref name="PrintedDb"/>.</summary>
public sealed record LossSum(string Interface, string Fibre, decimal AllocDb, int Metres, decimal DbPerKm, decimal UnroundedDb, decimal PrintedDb);

/// <summary>
/// Interfaces on duplex cords, on a single fibre and on arrays. Throughout, a source comment that names the interface
/// facts means the sheet of interfaces, breakouts and loss; sources are counted as in the trade facts. Clause numbers are
/// from an open code list (1 source; 86, 87, 88, 95, 138, 140 and 150 also an overview: 2 sources).
/// </summary>
public static partial class InterfaceTables
{
    // Source: interface facts 2.1. Rows and figures from memory are left out; clauses 38 and 59 are from memory, so null.
    public static readonly IReadOnlyList<InterfaceRow> DuplexAndSingleFibre =
    [
        // The fibre of 160 MHz.km is not OM1 (interface facts 8, no. 7).
        new("1000BASE-SX", null, [], "62.5 um 160 MHz.km", 220, null, null, "distance 2 sources"),
        new("1000BASE-SX", null, [], "OM1", 275, 2.60m, null, "distance and loss 2 sources"),
        new("1000BASE-SX", null, [], "OM2", 550, 3.56m, null, "distance and loss 2 sources"),

        new("1000BASE-LX", null, [1310], "OM1", 550, 2.35m, 1.5m, "1 source"),
        new("1000BASE-LX", null, [1310], "OM2", 550, 2.35m, 1.5m, "1 source"),
        new("1000BASE-LX", null, [1310], "OM3", 550, 2.35m, 1.5m, "1 source"),
        new("1000BASE-LX", null, [1310], "OS", 5000, 4.57m, 2.0m, "1 source"),

        new("1000BASE-BX10-U", null, [1310], "OS", null, 6.0m, null, "wavelengths 2 sources, loss 1 source"),
        new("1000BASE-BX10-D", null, [1490], "OS", null, 5.5m, null, "wavelengths 2 sources, loss 1 source"),

        new("10GBASE-SR", 52, [], "62.5 um 160 MHz.km", 26, null, null, "distance 3 sources"),
        new("10GBASE-SR", 52, [], "OM1", 33, null, null, "distance 3 sources"),
        new("10GBASE-SR", 52, [], "50 um 400 MHz.km", 66, null, null, "distance 3 sources"),
        new("10GBASE-SR", 52, [], "OM2", 82, null, null, "distance 3 sources"),
        new("10GBASE-SR", 52, [], "OM3", 300, 2.6m, null, "distance 3 sources, loss 2 sources"),
        new("10GBASE-SR", 52, [], "OM4", 400, 2.9m, null, "distance 3 sources, loss 1 source"),
        new("10GBASE-SR", 52, [], "OM5", 400, null, null, "distance 3 sources"),

        new("10GBASE-LR", 52, [1310], "OS", 10000, 6.2m, 2.0m, "1 source"),
        new("10GBASE-ER", 52, [], "OS", null, 11.0m, 2.0m, "loss and allocation 1 source"),
        new("25GBASE-SR", 112, [], "OM4", 100, 1.9m, null, "distance and loss 1 source"),

        // For cable of 0.4 dB/km.
        new("40GBASE-LR4", 87, [1271, 1291, 1311, 1331], "OS", 10000, 6.7m, 2.0m, "1 source"),
        new("50GBASE-SR", 138, [], "OM4", 100, 1.9m, null, "distance and loss 1 source"),
        new("100GBASE-LR4", 88, [1295.56m, 1300.05m, 1304.58m, 1309.14m], "OS", null, null, null, "wavelengths 2 sources"),

        new("100GBASE-SR1", 167, [], "OM3", 60, null, null, "distance 1 source, weak"),
        new("100GBASE-SR1", 167, [], "OM4", 100, null, null, "distance 1 source"),
        new("100GBASE-SR1", 167, [], "OM5", 100, null, null, "distance 1 source"),
        new("100GBASE-VR1", 167, [], "OM4", 50, null, null, "distance 1 source"),

        new("100GBASE-DR", 140, [1311], "OS", 500, 3.0m, 2.75m, "1 source"),
        new("100GBASE-FR1", 140, [1311], "OS", 2000, 4.0m, 3.0m, "1 source"),
        new("400GBASE-FR4", 151, [1271, 1291, 1311, 1331], "OS", 2000, 4.0m, 3.0m, "1 source"),
        new("400GBASE-LR4-6", 151, [1271, 1291, 1311, 1331], "OS", 6000, 5.8m, null, "1 source"),

        // A multi-source agreement, so no clause.
        new("400G-LR4-10", null, [1271, 1291, 1311, 1331], "OS", 10000, 6.3m, null, "1 source"),
    ];

    // Source: interface facts 2.2. As DuplexAndSingleFibre; the use of clauses 124 and 167 for 800G is from memory, so null.
    public static readonly IReadOnlyList<InterfaceRow> Arrays =
    [
        new("40GBASE-SR4", 86, [], "OM3", 100, null, null, "distance 3 sources"),
        new("40GBASE-SR4", 86, [], "OM4", 150, 1.5m, 1.0m, "distance 3 sources, loss and allocation 1 source"),
        new("40GBASE-SR4", 86, [], "OM5", 150, null, null, "distance 3 sources"),

        new("100GBASE-SR4", 95, [], "OM3", 70, 1.8m, null, "distance 3 sources, loss 1 source"),
        new("100GBASE-SR4", 95, [], "OM4", 100, 1.9m, null, "distance 3 sources, loss 1 source"),
        new("100GBASE-SR4", 95, [], "OM5", 100, 1.9m, null, "distance 3 sources, loss 1 source"),

        new("100GBASE-SR2", 138, [], "OM3", null, 1.8m, null, "loss 1 source"),
        new("100GBASE-SR2", 138, [], "OM4", null, 1.9m, null, "loss 1 source"),
        new("100GBASE-SR2", 138, [], "OM5", null, 1.9m, null, "loss 1 source"),

        new("200GBASE-SR4", 138, [850], "OM3", 70, 1.8m, 1.5m, "1 source"),
        new("200GBASE-SR4", 138, [850], "OM4", 100, 1.9m, 1.5m, "1 source"),
        new("200GBASE-SR4", 138, [850], "OM5", 100, 1.9m, 1.5m, "1 source"),

        new("400GBASE-SR4", 167, [], "OM3", 60, null, null, "distance 1 source"),
        new("400GBASE-SR4", 167, [], "OM4", 100, null, null, "distance 1 source"),
        new("400GBASE-SR4", 167, [], "OM5", 100, null, null, "distance 1 source"),
        new("400GBASE-VR4", 167, [], "OM3", 30, null, null, "distance 1 source"),
        new("400GBASE-VR4", 167, [], "OM4", 50, null, null, "distance 1 source"),
        new("400GBASE-VR4", 167, [], "OM5", 50, null, null, "distance 1 source"),

        new("400GBASE-SR4.2", 150, [], "OM3", 70, 1.7m, null, "distance and loss 1 source"),
        new("400GBASE-SR4.2", 150, [], "OM4", 100, 1.8m, null, "distance and loss 1 source"),
        new("400GBASE-SR4.2", 150, [], "OM5", 150, 2.0m, null, "distance and loss 1 source"),

        new("400GBASE-SR8", 138, [], "OM3", 70, 1.8m, null, "distance 2 sources, loss 1 source"),
        new("400GBASE-SR8", 138, [], "OM4", 100, 1.9m, null, "distance and loss 2 sources"),
        new("400GBASE-SR8", 138, [], "OM5", 100, null, null, "distance 2 sources"),

        new("100GBASE-SR10", 86, [], "OM3", 100, null, null, "distance 3 sources"),
        new("100GBASE-SR10", 86, [], "OM4", 150, 1.5m, null, "distance 3 sources, loss 1 source"),
        new("100GBASE-SR10", 86, [], "OM5", 150, null, null, "distance 3 sources"),

        new("400GBASE-DR4", 124, [], "OS", 500, 3.0m, null, "distance 3 sources, loss 1 source through 800GBASE-DR8"),
        new("800GBASE-DR8", null, [], "OS", 500, 3.0m, 2.75m, "distance, loss and allocation 1 source"),

        // The one source of these distances prints a wrong clause beside them (interface facts 8, no. 11).
        new("800GBASE-SR8", null, [], "OM3", 60, null, null, "distance 1 source, weak"),
        new("800GBASE-SR8", null, [], "OM4", 100, null, null, "distance 1 source, weak"),
        new("800GBASE-SR8", null, [], "OM5", 100, null, null, "distance 1 source, weak"),
    ];

    // Source: interface facts 2.1, rows 1000BASE-LX and 10GBASE-SR. A pass under these alone is a warning (8, no. 3).
    public static readonly IReadOnlyList<TiaLossRow> TiaLosses =
    [
        new("1000BASE-LX", "OM1", 2.3m, "1 source"),
        new("1000BASE-LX", "OM2", 2.3m, "1 source"),
        new("1000BASE-LX", "OM3", 2.3m, "1 source"),
        new("1000BASE-LX", "OS", 4.5m, "1 source"),
        new("10GBASE-SR", "OM1", 2.4m, "2 sources"),
        new("10GBASE-SR", "OM2", 2.3m, "2 sources"),
        new("10GBASE-SR", "OM3", 2.6m, "2 sources"),
        new("10GBASE-SR", "OM4", 2.9m, "1 source"),
    ];

    // Source: interface facts 2.1, the ranges of the rows whose wavelengths are confirmed.
    public static readonly IReadOnlyList<TransmitWindow> TransmitWindows =
    [
        new("1000BASE-LX", 1270, 1355, "1 source"),
        new("1000BASE-BX10-U", 1260, 1360, "2 sources"),
        new("1000BASE-BX10-D", 1480, 1500, "2 sources"),
        new("10GBASE-LR", 1260, 1355, "1 source"),
        new("100GBASE-DR", 1304.5m, 1317.5m, "1 source"),
    ];

    // Source: interface facts 2.2, single-mode notes. 1 source, trade consortium overviews.
    public static readonly IReadOnlyList<DistanceByCable> DistancesByCable =
    [
        new("40GBASE-LR4", 0.4m, 10000),
        new("40GBASE-LR4", 0.5m, 8000),
        new("40GBASE-LR4", 1.0m, 4000),
        new("100GBASE-FR1", 0.5m, 2000),
        new("100GBASE-FR1", 1.0m, 1000),
        new("800GBASE-DR8", 0.5m, 500),
        new("800GBASE-DR8", 1.0m, 250),
    ];

    // Source: interface facts 2.2, the arithmetic check. Derived. Rounding follows no one rule, which is why losses are
    // tables. The allocations that are from memory appear here as terms of the sum only.
    public static readonly IReadOnlyList<LossSum> LossSums =
    [
        new("10GBASE-SR", "OM3", 1.5m, 300, 3.5m, 2.55m, 2.6m),
        new("10GBASE-SR", "OM4", 1.5m, 400, 3.5m, 2.90m, 2.9m),
        new("100GBASE-SR4", "OM3", 1.5m, 70, 3.5m, 1.745m, 1.8m),
        new("100GBASE-SR4", "OM4", 1.5m, 100, 3.5m, 1.85m, 1.9m),
        new("40GBASE-SR4", "OM4", 1.0m, 150, 3.5m, 1.525m, 1.5m),
        new("400GBASE-SR4.2", "OM5", 1.5m, 150, 3.0m, 1.95m, 2.0m),
        new("100GBASE-DR", "OS", 2.75m, 500, 0.5m, 3.00m, 3.0m),
        new("100GBASE-FR1", "OS", 3.0m, 2000, 0.5m, 4.0m, 4.0m),
        new("40GBASE-LR4", "OS", 2.0m, 10000, 0.47m, 6.7m, 6.7m),
        new("10GBASE-LR", "OS", 2.0m, 10000, 0.42m, 6.2m, 6.2m),
    ];
}
