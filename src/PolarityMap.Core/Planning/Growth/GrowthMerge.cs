using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>
/// Puts new links into a plant: first onto ports of runs that are free, then onto free legs of its cables, and what is left onto
/// new parts, which were planned for these links alone.
/// </summary>
/// <param name="brief">The whole brief.</param>
/// <param name="before">The existing plant, proven.</param>
/// <param name="ways">The ways of its links.</param>
/// <param name="services">What the brief asks for, matched.</param>
/// <param name="rest">The plant planned for the links that do not stay; null where all do.</param>
internal sealed class GrowthMerge(Brief brief, CheckReport before, LinkWay[] ways, IReadOnlyList<Service> services, CheckReport? rest)
{
    private readonly List<Part> _parts = [.. before.Traced.Plant.Parts];
    private readonly Dictionary<PortRef, PortRef> _map = [];
    private readonly Dictionary<int, int> _made = [];
    private readonly Dictionary<int, string> _outlets = [];
    private readonly HashSet<Joint> _after = [];
    private readonly List<GrownLink> _links = [];
    private readonly List<Joint> _put = [];
    private readonly List<(LinkWay Way, Service Service, HashSet<int> Drawn)> _new = [];
    private readonly Dictionary<PortRef, Joint> _at = [];
    private Dictionary<PortRef, Joint> _restAt = [];
    private FreePlaces _free = null!;

    private Plant Old => before.Traced.Plant;

    private Plant Rest => rest!.Traced.Plant;

    public GrowthDifference Merge()
    {
        Joint[] joints = [.. Old.Matings.Select(m => Joint.Of(m, p => p)), .. Old.OpenPlugs.Select(o => Joint.Of(o, p => p))];
        _after.UnionWith(joints);
        var kept = services.Where(s => s.IsKept).ToList();
        var keptWays = kept.Select(s => ways[s.Before]).ToList();
        var stays = keptWays.SelectMany(w => w.Matings).Select(m => Joint.Of(m, p => p)).ToHashSet();
        var keptLinks = kept.Select(s => s.Before).ToHashSet();
        for (int link = 0; link < ways.Length; link++)
        {
            if (!keptLinks.Contains(link))
                _after.ExceptWith(ways[link].Matings.Where(m => IsLoose(m.A) || IsLoose(m.B)).Select(m => Joint.Of(m, p => p)).Where(j => !stays.Contains(j)));
        }

        var goesOn = services.Select(s => s.Before).ToHashSet();
        FindOutlets();
        _free = new FreePlaces(before, _after, keptWays.SelectMany(w => w.Hops).SelectMany(h => new[] { h.In, h.Out }).Where(p => p != Joint.Nothing), _outlets);
        foreach (Service service in kept)
            _links.Add(new GrownLink(Name(service), ways[service.Before].Link, service.Before) { IsKept = true });
        if (rest is not null)
            AddRest();
        for (int link = 0; link < ways.Length; link++)
        {
            if (!goesOn.Contains(link))
                _links.Add(new GrownLink(Old.Address(ways[link].Link.To), null, link));
        }

        return new Outgoing(brief, Old, _parts, joints, _after, _links).Finish(_put, GrownNetworks.Of(Old, brief, PlanGenerator.MayShare(brief)));
    }

    private string Name(Service service) => service.Device(brief) + (brief.Outlets[service.Group].Links[service.Network] > 1 ? $"/{service.Number + 1}" : "");

    private bool IsLoose(PortRef port) => Old.Parts[port.Part] is var part && (part.Shape.IsInterface || PartFacts.IsCord(part));

    private void FindOutlets()
    {
        foreach (Service service in services.Where(s => s.Before >= 0 && brief.Outlets[s.Group].Distance is not null))
        {
            if (ways[service.Before].FixedRuns(Old).LastOrDefault() is { } last)
            {
                IEnumerable<WayHop> own = brief.Separation == SeparationPolicy.Gathered ? last.TakeLast(3) : last;
                foreach (WayHop hop in own.Where(h => Old.Parts[h.Part].Shape.IsCable || h == own.Last()))
                    _outlets[hop.Part] = brief.Outlets[service.Group].Name.At(service.Outlet);
            }
        }
    }

    private void AddRest()
    {
        var waiting = services.Where(s => !s.IsKept).GroupBy(s => s.Device(brief)).ToDictionary(g => g.Key, g => new Queue<Service>(g));
        foreach (LinkWay way in LinkWay.Of(rest!))
            _new.Add((way, waiting[Rest.Parts[way.Link.To.Port.Part].Name].Dequeue(), []));
        foreach ((LinkWay way, Service service, HashSet<int> drawn) in _new)
            DrawRuns(way, service, drawn);
        foreach ((LinkWay way, Service service, HashSet<int> drawn) in _new)
            DrawLegs(way, service, drawn);
        foreach ((LinkWay way, Service service, _) in _new)
        {
            DrawInterface(way.Link.From.Port, service.Before < 0 ? Joint.Nothing : ways[service.Before].Link.From.Port, device: false);
            DrawInterface(way.Link.To.Port, service.Before < 0 ? Joint.Nothing : ways[service.Before].Link.To.Port, device: true);
        }

        foreach (Joint joint in _after)
        {
            foreach (PortRef port in joint.Ports)
                _at[port] = joint;
        }

        Mating[] needed = Needed();
        DrawAdapters(needed);
        Make(needed);
        foreach (Mating mating in needed)
            Put(Joint.Of(mating, p => _map[p]));
        foreach (OpenPlug plug in Rest.OpenPlugs.Where(o => _map.ContainsKey(o.Plug) && _map.ContainsKey(o.Adapter)))
            Put(Joint.Of(plug, p => _map[p]));
        foreach ((LinkWay way, Service service, _) in _new)
        {
            var link = new Link(way.Link.From with { Port = _map[way.Link.From.Port] }, way.Link.To with { Port = _map[way.Link.To.Port] }, way.Link.Place);
            _links.Add(new GrownLink(Name(service), link, service.Before));
        }
    }

    /// <summary>Adds a joint and takes out what is in its ports.</summary>
    private void Put(Joint joint)
    {
        foreach (PortRef port in joint.Ports)
        {
            if (_at.Remove(port, out Joint old))
                _after.Remove(old);
        }

        _after.Add(joint);
        _put.Add(joint);
        foreach (PortRef port in joint.Ports)
            _at[port] = joint;
    }

    private void DrawRuns(LinkWay way, Service service, HashSet<int> drawn)
    {
        IReadOnlyList<WayHop>[] runs = [.. way.FixedRuns(Rest)];
        string network = brief.Networks[service.Network].Name;
        for (int i = 0; i < runs.Length; i++)
        {
            IReadOnlyList<WayHop> hops = runs[i];
            if (Rest.Port(hops[0].In).Face.Family != ConnectorFamily.Duplex)
                continue;
            string? outlet = i == runs.Length - 1 && brief.Outlets[service.Group].Distance is not null ? brief.Outlets[service.Group].Name.At(service.Outlet) : null;
            string kind = FreePlaces.Kind(Rest, hops);
            FixedRun[] alike = [.. _free.Runs(kind).Where(r => (r.Network is null || r.Network == network) && r.Outlet == outlet && IsLong(r.Hops, service, i))];
            FixedRun[] free = [.. alike.Where(_free.IsFree)];
            if (free.Length == 0 || brief.Spare.Over(alike.Length - free.Length + 1) > alike.Length)
                continue;
            HashSet<PortRef> own = service.Before < 0 ? [] : [.. ways[service.Before].Hops.SelectMany(h => new[] { h.In, h.Out })];
            FixedRun best = free.FirstOrDefault(r => own.Contains(r.Start) && own.Contains(r.End)) ?? free[0];
            _free.Take(best.Hops.SelectMany(h => new[] { h.In, h.Out }));
            _map[hops[0].In] = best.Start;
            _map[hops[^1].Out] = best.End;
            Label(best.Start, network);
            Label(best.End, network);
            drawn.UnionWith(Enumerable.Range(0, hops.Count).Select(h => hops[h].Part));
        }
    }

    private bool IsLong(IReadOnlyList<WayHop> hops, Service service, int run)
    {
        long laid = hops.Sum(h => PartFacts.IsLaid(Old.Parts[h.Part]) ? Old.Parts[h.Part].Length?.Millimetres ?? 0 : 0);
        return laid >= Way(service, run);
    }

    /// <summary>The way that a laid cable covers, the first or the second of a link.</summary>
    private long Way(Service service, int cable)
    {
        BriefOutlets outlets = brief.Outlets[service.Group];
        long room = brief.Rooms[outlets.Room].Distance?.Millimetres ?? 0, outlet = outlets.Distance?.Millimetres ?? 0;
        return brief.Separation == SeparationPolicy.Gathered ? cable == 0 ? room : outlet : room + outlet;
    }

    /// <summary>A port that belongs to no network of several in one housing is labelled with the one that it is given to.</summary>
    private void Label(PortRef port, string network)
    {
        Part part = _parts[port.Part];
        int nth = part.Shape.Ports.Take(port.Port).Count(p => p.Face.Family == ConnectorFamily.Duplex);
        if (part.PortNetworks.Count == 0 || nth != part.PortNetworks.Count || part.Values is not { } values || PartKinds.Find(part.Kind) is not { } kind)
            return;
        var said = new AttributeValues(kind.AllAttributes, values.Defaults).Set("networks", [.. values.Words("networks"), network]);
        said.FillFrom(values);
        _parts[port.Part] = part with { PortNetworks = [.. part.PortNetworks, GrownNetworks.IndexOf(Old, brief, network)], Values = said };
    }

    private void DrawLegs(LinkWay way, Service service, HashSet<int> drawn)
    {
        var own = service.Before < 0 ? [] : ways[service.Before].Hops.SelectMany(h => new[] { h.In, h.Out }).ToHashSet();
        int cable = -1;
        foreach (WayHop hop in way.Hops.Where(h => PartFacts.IsLaid(Rest.Parts[h.Part])))
        {
            cable++;
            if (drawn.Contains(hop.Part) || _map.ContainsKey(hop.In))
                continue;
            string? outlet = brief.Outlets[service.Group].Distance is not null && (brief.Separation == SeparationPolicy.Own || cable == 1)
                ? brief.Outlets[service.Group].Name.At(service.Outlet) : null;
            string? here = FreePlaces.RoomOf(Rest, hop.In, RestAt), there = FreePlaces.RoomOf(Rest, hop.Out, RestAt);
            FreeLeg[] fitting = [.. _free.Legs.Where(l => !_free.IsUsed(l.Near) && l.Outlet == outlet && Fits(l, hop, Way(service, cable), (here, there)) is not null)];
            if ((fitting.FirstOrDefault(l => own.Contains(l.Near)) ?? fitting.FirstOrDefault()) is not { } leg)
                continue;
            bool turned = Fits(leg, hop, 0, (here, there)) == true;
            _free.Take([leg.Near, leg.Far]);
            _map[hop.In] = turned ? leg.Far : leg.Near;
            _map[hop.Out] = turned ? leg.Near : leg.Far;
        }
    }

    private Joint? RestAt(PortRef port)
    {
        if (_restAt.Count == 0)
            _restAt = Rest.Matings.Select(m => Joint.Of(m, p => p)).SelectMany(j => new[] { (j.A, j), (j.B, j) }).ToDictionary(p => p.Item1, p => p.j);
        return _restAt.TryGetValue(port, out Joint joint) ? joint : null;
    }

    /// <summary>Whether a leg serves in place of a planned one: null where it does not, else whether it has to be turned.</summary>
    private bool? Fits(FreeLeg leg, WayHop hop, long way, (string? Here, string? There) rooms)
    {
        Part old = Old.Parts[leg.Near.Part], planned = Rest.Parts[hop.Part];
        if (PartFacts.Type(old) != PartFacts.Type(planned) || old.Fibre != planned.Fibre || (old.Length?.Millimetres ?? 0) < way || Network(Old, old) != Network(Rest, planned))
            return null;
        string? near = FreePlaces.RoomOf(Old, leg.Near, OldAt), far = FreePlaces.RoomOf(Old, leg.Far, OldAt);
        PortShape from = Rest.Port(hop.In), to = Rest.Port(hop.Out);
        if ((near, far) == rooms && IsLike(Old.Port(leg.Near), from) && IsLike(Old.Port(leg.Far), to))
            return false;
        return (far, near) == rooms && IsLike(Old.Port(leg.Far), from) && IsLike(Old.Port(leg.Near), to) ? true : null;
    }

    private Joint? OldAt(PortRef port) => before.Traced.MatingAt(before.Traced.Graph.PositionOf(port, 1)) is { } mating ? Joint.Of(mating, p => p) : _free.At(port);

    private static bool IsLike(PortShape a, PortShape b) => a.Base == b.Base && a.Pinned == b.Pinned && a.Polish == b.Polish && a.Face == b.Face;

    private static string Network(Plant plant, Part part) => part.Network < 0 ? "" : plant.Networks[part.Network].Name;

    private void DrawInterface(PortRef planned, PortRef own, bool device)
    {
        Part part = Rest.Parts[planned.Part];
        bool Serves(PortRef port) => _free.IsFree(port) && Old.Parts[port.Part] is var old && old.Kind == part.Kind && old.Room == part.Room && Network(Old, old) == Network(Rest, part)
            && Old.Port(port).Application == Rest.Port(planned).Application && Old.Port(port).Face == Rest.Port(planned).Face && (!device || port == own || old.Name == part.Name);
        PortRef found = own != Joint.Nothing && Serves(own) ? own : Joint.Nothing;
        for (int p = 0; p < Old.Parts.Count && found == Joint.Nothing; p++)
        {
            if (!Old.Parts[p].Shape.IsInterface || Old.Parts[p].Kind != part.Kind)
                continue;
            for (int n = 0; n < Old.Parts[p].Shape.Ports.Count && found == Joint.Nothing; n++)
                found = Serves(new PortRef(p, n)) ? new PortRef(p, n) : found;
        }

        if (found == Joint.Nothing)
            return;
        _free.Take([found]);
        _map[planned] = found;
    }

    /// <summary>The planned matings that are to be made: all but those inside of runs that are there.</summary>
    private Mating[] Needed()
    {
        var onWay = new HashSet<Mating>(ReferenceEqualityComparer.Instance);
        var seen = new HashSet<Mating>(ReferenceEqualityComparer.Instance);
        var needed = new List<Mating>();
        foreach ((LinkWay way, _, HashSet<int> drawn) in _new)
        {
            foreach (Mating mating in way.Matings)
            {
                onWay.Add(mating);
                if ((!drawn.Contains(mating.A.Part) || !drawn.Contains(mating.B.Part)) && seen.Add(mating))
                    needed.Add(mating);
            }
        }

        // What is spare comes with the cables that are new as a whole.
        var legs = needed.SelectMany(m => new[] { m.A, m.B }).Where(p => Rest.Parts[p.Part].Kind == "trunk" && !_map.ContainsKey(p)).Select(p => p.Part).ToHashSet();
        foreach (Mating mating in Rest.Matings.Where(m => !onWay.Contains(m)))
        {
            bool IsNew(PortRef port) => !PartFacts.IsLaid(Rest.Parts[port.Part]) || (legs.Contains(port.Part) && !Rest.Parts[port.Part].Shape.Ports.Select((_, n) => port with { Port = n }).Any(_map.ContainsKey));
            if (IsNew(mating.A) && IsNew(mating.B) && (legs.Contains(mating.A.Part) || legs.Contains(mating.B.Part)))
                needed.Add(mating);
        }

        // In the order in which the planner makes them, so that runs stay together.
        var order = Rest.Matings.Select((m, i) => (m, i)).ToDictionary(p => p.m, p => p.i, (IEqualityComparer<Mating>)ReferenceEqualityComparer.Instance);
        return [.. needed.OrderBy(m => order[m])];
    }

    private void DrawAdapters(IEnumerable<Mating> needed)
    {
        foreach (PortRef planned in needed.Select(m => m.Through).OfType<PortRef>().Distinct())
        {
            Part part = Rest.Parts[planned.Part];
            for (int p = 0; p < Old.Parts.Count && !_map.ContainsKey(planned); p++)
            {
                Part old = Old.Parts[p];
                if (old.Kind != part.Kind || old.Room != part.Room || Network(Old, old) != Network(Rest, part) || old.Shape.Ports[0].Keys != part.Shape.Ports[0].Keys)
                    continue;
                for (int n = 0; n < old.Shape.Ports.Count; n++)
                {
                    PortRef port = new(p, n);
                    if (old.Shape.Ports[n].Face != Rest.Port(planned).Face || !_free.IsFree(port))
                        continue;
                    _map[planned] = port;
                    _free.Take([port]);
                    break;
                }
            }
        }
    }

    /// <summary>Makes the parts that are still missing, a cable with as many legs as it needs.</summary>
    private void Make(Mating[] needed)
    {
        PortRef[] missing = [.. needed.SelectMany(m => Joint.Of(m, p => p).Ports).Concat(_new.SelectMany(n => new[] { n.Way.Link.From.Port, n.Way.Link.To.Port })).Where(p => !_map.ContainsKey(p)).Distinct()];
        var bought = missing.Select(p => p.Part).ToHashSet();
        PortRef[] spare = [.. Rest.OpenPlugs.Where(o => bought.Contains(o.Plug.Part) && !Rest.Parts[o.Plug.Part].Shape.Ports.Select((_, n) => o.Plug with { Port = n }).Any(_map.ContainsKey)).Select(o => o.Adapter).Where(p => !bought.Contains(p.Part))];
        foreach (IGrouping<int, PortRef> of in missing.Concat(spare).GroupBy(p => p.Part))
        {
            Part part = Rest.Parts[of.Key];
            int[] ports = [.. Enumerable.Range(0, part.Shape.Ports.Count)];
            if (part.Kind == "trunk" && ports.Any(n => _map.ContainsKey(new PortRef(of.Key, n))))
            {
                int[] legs = [.. of.Select(p => p.Port / 2).Distinct().Order()];
                int most = brief.TrunkLegs.FirstOrDefault(l => l >= legs.Length, part.Shape.Ports.Count / 2);
                part = WithLegs(part, most, legs.Length);
                ports = [.. legs.SelectMany(l => new[] { 2 * l, (2 * l) + 1 })];
            }

            int made = _parts.Count;
            _made[of.Key] = made;
            _parts.Add(part with { Network = part.Network < 0 ? -1 : GrownNetworks.IndexOf(Old, brief, Rest.Networks[part.Network].Name), PortNetworks = [.. part.PortNetworks.Select(n => GrownNetworks.IndexOf(Old, brief, Rest.Networks[n].Name))] });
            for (int n = 0; n < ports.Length; n++)
                _map.TryAdd(new PortRef(of.Key, ports[n]), new PortRef(made, n));
        }
    }

    private static Part WithLegs(Part part, int legs, int used)
    {
        PartKind kind = PartKinds.Find(part.Kind)!;
        var values = new AttributeValues(kind.AllAttributes, part.Values!.Defaults).Set("legs", legs);
        if (used < legs)
            values.Set("spare", (IReadOnlyList<int>)[.. Enumerable.Range(used + 1, legs - used)]);
        foreach (string name in part.Values.Given.Where(n => n is not "legs" and not "spare"))
            values.Copy(part.Values, name);
        return part with { Shape = kind.Build(values, [])!, Values = values, SpareLegs = values.Numbers("spare") };
    }
}
