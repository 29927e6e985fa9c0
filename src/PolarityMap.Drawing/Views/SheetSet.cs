using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Index;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views;

/// <summary>The sheets of a drawing in the order in which they are bound.</summary>
public static class SheetSet
{
    /// <summary>
    /// The sheets of a view. Strand sheets of which there are several have an index sheet and an overview before them.
    /// </summary>
    /// <exception cref="DrawingTooLargeException">Something is more than a sheet takes.</exception>
    public static IReadOnlyList<PlannedSheet> Of(ViewInput input, IDrawingView view)
    {
        IReadOnlyList<PlannedSheet> sheets = view.Plan(input);
        if (sheets.Count <= 1 || view is not StrandsView)
            return sheets;
        List<PlannedSheet> following = [.. Overview(input), .. sheets];
        return [.. IndexSheet.Plan(input, following), .. following];
    }

    /// <summary>The overview on the paper of the set, or on a larger one where that does not take it.</summary>
    private static IReadOnlyList<PlannedSheet> Overview(ViewInput input)
    {
        IDrawingView overview = ViewCatalogue.Find("overview")!;
        try
        {
            return overview.Plan(input);
        }
        catch (DrawingTooLargeException)
        {
            return overview.Plan(input with { Paper = new PaperChoice([SheetFormat.A3Landscape, SheetFormat.A3Portrait], MayGrow: true) });
        }
    }
}
