using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Remarks;

/// <summary>
/// Two parallel ports that are one link and whose lanes arrive in another order: no fault, because receivers put the lanes of
/// one port in order again (IEEE 802.3 clause 82, from memory). Where the lanes are separate links it is rule P05.
/// </summary>
internal static class OrderOfLanes
{
    public static void Add(CheckContext context, List<Remark> remarks)
    {
        // Most plants have no such port, and then no lane need be followed.
        if (!context.Plant.Parts.Any(p => p.Shape.IsInterface && p.Shape.Ports.Any(o => HasNumberedLanes(o.Face))))
            return;
        var seen = new HashSet<(PortRef, PortRef)>();
        foreach ((PortRef port, Landing landing) in context.WiredLanes())
        {
            PortShape here = context.Plant.Port(port);
            if (!HasNumberedLanes(here.Face) || !landing.IsHeard || landing.End < landing.Start || landing.EndPort == port || landing.EndLane is not { } far)
                continue;
            PortShape there = context.Plant.Port(landing.EndPort);
            if (!HasNumberedLanes(there.Face) || !AreOneLink(context, port, landing, here, there)
                || InGroup(context, port, landing.Lane) == InGroup(context, landing.EndPort, far) || !seen.Add((port, landing.EndPort)))
                continue;
            remarks.Add(new Remark(
                $"the lanes of {context.Plant.Address(port)} reach {context.Plant.Address(landing.EndPort)} in another order; as one link that does not matter, receivers put them in order",
                context.Outcomes.LinkAt(port)?.Place ?? context.PlaceOf(landing.Strand)));
        }
    }

    /// <summary>Lanes of one-row ports are numbered by their places; which of two rows pairs with which is not settled.</summary>
    private static bool HasNumberedLanes(Face face) => face is { Family: ConnectorFamily.Array, Rows: 1 };

    /// <summary>True when both lanes belong to one link: ports that are not split, or a split port's group of several lanes.</summary>
    private static bool AreOneLink(CheckContext context, PortRef port, Landing landing, PortShape here, PortShape there) =>
        context.Outcomes.LinkAt(port) is not { From.Lane: > 0 } || LanesOf(context, port, landing.Lane.Group, here.Groups) > 1
            || LanesOf(context, landing.EndPort, landing.EndLane!.Value.Group, there.Groups) > 1;

    private static int LanesOf(CheckContext context, PortRef port, int group, int groups) =>
        groups == 0 ? 1 : context.Plant.Parts[port.Part].Shape.Lanes.Where(l => l.Port == port.Port && l.Group == group).Select(l => l.Number).Distinct().Count();

    /// <summary>A lane's number within its link.</summary>
    private static int InGroup(CheckContext context, PortRef port, Lane lane)
    {
        if (context.Plant.Port(port).Groups == 0)
            return lane.Number;
        int first = context.Plant.Parts[port.Part].Shape.Lanes.Where(l => l.Port == port.Port && l.Group == lane.Group).Min(l => l.Number);
        return lane.Number - first + 1;
    }
}
