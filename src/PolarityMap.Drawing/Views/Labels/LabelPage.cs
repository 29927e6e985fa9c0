using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Labels;

/// <summary>A sheet of labels, without frame and title block: nothing but labels goes on it.</summary>
internal sealed class LabelPage(string name, SheetFormat paper, LabelSheet sheet, IReadOnlyList<LabelLayout> labels, int first, bool withFrames) : PlannedSheet
{
    public override string Name => name;

    public override string Subject => labels.Count == 1 ? $"Label {first + 1}" : $"Labels {first + 1} to {first + labels.Count}";

    public override string DocumentType => "Label sheet";

    public override SheetFormat Format => paper;

    public override DrawingSheet Draw(SheetPlace place)
    {
        var frames = new List<SceneElement>();
        var words = new List<SceneElement>();
        for (int i = 0; i < labels.Count; i++)
        {
            Area on = sheet.Place(i, paper);
            if (withFrames)
                frames.Add(new Box(on.X, on.Y, on.Width, on.Height, 0, Palette.Ink, LineWidths.Leader));
            words.Add(labels[i].Draw(on, $"label-{first + i + 1}"));
        }

        int without = labels.Count(l => !l.HasMark);
        return new DrawingSheet
        {
            WidthMm = paper.WidthMm,
            HeightMm = paper.HeightMm,
            Title = $"{DocumentType}: {Subject}",
            Description = $"{labels.Count} labels, {sheet.Words(paper)}. Each has a QR code of its address{(without == 0 ? "" : $", but for {without} that leave no room for it")}.",
            Layers = [new SceneGroup("frames", frames), new SceneGroup("stickers", words)],
        };
    }
}
