namespace PolarityMap.Drawing.Scene;

/// <summary>Line widths in mm, steps of ISO 128-2.</summary>
public static class LineWidths
{
    /// <summary>Sheet frame and title block outline.</summary>
    public const double Frame = 0.7;

    /// <summary>Outline of a part to change.</summary>
    public const double Change = 1;

    /// <summary>Part outlines and connector faces.</summary>
    public const double Outline = 0.5;

    /// <summary>Sheaths, the inside of cassettes, zone lines.</summary>
    public const double Inner = 0.35;

    /// <summary>Leaders, title block rules, ticks.</summary>
    public const double Leader = 0.25;
}
