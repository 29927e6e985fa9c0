namespace PolarityMap.Drawing.Views.Strands;

/// <summary>How much of a placed layout is painted, and under which names.</summary>
/// <param name="Through">The last column shown, for a series that reveals part after part; its boxes stand out.</param>
/// <param name="IdPrefix">Put before the ids of strands, where several layouts share a sheet.</param>
internal readonly record struct PaintScope(int Through, string IdPrefix)
{
    /// <summary>Everything, under its own names.</summary>
    public static PaintScope Whole { get; } = new(int.MaxValue, "");
}
