using PolarityMap.Core.Checks;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views.Overview;

/// <summary>What is on a sheet and so has to be explained there.</summary>
/// <param name="Slash">Lines with a slash and a number.</param>
/// <param name="Colour">The colour of a network's bar, or null without networks.</param>
/// <param name="Rings">Lines that go on in another band.</param>
/// <param name="OpenEnds">Ends of cables with nothing mated to them.</param>
/// <param name="Crossings">Lines that cross.</param>
/// <param name="Errors">Signs of errors.</param>
/// <param name="Warnings">Signs of warnings.</param>
/// <param name="Rooms">Rooms in boxes.</param>
internal sealed record OnSheet(bool Slash, Colour? Colour, bool Rings, bool OpenEnds, bool Crossings, bool Errors, bool Warnings, bool Rooms);

/// <summary>What stands at the foot of an overview: the totals, the findings by their codes, the caution; and what its marks mean.</summary>
internal static class OverviewLegend
{
    private const double Row = 3.8;
    private const int BesideRows = 6;
    private const double FirstColumn = 68;
    private const double SignSize = 3.2;
    private const double Beside = 80;
    private const int MostCodes = 6;

    /// <summary>Height of everything above the title block.</summary>
    public static double FootHeight(SheetFrame frame, IReadOnlyList<FootLine> lines, double width, OnSheet on)
    {
        double height = 2;
        foreach (FootLine line in lines)
            height += SheetText.Wrapped(line.Text, width - FootLine.Indent - 3).Count * Strands.Measures.LineOfText;
        return height + (FitsBeside(frame) ? 0 : (((Entries(on).Count + 1) / 2) * Row) + 2);
    }

    public static SceneGroup Keys(SheetFrame frame, OnSheet on)
    {
        List<(string Words, Func<double, double, SceneElement[]> Draw)> entries = Entries(on);
        bool beside = FitsBeside(frame);
        int rows = beside ? BesideRows : (entries.Count + 1) / 2;
        Area area = beside
            ? frame.BesideTitleBlock
            : new Area(frame.Free.X, frame.Free.Bottom - (rows * Row) - 1, frame.Free.Width, rows * Row);

        // The longest words come first and the shortest last, so the second column beside a title block may be narrow.
        double first = beside && entries.Count > rows ? FirstColumn : area.Width / (beside ? 1 : 2);
        var elements = new List<SceneElement>();
        for (int i = 0; i < entries.Count; i++)
        {
            double x = area.X + 1.5 + (i < rows ? 0 : first);
            double y = area.Y + 2.8 + (i % rows * Row);
            elements.AddRange(entries[i].Draw(x, y));
            (string words, double cap) = TextFit.Fit(entries[i].Words, (i < rows ? first : area.Width - first) - 10, CapHeights.Least + 0.2);
            elements.Add(Label.CentredOn(x + 8, y, words, cap, Anchor.Start, Palette.Ink));
        }

        return new SceneGroup("legend", elements);
    }

    /// <summary>Totals, findings and caution, from the area's top down.</summary>
    public static SceneGroup Foot(Area area, IReadOnlyList<FootLine> lines)
    {
        var elements = new List<SceneElement>();
        double y = area.Y + CapHeights.Strand + 0.8;
        foreach (FootLine line in lines)
        {
            double middle = y - (CapHeights.Strand / 2);
            if (line.Mark is { } severity)
                elements.Add(severity == Severity.Error ? Marks.Error(area.X + 3.1, middle, SignSize) : Marks.Warning(area.X + 3.1, middle, SignSize));
            double x = area.X + (line.Mark is null ? 1.5 : FootLine.Indent);
            foreach (string words in SheetText.Wrapped(line.Text, area.Width - FootLine.Indent - 3))
            {
                elements.Add(new Label(x, y, words, CapHeights.Strand, Anchor.Start, Palette.Ink));
                y += Strands.Measures.LineOfText;
            }
        }

        return new SceneGroup("notes", elements);
    }

    /// <summary>The lines of the foot: totals, then each code with the number of its findings, then the caution.</summary>
    public static IReadOnlyList<FootLine> Lines(Core.Plants.Plant plant, Chart chart, IReadOnlyList<Finding> findings)
    {
        var lines = new List<FootLine> { new(Totals.Counts(chart) + ".", null) };
        if (Totals.Cables(plant, chart) is { Length: > 0 } cables)
            lines.Add(new FootLine($"Cables: {cables}.", null));
        if (chart.StrandsOfNetwork.Values.Sum() > chart.StrandCount)
            lines.Add(new FootLine("A strand that joins two networks counts in both.", null));
        var counts = new SortedDictionary<(int Order, string Code), (Rule Rule, int Count)>();
        foreach (Finding finding in findings)
        {
            var key = (finding.Rule.Severity == Severity.Error ? 0 : 1, finding.Rule.Code);
            counts[key] = (finding.Rule, counts.GetValueOrDefault(key).Count + 1);
        }

        foreach ((_, (Rule rule, int count)) in counts)
        {
            if (lines.Count(l => l.Mark is not null) == MostCodes)
            {
                lines.Add(new FootLine($"and {counts.Count - MostCodes} more kinds of findings", null));
                break;
            }

            lines.Add(new FootLine($"{rule.Code} {rule.Title}: {OverviewWords.Counted(count, "finding")}", rule.Severity));
        }

        lines.Add(new FootLine(Legend.Caution, null));
        return lines;
    }

    private static bool FitsBeside(SheetFrame frame) => frame.BesideTitleBlock.Width > Beside;

    private static List<(string Words, Func<double, double, SceneElement[]> Draw)> Entries(OnSheet on)
    {
        var entries = new List<(string, Func<double, double, SceneElement[]>)>();
        if (on.Slash)
        {
            entries.Add(("like cables; number: fibres in use in each whole cable", (x, y) =>
            [
                new StrandPath(Route.From(x, y).LineTo(x + 6.5, y), Palette.Ink),
                new Line(x + 2.2, y + 1.5, x + 4, y - 1.5, Palette.Ink, LineWidths.Inner),
            ]));
        }

        if (on.Colour is { } colour)
            entries.Add(("bar, line: of that network; dark: of none or several", (x, y) => [new StrandPath(Route.From(x, y).LineTo(x + 6.5, y), colour)]));
        if (on.Rings)
            entries.Add(("goes on at the circle with the same letter", (x, y) => [new Circle(x + 3.2, y, 1.5, Palette.Ink, LineWidths.Inner)]));

        if (on.Errors || on.Warnings)
        {
            string words = on.Errors && on.Warnings ? "error, warning" : on.Errors ? "error" : "warning";
            entries.Add((words + "; in a box: of strands that end there", (x, y) =>
            [
                .. on.Errors ? [Marks.Error(x + (on.Warnings ? 1.6 : 3.2), y, SignSize)] : Array.Empty<SceneElement>(),
                .. on.Warnings ? [Marks.Warning(x + (on.Errors ? 5.2 : 3.2), y, SignSize)] : Array.Empty<SceneElement>(),
            ]));
        }

        if (on.Crossings)
        {
            entries.Add(("lines that cross do not touch", (x, y) =>
            [
                new StrandPath(Route.From(x + 3.2, y - 1.8).LineTo(x + 3.2, y + 1.8), Palette.Ink),
                new StrandPath(Route.From(x, y).LineTo(x + 6.5, y), Palette.Ink),
            ]));
        }

        if (on.OpenEnds)
        {
            entries.Add(("open end", (x, y) =>
            [
                new StrandPath(Route.From(x, y).LineTo(x + 4, y), Palette.Ink),
                new Line(x + 4, y - 1.5, x + 4, y + 1.5, Palette.Ink, LineWidths.Frame),
            ]));
        }

        if (on.Rooms)
            entries.Add(("room", (x, y) => [Label.CentredOn(x + 1, y, "+", CapHeights.Strand, Anchor.Start, Palette.Ink)]));
        return entries;
    }
}

/// <summary>A line of the foot.</summary>
/// <param name="Text">Its words.</param>
/// <param name="Mark">The severity of the finding it tells, for the sign before it.</param>
internal readonly record struct FootLine(string Text, Severity? Mark)
{
    /// <summary>Room for the sign.</summary>
    public const double Indent = 5.6;
}
