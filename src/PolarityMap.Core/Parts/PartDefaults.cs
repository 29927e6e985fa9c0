using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Parts;

/// <summary>What a plant says once for every part that does not say it itself.</summary>
public sealed record PartDefaults
{
    public static readonly PartDefaults None = new();

    /// <summary>The fibre class of passive parts, or null when it is not stated.</summary>
    public FibreClass? Fibre { get; init; }

    /// <summary>
    /// Which of the two live habits the plant follows at a cassette's rear: false, the cassette has pins and the trunk none
    /// (four public sources); true, the trunk has pins and the cassette none (three public sources).
    /// </summary>
    public bool TrunksArePinned { get; init; }
}
