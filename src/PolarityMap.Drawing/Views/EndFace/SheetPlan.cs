using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.EndFace;

/// <summary>Puts panels on sheets in their order, two small ones side by side.</summary>
internal static class SheetPlan
{
    /// <summary>The sheets of a format; null when a panel is more than one of them takes.</summary>
    public static List<List<PlacedPanel>>? Make(SheetFormat format, IReadOnlyList<MatingKind> kinds)
    {
        SheetFrame frame = SheetFrame.For(format, new TitleBlock());
        double width = frame.Free.Width - (2 * FaceMeasures.PanelGap);
        double height = frame.Free.Height - FaceLegend.FootHeight(frame, kinds) - (2 * FaceMeasures.PanelGap);
        double half = (width - FaceMeasures.PanelGap) / 2;
        var sheets = new List<List<PlacedPanel>>();
        double y = 0;
        for (int i = 0; i < kinds.Count; i++)
        {
            if (Panel.LeastWidth(kinds[i]) > width)
                return null;
            bool isHalf = Panel.WidthInOneLine(kinds[i]) <= half;
            bool isPair = isHalf && i + 1 < kinds.Count && Panel.WidthInOneLine(kinds[i + 1]) <= half;
            Panel[] shelf = isPair
                ? [new Panel(kinds[i], half), new Panel(kinds[++i], half)]
                : [new Panel(kinds[i], isHalf ? half : width)];
            double tallest = shelf.Max(p => p.Height);
            if (tallest > height)
                return null;
            if (sheets.Count == 0 || y + tallest > height)
            {
                sheets.Add([]);
                y = 0;
            }

            for (int n = 0; n < shelf.Length; n++)
                sheets[^1].Add(new PlacedPanel(shelf[n], FaceMeasures.PanelGap + (n * (half + FaceMeasures.PanelGap)), FaceMeasures.PanelGap + y));
            y += tallest + FaceMeasures.PanelGap;
        }

        return sheets;
    }
}
