using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Plants;

/// <summary>What the whole plant goes by.</summary>
public sealed record PlantPractice
{
    /// <summary>The set of limits that losses are judged by.</summary>
    public LimitProfile Limits { get; init; } = LimitProfile.Default;

    /// <summary>The order in which fibre colours are counted.</summary>
    public ColourSequence Colours { get; init; } = ColourSequence.Tia598;

    /// <summary>The margin that every link must keep, or null when none is asked for.</summary>
    public Decibel? Margin { get; init; }

    /// <summary>A group index that replaces those of the fibre classes, or null.</summary>
    public decimal? GroupIndex { get; init; }
}
