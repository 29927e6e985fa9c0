using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Labels;

/// <summary>Sheets of labels for both ends of every cable and for every port, each with a QR code of its address.</summary>
public sealed class LabelsView : IDrawingView
{
    /// <summary>Smaller paper than A4 or Letter is no label sheet.</summary>
    private const double LeastArea = 60_000;

    public string Name => "labels";

    public string Summary => "Sheets of labels for both ends of every cable and for every port, with far end and QR code.";

    /// <inheritdoc/>
    /// <exception cref="LabelFitException">Words do not go onto a label, or labels not onto the paper.</exception>
    public IReadOnlyList<PlannedSheet> Plan(ViewInput input)
    {
        SheetFormat paper = PaperOf(input.Paper);
        LabelSheet sheet = input.Labels.Sheet ?? LabelSheet.UsualFor(paper);
        if (sheet.Fault(paper) is { } fault)
            throw new LabelFitException(fault);
        LabelLayout[] labels = [.. LabelTexts.Of(input.Traced, input.Selection).Select(t => LabelLayout.Of(t, sheet))];
        var sheets = new List<PlannedSheet>();
        if (labels.Length > 0 && input.Labels.TestPage)
            sheets.Add(new LabelTestPage(paper, sheet));
        int pages = (labels.Length + sheet.Count - 1) / sheet.Count;
        for (int page = 0; page < pages; page++)
        {
            int first = page * sheet.Count;
            sheets.Add(new LabelPage(pages == 1 ? Name : $"{Name}-{page + 1}", paper, sheet, labels[first..Math.Min(first + sheet.Count, labels.Length)], first, input.Labels.Frames));
        }

        return sheets;
    }

    /// <summary>The paper that label sheets are of: upright, unless the choice is nothing but landscape.</summary>
    public static SheetFormat PaperOf(PaperChoice paper) =>
        paper.Formats.Where(f => f.WidthMm * f.HeightMm >= LeastArea).OrderBy(f => f.IsLandscape).FirstOrDefault() ?? SheetFormat.A4Portrait;
}
