namespace PolarityMap.Core.Optics;

/// <summary>The cores that do not join without harm: light that steps from one to another is lost or badly coupled.</summary>
public enum FibreCore
{
    /// <summary>Multimode, 62.5/125 micrometres.</summary>
    Multimode62,

    /// <summary>Multimode, 50/125 micrometres.</summary>
    Multimode50,

    /// <summary>Single-mode, about 9/125 micrometres.</summary>
    SingleMode,
}

/// <summary>
/// A class of cabled fibre as ISO/IEC 11801-1 names it. The two multimode fibres that are older than these classes
/// (62.5/125 of 160 MHz.km and 50/125 of 400 MHz.km) are left out: they have neither a class name nor a cabled
/// attenuation on record.
/// </summary>
public sealed class FibreClass
{
    private static FibreClass[]? s_all;

    private static string[]? s_names;

    private FibreClass(string name, FibreCore core, int rank, string modalBandwidth, string source)
    {
        Name = name;
        Core = core;
        Rank = rank;
        ModalBandwidth = modalBandwidth;
        Source = source;
    }

    /// <summary>Every class, the multimode ones first, each family from its lowest to its highest rank.</summary>
    public static IReadOnlyList<FibreClass> All => s_all ??= Table();

    /// <summary>The names of <see cref="All"/>, in its order.</summary>
    public static IReadOnlyList<string> Names => s_names ??= [.. All.Select(f => f.Name)];

    /// <summary>The standard's name, such as <c>OM4</c>.</summary>
    public string Name { get; }

    /// <summary>Its core.</summary>
    public FibreCore Core { get; }

    /// <summary>True for both multimode cores.</summary>
    public bool IsMultimode => Core != FibreCore.SingleMode;

    /// <summary>Its place among the classes of the same core: the higher the better. Says nothing across cores.</summary>
    public int Rank { get; }

    /// <summary>The least modal bandwidth of a multimode class in words; empty for single-mode.</summary>
    public string ModalBandwidth { get; }

    /// <summary>Where its figures come from and how well they are attested.</summary>
    public string Source { get; }

    /// <summary>What the group indices rest on.</summary>
    public static Confidence GroupIndexConfidence => new(ConfidenceKind.Confirmed, 1);

    /// <summary>The class of that very name, or null.</summary>
    public static FibreClass? Find(string name)
    {
        foreach (FibreClass fibre in All)
        {
            if (string.Equals(fibre.Name, name, StringComparison.Ordinal))
                return fibre;
        }

        return null;
    }

    /// <summary>
    /// The group index at the tabled wavelength nearest to <paramref name="wavelength"/>: 850 or 1300 nm for multimode,
    /// 1310 or 1550 nm for single-mode. Delay in nanoseconds per metre is the index divided by 0.299792458. Makers' figures
    /// differ in the third decimal. One public source.
    /// </summary>
    public decimal GroupIndex(Wavelength wavelength) => Core switch
    {
        FibreCore.Multimode62 => wavelength.Nanometres < (850 + 1300) / 2m ? 1.496m : 1.491m,
        FibreCore.Multimode50 => wavelength.Nanometres < (850 + 1300) / 2m ? 1.481m : 1.476m,
        _ => wavelength.Nanometres < (1310 + 1550) / 2m ? 1.4677m : 1.4682m,
    };

    /// <inheritdoc/>
    public override string ToString() => Name;

    private static FibreClass[] Table() =>
    [
        new("OM1", FibreCore.Multimode62, 1, "200 MHz.km at 850 nm, 500 MHz.km at 1300 nm",
            "ISO/IEC 11801-1, fibre A1b of IEC 60793-2-10; bandwidth 2 public sources"),
        new("OM2", FibreCore.Multimode50, 1, "500 MHz.km at 850 nm, 500 MHz.km at 1300 nm",
            "ISO/IEC 11801-1, fibre A1a.1 of IEC 60793-2-10; bandwidth 2 public sources"),
        new("OM3", FibreCore.Multimode50, 2, "1500 MHz.km at 850 nm (2000 with a laser), 500 MHz.km at 1300 nm",
            "ISO/IEC 11801-1, fibre A1a.2 of IEC 60793-2-10; bandwidth 2 public sources"),
        new("OM4", FibreCore.Multimode50, 3, "3500 MHz.km at 850 nm (4700 with a laser), 500 MHz.km at 1300 nm",
            "ISO/IEC 11801-1, fibre A1a.3 of IEC 60793-2-10; bandwidth 2 public sources"),
        new("OM5", FibreCore.Multimode50, 4, "3500 MHz.km at 850 nm (4700 with a laser), 2470 MHz.km at 953 nm (with a laser), 500 MHz.km at 1300 nm",
            "ISO/IEC 11801-1; bandwidth 2 public sources"),
        new("OS1", FibreCore.SingleMode, 1, "", "ISO/IEC 11801, the older class of indoor cable; 2 public sources"),
        new("OS1a", FibreCore.SingleMode, 2, "", "ISO/IEC 11801-1, indoor cable; 2 public sources"),
        new("OS2", FibreCore.SingleMode, 3, "", "ISO/IEC 11801-1, outside plant cable; 3 public sources"),
    ];
}
