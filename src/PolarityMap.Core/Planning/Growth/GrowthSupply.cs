using PolarityMap.Core.Checks;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>
/// What the existing plant has for the links that do not stay: which of them go onto free ports of runs, and how many arrays
/// every segment lacks for the others and for what is to be spare. Links of a segment are alike, so that counting is enough:
/// no choice of ports leaves fewer arrays to buy.
/// </summary>
internal sealed class GrowthSupply
{
    private readonly Brief _brief;
    private readonly CheckReport _before;
    private readonly LinkWay[] _ways;
    private readonly IReadOnlyList<Service> _services;
    private readonly TracedPlant _fresh;
    private readonly int _ports;
    private readonly Dictionary<(Service, int), FixedRun> _runs = [];
    private readonly HashSet<PortRef> _inRuns = [];
    private readonly Dictionary<int, Length> _lengthened = [];
    private readonly LegFit _fit;
    private readonly Dictionary<SegmentKey, SegmentRoom> _segments = [];
    private readonly Dictionary<int, string> _outlets = [];
    private readonly Lazy<ILookup<string, KeyValuePair<SegmentKey, SegmentRoom>>> _byOutlet;

    /// <param name="brief">The whole brief.</param>
    /// <param name="before">The existing plant, proven.</param>
    /// <param name="ways">The ways of its links.</param>
    /// <param name="services">What the brief asks for, matched.</param>
    /// <param name="fresh">The brief planned anew, which tells what its links pass.</param>
    /// <param name="ports">Duplex links in an array.</param>
    public GrowthSupply(Brief brief, CheckReport before, LinkWay[] ways, IReadOnlyList<Service> services, CheckReport fresh, int ports)
    {
        (_brief, _before, _ways, _services, _fresh, _ports) = (brief, before, ways, services, fresh.Traced, ports);
        _byOutlet = new(() => _segments.Where(s => s.Key.Outlet is not null).ToLookup(s => s.Key.Outlet!));
        Plant old = before.Traced.Plant;
        Joints = [.. old.Matings.Select(m => Joint.Of(m, p => p)), .. old.OpenPlugs.Select(o => Joint.Of(o, p => p))];
        After = [.. Joints];
        Unplug();
        FindOutlets();
        Free = new FreePlaces(brief, before, After, services.Where(s => s.IsKept).SelectMany(s => ways[s.Before].Hops).SelectMany(h => new[] { h.In, h.Out }).Where(p => p != Joint.Nothing), _outlets);
        _fit = new LegFit(before, Free, Fresh);
        var waysOf = LinkWay.Of(fresh).GroupBy(w => Fresh.Parts[w.Link.To.Port.Part].Name).ToDictionary(g => g.Key, g => new Queue<LinkWay>(g));
        var needs = services.Select(s => new Need(s, waysOf[s.Device(brief)].Dequeue())).ToList();
        foreach (var of in needs.Where(n => !n.Service.Application(brief).IsParallel).SelectMany(RunsOf).GroupBy(r => (r.Key with { IsGathered = r.Key.Outlet is not null && r.Key.IsGathered }, r.Kind)))
            Supply([.. of]);
        AbandonRuns();
        foreach (var of in needs.Where(n => n.Service.Application(brief).IsParallel).GroupBy(n => KeyOf(n.Service, brief.Separation == SeparationPolicy.Own)))
            SupplyLegs(of.Key, [.. of]);
    }

    private Plant Fresh => _fresh.Plant;

    /// <summary>The joints of the existing plant.</summary>
    public IReadOnlyList<Joint> Joints { get; }

    /// <summary>Those that stay when the cords of links that do not stay are taken out.</summary>
    public HashSet<Joint> After { get; }

    public FreePlaces Free { get; }

    /// <summary>For segments that new links pass what of them is there and how many arrays are to be bought.</summary>
    public IReadOnlyDictionary<SegmentKey, SegmentRoom> Segments => _segments;

    /// <summary>Cables that are exchanged for longer ones between the same ports, with the length of these.</summary>
    public IReadOnlyDictionary<int, Length> Lengthened => _lengthened;

    /// <summary>True where arrays are to be bought only to have what the brief asks to be spare.</summary>
    public bool LacksSpare => _segments.Values.Any(s => s.Arrays > 0);

    /// <summary>The run that the nth stretch of a link goes onto, or null where that is bought.</summary>
    public FixedRun? RunOf(Service service, int nth) => _runs.GetValueOrDefault((service, nth));

    /// <summary>True for a leg that has cassettes at its ends which were counted already.</summary>
    public bool IsInRun(FreeLeg leg) => _inRuns.Contains(leg.Near) || _inRuns.Contains(leg.Far);

    /// <summary>What is there for an outlet with cables of its own and what is not, in words that are equal for outlets that are alike.</summary>
    public string PatternOf(int group, int outlet)
    {
        BriefOutlets outlets = _brief.Outlets[group];
        return string.Join(' ', _byOutlet.Value[outlets.Name.At(outlet)].OrderBy(s => s.Key.Network).Select(s => $"{s.Key.Network}:{s.Value.Arrays}:{string.Concat(s.Value.AreThere.Select(t => t ? '1' : '0'))}"));
    }

    private bool IsLoose(PortRef port) => _before.Traced.Plant.Parts[port.Part] is var part && (part.Shape.IsInterface || PartFacts.IsCord(part));

    /// <summary>Takes the cords of links that do not stay out of <see cref="After"/>.</summary>
    private void Unplug()
    {
        var kept = _services.Where(s => s.IsKept).Select(s => s.Before).ToHashSet();
        var stays = kept.SelectMany(l => _ways[l].Matings).Select(m => Joint.Of(m, p => p)).ToHashSet();
        for (int link = 0; link < _ways.Length; link++)
        {
            if (!kept.Contains(link))
                After.ExceptWith(_ways[link].Matings.Where(m => IsLoose(m.A) || IsLoose(m.B)).Select(m => Joint.Of(m, p => p)).Where(j => !stays.Contains(j)));
        }
    }

    private void FindOutlets()
    {
        Plant old = _before.Traced.Plant;
        var joints = Joints.SelectMany(j => j.Ports.Select(p => (p, j))).ToDictionary(p => p.p, p => p.j);
        foreach (Service service in _services.Where(s => s.Before >= 0 && _brief.Outlets[s.Group].Distance is not null))
        {
            if (_ways[service.Before].FixedRuns(old).LastOrDefault() is { } last)
            {
                // Behind a zone box the last cable is the outlet's, without one all are.
                int first = _brief.Separation == SeparationPolicy.Gathered ? last.ToList().FindLastIndex(h => PartFacts.IsLaid(old.Parts[h.Part])) : 0;
                foreach (WayHop hop in last.Skip(first).Where(h => old.Parts[h.Part].Shape.IsCable || h == last[^1]))
                    _outlets[hop.Part] = service.OutletName(_brief);
                if (joints.TryGetValue(last[^1].Out, out Joint end) && end.Through is { } panel)
                    _outlets.TryAdd(panel.Part, service.OutletName(_brief));
            }
        }

        // What else ends in a panel of an outlet is laid to it.
        foreach (Joint joint in Joints)
        {
            if (joint.Through is { } panel && _outlets.TryGetValue(panel.Part, out string? outlet))
            {
                foreach (PortRef plug in joint.Ports.Where(p => PartFacts.IsLaid(old.Parts[p.Part])))
                    _outlets.TryAdd(plug.Part, outlet);
            }
        }

        // What no link goes on to is found by its name.
        var names = _brief.Outlets.Where(o => o.Distance is not null).SelectMany(o => Enumerable.Range(0, o.Name.Count).Select(o.Name.At)).ToHashSet();
        foreach (Joint joint in Joints.Where(j => !j.IsOpen))
        {
            foreach ((int part, int cable) in new[] { (joint.A.Part, joint.B.Part), (joint.B.Part, joint.A.Part) })
            {
                if (PartFacts.IsLaid(old.Parts[cable]) && !old.Parts[part].Shape.IsCable && OutletOf(old.Parts[part].Name, names, atEnd: _brief.Separation == SeparationPolicy.Own, isCable: false) is { } outlet && _outlets.TryAdd(part, outlet))
                    _outlets.TryAdd(cable, outlet);
            }
        }

        for (int cable = 0; cable < old.Parts.Count; cable++)
        {
            if (PartFacts.IsLaid(old.Parts[cable]) && OutletOf(old.Parts[cable].Name, names, atEnd: true, isCable: true) is { } outlet)
                _outlets.TryAdd(cable, outlet);
        }
    }

    /// <summary>The outlet that a part is named after, by itself or with a letter for each of several; null for none.</summary>
    /// <param name="name">The name.</param>
    /// <param name="outlets">Names of outlets.</param>
    /// <param name="atEnd">True where names may only end in it; at a zone box those of both ends would.</param>
    /// <param name="isCable">True for a cable; a number behind counts cables of several outlets.</param>
    private static string? OutletOf(string name, HashSet<string> outlets, bool atEnd, bool isCable)
    {
        // As it is, then without a number and a letter at its end.
        for (int more = 0; more < 3; more++)
        {
            if (outlets.Contains(name))
                return name;
            for (int dash = name.IndexOf('-'); dash >= 0 && atEnd; dash = name.IndexOf('-', dash + 1))
            {
                if (outlets.Contains(name[(dash + 1)..]))
                    return name[(dash + 1)..];
            }

            int last = name.LastIndexOf('-');
            if (last <= 0 || !((!isCable && name.AsSpan(last + 1).IndexOfAnyExceptInRange('0', '9') < 0) || (name.Length - last == 2 && char.IsAsciiLetterUpper(name[^1]))))
                return null;
            name = name[..last];
        }

        return null;
    }

    /// <summary>The segment of a link: to its outlet where that has a cable of its own, else to the room.</summary>
    private SegmentKey KeyOf(Service service, bool toOutlet)
    {
        BriefOutlets outlets = _brief.Outlets[service.Group];
        bool isGathered = _brief.Separation == SeparationPolicy.Gathered && outlets.Distance is not null;
        string? outlet = toOutlet && outlets.Distance is not null ? service.OutletName(_brief) : null;
        return new SegmentKey(isGathered && outlet is not null ? -1 : service.Network, outlets.Room, isGathered, outlet);
    }

    private IEnumerable<Stretch> RunsOf(Need need)
    {
        IReadOnlyList<WayHop>[] runs = [.. need.Way.FixedRuns(Fresh)];
        for (int i = 0; i < runs.Length; i++)
            yield return new Stretch(need.Service, i, KeyOf(need.Service, i == runs.Length - 1), FreePlaces.Kind(_fresh, runs[i], _brief), runs[i].Select(h => Fresh.Parts[h.Part]).First(PartFacts.IsLaid).Length ?? default);
    }

    /// <summary>Gives free runs to the stretches of a segment, and counts the arrays for the others.</summary>
    private void Supply(Stretch[] all)
    {
        SegmentKey key = all[0].Key;
        var networks = all.Select(s => _brief.Networks[s.Service.Network].Name).ToHashSet();
        ILookup<bool, FixedRun> byLength = Free.Runs(all[0].Kind).Where(r => r.Outlet == key.Outlet && (r.Network is null || key.Network < 0 || networks.Contains(r.Network))).ToLookup(r => Free.IsLong(r, Way(all[0])));
        FixedRun[] alike = [.. byLength[true]];
        _inRuns.UnionWith(alike.SelectMany(r => r.Hops).SelectMany(h => new[] { h.In, h.Out }));
        int used = alike.Count(r => !Free.IsFree(r));
        Stretch[] wanting = [.. all.Where(s => !s.Service.IsKept)];
        GiveOwn(wanting, alike);
        Give(wanting, alike, (s, r) => r.Network == _brief.Networks[s.Service.Network].Name);
        Give(wanting, alike, (_, r) => r.Network is null);
        FixedRun[] lengthened = Lengthen(wanting, [.. byLength[false]]);
        int lacking = wanting.Count(s => !_runs.ContainsKey((s.Service, s.Nth)));
        int arrays = SegmentRoom.Ceiling(Math.Max(lacking, SpareOf(key).Over(used + wanting.Length) - alike.Length - lengthened.Length), _ports);
        foreach (var of in wanting.GroupBy(s => s.Key))
        {
            bool[] there = [.. of.Select(s => _runs.ContainsKey((s.Service, s.Nth)))];
            _segments[of.Key] = new SegmentRoom(there, SegmentRoom.Ceiling(there.Count(t => !t), _ports));
        }

        if (arrays - wanting.Select(s => s.Key).Distinct().Sum(k => _segments[k].Arrays) is > 0 and int more)
        {
            SegmentRoom last = _segments.GetValueOrDefault(all[^1].Key) ?? new SegmentRoom([], 0);
            _segments[all[^1].Key] = last with { Arrays = last.Arrays + more };
        }
    }

    private Percentage SpareOf(SegmentKey key) => key.Network < 0 ? _brief.Spare : _brief.SpareOf(key.Network);

    /// <summary>A link that goes over stays on its run where that is alike.</summary>
    private void GiveOwn(Stretch[] wanting, FixedRun[] alike)
    {
        var byStart = alike.Where(Free.IsFree).ToDictionary(r => r.Start);
        foreach (Stretch stretch in wanting.Where(s => s.Service.Before >= 0))
        {
            HashSet<PortRef> own = [.. _ways[stretch.Service.Before].Hops.SelectMany(h => new[] { h.In, h.Out })];
            foreach (PortRef port in own)
            {
                if (byStart.TryGetValue(port, out FixedRun? run) && own.Contains(run.End) && Free.IsFree(run))
                {
                    Take(stretch, run);
                    break;
                }
            }
        }
    }

    /// <summary>
    /// Runs that links leave and that serve none of the brief's, since they are too short or of another kind: what they end in is
    /// unplugged, to be used again.
    /// </summary>
    private void AbandonRuns()
    {
        Plant old = _before.Traced.Plant;
        var stays = _services.Where(s => s.IsKept).SelectMany(s => _ways[s.Before].Hops).Concat(_runs.Values.SelectMany(r => r.Hops)).SelectMany(h => new[] { h.In, h.Out }).ToHashSet();
        foreach (Service service in _services.Where(s => s is { IsKept: false, Before: >= 0 }))
        {
            LinkWay way = _ways[service.Before];
            var fixedParts = way.FixedRuns(old).Where(r => !r.Any(h => _inRuns.Contains(h.In) || _inRuns.Contains(h.Out) || stays.Contains(h.In) || stays.Contains(h.Out))).SelectMany(r => r).Select(h => h.Part).ToHashSet();
            After.ExceptWith(way.Matings.Where(m => fixedParts.Contains(m.A.Part) && fixedParts.Contains(m.B.Part)).Select(m => Joint.Of(m, p => p)));
        }

        // What is spare at an outlet goes with it to another room.
        var rooms = _brief.Outlets.SelectMany(o => Enumerable.Range(0, o.Name.Count).Select(i => (Outlet: o.Name.At(i), Room: _brief.Rooms[o.Room].Name))).ToDictionary(o => o.Outlet, o => o.Room);
        foreach (FixedRun run in Free.AllRuns.Where(r => r.Outlet is not null && rooms.TryGetValue(r.Outlet, out string? room) && old.Parts[r.Hops[^1].Part].Room is { } there && there != room))
        {
            if (!run.Hops.Any(h => _inRuns.Contains(h.In) || stays.Contains(h.In) || stays.Contains(h.Out)))
                After.RemoveWhere(j => !j.IsOpen && run.Hops.Any(h => h.Part == j.A.Part) && run.Hops.Any(h => h.Part == j.B.Part));
        }
    }

    /// <summary>A link whose cable is too short keeps what the cable ends in, where the cable carries nothing that stays.</summary>
    /// <returns>All runs over cables that are exchanged for longer ones.</returns>
    private FixedRun[] Lengthen(Stretch[] wanting, FixedRun[] tooShort)
    {
        int Cable(FixedRun run) => run.Hops.Where(h => PartFacts.IsLaid(_before.Traced.Plant.Parts[h.Part])).Select(h => h.Part).ToArray() is [int only] && _before.Traced.Plant.Parts[only].Kind == "trunk" ? only : -1;
        var stays = _services.Where(s => s.IsKept).SelectMany(s => _ways[s.Before].Hops).Select(h => h.Part).ToHashSet();
        FixedRun[] may = [.. tooShort.Where(r => Cable(r) is >= 0 and int cable && !stays.Contains(cable))];
        GiveOwn([.. wanting.Where(s => !_runs.ContainsKey((s.Service, s.Nth)))], may);
        var taken = _runs.Values.ToHashSet<FixedRun>(ReferenceEqualityComparer.Instance);
        foreach (FixedRun run in may.Where(taken.Contains))
            _lengthened[Cable(run)] = wanting[0].Laid;
        FixedRun[] over = [.. may.Where(r => _lengthened.ContainsKey(Cable(r)))];
        _inRuns.UnionWith(over.SelectMany(r => r.Hops).SelectMany(h => new[] { h.In, h.Out }));
        return over;
    }

    private void Take(Stretch stretch, FixedRun run)
    {
        _runs[(stretch.Service, stretch.Nth)] = run;
        Free.Take(run.Hops.SelectMany(h => new[] { h.In, h.Out }));
    }

    private void Give(Stretch[] wanting, FixedRun[] alike, Func<Stretch, FixedRun, bool> serves)
    {
        var free = alike.Where(Free.IsFree).ToList();
        foreach (Stretch stretch in wanting.Where(s => !_runs.ContainsKey((s.Service, s.Nth))))
        {
            int found = free.FindIndex(r => serves(stretch, r) && Free.IsFree(r));
            if (found < 0)
                continue;
            Take(stretch, free[found]);
            free.RemoveAt(found);
        }
    }

    /// <summary>Counts the arrays of parallel links, a leg for each, and of what is spare.</summary>
    private void SupplyLegs(SegmentKey key, Need[] all)
    {
        int kept = all.Count(n => n.Service.IsKept), wanting = all.Length - kept;

        // Legs that wait in panels are ready; new links take them first, and what is then lacking for spare is planned beside them.
        int ready = Free.Legs.Count(l => !Free.IsUsed(l.Near) && l.Outlet == key.Outlet && Free.At(l.Near) is { IsOpen: true } && Free.At(l.Far) is { IsOpen: true } && all.Any(n => Fits(n, l)));
        int spare = Math.Max(0, _brief.SpareOf(all[0].Service.Network).Over(all.Length) - kept - Math.Max(wanting, ready));
        if (wanting + spare > 0)
            _segments[key] = new SegmentRoom([], wanting + spare);
    }

    private bool Fits(Need need, FreeLeg leg)
    {
        int cable = 0;
        foreach (WayHop hop in need.Way.Hops.Where(h => PartFacts.IsLaid(Fresh.Parts[h.Part])))
        {
            if (_fit.Of(leg, hop, _brief.WayOf(_brief.Outlets[need.Service.Group], cable++)) is not null)
                return true;
        }

        return false;
    }

    private long Way(Stretch stretch) => _brief.WayOf(_brief.Outlets[stretch.Service.Group], stretch.Nth);

    /// <summary>A link with the way that it takes in the plant planned anew.</summary>
    private sealed record Need(Service Service, LinkWay Way);

    /// <summary>A stretch of laid cable that a link passes, the first or the second.</summary>
    private sealed record Stretch(Service Service, int Nth, SegmentKey Key, string Kind, Length Laid);
}
