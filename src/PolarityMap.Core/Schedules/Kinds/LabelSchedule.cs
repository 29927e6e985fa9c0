using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

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
        PortRef near = input.FarEnds.HolderOf(port) ?? port;
        IEnumerable<PortRef> fars = input.FarEnds.OtherEnds(port).Select(o => input.FarEnds.HolderOf(o) ?? o);

        return Row(
            input, End(input.Plant, near), Several(input.Plant, fars), "cable end", part.IsInline ? PartFacts.Type(part) : part.Name,
            input.Plant.Port(port).Name, PartFacts.Room(input.Plant, near), NetworkOf(input, port));
    }

    /// <summary>A port: itself, then the port at the far end of the cabling behind it.</summary>
    private static IReadOnlyList<Cell> Port(ScheduleInput input, PortRef port)
    {
        Part part = input.Plant.Parts[port.Part];
        string what = part.Shape.IsInterface ? "interface port" : input.Plant.Port(port).IsAdapter ? "adapter" : "port";
        return Row(
            input, End(input.Plant, port), Several(input.Plant, input.FarEnds.Behind(port)), what, part.Name, input.Plant.Port(port).Name,
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

    private static string Several(Plant plant, IEnumerable<PortRef> ports)
    {
        PortRef[] different = [.. ports.Distinct()];
        return different.Length switch
        {
            0 => "",
            1 => End(plant, different[0]),
            _ => $"{End(plant, different[0])} and {different.Length - 1} more",
        };
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
