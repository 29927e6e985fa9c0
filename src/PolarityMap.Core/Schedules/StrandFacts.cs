using PolarityMap.Core.Budget;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Schedules;

/// <summary>What rows say of a strand: its place in the order, its network, its link, and what it is in a word.</summary>
internal sealed class StrandFacts
{
    private readonly TracedPlant _traced;
    private readonly int[] _link;
    private readonly bool[] _reaches;
    private readonly int[] _network;
    private readonly string?[] _linkWords;

    public StrandFacts(TracedPlant traced)
    {
        _traced = traced;
        int count = traced.Strands.Count;
        Plant plant = traced.Plant;
        InOrder = new int[count];
        _link = new int[count];
        _reaches = new bool[count];
        _network = new int[count];
        _linkWords = new string?[plant.Links.Count];
        var links = new LinkIndex(plant.Links);
        for (int strand = 0; strand < count; strand++)
        {
            InOrder[traced.NumberOf(strand) - 1] = strand;
            ReadOnlySpan<int> positions = traced.Strands[strand];
            LinkEnd? from = EndAt(positions[0]), to = EndAt(positions[^1]);
            _link[strand] = positions.Length < 2 || traced.Strands.IsLoop(strand) ? -1
                : (from, to) switch
                {
                    ({ } a, { } b) => links.Find(a, b),
                    ({ } a, null) => links.Find(a, a),
                    (null, { } b) => links.Find(b, b),
                    _ => -1,
                };
            _reaches[strand] = _link[strand] >= 0 && from is { } f && to is { } t && Joins(plant.Links[_link[strand]], f, t);
            _network[strand] = NetworkOf(positions);
        }
    }

    /// <summary>The strands in the order of their numbers.</summary>
    public int[] InOrder { get; }

    /// <summary>The name of the strand's network: that of its first interface, else of the first part that names one; empty for none.</summary>
    public string Network(int strand) => _network[strand] >= 0 ? _traced.Plant.Networks[_network[strand]].Name : "";

    /// <summary>The index of that network, or -1.</summary>
    public int NetworkIndex(int strand) => _network[strand];

    /// <summary>The link that the strand belongs to, such as <c>SW-L/1 to SW-R/1</c>; empty for none.</summary>
    public string Link(int strand) => _link[strand] < 0 ? "" : LinkWords(_link[strand]);

    /// <summary>A declared link as a document writes it.</summary>
    public string LinkWords(int link) =>
        _linkWords[link] ??= $"{_traced.Plant.Address(_traced.Plant.Links[link].From)} to {_traced.Plant.Address(_traced.Plant.Links[link].To)}";

    /// <summary>True when the strand joins both ends of its link.</summary>
    public bool ReachesItsLink(int strand) => _reaches[strand];

    /// <summary>True for a strand that some row of a schedule tells of: it has a fibre and is no unused port of an interface.</summary>
    public bool IsTold(int strand)
    {
        ReadOnlySpan<int> positions = _traced.Strands[strand];
        if (positions.Length < 2)
            return false;
        foreach (int p in positions)
        {
            if (_traced.Graph.Inside[p] >= 0 || _traced.Graph.HasLane(p))
                return true;
        }

        return false;
    }

    /// <summary>What the strand is in a word or two.</summary>
    public string State(int strand)
    {
        if (_traced.Strands.IsLoop(strand))
            return "closed loop";
        ReadOnlySpan<int> positions = _traced.Strands[strand];
        LaneDirection? first = _traced.Graph.LaneAt(positions[0])?.Direction, last = _traced.Graph.LaneAt(positions[^1])?.Direction;
        return (first, last) switch
        {
            (null, null) => "unused",
            (null, _) or (_, null) => "open at one end",
            (LaneDirection.Both, LaneDirection.Both) or (LaneDirection.Transmit, LaneDirection.Receive) or (LaneDirection.Receive, LaneDirection.Transmit) => "lit",
            _ => $"{first.Value.Word()} meets {last.Value.Word()}",
        };
    }

    /// <summary>Ends of one link, named by lane or by the whole port, either way round.</summary>
    private static bool Joins(Link link, LinkEnd a, LinkEnd b) =>
        (Names(link.From, a) && Names(link.To, b)) || (Names(link.From, b) && Names(link.To, a));

    private static bool Names(LinkEnd named, LinkEnd end) => named.Port == end.Port && (named.Lane == 0 || named.Lane == end.Lane);

    private LinkEnd? EndAt(int position) =>
        _traced.Graph.LaneAt(position) is { } lane ? new LinkEnd(_traced.Graph.PlaceOf(position).Port, lane.Group) : null;

    private int NetworkOf(ReadOnlySpan<int> positions)
    {
        foreach (int end in (ReadOnlySpan<int>)[positions[0], positions[^1]])
        {
            if (_traced.Graph.HasLane(end) && _traced.Plant.NetworkOf(_traced.Graph.PlaceOf(end).Port) is >= 0 and int network)
                return network;
        }

        foreach (int p in positions)
        {
            if (_traced.Plant.NetworkOf(_traced.Graph.PlaceOf(p).Port) is >= 0 and int network)
                return network;
        }

        return -1;
    }
}
