using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Planning;

/// <summary>Makes the plant of a planned one, as the reader makes it of its document.</summary>
public static class PlantAssembly
{
    private static readonly SourcePlace s_nowhere = new("plan", 0, 0);

    /// <summary>The plant, or null where two parts have one name, which <paramref name="twice"/> then is.</summary>
    public static Plant? Of(PlannedPlant planned, out string twice)
    {
        twice = "";
        var builder = new PlantBuilder { Title = planned.Brief.Title, Practice = planned.Practice };
        foreach (Network network in planned.Networks)
            builder.AddNetwork(network);
        var first = new Dictionary<PlannedFamily, int>();
        var names = new HashSet<string>();
        foreach (PlannedFamily family in planned.Sections.SelectMany(s => s.Families))
        {
            first.Add(family, builder.Parts.Count);
            foreach (PlannedPart line in family.Lines)
            {
                if (!Add(builder, line, names, out twice))
                    return null;
            }
        }

        var cords = new Cords(builder);
        foreach (PlannedRun run in planned.Sections.SelectMany(s => s.Runs))
            Join(builder, run, first, cords);
        foreach (PlannedLinks links in planned.Sections.SelectMany(s => s.Links))
        {
            for (int i = 0; i < links.From.Ports.Count; i++)
                builder.AddLink(new LinkEnd(PortOf(builder, links.From, i, first), 0), new LinkEnd(PortOf(builder, links.To, i, first), 0), s_nowhere);
        }

        return builder.Build();
    }

    private static bool Add(PlantBuilder builder, PlannedPart line, HashSet<string> names, out string twice)
    {
        var values = new AttributeValues(line.Type.Kind.AllAttributes, line.Type.Whole.Defaults);
        if (line.Network >= 0)
            values.Set("network", builder.Networks[line.Network].Name);
        if (line.PortNetworks.Count > 0)
            values.Set("networks", (IReadOnlyList<string>)[.. line.PortNetworks.Select(n => builder.Networks[n].Name)]);
        if (line.Room is { } room)
            values.Set("room", room);
        if (line.Note is { } note)
            values.Set("note", note);
        if (line.Spare.Count > 0)
            values.Set("spare", line.Spare);
        values.FillFrom(line.Type.Whole);
        twice = line.Name.At(0);
        Part model = PartMaker.Make(twice, line.Type.Kind, values, line.Type.Shape, s_nowhere, builder.Networks);
        for (int i = 0; i < line.Name.Count; i++)
        {
            twice = line.Name.At(i);
            if (!names.Add(twice))
                return false;
            builder.AddPart(model with { Name = twice });
        }

        return true;
    }

    private static void Join(PlantBuilder builder, PlannedRun run, Dictionary<PlannedFamily, int> first, Cords cords)
    {
        for (int chain = 0; chain < run.Count; chain++)
        {
            PortRef? last = null, through = null;
            for (int s = 0; s < run.Stops.Count; s++)
            {
                PlannedStop stop = run.Stops[s];
                if (stop.Cord is { } type)
                {
                    PortRef from = last!.Value, to = PortOf(builder, run.Stops[s + 1], chain, first);
                    int cord = cords.Add(type, stop, $"{Address(builder, through ?? from)}~{Address(builder, to)}");
                    Mate(builder, from, new PortRef(cord, 0), ref through);
                    last = new PortRef(cord, 1);
                    continue;
                }

                PortRef port = PortOf(builder, stop, chain, first);
                builder.Mention(port.Part);
                if (builder.Port(port).IsAdapter)
                {
                    through = port;
                    continue;
                }

                if (last is { } before)
                    Mate(builder, before, port, ref through);
                else if (through is { } adapter)
                    Wait(builder, port, adapter, ref through);

                // A cable is left at the far end of the leg that it was entered at.
                last = builder.Part(port.Part).Shape.IsCable ? port with { Port = port.Port + 1 } : port;
            }

            if (through is { } open)
                Wait(builder, last!.Value, open, ref through);
        }
    }

    private static void Mate(PlantBuilder builder, PortRef from, PortRef to, ref PortRef? through)
    {
        Keying? keys = through is { } adapter ? builder.Port(adapter).Keys : builder.Port(from).Keys ?? builder.Port(to).Keys;
        builder.AddMating(from, 0, to, 0, through, keys ?? Keying.Aligned, s_nowhere);
        through = null;
    }

    /// <summary>A plug with nothing on the other side of its adapter.</summary>
    private static void Wait(PlantBuilder builder, PortRef plug, PortRef adapter, ref PortRef? through)
    {
        builder.AddOpenPlug(new OpenPlug(plug, adapter, s_nowhere));
        through = null;
    }

    /// <summary>A port of a stop; of a cable the near end of the leg. Shapes list the near and the far end of a leg one after the other.</summary>
    private static PortRef PortOf(PlantBuilder builder, PlannedStop stop, int chain, Dictionary<PlannedFamily, int> first)
    {
        PlannedPort at = stop.Ports[chain];
        int part = first[stop.Family!] + at.Index;
        Shape shape = builder.Part(part).Shape;
        return new PortRef(part, shape.IsCable ? 2 * Math.Max(0, at.Port - 1) : at.Port > 0 ? at.Port - 1 : shape.FindPort(stop.PortName));
    }

    private static string Address(PlantBuilder builder, PortRef port) => $"{builder.Part(port.Part).Name}/{builder.Port(port).Name}";

    /// <summary>Cords without names of their own, alike ones made of one model.</summary>
    private sealed class Cords(PlantBuilder builder)
    {
        private readonly Dictionary<(PlannedType, long), Part> _models = [];

        public int Add(PlannedType type, PlannedStop stop, string name)
        {
            if (!_models.TryGetValue((type, stop.Length.Millimetres), out Part? model))
            {
                var values = new AttributeValues(type.Kind.AllAttributes, type.Whole.Defaults).Set("length", stop.Length);
                values.FillFrom(type.Whole);
                model = PartMaker.Make(name, type.Kind, values, type.Shape, s_nowhere, builder.Networks) with { IsInline = true };
                _models.Add((type, stop.Length.Millimetres), model);
            }

            return builder.AddPart(model with { Name = name });
        }
    }
}
