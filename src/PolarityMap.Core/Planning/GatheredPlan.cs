using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Planning;

/// <summary>
/// The zone boxes and the cables to the outlets where networks are gathered: in the zone box a pair of each network goes by a
/// patch cord into one cassette for each outlet, whose array is the outlet's cable. Parallel links have a leg each instead, in
/// a cable that goes on from the trunk's leg through an adapter.
/// </summary>
internal sealed class GatheredPlan(PlanDraft draft, PlanTypes types)
{
    private readonly Dictionary<BriefOutlets, Gathering> _duplex = [];
    private readonly Dictionary<BriefOutlets, Legs> _parallel = [];

    private Brief Brief => draft.Brief;

    private int Ports => draft.Candidate.Base / 2;

    /// <summary>Adds one section with everything between zone box and outlet, when all networks have been taken.</summary>
    public void Add()
    {
        foreach (BriefOutlets outlets in Brief.Outlets.Where(o => !_duplex.ContainsKey(o) && Brief.Segments.ContainsKey(Gathering.KeyOf(o))))
            _duplex.Add(outlets, new Gathering(draft, types, outlets));
        if (_duplex.Count + _parallel.Count == 0)
            return;
        PlannedSection section = draft.Section("from the zone box to the outlets");
        foreach (Gathering gathering in _duplex.Values)
            gathering.Add(section);
        foreach (Legs legs in _parallel.Values)
            legs.Add(section);
    }

    /// <summary>Joins the zone cassettes of a network to those of the outlets, and the outlets to the devices.</summary>
    public void TakeDuplex(PlannedSection section, LandingSet set, PortRow switches, int start, PortRow zone)
    {
        int done = 0;
        foreach (BriefOutlets outlets in set.Outlets)
        {
            if (!_duplex.TryGetValue(outlets, out Gathering? gathering))
                _duplex.Add(outlets, gathering = new Gathering(draft, types, outlets));
            PortRow devices = NetworkPlan.DeviceRow(draft, types, section, set.Network, outlets);
            int each = outlets.Links[set.Network];
            ReadOnlySpan<int> places = gathering.Places(set.Network);

            // What lies in one array is one run.
            for (int link = 0; link < each;)
            {
                int together = 1;
                while (link + together < each && places[link + together] == places[link] + together && places[link + together] % Ports > 0)
                    together++;
                gathering.Patch(section, set.Network, (link, together), places[link], zone, done, devices, draft.Candidate.Method.LastCord(2));
                link += together;
            }

            section.LinkList.Add(new PlannedLinks(switches.Stop(start + done, devices.Count), devices.Stop()));
            done += devices.Count;
        }
    }

    /// <summary>What a parallel chain passes from the trunk's leg to the cord of the device.</summary>
    public IEnumerable<PlannedStop> TakeParallel(LandingSet set, BriefOutlets outlets)
    {
        if (!_parallel.TryGetValue(outlets, out Legs? legs))
            _parallel.Add(outlets, legs = new Legs(draft, types, outlets));
        return legs.Take(set.Network);
    }

    /// <summary>The arrays of one group of outlets that carry pairs of several networks.</summary>
    private sealed class Gathering
    {
        private readonly PlanDraft _draft;
        private readonly PlanTypes _types;
        private readonly BriefOutlets _outlets;
        private readonly int[] _networks;
        private readonly int[] _places;
        private readonly List<PlannedFamily> _zone = [];
        private readonly List<PlannedFamily> _desk = [];

        public Gathering(PlanDraft draft, PlanTypes types, BriefOutlets outlets)
        {
            (_draft, _types, _outlets) = (draft, types, outlets);
            _networks = [.. outlets.Links.SelectMany((links, network) => Enumerable.Repeat(network, draft.Brief.Networks[network].Application.IsParallel ? 0 : links))];
            SegmentRoom room = Brief.Segments.GetValueOrDefault(KeyOf(outlets)) ?? SegmentRoom.New(_networks.Length, Brief.Spare, Ports);
            _places = room.Places(Ports);
            int arrays = room.AllArrays(Ports);
            for (int array = 0; array < arrays; array++)
            {
                string after = arrays == 1 ? "" : $"-{(char)('A' + (array % 26))}{(array < 26 ? "" : array / 26)}";
                _zone.Add(new PlannedFamily(outlets.Name.Around("ZB-", after)));
                _desk.Add(new PlannedFamily(outlets.Name.Around("", after)));
            }
        }

        private Brief Brief => _draft.Brief;

        private int Ports => _draft.Candidate.Base / 2;

        public static SegmentKey KeyOf(BriefOutlets outlets) => new(-1, outlets.Room, true, outlets.Name.At(0));

        /// <summary>The places of a network's links at each outlet, counted from 0 through the outlet's arrays.</summary>
        public ReadOnlySpan<int> Places(int network) => _places.AsSpan(Array.IndexOf(_networks, network), _outlets.Links[network]);

        /// <summary>Cords for some links of each outlet that lie in one array.</summary>
        /// <param name="section">Takes the runs.</param>
        /// <param name="network">The network.</param>
        /// <param name="links">The first link and how many, of those that each outlet has on the network.</param>
        /// <param name="place">The place of the first in the outlet's arrays.</param>
        /// <param name="zone">The zone cassettes of the network.</param>
        /// <param name="first">The first of their ports that belongs to these outlets.</param>
        /// <param name="devices">The devices of the network at these outlets.</param>
        /// <param name="lastCord">How the cord to the device is joined.</param>
        public void Patch(PlannedSection section, int network, (int First, int Count) links, int place, PortRow zone, int first, PortRow devices, string lastCord)
        {
            int each = _outlets.Links[network], array = place / Ports, port = (place % Ports) + 1;
            PortRow from = new(zone.Family), into = new(_zone[array]), outlet = new(_desk[array]), device = new(devices.Family);
            PlannedStop fronts = zone.Stop(first, devices.Count), all = devices.Stop();
            for (int i = 0; i < _outlets.Name.Count; i++)
            {
                for (int link = 0; link < links.Count; link++)
                {
                    PlannedPort front = fronts.Ports[(i * each) + links.First + link], at = all.Ports[(i * each) + links.First + link];
                    from.Add(front.Index, front.Port);
                    into.Add(i, port + link);
                    outlet.Add(i, port + link);
                    device.Add(at.Index, at.Port);
                }
            }

            section.RunList.Add(new PlannedRun([from.Stop(), Cord(network, CordPlace.Zone, "A-to-B"), into.Stop()]));
            section.RunList.Add(new PlannedRun([outlet.Stop(), Cord(network, CordPlace.Device, lastCord), device.Stop()]));
        }

        public void Add(PlannedSection section)
        {
            string room = Brief.Rooms[_outlets.Room].Name;
            int legs = Brief.TrunkLegs.FirstOrDefault(l => l >= _zone.Count);
            if (legs == 0)
            {
                legs = _zone.Count;
                _draft.Refuse(new Refusal("trunk-legs", RefusalCode.Legs, $"each of {_outlets.Name} needs {_zone.Count} arrays in one cable, and the largest trunk has {(Brief.TrunkLegs[^1] == 1 ? "1 leg" : $"{Brief.TrunkLegs[^1]} legs")}") { Number = legs });
            }

            Length length = _draft.Cable(_outlets.Distance!.Value, $"outlets.{_outlets.Name}.distance");
            PlannedFamily cable = PlanDraft.Family(section, new PlannedPart(_outlets.Name.Around("DC-"), _types.Trunk(length, legs)) { Spare = PlannedPart.Last(legs, _zone.Count + 1) });
            for (int array = 0; array < _zone.Count; array++)
            {
                int[] networks = [.. _networks.Where((_, link) => _places[link] / Ports == array)];
                section.FamilyList.Add(_zone[array]);
                section.FamilyList.Add(_desk[array]);
                int placed = 0;
                foreach ((int count, string note) in _draft.Racks(_outlets.Room).Panels(_outlets.Name.Count, Brief.CassettesPerPanel))
                {
                    _zone[array].Add(new PlannedPart(_zone[array].Name.Slice(placed, count), _types.Cassette(far: false)) { PortNetworks = networks, Room = room, Note = note });
                    placed += count;
                }

                _desk[array].Add(new PlannedPart(_desk[array].Name, _types.Outlet()) { PortNetworks = networks, Room = room });
                PortRow zone = new(_zone[array]), desk = new(_desk[array]), leg = new(cable);
                for (int i = 0; i < _outlets.Name.Count; i++)
                {
                    zone.Add(i, 0);
                    desk.Add(i, 0);
                    leg.Add(i, legs == 1 ? 0 : array + 1);
                }

                section.RunList.Add(new PlannedRun([zone.Stop("rear"), leg.Stop(), desk.Stop("rear")]));
            }
        }

        private PlannedStop Cord(int network, CordPlace place, string type) => PortRow.Cord(_types.Cord(network, place, type), _types.LengthOf(place));
    }

    /// <summary>The legs of one group of outlets that carry a parallel link each.</summary>
    private sealed class Legs(PlanDraft draft, PlanTypes types, BriefOutlets outlets)
    {
        private readonly PlannedFamily _zone = new(outlets.Name.Around("ZP-"));
        private readonly PlannedFamily _cable = new(outlets.Name.Around("PC-"));
        private readonly PlannedFamily _desk = new(outlets.Name.Around("DP-"));
        private readonly List<int> _networks = [];

        private int All => draft.Brief.Spare.Over(outlets.Links.Where((_, n) => draft.Brief.Networks[n].Application.IsParallel).Sum());

        public IReadOnlyList<PlannedStop> Take(int network)
        {
            int at = _networks.Count, each = outlets.Links[network];
            PortRow zone = new(_zone), leg = new(_cable), desk = new(_desk);
            for (int i = 0; i < outlets.Name.Count; i++)
            {
                for (int link = 0; link < each; link++)
                {
                    zone.Add(i, at + link + 1);
                    leg.Add(i, LegsOfCable() == 1 ? 0 : at + link + 1);
                    desk.Add(i, at + link + 1);
                }
            }

            for (int link = 0; link < each; link++)
                _networks.Add(network);
            return [zone.Stop(), leg.Stop(), desk.Stop()];
        }

        public void Add(PlannedSection section)
        {
            string room = draft.Brief.Rooms[outlets.Room].Name;
            int legs = LegsOfCable(), network = _networks.Distinct().Count() == 1 ? _networks[0] : -1;
            if (legs > draft.Brief.TrunkLegs[^1])
                draft.Refuse(new Refusal("trunk-legs", RefusalCode.Legs, $"each of {outlets.Name} needs {All} arrays in one cable, and the largest trunk has {(draft.Brief.TrunkLegs[^1] == 1 ? "1 leg" : $"{draft.Brief.TrunkLegs[^1]} legs")}") { Number = legs });
            Length length = draft.Cable(outlets.Distance!.Value, $"outlets.{outlets.Name}.distance");
            _zone.Add(new PlannedPart(_zone.Name, types.Panel(All)) { Network = network, Room = room, Note = "In the zone box" });
            _cable.Add(new PlannedPart(_cable.Name, types.Trunk(length, legs, fromAdapter: true)) { Network = network, Spare = PlannedPart.Last(legs, All + 1) });
            _desk.Add(new PlannedPart(_desk.Name, types.Panel(All)) { Network = network, Room = room, Note = "At the outlet" });
            section.FamilyList.AddRange([_zone, _cable, _desk]);
            if (_networks.Count == All)
                return;

            // What is spare waits in the adapters.
            PortRow zone = new(_zone), leg = new(_cable), desk = new(_desk);
            for (int i = 0; i < outlets.Name.Count; i++)
            {
                for (int spare = _networks.Count + 1; spare <= All; spare++)
                {
                    zone.Add(i, spare);
                    leg.Add(i, spare);
                    desk.Add(i, spare);
                }
            }

            section.RunList.Add(new PlannedRun([zone.Stop(), leg.Stop(), desk.Stop()]));
        }

        private int LegsOfCable() => draft.Brief.TrunkLegs.FirstOrDefault(l => l >= All, All);
    }
}
