using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>Tells whether a leg that is there serves in place of one that is planned.</summary>
/// <param name="before">The existing plant.</param>
/// <param name="free">What is free in it.</param>
/// <param name="planned">The planned plant.</param>
internal sealed class LegFit(CheckReport before, FreePlaces free, Plant planned)
{
    private readonly Dictionary<PortRef, Joint> _planned = planned.Matings.Select(m => Joint.Of(m, p => p)).SelectMany(j => new[] { (j.A, j), (j.B, j) })
        .Concat(planned.OpenPlugs.Select(o => (o.Plug, Joint.Of(o, p => p)))).ToDictionary(p => p.Item1, p => p.Item2);

    private Plant Old => before.Traced.Plant;

    /// <summary>Null where the leg does not serve, else whether it has to be turned.</summary>
    /// <param name="leg">The leg that is there.</param>
    /// <param name="hop">The planned one, from end to end.</param>
    /// <param name="way">The way that it covers, in millimetres.</param>
    public bool? Of(FreeLeg leg, WayHop hop, long way)
    {
        Part old = Old.Parts[leg.Near.Part], part = planned.Parts[hop.Part];
        if (PartFacts.Type(old) != PartFacts.Type(part) || old.Fibre != part.Fibre || (old.Length?.Millimetres ?? 0) < way || Network(Old, old) != Network(planned, part))
            return null;
        (string?, string?) rooms = (FreePlaces.RoomOf(planned, hop.In, PlannedAt), FreePlaces.RoomOf(planned, hop.Out, PlannedAt));
        string? near = RoomOf(leg.Near), far = RoomOf(leg.Far);
        PortShape from = planned.Port(hop.In), to = planned.Port(hop.Out);
        if ((near, far) == rooms && IsLike(Old.Port(leg.Near), from) && IsLike(Old.Port(leg.Far), to))
            return false;
        return (far, near) == rooms && IsLike(Old.Port(leg.Far), from) && IsLike(Old.Port(leg.Near), to) ? true : null;
    }

    /// <summary>The name of a part's network; empty where it has none.</summary>
    public static string Network(Plant plant, Part part) => part.Network < 0 ? "" : plant.Networks[part.Network].Name;

    /// <summary>The room of a plug; one that hangs free lies where all the plugs at that end of its cable are.</summary>
    private string? RoomOf(PortRef plug)
    {
        if (FreePlaces.RoomOf(Old, plug, OldAt) is { } room)
            return room;
        PortShape[] ports = [.. Old.Parts[plug.Part].Shape.Ports];
        string[] rooms = [.. Enumerable.Range(0, ports.Length).Where(n => ports[n].Side == ports[plug.Port].Side).Select(n => FreePlaces.RoomOf(Old, plug with { Port = n }, OldAt)).OfType<string>().Distinct()];
        return rooms.Length == 1 ? rooms[0] : null;
    }

    private Joint? PlannedAt(PortRef port) => _planned.TryGetValue(port, out Joint joint) ? joint : null;

    private Joint? OldAt(PortRef port) => before.Traced.MatingAt(before.Traced.Graph.PositionOf(port, 1)) is { } mating ? Joint.Of(mating, p => p) : free.At(port);

    private static bool IsLike(PortShape a, PortShape b) => a.Base == b.Base && a.Pinned == b.Pinned && a.Polish == b.Polish && a.Face == b.Face;
}
