using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Schedules;

/// <summary>What sits where, and where the fixed cabling behind a port comes out.</summary>
public sealed class FarEnds
{
    private readonly TracedPlant _traced;
    private readonly Sockets _sockets;

    public FarEnds(TracedPlant traced)
        : this(traced, new Sockets(traced.Plant))
    {
    }

    internal FarEnds(TracedPlant traced, Sockets sockets)
    {
        _traced = traced;
        _sockets = sockets;
    }

    /// <summary>What a hand finds a plug in: the adapter of a panel, or the port that it is plugged into; null where it is in nothing.</summary>
    public PortRef? HolderOf(PortRef plug) => _sockets.HolderOf(plug);

    /// <summary>The connectors at the other end that a connector of a cable is joined to.</summary>
    public List<PortRef> OtherEnds(PortRef port)
    {
        Shape shape = _traced.Plant.Parts[port.Part].Shape;
        PortShape own = shape.Ports[port.Port];
        var others = new List<PortRef>();
        for (int i = own.FirstPosition; i < own.FirstPosition + own.PositionCount; i++)
        {
            if (shape.Inside[i] is >= 0 and int partner && !others.Contains(new PortRef(port.Part, shape.PortAt(partner))))
                others.Add(new PortRef(port.Part, shape.PortAt(partner)));
        }

        return others;
    }

    /// <summary>
    /// The ports at the far end of the fixed cabling that a port belongs to. Into the rear of a part a laid cable is plugged: its
    /// other end counts. Behind any other port of a passive part the cabling goes as far as the next patch cord; behind an
    /// interface is its whole strand.
    /// </summary>
    public List<PortRef> Behind(PortRef port)
    {
        var ends = new List<PortRef>();
        PortRef from = port;
        if (_sockets.Across(port) is { } plug && IsLaid(plug.Part) && !_traced.Plant.Parts[port.Part].Shape.IsInterface)
            return [.. OtherEnds(plug).Select(o => HolderOf(o) ?? o)];
        if (_traced.Plant.Port(port).IsAdapter)
        {
            if (_sockets.MatingIn(port) is not { } mating)
                return ends;

            // An adapter is told from its front, where the cord is: the cabling is on the other side.
            from = IsCord(mating.A.Part) ? mating.B : mating.A;
        }

        for (int i = 1; i <= _traced.Plant.Port(from).PositionCount; i++)
        {
            if (FarEnd(_traced.Graph.PositionOf(from, i)) is { } far && far != port && !ends.Contains(far))
                ends.Add(far);
        }

        return ends;
    }

    private PortRef? FarEnd(int position)
    {
        StrandGraph graph = _traced.Graph;
        if (graph.HasLane(position))
            return _traced.OtherEnd(position) is var end && end != position ? graph.PlaceOf(end).Port : null;
        int start = position;
        for (int inside = graph.Inside[position]; inside >= 0; inside = graph.Inside[position])
        {
            PortRef leaves = graph.PlaceOf(inside).Port;
            int across = graph.Outside[inside];
            if (across < 0 || IsCord(graph.PartOf(across)) || graph.HasLane(across) || across == start)
                return _traced.Plant.Parts[leaves.Part].Shape.IsCable ? HolderOf(leaves) ?? leaves : leaves;
            position = across;
        }

        return position == start ? null : graph.PlaceOf(position).Port;
    }

    private bool IsLaid(int part) => PartFacts.IsLaid(_traced.Plant.Parts[part]);

    private bool IsCord(int part) => PartFacts.IsCord(_traced.Plant.Parts[part]);
}
