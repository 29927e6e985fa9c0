namespace PolarityMap.Core.Optics;

/// <summary>
/// An interface of the trade, such as <c>400GBASE-DR4</c>: where its port sends and receives, and what distance and loss
/// it allows on which fibre. The tables are data with the confidence of every figure. A port's layouts and limits are built
/// when they are first asked for.
/// </summary>
public sealed class Application
{
    private static Application[]? s_all;

    private static string[]? s_names;

    private static Dictionary<string, Application>? s_byName;

    private readonly Func<PortLayout[]> _makeLayouts;

    private readonly Func<FibreLimit[]> _makeLimits;

    private PortLayout[]? _layouts;

    private FibreLimit[]? _limits;

    private FibreLimit[]? _tiaLimits;

    internal Application(
        string name,
        PortForm form,
        string clause,
        string clauseCode,
        Wavelength[] wavelengths,
        string wavelengthCode,
        Func<PortLayout[]> layouts,
        Func<FibreLimit[]> limits)
    {
        Name = name;
        Form = form;
        Clause = clause;
        ClauseConfidence = Confidence.Parse(clauseCode);
        Wavelengths = wavelengths;
        WavelengthConfidence = Confidence.Parse(wavelengthCode);
        _makeLayouts = layouts;
        _makeLimits = limits;
    }

    /// <summary>Every application: duplex, then single-fibre, then arrays, each about by age and rate.</summary>
    public static IReadOnlyList<Application> All => s_all ??= Applications.Rows();

    /// <summary>The names of <see cref="All"/>, in its order.</summary>
    public static IReadOnlyList<string> Names => s_names ??= [.. All.Select(a => a.Name)];

    /// <summary>The name that documents use. IEEE's own where it is IEEE's.</summary>
    public string Name { get; }

    /// <summary>The form of its port in the default layout, known without building the layouts.</summary>
    public PortForm Form { get; }

    /// <summary>Where it is specified, such as <c>IEEE 802.3 clause 86</c> or <c>MSA, not IEEE</c>.</summary>
    public string Clause { get; }

    /// <summary>How well <see cref="Clause"/> is attested.</summary>
    public Confidence ClauseConfidence { get; }

    /// <summary>The nominal wavelengths it sends: one, or all that share a fibre or a pair.</summary>
    public IReadOnlyList<Wavelength> Wavelengths { get; }

    /// <summary>How well <see cref="Wavelengths"/> are attested.</summary>
    public Confidence WavelengthConfidence { get; }

    /// <summary>The range that a transmitter may lie in, such as <c>840-860 nm</c>; empty where none is on record.</summary>
    public string WavelengthRange { get; internal init; } = "";

    /// <summary>The ways in which its port is built, the default first.</summary>
    public IReadOnlyList<PortLayout> Layouts => _layouts ??= _makeLayouts();

    /// <summary>Name of the application that the far end must have; null where it meets itself.</summary>
    public string? Counterpart { get; internal init; }

    /// <summary>True where several lanes each way go side by side on their own fibres, through an array connector.</summary>
    public bool IsParallel => Form.IsArray();

    /// <summary>True where a fibre carries light both ways.</summary>
    public bool LanesAreTwoWay => Layouts[0].Lanes[0].Use == LaneUse.Both;

    /// <summary>True where several wavelengths go the same way on one fibre (LR4, FR4).</summary>
    public bool IsWavelengthMultiplexed => Wavelengths.Count > 1 && !LanesAreTwoWay;

    /// <summary>The clause with how well it is attested, in words.</summary>
    public string Source => $"{Clause}; {ClauseConfidence}";

    /// <summary>What a reader of a result has to know besides; null for nothing.</summary>
    public string? Note { get; internal init; }

    /// <summary>Builds the rows that TIA-568.3 gives instead of IEEE 802.3's; null where it gives the same.</summary>
    internal Func<FibreLimit[]>? MakeTiaLimits { get; init; }

    /// <summary>The application of that very name, or null.</summary>
    public static Application? Find(string name)
    {
        if (s_byName is not { } byName)
        {
            byName = new Dictionary<string, Application>(All.Count, StringComparer.Ordinal);
            foreach (Application application in All)
                byName.Add(application.Name, application);
            s_byName = byName;
        }

        return byName.GetValueOrDefault(name);
    }

    /// <summary>The layout of that very name, or null.</summary>
    public PortLayout? FindLayout(string name)
    {
        foreach (PortLayout layout in Layouts)
        {
            if (string.Equals(layout.Name, name, StringComparison.Ordinal))
                return layout;
        }

        return null;
    }

    /// <summary>What it allows, one row for each class of fibre that it may run on; empty where nothing is on record.</summary>
    public IReadOnlyList<FibreLimit> Limits(LimitProfile profile) =>
        profile.IsTia && MakeTiaLimits is { } make ? _tiaLimits ??= make() : _limits ??= _makeLimits();

    /// <summary>The row for a class of fibre, or null where the application does not run on it.</summary>
    public FibreLimit? Limit(LimitProfile profile, string fibre)
    {
        foreach (FibreLimit limit in Limits(profile))
        {
            if (string.Equals(limit.Fibre, fibre, StringComparison.Ordinal))
                return limit;
        }

        return null;
    }

    /// <inheritdoc/>
    public override string ToString() => Name;
}
