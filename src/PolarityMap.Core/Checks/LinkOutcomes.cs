using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks;

/// <summary>
/// The outcome of every link. Each miss gets the one name that explains most: another network before a whole leg, a whole
/// leg before an array in reversed order, that before two transposed pairs, and a plain wrong port last.
/// </summary>
public sealed class LinkOutcomes
{
    private readonly CheckContext _context;
    private readonly Link[] _links;
    private readonly LinkOutcome[] _all;
    private readonly HashSet<PortRef> _splitPorts = [];
    private readonly HashSet<int> _crossedStrands = [];
    private readonly List<Landing> _landings = [];
    private readonly List<LinkEnd> _reached = [];
    private Dictionary<LinkEnd, int>? _farEnds;
    private LinkLookup? _lookup;
    private IReadOnlyCollection<List<LinkOutcome>>? _arrayGroups;

    internal LinkOutcomes(CheckContext context)
    {
        _context = context;
        _links = new Link[context.Plant.Links.Count];
        _all = new LinkOutcome[_links.Length];
        for (int i = 0; i < _links.Length; i++)
        {
            Link link = _links[i] = AlongTheRuns(context.Plant.Links[i]);
            _all[i] = new LinkOutcome(i, link, context);
            if (link.From.Lane > 0)
                _splitPorts.Add(link.From.Port);
            if (link.To.Lane > 0)
                _splitPorts.Add(link.To.Port);
        }

        for (int i = 0; i < _all.Length; i++)
        {
            JudgeAlone(_all[i]);
            if (!_all[i].IsProven && _all[i].Miss == Miss.None)
                JudgeFromFarEnd(i);
        }

        // Legs, reversed and transposed ports are made of links that come out at each other's far ports.
        if (Array.Exists(_all, IsOpen))
        {
            NameWrongLegs();
            NameReversedOrder();
            NameTransposed();
        }

        if (Array.Exists(_all, IsCrossed))
            NameCrossedPairs();
    }

    public IReadOnlyList<LinkOutcome> All => _all;

    /// <summary>The first link that has each far end.</summary>
    private Dictionary<LinkEnd, int> FarEnds => _farEnds ??= IndexFarEnds();

    private LinkLookup Lookup => _lookup ??= new LinkLookup(_context, _links);

    /// <summary>True for a strand of a crossed pair, which the polarity rules leave to the crossed-pair rule.</summary>
    public bool IsInCrossedPair(int strand) => _crossedStrands.Contains(strand);

    /// <summary>The links that have this port at either end and are not proven, as indices.</summary>
    public IReadOnlyList<int> RefutedAt(PortRef port) => [.. Lookup.At(port).Where(i => !_all[i].IsProven)];

    /// <summary>The first link that has this port at either end, or null.</summary>
    public Link? LinkAt(PortRef port) => LinksAt(port).FirstOrDefault();

    /// <summary>The links that have this port at either end.</summary>
    public IEnumerable<Link> LinksAt(PortRef port) => Lookup.At(port).Select(i => _all[i].Link);

    /// <summary>The links that are not proven and start on one of these strands, as indices in order.</summary>
    public IReadOnlyList<int> RefutedOn(IEnumerable<int> strands) => Refuted(strands.SelectMany(Lookup.On));

    /// <summary>The links that are not proven and have one of these strands at either end, as indices in order.</summary>
    public IReadOnlyList<int> RefutedTouching(IEnumerable<int> strands) => Refuted(strands.SelectMany(Lookup.Touching));

    private int[] Refuted(IEnumerable<int> links)
    {
        var refuted = new SortedSet<int>();
        foreach (int link in links)
        {
            if (!_all[link].IsProven)
                refuted.Add(link);
        }

        return [.. refuted];
    }

    /// <summary>A link from the end at which its strands start.</summary>
    private Link AlongTheRuns(Link link)
    {
        int wired = _context.FirstWired(link.From);
        return wired < 0 || _context.Traced.Strands[_context.Traced.StrandOf(wired)][0] == wired ? link : link with { From = link.To, To = link.From };
    }

    private Dictionary<LinkEnd, int> IndexFarEnds()
    {
        var index = new Dictionary<LinkEnd, int>();
        for (int i = 0; i < _links.Length; i++)
            index.TryAdd(_links[i].To, i);
        return index;
    }

    /// <summary>The end that a landing reaches: a lane of a port that links split into lanes, else the whole port.</summary>
    private LinkEnd EndOf(in Landing landing) =>
        new(landing.EndPort, _splitPorts.Count > 0 && _splitPorts.Contains(landing.EndPort) ? landing.EndLane!.Value.Group : 0);

    private void JudgeAlone(LinkOutcome outcome)
    {
        Link link = outcome.Link;
        _reached.Clear();
        _context.Land(link.From, _landings);
        bool proven = _landings.Count > 0;
        foreach (Landing landing in _landings)
        {
            bool lands = landing.ReachesLane && landing.EndPort != link.From.Port;
            if (lands && !_reached.Contains(EndOf(landing)))
                _reached.Add(EndOf(landing));
            proven &= Proves(landing, link.From, link.To);
        }

        // The other end may have lanes that none of these reaches.
        _context.Land(link.To, _landings);
        foreach (Landing landing in _landings)
            proven &= Proves(landing, link.To, link.From);
        outcome.IsProven = proven;
        if (_reached.Count > 1 || (_reached.Count == 1 && _reached[0] != link.To))
            NameMiss(outcome, _reached);
    }

    private void NameMiss(LinkOutcome outcome, List<LinkEnd> reached)
    {
        Plant plant = _context.Plant;
        Link link = outcome.Link;
        int network = plant.NetworkOf(link.From.Port);
        bool foreign = network >= 0 && reached.Any(e => plant.NetworkOf(e.Port) is >= 0 and int n && n != network);
        bool lanes = link.From.Lane > 0 && link.To.Lane > 0 && reached.All(e => e.Port == link.To.Port);
        outcome.Miss = foreign ? Miss.WrongNetwork : lanes ? Miss.LaneOrder : Miss.WrongPort;
        outcome.Group = [outcome.Index];
        if (outcome.Miss == Miss.WrongPort && reached.Count == 1 && FarEnds.TryGetValue(reached[0], out int other))
            outcome.ReachesFarOf = other;
    }

    private bool Proves(in Landing landing, LinkEnd from, LinkEnd to) =>
        landing.IsHeard && landing.EndPort != from.Port && EndOf(landing) == to;

    /// <summary>
    /// Where the first end's strands tell nothing wrong, those of the other end may: a pair of which only one strand is right.
    /// </summary>
    private void JudgeFromFarEnd(int index)
    {
        Link link = _all[index].Link with { From = _all[index].Link.To, To = _all[index].Link.From };
        var other = new LinkOutcome(index, link, _context);
        JudgeAlone(other);
        if (other.Miss == Miss.None)
            return;
        other.ReachesFarOf = -1;
        _all[index] = other;
    }

    private static bool IsOpen(LinkOutcome o) => o.Miss == Miss.WrongPort && o.ReachesFarOf >= 0;

    private static bool IsCrossed(LinkOutcome o) => !o.IsProven && o.Miss == Miss.None && o.Landings is [var one, var other]
        && IsCrossed(one, o.Link.To.Port) && IsCrossed(other, o.Link.To.Port);

    private static bool IsCrossed(in Landing landing, PortRef meant) => landing.MeetsSame && landing.EndPort == meant;

    /// <summary>The ports along a link's first strand for which <paramref name="wanted"/> holds, in order.</summary>
    private List<PortRef> PortsAlong(LinkOutcome outcome, Func<PortShape, bool> wanted)
    {
        var ports = new List<PortRef>();
        _context.Land(outcome.Link.From, _landings);
        if (_landings.Count == 0)
            return ports;
        ReadOnlySpan<int> positions = _context.Traced.Strands[_landings[0].Strand];
        bool backwards = positions[0] != _landings[0].Start;
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
    private IReadOnlyCollection<List<LinkOutcome>> ArrayGroups()
    {
        if (_arrayGroups is not null)
            return _arrayGroups;
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
        return _arrayGroups = groups.Values;
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
                    ? group[k].Miss == Miss.None && group[k].Landings.Any(l => l.ReachesLane)
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
