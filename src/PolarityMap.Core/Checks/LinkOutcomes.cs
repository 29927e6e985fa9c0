using PolarityMap.Core.Parts;
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
    internal LinkOutcome(int index, Link link, IReadOnlyList<Landing> landings)
    {
        Index = index;
        Link = link;
        Landings = landings;
    }

    /// <summary>Index into the plant's links.</summary>
    public int Index { get; }

    /// <summary>
    /// The link told in the direction of the runs: its first end is the one that its strands start from. A document may write
    /// it the other way.
    /// </summary>
    public Link Link { get; }

    /// <summary>Where the lanes of the link's first end come out, in the order of the lanes.</summary>
    public IReadOnlyList<Landing> Landings { get; }

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
    public IReadOnlyList<int> Strands => [.. Landings.Select(l => l.Strand).Distinct()];
}

/// <summary>
/// The outcome of every link. Each miss gets the one name that explains most: another network before a whole leg, a whole
/// leg before an array in reversed order, that before two transposed pairs, and a plain wrong port last.
/// </summary>
public sealed class LinkOutcomes
{
    private readonly CheckContext _context;
    private readonly LinkOutcome[] _all;
    private readonly Dictionary<LinkEnd, int> _farEnds = [];
    private readonly Dictionary<PortRef, List<int>> _linksAt = [];
    private readonly Dictionary<int, List<int>> _linksOn = [];
    private readonly Dictionary<int, List<int>> _linksTouching = [];
    private readonly HashSet<PortRef> _splitPorts = [];
    private readonly HashSet<int> _crossedStrands = [];

    internal LinkOutcomes(CheckContext context)
    {
        _context = context;
        IReadOnlyList<Link> links = context.Plant.Links;
        _all = new LinkOutcome[links.Count];
        for (int i = 0; i < links.Count; i++)
        {
            Link link = AlongTheRuns(links[i]);
            _all[i] = new LinkOutcome(i, link, context.Land(link.From));
            _farEnds.TryAdd(link.To, i);
            foreach (int strand in _all[i].Strands)
            {
                Index(_linksOn, strand, i);
                Index(_linksTouching, strand, i);
            }

            foreach (Landing landing in context.Land(link.To))
                Index(_linksTouching, landing.Strand, i);
            foreach (LinkEnd end in (ReadOnlySpan<LinkEnd>)[link.From, link.To])
            {
                Index(_linksAt, end.Port, i);
                if (end.Lane > 0)
                    _splitPorts.Add(end.Port);
            }
        }

        for (int i = 0; i < _all.Length; i++)
        {
            JudgeAlone(_all[i]);
            if (!_all[i].IsProven && _all[i].Miss == Miss.None)
                JudgeFromFarEnd(i);
        }

        NameWrongLegs();
        NameReversedOrder();
        NameTransposed();
        NameCrossedPairs();
    }

    public IReadOnlyList<LinkOutcome> All => _all;

    /// <summary>True for a strand of a crossed pair, which the polarity rules leave to the crossed-pair rule.</summary>
    public bool IsInCrossedPair(int strand) => _crossedStrands.Contains(strand);

    /// <summary>The links that have this port at either end and are not proven, as indices.</summary>
    public IReadOnlyList<int> RefutedAt(PortRef port) =>
        _linksAt.TryGetValue(port, out List<int>? links) ? [.. links.Where(i => !_all[i].IsProven)] : [];

    /// <summary>The first link that has this port at either end, or null.</summary>
    public Link? LinkAt(PortRef port) => _linksAt.TryGetValue(port, out List<int>? links) ? _all[links[0]].Link : null;

    /// <summary>The links that have this port at either end.</summary>
    public IEnumerable<Link> LinksAt(PortRef port) =>
        _linksAt.TryGetValue(port, out List<int>? links) ? links.Select(i => _all[i].Link) : [];

    /// <summary>The links that are not proven and start on one of these strands, as indices in order.</summary>
    public IReadOnlyList<int> RefutedOn(IEnumerable<int> strands) => Refuted(_linksOn, strands);

    /// <summary>The links that are not proven and have one of these strands at either end, as indices in order.</summary>
    public IReadOnlyList<int> RefutedTouching(IEnumerable<int> strands) => Refuted(_linksTouching, strands);

    private int[] Refuted(Dictionary<int, List<int>> index, IEnumerable<int> strands)
    {
        var refuted = new SortedSet<int>();
        foreach (int strand in strands)
        {
            if (index.TryGetValue(strand, out List<int>? links))
                refuted.UnionWith(links.Where(i => !_all[i].IsProven));
        }

        return [.. refuted];
    }

    /// <summary>A link from the end at which its strands start.</summary>
    private Link AlongTheRuns(Link link)
    {
        foreach (Landing landing in _context.Land(link.From))
        {
            if (landing.IsWired)
                return _context.Traced.Strands[landing.Strand][0] == landing.Start ? link : link with { From = link.To, To = link.From };
        }

        return link;
    }

    private static void Index<T>(Dictionary<T, List<int>> index, T key, int link)
        where T : notnull
    {
        if (!index.TryGetValue(key, out List<int>? links))
            index[key] = links = [];
        if (!links.Contains(link))
            links.Add(link);
    }

    /// <summary>The end that a landing reaches: a lane of a port that links split into lanes, else the whole port.</summary>
    private LinkEnd EndOf(Landing landing) =>
        new(landing.EndPort, _splitPorts.Contains(landing.EndPort) ? landing.EndLane!.Value.Group : 0);

    private void JudgeAlone(LinkOutcome outcome)
    {
        Plant plant = _context.Plant;
        Link link = outcome.Link;
        var reached = new List<LinkEnd>();
        bool proven = outcome.Landings.Count > 0;
        foreach (Landing landing in outcome.Landings)
        {
            bool lands = landing.EndLane is not null && landing.EndPort != link.From.Port;
            if (lands && !reached.Contains(EndOf(landing)))
                reached.Add(EndOf(landing));
            proven &= Proves(landing, link.From, link.To);
        }

        // The other end may have lanes that none of these reaches.
        foreach (Landing landing in _context.Land(link.To))
            proven &= Proves(landing, link.To, link.From);
        outcome.IsProven = proven;
        if (reached.Count == 0 || (reached.Count == 1 && reached[0] == link.To))
            return;
        int network = plant.NetworkOf(link.From.Port);
        bool foreign = network >= 0 && reached.Any(e => plant.NetworkOf(e.Port) is >= 0 and int n && n != network);
        bool lanes = link.From.Lane > 0 && link.To.Lane > 0 && reached.All(e => e.Port == link.To.Port);
        outcome.Miss = foreign ? Miss.WrongNetwork : lanes ? Miss.LaneOrder : Miss.WrongPort;
        outcome.Group = [outcome.Index];
        if (outcome.Miss == Miss.WrongPort && reached.Count == 1 && _farEnds.TryGetValue(reached[0], out int other))
            outcome.ReachesFarOf = other;
    }

    private bool Proves(Landing landing, LinkEnd from, LinkEnd to) =>
        landing.IsHeard && landing.EndPort != from.Port && EndOf(landing) == to;

    /// <summary>
    /// Where the first end's strands tell nothing wrong, those of the other end may: a pair of which only one strand is right.
    /// </summary>
    private void JudgeFromFarEnd(int index)
    {
        Link link = _all[index].Link with { From = _all[index].Link.To, To = _all[index].Link.From };
        var other = new LinkOutcome(index, link, _context.Land(link.From));
        JudgeAlone(other);
        if (other.Miss == Miss.None)
            return;
        other.ReachesFarOf = -1;
        _all[index] = other;
    }

    private static bool IsOpen(LinkOutcome o) => o.Miss == Miss.WrongPort && o.ReachesFarOf >= 0;

    /// <summary>The ports along a link's first strand for which <paramref name="wanted"/> holds, in order.</summary>
    private List<PortRef> PortsAlong(LinkOutcome outcome, Func<PortShape, bool> wanted)
    {
        var ports = new List<PortRef>();
        if (outcome.Landings.Count == 0)
            return ports;
        ReadOnlySpan<int> positions = _context.Traced.Strands[outcome.Landings[0].Strand];
        bool backwards = positions[0] != outcome.Landings[0].Start;
        foreach (int p in positions)
        {
            PortRef port = _context.Traced.Graph.PlaceOf(p).Port;
            if (wanted(_context.Plant.Port(port)))
                ports.Add(port);
        }

        if (backwards)
            ports.Reverse();
        return ports;
    }

    private void NameWrongLegs()
    {
        // Which leg of which part each link rides on.
        var byLeg = new Dictionary<(int Part, int Leg), List<int>>();
        var legsOf = new List<(int Part, int Leg)>[_all.Length];
        foreach (LinkOutcome outcome in _all)
        {
            legsOf[outcome.Index] = [.. PortsAlong(outcome, p => p.Leg > 0).Select(p => (p.Part, _context.Plant.Port(p).Leg)).Distinct()];
            foreach ((int, int) leg in legsOf[outcome.Index])
            {
                if (!byLeg.TryGetValue(leg, out List<int>? riders))
                    byLeg[leg] = riders = [];
                riders.Add(outcome.Index);
            }
        }

        foreach (((int Part, int Leg) leg, List<int> riders) in byLeg)
        {
            if (!riders.All(i => IsOpen(_all[i])))
                continue;
            int[] otherLegs =
            [
                .. riders.Select(i => legsOf[_all[i].ReachesFarOf].FirstOrDefault(l => l.Part == leg.Part).Leg).Distinct(),
            ];
            if (otherLegs.Length != 1 || otherLegs[0] == 0 || otherLegs[0] == leg.Leg)
                continue;
            // Of two trunks in series both could be named; the first one is.
            foreach (int i in riders.Where(i => _all[i].Legs.Leg == 0))
                _all[i].Legs = (leg.Part, leg.Leg, otherLegs[0]);
        }

        // Two legs that changed places are one fault.
        var groups = _all.Where(o => o.Legs.Leg != 0)
            .GroupBy(o => (o.Legs.Part, Math.Min(o.Legs.Leg, o.Legs.OtherLeg), Math.Max(o.Legs.Leg, o.Legs.OtherLeg)));
        foreach (var group in groups)
        {
            int[] indices = [.. group.Select(o => o.Index)];
            foreach (LinkOutcome outcome in group)
            {
                outcome.Miss = Miss.WrongLeg;
                outcome.Group = indices;
            }
        }
    }

    /// <summary>Links grouped by the first array connector that they pass, each group in the order of its first ports.</summary>
    private IEnumerable<List<LinkOutcome>> ArrayGroups()
    {
        var groups = new Dictionary<PortRef, List<LinkOutcome>>();
        foreach (LinkOutcome outcome in _all)
        {
            List<PortRef> arrays = PortsAlong(outcome, p => p.Face.Family == ConnectorFamily.Array);
            if (arrays.Count == 0)
                continue;
            if (!groups.TryGetValue(arrays[0], out List<LinkOutcome>? group))
                groups[arrays[0]] = group = [];
            group.Add(outcome);
        }

        foreach (List<LinkOutcome> group in groups.Values)
            group.Sort((a, b) => (a.Link.From.Port.Part, a.Link.From.Port.Port, a.Link.From.Lane).CompareTo((b.Link.From.Port.Part, b.Link.From.Port.Port, b.Link.From.Lane)));
        return groups.Values;
    }

    private void NameReversedOrder()
    {
        foreach (List<LinkOutcome> group in ArrayGroups())
        {
            // Two links in reversed order are two transposed pairs.
            int n = group.Count;
            if (n < 3)
                continue;
            bool reversed = true;
            for (int k = 0; k < n && reversed; k++)
            {
                LinkOutcome opposite = group[n - 1 - k];
                reversed = opposite == group[k]
                    ? group[k].Miss == Miss.None && group[k].Landings.Any(l => l.EndLane is not null)
                    : IsOpen(group[k]) && group[k].ReachesFarOf == opposite.Index;
            }

            if (!reversed)
                continue;
            int[] indices = [.. group.Select(o => o.Index)];
            foreach (LinkOutcome outcome in group.Where(o => o.Miss != Miss.None))
            {
                outcome.Miss = Miss.ReversedOrder;
                outcome.Group = indices;
            }
        }
    }

    private void NameTransposed()
    {
        foreach (LinkOutcome outcome in _all)
        {
            if (!IsOpen(outcome) || outcome.ReachesFarOf == outcome.Index)
                continue;
            LinkOutcome other = _all[outcome.ReachesFarOf];
            if (!IsOpen(other) || other.ReachesFarOf != outcome.Index)
                continue;
            int[] pair = [outcome.Index, other.Index];
            outcome.Miss = other.Miss = Miss.Transposed;
            outcome.Group = other.Group = pair;
        }
    }

    private void NameCrossedPairs()
    {
        bool IsCrossed(LinkOutcome o) => o.Miss == Miss.None && o.Landings.Count == 2
            && o.Landings.All(l => l.MeetsSame && l.EndPort == o.Link.To.Port);
        foreach (List<LinkOutcome> group in ArrayGroups())
        {
            int crossed = group.Count(IsCrossed);
            if (crossed == 0 || crossed > group.Count(o => o.IsProven))
                continue;
            int[] indices = [.. group.Select(o => o.Index)];
            foreach (LinkOutcome outcome in group.Where(IsCrossed))
            {
                outcome.Group = indices;
                outcome.IsCrossedPair = true;
                _crossedStrands.UnionWith(outcome.Strands);
            }
        }
    }
}
