namespace PolarityMap.Drawing.Views;

/// <summary>
/// A view plans sheets of plain geometry. One file per view, listed in <see cref="ViewCatalogue"/>; it judges nothing itself.
/// </summary>
public interface IDrawingView
{
    /// <summary>The view's name on the command line.</summary>
    string Name { get; }

    /// <summary>One sentence on what it shows.</summary>
    string Summary { get; }

    /// <summary>
    /// Plans the sheets in the order in which they are bound: what each shows and on which paper. Empty when the choice leaves
    /// nothing to draw.
    /// </summary>
    /// <exception cref="DrawingTooLargeException">Something is more than a sheet takes.</exception>
    IReadOnlyList<PlannedSheet> Plan(ViewInput input);
}
