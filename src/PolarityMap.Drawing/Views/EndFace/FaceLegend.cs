using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views.EndFace;

/// <summary>What stands at the foot of an end-face sheet: signs and colours in use, how to read it, the caution.</summary>
internal static class FaceLegend
{
    private const double Cap = 2;
    private const double ToWords = 4.6;
    private const double MostRowHeight = 4.2;
    private const double PlaceRadius = 1.5;

    // As much smaller than a fibre place as on the faces.
    private const double PinRadius = PlaceRadius * FaceMeasures.Pin / FaceMeasures.Place;

    /// <summary>Height of everything above the title block of a sheet with these kinds.</summary>
    public static double FootHeight(SheetFrame frame, IReadOnlyList<MatingKind> kinds) =>
        (Lines(kinds, frame.Free.Width).Count * FaceMeasures.Line) + 1.5 + (FitsBeside(frame) ? 0 : HeightAbove(frame, kinds));

    /// <summary>How to read the sheet, and the caution, from the top of an area down.</summary>
    public static SceneGroup Notes(Area area, IReadOnlyList<MatingKind> kinds)
    {
        var elements = new List<SceneElement>();
        double top = area.Y + 0.5;
        foreach (string line in Lines(kinds, area.Width))
        {
            elements.Add(new Label(area.X + 1.5, top + CapHeights.Strand, line, CapHeights.Strand, Anchor.Start, Palette.Ink));
            top += FaceMeasures.Line;
        }

        return new SceneGroup("notes", elements);
    }

    /// <summary>Signs and colours, beside the title block or above it on a narrow sheet.</summary>
    public static SceneGroup Keys(SheetFrame frame, IReadOnlyList<MatingKind> kinds)
    {
        Area area = FitsBeside(frame) ? frame.BesideTitleBlock : new Area(frame.Free.X, frame.Free.Bottom - HeightAbove(frame, kinds), frame.Free.Width, HeightAbove(frame, kinds));
        var elements = new List<SceneElement>();
        List<(Func<double, double, SceneElement[]> Sign, string Words)> entries = Entries(kinds);
        (int rows, double[] widths) = Columns(entries, area.Width - 2);
        double rowHeight = Math.Min(MostRowHeight, (area.Height - 1.5) / Math.Max(1, rows));
        for (int i = 0; i < entries.Count; i++)
        {
            double x = area.X + 1.5 + widths.Take(i / rows).Sum();
            double y = area.Y + 0.9 + (((i % rows) + 0.5) * rowHeight);
            elements.AddRange(entries[i].Sign(x + 2, y));
            elements.Add(Label.CentredOn(x + ToWords, y, entries[i].Words, Cap, Anchor.Start, Palette.Ink));
        }

        return new SceneGroup("legend", elements);
    }

    private static double HeightAbove(SheetFrame frame, IReadOnlyList<MatingKind> kinds)
    {
        return (Columns(Entries(kinds), frame.Free.Width - 2).Rows * MostRowHeight) + 1.5;
    }

    /// <summary>The columns, filled one after the other: as few rows as the words leave room for.</summary>
    private static (int Rows, double[] Widths) Columns(List<(Func<double, double, SceneElement[]> Sign, string Words)> entries, double width)
    {
        for (int rows = 1; rows < entries.Count; rows++)
        {
            double[] widths = [.. entries.Chunk(rows).Select(c => c.Max(e => SheetText.Width(e.Words, Cap)) + ToWords + 1.6)];
            if (widths.Sum() <= width)
                return (rows, widths);
        }

        return (entries.Count, [width]);
    }

    private static bool FitsBeside(SheetFrame frame) => frame.BesideTitleBlock.Width > 80;

    private static List<string> Lines(IReadOnlyList<MatingKind> kinds, double width) =>
        [.. SheetText.Wrapped(Reading(kinds), width - 4), .. SheetText.Wrapped(Legend.Caution, width - 4)];

    /// <summary>How to read the sheet; of what it explains only what is on it.</summary>
    private static string Reading(IReadOnlyList<MatingKind> kinds)
    {
        FaceSide[] sides = [.. kinds.SelectMany(k => (FaceSide[])[k.Left, k.Right])];
        bool arrays = sides.Any(s => s.Face.Family == ConnectorFamily.Array);
        bool duplex = sides.Any(s => s.Face.Family == ConnectorFamily.Duplex);
        var words = new List<string>();
        if (sides.Any(s => s.Face.Family != ConnectorFamily.Bare))
        {
            string where = (arrays, duplex) switch
            {
                (true, true) => ": position 1 left in the top row, A left of B",
                (true, false) => ": position 1 left in the top row",
                (false, true) => ": A left of B",
                _ => "",
            };
            words.Add($"Every connector is seen looking into its own ferrule or port with its key up{where}.");
            words.Add("Plugged together, two faces look at each other, so left meets right.");
        }

        // The dot: five public sources for one row. To which side an offset key sits no source says.
        if (arrays)
            words.Add("On the connector itself a dot marks the side of position 1.");
        if (sides.Any(s => s.Face.OffsetKey))
            words.Add("A key to one side is drawn on the side of position 1; look at the connector.");
        if (sides.Any(s => s.Places.Any(p => p.Lane is not null)))
            words.Add("Tx sends light, Rx receives.");
        if (sides.Any(s => s.Drawn.Any(p => p is { IsUsed: true, Colour: null, Lane: null })))
            words.Add("No letters at a place: no colour stated.");
        if (kinds.Any(k => k.HasDarkPairs))
            words.Add("A dashed line leads to a place without a fibre.");
        if (sides.Any(s => s.Part.IsInline && CordNames.AreIn(s.Address)))
            words.Add(CordNames.Note);
        words.Add("Not to scale.");
        return string.Join(' ', words);
    }

    private static List<(Func<double, double, SceneElement[]> Sign, string Words)> Entries(IReadOnlyList<MatingKind> kinds)
    {
        var entries = new List<(Func<double, double, SceneElement[]>, string)>();
        FaceSide[] sides = [.. kinds.SelectMany(k => (FaceSide[])[k.Left, k.Right])];
        FacePlace[] places = [.. sides.SelectMany(s => s.Drawn)];
        FibreColour[] colours = [.. places.Where(p => p.Colour is not null).Select(p => p.Colour!.Value)];
        foreach (FibreColour colour in colours.Select(c => c with { Tracers = 0 }).Distinct().OrderBy(c => c.Number))
            entries.Add(((x, y) => [Disc(x, y, StrandColours.Drawn(colour))], $"{colour.Code} {Legend.ColourWords(colour)}"));
        if (colours.Any(c => c.Tracers > 0))
            entries.Add(((x, y) => [Marks.Ticks(x, y, 1)], "one tracer"));
        if (sides.Any(s => s.Shape.Pinned == true))
            entries.Add(((x, y) => [Disc(x, y, Palette.Ink, PinRadius)], "guide pin"));
        if (sides.Any(s => s.Shape.Pinned == false))
            entries.Add(((x, y) => [Disc(x, y, Palette.Paper, PinRadius)], "hole for a pin"));
        if (places.Any(p => !p.IsUsed))
            entries.Add(((x, y) => [Disc(x, y, Palette.Paper), .. EmptyPlace.Hatch(x, y, PlaceRadius)], "no fibre"));
        return entries;
    }

    private static Circle Disc(double x, double y, Colour fill, double radius = PlaceRadius) => new(x, y, radius, Palette.Ink, LineWidths.Inner, fill);
}
