using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Card;

namespace PolarityMap.Drawing.Views.Labels;

/// <summary>A page to print on plain paper and to hold against a label sheet: the outlines of the labels, and a bar of 100 mm.</summary>
internal sealed class LabelTestPage(SheetFormat paper, LabelSheet sheet) : PlannedSheet
{
    private const double Width = 116;

    private const string Reading =
        "Print this page on plain paper at 100 % and hold it with a label sheet against a light. Every outline must lie on a label. If all are off by the same, change the margins by as much; if they drift apart, change the pitch.";

    public override string Name => "labels-test";

    public override string Subject => "Test page for the printer";

    public override string DocumentType => "Label sheet";

    public override SheetFormat Format => paper;

    public override DrawingSheet Draw(SheetPlace place)
    {
        var outlines = new List<SceneElement>();
        for (int i = 0; i < sheet.Count; i++)
        {
            Area on = sheet.Place(i, paper);
            outlines.Add(new Box(on.X, on.Y, on.Width, on.Height, 0, Palette.Ink, LineWidths.Leader));
        }

        // The words lie on paper of their own in the middle, so that no outline runs through them.
        string[] lines = [.. CardWrap.Lines(Reading, Width - 8), .. CardWrap.Lines(sheet.Words(paper), Width - 8)];
        const double line = 4;
        double height = (lines.Length * line) + 16;
        double left = (paper.WidthMm - Width) / 2, top = (paper.HeightMm - height) / 2;
        var words = new List<SceneElement> { new Box(left, top, Width, height, 0, Palette.Ink, LineWidths.Inner, Palette.Paper) };
        for (int i = 0; i < lines.Length; i++)
            words.Add(new Label(left + 4, top + 5 + (i * line), lines[i], CapHeights.Strand, Anchor.Start, Palette.Ink));
        ScaleBar.Append(new Area(left, top + height - 11, Width, 9), words);
        return new DrawingSheet
        {
            WidthMm = paper.WidthMm,
            HeightMm = paper.HeightMm,
            Title = $"{DocumentType}: {Subject}",
            Description = $"The outlines of labels, {sheet.Words(paper)}, and a bar of 100 mm.",
            Layers = [new SceneGroup("frames", outlines), new SceneGroup("stickers", words)],
        };
    }
}
