namespace PolarityMap.Core.Optics;

/// <content>Two fibres, one each way, at one wavelength.</content>
internal static partial class Applications
{
    private static Application[] Duplex() =>
    [
        .. GigabitDuplex(),
        .. TenGigabitDuplex(),
        new("25GBASE-SR", PortForm.Duplex, Clause(112), "C1", [s_850], "M", static () => PortLayouts.Duplex(s_850), static () => SeventyHundred())
        {
            WavelengthRange = "840-860 nm",
        },
        new("25GBASE-LR", PortForm.Duplex, Clause(114), "C1", [s_1310], "M", static () => PortLayouts.Duplex(s_1310),
            static () => OnSingleMode(10_000, "M", 6.3m, "M", 2.0m))
        {
            WavelengthRange = "1295-1325 nm",
        },
        new("50GBASE-SR", PortForm.Duplex, Clause(138), "C2", [s_850], "M", static () => PortLayouts.Duplex(s_850), static () => SeventyHundred())
        {
            WavelengthRange = "844-863 nm",
        },
        new("50GBASE-FR", PortForm.Duplex, Clause(139), "C1", [s_1311], "M", static () => PortLayouts.Duplex(s_1311),
            static () => OnSingleMode(2_000, "M", 4.0m, "M", 3.0m, cable: 0.5m))
        {
            WavelengthRange = "1304.5-1317.5 nm",
            Note = ReflectanceNote,
        },
        new("50GBASE-LR", PortForm.Duplex, Clause(139), "C1", [s_1311], "M", static () => PortLayouts.Duplex(s_1311),
            static () => OnSingleMode(10_000, "M", 6.3m, "M", 2.0m)),
        .. HundredGigabitDuplex(),
    ];

    private static Application[] GigabitDuplex() =>
    [
        new("1000BASE-SX", PortForm.Duplex, Clause(38), "M", [s_850], "M", static () => PortLayouts.Duplex(s_850), static () =>
        [
            On("OM1", 275, "C2", 2.60m, "C2", 1.5m, "M"),
            On("OM2", 550, "C2", 3.56m, "C2", 1.5m, "M"),
            LikeOm2("OM3"),
            LikeOm2("OM4"),
            LikeOm2("OM5"),
        ])
        {
            WavelengthRange = "770-860 nm",
        },
        new("1000BASE-LX", PortForm.Duplex, Clause(38), "M", [s_1310], "C1", static () => PortLayouts.Duplex(s_1310), static () => GigabitLong(2.35m, 4.57m))
        {
            WavelengthRange = "1270-1355 nm",
            MakeTiaLimits = static () => GigabitLong(2.3m, 4.5m),
        },
        new("1000BASE-LX10", PortForm.Duplex, Clause(59), "M", [s_1310], "M", static () => PortLayouts.Duplex(s_1310), static () =>
        [
            On("OM1", 550, "M", 2.4m, "M"),
            On("OM2", 550, "M", 2.4m, "M"),
            On("OM3", 550, "M", 2.4m, "M"),
            .. OnSingleMode(10_000, "M", 6.0m, "M", 2.0m),
        ])
        {
            WavelengthRange = "1260-1360 nm",
        },
    ];

    private static Application[] TenGigabitDuplex() =>
    [
        new("10GBASE-SR", PortForm.Duplex, Clause(52), "C1", [s_850], "M", static () => PortLayouts.Duplex(s_850), static () =>
        [
            On("OM1", 33, "C3", 1.6m, "M", 1.5m),
            On("OM2", 82, "C3", 1.8m, "M", 1.5m),
            .. TenGigabitShort(),
        ])
        {
            WavelengthRange = "840-860 nm",

            // TIA adds IEEE's line of additional insertion loss, 0.8 and 0.5 dB. A pass under TIA only deserves a warning.
            MakeTiaLimits = static () =>
            [
                On("OM1", 33, "C3", 2.4m, "C2"),
                On("OM2", 82, "C3", 2.3m, "C2"),
                .. TenGigabitShort(),
            ],
        },
        new("10GBASE-LR", PortForm.Duplex, Clause(52), "C1", [s_1310], "C1", static () => PortLayouts.Duplex(s_1310),
            static () => OnSingleMode(10_000, "C1", 6.2m, "C1", 2.0m))
        {
            WavelengthRange = "1260-1355 nm",
        },
        new("10GBASE-ER", PortForm.Duplex, Clause(52), "C1", [new(1550)], "M", static () => PortLayouts.Duplex(new Wavelength(1550)),
            static () => OnSingleMode(30_000, "M", 11.0m, "C1", 2.0m, least: 5.0m))
        {
            WavelengthRange = "1530-1565 nm",
            Note = "40 km on an engineered link (from memory): one whose cable loses less than the limit for cable.",
        },
    ];

    private static Application[] HundredGigabitDuplex() =>
    [
        new("100GBASE-SR1", PortForm.Duplex, Clause(167), "C1", [s_850], "M", static () => PortLayouts.Duplex(s_850), static () =>
        [
            On("OM3", 60, "C1, weak", 1.7m, "M", 1.5m),
            On("OM4", 100, "C1", 1.8m, "M", 1.5m),
            On("OM5", 100, "C1", 1.8m, "M", 1.5m),
        ])
        {
            WavelengthRange = "844-863 nm",
        },
        new("100GBASE-VR1", PortForm.Duplex, Clause(167), "C1", [s_850], "M", static () => PortLayouts.Duplex(s_850), static () =>
        [
            On("OM3", 30, "M", 1.6m, "M", 1.5m),
            On("OM4", 50, "C1", 1.7m, "M", 1.5m),
            On("OM5", 50, "M", 1.7m, "M", 1.5m),
        ])
        {
            WavelengthRange = "842-948 nm",
        },
        new("100GBASE-DR", PortForm.Duplex, Clause(140), "C2", [s_1311], "C1", static () => PortLayouts.Duplex(s_1311),
            static () => OnSingleMode(500, "C1", 3.0m, "C1", 2.75m, cable: 0.5m))
        {
            WavelengthRange = "1304.5-1317.5 nm",
            Note = ReflectanceNote,
        },
        new("100GBASE-FR1", PortForm.Duplex, Clause(140), "C2", [s_1311], "C1", static () => PortLayouts.Duplex(s_1311),
            static () => OnSingleMode(2_000, "C1", 4.0m, "C1", 3.0m, cable: 0.5m))
        {
            Note = "With cable of 1.0 dB/km the standard names 1 km, for information (1 public source). " + ReflectanceNote,
        },
        new("100GBASE-LR1", PortForm.Duplex, Clause(140), "C2", [s_1311], "M", static () => PortLayouts.Duplex(s_1311),
            static () => OnSingleMode(10_000, "M", 6.3m, "M", 2.0m)),
    ];

    /// <summary>What a port with two wavelengths on each of its two fibres needs to be written down at all.</summary>
    private static Application TwoWavelengthDuplex() =>
        new("two-wavelength duplex", PortForm.Duplex, "common practice, no standard", "P", [s_850, s_910], "P",
            static () => PortLayouts.TwoWayDuplex(s_850, s_910), static () => [])
        {
            Note = "A sends 850 nm and receives 910 nm, B sends 910 nm and receives 850 nm: read the data sheet of the port. No limits are on record.",
        };

    /// <summary>70 m and 1.8 dB on OM3, 100 m and 1.9 dB on OM4 and OM5: the figures of 25 and 50 Gbit/s a lane.</summary>
    private static FibreLimit[] SeventyHundred() =>
    [
        On("OM3", 70, "M", 1.8m, "M", 1.5m),
        On("OM4", 100, "C1", 1.9m, "C1", 1.5m, "M"),
        On("OM5", 100, "M", 1.9m, "M", 1.5m),
    ];

    private static FibreLimit[] TenGigabitShort() =>
    [
        On("OM3", 300, "C3", 2.6m, "C2", 1.5m, "M"),
        On("OM4", 400, "C3", 2.9m, "C1", 1.5m, "M"),
        On("OM5", 400, "C3", 2.9m, "M", 1.5m),
    ];

    private static FibreLimit LikeOm2(string fibre) =>
        On(fibre, 550, "M", 3.56m, "M", 1.5m, "M", "The clause ends at the fibre of OM2; its figures are kept for better ones.");

    private static FibreLimit[] GigabitLong(decimal multimodeLoss, decimal singleModeLoss)
    {
        const string conditioning = "Needs a mode-conditioning cord at each end (1 public source).";
        return
        [
            On("OM1", 550, "C1", multimodeLoss, "C1", 1.5m, note: conditioning),
            On("OM2", 550, "C1", multimodeLoss, "C1", 1.5m, note: conditioning),
            On("OM3", 550, "C1", multimodeLoss, "C1", 1.5m),
            .. OnSingleMode(5_000, "C1", singleModeLoss, "C1", 2.0m),
        ];
    }
}
