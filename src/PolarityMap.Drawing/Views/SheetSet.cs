using PolarityMap.Drawing.Views.Index;

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
        if (sheets.Count <= 1 || view != ViewCatalogue.All[0])
            return sheets;
        var following = new List<PlannedSheet>();
        if (ViewCatalogue.Find("overview") is { } overview)
            following.AddRange(overview.Plan(input));
        following.AddRange(sheets);
        return [.. IndexSheet.Plan(input, following), .. following];
    }
}
