using PolarityMap.Core.Checks;
using PolarityMap.Core.Optics;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>The strand of a sheet that its legend takes as an example.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Colour">Its colour.</param>
/// <param name="IsFibre">True when the colour is that of a fibre, false when it only helps to follow the strand.</param>
internal readonly record struct SampleStrand(int Number, FibreColour Colour, bool IsFibre);

/// <summary>What stands at the foot of a sheet: colours and marks in use, the findings in words, the caution.</summary>
internal static class Legend
{
    public const string Caution =
        "Assume every fibre is live: its light is invisible. Never look into a fibre end, plug or port. Local codes and trained persons come first.";

    /// <summary>The caution in one line of a width.</summary>
    public static string ShortCaution(double width) =>
        SheetText.Width(Caution) <= width ? Caution : "Assume every fibre is live: never look into a fibre end, plug or port.";

    /// <summary>What a stranger to the drawing has to know, told by a strand of the sheet itself; of marks only what is on the sheet.</summary>
    private static string Reading(SampleStrand sample, SheetSigns signs, string of)
    {
        string words = $"{sample.Number} {sample.Colour.Code}: strand {sample.Number} of {of}, {ColourWords(sample.Colour)}"
            + (sample.IsFibre ? " as its fibre in its longest multi-fibre cable." : ".");
        if (signs.HasFlag(SheetSigns.Duplex))
            words += " A, B: duplex positions, A meets B.";
        if (signs.HasFlag(SheetSigns.Rings))
            words += " Ring: goes on at the ring of the same number.";
        if (signs.HasFlag(SheetSigns.Cuts))
            words += " → /2.C4: goes on on sheet 2, zone C4.";
        if (signs.HasFlag(SheetSigns.Wide))
            words += " Wide: has a finding.";
        if (signs.HasFlag(SheetSigns.Expected))
            words += " Dashed: where it should go.";
        if (signs.HasFlag(SheetSigns.Change))
            words += " Heavy frame: a part to change.";
        return words;
    }

    private const double MarkSize = 3.2;

    /// <summary>The marks of the legend's last line: the sign that asks for it, its word, the room it takes, and how it is drawn.</summary>
    private static readonly (SheetSigns Sign, string Word, double Width, Func<double, double, SceneElement> Mark)[] Entries =
    [
        (SheetSigns.Arrays, "key up", 15, static (x, y) => Marks.KeyUp(x, y + 0.8)),
        (SheetSigns.Turned, "key down", 19, static (x, y) => Marks.KeyDown(x, y - 0.8)),
        (SheetSigns.Errors, "error", 13.5, static (x, y) => Marks.Error(x, y, MarkSize)),
        (SheetSigns.Warnings, "warning", 17, static (x, y) => Marks.Warning(x, y, MarkSize)),
        (SheetSigns.OpenEnds, "open end", 18, static (x, y) => new Line(x, y - 1.4, x, y + 1.4, Palette.Ink, LineWidths.Frame)),
    ];

    private const int MostFindings = 6;

    /// <summary>The colour's name, and beside it the name that its letters come from where that is another.</summary>
    internal static string ColourWords(FibreColour colour) => (colour.Code, colour.Name) switch
    {
        ("GY", "slate") => "slate (grey)",
        ("PK", "rose") => "rose (pink)",
        ("TQ", "aqua") => "aqua (turquoise)",
        _ => colour.Name,
    };

    /// <summary>Height of the colours and marks where they have no place beside the title block.</summary>
    public const double KeysHeight = 25;

    /// <summary>Height of the foot of any sheet: of its reading and the caution, a line each at the least.</summary>
    public const double LeastFootHeight = 2 + (2 * Measures.LineOfText);

    /// <summary>Height of everything above the title block: findings, caution, and the keys on a narrow sheet.</summary>
    public static double FootHeight(SheetFormat format, SheetNotes notes) =>
        WordsHeight(SheetFrame.FreeOf(format).Width, notes) + (KeysFitBeside(format) ? 0 : KeysHeight);

    /// <summary>Height of the findings and the caution in a width.</summary>
    public static double WordsHeight(double width, SheetNotes notes) => 2 + (Lines(notes, width).Count * Measures.LineOfText);

    /// <summary>Where the colours and marks stand: beside the title block, or above it on a narrow sheet.</summary>
    public static Area KeysArea(SheetFormat format)
    {
        Area free = SheetFrame.FreeOf(format);
        return KeysFitBeside(format) ? SheetFrame.BesideTitleBlockOf(format) : free with { Y = free.Bottom - KeysHeight, Height = KeysHeight };
    }

    private static bool KeysFitBeside(SheetFormat format) => SheetFrame.BesideTitleBlockOf(format).Width > 80;

    /// <summary>Colours and marks, beside the title block.</summary>
    public static SceneGroup Keys(Area area, IReadOnlyCollection<FibreColour> colours, SheetSigns signs)
    {
        var elements = new List<SceneElement>();
        const double columnWidth = 26;
        double top = area.Y + 2.6;
        FibreColour[] ordered = [.. colours.Select(c => c with { Tracers = 0 }).Distinct().OrderBy(c => c.Number)];
        int tracers = colours.Count == 0 ? 0 : colours.Max(c => c.Tracers);
        int entries = ordered.Length + (tracers > 0 ? 1 : 0);
        int rows = Math.Max(1, (entries + 2) / 3);
        double rowHeight = Math.Min(3.7, (KeysHeight - 3) / (rows + 2));
        for (int i = 0; i < ordered.Length; i++)
        {
            double x = area.X + 1.5 + (i / rows * columnWidth);
            double y = top + (i % rows * rowHeight);
            FibreColour c = ordered[i];
            elements.Add(new StrandPath(Route.From(x, y).LineTo(x + 4.5, y), StrandColours.Drawn(c)));
            elements.Add(Label.CentredOn(x + 5.6, y, $"{c.Code} {ColourWords(c)}", CapHeights.Least + 0.2, Anchor.Start, Palette.Ink));
        }

        if (tracers > 0)
        {
            double x = area.X + 1.5 + (ordered.Length / rows * columnWidth);
            double y = top + (ordered.Length % rows * rowHeight);
            elements.Add(Marks.Ticks(x + 2.25, y, 1));
            elements.Add(Label.CentredOn(x + 5.6, y, "a tick: one tracer", CapHeights.Least + 0.2, Anchor.Start, Palette.Ink));
        }

        double line = top + (rows * rowHeight) + 0.3;
        bool light = signs.HasFlag(SheetSigns.Light);
        if (light)
        {
            elements.Add(Marks.ArrowRight(area.X + 4.5, line, Palette.Ink));
            elements.Add(Label.CentredOn(area.X + 6, line, "light from transmit to receive", CapHeights.Least + 0.2, Anchor.Start, Palette.Ink));
        }

        elements.Add(Label.CentredOn(area.X + (light ? 45 : 1.5), line, "Lines that cross do not touch.", CapHeights.Least + 0.2, Anchor.Start, Palette.Ink));
        line += rowHeight;
        double next = area.X + 1.5;
        foreach ((SheetSigns sign, string word, double width, Func<double, double, SceneElement> mark) in Entries)
        {
            if (!signs.HasFlag(sign))
                continue;
            elements.Add(mark(next + 1.6, line));
            elements.Add(Label.CentredOn(next + 4, line, word, CapHeights.Least + 0.2, Anchor.Start, Palette.Ink));
            next += width;
        }

        return new SceneGroup("legend", elements);
    }

    /// <summary>The findings in words and the caution, from <paramref name="area"/>'s top down.</summary>
    public static SceneGroup Foot(Area area, SheetNotes notes)
    {
        var elements = new List<SceneElement>();
        double baseline = area.Y + CapHeights.Strand + 0.8;
        foreach ((string line, Severity? severity) in Lines(notes, area.Width))
        {
            double middle = baseline - (CapHeights.Strand / 2);
            if (severity is { } s)
                elements.Add(s == Severity.Error ? Marks.Error(area.X + 3.1, middle, MarkSize) : Marks.Warning(area.X + 3.1, middle, MarkSize));
            elements.Add(new Label(area.X + (severity is null ? 1.5 : 5.6), baseline, line, CapHeights.Strand, Anchor.Start, Palette.Ink));
            baseline += Measures.LineOfText;
        }

        return new SceneGroup("notes", elements);
    }

    /// <summary>The lines of the foot; the first line of a finding has its severity, for the mark before it.</summary>
    private static List<(string Text, Severity? Mark)> Lines(SheetNotes notes, double width)
    {
        var lines = new List<(string, Severity?)>();
        IReadOnlyList<Finding> findings = notes.Findings;
        foreach (Finding finding in findings.Take(MostFindings))
        {
            List<string> words = SheetText.Wrapped($"{finding.Rule.Code} {finding.Rule.Title}: {finding.Message}", width - 8);
            for (int i = 0; i < words.Count; i++)
                lines.Add((words[i], i == 0 ? finding.Rule.Severity : null));
            for (int r = 0; r < finding.Remedies.Count; r++)
            {
                string head = finding.Remedies.Count == 1 ? "remedy" : $"remedy {r + 1} of {finding.Remedies.Count}, one alone is enough";
                lines.AddRange(SheetText.Wrapped($"{finding.Rule.Code} {head}: {finding.Remedies[r].Text}", width - 8).Select(l => (l, (Severity?)null)));
            }
        }

        if (findings.Count > MostFindings)
            lines.Add(($"and {findings.Count - MostFindings} more findings", null));
        foreach (string note in notes.Words)
            lines.AddRange(SheetText.Wrapped(note, width - 4).Select(l => (l, (Severity?)null)));
        string reading = Reading(notes.Sample, notes.Signs, notes.Of);
        if (findings.Take(MostFindings).Any(f => CordNames.AreIn(f.Message) || f.Remedies.Any(r => CordNames.AreIn(r.Text))))
            reading += $" {CordNames.Note}";
        lines.AddRange(SheetText.Wrapped(reading, width - 4).Select(l => (l, (Severity?)null)));
        lines.AddRange(SheetText.Wrapped(Caution, width - 4).Select(l => (l, (Severity?)null)));
        return lines;
    }
}
