namespace PolarityMap.Drawing.Scene;

/// <summary>Line types of ISO 128-2. Dashes show a state (planned, spare, dark), never an identity.</summary>
public enum DashKind
{
    Continuous,
    Dashed,
    SpacedDashed,
    LongDashDot,
    LongDashDoubleDot,
    Dotted,

    /// <summary>Short dashes for short lines; ours, the standard has none so short.</summary>
    ShortDashed,
}
