namespace PolarityMap.Core.Optics;

/// <content>Two fibres, one each way, with four wavelengths on each.</content>
internal static partial class Applications
{
    private static Application[] WavelengthMultiplexed() =>
    [
        new("40GBASE-LR4", PortForm.Duplex, Clause(87), "C2", Coarse(), "C1", static () => PortLayouts.Duplex(null),
            static () => OnSingleMode(10_000, "C1", 6.7m, "C1", 2.0m, cable: 0.4m))
        {
            Note = "With cable of 0.5 dB/km 8 km, of 1.0 dB/km 4 km, for information (1 public source).",
        },
        new("100GBASE-LR4", PortForm.Duplex, Clause(88), "C2", Dense(), "C2", static () => PortLayouts.Duplex(null),
            static () => OnSingleMode(10_000, "M", 6.3m, "M", 2.0m)),
        new("200GBASE-FR4", PortForm.Duplex, Clause(122), "C1", Coarse(), "M", static () => PortLayouts.Duplex(null),
            static () => OnSingleMode(2_000, "M", 4.0m, "M", 3.0m, cable: 0.5m))
        {
            Note = ReflectanceNote,
        },
        new("200GBASE-LR4", PortForm.Duplex, Clause(122), "C1", Dense(), "M", static () => PortLayouts.Duplex(null),
            static () => OnSingleMode(10_000, "M", 6.3m, "M", 2.0m)),
        new("400GBASE-FR4", PortForm.Duplex, Clause(151), "C1", Coarse(), "C1", static () => PortLayouts.Duplex(null),
            static () => OnSingleMode(2_000, "C1", 4.0m, "C1", 3.0m, cable: 0.5m))
        {
            Note = ReflectanceNote,
        },
        new("400GBASE-LR4-6", PortForm.Duplex, Clause(151), "C1", Coarse(), "C1", static () => PortLayouts.Duplex(null),
            static () => OnSingleMode(6_000, "C1", 5.8m, "C1"))
        {
            Note = "Often called 400GBASE-LR4, which is no name of IEEE 802.3. The 10 km interface of that name is 400G-LR4-10.",
        },
        new("400G-LR4-10", PortForm.Duplex, "MSA, not IEEE", "C1", Coarse(), "C1", static () => PortLayouts.Duplex(null),
            static () => OnSingleMode(10_000, "C1", 6.3m, "C1"))
        {
            Note = "Often called 400GBASE-LR4, which is no name of IEEE 802.3. The interface of IEEE 802.3 is 400GBASE-LR4-6, 6 km.",
        },
    ];

    /// <summary>The four of the wide grid.</summary>
    private static Wavelength[] Coarse() => [new(1271), new(1291), new(1311), new(1331)];

    /// <summary>The four of the narrow grid.</summary>
    private static Wavelength[] Dense() => [new(1295.56m), new(1300.05m), new(1304.58m), new(1309.14m)];
}
