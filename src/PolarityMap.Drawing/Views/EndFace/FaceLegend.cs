using PolarityMap.Core.Optics;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views.EndFace;

/// <summary>What stands at the foot of an end-face sheet: signs and colours in use, how to read it, the caution.</summary>
internal static class FaceLegend
{
    // The dot of the housing: five public sources for one row. 8 degrees: five public sources.
    private const string Reading =
        "Every connector is seen looking into its own ferrule or port with its key up: position 1 at the left of the top row. A dot on the housing marks the side of position 1. "
        + "Plugged together, two faces look at each other, so left meets right. Not to scale.";

    private const double Cap = 2;
    private const double ToWords = 4.6;
    private const double MostRowHeight = 4.2;
    private const double Height = 25;

    /// <summary>Height of everything above the title block.</summary>
    public static double FootHeight(SheetFrame frame) => (Lines(frame.Free.Width).Count * FaceMeasures.Line) + 1.5 + (FitsBeside(frame) ? 0 : Height);

    /// <summary>How to read the sheet, and the caution, from the top of an area down.</summary>
    public static SceneGroup Notes(Area area)
    {
        var elements = new List<SceneElement>();
        double top = area.Y + 0.5;
        foreach (string line in Lines(area.Width))
        {
            elements.Add(new Label(area.X + 1.5, top + CapHeights.Strand, line, CapHeights.Strand, Anchor.Start, Palette.Ink));
            top += FaceMeasures.Line;
        }

        return new SceneGroup("notes", elements);
    }

    /// <summary>Signs and colours, beside the title block or above it on a narrow sheet.</summary>
    public static SceneGroup Keys(SheetFrame frame, IReadOnlyList<MatingKind> kinds)
    {
        Area area = FitsBeside(frame) ? frame.BesideTitleBlock : new Area(frame.Free.X, frame.Free.Bottom - Height, frame.Free.Width, Height);
        var elements = new List<SceneElement>();
        List<(Func<double, double, SceneElement[]> Sign, string Words)> entries = Entries(kinds);
        double[] widths = Columns(entries, area.Width - 2);
        int rows = entries.Count == 0 ? 1 : (entries.Count + widths.Length - 1) / widths.Length;
        double rowHeight = Math.Min(MostRowHeight, (Height - 1.5) / rows);
        for (int i = 0; i < entries.Count; i++)
        {
            double x = area.X + 1.5 + widths.Take(i / rows).Sum();
            double y = area.Y + 0.9 + (((i % rows) + 0.5) * rowHeight);
            elements.AddRange(entries[i].Sign(x + 2, y));
            elements.Add(Label.CentredOn(x + ToWords, y, entries[i].Words, Cap, Anchor.Start, Palette.Ink));
        }

        return new SceneGroup("legend", elements);
    }

    /// <summary>Widths of the columns: as few rows as the words leave room for.</summary>
    private static double[] Columns(List<(Func<double, double, SceneElement[]> Sign, string Words)> entries, double width)
    {
        for (int rows = 1; rows < entries.Count; rows++)
        {
            double[] widths = [.. entries.Chunk(rows).Select(c => c.Max(e => SheetText.Width(e.Words, Cap)) + ToWords + 2.5)];
            if (widths.Sum() <= width)
                return widths;
        }

        return [width];
    }

    private static bool FitsBeside(SheetFrame frame) => frame.BesideTitleBlock.Width > 80;

    private static List<string> Lines(double width) =>
        [.. SheetText.Wrapped(Reading, width - 4), .. SheetText.Wrapped(Legend.Caution, width - 4)];

    private static List<(Func<double, double, SceneElement[]> Sign, string Words)> Entries(IReadOnlyList<MatingKind> kinds)
    {
        var entries = new List<(Func<double, double, SceneElement[]>, string)>();
        FaceSide[] sides = [.. kinds.SelectMany(k => (FaceSide[])[k.Left, k.Right])];
        FacePlace[] places = [.. sides.SelectMany(s => s.Places.Take(FaceMeasures.Drawn(s.Face)))];
        FibreColour[] colours = [.. places.Where(p => p.Colour is not null).Select(p => p.Colour!.Value)];
        foreach (FibreColour colour in colours.Select(c => c with { Tracers = 0 }).Distinct().OrderBy(c => c.Number))
            entries.Add(((x, y) => [Disc(x, y, StrandColours.Drawn(colour))], $"{colour.Code} {Legend.ColourWords(colour)}"));
        if (colours.Any(c => c.Tracers > 0))
            entries.Add(((x, y) => [Marks.Ticks(x, y, 1)], "one tracer"));
        if (sides.Any(s => s.Shape.Pinned == true))
            entries.Add(((x, y) => [Disc(x, y, Palette.Ink)], "guide pin"));
        if (sides.Any(s => s.Shape.Pinned == false))
            entries.Add(((x, y) => [Disc(x, y, Palette.Paper)], "hole for a pin"));
        if (places.Any(p => !p.IsUsed))
            entries.Add(((x, y) => [Disc(x, y, Palette.Paper), .. EmptyPlace.Hatch(x, y, 1.5)], "no fibre"));
        if (places.Any(p => p.Lane is not null))
            entries.Add(((_, _) => [], "Tx, Rx: light out, in"));
        return entries;
    }

    private static Circle Disc(double x, double y, Colour fill) => new(x, y, 1.5, Palette.Ink, LineWidths.Inner, fill);
}
