using PolarityMap.Core.Checks;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views;

/// <summary>What a view draws: traced strands, findings it is handed, and what to choose from them.</summary>
/// <param name="Traced">The traced plant.</param>
/// <param name="Findings">The findings to mark. A view judges nothing itself.</param>
public sealed record ViewInput(TracedPlant Traced, IReadOnlyList<Finding> Findings)
{
    /// <summary>Only strands that touch this network (an index into the plant's networks); -1 for all.</summary>
    public int Network { get; init; } = -1;

    /// <summary>Only strands that pass this part; -1 for all.</summary>
    public int Part { get; init; } = -1;

    /// <summary>The sheet's place in its set, for the title block.</summary>
    public int Sheet { get; init; } = 1;

    /// <summary>Number of sheets in the set.</summary>
    public int Sheets { get; init; } = 1;

    /// <summary>Also strands that no interface is on.</summary>
    public bool WithDark { get; init; }
}

/// <summary>
/// A view makes a sheet of plain geometry. One file per view, listed in <see cref="ViewCatalogue"/>.
/// </summary>
public interface IDrawingView
{
    /// <summary>The view's name on the command line.</summary>
    string Name { get; }

    /// <summary>One sentence on what it shows.</summary>
    string Summary { get; }

    /// <summary>Draws, or returns null when the choice leaves nothing to draw.</summary>
    /// <exception cref="DrawingTooLargeException">The choice is more than one sheet takes.</exception>
    DrawingSheet? Draw(ViewInput input);
}
