namespace PolarityMap.Drawing.Scene;

/// <summary>One sheet of paper and everything on it.</summary>
public sealed class DrawingSheet
{
    /// <summary>Width of the trimmed sheet, mm.</summary>
    public required double WidthMm { get; init; }

    /// <summary>Height of the trimmed sheet, mm.</summary>
    public required double HeightMm { get; init; }

    /// <summary>The sheet's name for a reader.</summary>
    public required string Title { get; init; }

    /// <summary>What the sheet shows, in a sentence or two; may be empty.</summary>
    public string Description { get; init; } = "";

    /// <summary>Where a reader that follows links gets to another sheet of the set; none by default. SVG and PNG leave them out.</summary>
    public IReadOnlyList<SheetLink> Links { get; init; } = [];

    /// <summary>Layers from the paper upwards: sheet, parts, strands, labels, findings.</summary>
    public required IReadOnlyList<SceneGroup> Layers { get; init; }
}
