namespace PolarityMap.Core.Optics;

/// <content>Arrays on single-mode fibre.</content>
internal static partial class Applications
{
    private static Application[] SingleModeArrays() =>
    [
        new("200GBASE-DR4", PortForm.Array12, Clause(121), "C1", [s_1311], "M",
            static () => [FourLanes(s_1311, true, "M", FromMemory)], static () => OnSingleMode(500, "M", 3.0m, "M", 2.75m, cable: 0.5m))
        {
            WavelengthRange = "1304.5-1317.5 nm",
            Note = ReflectanceNote,
        },
        new("400GBASE-DR4", PortForm.Array12, Clause(124), "C1", [s_1311], "M",
            static () => [FourLanes(s_1311, true, "C2", FromMemory)], static () => OnSingleMode(500, "C3", 3.0m, "C1", 2.75m, "M", cable: 0.5m))
        {
            Note = ReflectanceNote,
        },
        new("400GBASE-DR4-2", PortForm.Array12, Clause(124), "C1", [s_1311], "M",
            static () => [FourLanes(s_1311, true, "M", FromMemory)], static () => OnSingleMode(2_000, "M", 4.0m, "M", 3.0m, cable: 0.5m))
        {
            Note = ReflectanceNote,
        },
        new("800GBASE-DR8", PortForm.Array16, Clause(124), "M", [s_1311], "M",
            static () => EightLanes(s_1311, "M"), static () => OnSingleMode(500, "C1", 3.0m, "C1", 2.75m, cable: 0.5m))
        {
            Note = "With cable of 1.0 dB/km the standard names 250 m, for information (1 public source). " + ReflectanceNote,
        },
        new("800GBASE-DR8-2", PortForm.Array16, Clause(124), "M", [s_1311], "M",
            static () => EightLanes(s_1311, "M"), static () => OnSingleMode(2_000, "M", 4.0m, "M", 3.0m, cable: 0.5m))
        {
            Note = ReflectanceNote,
        },
        new("100G PSM4", PortForm.Array12, "MSA, not IEEE", "M", [s_1310], "M",
            static () => [FourLanes(s_1310, true, "M", FromMemory)], static () => OnSingleMode(500, "M", 3.3m, "M")),
    ];
}
