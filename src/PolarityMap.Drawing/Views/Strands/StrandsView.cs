namespace PolarityMap.Drawing.Views.Strands;

/// <summary>The strand-by-strand sheet: every part a box, every strand a line that a finger can follow.</summary>
public sealed class StrandsView : IDrawingView
{
    /// <summary>The most strands of one sheet: a sheet of 15 m, far beyond what anybody follows; the plans of crossings grow with their square.</summary>
    public const int MostStrands = 3000;

    public string Name => "strands";

    public string Summary => "Every strand as a line through the parts it passes.";

    public IReadOnlyList<PlannedSheet> Plan(ViewInput input)
    {
        int count = input.Selection.Strands.Count;
        if (count == 0)
            return [];
        if (count > MostStrands)
            throw new DrawingTooLargeException($"{count} strands are too many for one sheet, which takes {MostStrands}");
        return [new StrandsSheet(input)];
    }
}
