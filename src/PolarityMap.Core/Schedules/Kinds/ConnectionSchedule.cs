using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Schedules.Kinds;

/// <summary>
/// Every strand hop by hop. It tells the whole plant: rows without a strand follow for what no strand passes, so that a plant
/// can be made from the table again.
/// </summary>
public sealed class ConnectionSchedule : ScheduleKind
{
    public override string Name => "connections";

    public override string Title => "Connection schedule";

    public override string Purpose => "For whoever follows or rebuilds a strand: every strand from end to end, a row for each part that it passes.";

    public override IReadOnlyList<ScheduleColumn> Columns { get; } =
    [
        new("strand", "Strand", CellKind.Whole),
        new("hop", "Hop", CellKind.Whole),
        new("state", "State"),
        new("network", "Network"),
        new("link", "Link"),
        new("part", "Part"),
        new("type", "Type"),
        new("room", "Room"),
        new("in", "In"),
        new("out", "Out"),
        new("meets", "Meets"),
        new("keys", "Keys"),
        new("through", "Through"),
        new("fibre-number", "Fibre no.", CellKind.Whole),
        new("colour", "Fibre colour"),
        new("length", "Length (m)", CellKind.Metres),
        new("kind", "Kind", ForPrograms: true),
        new("attributes", "Attributes", ForPrograms: true),
    ];

    protected override IEnumerable<IReadOnlyList<Cell>> Rows(ScheduleInput input)
    {
        TracedPlant traced = input.Traced;
        Plant plant = input.Plant;
        var parts = new Descriptions(plant);
        var told = new bool[plant.Parts.Count];
        var linked = new HashSet<string>();
        var hops = new List<Hop>();
        foreach (int strand in input.Facts.InOrder)
        {
            if (!input.Facts.IsTold(strand))
                continue;
            Cell number = Cell.Of(traced.NumberOf(strand)), state = Cell.Of(input.Facts.State(strand));
            Cell network = Cell.Of(input.Facts.Network(strand));
            string link = input.Facts.Link(strand);
            if (input.Facts.ReachesItsLink(strand))
                linked.Add(link);
            traced.Hops(strand, hops);
            for (int i = 0; i < hops.Count; i++)
            {
                Hop hop = hops[i];
                told[hop.Part] = true;
                (string meets, string keys, string through) = Joint(input, hop.Out);
                int fibre = FibreInCable.NumberOf(traced, hop);
                yield return
                [
                    number, Cell.Of(i + 1), state, network, Cell.Of(link),
                    .. parts.Of(hop.Part),
                    Cell.Of(hop.In < 0 ? "" : traced.Address(hop.In)), Cell.Of(hop.Out < 0 ? "" : traced.Address(hop.Out)),
                    Cell.Of(meets), Cell.Of(keys), Cell.Of(through),
                    fibre > 0 ? Cell.Of(fibre) : Cell.Empty, Cell.Of(PartFacts.Colour(plant, fibre)), Cell.Of(plant.Parts[hop.Part].Length),
                    .. parts.ForPrograms(hop.Part),
                ];
            }
        }

        foreach (IReadOnlyList<Cell> row in Rest(input, parts, told, linked))
            yield return row;
    }

    /// <summary>What a strand meets where it leaves a part: the address across, how the keys lie, and the adapter between.</summary>
    private static (string Meets, string Keys, string Through) Joint(ScheduleInput input, int leaves)
    {
        if (leaves < 0)
            return ("", "", "");
        TracedPlant traced = input.Traced;
        PortRef port = traced.Graph.PlaceOf(leaves).Port;
        int across = traced.Graph.Outside[leaves];
        if (across < 0)
            return ("", "", input.Sockets.WaitingAt(port) is { } waiting && waiting.Plug == port ? input.Plant.Address(waiting.Adapter) : "");
        if (traced.MatingAt(leaves) is not { } mating)
            return (traced.Address(across), "", "");
        string keys = input.Plant.Port(port).Face.Family == ConnectorFamily.Array ? mating.Keys.Word() : "";
        return (traced.Address(across), keys, mating.Through is { } adapter ? input.Plant.Address(adapter) : "");
    }

    /// <summary>
    /// What no strand passes: parts without fibres, plugs that wait in adapters, plugs that do not fit or found a port taken, and
    /// links that nothing joins.
    /// </summary>
    private static IEnumerable<IReadOnlyList<Cell>> Rest(ScheduleInput input, Descriptions parts, bool[] told, HashSet<string> linked)
    {
        Plant plant = input.Plant;
        for (int part = 0; part < told.Length; part++)
        {
            if (!told[part])
                yield return Row(parts, part, "part", "", "", "", "", "");
        }

        foreach (OpenPlug plug in plant.OpenPlugs)
            yield return Row(parts, plug.Plug.Part, "plugged in one side", "", plant.Address(plug.Plug), "", "", plant.Address(plug.Adapter));
        foreach (Mating mating in plant.Matings)
        {
            if (plant.Fits(mating))
                continue;
            string keys = plant.Port(mating.A).Face.Family == ConnectorFamily.Array && plant.Port(mating.B).Face.Family == ConnectorFamily.Array ? mating.Keys.Word() : "";
            yield return Row(parts, mating.A.Part, "does not fit", "", plant.Address(mating.A), plant.Address(mating.B), keys, mating.Through is { } adapter ? plant.Address(adapter) : "");
        }

        foreach (PortClash clash in plant.Clashes)
        {
            if (clash.Refused is { } refused)
                yield return Row(parts, refused.Part, "port taken", "", plant.Address(refused), clash.Position > 0 ? plant.Address(clash.Port, clash.Position) : plant.Address(clash.Port), "", "");
        }

        for (int link = 0; link < plant.Links.Count; link++)
        {
            string words = input.Facts.LinkWords(link);
            if (!linked.Contains(words))
                yield return Row(parts, -1, "link not joined", words, "", "", "", "");
        }
    }

    private static IReadOnlyList<Cell> Row(Descriptions parts, int part, string state, string link, string leaves, string meets, string keys, string through) =>
    [
        Cell.Empty, Cell.Empty, Cell.Of(state), Cell.Empty, Cell.Of(link),
        .. part < 0 ? [Cell.Empty, Cell.Empty, Cell.Empty] : parts.Of(part),
        Cell.Empty, Cell.Of(leaves), Cell.Of(meets), Cell.Of(keys), Cell.Of(through), Cell.Empty, Cell.Empty, Cell.Empty,
        .. part < 0 ? [Cell.Empty, Cell.Empty] : parts.ForPrograms(part),
    ];

    /// <summary>The cells that every row of a part repeats, made once for each part.</summary>
    private sealed class Descriptions(Plant plant)
    {
        private readonly Cell[]?[] _people = new Cell[]?[plant.Parts.Count];
        private readonly Cell[]?[] _programs = new Cell[]?[plant.Parts.Count];

        public Cell[] Of(int part) =>
            _people[part] ??= [Cell.Of(plant.Parts[part].Name), Cell.Of(PartFacts.Type(plant.Parts[part])), Cell.Of(plant.Parts[part].Room)];

        public Cell[] ForPrograms(int part) =>
            _programs[part] ??= [Cell.Of(plant.Parts[part].Kind), Cell.Of(PartFacts.Attributes(plant.Parts[part]))];
    }
}
