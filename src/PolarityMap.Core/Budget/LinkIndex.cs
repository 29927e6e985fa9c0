using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Budget;

/// <summary>Finds the declared link that a strand between two lanes belongs to.</summary>
internal sealed class LinkIndex
{
    private readonly Dictionary<(LinkEnd, LinkEnd), int> _byEnds = [];
    private readonly Dictionary<LinkEnd, int> _byEnd = [];

    public LinkIndex(IReadOnlyList<Link> links)
    {
        for (int i = 0; i < links.Count; i++)
        {
            _byEnds.TryAdd((links[i].From, links[i].To), i);
            _byEnds.TryAdd((links[i].To, links[i].From), i);
            _byEnd.TryAdd(links[i].From, i);
            _byEnd.TryAdd(links[i].To, i);
        }
    }

    /// <summary>
    /// The link between two lanes, else the link that has one of them, else -1. A link may name a lane or the whole port.
    /// </summary>
    public int Find(LinkEnd near, LinkEnd far)
    {
        foreach (LinkEnd a in (ReadOnlySpan<LinkEnd>)[near, near with { Lane = 0 }])
        {
            foreach (LinkEnd b in (ReadOnlySpan<LinkEnd>)[far, far with { Lane = 0 }])
            {
                if (_byEnds.TryGetValue((a, b), out int link))
                    return link;
            }
        }

        foreach (LinkEnd end in (ReadOnlySpan<LinkEnd>)[near, near with { Lane = 0 }, far, far with { Lane = 0 }])
        {
            if (_byEnd.TryGetValue(end, out int link))
                return link;
        }

        return -1;
    }
}
