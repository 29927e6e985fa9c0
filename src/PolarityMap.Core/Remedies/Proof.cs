namespace PolarityMap.Core.Remedies;

/// <summary>What a plant with changes in it was found to be: built anew, traced and checked as a whole.</summary>
/// <param name="Cleared">Indices of the findings that are gone, in order.</param>
/// <param name="Raised">Where each finding is that was not there before.</param>
/// <param name="LosesLinks">True when a link that was proven is so no more.</param>
/// <param name="Proven">How many links are proven.</param>
internal sealed record Proof(IReadOnlyList<int> Cleared, IReadOnlyList<FindingPlaces> Raised, bool LosesLinks, int Proven)
{
    /// <summary>The plant cannot be built so.</summary>
    public static readonly Proof None = new([], [], true, 0);

    /// <summary>True when nothing got worse.</summary>
    public bool IsSound => Raised.Count == 0 && !LosesLinks;

    /// <summary>True when the changes clear a finding and nothing got worse.</summary>
    public bool Clears(int finding) => IsSound && Cleared.Contains(finding);
}
