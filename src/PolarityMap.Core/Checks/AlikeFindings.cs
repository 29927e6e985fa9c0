using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks;

/// <summary>Findings of one rule that the same runs of the document made: told once, with the others listed.</summary>
public static class AlikeFindings
{
    /// <summary>The findings in groups, each in the order of its first; one without related places stands alone.</summary>
    public static IReadOnlyList<IReadOnlyList<Finding>> Of(IReadOnlyList<Finding> findings)
    {
        var groups = new List<List<Finding>>();
        var known = new Dictionary<(string Code, int Hash), List<List<Finding>>>();
        foreach (Finding finding in findings)
        {
            (string, int) key = (finding.Rule.Code, HashOf(finding.Related));
            if (!known.TryGetValue(key, out List<List<Finding>>? near))
                known[key] = near = [];
            List<Finding>? alike = finding.Related.Count == 0 ? null : near.Find(g => g[0].Related.SequenceEqual(finding.Related));
            if (alike is null)
            {
                groups.Add(alike = []);
                near.Add(alike);
            }

            alike.Add(finding);
        }

        return groups;
    }

    private static int HashOf(IReadOnlyList<SourcePlace> places)
    {
        var hash = default(HashCode);
        foreach (SourcePlace place in places)
            hash.Add(place);
        return hash.ToHashCode();
    }
}
