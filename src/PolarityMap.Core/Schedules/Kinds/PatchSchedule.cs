using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Schedules.Kinds;

/// <summary>Every patch cord with the ports at its two ends.</summary>
public sealed class PatchSchedule : ScheduleKind
{
    public override string Name => "patching";

    public override string Title => "Patch schedule";

    public override string Purpose => "For whoever plugs the cords: which cord goes from which port to which port.";

    public override IReadOnlyList<ScheduleColumn> Columns { get; } =
    [
        new("number", "No.", CellKind.Whole),
        new("network", "Network"),
        new("from", "From port"),
        new("from-room", "From room"),
        new("to", "To port"),
        new("to-room", "To room"),
        new("type", "Cord"),
        new("length", "Length (m)", CellKind.Metres),
        new("fibre-class", "Fibre class"),
        new("jacket", "Jacket"),
        new("key-codes", "Key codes"),
        new("cord", "Name"),
        new("note", "Note"),
        new("done", "Done", CellKind.Blank),
    ];

    protected override IEnumerable<IReadOnlyList<Cell>> Rows(ScheduleInput input)
    {
        Plant plant = input.Plant;
        int number = 0;
        for (int i = 0; i < plant.Parts.Count; i++)
        {
            Part part = plant.Parts[i];
            if (!PartFacts.IsCord(part))
                continue;
            PortRef near = End(i, part, Side.Near), far = End(i, part, Side.Far);
            PortRef? from = input.Sockets.HolderOf(near), to = input.Sockets.HolderOf(far);
            yield return
            [
                Cell.Of(++number), Cell.Of(Network(input, part, near)),
                Cell.Of(input.Sockets.HolderWords(near)), Cell.Of(PartFacts.Room(plant, from)),
                Cell.Of(input.Sockets.HolderWords(far)), Cell.Of(PartFacts.Room(plant, to)),
                Cell.Of(PartFacts.Type(part)), Cell.Of(part.Length), Cell.Of(part.Fibre?.Name), Cell.Of(part.Jacket),
                Cell.Of(KeyCodes(plant, near, far)), Cell.Of(part.IsInline ? "" : part.Name), Cell.Of(part.Note), Cell.Empty,
            ];
        }
    }

    private static PortRef End(int index, Part part, Side side)
    {
        int port = 0;
        while (part.Shape.Ports[port].Side != side)
            port++;
        return new PortRef(index, port);
    }

    /// <summary>The cord's own network, else that of its first strand.</summary>
    private static string Network(ScheduleInput input, Part part, PortRef near) =>
        part.Network >= 0 ? input.Plant.Networks[part.Network].Name : input.Facts.Network(input.Traced.StrandOf(input.Traced.Graph.PositionOf(near, 1)));

    private static string KeyCodes(Plant plant, PortRef near, PortRef far) => (plant.KeyOf(near), plant.KeyOf(far)) switch
    {
        (null, null) => "",
        var (one, other) when one == other => one!,
        var (one, other) => $"{one ?? "plain"} to {other ?? "plain"}",
    };
}
