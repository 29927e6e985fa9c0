using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks;

/// <summary>In which way a link misses its far port.</summary>
public enum Miss
{
    /// <summary>It does not miss; or nothing arrives at all, which other rules say.</summary>
    None,

    /// <summary>It comes out at a port of another network.</summary>
    WrongNetwork,

    /// <summary>All links of a leg come out where another leg's links should.</summary>
    WrongLeg,

    /// <summary>The links of one array come out in reversed order.</summary>
    ReversedOrder,

    /// <summary>Two links come out at each other's far ports.</summary>
    Transposed,

    /// <summary>It comes out at the right port of separate lanes, at another lane of it.</summary>
    LaneOrder,

    /// <summary>It comes out at some other port.</summary>
    WrongPort,
}

/// <summary>What one link was meant to do and does.</summary>
public sealed class LinkOutcome
{
    private readonly CheckContext _context;

    internal LinkOutcome(int index, Link link, CheckContext context)
    {
        Index = index;
        Link = link;
        _context = context;
    }

    /// <summary>Index into the plant's links.</summary>
    public int Index { get; }

    /// <summary>
    /// The link told in the direction of the runs: its first end is the one that its strands start from. A document may write
    /// it the other way.
    /// </summary>
    public Link Link { get; }

    /// <summary>Where the lanes of the link's first end come out, in the order of the lanes. Looked up at each call.</summary>
    public IReadOnlyList<Landing> Landings => _context.Land(Link.From);

    /// <summary>How it misses.</summary>
    public Miss Miss { get; internal set; }

    /// <summary>The link whose far port this one reaches with all its lanes, or -1.</summary>
    public int ReachesFarOf { get; internal set; } = -1;

    /// <summary>
    /// True when the link comes out at the right port with transmit on transmit and receive on receive, while most of its
    /// neighbours, the links through the same array connector, are right: a fault of this pair alone.
    /// </summary>
    public bool IsCrossedPair { get; internal set; }

    /// <summary>True when every lane of either end reaches the other end in the opposite direction.</summary>
    public bool IsProven { get; internal set; }

    /// <summary>The links found to be one fault together with this one, itself included; of a crossed pair, all links of its array.</summary>
    public IReadOnlyList<int> Group { get; internal set; } = [];

    /// <summary>The two legs that changed places, when <see cref="Miss"/> is <see cref="Miss.WrongLeg"/>.</summary>
    public (int Part, int Leg, int OtherLeg) Legs { get; internal set; }

    /// <summary>The strands of the link, each once.</summary>
    public IReadOnlyList<int> Strands
    {
        get
        {
            var strands = new List<int>();
            foreach (Landing landing in Landings)
            {
                if (!strands.Contains(landing.Strand))
                    strands.Add(landing.Strand);
            }

            return strands;
        }
    }
}
