using PolarityMap.Core.Optics;

namespace PolarityMap.Cli.Output;

/// <summary>One tabled figure with what it rests on.</summary>
/// <param name="What">What it is of, such as <c>splice</c>.</param>
/// <param name="Fibre">The class of fibre, or null where it holds for all.</param>
/// <param name="Wavelength">The wavelength, or null where it holds at all.</param>
/// <param name="Value">The number.</param>
/// <param name="Unit"><c>dB</c> or <c>dB/km</c>.</param>
/// <param name="Confidence">How well it is attested.</param>
/// <param name="From">Where it comes from.</param>
internal sealed record LimitRow(string What, string? Fibre, Wavelength? Wavelength, decimal Value, string Unit, Confidence Confidence, string From)
{
    /// <summary>The number with its unit.</summary>
    public string Printed => Unit == "dB" ? new Decibel(Value).ToString() : new Attenuation(Value).ToString();

    /// <summary>What it rests on and the document it is from; the tables' headings say the rest.</summary>
    public string Origin => $"{Confidence}; {From.Split(',')[0]}";

    /// <summary>What it is of, with fibre and wavelength.</summary>
    public string Subject => string.Join(' ', new[] { What, Fibre, Wavelength?.ToString() }.OfType<string>());
}

/// <summary>The tables of limits and estimates, row by row.</summary>
internal static class LimitRows
{
    private static readonly decimal[] s_multimode = [850, 1300];

    private static readonly decimal[] s_widebandMultimode = [850, 953, 1300];

    private static readonly decimal[] s_singleMode = [1310, 1550];

    /// <summary>The wavelengths that a class of fibre has columns for.</summary>
    public static IEnumerable<Wavelength> Columns(FibreClass fibre) =>
        (!fibre.IsMultimode ? s_singleMode : fibre.Name == "OM5" ? s_widebandMultimode : s_multimode).Select(n => new Wavelength(n));

    /// <summary>Every limit of a profile: mating, splice, reference plugs, attenuation of each class.</summary>
    public static IEnumerable<LimitRow> Of(LimitProfile profile)
    {
        yield return Loss("mating", profile.MatingRow);
        yield return Loss("splice", profile.SpliceRow);
        yield return Loss("reference plug, multimode", profile.ReferencePlugRow(multimode: true));
        yield return Loss("reference plug, single-mode", profile.ReferencePlugRow(multimode: false));
        foreach (FibreClass fibre in FibreClass.All)
        {
            foreach (LimitRow row in Of(profile, fibre))
                yield return row;
        }
    }

    /// <summary>The attenuation limits of one class.</summary>
    public static IEnumerable<LimitRow> Of(LimitProfile profile, FibreClass fibre)
    {
        foreach (Wavelength wavelength in Columns(fibre))
        {
            (Attenuation value, Confidence confidence, string from) = profile.AttenuationRow(fibre, wavelength);
            yield return new LimitRow("cable", fibre.Name, wavelength, value.DecibelPerKm, "dB/km", confidence, from);
        }
    }

    /// <summary>What good work is expected to lose.</summary>
    public static IEnumerable<LimitRow> Estimates()
    {
        yield return Loss("mating, single fibre", LossEstimates.MatingRow(array: false));
        yield return Loss("mating, array", LossEstimates.MatingRow(array: true));
        yield return Loss("splice, multimode", LossEstimates.SpliceRow(multimode: true));
        yield return Loss("splice, single-mode", LossEstimates.SpliceRow(multimode: false));
        foreach ((string kind, string fibre, decimal[] wavelengths) in new[] { ("cable, multimode", "OM4", s_multimode), ("cable, single-mode", "OS2", s_singleMode) })
        {
            foreach (decimal wavelength in wavelengths)
            {
                (Attenuation value, Confidence confidence, string from) = LossEstimates.AttenuationRow(FibreClass.Find(fibre)!, new(wavelength));
                yield return new LimitRow(kind, null, new(wavelength), value.DecibelPerKm, "dB/km", confidence, from);
            }
        }
    }

    private static LimitRow Loss(string what, (Decibel Value, Confidence Confidence, string From) row) =>
        new(what, null, null, row.Value.Value, "dB", row.Confidence, row.From);
}
