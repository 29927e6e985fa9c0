namespace PolarityMap.Drawing.Scene;

/// <summary>A bar of 100 mm with ticks of 10 mm: the only honest check of a print's scale.</summary>
internal static class ScaleBar
{
    internal const double LengthMm = 100;

    internal const string Words = "Scale check: this bar is 100 mm long, print at 100 %";

    /// <summary>Draws the bar in the middle of a cell at least 8 mm high.</summary>
    internal static void Append(Area cell, List<SceneElement> elements)
    {
        double left = cell.CentreX - (LengthMm / 2);
        double foot = cell.Bottom - 1.4;
        elements.Add(new Label(left, cell.Y + 2.5, Words, CapHeights.Least, Anchor.Start, Palette.MutedInk));
        elements.Add(new Line(left, foot, left + LengthMm, foot, Palette.Ink, LineWidths.Leader));
        for (int i = 0; i <= 10; i++)
        {
            double height = i % 5 == 0 ? 2.2 : 1.4;
            double x = left + (i * 10);
            elements.Add(new Line(x, foot, x, foot - height, Palette.Ink, LineWidths.Leader));
        }
    }
}
