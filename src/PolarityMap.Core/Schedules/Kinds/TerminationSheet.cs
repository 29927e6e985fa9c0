using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Schedules.Kinds;

/// <summary>Every joint that is made in the field, fibre by fibre: connectors mounted, pigtails spliced, cables spliced, bare ends left.</summary>
public sealed class TerminationSheet : ScheduleKind
{
    public override string Name => "terminations";

    public override string Title => "Field-termination work sheet";

    public override string Purpose =>
        "For whoever terminates and splices: every fibre that is joined in the field, with its colour and what it goes to. Preparation and cautions stand beside it.";

    public override IReadOnlyList<ScheduleColumn> Columns { get; } =
    [
        new("place", "Place"),
        new("room", "Room"),
        new("work", "Work"),
        new("cable", "Cable"),
        new("fibre", "Fibre", CellKind.Whole),
        new("colour", "Fibre colour"),
        new("to", "Goes to"),
        new("to-fibre", "Its fibre", CellKind.Whole),
        new("to-colour", "Its colour"),
        new("network", "Network"),
        new("strand", "Strand", CellKind.Whole),
        new("loss", "Splice loss at most (dB)", CellKind.Decibels),
        new("done", "Done", CellKind.Blank),
        new("by", "By", CellKind.Blank),
        new("date", "Date", CellKind.Blank),
    ];

    protected override IEnumerable<IReadOnlyList<Cell>> Rows(ScheduleInput input)
    {
        Plant plant = input.Plant;
        for (int i = 0; i < plant.Parts.Count; i++)
        {
            Part part = plant.Parts[i];
            for (int p = 0; p < part.Shape.Ports.Count; p++)
            {
                var port = new PortRef(i, p);
                PortShape shape = part.Shape.Ports[p];
                if (shape.Face.Family != ConnectorFamily.Bare)
                    continue;

                // A splice is told from its near side, a cable only where its end is left bare.
                bool isCable = part.Shape is { IsCable: true, Splices: 0 };
                if (isCable ? input.Sockets.MatingAt(port) is not null : part.Shape.IsCable && shape.Side == Side.Far && !IsAlone(input, port))
                    continue;
                for (int fibre = 1; fibre <= shape.PositionCount; fibre++)
                    yield return isCable ? Bare(input, port, fibre) : Joint(input, port, fibre);
            }
        }
    }

    /// <summary>True for the far side of a splice whose near side is not wired and so tells nothing.</summary>
    private static bool IsAlone(ScheduleInput input, PortRef far) =>
        input.Sockets.MatingAt(far) is not null && input.Sockets.MatingAt(far with { Port = 1 - far.Port }) is null;

    private static IReadOnlyList<Cell> Joint(ScheduleInput input, PortRef port, int fibre)
    {
        TracedPlant traced = input.Traced;
        Part part = input.Plant.Parts[port.Part];
        int here = traced.Graph.PositionOf(port, fibre), through = traced.Graph.Inside[here];
        (string cable, int cableFibre) = FibreAt(input, traced.Graph.Outside[here]);
        bool isSplice = part.Shape.IsCable;
        string work = isSplice ? "splice" : part.Shape.Splices > 0 ? "splice a pigtail" : "mount a connector";
        (string to, int toFibre) = through < 0 ? ("not used", 0) : isSplice ? FibreAt(input, traced.Graph.Outside[through]) : (traced.Address(through), 0);
        return Row(input, part, work, cable, cableFibre > 0 ? cableFibre : fibre, to.Length > 0 ? to : "nothing", toFibre, here);
    }

    private static IReadOnlyList<Cell> Bare(ScheduleInput input, PortRef port, int fibre)
    {
        Part part = input.Plant.Parts[port.Part];
        return Row(input, part, "left bare", $"{part.Name}, {input.Plant.Port(port).Name} end", fibre, "nothing", 0, input.Traced.Graph.PositionOf(port, fibre));
    }

    private static IReadOnlyList<Cell> Row(ScheduleInput input, Part part, string work, string cable, int fibre, string to, int toFibre, int position)
    {
        int strand = input.Traced.StrandOf(position);
        return
        [
            Cell.Of(part.Name), Cell.Of(part.Room), Cell.Of(work), Cell.Of(cable), Cell.Of(fibre), Cell.Of(PartFacts.Colour(input.Plant, fibre)),
            Cell.Of(to), toFibre > 0 ? Cell.Of(toFibre) : Cell.Empty, Cell.Of(PartFacts.Colour(input.Plant, toFibre)),
            Cell.Of(input.Facts.Network(strand)), Cell.Of(input.Traced.NumberOf(strand)),
            Cell.Of(part.Shape.Splices > 0 ? part.SpliceLoss ?? input.Plant.Practice.Limits.SpliceMax : null),
            Cell.Empty, Cell.Empty, Cell.Empty,
        ];
    }

    /// <summary>The cable end and the fibre in it that a position is, or nothing.</summary>
    private static (string Cable, int Fibre) FibreAt(ScheduleInput input, int position)
    {
        if (position < 0)
            return ("", 0);
        PositionPlace place = input.Traced.Graph.PlaceOf(position);
        return ($"{input.Plant.Parts[place.Port.Part].Name}, {input.Plant.Port(place.Port).Name} end", place.Position);
    }
}
