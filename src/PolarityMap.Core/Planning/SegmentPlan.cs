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
    /// <returns>
    /// The front ports at both ends, landing by landing, each landing's links in the order told: for a room all together, for outlets
    /// those of an array together.
    /// </returns>
    public IReadOnlyList<SegmentFronts> Cassettes()
    {
        int ports = _draft.Candidate.Base / 2;
        SegmentRoom room = Brief.Segments.GetValueOrDefault(_set.Key) ?? SegmentRoom.New(_set.LinksEach, Brief.SpareOf(_set.Network), ports);
        int arrays = room.AllArrays(ports);
        int[] places = room.Places(ports);
        TrunkLegs legs = Trunks(Math.Max(arrays, LaterLegs()), arrays);
        Park(legs, arrays);
        if (_set.OfOutlet is null)
            return [Joined("", [.. Enumerable.Range(0, arrays)], legs, [.. Enumerable.Range(0, places.Length)], places)];
        return
        [
            .. Enumerable.Range(0, arrays).Select(array => Joined(
                arrays == 1 ? "" : Letter(array), [array], legs, [.. Enumerable.Range(0, places.Length).Where(l => places[l] / ports == array)], places)),
        ];
    }

    /// <summary>Cassettes at both ends of some arrays of each landing, and what joins them.</summary>
    private SegmentFronts Joined(string letter, int[] arrays, TrunkLegs legs, int[] links, int[] places)
    {
        int ports = _draft.Candidate.Base / 2, count = arrays.Length * _set.Landings;
        PlannedFamily near = InPanels("K", letter, count, NearRoom, _types.Cassette(far: false));
        PlannedFamily far = _set.OfOutlet is null ? InPanels("Z", letter, count, _set.Room, _types.Cassette(far: true)) : AtOutlets("Z", letter, count, _types.Cassette(far: true));
        _section.RunList.Add(new PlannedRun([Each(near, count).Stop("rear"), legs.Row(arrays).Stop(), Each(far, count).Stop("rear")]));
        PortRow Fronts(PlannedFamily family)
        {
            var row = new PortRow(family);
            for (int landing = 0; landing < _set.Landings; landing++)
            {
                foreach (int place in links.Select(l => places[l]))
                    row.Add((landing * arrays.Length) + Array.IndexOf(arrays, place / ports), (place % ports) + 1);
            }

            return row;
        }

        return new SegmentFronts(links, Fronts(near), Fronts(far));
    }

    /// <summary>Cables of which nothing is needed yet wait in panels.</summary>
    private void Park(TrunkLegs legs, int joined)
    {
        int waiting = legs.Count - joined;
        if (waiting == 0)
            return;
        (_, PortRow near) = Adapters("P", waiting, 0, NearRoom);
        (_, PortRow far) = _set.OfOutlet is null ? Adapters("Q", waiting, 0, _set.Room) : AdaptersAtOutlets("Q", waiting, 0);
        for (int first = joined; first < legs.Count;)
        {
            int next = first + 1;
            while (next < legs.Count && legs.IsTogether(first, next))
                next++;
            int[] some = [.. Enumerable.Range(first, next - first)];
            _section.RunList.Add(new PlannedRun([Some(near, waiting, some, joined).Stop(), legs.Row(some).Stop(), Some(far, waiting, some, joined).Stop()]));
            first = next;
        }
    }

    private PortRow Some(PortRow row, int each, int[] arrays, int first)
    {
        var some = new PortRow(row.Family);
        PlannedStop all = row.Stop();
        for (int landing = 0; landing < _set.Landings; landing++)
        {
            foreach (int array in arrays)
                some.Add(all.Ports[(landing * each) + array - first].Index, all.Ports[(landing * each) + array - first].Port);
        }

        return some;
    }

    /// <summary>Legs that pairs have to leave for what comes later, where that takes an array for each link.</summary>
    private int LaterLegs() => LaterBrief.TakesArrays(Network) && Network.LaterLinks == LaterLinks.All ? Brief.SpareOf(_set.Network).Over(_set.LinksEach) : 0;

    private static string Letter(int array) => $"-{(char)('A' + (array % 26))}{(array < 26 ? "" : array / 26)}";

    /// <summary>
    /// Panels and trunks for parallel links; nothing is joined yet, since a chain goes on through panels.
    /// </summary>
    /// <returns>
    /// The adapters at the near end, the legs, and the adapters at the far end, one for each link, of a gathered set none at the far
    /// end; and the run of what is spare, if anything.
    /// </returns>
    public (PortRow Near, PortRow Legs, PortRow? Far, PlannedRun? Spare) Panels()
    {
        int asked = Brief.Segments.GetValueOrDefault(_set.Key)?.Arrays ?? Brief.SpareOf(_set.Network).Over(_set.LinksEach);
        int arrays = Math.Max(asked, Network.ArraysBefore?.Invoke(_set.LinksEach) ?? 0), spare = arrays - _set.LinksEach;
        (PortRow near, PortRow spareNear) = Adapters("P", arrays, _set.LinksEach, NearRoom);
        TrunkLegs trunks = Trunks(arrays, arrays, together: true);
        PortRow legs = trunks.Row([.. Enumerable.Range(0, _set.LinksEach)]), spareLegs = trunks.Row([.. Enumerable.Range(_set.LinksEach, spare)]);
        PortRow? far = null, spareFar = null;
        if (!_set.IsGathered)
            (far, spareFar) = _set.OfOutlet is null ? Adapters("Q", arrays, _set.LinksEach, _set.Room) : AdaptersAtOutlets("Q", arrays, _set.LinksEach);
        else if (spare > 0)
            (_, spareFar) = Adapters("Q", spare, 0, _set.Room);
        return (near, legs, far, spare > 0 ? new PlannedRun([spareNear.Stop(), spareLegs.Stop(), spareFar!.Stop()]) : null);
    }

    private static bool Both(Brief brief, LandingSet set) =>
        brief.Outlets.Any(o => o.Room == set.Room && o.Distance is null && o.Links[set.Network] > 0);

    private PlannedName Names(string letter, string after, int count)
    {
        string prefix = $"{Network.Label}{_where}-{letter}";
        return _set.OfOutlet is { } outlet ? outlet.Around(prefix + "-", after) : PlannedName.Of(prefix, count);
    }

    /// <summary>All outlets of the set in a name, such as <c>-BOX1-4</c>; a number may follow.</summary>
    private string Outlets(bool numbered) => _set.OfOutlet is not { } outlet ? ""
        : $"-{outlet.At(0)}{(outlet.Count > 1 ? $"-{outlet.First + outlet.Count - 1}{outlet.Suffix}" : "")}{(numbered ? "-" : "")}";

    private PlannedFamily InPanels(string letter, string after, int count, int room, PlannedType type)
    {
        PlannedName name = Names(letter, after, count);
        PlannedFamily family = PlanDraft.Family(_section, name);
        int placed = 0;
        foreach ((int here, string note) in _draft.Racks(room).Panels(count, Brief.CassettesPerPanel))
        {
            family.Add(new PlannedPart(name.Slice(placed, here), type) { Network = _set.Network, Room = Brief.Rooms[room].Name, Note = note });
            placed += here;
        }

        return family;
    }

    private PlannedFamily AtOutlets(string letter, string after, int count, PlannedType type) =>
        PlanDraft.Family(_section, new PlannedPart(Names(letter, after, count), type) { Network = _set.Network, Room = FarRoom, Note = "At the outlet" });

    /// <summary>Adapters for so many arrays at each landing: those of the links, and the rest.</summary>
    private (PortRow Links, PortRow Others) Adapters(string letter, int arrays, int links, int room)
    {
        // Landings at outlets share the panels of the equipment room, which are named after all of them.
        int all = arrays * _set.Landings, each = Brief.AdaptersPerPanel, panels = (all + each - 1) / each;
        PlannedName name = PlannedName.Of($"{Network.Label}{_where}-{letter}{Outlets(panels > 1)}", panels);
        PlannedFamily family = PlanDraft.Family(_section, name);
        for (int panel = 0; panel < panels; panel++)
        {
            PlannedType type = _types.Panel(Math.Min(each, all));
            family.Add(new PlannedPart(name.Slice(panel, 1), type) { Network = _set.Network, Room = Brief.Rooms[room].Name, Note = _draft.Racks(room).Panel() });
        }

        return Divided(family, arrays, links, at => new PlannedPort(at / each, (at % each) + 1));
    }

    private (PortRow Links, PortRow Others) AdaptersAtOutlets(string letter, int arrays, int links) => Divided(
        AtOutlets(letter, "", _set.Landings, _types.Panel(arrays)), arrays, links, at => new PlannedPort(at / arrays, (at % arrays) + 1));

    /// <summary>The trunks of each landing: the fewest, then those with the fewest legs left over.</summary>
    /// <param name="legs">Legs at each landing.</param>
    /// <param name="joined">How many of them are joined to something now; every cable has one of these, as long as there are enough.</param>
    /// <param name="together">True to name all trunks of several outlets in one range.</param>
    private TrunkLegs Trunks(int legs, int joined, bool together = false)
    {
        int most = Brief.TrunkLegs[^1], each = SegmentRoom.Ceiling(legs, most);
        int last = Brief.TrunkLegs.First(l => l >= legs - ((each - 1) * most));
        int[] has = [.. Enumerable.Range(0, each).Select(t => t < each - 1 ? most : last)], takes = [.. has.Select((_, t) => t < joined ? 1 : Math.Min(has[t], legs - (t * most)))];
        for (int t = 0, left = joined - each; t < each && left > 0; left -= takes[t++] - 1)
            takes[t] = Math.Min(has[t], 1 + left);
        Length length = _draft.Cable(_set.Way, _set.Requirement);
        PlannedPart Line(PlannedName name, int trunk) => new(name, _types.Trunk(length, has[trunk])) { Network = _set.Network, Spare = PlannedPart.Last(has[trunk], takes[trunk] + 1) };
        if (_set.OfOutlet is not null && (each == 1 || !together))
        {
            PlannedFamily[] families = [.. Enumerable.Range(0, each).Select(t => PlanDraft.Family(_section, Line(Names("T", each == 1 ? "" : Letter(t), 0), t)))];
            return new TrunkLegs(families, takes, has, _set.Landings);
        }

        PlannedName all = PlannedName.Of($"{Network.Label}{_where}-T{Outlets(each > 1)}", each * _set.Landings);
        PlannedFamily family = PlanDraft.Family(_section, all);
        for (int t = 0; t < each * _set.Landings; t++)
        {
            int same = t;
            while (same + 1 < each * _set.Landings && (takes[(same + 1) % each], has[(same + 1) % each]) == (takes[t % each], has[t % each]))
                same++;
            family.Add(Line(all.Slice(t, same - t + 1), t % each));
            t = same;
        }

        return new TrunkLegs([family], takes, has, _set.Landings);
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
}

/// <summary>Front ports of a segment for some links of each landing.</summary>
/// <param name="Links">Which links of a landing, counted from 0.</param>
/// <param name="Near">The ports at the near end, landing by landing.</param>
/// <param name="Far">Those at the far end.</param>
internal sealed record SegmentFronts(IReadOnlyList<int> Links, PortRow Near, PortRow Far);

/// <summary>The legs of a segment's trunks that are joined to something, then those of cables that wait as a whole.</summary>
/// <param name="families">The trunks: of a room one family, of outlets one for each trunk of an outlet.</param>
/// <param name="takes">For each trunk of a landing how many legs are joined.</param>
/// <param name="has">How many it has.</param>
/// <param name="landings">How many landings.</param>
internal sealed class TrunkLegs(PlannedFamily[] families, int[] takes, int[] has, int landings)
{
    /// <summary>Arrays at each landing.</summary>
    public int Count => takes.Sum();

    /// <summary>True for arrays that one row can hold.</summary>
    public bool IsTogether(int array, int other) => families.Length == 1 || At(array).Trunk == At(other).Trunk;

    /// <summary>The legs of some arrays of each landing; of outlets those of one trunk.</summary>
    public PortRow Row(IReadOnlyList<int> arrays)
    {
        var row = new PortRow(families[families.Length > 1 && arrays.Count > 0 ? At(arrays[0]).Trunk : 0]);
        for (int landing = 0; landing < landings; landing++)
        {
            foreach (int array in arrays)
            {
                (int trunk, int leg) = At(array);
                row.Add(families.Length > 1 ? landing : (landing * takes.Length) + trunk, has[trunk] == 1 ? 0 : leg + 1);
            }
        }

        return row;
    }

    private (int Trunk, int Leg) At(int array)
    {
        int trunk = 0;
        while (array >= takes[trunk])
            array -= takes[trunk++];
        return (trunk, array);
    }
}
