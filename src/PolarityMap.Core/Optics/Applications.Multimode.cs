namespace PolarityMap.Core.Optics;

/// <content>Arrays on multimode fibre.</content>
internal static partial class Applications
{
    private const string FromMemory = "positions and lane numbers from memory";

    private static Application[] Multimode() =>
    [
        new("40GBASE-SR4", PortForm.Array12, Clause(86), "C2", [s_850], "M",
            static () => [FourLanes(s_850, false, "M", "positions 3 public sources, lane numbers 1")], static () => HundredHundredFifty("C1")),
        new("100GBASE-SR4", PortForm.Array12, Clause(95), "C2", [s_850], "M",
            static () => [FourLanes(s_850, false, "M", "positions 2 public sources, lane numbers 1")], static () =>
            [
                On("OM3", 70, "C3", 1.8m, "C1", 1.5m, "M"),
                On("OM4", 100, "C3", 1.9m, "C1", 1.5m, "M"),
                On("OM5", 100, "C3", 1.9m, "C1", 1.5m, "M"),
            ]),
        new("100GBASE-SR2", PortForm.Array12, Clause(138), "C2", [s_850], "M", static () => [TwoLanes(false)], static () => FiftyPerLane("M", "C1", "C1", "C1", "M")),
        new("200GBASE-SR4", PortForm.Array12, Clause(138), "C2", [s_850], "C1",
            static () => [FourLanes(s_850, false, "C1", FromMemory)], static () => FiftyPerLane("C1", "C1", "C1", "C1", "C1"))
        {
            Note = "The standard's port takes a flat plug; some modules take an angled one.",
        },
        new("200GBASE-SR2", PortForm.Array12, Clause(167), "C1", [s_850], "M", static () => [TwoLanes(true)], static () => HundredPerLane("M")),
        new("200GBASE-VR2", PortForm.Array12, Clause(167), "C1", [s_850], "M", static () => [TwoLanes(true)], static () => HundredPerLaneShort("M")),
        new("400GBASE-SR4", PortForm.Array12, Clause(167), "C1", [s_850], "M",
            static () => [FourLanes(s_850, true, "C2", FromMemory)], static () => HundredPerLane("C1")),
        new("400GBASE-VR4", PortForm.Array12, Clause(167), "C1", [s_850], "M",
            static () => [FourLanes(s_850, true, "C2", FromMemory)], static () => HundredPerLaneShort("C1")),
        new("400GBASE-SR4.2", PortForm.Array12, Clause(150), "C2", [s_850, s_910], "M",
            static () => [PortLayouts.TwoWayPairs(s_850, s_910, "which side sends 850 nm, and the numbers of the pairs: from memory")], static () =>
            [
                On("OM3", 70, "C1", 1.7m, "C1", 1.5m, "M"),
                On("OM4", 100, "C1", 1.8m, "C1", 1.5m, "M"),
                On("OM5", 150, "C1", 2.0m, "C1", 1.5m, "M"),
            ])
        {
            WavelengthRange = "844-863 nm and 900-918 nm",
            Note = "Both wavelengths run on every fibre, one each way. Flat and angled ports are not told apart by the name: read the data sheet.",
        },
        new("400GBASE-SR8", PortForm.Array16, Clause(138), "C2", [s_850], "M", static () =>
            [
                OneRowOfEight(s_850, "C2"),
                PortLayouts.Mirrored("two rows", PortForm.Array24, 15, 8, s_850, false, "M", "positions and lane numbers from memory, doubtful"),
            ],
            static () => FiftyPerLane("C2", "C1", "C2", "M", "M"))
        {
            Note = "The one-row port is usually angled; flat ones are sold.",
        },
        new("100GBASE-SR10", PortForm.Array24, Clause(86), "C2", [s_850], "M", static () =>
            [
                PortLayouts.InColumnOrder("one port", PortForm.Array24, (0, 14), (0, 2), 10, s_850, "M",
                    "middle ten of each row 2 public sources, which row sends from memory; no lane pairing on record"),
                PortLayouts.InColumnOrder("two ports", PortForm.Array12, (0, 2), (1, 2), 10, s_850, "M",
                    "that such ports exist 1 public source, positions from memory; no lane pairing on record"),
            ],
            static () => HundredHundredFifty("M"))
        {
            Note = "The receiver sorts the lanes, so their order does not matter. For legs of 10 Gbit/s no pairing is on record.",
        },
        new("400GBASE-SR16", PortForm.Array32, Clause(123), "C1", [s_850], "M", static () =>
            [PortLayouts.Mirrored("two rows", PortForm.Array32, 17, 16, s_850, false, "M", "32 fibres 1 public source, rows and lane numbers from memory")],
            static () => FiftyPerLane("M", "M", "M", "M", "M"))
        {
            Note = "Hardly ever built (1 public source).",
        },
        new("800GBASE-SR8", PortForm.Array16, Clause(167), "M", [s_850], "M", static () => EightLanes(s_850, "C2"), static () => HundredPerLane("C1, weak")),
        new("800GBASE-VR8", PortForm.Array16, Clause(167), "M", [s_850], "M", static () => EightLanes(s_850, "C2"), static () => HundredPerLaneShort("C1, weak")),
    ];

    private static PortLayout FourLanes(Wavelength wavelength, bool angled, string angledCode, string source) =>
        PortLayouts.Mirrored("one row", PortForm.Array12, 1, 4, wavelength, angled, angledCode, source);

    private static PortLayout TwoLanes(bool angled) =>
        PortLayouts.Mirrored("one row", PortForm.Array12, 1, 2, s_850, angled, "M", FromMemory);

    private static PortLayout OneRowOfEight(Wavelength wavelength, string angledCode, string name = "one row") =>
        PortLayouts.Mirrored(name, PortForm.Array16, 1, 8, wavelength, true, angledCode, FromMemory);

    /// <summary>Eight lanes, in one port of 16 or in two of 12. Both styles of port have three public sources, the split of the lanes none.</summary>
    private static PortLayout[] EightLanes(Wavelength wavelength, string angledCode) =>
    [
        OneRowOfEight(wavelength, angledCode, "one port"),
        PortLayouts.TwoOfFourLanes(wavelength, true, angledCode, "that such ports exist 3 public sources, positions and lane numbers from memory"),
    ];

    /// <summary>40GBASE-SR4 and 100GBASE-SR10: the connection share falls where the distance grows.</summary>
    private static FibreLimit[] HundredHundredFifty(string om4ShareCode) =>
    [
        On("OM3", 100, "C3", 1.9m, "M", 1.5m),
        On("OM4", 150, "C3", 1.5m, "C1", 1.0m, om4ShareCode),
        On("OM5", 150, "C3", 1.5m, "M", 1.0m),
    ];

    /// <summary>25 and 50 Gbit/s a lane.</summary>
    private static FibreLimit[] FiftyPerLane(string distanceCode, string om3Code, string om4Code, string om5Code, string shareCode) =>
    [
        On("OM3", 70, distanceCode, 1.8m, om3Code, 1.5m, shareCode),
        On("OM4", 100, distanceCode, 1.9m, om4Code, 1.5m, shareCode),
        On("OM5", 100, distanceCode, 1.9m, om5Code, 1.5m, shareCode),
    ];

    /// <summary>100 Gbit/s a lane.</summary>
    private static FibreLimit[] HundredPerLane(string distanceCode) =>
    [
        On("OM3", 60, distanceCode, 1.7m, "M", 1.5m),
        On("OM4", 100, distanceCode, 1.8m, "M", 1.5m),
        On("OM5", 100, distanceCode, 1.8m, "M", 1.5m),
    ];

    /// <summary>100 Gbit/s a lane, the short variant.</summary>
    private static FibreLimit[] HundredPerLaneShort(string distanceCode) =>
    [
        On("OM3", 30, distanceCode, 1.6m, "M", 1.5m),
        On("OM4", 50, distanceCode, 1.7m, "M", 1.5m),
        On("OM5", 50, distanceCode, 1.7m, "M", 1.5m),
    ];
}
