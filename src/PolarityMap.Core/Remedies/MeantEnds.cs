using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Remedies;

/// <summary>Where the links mean each lane to come out, and which links have a port at either end.</summary>
internal sealed class MeantEnds
{
    private readonly Dictionary<int, int> _of = [];
    private readonly Dictionary<PortRef, List<int>> _linksAt = [];
    private readonly HashSet<PortRef> _split = [];

    public MeantEnds(TracedPlant traced)
    {
        for (int i = 0; i < traced.Plant.Links.Count; i++)
        {
            Link link = traced.Plant.Links[i];
            foreach ((LinkEnd from, LinkEnd to) in (ReadOnlySpan<(LinkEnd, LinkEnd)>)[(link.From, link.To), (link.To, link.From)])
            {
                if (!_linksAt.TryGetValue(from.Port, out List<int>? links))
                    _linksAt[from.Port] = links = [];
                links.Add(i);
                if (from.Lane > 0)
                    _split.Add(from.Port);
                foreach (Lane lane in LanesOf(traced.Plant, from))
                {
                    if (Answer(traced, lane, from, to) is { } meant)
                        _of.TryAdd(traced.Graph.PositionOf(from.Port, lane.Position), meant);
                }
            }
        }
    }

    /// <summary>The position at which a lane is meant to come out, or -1.</summary>
    public int Of(int lane) => _of.GetValueOrDefault(lane, -1);

    /// <summary>The links that have a port at either end.</summary>
    public IReadOnlyList<int> LinksAt(PortRef port) => _linksAt.TryGetValue(port, out List<int>? links) ? links : [];

    /// <summary>The end that a lane of a port belongs to: a lane of a port that links split, else the whole port.</summary>
    public LinkEnd EndOf(PortRef port, in Lane lane) => new(port, _split.Contains(port) ? lane.Group : 0);

    /// <summary>The lanes of a link's end.</summary>
    public static IEnumerable<Lane> LanesOf(Plant plant, LinkEnd end)
    {
        foreach (Lane lane in plant.Parts[end.Port.Part].Shape.Lanes)
        {
            if (lane.Port == end.Port.Port && (end.Lane == 0 || lane.Group == end.Lane))
                yield return lane;
        }
    }

    /// <summary>The lane of the same number at the other end that hears, or sends to, a lane.</summary>
    private static int? Answer(TracedPlant traced, Lane lane, LinkEnd from, LinkEnd to)
    {
        foreach (Lane far in LanesOf(traced.Plant, to))
        {
            bool answers = lane.Direction == LaneDirection.Both ? far.Direction == LaneDirection.Both
                : far.Direction != lane.Direction && far.Direction != LaneDirection.Both;
            if (answers && (far.Number == lane.Number || to.Lane > 0 || from.Lane > 0))
                return traced.Graph.PositionOf(to.Port, far.Position);
        }

        return null;
    }
}
