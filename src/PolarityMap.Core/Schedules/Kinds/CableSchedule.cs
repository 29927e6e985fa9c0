using System.Text;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Schedules.Kinds;

/// <summary>Every trunk, harness and cable that is laid and stays.</summary>
public sealed class CableSchedule : ScheduleKind
{
    public override string Name => "cables";

    public override string Title => "Cable schedule";

    public override string Purpose => "For whoever orders and lays the cables: every trunk, harness and cable with its ends, fibres and length.";

    public override IReadOnlyList<ScheduleColumn> Columns { get; } =
    [
        new("cable", "Cable"),
        new("type", "Type"),
        new("network", "Network"),
        new("fibres", "Fibres", CellKind.Whole),
        new("fibre-class", "Fibre class"),
        new("length", "Length (m)", CellKind.Metres),
        new("near-room", "Near room"),
        new("near-ends", "Near ends"),
        new("far-room", "Far room"),
        new("far-ends", "Far ends"),
        new("jacket", "Jacket"),
        new("spare-legs", "Spare legs"),
        new("note", "Note"),
    ];

    protected override IEnumerable<IReadOnlyList<Cell>> Rows(ScheduleInput input)
    {
        Plant plant = input.Plant;
        for (int i = 0; i < plant.Parts.Count; i++)
        {
            Part part = plant.Parts[i];
            if (!PartFacts.IsLaid(part))
                continue;
            (string nearRooms, string nearEnds) = Ends(input, i, Side.Near);
            (string farRooms, string farEnds) = Ends(input, i, Side.Far);
            yield return
            [
                Cell.Of(part.Name), Cell.Of(PartFacts.Type(part)), Cell.Of(Networks(input, i)),
                Cell.Of(PartFacts.Fibres(part)), Cell.Of(part.Fibre?.Name), Cell.Of(part.Length),
                Cell.Of(nearRooms), Cell.Of(nearEnds), Cell.Of(farRooms), Cell.Of(farEnds),
                Cell.Of(part.Jacket), Cell.Of(string.Join(", ", part.SpareLegs)), Cell.Of(part.Note),
            ];
        }
    }

    /// <summary>The connectors of one end with what each is plugged into, and the rooms of that.</summary>
    private static (string Rooms, string Ends) Ends(ScheduleInput input, int index, Side side)
    {
        Part part = input.Plant.Parts[index];
        var rooms = new List<string>();
        var ends = new StringBuilder();
        for (int p = 0; p < part.Shape.Ports.Count; p++)
        {
            if (part.Shape.Ports[p].Side != side)
                continue;
            var port = new PortRef(index, p);
            string holder = input.Sockets.HolderWords(port);
            if (holder.Length == 0 && part.SpareLegs.Contains(part.Shape.Ports[p].Leg))
                continue;
            string room = PartFacts.Room(input.Plant, input.Sockets.HolderOf(port));
            if (room.Length > 0 && !rooms.Contains(room))
                rooms.Add(room);
            if (ends.Length > 0)
                ends.Append("; ");
            ends.Append(part.Shape.Ports[p].Name).Append(" in ").Append(holder.Length > 0 ? holder : "nothing");
        }

        return (string.Join(", ", rooms), ends.ToString());
    }

    /// <summary>The cable's own network, else those of the strands that pass it, in their order.</summary>
    private static string Networks(ScheduleInput input, int index)
    {
        Part part = input.Plant.Parts[index];
        if (part.Network >= 0 || part.PortNetworks.Count > 0)
            return PartFacts.Network(input.Plant, part);
        var names = new List<string>();
        for (int p = 0; p < part.Shape.Ports.Count; p++)
        {
            for (int position = 1; position <= part.Shape.Ports[p].PositionCount; position++)
            {
                string name = input.Facts.Network(input.Traced.StrandOf(input.Traced.Graph.PositionOf(new PortRef(index, p), position)));
                if (name.Length > 0 && !names.Contains(name))
                    names.Add(name);
            }
        }

        return string.Join(", ", names);
    }
}
