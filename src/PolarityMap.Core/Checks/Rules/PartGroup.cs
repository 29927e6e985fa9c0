using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

/// <summary>Parts that one line of the document makes and that have one fault, with the strands on which they have it.</summary>
internal sealed class PartGroup
{
    private readonly List<int> _parts = [];
    private readonly List<int> _strands = [];
    private readonly HashSet<int> _seen = [];

    public int Count => _parts.Count;

    /// <summary>The parts as places of a finding.</summary>
    public IReadOnlyList<FindingSite> Sites => [.. _parts.Select(p => new FindingSite(p))];

    public IReadOnlyList<int> Strands => _strands;

    public void Add(int part, int strand)
    {
        if (!_parts.Contains(part))
            _parts.Add(part);
        if (_seen.Add(strand))
            _strands.Add(strand);
    }

    /// <summary>Such as <c>T-1 and 3 more at the same place</c>.</summary>
    public string Names(Plant plant) =>
        Count == 1 ? plant.Parts[_parts[0]].Name : $"{plant.Parts[_parts[0]].Name} and {Count - 1} more at the same place";
}
