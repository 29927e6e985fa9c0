using PolarityMap.Core.Optics;

namespace PolarityMap.Cli.Output;

/// <summary>An application for people: its port, what it allows on which fibre, what it breaks out to.</summary>
internal static class ApplicationText
{
    public static void Write(Core.Optics.Application application, CommandContext context)
    {
        TextWriter output = context.Out;
        var paint = new Paint(context.Colour);
        output.WriteLine(paint.Strong(application.Name));
        output.WriteLine($"  clause       {application.Source}");
        string range = application.WavelengthRange.Length > 0 ? $" ({application.WavelengthRange})" : "";
        output.WriteLine($"  wavelength   {string.Join(", ", application.Wavelengths)}{range}; {application.WavelengthConfidence}");
        if (application.Counterpart is { } counterpart)
            output.WriteLine($"  meets        {counterpart}");
        Head("Port");
        foreach (PortLayout layout in application.Layouts)
            WriteLayout(output, layout, application.Layouts.Count == 1);
        Head("What it allows");
        WriteLimits(output, application);
        Breakout[] breakouts = [.. Breakouts.All.Where(b => b.From == application.Name || b.To == application.Name)];
        if (breakouts.Length > 0)
        {
            Head("Breakouts");
            foreach (Breakout b in breakouts)
            {
                Wrapped.Write(output, $"{b.From} to {b.Groups} x {b.To}, {(b.LanesPerGroup == 1 ? "a lane each" : $"{b.LanesPerGroup} lanes each")}; {b.Source}", $"  {b.Name}  ");
            }
        }

        if (application.Note is { } note)
        {
            Head("Note");
            Wrapped.Write(output, note);
        }

        void Head(string text)
        {
            output.WriteLine();
            output.WriteLine(paint.Strong(text));
        }
    }

    private static void WriteLayout(TextWriter output, PortLayout layout, bool alone)
    {
        string face = PortWords.Face(layout.Form);
        string receptacles = layout.Receptacles == 1 ? face : $"{layout.Receptacles} receptacles, each {face}";
        string polish = layout.Angled is { } angled ? $"{(angled ? "angled" : "flat")} ({layout.AngledConfidence})" : "flat or angled, not settled";
        Wrapped.Write(output, $"{(alone ? "" : $"{layout.Name}: ")}{receptacles}, {polish}");
        foreach ((string word, string positions) in PortWords.Uses(layout))
            Wrapped.Write(output, positions, $"    {word,-10} ");
        Wrapped.Write(output, $"own positions, seen at the port with the key up; {layout.PositionsSource}", "    ");
    }

    private static void WriteLimits(TextWriter output, Core.Optics.Application application)
    {
        IReadOnlyList<FibreLimit> limits = application.Limits(LimitProfile.Default);
        if (limits.Count == 0)
        {
            Wrapped.Write(output, "Nothing is on record.");
            return;
        }

        int width = Alike(limits).Max(a => string.Join(", ", a.Select(l => l.Fibre)).Length);
        foreach (IGrouping<FibreLimit, FibreLimit> alike in Alike(limits))
            WriteLimit(output, alike, "", width);
        foreach (IGrouping<string, LimitProfile> alike in LimitProfile.All.GroupBy(p => string.Join(' ', Differing(application, p)), StringComparer.Ordinal))
        {
            string by = $"by {string.Join(", ", alike.Select(p => p.Name))}: ";
            foreach (IGrouping<FibreLimit, FibreLimit> rows in Alike(Differing(application, alike.First())))
                WriteLimit(output, rows, by, width);
        }
    }

    /// <summary>The limits of a profile that are not those of the default one.</summary>
    private static IEnumerable<FibreLimit> Differing(Core.Optics.Application application, LimitProfile profile) =>
        application.Limits(profile).Where(l => application.Limit(LimitProfile.Default, l.Fibre)?.Loss != l.Loss);

    /// <summary>Limits that differ in nothing but the class of fibre, as those of single-mode do.</summary>
    private static IEnumerable<IGrouping<FibreLimit, FibreLimit>> Alike(IEnumerable<FibreLimit> limits) => limits.GroupBy(l => l with { Fibre = "" });

    private static void WriteLimit(TextWriter output, IGrouping<FibreLimit, FibreLimit> alike, string by, int width)
    {
        FibreLimit limit = alike.Key;
        var words = new List<string>
        {
            limit.Distance is { } distance ? $"{distance} ({limit.DistanceConfidence})" : "distance not on record",
            limit.Loss is { } loss ? $"{loss} ({limit.LossConfidence})" : "loss not on record",
        };
        if (limit.ConnectionShare is { } share)
            words.Add($"of it {share} for matings and splices ({limit.ConnectionShareConfidence})");
        if (limit.AssumedCable is { } cable)
            words.Add($"for cable of at most {cable} (1 public source)");
        if (limit.LeastLoss is { } least)
            words.Add($"at least {least} ({limit.LeastLossConfidence})");
        string text = by + string.Join(", ", words);
        Wrapped.Write(output, limit.Note is { } note ? $"{text}. {note}" : text, $"  {string.Join(", ", alike.Select(l => l.Fibre)).PadRight(width)}  ");
    }
}
