namespace PolarityMap.Core.Optics;

/// <content>
/// One fibre, both ways at two wavelengths. U meets D of the same family and reach; two alike put light on each other's
/// receiver at the wavelength that it does not hear.
/// </content>
internal static partial class Applications
{
    private static Application[] SingleFibre() =>
    [
        new("1000BASE-BX10-U", PortForm.Simplex, Clause(59), "M", [s_1310], "C2", static () => PortLayouts.SingleFibre(s_1310, new(1490), "C2"),
            static () => OnSingleMode(10_000, "M", 6.0m, "C1"))
        {
            WavelengthRange = "1260-1360 nm",
            Counterpart = "1000BASE-BX10-D",
        },
        new("1000BASE-BX10-D", PortForm.Simplex, Clause(59), "M", [new(1490)], "C2", static () => PortLayouts.SingleFibre(new(1490), s_1310, "C2"),
            static () => OnSingleMode(10_000, "M", 5.5m, "C1"))
        {
            WavelengthRange = "1480-1500 nm",
            Counterpart = "1000BASE-BX10-U",
        },
        .. TenGigabit(10),
        .. TenGigabit(20),
        .. TenGigabit(40),
    ];

    /// <summary>Both ends of one reach. The wavelength pair has three public sources, which end sends which has one.</summary>
    private static Application[] TenGigabit(int kilometres)
    {
        const string wavelengths = "C1, the pair of wavelengths 3";
        const string note = "The channel loss of this interface is not on record: take it from the data sheets of the ports.";
        string up = $"10GBASE-BR{kilometres}-U";
        string down = $"10GBASE-BR{kilometres}-D";
        return
        [
            new(up, PortForm.Simplex, Clause(158), "C1", [new(1270)], wavelengths, static () => PortLayouts.SingleFibre(new(1270), new(1330), wavelengths),
                () => OnSingleMode(kilometres * 1000, "M", null, ""))
            {
                WavelengthRange = "1260-1280 nm",
                Counterpart = down,
                Note = note,
            },
            new(down, PortForm.Simplex, Clause(158), "C1", [new(1330)], wavelengths, static () => PortLayouts.SingleFibre(new(1330), new(1270), wavelengths),
                () => OnSingleMode(kilometres * 1000, "M", null, ""))
            {
                WavelengthRange = "1320-1340 nm",
                Counterpart = up,
                Note = note,
            },
        ];
    }
}
