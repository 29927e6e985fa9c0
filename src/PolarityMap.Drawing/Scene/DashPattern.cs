namespace PolarityMap.Drawing.Scene;

/// <summary>Lengths of dashes and gaps.</summary>
public static class DashPattern
{
    /// <summary>
    /// Dash, gap, dash, gap and so on as multiples of the line width; empty for a continuous line. Figures follow
    /// ISO 128-2: dash 12, long dash 24, gap 3, wide gap 18, dot at most half a line width.
    /// </summary>
    public static ReadOnlySpan<double> Multiples(DashKind kind) => kind switch
    {
        DashKind.Dashed => [12, 3],
        DashKind.SpacedDashed => [12, 18],
        DashKind.LongDashDot => [24, 3, 0.5, 3],
        DashKind.LongDashDoubleDot => [24, 3, 0.5, 3, 0.5, 3],
        DashKind.Dotted => [0.5, 3],
        DashKind.ShortDashed => [4, 2],
        _ => [],
    };
}
