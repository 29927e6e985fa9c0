using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Planning;

/// <summary>A segment from an equipment room to its landings: trunks with a cassette at each end, or with panels.</summary>
internal sealed class SegmentPlan
{
    private readonly PlanDraft _draft;
    private readonly PlanTypes _types;
    private readonly LandingSet _set;
    private readonly PlannedSection _section;
    private readonly string _where;

    /// <param name="draft">Takes the parts.</param>
    /// <param name="types">Their types.</param>
    /// <param name="set">What to serve.</param>
    /// <param name="section">Where the document tells of it.</param>
    /// <param name="alone">True when the network has no other segment, so that names need not say where.</param>
    public SegmentPlan(PlanDraft draft, PlanTypes types, LandingSet set, PlannedSection section, bool alone)
    {
        (_draft, _types, _set, _section) = (draft, types, set, section);
        _where = alone || set.OfOutlet is not null ? "" : "-" + draft.Brief.Rooms[set.Room].Label + (set.IsGathered && Both(draft.Brief, set) ? "Z" : "");
    }

    private Brief Brief => _draft.Brief;

    private BriefNetwork Network => Brief.Networks[_set.Network];

    private string FarRoom => Brief.Rooms[_set.Room].Name;

    private int NearRoom => Brief.Rooms[_set.Room].From;

    /// <summary>Cassettes and a trunk for duplex links.</summary>
    /// <returns>The front ports at both ends, one for each link.</returns>
    public (PortRow Near, PortRow Far) Cassettes()
    {
        int ports = _draft.Candidate.Base / 2;
        SegmentRoom room = Brief.Segments.GetValueOrDefault(_set.Key) ?? SegmentRoom.New(_set.LinksEach, Brief.SpareOf(_set.Network), ports);
        int arrays = room.AllArrays(ports);
        PlannedFamily near = InPanels("K", arrays * _set.Landings, NearRoom, _types.Cassette(far: false));
        PlannedFamily far = _set.OfOutlet is null
            ? InPanels("Z", arrays * _set.Landings, _set.Room, _types.Cassette(far: true))
            : AtOutlets("Z", arrays * _set.Landings, _types.Cassette(far: true));
        (PortRow trunks, _) = Trunks(arrays, arrays);
        PortRow nearRears = Each(near, arrays * _set.Landings), farRears = Each(far, arrays * _set.Landings);
        _section.RunList.Add(new PlannedRun([nearRears.Stop("rear"), trunks.Stop(), farRears.Stop("rear")]));
        return (Fronts(near, arrays, ports, room), Fronts(far, arrays, ports, room));
    }

    /// <summary>
    /// Panels and trunks for parallel links; nothing is joined yet, since a chain goes on through panels.
    /// </summary>
    /// <returns>
    /// The adapters at the near end, the legs, and the adapters at the far end, one for each link, of a gathered set none at the far
    /// end; and the run of what is spare, if anything.
    /// </returns>
    public (PortRow Near, PortRow Legs, PortRow? Far, PlannedRun? Spare) Panels()
    {
        int arrays = Brief.Segments.GetValueOrDefault(_set.Key)?.Arrays ?? Brief.SpareOf(_set.Network).Over(_set.LinksEach), spare = arrays - _set.LinksEach;
        (PortRow near, PortRow spareNear) = Adapters("P", arrays, _set.LinksEach, NearRoom);
        (PortRow legs, PortRow spareLegs) = Trunks(arrays, _set.LinksEach);
        PortRow? far = null, spareFar = null;
        if (!_set.IsGathered)
            (far, spareFar) = _set.OfOutlet is null ? Adapters("Q", arrays, _set.LinksEach, _set.Room) : AdaptersAtOutlets("Q", arrays);
        else if (spare > 0)
            (_, spareFar) = Adapters("Q", spare, 0, _set.Room);
        return (near, legs, far, spare > 0 ? new PlannedRun([spareNear.Stop(), spareLegs.Stop(), spareFar!.Stop()]) : null);
    }

    private static bool Both(Brief brief, LandingSet set) =>
        brief.Outlets.Any(o => o.Room == set.Room && o.Distance is null && o.Links[set.Network] > 0);

    private PlannedName Names(string letter, int count)
    {
        string prefix = $"{Network.Label}{_where}-{letter}";
        if (_set.OfOutlet is not { } outlet)
            return PlannedName.Of(prefix, count);
        return count == outlet.Count ? outlet.Around(prefix + "-") : PlannedName.Of($"{prefix}-{outlet.At(0)}-", count);
    }

    private PlannedFamily InPanels(string letter, int count, int room, PlannedType type)
    {
        PlannedName name = Names(letter, count);
        PlannedFamily family = PlanDraft.Family(_section, name);
        int placed = 0;
        foreach ((int here, string note) in _draft.Racks(room).Panels(count, Brief.CassettesPerPanel))
        {
            family.Add(new PlannedPart(name.Slice(placed, here), type) { Network = _set.Network, Room = Brief.Rooms[room].Name, Note = note });
            placed += here;
        }

        return family;
    }

    private PlannedFamily AtOutlets(string letter, int count, PlannedType type) =>
        PlanDraft.Family(_section, new PlannedPart(Names(letter, count), type) { Network = _set.Network, Room = FarRoom, Note = "At the outlet" });

    /// <summary>Adapters for so many arrays at each landing: those of the links, and the rest.</summary>
    private (PortRow Links, PortRow Others) Adapters(string letter, int arrays, int links, int room)
    {
        // Landings at outlets share the panels of the equipment room.
        int all = arrays * _set.Landings, each = Brief.AdaptersPerPanel, panels = (all + each - 1) / each;
        PlannedName name = PlannedName.Of($"{Network.Label}{_where}-{letter}{(_set.OfOutlet is { } outlet ? $"-{outlet.At(0)}{(panels > 1 ? "-" : "")}" : "")}", panels);
        PlannedFamily family = PlanDraft.Family(_section, name);
        for (int panel = 0; panel < panels; panel++)
        {
            PlannedType type = _types.Panel(Math.Min(each, all));
            family.Add(new PlannedPart(name.Slice(panel, 1), type) { Network = _set.Network, Room = Brief.Rooms[room].Name, Note = _draft.Racks(room).Panel() });
        }

        return Divided(family, arrays, links, at => new PlannedPort(at / each, (at % each) + 1));
    }

    private (PortRow Links, PortRow Others) AdaptersAtOutlets(string letter, int arrays) => Divided(
        AtOutlets(letter, _set.Landings, _types.Panel(arrays)), arrays, _set.LinksEach, at => new PlannedPort(at / arrays, (at % arrays) + 1));

    /// <summary>The trunks, with so many arrays at each landing: the legs of the links, and the rest.</summary>
    private (PortRow Links, PortRow Others) Trunks(int arrays, int links)
    {
        int most = Brief.TrunkLegs[^1], each = (arrays + most - 1) / most;
        int lastArrays = arrays - ((each - 1) * most), lastLegs = Brief.TrunkLegs.First(l => l >= lastArrays);
        Length length = _draft.Cable(_set.Way, _set.Requirement);
        PlannedName name = Names("T", each * _set.Landings);
        PlannedFamily family = PlanDraft.Family(_section, name);
        PlannedPart last = new PlannedPart(name, _types.Trunk(length, lastLegs)) { Network = _set.Network, SpareFrom = lastArrays < lastLegs ? lastArrays + 1 : 0 };
        for (int landing = 0; landing < (each == 1 ? 1 : _set.Landings); landing++)
        {
            if (each > 1)
                family.Add(new PlannedPart(name.Slice(landing * each, each - 1), _types.Trunk(length, most)) { Network = _set.Network });
            family.Add(last with { Name = each == 1 ? name : name.Slice((landing * each) + each - 1, 1) });
        }

        return Divided(family, arrays, links, at =>
        {
            (int landing, int array) = Math.DivRem(at, arrays);
            (int trunk, int leg) = Math.DivRem(array, most);
            return new PlannedPort((landing * each) + trunk, (trunk == each - 1 ? lastLegs : most) == 1 ? 0 : leg + 1);
        });
    }

    /// <summary>Places of arrays, landing by landing, divided into those of links and the rest.</summary>
    private (PortRow Links, PortRow Others) Divided(PlannedFamily family, int arrays, int links, Func<int, PlannedPort> port)
    {
        PortRow taken = new(family), rest = new(family);
        for (int at = 0; at < arrays * _set.Landings; at++)
            (at % arrays < links ? taken : rest).Add(port(at).Index, port(at).Port);
        return (taken, rest);
    }

    private static PortRow Each(PlannedFamily family, int count)
    {
        var row = new PortRow(family);
        for (int i = 0; i < count; i++)
            row.Add(i, 0);
        return row;
    }

    private PortRow Fronts(PlannedFamily family, int arrays, int ports, SegmentRoom room)
    {
        var row = new PortRow(family);
        for (int landing = 0; landing < _set.Landings; landing++)
        {
            foreach (int place in room.Places(ports))
                row.Add((landing * arrays) + (place / ports), (place % ports) + 1);
        }

        return row;
    }
}
