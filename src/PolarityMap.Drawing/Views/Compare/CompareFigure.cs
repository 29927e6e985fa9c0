using PolarityMap.Core.Optics;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views.Compare;

/// <summary>
/// A figure of several plants side by side, each a panel with its title: for teaching, such as every method of one link. It has
/// no frame and no title block and is as large as what it shows, so that it goes into a page or a slide as it is.
/// </summary>
public static class CompareFigure
{
    private const double Margin = 8;
    private const double Gap = 10;
    private const double CaptionHeight = 8;
    private const double TitleHeight = 12;

    /// <summary>Longer to shorter side of a page.</summary>
    private static readonly double s_page = Math.Sqrt(2);

    /// <summary>One plant with its place in the figure.</summary>
    private sealed record Panel(ViewInput Input, Sheetful Sheetful, string Letter)
    {
        public double Width => Math.Max(Sheetful.Placement.Width + Sheetful.Marks, SheetText.Width(Caption, CapHeights.Part));

        public double Height => CaptionHeight + Sheetful.Placement.Height;

        public string Caption => $"{Letter} {Input.Title.Title}";
    }

    /// <summary>Draws the figure.</summary>
    /// <param name="inputs">The plants, at least one, each with strands chosen.</param>
    /// <param name="title">The title of the figure; may be empty.</param>
    public static DrawingSheet Draw(IReadOnlyList<ViewInput> inputs, string title)
    {
        Panel[] panels = [.. inputs.Select((input, i) => Make(input, $"({(char)('a' + (i % 26))})"))];
        int columns = ColumnsFor(panels);
        double width = panels.Max(p => p.Width);
        double total = Math.Max(210, (2 * Margin) + (columns * width) + ((columns - 1) * Gap));
        SheetNotes notes = Notes(panels);
        double foot = Legend.WordsHeight(total - (2 * Margin), notes) + Legend.KeysHeight;
        var painted = new List<IReadOnlyList<SceneGroup>>();
        double y = Margin + (title.Length > 0 ? TitleHeight : 0);
        var captions = new List<SceneElement>();
        if (title.Length > 0)
            captions.Add(new Label(Margin, Margin + CapHeights.SheetTitle, title, CapHeights.SheetTitle, Anchor.Start, Palette.Ink));
        for (int i = 0; i < panels.Length; i += columns)
        {
            Panel[] row = panels[i..Math.Min(panels.Length, i + columns)];
            for (int c = 0; c < row.Length; c++)
            {
                double x = Margin + (c * (width + Gap));
                captions.Add(new Label(x, y + CapHeights.Part, row[c].Caption, CapHeights.Part, Anchor.Start, Palette.Ink));
                Sheetful placed = row[c].Sheetful.At(x, y + CaptionHeight);
                painted.Add(Painted(placed, i + c + 1, out SheetSigns keys));
                notes = notes with { Signs = notes.Signs | keys };
            }

            y += row.Max(p => p.Height) + Gap;
        }

        var layers = new List<SceneGroup> { new("captions", captions) };
        foreach (string? id in painted[0].Select(g => g.Id))
            layers.Add(new SceneGroup(id, [.. painted.SelectMany(p => p.Single(g => g.Id == id).Children)]));
        layers.Add(Legend.Foot(new Area(Margin, y, total - (2 * Margin), foot - Legend.KeysHeight), notes));
        layers.Add(Legend.Keys(new Area(Margin, y + foot - Legend.KeysHeight, total - (2 * Margin), Legend.KeysHeight), Colours(panels), notes.Signs));
        return new DrawingSheet
        {
            WidthMm = Math.Ceiling(total),
            HeightMm = Math.Ceiling(y + foot),
            Title = title.Length > 0 ? title : string.Join(", ", panels.Select(p => p.Caption)),
            Description = $"{panels.Length} strand diagrams side by side: {string.Join("; ", panels.Select(p => p.Caption))}.",
            Layers = layers,
        };
    }

    private static IReadOnlyList<SceneGroup> Painted(Sheetful placed, int nth, out SheetSigns keys)
    {
        var painter = new StrandsPainter(placed, 0, new SheetPlace(1, 1), new PaintScope(int.MaxValue, $"p{nth}-"));
        IReadOnlyList<SceneGroup> painted = painter.Paint();
        keys = painter.KeySigns;
        return painted;
    }

    private static Panel Make(ViewInput input, string letter)
    {
        var hops = new StrandHops(input.Traced);
        return new Panel(input, Sheetful.OnItsOwnSheet(hops, input, [.. input.Selection.Strands.Select(hops.Whole)], SheetNames.Plain), letter);
    }

    /// <summary>As many columns as let the figure stand largest on a page, upright or not.</summary>
    private static int ColumnsFor(Panel[] panels)
    {
        int best = 1;
        double largest = 0;
        for (int columns = 1; columns <= panels.Length; columns++)
        {
            double width = columns * panels.Max(p => p.Width);
            double height = panels.Chunk(columns).Sum(row => row.Max(p => p.Height) + Gap) + Legend.KeysHeight;
            double scale = Math.Max(Math.Min(1 / width, s_page / height), Math.Min(s_page / width, 1 / height));
            if (scale > largest)
                (best, largest) = (columns, scale);
        }

        return best;
    }

    private static SheetNotes Notes(Panel[] panels)
    {
        SheetNotes first = panels[0].Sheetful.Notes;
        SheetSigns signs = SheetSigns.None;
        foreach (Panel panel in panels)
            signs |= panel.Sheetful.Notes.Signs;
        return first with { Findings = [.. panels.SelectMany(p => p.Sheetful.Notes.Findings)], Signs = signs, Of = "(a)" };
    }

    private static HashSet<FibreColour> Colours(Panel[] panels) =>
        [.. panels.SelectMany(p => p.Input.Selection.Strands.Select(p.Sheetful.Text.Colour))];
}
