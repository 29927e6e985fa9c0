namespace PolarityMap.Core.Tests.Oracles;

/// <summary>The attenuation limit of a cabled fibre class at one wavelength, in dB/km, by one standard.</summary>
public sealed record AttenuationRow(string Class, int WavelengthNm, decimal DbPerKm, string Standard, string Attestation);

/// <summary>A typical attenuation for estimates, in dB/km; low and high are equal where one figure is printed.</summary>
public sealed record TypicalAttenuationRow(string FibreKind, int WavelengthNm, decimal LowDbPerKm, decimal HighDbPerKm, string Attestation);

/// <summary>The most that a mated pair or a splice may lose, in dB, by one standard and edition.</summary>
/// <param name="Item">What is measured.</param>
/// <param name="FibreKind">multimode, single-mode, or any.</param>
/// <param name="Db">The limit.</param>
/// <param name="Standard">The standard; "common practice" where none stands behind the figure.</param>
/// <param name="Edition">The edition, or empty where the limit is that of all editions read of.</param>
/// <param name="Attestation">How many independent public sources.</param>
public sealed record ConnectionLossRow(string Item, string FibreKind, decimal Db, string Standard, string Edition, string Attestation);

/// <summary>The least return loss of an array mating, in dB.</summary>
public sealed record ReturnLossRow(string FibreKind, string EndFace, decimal AtLeastDb, string Standard, string Attestation);

/// <summary>The group index of a fibre, and the delay it gives in nanoseconds per metre, as printed.</summary>
public sealed record DelayRow(string Fibre, int? WavelengthNm, decimal GroupIndex, decimal NsPerMetre, int PrintedDecimals, string Attestation);

/// <summary>One line of a loss sum: so many (or so many kilometres) of something, each (or per kilometre) so many dB.</summary>
public sealed record LossItem(string What, decimal Count, decimal EachDb, decimal? PrintedDb);

/// <summary>A worked loss sum. Nulls stand where the example prints nothing.</summary>
/// <param name="Id">The id of the example in the sheet.</param>
/// <param name="Interface">The interface it is for, if any.</param>
/// <param name="Fibre">The fibre class, if one is named.</param>
/// <param name="Metres">Length of the channel, if it is judged.</param>
/// <param name="Items">The terms of the sum.</param>
/// <param name="TotalDb">The expected sum.</param>
/// <param name="LimitDb">The loss limit or power budget.</param>
/// <param name="MarginDb">The margin that is printed.</param>
/// <param name="MetresLimit">The distance limit, where the example fails on it.</param>
/// <param name="Verdict">pass, fail, fail on length, or warn.</param>
/// <param name="Origin">Published, or our own and derived.</param>
public sealed record WorkedExample(
    string Id,
    string? Interface,
    string? Fibre,
    int? Metres,
    IReadOnlyList<LossItem> Items,
    decimal? TotalDb,
    decimal? LimitDb,
    decimal? MarginDb,
    int? MetresLimit,
    string? Verdict,
    string Origin);

/// <summary>A worked sum of the statistical form: mean, plus so many standard deviations, plus a fixed share.</summary>
public sealed record StatisticalExample(
    string Id,
    decimal MeanDb,
    IReadOnlyList<(decimal Count, decimal Variance)> Variances,
    decimal PrintedVariance,
    decimal SystemVariance,
    decimal Sigmas,
    decimal PrintedDeviationDb,
    decimal FixedDb,
    decimal TotalDb,
    string Origin);

/// <summary>Attenuation, connection limits, delay and worked examples of loss. Nothing here is computed, nothing is from memory.</summary>
public static class LossTables
{
    // Source: interface facts 4.1. Cells from memory are left out, and so is 1300 nm on OM3 and OM4, which carries no code.
    // 11801 is ISO/IEC 11801-1, 568.3 is ANSI/TIA-568.3.
    public static readonly IReadOnlyList<AttenuationRow> Attenuation =
    [
        new("OM1", 850, 3.5m, "11801", "2 sources"),
        new("OM1", 850, 3.5m, "568.3", "2 sources"),
        new("OM1", 1300, 1.5m, "11801", "2 sources"),
        new("OM1", 1300, 1.5m, "568.3", "2 sources"),
        new("OM2", 850, 3.5m, "11801", "2 sources"),
        new("OM2", 850, 3.5m, "568.3", "2 sources"),
        new("OM2", 1300, 1.5m, "11801", "2 sources"),
        new("OM2", 1300, 1.5m, "568.3", "2 sources"),
        new("OM3", 850, 3.5m, "11801", "3 sources"),
        new("OM4", 850, 3.5m, "11801", "2 sources"),
        new("OM4", 850, 3.0m, "568.3-D", "1 source"),
        new("OM5", 850, 3.0m, "11801", "2 sources"),
        new("OM5", 850, 3.0m, "568.3", "2 sources"),
        new("OM5", 1300, 1.5m, "11801", "2 sources"),
        new("OM5", 1300, 1.5m, "568.3", "2 sources"),
        new("OS1", 1310, 1.0m, "11801", "2 sources"),
        new("OS1", 1550, 1.0m, "11801", "2 sources"),
        new("OS1a", 1310, 1.0m, "11801", "2 sources"),
        new("OS1a", 1550, 1.0m, "11801", "2 sources"),
        new("indoor single-mode", 1310, 1.0m, "568.3", "2 sources"),
        new("indoor single-mode", 1550, 1.0m, "568.3", "2 sources"),
        new("indoor/outdoor single-mode", 1310, 0.5m, "568.3", "1 source"),
        new("indoor/outdoor single-mode", 1550, 0.5m, "568.3", "1 source"),
        new("OS2", 1310, 0.4m, "11801", "3 sources"),
        new("OS2", 1550, 0.4m, "11801", "3 sources"),
        // The single-mode figures of edition E stand on the sheet's list of open doubts (interface facts 9).
        new("outside plant single-mode", 1310, 0.4m, "568.3-E", "3 sources"),
        new("outside plant single-mode", 1550, 0.4m, "568.3-E", "3 sources"),
        new("G.652.D cable", 1310, 0.4m, "ITU-T G.652", "1 source"),
        new("G.652.D cable", 1550, 0.3m, "ITU-T G.652", "1 source"),
    ];

    // Source: interface facts 4.1, last two rows. Common practice, 2 sources.
    public static readonly IReadOnlyList<TypicalAttenuationRow> TypicalAttenuation =
    [
        new("multimode", 850, 3.0m, 3.0m, "common practice, 2 sources"),
        new("multimode", 1300, 0.8m, 1.0m, "common practice, 2 sources"),
        new("single-mode", 1310, 0.4m, 0.4m, "common practice, 2 sources"),
        new("single-mode", 1550, 0.2m, 0.3m, "common practice, 2 sources"),
    ];

    // Source: interface facts 4.2. 14763 is ISO/IEC 14763-3. Rows from memory (graded mating) and the low-loss duplex range
    // without a source are left out.
    public static readonly IReadOnlyList<ConnectionLossRow> ConnectionLimits =
    [
        new("mated pair, any grade", "any", 0.75m, "568.3", "", "4 sources"),
        new("mated pair, any grade", "any", 0.75m, "11801", "", "4 sources"),
        new("ordinary to ordinary, random", "any", 0.75m, "568.3", "", "3 sources"),
        new("reference to reference", "multimode", 0.10m, "568.3", "", "2 sources"),
        new("reference to reference", "multimode", 0.10m, "14763", "", "2 sources"),
        new("reference to reference", "single-mode", 0.20m, "568.3", "", "2 sources"),
        new("reference to reference", "single-mode", 0.20m, "14763", "", "2 sources"),
        new("reference to ordinary", "multimode", 0.30m, "568.3", "D", "1 source"),
        new("reference to ordinary", "single-mode", 0.50m, "568.3", "D", "1 source"),
        new("reference to ordinary", "multimode", 0.50m, "568.3", "E", "1 source"),
        new("reference to ordinary", "single-mode", 0.50m, "568.3", "E", "1 source"),
        new("reference to ordinary", "multimode", 0.50m, "14763", "2 with Cor. 1 (2015)", "1 source"),
        new("reference to ordinary", "single-mode", 0.75m, "14763", "2 with Cor. 1 (2015)", "1 source"),
        new("splice, fusion or mechanical", "any", 0.3m, "568.3", "", "3 sources"),
        new("splice, fusion or mechanical", "any", 0.3m, "11801", "", "3 sources"),
    ];

    // Source: interface facts 4.2, the rows marked as practice. Estimates and trade figures, not limits of a standard.
    public static readonly IReadOnlyList<ConnectionLossRow> ConnectionEstimates =
    [
        new("mated pair, single fibre, good work", "any", 0.3m, "common practice", "", "1 source"),
        new("mated pair, single fibre", "any", 0.5m, "common practice", "", "1 source"),
        new("mated pair, array", "any", 0.75m, "common practice", "", "1 source"),
        new("splice", "single-mode", 0.15m, "common practice", "", "1 source"),
        new("splice", "multimode", 0.3m, "common practice", "", "1 source"),
        new("mated pair, array, low loss", "any", 0.35m, "common practice", "", "2 sources"),
    ];

    // Source: interface facts 4.2, array return loss. 2 sources; the angled figure is of the trade.
    public static readonly IReadOnlyList<ReturnLossRow> ArrayReturnLoss =
    [
        new("multimode", "flat", 20m, "568.3", "2 sources"),
        new("single-mode", "flat", 26m, "568.3", "2 sources"),
        new("single-mode", "angled", 60m, "common practice", "2 sources"),
    ];

    // Source: interface facts 4.4, size mismatch from the larger to the smaller core, by the numerical aperture printed
    // with it; the other way 0. Overfilled upper bounds. 1 source.
    public static readonly IReadOnlyList<(decimal FromUm, decimal ToUm, decimal? NumericalAperture, decimal Db)> CoreSteps =
    [
        (62.5m, 50m, 0.20m, 2.2m),
        (62.5m, 50m, 0.22m, 1.6m),
        (50m, 62.5m, null, 0m),
    ];

    // Source: interface facts 4.5. 1 source each; the rule of thumb is common practice, 2 sources.
    public static readonly IReadOnlyList<DelayRow> Delay =
    [
        new("single-mode", 1310, 1.4677m, 4.896m, 3, "1 source"),
        new("single-mode", 1550, 1.4682m, 4.897m, 3, "1 source"),
        new("50 um", 850, 1.481m, 4.940m, 3, "1 source"),
        new("50 um", 1300, 1.476m, 4.923m, 3, "1 source"),
        new("62.5 um", 850, 1.496m, 4.990m, 3, "1 source"),
        new("62.5 um", 1300, 1.491m, 4.973m, 3, "1 source"),
        new("rule of thumb", null, 1.5m, 5.0m, 1, "common practice, 2 sources"),
    ];

    // Source: interface facts 4.4, W1 to W4 published, W5 to W10 derived. Lengths inside the items are in kilometres.
    public static readonly IReadOnlyList<WorkedExample> WorkedExamples =
    [
        new("W1", null, null, null,
            [
                new("matings", 2, 0.35m, 0.70m), new("splices", 2, 0.15m, 0.30m),
                new("cords", 0.21m, 0.8m, 0.168m), new("trunk", 19.76m, 0.5m, 9.88m),
            ],
            11.048m, null, null, null, null, "published, a single-mode handbook; printed there as 11.05"),
        new("W2", null, null, null,
            [
                new("cable", 2, 1.0m, null), new("matings", 5, 0.5m, null),
                new("splices", 2, 0.5m, null), new("higher-order mode", 1, 0.5m, null),
            ],
            6.0m, 13m, 7.0m, null, null, "published, two guides; the limit is a power budget"),
        new("W3", null, null, null,
            [new("cable", 8, 0.5m, null), new("matings", 7, 0.5m, null)],
            7.5m, 13m, 5.5m, null, null, "published, two guides; the limit is a power budget"),
        new("W4", null, null, null,
            [
                new("cable 62.5 um", 1, 1.75m, null), new("cable 50 um", 1, 3.0m, null),
                new("splices", 1, 0.3m, null), new("matings", 1, 0.6m, null), new("step from 62.5 to 50 um", 1, 2.2m, null),
            ],
            7.85m, null, null, null, null, "published, a mix of fibres"),
        new("W5", "10GBASE-SR", "OM3", 100,
            [new("cable", 0.1m, 3.5m, 0.35m), new("matings", 4, 0.75m, 3.00m)],
            3.35m, 2.6m, null, null, "fail", "derived"),
        new("W6", "10GBASE-SR", "OM3", 100,
            [new("cable", 0.1m, 3.5m, 0.35m), new("array matings", 2, 0.35m, 0.70m), new("duplex matings", 2, 0.25m, 0.50m)],
            1.55m, 2.6m, 1.05m, null, "pass", "derived"),
        new("W7", "40GBASE-SR4", "OM4", 60,
            [new("cable", 0.06m, 3.5m, 0.21m), new("array matings", 4, 0.35m, 1.40m)],
            1.61m, 1.5m, null, null, "fail", "derived"),
        new("W7, two matings", "40GBASE-SR4", "OM4", 60,
            [new("cable", 0.06m, 3.5m, 0.21m), new("array matings", 2, 0.35m, null)],
            0.91m, 1.5m, 0.59m, null, "pass", "derived"),
        new("W8", "400GBASE-DR4", "OS2", 300,
            [new("cable", 0.3m, 0.4m, 0.12m), new("array matings", 4, 0.5m, 2.00m)],
            2.12m, 3.0m, 0.88m, null, "pass", "derived"),
        new("W9", "100GBASE-SR4", "OM3", 90, [], null, null, null, 70, "fail on length", "derived; any loss"),

        // Passes on loss, but the cable is above 0.5 dB/km, so the distance is not specified.
        new("W10", "100GBASE-FR1", "OS1a", 1500,
            [new("cable", 1.5m, 1.0m, null), new("matings", 2, 0.5m, null)],
            2.50m, 4.0m, null, null, "warn", "derived"),
    ];

    // Source: interface facts 4.4, W1b: the page of W1, statistical form, variance 2 x 0.06 + 2 x 0.01, three sigma. The
    // page prints a system variance of 0.04, which would give 12.82; 0.05 reproduces its own deviation of 0.436.
    public static readonly StatisticalExample W1b = new(
        "W1b",
        11.05m,
        [(2, 0.06m), (2, 0.01m)],
        0.14m,
        0.05m,
        3m,
        0.436m,
        0.50m,
        12.86m,
        "published, a single-mode handbook, its misprint set right");
}
