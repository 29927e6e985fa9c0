using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>
/// Ends a merge: takes out what nothing needs any more, uses what comes free in place of what would be bought, and gives names.
/// </summary>
/// <param name="brief">The whole brief.</param>
/// <param name="old">The existing plant.</param>
/// <param name="parts">Its parts, then the new ones.</param>
/// <param name="before">Its joints.</param>
/// <param name="after">The joints afterwards.</param>
/// <param name="links">The links.</param>
/// <param name="anyLoss">True to use parts again that state other losses than what would be bought.</param>
internal sealed class Outgoing(Brief brief, Plant old, List<Part> parts, IReadOnlyList<Joint> before, HashSet<Joint> after, List<GrownLink> links, bool anyLoss)
{
    private static readonly string[] s_losses = ["duplex-loss", "array-loss", "expected-duplex-loss", "expected-array-loss"];

    private readonly HashSet<int> _joined = [.. before.SelectMany(j => j.Ports).Select(p => p.Part)];
    private readonly HashSet<string> _outlets = [.. brief.Outlets.SelectMany(o => Enumerable.Range(0, o.Name.Count).Select(o.Name.At))];

    public GrowthDifference Finish(IReadOnlyList<Joint> put, IReadOnlyList<Network> networks)
    {
        var was = before.ToHashSet();
        HashSet<int> gone = Gone();
        int made = parts.Count;
        Dictionary<int, int> reused = Reuse(gone);
        var again = reused.Values.ToHashSet();
        after.RemoveWhere(j => j.Ports.Any(p => again.Contains(p.Part)));
        HashSet<int> turned = Turned(reused);
        foreach ((int fresh, int part) in reused)
            Carry(parts[fresh], part);
        var known = was.ToDictionary(j => j.Turned(), j => j);
        Joint AsKnown(Joint joint) => known.GetValueOrDefault(joint, joint);
        HashSet<Joint> joints = [.. after.Select(j => AsKnown(Renumbered(j, reused, turned)))];
        GrownLink[] grown = [.. links.Select(l => l.After is null || l.IsKept ? l : l with { After = l.After with { From = Renumbered(l.After.From, reused), To = Renumbered(l.After.To, reused) } })];
        WaitInAdapters(joints, gone);
        int[] added = [.. Enumerable.Range(old.Parts.Count, made - old.Parts.Count).Where(p => !reused.ContainsKey(p))];
        var remade = joints.Where(j => !was.Contains(j)).SelectMany(j => j.Ports).Select(p => p.Part).ToHashSet();
        int[] moved = [.. Enumerable.Range(0, old.Parts.Count).Where(p => !gone.Contains(p) && parts[p].Room != old.Parts[p].Room).Concat(reused.Values.Where(p => remade.Contains(p))).Concat(Rejoined(joints.Where(j => !was.Contains(j)), gone)).Distinct().Order()];
        Exchange[] exchanged = [.. Exchanged(joints, gone, grown).Distinct()];
        Spare(joints);
        Name(added, joints, gone);
        return new GrowthDifference
        {
            Parts = parts,
            OldParts = old.Parts.Count,
            Before = before,
            After = [.. before.Concat(put.Select(j => AsKnown(Renumbered(j, reused, turned)))).Concat(joints).Distinct().Where(joints.Contains)],
            Links = [.. grown.Select(l => l with { Name = NameOf(l.After?.To.Port ?? old.Links[l.Before].To.Port) })],
            Networks = networks,
            Added = added,
            Moved = moved,
            TakenOut = [.. gone.Order()],
            Exchanged = exchanged,
            RoomsBefore = Enumerable.Range(0, old.Parts.Count).Where(p => !gone.Contains(p) && parts[p].Room != old.Parts[p].Room).ToDictionary(p => p, p => old.Parts[p].Room),
            Relabelled = [.. Enumerable.Range(0, old.Parts.Count).Where(p => parts[p].PortNetworks.Count != old.Parts[p].PortNetworks.Count)],
        };
    }

    private string NameOf(PortRef device) => parts[device.Part] is var part && part.Shape.Ports.Count == 1 ? part.Name : $"{part.Name}/{part.Shape.Ports[device.Port].Name}";

    /// <summary>Legs that are in use now are no spare ones any more, and those that were and hang free now are.</summary>
    private void Spare(IEnumerable<Joint> joints)
    {
        ILookup<int, int> will = Legs(joints.Where(j => !j.IsOpen)), was = Legs(before.Where(j => !j.IsOpen)), waits = Legs(joints);
        foreach (int cable in Enumerable.Range(0, old.Parts.Count).Where(p => old.Parts[p] is { Kind: "trunk", Values: not null } && (will[p].Any() || waits[p].Any())))
        {
            Part part = parts[cable];
            int[] spare = [.. part.SpareLegs.Where(l => !will[cable].Contains(l)).Concat(was[cable].Where(l => !waits[cable].Contains(l))).Distinct().Order()];
            if (!spare.SequenceEqual(part.SpareLegs.Order()))
                parts[cable] = GrowthMerge.With(part, v => _ = spare.Length > 0 ? v.Set("spare", (IReadOnlyList<int>)spare) : v, "spare");
        }
    }

    private ILookup<int, int> Legs(IEnumerable<Joint> joints) =>
        joints.SelectMany(j => j.Ports).Where(p => p.Part < old.Parts.Count && old.Parts[p.Part].Kind == "trunk").ToLookup(p => p.Part, p => (p.Port / 2) + 1);

    /// <summary>New cords that a cord takes the place of which lies the other way round between the same ports, and can stay so.</summary>
    private HashSet<int> Turned(Dictionary<int, int> reused)
    {
        Dictionary<PortRef, Joint> was = ByPort(before), will = ByPort(after);
        PortRef? Enters(Dictionary<PortRef, Joint> at, PortRef plug) => at.TryGetValue(plug, out Joint joint) ? joint.Through ?? (joint.A == plug ? joint.B : joint.A) : null;
        return
        [
            .. reused.Where(r => PartFacts.IsCord(parts[r.Key]) && parts[r.Key].Shape.Ports.Count == 2)
                .Where(r => Enters(will, new PortRef(r.Key, 0)) is { } near && near == Enters(was, new PortRef(r.Value, 1)) && Enters(will, new PortRef(r.Key, 1)) is { } far && far == Enters(was, new PortRef(r.Value, 0)))
                .Select(r => r.Key),
        ];
    }

    /// <summary>A part that is used again stands where the new one would.</summary>
    private void Carry(Part made, int again)
    {
        Part part = parts[again];
        if (PartFacts.IsCord(part) || (part.Room == made.Room && _joined.Contains(again)))
            return;
        void Place(AttributeValues values)
        {
            if (made.Room is { } room)
                values.Set("room", room);
            if (made.Note is { } note)
                values.Set("note", note);
        }

        Part carried = GrowthMerge.With(part, Place, "room", "note");
        parts[again] = carried with { Room = made.Room, Note = made.Note };
    }

    private static Joint Renumbered(Joint joint, Dictionary<int, int> numbers, HashSet<int> turned)
    {
        PortRef At(PortRef port) => numbers.TryGetValue(port.Part, out int to) ? new PortRef(to, turned.Contains(port.Part) ? port.Port ^ 1 : port.Port) : port;
        return joint with { A = At(joint.A), B = At(joint.B), Through = joint.Through is { } through ? At(through) : null };
    }

    private static LinkEnd Renumbered(LinkEnd end, Dictionary<int, int> numbers) =>
        numbers.TryGetValue(end.Port.Part, out int to) ? end with { Port = end.Port with { Part = to } } : end;

    /// <summary>Parts that had a use and have none: nothing is plugged in any more, or no link ends there, or their network is given up.</summary>
    private HashSet<int> Gone()
    {
        var had = before.SelectMany(j => j.Ports).Select(p => p.Part).ToHashSet();
        var linked = links.Where(l => l.After is not null).SelectMany(l => new[] { l.After!.From.Port.Part, l.After.To.Port.Part }).ToHashSet();
        var wasLinked = old.Links.SelectMany(l => new[] { l.From.Port.Part, l.To.Port.Part }).ToHashSet();
        var gone = new HashSet<int>();
        for (int p = 0; p < old.Parts.Count; p++)
        {
            Part part = old.Parts[p];
            bool isGivenUp = part.Network >= 0 && part.PortNetworks.Count == 0 && !brief.Networks.Any(n => n.Name == old.Networks[part.Network].Name);
            if (isGivenUp || (part.Shape.IsInterface && wasLinked.Contains(p) && !linked.Contains(p)))
                gone.Add(p);
        }

        after.RemoveWhere(j => j.Ports.Any(p => gone.Contains(p.Part)));
        var has = after.SelectMany(j => j.Ports).Select(p => p.Part).ToHashSet();
        for (int p = 0; p < old.Parts.Count; p++)
        {
            if (had.Contains(p) && !has.Contains(p) && !linked.Contains(p))
                gone.Add(p);
        }

        return gone;
    }

    /// <summary>
    /// For new parts that are like one that goes, that lies in store or that hangs at one end: that one, first one that the same link
    /// had. As many as can be are used again.
    /// </summary>
    private Dictionary<int, int> Reuse(HashSet<int> gone)
    {
        var reused = new Dictionary<int, int>();
        ILookup<string, int> free = gone.Where(p => !PartFacts.IsLaid(old.Parts[p])).Concat(Unused()).Where(p => Likeness(old.Parts[p], old.Networks) is not null).Distinct().Order().ToLookup(p => Likeness(old.Parts[p], old.Networks)!);
        if (free.Count == 0)
            return reused;
        IReadOnlyList<Network> networks = GrownNetworks.Of(old, brief);
        Dictionary<PortRef, Joint> at = ByPort(before);
        ILookup<int, Joint> beside = after.SelectMany(j => j.Ports.Select(p => (p.Part, j))).Distinct().ToLookup(p => p.Part, p => p.j);
        IEnumerable<int> Own(int made) => beside[made].SelectMany(j => j.Ports).Where(at.ContainsKey).SelectMany(p => at[p].Ports).Select(p => p.Part);
        foreach (var like in Enumerable.Range(old.Parts.Count, parts.Count - old.Parts.Count).GroupBy(p => Likeness(parts[p], networks)).Where(g => g.Key is not null))
        {
            int[] wanting = [.. like], there = [.. free[like.Key!].Concat(Plain(like.Key!, networks, free)).Where(p => !reused.ContainsValue(p))];
            Dictionary<int, int> own = Pairs(wanting, there, Own), any = Pairs(wanting, there, _ => []);
            foreach ((int part, int again) in own.Count >= any.Count ? own : any)
            {
                reused[part] = again;
                gone.Remove(again);
            }
        }

        return reused;
    }

    /// <summary>Cords that are said to be of no network, which any network without a key may take.</summary>
    private static IEnumerable<int> Plain(string like, IReadOnlyList<Network> networks, ILookup<string, int> free) =>
        networks.FirstOrDefault(n => n.Key is null && like.StartsWith($"{n.Name}\n", StringComparison.Ordinal)) is { } network ? free[like[network.Name.Length..]] : [];

    /// <summary>Cords that no link passes, and parts that nothing is plugged into: in store, or hanging at one end.</summary>
    private IEnumerable<int> Unused()
    {
        var held = before.Where(j => !j.IsOpen).SelectMany(j => j.Ports).GroupBy(p => p.Part).ToDictionary(g => g.Key, g => g.Count());
        return Enumerable.Range(0, old.Parts.Count).Where(p => !_joined.Contains(p) || (PartFacts.IsCord(old.Parts[p]) && held.GetValueOrDefault(p) < 2));
    }

    /// <summary>
    /// Pairs of parts: a part's own ones first, then the shortest first. The lengths that serve begin and end later for a longer one,
    /// so that no other pairing without own ones has more pairs.
    /// </summary>
    private Dictionary<int, int> Pairs(int[] wanting, int[] there, Func<int, IEnumerable<int>> own)
    {
        var pairs = new Dictionary<int, int>();
        var left = there.ToHashSet();
        foreach (int made in wanting)
        {
            if (own(made).FirstOrDefault(p => left.Contains(p) && Serves(p, made), -1) is >= 0 and int found && left.Remove(found))
                pairs[made] = found;
        }

        // What is in the room already before what is carried there.
        foreach (int made in wanting.Where(m => !pairs.ContainsKey(m) && !PartFacts.IsCord(parts[m])))
        {
            if (left.Where(p => Serves(p, made)).OrderBy(p => old.Parts[p].Room != parts[made].Room).ThenBy(p => p).FirstOrDefault(-1) is >= 0 and int found && left.Remove(found))
                pairs[made] = found;
        }

        int[] sorted = [.. left.OrderBy(p => old.Parts[p].Length?.Millimetres ?? 0).ThenBy(p => p)];
        int next = 0;
        foreach (int made in wanting.Where(m => !pairs.ContainsKey(m) && PartFacts.IsCord(parts[m])).OrderBy(m => parts[m].Length?.Millimetres ?? 0).ThenBy(m => m))
        {
            while (next < sorted.Length && (old.Parts[sorted[next]].Length?.Millimetres ?? long.MaxValue) < (parts[made].Length?.Millimetres ?? 0))
                next++;
            if (next < sorted.Length && Serves(sorted[next], made))
                pairs[made] = sorted[next++];
        }

        return pairs;
    }

    /// <summary>A cord that is more than twice as long as asked for hangs in the way (common practice).</summary>
    private bool Serves(int part, int made) => old.Parts[part].Length is not { } l || (parts[made].Length?.Millimetres ?? 0) is var length && l.Millimetres >= length && l.Millimetres <= 2 * length;

    /// <summary>What is equal for parts that may stand for each other; null for those that may not.</summary>
    private string? Likeness(Part part, IReadOnlyList<Network> networks)
    {
        if (part.Shape.IsInterface || part.Values is null)
            return null;
        string network = part.PortNetworks.Count > 0 ? string.Join(", ", part.PortNetworks.Select(n => n < 0 ? "" : networks[n].Name)) : part.Network < 0 ? "" : networks[part.Network].Name;
        return $"{network}\n{part.Kind} {PartFacts.Attributes(part, a => a is "length" or "network" or "networks" or "room" or "note" or "jacket" or "spare" || (anyLoss && s_losses.Contains(a)))}";
    }

    private static Dictionary<PortRef, Joint> ByPort(IEnumerable<Joint> joints)
    {
        var at = new Dictionary<PortRef, Joint>();
        foreach (Joint joint in joints)
        {
            foreach (PortRef port in joint.Ports)
                at[port] = joint;
        }

        return at;
    }

    /// <summary>A laid cable's plug stays in its adapter when the cord on the other side goes.</summary>
    private void WaitInAdapters(HashSet<Joint> joints, HashSet<int> gone)
    {
        var taken = joints.SelectMany(j => j.Ports).ToHashSet();
        foreach (Joint joint in before.Where(j => !j.IsOpen && j.Through is not null && !joints.Contains(j) && !taken.Contains(j.Through.Value) && !gone.Contains(j.Through.Value.Part)))
        {
            foreach (PortRef plug in new[] { joint.A, joint.B })
            {
                if (PartFacts.IsLaid(parts[plug.Part]) && !taken.Contains(plug) && !taken.Contains(joint.Through!.Value))
                {
                    joints.Add(new Joint(plug, Joint.Nothing, Keying.Aligned) { Through = joint.Through });
                    taken.Add(plug);
                    taken.Add(joint.Through.Value);
                }
            }
        }
    }

    /// <summary>Cords and the like of which an end is plugged in elsewhere.</summary>
    private IEnumerable<int> Rejoined(IEnumerable<Joint> made, HashSet<int> gone) =>
        made.SelectMany(j => j.Ports).Select(p => p.Part).Where(p => p < old.Parts.Count && !gone.Contains(p) && PartFacts.IsCord(old.Parts[p])).Distinct();

    private IEnumerable<Exchange> Exchanged(HashSet<Joint> joints, HashSet<int> gone, IEnumerable<GrownLink> grown)
    {
        foreach (GrownLink link in grown.Where(l => l is { IsKept: false, After: not null, Before: >= 0 }))
        {
            Link was = old.Links[link.Before];
            foreach ((int from, int to) in new[] { (was.From.Port.Part, link.After!.From.Port.Part), (was.To.Port.Part, link.After.To.Port.Part) })
            {
                if (from != to && gone.Contains(from) && to >= old.Parts.Count)
                    yield return new Exchange(from, to);
            }
        }

        Dictionary<PortRef, Joint> then = ByPort(joints);
        foreach (Joint joint in before)
        {
            foreach ((PortRef leg, PortRef other) in new[] { (joint.A, joint.B), (joint.B, joint.A) })
            {
                if (leg == Joint.Nothing || !PartFacts.IsLaid(parts[leg.Part]) || gone.Contains(leg.Part) || !then.TryGetValue(leg, out Joint now))
                    continue;
                int from = (joint.Through ?? other).Part, to = (now.Through ?? (now.A == leg ? now.B : now.A)).Part;
                if (from >= 0 && gone.Contains(from) && to >= old.Parts.Count)
                    yield return new Exchange(from, to);
            }
        }
    }

    /// <summary>The next name like one that is taken: at an outlet with a letter, else the next number.</summary>
    private string Free(string name, HashSet<string> taken)
    {
        bool isOutlets = _outlets.Any(o => name.EndsWith(o, StringComparison.Ordinal));
        string stem = name.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
        for (int n = 2; ; n++)
        {
            string free = isOutlets ? $"{name}-{(char)('A' + ((n - 1) % 26))}{(n <= 26 ? "" : n / 26)}" : stem.Length < name.Length ? $"{stem}{n}" : $"{name}-{n}";
            if (!taken.Contains(free))
                return free;
        }
    }

    /// <summary>A new part has the planner's name unless a part that stays has it; an inline cord is named by its ends.</summary>
    private void Name(int[] added, HashSet<Joint> joints, HashSet<int> gone)
    {
        var names = Enumerable.Range(0, old.Parts.Count).Where(p => !gone.Contains(p)).Select(p => old.Parts[p].Name).ToHashSet();
        var ports = added.Where(p => parts[p].IsInline).ToDictionary(p => p, _ => new string[2]);
        foreach (int part in added.Where(p => !parts[p].IsInline))
        {
            string name = parts[part].Name;
            if (!names.Add(name))
            {
                name = Free(name, names);
                names.Add(name);
            }

            parts[part] = parts[part] with { Name = name };
        }

        foreach (Joint joint in joints)
        {
            foreach ((PortRef cord, PortRef other) in new[] { (joint.A, joint.B), (joint.B, joint.A) })
            {
                if (ports.TryGetValue(cord.Part, out string[]? ends) && (joint.Through ?? other) is var at && at.Part >= 0)
                    ends[cord.Port] = $"{parts[at.Part].Name}/{parts[at.Part].Shape.Ports[at.Port].Name}";
            }
        }

        foreach ((int part, string[] ends) in ports)
            parts[part] = parts[part] with { Name = $"{ends[0]}~{ends[1]}" };

        // What goes gives up its name.
        var taken = added.Select(p => parts[p].Name).ToHashSet();
        foreach (int part in gone.Where(p => taken.Contains(parts[p].Name)))
            parts[part] = parts[part] with { Name = $"{parts[part].Name} (old)" };
    }
}
