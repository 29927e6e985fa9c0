namespace PolarityMap.Core.Optics;

/// <summary>
/// The table of applications and the short words its rows are written in. Codes are those of <see cref="Confidence.Parse"/>.
/// Where public sources were counted for some figures of a row only, the others are from memory.
/// Left out: 25GBASE-BR and 50GBASE-BR, whose wavelengths are not on record, and the rows for multimode fibre older than OM1
/// and OM2, which has no class name.
/// </summary>
internal static partial class Applications
{
    private const string ReflectanceNote =
        "The limit also depends on the number and reflectance of the connections, which is not reckoned here.";

    private static readonly Wavelength s_850 = new(850);

    private static readonly Wavelength s_910 = new(910);

    private static readonly Wavelength s_1310 = new(1310);

    private static readonly Wavelength s_1311 = new(1311);

    /// <summary>Every row, in the order of the partial files.</summary>
    public static Application[] Rows() => [.. Duplex(), .. WavelengthMultiplexed(), TwoWavelengthDuplex(), .. SingleFibre(), .. Multimode(), .. SingleModeArrays()];

    private static string Clause(int number) => $"IEEE 802.3 clause {number}";

    /// <summary>A row for one class of fibre. The share takes the code of the loss unless it has its own.</summary>
    private static FibreLimit On(
        string fibre, int metres, string distanceCode, decimal loss, string lossCode, decimal? share = null, string? shareCode = null, string? note = null) =>
        new(fibre, Metres(metres), new Decibel(loss), share is { } s ? new Decibel(s) : null, Confidence.Parse(distanceCode), Confidence.Parse(lossCode))
        {
            ConnectionShareConfidence = share is null ? default : Confidence.Parse(shareCode ?? lossCode),
            Note = note,
        };

    /// <summary>The same row for OS1, OS1a and OS2: the standards give one figure for single-mode fibre.</summary>
    /// <param name="metres">Distance.</param>
    /// <param name="distanceCode">Its code.</param>
    /// <param name="loss">Loss in decibels, null where it is not on record.</param>
    /// <param name="lossCode">Its code.</param>
    /// <param name="share">Connection share in decibels.</param>
    /// <param name="shareCode">Its code, that of the loss unless given.</param>
    /// <param name="cable">Greatest attenuation of the cable that the figures are given for, dB/km.</param>
    /// <param name="least">Least loss in decibels, from memory.</param>
    private static FibreLimit[] OnSingleMode(
        int metres,
        string distanceCode,
        decimal? loss,
        string lossCode,
        decimal? share = null,
        string? shareCode = null,
        decimal? cable = null,
        decimal? least = null)
    {
        var row = new FibreLimit(
            "OS1",
            Metres(metres),
            loss is { } l ? new Decibel(l) : null,
            share is { } s ? new Decibel(s) : null,
            Confidence.Parse(distanceCode),
            Confidence.Parse(lossCode))
        {
            ConnectionShareConfidence = share is null ? default : Confidence.Parse(shareCode ?? lossCode),
            AssumedCable = cable is { } c ? new Attenuation(c) : null,
            LeastLoss = least is { } d ? new Decibel(d) : null,
            LeastLossConfidence = least is null ? default : Confidence.Parse("M"),
        };
        return [row, row with { Fibre = "OS1a" }, row with { Fibre = "OS2" }];
    }

    private static Length Metres(int metres) => Length.FromMillimetres(metres * 1000L);
}
