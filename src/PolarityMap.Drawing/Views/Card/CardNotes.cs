using PolarityMap.Core.Checks;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>Finds the findings that belong on a card.</summary>
internal sealed class CardNotes
{
    private readonly IReadOnlyList<Finding> _findings;
    private readonly Dictionary<int, List<int>> _byStrand = [];
    private readonly Dictionary<int, List<int>> _byLink = [];

    public CardNotes(IReadOnlyList<Finding> findings)
    {
        _findings = findings;
        for (int i = 0; i < findings.Count; i++)
        {
            foreach (int strand in findings[i].Strands)
                Add(_byStrand, strand, i);
            foreach (int link in findings[i].Links)
                Add(_byLink, link, i);
        }
    }

    /// <summary>True when a finding is about the strand.</summary>
    public bool IsFaulty(int strand) => _byStrand.ContainsKey(strand);

    /// <summary>The findings about these strands; of a link also those that refute it and are about no strand.</summary>
    public List<Finding> About(IEnumerable<Trail> trails, int link)
    {
        var found = new SortedSet<int>();
        foreach (Trail trail in trails)
        {
            if (_byStrand.TryGetValue(trail.Strand, out List<int>? ofStrand))
                found.UnionWith(ofStrand);
        }

        if (_byLink.TryGetValue(link, out List<int>? ofLink))
            found.UnionWith(ofLink.Where(i => _findings[i].Strands.Count == 0));
        return [.. found.Select(i => _findings[i])];
    }

    private static void Add(Dictionary<int, List<int>> index, int key, int finding)
    {
        if (!index.TryGetValue(key, out List<int>? list))
            index[key] = list = [];
        list.Add(finding);
    }
}
