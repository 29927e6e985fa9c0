namespace PolarityMap.Core.Remedies;

/// <summary>How far to search.</summary>
public sealed record RemedyOptions
{
    /// <summary>The most positions that are traced and checked again for proofs, over all of them.</summary>
    private const int MostPositions = 2_000_000;

    /// <summary>The most changes in a set.</summary>
    public int MostChanges { get; init; } = 3;

    /// <summary>The most sets that are proved by a full check; null for a number that suits the size of the plant.</summary>
    public int? MostProofs { get; init; }

    /// <summary>The most sets of several changes that are proved for one finding.</summary>
    public int MostProofsEach { get; init; } = 60;

    /// <summary>The most sets of several changes that are tried on the light of one finding.</summary>
    public int MostTrialsEach { get; init; } = 20_000;

    /// <summary>The findings to clear; null for all.</summary>
    public Func<int, bool>? Wanted { get; init; }

    /// <summary>How many sets may be proved in a plant of so many positions.</summary>
    internal int ProofsFor(int positions) => MostProofs ?? Math.Clamp(MostPositions / Math.Max(1, positions), 200, 3000);
}
