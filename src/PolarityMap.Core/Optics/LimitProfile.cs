namespace PolarityMap.Core.Optics;

/// <summary>
/// A named set of limits: what a cable may lose per kilometre, a mating, a splice. Which limits hold is a matter of the
/// standard a job is built to, so that the profile is the document's choice and never a constant of a rule. The loss that
/// an application allows is asked of <see cref="Application.Limits"/> with the profile.
/// </summary>
public sealed class LimitProfile
{
    private const decimal NearestTo953 = 5;

    private static LimitProfile[]? s_all;

    private static string[]? s_names;

    private readonly Edition _edition;

    private LimitProfile(Edition edition, string name, string meaning, string source)
    {
        _edition = edition;
        Name = name;
        Meaning = meaning;
        Source = source;
    }

    private enum Edition
    {
        Iso,
        TiaD,
        TiaE,
    }

    private enum Window
    {
        At850,
        At953,
        At1300,
        At1550,
    }

    /// <summary>Every profile, the default first.</summary>
    public static IReadOnlyList<LimitProfile> All => s_all ??=
    [
        new(Edition.Iso, "ISO/IEC 11801",
            "channel losses of IEEE 802.3, cable of ISO/IEC 11801-1, reference plugs of ISO/IEC 14763-3",
            "IEEE Std 802.3; ISO/IEC 11801-1; ISO/IEC 14763-3 edition 2 with corrigendum 1 (2015)"),
        new(Edition.TiaD, "TIA-568.3-D",
            "channel losses, cable and reference plugs of the 2016 edition of TIA-568.3",
            "ANSI/TIA-568.3-D (October 2016)"),
        new(Edition.TiaE, "TIA-568.3-E",
            "channel losses, cable and reference plugs of the 2022 edition of TIA-568.3",
            "ANSI/TIA-568.3-E (September 2022)"),
    ];

    /// <summary>The names of <see cref="All"/>, in its order.</summary>
    public static IReadOnlyList<string> Names => s_names ??= [.. All.Select(p => p.Name)];

    /// <summary>The profile of a document that names none.</summary>
    public static LimitProfile Default => All[0];

    /// <summary>The profile's name, such as <c>TIA-568.3-E</c>.</summary>
    public string Name { get; }

    /// <summary>What it limits, in words.</summary>
    public string Meaning { get; }

    /// <summary>The documents behind it.</summary>
    public string Source { get; }

    /// <summary>The most that a mated pair of ordinary connectors may lose, single-fibre or array.</summary>
    public Decibel MatingMax => MatingRow.Value;

    /// <summary>The most that a splice may lose, fusion or mechanical.</summary>
    public Decibel SpliceMax => SpliceRow.Value;

    /// <summary><see cref="MatingMax"/> with what it rests on.</summary>
    public (Decibel Value, Confidence Confidence, string From) MatingRow =>
        (new(0.75m), Confidence.Parse("C4"), Standard + ", mated pair of any grade");

    /// <summary><see cref="SpliceMax"/> with what it rests on.</summary>
    public (Decibel Value, Confidence Confidence, string From) SpliceRow =>
        (new(0.3m), Confidence.Parse("C3"), Standard + ", fusion or mechanical splice");

    /// <summary>The document that the cable and connection limits are of.</summary>
    private string Standard => IsTia ? Source : "ISO/IEC 11801-1";

    /// <summary>True where the application tables of TIA-568.3 take the place of IEEE 802.3's.</summary>
    internal bool IsTia => _edition != Edition.Iso;

    /// <summary>The profile of that very name, or null.</summary>
    public static LimitProfile? Find(string name)
    {
        foreach (LimitProfile profile in All)
        {
            if (string.Equals(profile.Name, name, StringComparison.Ordinal))
                return profile;
        }

        return null;
    }

    /// <summary>
    /// The most that a reference plug mated with an ordinary plug may lose: what each end of a link under test may add
    /// when it is measured with reference cords.
    /// </summary>
    public Decibel ReferencePlug(bool multimode) => ReferencePlugRow(multimode).Value;

    /// <summary><see cref="ReferencePlug"/> with what it rests on.</summary>
    public (Decibel Value, Confidence Confidence, string From) ReferencePlugRow(bool multimode)
    {
        (decimal mm, decimal sm, string from) = _edition switch
        {
            Edition.TiaD => (0.30m, 0.50m, Source),
            Edition.TiaE => (0.50m, 0.50m, Source),
            _ => (0.50m, 0.75m, "ISO/IEC 14763-3 edition 2 with corrigendum 1 (2015)"),
        };
        return (new(multimode ? mm : sm), Confidence.Parse("C1"), from + ", reference plug to ordinary plug");
    }

    /// <summary>
    /// The most that a kilometre of cabled <paramref name="fibre"/> may lose at <paramref name="wavelength"/>, from the
    /// tabled column: below 1000 nm the 850 nm one (the 953 nm one only where it is tabled and the wavelength is within
    /// 5 nm of it, so that a wavelength between the two takes the larger figure), from 1260 to 1400 nm the 1300 or 1310 nm
    /// one, above 1400 nm the 1550 nm one. Between 1000 and 1260 nm, and where the fibre has no such column, the larger
    /// of the neighbouring columns that it has.
    /// </summary>
    public Attenuation AttenuationOf(FibreClass fibre, Wavelength wavelength) => AttenuationRow(fibre, wavelength).Value;

    /// <summary><see cref="AttenuationOf"/> with what it rests on.</summary>
    public (Attenuation Value, Confidence Confidence, string From) AttenuationRow(FibreClass fibre, Wavelength wavelength)
    {
        Window window = Choose(fibre, wavelength.Nanometres);
        (decimal limit, string code) = Cell(fibre, window);
        return (new(limit), Confidence.Parse(code), $"{Standard}, {fibre.Name}, {Column(fibre, window)} nm column");
    }

    private Window Choose(FibreClass fibre, decimal nanometres)
    {
        // Single-mode has no column below 1310 nm and multimode none above 1300 nm: the nearest stands in.
        if (!fibre.IsMultimode)
            return nanometres > 1400 ? Window.At1550 : Window.At1300;
        if (nanometres >= 1260)
            return Window.At1300;
        if (nanometres >= 1000)
            return Cell(fibre, Window.At850).Limit >= Cell(fibre, Window.At1300).Limit ? Window.At850 : Window.At1300;
        return fibre.Name == "OM5" && Math.Abs(nanometres - 953) <= NearestTo953 ? Window.At953 : Window.At850;
    }

    /// <summary>One cell of the table of attenuation. Asked only for columns that the fibre has.</summary>
    private (decimal Limit, string Code) Cell(FibreClass fibre, Window window) => (fibre.Name, window) switch
    {
        ("OM1" or "OM2", Window.At850) => (3.5m, "C2"),
        ("OM3", Window.At850) => IsTia ? (3.0m, "M") : (3.5m, "C3"),

        // The public source speaks of edition D.
        ("OM4", Window.At850) => IsTia ? (3.0m, _edition == Edition.TiaD ? "C1" : "M") : (3.5m, "C2"),
        ("OM5", Window.At850) => (3.0m, "C2"),
        ("OM5", Window.At953) => (2.3m, "M"),
        ("OM1" or "OM2" or "OM5", Window.At1300) => (1.5m, "C2"),
        ("OM3" or "OM4", Window.At1300) => (1.5m, "M"),
        ("OS1" or "OS1a", Window.At1300 or Window.At1550) => (1.0m, "C2"),

        // The edition before D had 0.5; the public sources for 0.4 speak of ISO/IEC 11801-1 and of edition E.
        ("OS2", Window.At1300 or Window.At1550) => (0.4m, _edition == Edition.TiaD ? "M" : "C3"),
        _ => throw new ArgumentOutOfRangeException(nameof(fibre), fibre.Name, "no such column"),
    };

    private static string Column(FibreClass fibre, Window window) => window switch
    {
        Window.At850 => "850",
        Window.At953 => "953",
        Window.At1300 => fibre.IsMultimode ? "1300" : "1310",
        _ => "1550",
    };
}
