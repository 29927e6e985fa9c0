using PolarityMap.Core.Checks;

namespace PolarityMap.Core.Remedies;

/// <summary>How far to search.</summary>
public sealed record RemedyOptions
{
    /// <summary>The most work for all proofs together: a proof takes about as much as the plant has positions, and more where much is found.</summary>
    private const int MostWork = 20_000_000;

    /// <summary>The work of a finding beside that of a position.</summary>
    private const int WorkOfFinding = 100;

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

    /// <summary>How many sets may be proved in a plant.</summary>
    internal int ProofsFor(CheckReport report) =>
        MostProofs ?? Math.Clamp(MostWork / (report.Traced.Graph.PositionCount + (WorkOfFinding * report.Findings.Count) + 1), 30, 500);
}
