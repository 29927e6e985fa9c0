using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.EndFace;

/// <summary>One sheet of panels.</summary>
internal sealed class EndFaceSheet(ViewInput input, SheetFormat format, IReadOnlyList<PlacedPanel> panels, string name) : PlannedSheet
{
    public override string Name => name;

    public override string Subject => panels.Count == 1
        ? $"Mating {panels[0].Panel.Kind.Number}"
        : $"Matings {panels[0].Panel.Kind.Number} to {panels[^1].Panel.Kind.Number}";

    public override string DocumentType => "End-face drawing";

    public override SheetFormat Format => format;

    public override DrawingSheet Draw(SheetPlace place)
    {
        SheetFrame frame = SheetFrame.For(format, input.TitleBlock(DocumentType, null, place));
        MatingKind[] kinds = [.. panels.Select(p => p.Panel.Kind)];
        var parts = new List<SceneElement>();
        var labels = new List<SceneElement>();
        var findings = new List<SceneElement>();
        foreach ((Panel panel, double x, double y) in panels)
        {
            PanelPaint paint = panel.Paint(frame.Free.X + x, frame.Free.Y + y);
            parts.Add(new SceneGroup(paint.Id, GroupRole.GraphicsSymbol, $"{panel.Kind.Number}. {FaceWords.Title(panel.Kind)}", Describe(panel.Kind), paint.Picture));
            labels.AddRange(paint.Words);
            findings.AddRange(paint.Signs);
        }

        double foot = FaceLegend.FootHeight(frame, kinds);
        return new DrawingSheet
        {
            WidthMm = format.WidthMm,
            HeightMm = format.HeightMm,
            Title = input.Title.Title.Length > 0 ? input.Title.Title : DocumentType,
            Description = $"End faces of connectors that are mated, {(kinds.Length == 1 ? "1 kind" : $"{kinds.Length} kinds")} of mating: {string.Join("; ", kinds.Select(FaceWords.Title))}.",
            Layers =
            [
                frame.Drawing,
                new SceneGroup("parts", parts),
                new SceneGroup("labels", labels),
                new SceneGroup("findings", findings),
                FaceLegend.Notes(new Area(frame.Free.X, frame.Free.Bottom - foot, frame.Free.Width, foot), kinds),
                FaceLegend.Keys(frame, kinds),
            ],
        };
    }

    /// <summary>The panel in words: both faces and every pair.</summary>
    private static string Describe(MatingKind kind)
    {
        string found = kind.Findings.Count == 0 ? "" : $" {string.Join(" ", kind.Findings.Select(f => $"{f.Rule.Code} {f.Rule.Title}: {f.Message}."))}";
        return $"{FaceWords.Example(kind)} {Face(kind.Left, turned: false)} {Face(kind.Right, kind.IsTurned)} {MeetingWords.Rule(kind)} {(kind.Fits ? MeetingWords.Pairs(kind) : "")}".TrimEnd() + found;
    }

    private static string Face(FaceSide side, bool turned) =>
        $"{side.Address}: {FaceWords.What(side)}. {FaceWords.Seen(side, turned)} Places: {string.Join(", ", side.Drawn.Select(p => p.Words()))}.";
}

/// <summary>A panel with its place from the upper left of the free space.</summary>
internal readonly record struct PlacedPanel(Panel Panel, double X, double Y);
