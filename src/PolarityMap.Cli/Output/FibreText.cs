using System.Globalization;
using PolarityMap.Core.Budget;
using PolarityMap.Core.Optics;

namespace PolarityMap.Cli.Output;

/// <summary>A class of fibre for people: its limits by each profile, its delay, and how far which application goes on it.</summary>
internal static class FibreText
{
    public static void Write(FibreClass fibre, CommandContext context)
    {
        TextWriter output = context.Out;
        var paint = new Paint(context.Colour);
        output.WriteLine(paint.Strong(fibre.Name));
        output.WriteLine($"  core         {CoreWords(fibre)}");
        if (fibre.ModalBandwidth.Length > 0)
            Wrapped.Write(output, fibre.ModalBandwidth, "  bandwidth    ");
        Wrapped.Write(output, fibre.Source, "  source       ");
        foreach (Wavelength w in LimitRows.Columns(fibre))
        {
            Delay metre = Delay.Over(Length.FromMillimetres(1000), fibre.GroupIndex(w));
            output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"  group index  {fibre.GroupIndex(w)} at {w}, {metre.Nanoseconds:0.000} ns/m; {FibreClass.GroupIndexConfidence}"));
        }

        output.WriteLine();
        output.WriteLine(paint.Strong("Most that cable of this class may lose"));
        foreach (LimitProfile profile in LimitProfile.All)
        {
            foreach (LimitRow row in LimitRows.Of(profile, fibre))
                Wrapped.Write(output, row.Origin, $"  {profile.Name,-15}{row.Wavelength,-8}{row.Printed,10}  ");
        }

        output.WriteLine();
        output.WriteLine(paint.Strong("Applications on it"));
        foreach (Core.Optics.Application application in Core.Optics.Application.All)
        {
            if (application.Limit(LimitProfile.Default, fibre.Name) is not { } limit)
                continue;
            string distance = limit.Distance is { } d ? $"{d} ({limit.DistanceConfidence})" : "distance not on record";
            string loss = limit.Loss is { } l ? $"{l} ({limit.LossConfidence})" : "loss not on record";
            string other = application.Limit(LimitProfile.All[^1], fibre.Name) is { } tia && tia.Loss != limit.Loss ? $"; {LimitProfile.All[^1].Name}: {tia.Loss} ({tia.LossConfidence})" : "";
            Wrapped.Write(output, loss + other, $"  {application.Name,-18}{distance,-34}", 120);
        }
    }

    public static string CoreWords(FibreClass fibre) => fibre.Core switch
    {
        FibreCore.Multimode62 => "multimode, 62.5/125 um",
        FibreCore.Multimode50 => "multimode, 50/125 um",
        _ => "single-mode, about 9/125 um",
    };
}
