using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Schedules.Kinds;

/// <summary>
/// A label for both ends of every cable and for every port. In the manner of TIA-606 each tells its own end and the other:
/// <c>near / far</c>. The form <c>ROOM-PART:PORT</c> of an end is common practice, from memory.
/// </summary>
public sealed class LabelSchedule : ScheduleKind
{
    public override string Name => "labels";

    public override string Title => "Label schedule";

    public override string Purpose =>
        "For whoever prints and sticks the labels: one for each end of every cable and for every port, near end before far end in the manner of TIA-606 (the form of an end is common practice, from memory).";

    public override IReadOnlyList<ScheduleColumn> Columns { get; } =
    [
        new("label", "Label"),
        new("what", "On"),
        new("item", "Cable or part"),
        new("port", "End or port"),
        new("room", "Room"),
        new("near", "Near"),
        new("far", "Far"),
        new("network", "Network"),
    ];

    protected override IEnumerable<IReadOnlyList<Cell>> Rows(ScheduleInput input)
    {
        Plant plant = input.Plant;
        for (int i = 0; i < plant.Parts.Count; i++)
        {
            Part part = plant.Parts[i];
            bool isCable = part.Shape is { IsCable: true, Splices: 0 };
            for (int p = 0; p < part.Shape.Ports.Count; p++)
            {
                var port = new PortRef(i, p);

                // Bare fibres carry no label of their own: their cable's end does, and what they end in.
                if (!isCable && part.Shape.Ports[p].Face.Family == ConnectorFamily.Bare)
                    continue;
                yield return isCable ? CableEnd(input, port) : Port(input, port);
            }
        }
    }

    /// <summary>An end of a cable: what this end sits in, then what the other end of the same leg sits in.</summary>
    private static IReadOnlyList<Cell> CableEnd(ScheduleInput input, PortRef port)
    {
        Part part = input.Plant.Parts[port.Part];
        PortRef near = input.Sockets.HolderOf(port) ?? port;
        var fars = new List<string>();
        foreach (PortRef other in OtherEnds(part, port))
        {
            string end = End(input.Plant, input.Sockets.HolderOf(other) ?? other);
            if (!fars.Contains(end))
                fars.Add(end);
        }

        return Row(
            input, End(input.Plant, near), Several(fars), "cable end", part.IsInline ? PartFacts.Type(part) : part.Name,
            input.Plant.Port(port).Name, PartFacts.Room(input.Plant, near), NetworkOf(input, port));
    }

    /// <summary>A port: itself, then the port at the far end of the cabling behind it.</summary>
    private static IReadOnlyList<Cell> Port(ScheduleInput input, PortRef port)
    {
        Part part = input.Plant.Parts[port.Part];
        string what = part.Shape.IsInterface ? "interface port" : input.Plant.Port(port).IsAdapter ? "adapter" : "port";
        return Row(
            input, End(input.Plant, port), Several(Behind(input, port)), what, part.Name, input.Plant.Port(port).Name,
            part.Room ?? "", NetworkOf(input, port));
    }

    private static IReadOnlyList<Cell> Row(ScheduleInput input, string near, string far, string what, string item, string port, string room, int network) =>
    [
        Cell.Of(far.Length > 0 ? $"{near} / {far}" : near), Cell.Of(what), Cell.Of(item), Cell.Of(port), Cell.Of(room),
        Cell.Of(near), Cell.Of(far), Cell.Of(network >= 0 ? input.Plant.Networks[network].Name : ""),
    ];

    /// <summary>An end in words, such as <c>Equipment room-K-1:3</c>.</summary>
    private static string End(Plant plant, PortRef port)
    {
        Part part = plant.Parts[port.Part];
        return part.Room is { } room ? $"{room}-{part.Name}:{plant.Port(port).Name}" : $"{part.Name}:{plant.Port(port).Name}";
    }

    private static string Several(List<string> ends) => ends.Count switch
    {
        0 => "",
        1 => ends[0],
        _ => $"{ends[0]} and {ends.Count - 1} more",
    };

    /// <summary>The connectors at the other end that a connector of a cable is joined to.</summary>
    private static List<PortRef> OtherEnds(Part part, PortRef port)
    {
        var others = new List<PortRef>();
        PortShape shape = part.Shape.Ports[port.Port];
        for (int i = 0; i < shape.PositionCount; i++)
        {
            int partner = part.Shape.Inside[shape.FirstPosition + i];
            if (partner < 0)
                continue;
            var other = new PortRef(port.Part, part.Shape.PortAt(partner));
            if (!others.Contains(other))
                others.Add(other);
        }

        return others;
    }

    /// <summary>
    /// The ports at the far end of what lies behind a port. Behind a port of a passive part is the fixed cabling as far as the next
    /// patch cord; behind an interface is its whole strand.
    /// </summary>
    private static List<string> Behind(ScheduleInput input, PortRef port)
    {
        var ends = new List<string>();
        PortShape shape = input.Plant.Port(port);
        PortRef from = port;
        if (shape.IsAdapter)
        {
            if (input.Sockets.MatingIn(port) is not { } mating)
                return ends;

            // An adapter is told from its front, where the cord is: the cabling is on the other side.
            from = PartFacts.IsCord(input.Plant.Parts[mating.A.Part]) ? mating.B : mating.A;
            shape = input.Plant.Port(from);
        }

        for (int i = 1; i <= shape.PositionCount; i++)
        {
            int position = input.Traced.Graph.PositionOf(from, i);
            if (FarEnd(input, position) is not { } far || far == port)
                continue;
            string end = End(input.Plant, far);
            if (!ends.Contains(end))
                ends.Add(end);
        }

        return ends;
    }

    private static PortRef? FarEnd(ScheduleInput input, int position)
    {
        StrandGraph graph = input.Traced.Graph;
        Plant plant = input.Plant;
        if (graph.HasLane(position))
            return input.Traced.OtherEnd(position) is var end && end != position ? graph.PlaceOf(end).Port : null;
        int start = position;
        for (int inside = graph.Inside[position]; inside >= 0; inside = graph.Inside[position])
        {
            PortRef leaves = graph.PlaceOf(inside).Port;
            int across = graph.Outside[inside];
            if (across < 0 || PartFacts.IsCord(plant.Parts[graph.PartOf(across)]) || graph.HasLane(across) || across == start)
                return plant.Parts[leaves.Part].Shape.IsCable ? input.Sockets.HolderOf(leaves) ?? leaves : leaves;
            position = across;
        }

        return position == start ? null : graph.PlaceOf(position).Port;
    }

    /// <summary>The port's own network, else that of its first strand.</summary>
    private static int NetworkOf(ScheduleInput input, PortRef port)
    {
        if (input.Plant.NetworkOf(port) is >= 0 and int own)
            return own;
        PortRef? filled = input.Plant.Port(port).PositionCount > 0 ? port : input.Sockets.MatingIn(port)?.A;
        if (filled is not { } with)
            return -1;
        for (int i = 1; i <= input.Plant.Port(with).PositionCount; i++)
        {
            if (input.Facts.NetworkIndex(input.Traced.StrandOf(input.Traced.Graph.PositionOf(with, i))) is >= 0 and int network)
                return network;
        }

        return -1;
    }
}
