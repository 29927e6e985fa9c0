using PolarityMap.Core.Checks;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies.Kinds;

/// <summary>
/// A plug that hangs loose, or that found its port taken, goes into a free port; a simplex plug goes into the other place of its
/// duplex port.
/// </summary>
internal sealed class PlugPutIn : ChangeKind
{
    private const int Minutes = 4;

    public override string Name => "plug-put-in";

    public override string Title => "a plug put into a free port";

    public override bool MayClear(Rule rule) => rule.Code is "M08" or "W01";

    public override IEnumerable<Change> AtPort(ChangeContext context, PortRef port)
    {
        if (!ChangeWords.IsPlug(context.Plant, port))
            return [];
        if (context.Plant.Clashes.FirstOrDefault(c => c.Refused == port) is { } clash)
            return Into(context, port, Beside(context, port, clash.Port));
        if (context.Plugs.Of(port) is { } mating)
            return OtherPlace(context, port, mating);
        return Into(context, port, context.FreeSockets(context.Plant.Port(port).Face));
    }

    public override IEnumerable<Change> Toward(ChangeContext context, IReadOnlyList<int> way, IReadOnlyList<int> meant)
    {
        PortRef a = context.Graph.PlaceOf(way[^1]).Port, b = context.Graph.PlaceOf(meant[^1]).Port;
        foreach ((PortRef plug, PortRef socket) in (ReadOnlySpan<(PortRef, PortRef)>)[(a, b), (b, a)])
        {
            if (ChangeWords.IsPlug(context.Plant, plug) && context.Plugs.Of(plug) is null && ChangeWords.IsSocket(context.Plant, socket) && context.IsFree(socket))
                return Into(context, plug, [socket]);
        }

        return [];
    }

    private IEnumerable<Change> Into(ChangeContext context, PortRef plug, IReadOnlyList<PortRef> sockets)
    {
        if (sockets.Count > ChangeContext.FewPorts)
            yield break;
        foreach (PortRef socket in sockets)
        {
            string text = $"plug the {context.Plant.Port(plug).Name} end of {ChangeWords.Name(context.Plant, plug.Part)} into {context.Plant.Address(socket)}";
            if (context.Replug(this, plug, socket, [plug.Part], text, Minutes, new PlugPut(plug, socket)) is { } change)
                yield return change;
        }
    }

    /// <summary>The free ports of the part at which a plug found no room, and its adapters in which another plug waits.</summary>
    private static PortRef[] Beside(ChangeContext context, PortRef plug, PortRef taken)
    {
        Plant plant = context.Plant;
        var sockets = new List<PortRef>();
        for (int i = 0; i < plant.Parts[taken.Part].Shape.Ports.Count; i++)
        {
            var port = taken with { Port = i };
            bool takes = plant.Port(port).IsAdapter
                ? plant.OpenPlugs.Any(o => o.Adapter == port && o.Plug != plug)
                : plant.Port(port).Face == plant.Port(plug).Face && plant.Port(port).Side == plant.Port(taken).Side && context.IsFree(port);
            if (takes)
                sockets.Add(port);
        }

        return [.. sockets];
    }

    /// <summary>The other place of the duplex port that a simplex plug sits in.</summary>
    private IEnumerable<Change> OtherPlace(ChangeContext context, PortRef plug, Mating mating)
    {
        (PortRef socket, int position) = mating.A == plug ? (mating.B, mating.PositionOfB) : (mating.A, mating.PositionOfA);
        if (position == 0 || context.Plant.Port(socket).Face.Family != ConnectorFamily.Duplex)
            yield break;
        int other = 3 - position;
        string text = $"move {ChangeWords.Name(context.Plant, plug.Part)} from {context.Plant.Address(socket, position)} to {context.Plant.Address(socket, other)}";
        if (context.Replug(this, plug, socket, [plug.Part], text, Minutes, new PlugPut(plug, socket, other)) is { } change)
            yield return change;
    }
}
