
namespace PolarityMap.Core.Planning;

/// <summary>One network from one equipment room: its switches, its segments, its devices.</summary>
/// <param name="draft">Takes the parts.</param>
/// <param name="types">Their types.</param>
/// <param name="gathered">Takes what is gathered in zone boxes.</param>
/// <param name="network">Index of the network.</param>
/// <param name="from">Index of the equipment room.</param>
/// <param name="alone">True when the network has one segment in all, so that names need not say where.</param>
internal sealed class NetworkPlan(PlanDraft draft, PlanTypes types, GatheredPlan gathered, int network, int from, bool alone)
{
    private int _taken;

    private Brief Brief => draft.Brief;

    private BriefNetwork Network => Brief.Networks[network];

    public void Add()
    {
        List<LandingSet> sets = Demands.Of(Brief, network, from);
        if (sets.Count == 0)
            return;
        int links = sets.Sum(s => s.Links);
        BriefRoom room = Brief.Rooms[from];
        bool oneRoom = Brief.Rooms.Count(r => r.Distance is null) == 1;
        PlannedSection section = draft.Section(oneRoom ? Network.Name : $"{Network.Name} from {room.Name}");
        PortRow switches = Switches(section, links, oneRoom ? "" : "-" + room.Label);
        foreach (LandingSet set in sets)
        {
            if (Network.Application.IsParallel)
                AddParallel(section, set, switches);
            else
                AddDuplex(section, set, switches);
        }
    }

    private PortRow Switches(PlannedSection section, int links, string where)
    {
        int each = Brief.PortsPerSwitch, count = (links + each - 1) / each;
        if (Network.Switches is { } most && count > most)
        {
            string requirement = $"networks.{Network.Name}.switches";
            draft.Refuse(new Refusal(requirement, RefusalCode.Ports, $"{Network.Name} has {links} links from {Brief.Rooms[from].Name}, and {most} {(most == 1 ? "switch" : "switches")} of {each} ports {(most == 1 ? "has" : "have")} {most * each}") { Number = count });
        }

        if (links == 0)
            return new PortRow(new PlannedFamily(PlannedName.One("")));
        PlannedName name = PlannedName.Of($"{Network.Label}-SW{where}{(where.Length > 0 && count > 1 ? "-" : "")}", count);
        PlannedFamily family = PlanDraft.Family(section, name);
        PlannedType type = types.Switch(network);
        for (int i = 0; i < count; i++)
        {
            string? note = draft.Racks(from).Switch();
            bool together = note is null;
            family.Add(new PlannedPart(together ? name : name.Slice(i, 1), type) { Network = network, Room = Brief.Rooms[from].Name, Note = note });
            if (together)
                break;
        }

        var row = new PortRow(family);
        for (int link = 0; link < links; link++)
            row.Add(link / each, (link % each) + 1);
        return row;
    }

    private void AddDuplex(PlannedSection section, LandingSet set, PortRow switches)
    {
        int start = _taken;
        _taken += set.Links;
        int runs = section.RunList.Count;
        IReadOnlyList<SegmentFronts> fronts = new SegmentPlan(draft, types, set, section, alone).Cassettes();
        if (set.Links == 0)
            return;

        // The cords of a segment are told before it.
        foreach (SegmentFronts of in fronts.Where(f => f.Links.Count > 0))
            section.RunList.Insert(runs++, new PlannedRun([Some(switches, start, set.LinksEach, set.Landings, of.Links).Stop(), Cord(CordPlace.Switch, "A-to-B"), of.Near.Stop()]));
        if (set.IsGathered)
        {
            gathered.TakeDuplex(section, set, switches, start, fronts[0].Far);
            return;
        }

        string last = draft.Candidate.Method.LastCord(1);
        int done = 0;
        foreach ((PortRow devices, BriefOutlets _) in Devices(section, set))
        {
            foreach (SegmentFronts of in fronts.Where(f => f.Links.Count > 0))
            {
                PlannedStop far = set.OfOutlet is null ? of.Far.Stop(done, devices.Count) : of.Far.Stop();
                PortRow at = set.OfOutlet is null ? devices : Some(devices, 0, set.LinksEach, set.Landings, of.Links);
                section.RunList.Add(new PlannedRun([far, Cord(CordPlace.Device, last), at.Stop()]));
            }

            section.LinkList.Add(new PlannedLinks(switches.Stop(start + done, devices.Count), devices.Stop()));
            done += devices.Count;
        }
    }

    /// <summary>Of a row with so many ports for each landing those of some links.</summary>
    private static PortRow Some(PortRow row, int start, int each, int landings, IReadOnlyList<int> links)
    {
        var some = new PortRow(row.Family);
        PlannedStop all = row.Stop(start, each * landings);
        for (int landing = 0; landing < landings; landing++)
        {
            foreach (int link in links)
                some.Add(all.Ports[(landing * each) + link].Index, all.Ports[(landing * each) + link].Port);
        }

        return some;
    }

    private void AddParallel(PlannedSection section, LandingSet set, PortRow switches)
    {
        int start = _taken;
        _taken += set.Links;
        (PortRow near, PortRow legs, PortRow? far, PlannedRun? spare) = new SegmentPlan(draft, types, set, section, alone).Panels();
        int trunks = set.IsGathered ? 2 : 1, done = 0;
        (string first, string last) = draft.Candidate.Method.ArrayCords(draft.Candidate.Array, trunks);
        foreach ((PortRow devices, BriefOutlets outlets) in Devices(section, set))
        {
            var stops = new List<PlannedStop>
            {
                switches.Stop(start + done, devices.Count), ArrayCord(CordPlace.Switch, first), near.Stop(done, devices.Count), legs.Stop(done, devices.Count),
            };
            if (far is not null)
                stops.Add(far.Stop(done, devices.Count));
            else
                stops.AddRange(gathered.TakeParallel(set, outlets));
            stops.Add(ArrayCord(CordPlace.Device, last));
            stops.Add(devices.Stop());
            section.RunList.Add(new PlannedRun(stops));
            section.LinkList.Add(new PlannedLinks(switches.Stop(start + done, devices.Count), devices.Stop()));
            done += devices.Count;
        }

        if (spare is not null)
            section.RunList.Add(spare);
    }

    /// <summary>The devices at the outlets that a set serves, group by group, in the order of its links.</summary>
    private IEnumerable<(PortRow Devices, BriefOutlets Outlets)> Devices(PlannedSection section, LandingSet set)
    {
        foreach (BriefOutlets outlets in set.Outlets.Where(o => o.Links[network] > 0))
            yield return (DeviceRow(draft, types, section, network, outlets), outlets);
    }

    /// <summary>The ports of the devices of one network at outlets, outlet by outlet.</summary>
    internal static PortRow DeviceRow(PlanDraft draft, PlanTypes types, PlannedSection section, int network, BriefOutlets outlets)
    {
        int each = outlets.Links[network];
        PlannedName name = outlets.Name.Around(draft.Brief.Networks[network].Label + "-");
        var row = new PortRow(PlanDraft.Family(section, new PlannedPart(name, types.Device(network, each)) { Network = network, Room = draft.Brief.Rooms[outlets.Room].Name }));
        for (int outlet = 0; outlet < outlets.Name.Count; outlet++)
        {
            for (int port = 1; port <= each; port++)
                row.Add(outlet, port);
        }

        return row;
    }

    private PlannedStop Cord(CordPlace place, string type) => PortRow.Cord(types.Cord(network, place, type), types.LengthOf(place));

    private PlannedStop ArrayCord(CordPlace place, string map) => PortRow.Cord(types.ArrayCord(network, place, map), types.LengthOf(place));
}
