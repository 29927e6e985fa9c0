using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Parts.Kinds;

/// <summary>
/// Parallel ports on an array receptacle. Without an application they have four lanes on 8 of 12 positions: by the
/// receptacle's own numbering, key up, lanes 1 to 4 transmit at 1, 2, 3, 4 and receive at 12, 11, 10, 9; 5 to 8 are unused
/// (IEEE 802.3 clauses 86 and 95 as summarised by three public sources). The plug goes in key up to key up, so the mated plug
/// sees transmit at 12 to 9. An application brings its own positions, and a document may write out its lanes.
/// </summary>
public sealed class ParallelInterface : PartKind
{
    private const int PlainLanes = 4;

    private static readonly string[] s_breakouts = ["2x", "4x", "8x", "10x", "16x"];

    public override string Name => "parallel interface";

    public override string Summary => "Active array ports: four lanes on 8 of 12 positions, or those of an application.";

    public override IReadOnlyList<AttributeSpec> Attributes { get; } =
    [
        AttributeSpec.WholeNumber("ports", "Number of ports, named 1, 2, 3, …", 1, 4096, 1),
        AttributeSpec.OptionalChoice("application", "What the ports are for; it gives lanes, wavelength, reach and loss limit.", InterfacePorts.ApplicationsOf(f => f >= PortForm.Array12)),
        AttributeSpec.OptionalChoice("layout", "Which of an application's port layouts they have, where there are several.", ["one row", "two rows", "one port", "two ports"]),
        AttributeSpec.OptionalChoice("breakout", "Splits the lanes of each port into so many separate links, which documents name PART/PORT:1, :2, …", s_breakouts),
        new AttributeSpec("lanes", AttributeSort.Pairs, "The transmit and receive position of each lane in order, instead of those of the application, such as [[1, 12], [2, 11]]."),
        AttributeSpec.OneOf("base", "Fibres of the receptacle, when the lanes are written out without an application.", ArrayBase.Sizes, 12),
    ];

    public override Shape? Build(AttributeValues values, List<AttributeFault> faults)
    {
        Application? application = values.Word("application") is { } name ? Application.Find(name) : null;
        PortLayout? layout = LayoutOf(values, application, faults);
        IReadOnlyList<DuplexPair>? own = values.WiringList("lanes");
        if (application is not null && values.Has("base"))
            faults.Add(new AttributeFault("base", $"the receptacle of {application.Name} is given by its layout; leave base out"));
        Face face = layout is not null ? InterfacePorts.FaceOf(layout.Form) : ArrayBase.Of(values.WholeNumber("base")).Face;
        if (own is not null)
            CheckLanes(own, application, face, layout, application is null ? ArrayBase.Of(values.WholeNumber("base")).Used : null, faults);
        else if (application is null && face != ArrayBase.Of(12).Face)
            faults.Add(new AttributeFault("base", $"the four plain lanes are those of a 12-position receptacle; write out the lanes of a {face}, or name an application"));
        int groups = GroupsOf(values, application, layout, own, faults);
        if (faults.Count > 0)
            return null;

        var shape = new ShapeBuilder();
        int count = values.WholeNumber("ports");
        var model = new PortShape("", face, Side.Near);
        if (layout is not null && own is null)
        {
            InterfacePorts.Add(shape, count, application!, layout, model, groups);
            return shape.Build();
        }

        IReadOnlyList<DuplexPair> lanes = own ?? [.. Enumerable.Range(1, PlainLanes).Select(k => new DuplexPair(k, face.Columns + 1 - k))];

        // A port split by lanes of its own is for whatever its links are for, which their far ends say.
        PortShape split = InterfacePorts.Receptacle(model, face, "", layout?.Angled) with { Application = groups > 0 ? null : application, Groups = groups };
        AddOwnLanes(shape, count, split, lanes, application);
        return shape.Build();
    }

    public override IReadOnlyList<string> Caption(AttributeValues values)
    {
        string what = values.Word("application") ?? "parallel";
        return values.Word("breakout") is { } breakout ? [what, $"split {breakout}"] : [what, "interface"];
    }

    private static PortLayout? LayoutOf(AttributeValues values, Application? application, List<AttributeFault> faults)
    {
        string? name = values.Word("layout");
        if (application is null)
        {
            if (name is not null)
                faults.Add(new AttributeFault("layout", "a layout is one of an application's; name the application too"));
            return null;
        }

        if (name is null)
            return application.Layouts[0];
        if (application.FindLayout(name) is { } layout)
            return layout;
        string known = application.Layouts.Count == 1 ? "it has one layout only; leave it out" : "one of " + string.Join(", ", application.Layouts.Select(l => l.Name));
        faults.Add(new AttributeFault("layout", $"{application.Name} has no layout '{name}': {known}"));
        return null;
    }

    private static void CheckLanes(IReadOnlyList<DuplexPair> lanes, Application? application, Face face, PortLayout? layout, IReadOnlyList<int>? used, List<AttributeFault> faults)
    {
        if (application is { LanesAreTwoWay: true })
            faults.Add(new AttributeFault("lanes", $"lanes written out go one way, and those of {application.Name} go both ways on each fibre; leave lanes out"));
        if (layout is { Receptacles: > 1 })
            faults.Add(new AttributeFault("lanes", "lanes written out belong to a port with one receptacle"));
        WrittenPositions.Check(WrittenPositions.Of(lanes), "lanes", "position", p =>
            p < 1 || p > face.Count ? $"there is no position {p} in a {face}"
            : used is not null && !used.Contains(p) ? $"position {p} carries no fibre; the base uses {string.Join(", ", used)}"
            : null, faults);
    }

    /// <summary>
    /// The number of links of a breakout mode. Only modes with a source are offered for an application's own lanes; with lanes
    /// written out any mode that divides them evenly will do.
    /// </summary>
    private static int GroupsOf(AttributeValues values, Application? application, PortLayout? layout, IReadOnlyList<DuplexPair>? own, List<AttributeFault> faults)
    {
        if (values.Word("breakout") is not { } mode)
            return 0;
        int groups = int.Parse(mode[..^1], System.Globalization.CultureInfo.InvariantCulture);
        if (own is null && application is not null)
        {
            string[] offered = [.. Breakouts.Of(application.Name).Select(b => b.Name).Distinct()];
            if (!offered.Contains(mode))
            {
                string known = offered.Length == 0
                    ? "no breakout of it has a source; write out its lanes if the equipment's sheet gives them"
                    : "one of " + string.Join(", ", offered);
                faults.Add(new AttributeFault("breakout", $"{application.Name} has no breakout {mode}: {known}"));
            }

            // A port of two receptacles is split by its receptacles already.
            if (layout is { Receptacles: > 1 })
                faults.Add(new AttributeFault("breakout", $"each of the {layout.Receptacles} receptacles is a link of its own; leave breakout out"));
            return groups;
        }

        int lanes = own?.Count ?? PlainLanes;
        if (lanes % groups != 0)
            faults.Add(new AttributeFault("breakout", $"{lanes} lanes do not make {groups} links"));
        return groups;
    }

    private static void AddOwnLanes(ShapeBuilder shape, int count, PortShape model, IReadOnlyList<DuplexPair> lanes, Application? application)
    {
        Wavelength? sends = application is { Wavelengths: [var first, ..] } ? first : null;
        for (int n = 1; n <= count; n++)
        {
            int port = shape.AddPort(model with { Name = $"{n}" });
            for (int k = 0; k < lanes.Count; k++)
            {
                int group = model.Groups > 0 ? (k * model.Groups / lanes.Count) + 1 : k + 1;
                shape.AddLane(new Lane(port, lanes[k].A, LaneDirection.Transmit, k + 1) { Group = group, Sends = sends });
                shape.AddLane(new Lane(port, lanes[k].B, LaneDirection.Receive, k + 1) { Group = group, Hears = sends });
            }
        }
    }
}
