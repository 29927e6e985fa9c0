using PolarityMap.Core.Checks;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>
/// Puts new links into a plant: onto what the supply found for them, then onto free legs of its cables, and what is left onto
/// new parts, which were planned for these links alone.
/// </summary>
/// <param name="brief">The whole brief.</param>
/// <param name="before">The existing plant, proven.</param>
/// <param name="ways">The ways of its links.</param>
/// <param name="services">What the brief asks for, matched.</param>
/// <param name="supply">What the plant has for them.</param>
/// <param name="rest">The plant planned for the links that do not stay; null where all do.</param>
/// <param name="anyLoss">True to use parts again that state other losses than what would be bought.</param>
internal sealed class GrowthMerge(Brief brief, CheckReport before, LinkWay[] ways, IReadOnlyList<Service> services, GrowthSupply supply, CheckReport? rest, bool anyLoss)
{
    private readonly List<Part> _parts = [.. before.Traced.Plant.Parts];
    private readonly Dictionary<PortRef, PortRef> _map = [];
    private readonly HashSet<Joint> _after = [.. supply.After];
    private readonly List<GrownLink> _links = [];
    private readonly List<Joint> _put = [];
    private readonly List<(LinkWay Way, Service Service, HashSet<int> Drawn)> _new = [];
    private readonly Dictionary<PortRef, Joint> _at = [];
    private readonly FreePlaces _free = supply.Free;
    private readonly HashSet<PortRef> _lit = [.. ways.SelectMany(w => w.Hops).SelectMany(h => new[] { h.In, h.Out })];

    private Plant Old => before.Traced.Plant;

    private Plant Rest => rest!.Traced.Plant;

    public GrowthDifference Merge()
    {
        var goesOn = services.Select(s => s.Before).ToHashSet();
        foreach (Service service in services.Where(s => s.IsKept))
            _links.Add(new GrownLink(Old.Address(ways[service.Before].Link.To), ways[service.Before].Link, service.Before) { IsKept = true, Asked = service.Device(brief) });
        if (rest is not null)
            AddRest();
        for (int link = 0; link < ways.Length; link++)
        {
            if (!goesOn.Contains(link))
                _links.Add(new GrownLink(Old.Address(ways[link].Link.To), null, link));
        }

        return new Outgoing(brief, Old, _parts, supply.Joints, _after, _links, anyLoss).Finish(_put, GrownNetworks.Of(Old, brief));
    }

    private void AddRest()
    {
        var waiting = services.Where(s => !s.IsKept).GroupBy(s => s.Device(brief)).ToDictionary(g => g.Key, g => new Queue<Service>(g));
        foreach (LinkWay way in LinkWay.Of(rest!))
            _new.Add((way, waiting[Rest.Parts[way.Link.To.Port.Part].Name].Dequeue(), []));
        foreach ((LinkWay way, Service service, HashSet<int> drawn) in _new)
            DrawRuns(way, service, drawn);
        DrawLegs();
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
        WaitingAdapters(needed);
        DrawAdapters(needed);
        Make(needed);
        KeyCords(needed);
        foreach (Mating mating in needed)
            Put(Joint.Of(mating, p => _map[p]));
        foreach (OpenPlug plug in Rest.OpenPlugs.Where(o => _map.ContainsKey(o.Plug) && _map.ContainsKey(o.Adapter)))
            Put(Joint.Of(plug, p => _map[p]));
        foreach ((int cable, Length length) in supply.Lengthened)
            Lengthen(cable, length);
        foreach ((LinkWay way, Service service, _) in _new)
        {
            var link = new Link(way.Link.From with { Port = _map[way.Link.From.Port] }, way.Link.To with { Port = _map[way.Link.To.Port] }, way.Link.Place);
            _links.Add(new GrownLink("", link, service.Before) { Asked = service.Device(brief) });
        }
    }

    /// <summary>Puts a longer cable in the place of one.</summary>
    private void Lengthen(int cable, Length length)
    {
        int made = _parts.Count;
        _parts.Add(With(_parts[cable], v => v.Set("length", length), "length") with { Length = length });
        PortRef At(PortRef port) => port.Part == cable ? port with { Part = made } : port;
        foreach (Joint joint in _after.Where(j => j.Ports.Any(p => p.Part == cable)).ToArray())
            Put(joint with { A = At(joint.A), B = At(joint.B) });
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
        for (int i = 0; i < runs.Length; i++)
        {
            if (supply.RunOf(service, i) is not { } run)
                continue;
            IReadOnlyList<WayHop> hops = runs[i];
            _map[hops[0].In] = run.Start;
            _map[hops[^1].Out] = run.End;
            Label(run.Start, brief.Networks[service.Network].Name);
            Label(run.End, brief.Networks[service.Network].Name);
            drawn.UnionWith(hops.Select(h => h.Part));
        }
    }

    /// <summary>A port that belongs to no network of several in one housing is labelled with the one that it is given to.</summary>
    private void Label(PortRef port, string network)
    {
        Part part = _parts[port.Part];
        int nth = part.Shape.Ports.Take(port.Port).Count(p => p.Face.Family == ConnectorFamily.Duplex);
        if (part.PortNetworks.Count == 0 || nth != part.PortNetworks.Count || part.Values is not { } values)
            return;
        int[] networks = [.. part.PortNetworks, GrownNetworks.IndexOf(Old, brief, network)];

        // All ports of one network are said in one word.
        bool isOne = networks.Distinct().Count() == 1 && networks.Length == part.Shape.Ports.Count(p => p.Face.Family == ConnectorFamily.Duplex);
        Part labelled = With(part, v => _ = isOne ? v.Set("network", network) : v.Set("networks", (IReadOnlyList<string>)[.. values.Words("networks"), network]), "network", "networks");
        _parts[port.Part] = labelled with { Network = isOne ? networks[0] : part.Network, PortNetworks = isOne ? [] : networks };
    }

    /// <summary>Free legs for those that are planned: a dark one first, so that no link goes dark for it, then the link's own, then any, and for what is spare what is left.</summary>
    private void DrawLegs()
    {
        var fit = new LegFit(before, _free, Rest);
        foreach ((LinkWay way, Service service, HashSet<int> drawn) in _new)
        {
            HashSet<PortRef> own = service.Before < 0 ? [] : [.. ways[service.Before].Hops.SelectMany(h => new[] { h.In, h.Out })];
            BriefOutlets outlets = brief.Outlets[service.Group];
            int cable = -1;
            foreach (WayHop hop in way.Hops.Where(h => PartFacts.IsLaid(Rest.Parts[h.Part])))
            {
                cable++;
                string? outlet = outlets.Distance is not null && (brief.Separation == SeparationPolicy.Own || cable == 1) ? service.OutletName(brief) : null;
                if (!drawn.Contains(hop.Part) && !_map.ContainsKey(hop.In))
                    DrawLeg(fit, hop, outlet, brief.WayOf(outlets, cable), own);
            }
        }

        foreach (Mating mating in Spare().Where(m => PartFacts.IsLaid(Rest.Parts[m.B.Part])))
        {
            PortRef far = mating.B with { Port = mating.B.Port ^ 1 };
            if (!_map.ContainsKey(mating.B) && Rest.Parts[mating.B.Part].Length is { } length)
                DrawLeg(fit, new WayHop(mating.B.Part, mating.B, far), null, length.Millimetres, [], l => !supply.IsInRun(l));
        }

        DrawWaiting(fit);
    }

    /// <summary>Free legs for those that are to wait in panels.</summary>
    private void DrawWaiting(LegFit fit)
    {
        var adapters = Rest.OpenPlugs.ToDictionary(o => o.Plug, o => o.Adapter);
        var outlets = new Dictionary<int, string>();
        foreach ((LinkWay way, Service service, _) in _new.Where(n => brief.Separation == SeparationPolicy.Own && brief.Outlets[n.Service.Group].Distance is not null))
        {
            if (way.Matings.Select(m => m.Through).LastOrDefault(t => t is not null) is { } last)
                outlets[last.Part] = service.OutletName(brief);
        }

        foreach (OpenPlug open in Rest.OpenPlugs.Where(o => o.Plug.Port % 2 == 0 && PartFacts.IsLaid(Rest.Parts[o.Plug.Part]) && !_map.ContainsKey(o.Plug)))
        {
            PortRef far = open.Plug with { Port = open.Plug.Port ^ 1 };
            if (adapters.TryGetValue(far, out PortRef at) && Rest.Parts[open.Plug.Part].Length is { } length)
                DrawLeg(fit, new WayHop(open.Plug.Part, open.Plug, far), outlets.GetValueOrDefault(at.Part), length.Millimetres, []);
        }
    }

    private void DrawLeg(LegFit fit, WayHop hop, string? outlet, long way, HashSet<PortRef> own, Func<FreeLeg, bool>? only = null)
    {
        FreeLeg[] fitting = [.. _free.Legs.Where(l => !_free.IsUsed(l.Near) && l.Outlet == outlet && (only is null || only(l)) && fit.Of(l, hop, way) is not null)];
        if ((fitting.FirstOrDefault(l => !_lit.Contains(l.Near)) ?? fitting.FirstOrDefault(l => own.Contains(l.Near)) ?? fitting.FirstOrDefault()) is not { } leg)
            return;
        bool turned = fit.Of(leg, hop, 0) == true;
        _free.Take([leg.Near, leg.Far]);
        _map[hop.In] = turned ? leg.Far : leg.Near;
        _map[hop.Out] = turned ? leg.Near : leg.Far;
    }

    /// <summary>The planned matings that no link passes.</summary>
    private IEnumerable<Mating> Spare()
    {
        var onWay = new HashSet<Mating>(_new.SelectMany(n => n.Way.Matings), ReferenceEqualityComparer.Instance);
        return Rest.Matings.Where(m => !onWay.Contains(m));
    }

    private void DrawInterface(PortRef planned, PortRef own, bool device)
    {
        Part part = Rest.Parts[planned.Part];
        bool Serves(PortRef port, bool anyRoom = false) => _free.IsFree(port) && Old.Parts[port.Part] is var old && old.Kind == part.Kind && (anyRoom || old.Room == part.Room) && LegFit.Network(Old, old) == LegFit.Network(Rest, part)
            && Old.Port(port).Application == Rest.Port(planned).Application && Old.Port(port).Face == Rest.Port(planned).Face && (!device || port == own || old.Name == part.Name);
        PortRef found = own != Joint.Nothing && Serves(own) ? own : Joint.Nothing;
        if (found == Joint.Nothing && device && own != Joint.Nothing && Serves(own, anyRoom: true))
        {
            // The device moves with its outlet.
            found = own;
            _parts[own.Part] = With(_parts[own.Part], v => v.Set("room", part.Room!), "room", "note") with { Room = part.Room, Note = null };
        }

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
        var there = new HashSet<Mating>(_new.SelectMany(n => n.Way.Matings.Where(m => n.Drawn.Contains(m.A.Part) && n.Drawn.Contains(m.B.Part))), ReferenceEqualityComparer.Instance);

        // In the order in which the planner makes them, so that runs stay together.
        return [.. Rest.Matings.Where(m => !there.Contains(m))];
    }

    /// <summary>A leg that waits in an adapter stays in it.</summary>
    private void WaitingAdapters(IEnumerable<Mating> needed)
    {
        var through = needed.Where(m => m.Through is not null).SelectMany(m => new[] { (m.A, m.Through!.Value), (m.B, m.Through.Value) }).Concat(Rest.OpenPlugs.Select(o => (o.Plug, o.Adapter)));
        foreach ((PortRef plug, PortRef planned) in through)
        {
            if (_map.TryGetValue(plug, out PortRef there) && _at.TryGetValue(there, out Joint joint) && joint is { IsOpen: true, Through: { } adapter } && IsAlike(adapter, planned))
                _map.TryAdd(planned, adapter);
        }
    }

    /// <summary>True for an adapter that serves in place of a planned one.</summary>
    private bool IsAlike(PortRef there, PortRef planned) => Old.Parts[there.Part] is var old && Rest.Parts[planned.Part] is var part && old.Kind == part.Kind && old.Room == part.Room
        && LegFit.Network(Old, old) == LegFit.Network(Rest, part) && Old.Port(there).Keys == Rest.Port(planned).Keys && Old.Port(there).Face == Rest.Port(planned).Face;

    private void DrawAdapters(IEnumerable<Mating> needed)
    {
        foreach (PortRef planned in needed.Select(m => m.Through).OfType<PortRef>().Concat(Rest.OpenPlugs.Select(o => o.Adapter)).Distinct())
        {
            for (int p = 0; p < Old.Parts.Count && !_map.ContainsKey(planned); p++)
            {
                if (Old.Parts[p].Kind != Rest.Parts[planned.Part].Kind)
                    continue;
                for (int n = 0; n < Old.Parts[p].Shape.Ports.Count; n++)
                {
                    PortRef port = new(p, n);
                    if (!IsAlike(port, planned) || !_free.IsFree(port))
                        continue;
                    _map[planned] = port;
                    _free.Take([port]);
                    break;
                }
            }
        }
    }

    /// <summary>Makes the parts that are still missing, a cable with as many legs and a panel with as many adapters as it needs.</summary>
    private void Make(Mating[] needed)
    {
        IEnumerable<PortRef> planned = needed.SelectMany(m => Joint.Of(m, p => p).Ports)
            .Concat(Rest.OpenPlugs.SelectMany(o => new[] { o.Plug, o.Adapter })).Concat(_new.SelectMany(n => new[] { n.Way.Link.From.Port, n.Way.Link.To.Port }));
        foreach (IGrouping<int, PortRef> of in planned.Where(p => !_map.ContainsKey(p)).Distinct().GroupBy(p => p.Part))
        {
            Part part = Rest.Parts[of.Key];
            int[] ports = [.. Enumerable.Range(0, part.Shape.Ports.Count)];
            int[] legs = [.. of.Select(p => p.Port / 2).Distinct().Order()], adapters = [.. of.Select(p => p.Port).Order()];
            if (part.Kind == "trunk" && 2 * legs.Length < ports.Length)
            {
                part = WithLegs(part, brief.TrunkLegs.FirstOrDefault(l => l >= legs.Length, legs.Length), legs.Length);
                ports = [.. legs.SelectMany(l => new[] { 2 * l, (2 * l) + 1 })];
            }
            else if (part.Kind == "array panel" && adapters.Length < ports.Length)
            {
                part = With(part, v => v.Set("ports", adapters.Length), "ports");
                ports = adapters;
            }

            int made = _parts.Count;
            _parts.Add(part with { Network = part.Network < 0 ? -1 : GrownNetworks.IndexOf(Old, brief, Rest.Networks[part.Network].Name), PortNetworks = [.. part.PortNetworks.Select(n => GrownNetworks.IndexOf(Old, brief, Rest.Networks[n].Name))] });
            for (int n = 0; n < ports.Length; n++)
                _map.TryAdd(new PortRef(of.Key, ports[n]), new PortRef(made, n));
        }
    }

    /// <summary>A cord of a keyed network carries the key where what it enters does; there may be plain parts in the plant.</summary>
    private void KeyCords(Mating[] needed)
    {
        IReadOnlyList<Network> networks = GrownNetworks.Of(Old, brief);
        var keyed = new Dictionary<int, bool[]>();
        foreach (Mating mating in needed)
        {
            foreach ((PortRef cord, PortRef other) in new[] { (mating.A, mating.B), (mating.B, mating.A) })
            {
                if (!PartFacts.IsCord(Rest.Parts[cord.Part]) || Rest.Port(cord).Face.Family != ConnectorFamily.Duplex || !_map.TryGetValue(cord, out PortRef made) || made.Part < Old.Parts.Count
                    || _parts[made.Part].Network < 0 || networks[_parts[made.Part].Network].Key is null)
                    continue;
                if (!keyed.TryGetValue(made.Part, out bool[]? ends))
                    keyed[made.Part] = ends = [.. _parts[made.Part].Shape.Ports.Select(p => p.IsKeyed)];
                PortRef enters = _map[other];
                if (enters.Part < Old.Parts.Count)
                    ends[made.Port] = Old.Port(enters).IsKeyed && Old.Parts[enters.Part] is var housing && (housing.Network >= 0 || housing.PortNetworks.Count > 0);
            }
        }

        foreach ((int part, bool[] ends) in keyed)
        {
            if (!ends.SequenceEqual(_parts[part].Shape.Ports.Select(p => p.IsKeyed)))
                _parts[part] = With(_parts[part], v => v.Set("keyed", ends[0] ? ends[1] ? "both" : "near" : ends[1] ? "far" : "none"), "keyed");
        }
    }

    private static Part WithLegs(Part part, int legs, int used)
    {
        void Set(AttributeValues values)
        {
            values.Set("legs", legs);
            if (used < legs)
                values.Set("spare", (IReadOnlyList<int>)[.. Enumerable.Range(used + 1, legs - used)]);
        }

        return With(part, Set, "legs", "spare");
    }

    /// <summary>A part of another size.</summary>
    internal static Part With(Part part, Action<AttributeValues> set, params string[] names)
    {
        PartKind kind = PartKinds.Find(part.Kind)!;
        var values = new AttributeValues(kind.AllAttributes, part.Values!.Defaults);
        set(values);
        foreach (string name in part.Values.Given.Where(n => !names.Contains(n)))
            values.Copy(part.Values, name);
        return part with { Shape = kind.Build(values, [])!, Values = values, SpareLegs = values.Numbers("spare") };
    }
}
