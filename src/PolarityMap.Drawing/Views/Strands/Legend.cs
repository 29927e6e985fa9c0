using PolarityMap.Core.Checks;
using PolarityMap.Core.Optics;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>The strand of a sheet that its legend takes as an example.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Colour">Its colour.</param>
/// <param name="Cable">The cable in which it is the colour of its fibre; null where it only helps to follow the strand.</param>
internal readonly record struct SampleStrand(int Number, FibreColour Colour, string? Cable);

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
        string tracers = sample.Colour.Tracers switch { 0 => "", 1 => " with a tick", int n => $" with {n} ticks" };
        string words = $"{sample.Number} {sample.Colour.Code}: strand {sample.Number} of {of}, {ColourWords(sample.Colour)}{tracers} "
            + (sample.Cable is { } cable ? $"as its fibre in {cable}, its longest cable." : "to follow it by.");
        if (signs.HasFlag(SheetSigns.Duplex))
            words += " A, B: duplex positions, A meets B.";
        if (signs.HasFlag(SheetSigns.Rings))
            words += " Ring: goes on at the ring of its number.";
        if (signs.HasFlag(SheetSigns.Cuts))
            words += " → /2.C4: continues on sheet 2, zone C4; /2.C4 →: comes from there.";
        if (signs.HasFlag(SheetSigns.Wide))
            words += " Wide: has a finding.";
        if (signs.HasFlag(SheetSigns.Expected))
            words += " Dashed beside a strand: where it should go.";
        if (signs.HasFlag(SheetSigns.Change))
            words += " Heavy frame: a part to change.";
        return words;
    }

    private const double MarkSize = 3.2;

    private const double WordHeight = CapHeights.Least + 0.2;

    /// <summary>A mark of the legend.</summary>
    /// <param name="Sign">The sign that asks for it.</param>
    /// <param name="Word">Its word.</param>
    /// <param name="Width">The room that both take.</param>
    /// <param name="Mark">How it is drawn; null for words alone.</param>
    private sealed record Entry(SheetSigns Sign, string Word, double Width, Func<double, double, SceneElement>? Mark)
    {
        /// <summary>From the entry's left end to its word.</summary>
        public double Lead { get; init; } = 4;
    }

    /// <summary>How strands are to be read: a line of its own.</summary>
    private static readonly Entry[] Strands =
    [
        new(SheetSigns.Light, "light from transmit to receive", 43.5, static (x, y) => Marks.ArrowRight(x + 1.4, y, Palette.Ink)) { Lead = 4.5 },
        new(SheetSigns.Crossings, "Lines that cross do not touch.", 38, null) { Lead = 0 },
    ];

    /// <summary>The signs below it.</summary>
    private static readonly Entry[] Signs =
    [
        new(SheetSigns.Arrays, "key up", 15, static (x, y) => Marks.KeyUp(x, y + 0.8)),
        new(SheetSigns.Turned, "key down: plug turned over", 39, static (x, y) => Marks.KeyDown(x, y - 0.8)),
        new(SheetSigns.Pins, "guide pins", 18, static (x, y) => Marks.Pins(x, y)),
        new(SheetSigns.Holes, "pin holes", 17, static (x, y) => Marks.Holes(x, y)),
        new(SheetSigns.Errors, "error", 13.5, static (x, y) => Marks.Error(x, y, MarkSize)),
        new(SheetSigns.Warnings, "warning", 17, static (x, y) => Marks.Warning(x, y, MarkSize)),
        new(SheetSigns.Notes, "suspect, test", 22, static (x, y) => Marks.Note(x, y, MarkSize)),
        new(SheetSigns.OpenEnds, "open end", 18, static (x, y) => new Line(x, y - 1.4, x, y + 1.4, Palette.Ink, LineWidths.Frame)),
        new(SheetSigns.Rings, "goes on", 16, static (x, y) => new Circle(x, y, 1.1, Palette.Ink, LineWidths.Inner, Palette.Paper)),
        new(SheetSigns.Expected, "expected way", 26, static (x, y) => new SceneGroup(null,
        [
            new Curve(Route.From(x - 1, y).LineTo(x + 3.4, y), Palette.Ink, LineWidths.Outline, DashKind.ShortDashed), ExpectedPainter.Dot(new Point(x - 1, y)), ExpectedPainter.Dot(new Point(x + 3.4, y)),
        ])) { Lead = 6.6 },
        new(SheetSigns.LeftOut, "positions not shown", 32, static (x, y) => new SceneGroup(null, [.. LeftOut(x, y)])),
    ];

    /// <summary>The three dots where positions of an array are left out.</summary>
    internal static IEnumerable<Circle> LeftOut(double x, double y)
    {
        foreach (double offset in (double[])[-0.9, 0, 0.9])
            yield return new Circle(x, y + offset, 0.25, null, LineWidths.Leader, Palette.Ink);
    }

    private const int MostFindings = 8;

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
        List<Entry[]> lines = [.. LinesOf(Strands, signs, area.Width), .. LinesOf(Signs, signs, area.Width)];
        double rowHeight = Math.Min(3.7, (KeysHeight - 3) / (rows + Math.Max(2, lines.Count)));
        for (int i = 0; i < ordered.Length; i++)
        {
            double x = area.X + 1.5 + (i / rows * columnWidth);
            double y = top + (i % rows * rowHeight);
            FibreColour c = ordered[i];
            elements.Add(new StrandPath(Route.From(x, y).LineTo(x + 4.5, y), StrandColours.Drawn(c)));
            elements.Add(Label.CentredOn(x + 5.6, y, $"{c.Code} {ColourWords(c)}", WordHeight, Anchor.Start, Palette.Ink));
        }

        if (tracers > 0)
        {
            double x = area.X + 1.5 + (ordered.Length / rows * columnWidth);
            double y = top + (ordered.Length % rows * rowHeight);
            elements.Add(new StrandPath(Route.From(x, y).LineTo(x + 4.5, y), Palette.Paper));
            elements.Add(Marks.Ticks(x + 2.25, y, 1));
            elements.Add(Label.CentredOn(x + 5.6, y, "a tick: one tracer", WordHeight, Anchor.Start, Palette.Ink));
        }

        double line = top + (rows * rowHeight) + 0.3;
        foreach (Entry[] marks in lines)
        {
            double next = area.X + 1.5;
            foreach (Entry entry in marks)
            {
                if (entry.Mark is { } mark)
                    elements.Add(mark(next + 1.6, line));
                elements.Add(Label.CentredOn(next + entry.Lead, line, entry.Word, WordHeight, Anchor.Start, Palette.Ink));
                next += entry.Width;
            }

            line += rowHeight;
        }

        return new SceneGroup("legend", elements);
    }

    /// <summary>Those of some entries that a sheet has, in as many lines of a width as they take.</summary>
    private static List<Entry[]> LinesOf(Entry[] entries, SheetSigns signs, double width)
    {
        var lines = new List<Entry[]>();
        var line = new List<Entry>();
        double next = 1.5;
        foreach (Entry entry in entries)
        {
            if (!signs.HasFlag(entry.Sign))
                continue;
            if (line.Count > 0 && next + entry.Lead + SheetText.Width(entry.Word, WordHeight) > width - 1)
            {
                lines.Add([.. line]);
                line.Clear();
                next = 1.5;
            }

            line.Add(entry);
            next += entry.Width;
        }

        if (line.Count > 0)
            lines.Add([.. line]);
        return lines;
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
                elements.Add(FindingMarks.Of(s, area.X + 3.1, middle, MarkSize));
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
            string unseen = finding.Strands.Count == 0 && finding.Rule.Severity != Severity.Note ? "; no strand shows it" : "";
            List<string> words = SheetText.Wrapped($"{finding.Rule.Code} {finding.Rule.Title}: {finding.Message}{unseen}", width - 8);
            for (int i = 0; i < words.Count; i++)
                lines.Add((words[i], i == 0 ? finding.Rule.Severity : null));
            if (!notes.Ghosted.Contains(finding) && finding.Expected.Length > 0)
                lines.AddRange(SheetText.Wrapped($"{finding.Rule.Code} expected: {finding.Expected}", width - 8).Select(l => (l, (Severity?)null)));
            for (int r = 0; r < finding.Remedies.Count; r++)
            {
                string head = finding.Remedies.Count == 1 ? "remedy" : $"remedy {r + 1} of {finding.Remedies.Count}, one alone is enough";
                lines.AddRange(SheetText.Wrapped($"{finding.Rule.Code} {head}: {finding.Remedies[r].Text}", width - 8).Select(l => (l, (Severity?)null)));
            }
        }

        if (findings.Count > MostFindings)
            lines.Add(($"and {findings.Count - MostFindings} more {(findings.Count - MostFindings == 1 ? "finding" : "findings")}", null));
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
