using PolarityMap.Core.Plants;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Overview;

/// <summary>One overview sheet.</summary>
internal sealed class OverviewSheet(ViewInput input, OverviewFit fit, string name) : PlannedSheet
{
    public override string Name => name;

    public override string Subject => input.Selection.Words is { Length: > 0 } words ? $"Parts and cables, {char.ToLowerInvariant(words[0])}{words[1..]}" : "Parts and cables";

    public override string DocumentType => "Overview diagram";

    public override SheetFormat Format => fit.Format;

    public override DrawingSheet Draw(SheetPlace place)
    {
        Plant plant = input.Traced.Plant;
        SheetFrame frame = SheetFrame.For(Format, input.TitleBlock(DocumentType, Subject, place));
        Area free = frame.Free;
        double foot = OverviewLegend.FootHeight(frame, fit.Foot, free.Width, fit.On);
        double x = free.X + Math.Max(0, (free.Width - fit.Placement.TotalWidth) / 2);
        double y = free.Y + Math.Max(1, (free.Height - foot - fit.Placement.TotalHeight) * 0.45);
        var painter = new OverviewPainter(plant, fit.Chart, fit.Grid, fit.Rails, fit.Placement, fit.Words, x, y);
        return new DrawingSheet
        {
            WidthMm = Format.WidthMm,
            HeightMm = Format.HeightMm,
            Title = input.Title.Title.Length > 0 ? input.Title.Title : DocumentType,
            Description = Describe(plant),
            Layers =
            [
                frame.Drawing,
                .. painter.Paint(),
                OverviewLegend.Foot(new Area(free.X, free.Bottom - foot, free.Width, foot), fit.Foot),
                OverviewLegend.Keys(frame, fit.On),
            ],
        };
    }

    private string Describe(Plant plant)
    {
        string cables = Totals.Cables(plant, fit.Chart);
        string found = input.Findings.Count == 0 ? "No findings." : $"{OverviewWords.Counted(input.Findings.Count, "finding")}.";
        return $"Overview diagram of {Totals.Counts(fit.Chart)}, from left to right. {(cables.Length > 0 ? $"Cables: {cables}. " : "")}{found}".Replace('\u00A0', ' ');
    }
}
