namespace PolarityMap.Core.Optics;

/// <summary>
/// What good work is expected to lose, for estimates before anything is measured. Never limits: common practice, after the
/// public guidance of a training body (FOA).
/// </summary>
public static class LossEstimates
{
    /// <summary>Where the estimates come from.</summary>
    public const string Source = "FOA guidance for estimates, common practice";

    /// <summary>A mated pair: 0.3 dB for a single-fibre connector in good work, 0.75 dB for an array.</summary>
    public static Decibel Mating(bool array) => MatingRow(array).Value;

    /// <summary>A splice: 0.3 dB multimode, 0.15 dB single-mode.</summary>
    public static Decibel Splice(bool multimode) => SpliceRow(multimode).Value;

    /// <summary>
    /// Cable: multimode 3.0 dB/km below 1260 nm and 1.0 dB/km above, single-mode 0.4 dB/km up to 1400 nm and 0.3 dB/km
    /// above; the larger end where the guidance gives a range.
    /// </summary>
    public static Attenuation AttenuationOf(FibreClass fibre, Wavelength wavelength) => AttenuationRow(fibre, wavelength).Value;

    /// <summary><see cref="Mating"/> with what it rests on.</summary>
    public static (Decibel Value, Confidence Confidence, string From) MatingRow(bool array) =>
        (new(array ? 0.75m : 0.3m), Confidence.Parse("C1 P"), Source + (array ? ", array" : ", single-fibre connector, good work"));

    /// <summary><see cref="Splice"/> with what it rests on.</summary>
    public static (Decibel Value, Confidence Confidence, string From) SpliceRow(bool multimode) =>
        (new(multimode ? 0.3m : 0.15m), Confidence.Parse("C1 P"), Source + (multimode ? ", multimode splice" : ", single-mode splice"));

    /// <summary><see cref="AttenuationOf"/> with what it rests on.</summary>
    public static (Attenuation Value, Confidence Confidence, string From) AttenuationRow(FibreClass fibre, Wavelength wavelength)
    {
        (decimal value, string column) = (fibre.IsMultimode, wavelength.Nanometres) switch
        {
            (true, < 1260) => (3.0m, "multimode, 850 nm"),
            (true, _) => (1.0m, "multimode, 1300 nm"),
            (false, <= 1400) => (0.4m, "single-mode, 1310 nm"),
            _ => (0.3m, "single-mode, 1550 nm"),
        };
        return (new(value), Confidence.Parse("C2 P"), $"{Source}, {column}");
    }
}
