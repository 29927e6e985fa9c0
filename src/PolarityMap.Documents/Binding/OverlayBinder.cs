using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Binding;

/// <summary>
/// Lays the as-built differences over a bound design: parts that are of another type, plugs exchanged, moved, pulled or put in.
/// </summary>
internal sealed class OverlayBinder(
    NodeReader reader, PlantBuilder plant, PartNames parts, PartTypes types, AttributeReader attributes, AddressReader addresses, Joints joints, List<PartType> described)
{
    /// <summary>The most differences: a site that differs at more places is another plant.</summary>
    private const int MostDifferences = 10_000;

    private readonly MatingIndex _matings = new(plant);
    private int _differences;

    private ProblemList Problems => reader.Problems;

    public void Bind(YamlMapping section)
    {
        reader.CheckKeys(section, DocumentKeys.OfAsBuilt, DocumentKeys.AsBuilt);
        if (section.Find(DocumentKeys.Parts) is { } changed && reader.Mapping(changed, "parts", "part names with the attributes that differ") is { } list)
        {
            foreach (YamlEntry entry in list.Entries)
                ChangePart(entry);
        }

        foreach ((SourcePlace place, PortRef a, PortRef b) in Pairs(section, DocumentKeys.Exchanged, " and "))
        {
            if (Counts(place))
                Exchange(a, b, place);
        }

        foreach ((SourcePlace place, PortRef a, PortRef b) in Pairs(section, DocumentKeys.Moved, " to "))
        {
            if (Counts(place))
                Move(a, b, place);
        }

        if (section.Find(DocumentKeys.Unplugged) is { } pulled)
        {
            foreach (YamlNode item in reader.Items(pulled, DocumentKeys.Unplugged, "a list of ports"))
            {
                if (reader.Text(item, "a port", "a port such as K-1/3") is { } scalar && Ports(scalar.Value, scalar.PlaceAt) is { } ports)
                {
                    foreach (PortRef port in ports)
                    {
                        if (Counts(scalar.Place))
                            Unplug(port, scalar.Place);
                    }
                }
            }
        }

        if (section.Find(DocumentKeys.Plugged) is { } put)
            new PlugBinder(reader, plant, addresses, joints, _matings, Whole).Bind(put, Counts);
        _matings.RemovePulled();
    }

    /// <summary>Counts a difference; false, after one report, when there are too many.</summary>
    private bool Counts(SourcePlace place)
    {
        if (++_differences == MostDifferences + 1)
            Problems.Add(place, $"there are more than {MostDifferences} differences up to here; describe the site as a plant of its own");
        return _differences <= MostDifferences;
    }

    private void ChangePart(YamlEntry entry)
    {
        string name = entry.Key.Value;
        IReadOnlyList<string>? names = [name];
        if (!parts.TryFind(name, out _))
        {
            // Only cords that have their names from their ends hold strokes, and those have no ranges.
            if (name.Contains('/'))
            {
                parts.ReportUnknown(reader, entry.Key.Place, name, []);
                return;
            }

            if (!NamePattern.TryExpand(name, (i, m, e) => Problems.Add(entry.Key.PlaceAt(i), m, e), out names)
                || !reader.Allowance.Names(names.Count, entry.Key.Place))
                return;
        }

        foreach (string one in names)
        {
            if (!Counts(entry.Key.Place))
                return;
            if (!parts.TryFind(one, out int index))
            {
                parts.ReportUnknown(reader, entry.Key.Place, one, []);
                return;
            }

            if (reader.Mapping(entry.Value, $"what differs at {one}", "attributes, such as { type: A-to-A }") is not { } mapping)
                return;
            PartType before = described[index];
            PartKind kind = before.Kind;
            AttributeValues start = before.Values;
            if (mapping.Find(DocumentKeys.Kind) is { } other)
            {
                if (types.Read(one, other) is not { } type)
                    return;
                kind = type.Kind;
                start = type.Values;
            }

            var after = new PartType(one, kind, types.NewValues(kind));
            if (!attributes.Read(mapping, kind, after.Values, after.Places))
                return;
            after.Values.FillFrom(start);
            if (types.Build(after, entry.Value.Place) is not { } shape)
                return;
            Part old = plant.Parts[index];
            if (!SamePorts(old.Shape, shape))
            {
                Problems.Add(entry.Value.Place, $"{one} as built would have other ports than as designed; describe it in the design instead");
                return;
            }

            plant.ReplacePart(index, BoundPart.Make(one, after, shape, entry.Key.Place, plant.Networks, old.IsInline) with { IsAsBuilt = true });
            described[index] = after;
            UpdateKeys(index, old.Shape);
        }
    }

    /// <summary>A part whose adapter is of the other keying changes the matings that its ports hold.</summary>
    private void UpdateKeys(int part, Shape before)
    {
        for (int port = 0; port < before.Ports.Count; port++)
        {
            if (Port(new PortRef(part, port)).Keys is not { } keys || before.Ports[port].Keys == keys
                || _matings.Held(new PortRef(part, port)) is not (>= 0 and int at))
                continue;
            Mating mating = plant.Matings[at];
            if (!Port(mating.A).KeysFixed && !Port(mating.B).KeysFixed)
                plant.ReplaceMating(at, mating with { Keys = keys });
        }
    }

    /// <summary>True when runs and links that were bound with one shape hold for the other: names, faces, sides and breakout.</summary>
    private static bool SamePorts(Shape a, Shape b)
    {
        if (a.Ports.Count != b.Ports.Count || a.IsCable != b.IsCable || a.IsInterface != b.IsInterface)
            return false;
        for (int i = 0; i < a.Ports.Count; i++)
        {
            PortShape p = a.Ports[i];
            PortShape q = b.Ports[i];
            if (p.Name != q.Name || p.Face != q.Face || p.Side != q.Side || p.IsAdapter != q.IsAdapter || p.Groups != q.Groups)
                return false;
        }

        return true;
    }

    private PortShape Port(PortRef port) => plant.Parts[port.Part].Shape.Ports[port.Port];

    private string Name(PortRef port) => $"{plant.Parts[port.Part].Name}/{Port(port).Name}";

    private IEnumerable<(SourcePlace Place, PortRef A, PortRef B)> Pairs(YamlMapping section, string key, string between)
    {
        if (section.Find(key) is not { } node)
            yield break;
        string expected = $"two ports, such as 'K-1/3{between}K-1/4'";
        foreach (YamlNode item in reader.Items(node, key, "a list of ports"))
        {
            if (reader.Text(item, "an entry", expected) is not { } scalar)
                continue;
            (string, string) problem = ($"'{PartNames.Shorten(scalar.Value)}' does not name two ports", expected);
            if (TwoAddresses.Split(reader, scalar, between, problem, t => Whole(t) is not null || addresses.Reads(t, scalar.Place)) is not var (first, second, at))
                continue;
            if (Ports(first, scalar.PlaceAt) is not { } a || Ports(second, i => scalar.PlaceAt(at + i)) is not { } b)
                continue;
            if (a.Count != b.Count)
            {
                Problems.Add(scalar.Place, $"there are {a.Count} ports before '{between.Trim()}' and {b.Count} after it", "as many on both sides");
                continue;
            }

            for (int i = 0; i < a.Count; i++)
                yield return (scalar.Place, a[i], b[i]);
        }
    }

    private List<PortRef>? Ports(string text, Func<int, SourcePlace> placeAt)
    {
        if (Whole(text) is { } inline)
            return [inline];
        if (addresses.Read(text, placeAt) is not { } list)
            return null;
        var ports = new List<PortRef>();
        foreach (Address address in list)
        {
            Part part = plant.Parts[address.Part];
            int port = address.Port is null ? -1 : PortIndex.Find(part.Shape, address.Port);
            if (part.Shape.Ports[Math.Max(port, 0)].IsAdapter)
            {
                Problems.Add(placeAt(0), $"'{PartNames.Shorten(text)}' names an adapter, where two plugs meet", "the end of a cord or trunk, such as TRUNK/far");
                return null;
            }

            if (port < 0 || address.Position is not null)
            {
                reader.Unknown(placeAt(0), $"'{PartNames.Shorten(text)}' names no plug or port that is mated", address.Port ?? "", [.. part.Shape.Ports.Where(p => !p.IsAdapter).Select(p => $"{part.Name}/{p.Name}")]);
                return null;
            }

            ports.Add(new PortRef(address.Part, port));
        }

        return ports;
    }

    /// <summary>An end of a cord that has its name from its ends, which contain strokes: <c>SW-1/3~K-1/3/far</c>.</summary>
    private PortRef? Whole(string text)
    {
        int stroke = text.LastIndexOf('/');
        return stroke > 0 && parts.TryFind(text[..stroke], out int part) && plant.Parts[part].IsInline && plant.Parts[part].Shape.FindPort(text[(stroke + 1)..]) is >= 0 and int port
            ? new PortRef(part, port)
            : null;
    }

    private void Exchange(PortRef a, PortRef b, SourcePlace place)
    {
        if (a == b)
        {
            Problems.Add(place, $"{Name(a)} cannot be exchanged with itself", "two ports");
            return;
        }

        int atA = _matings.At(a);
        int atB = _matings.At(b);
        if (atA < 0 || atB < 0)
        {
            Problems.Add(place, $"nothing is mated at {Name(atA < 0 ? a : b)}, so there is nothing to exchange", "two ports that are mated in the design");
            return;
        }

        if (!SameFace(a, b, place) || !HoldsOne(a, place) || !HoldsOne(b, place))
            return;
        if (atA == atB)
        {
            Problems.Add(place, $"{Name(a)} and {Name(b)} are mated to each other", "two ports of different matings");
            return;
        }

        plant.ReplaceMating(atA, Moved(plant.Matings[atA], a, b, place));
        plant.ReplaceMating(atB, Moved(plant.Matings[atB], b, a, place));
        _matings.Set(a, atB);
        _matings.Set(b, atA);
    }

    private void Move(PortRef from, PortRef to, SourcePlace place)
    {
        int at = _matings.At(from);
        if (at < 0)
        {
            Problems.Add(place, $"nothing is mated at {Name(from)}, so there is nothing to move", "a port that is mated in the design");
        }
        else if (_matings.At(to) is >= 0 and int taken)
        {
            Problems.Add(place, $"{Name(to)} is mated already, {NodeReader.Where(plant.Matings[taken].Place, place)}", "a free port, or an entry under exchanged");
        }
        else if (SameFace(from, to, place) && HoldsOne(from, place))
        {
            plant.ReplaceMating(at, Moved(plant.Matings[at], from, to, place));
            _matings.Set(from, -1);
            _matings.Set(to, at);
        }
    }

    private void Unplug(PortRef port, SourcePlace place)
    {
        if (_matings.At(port) is not (>= 0 and int at))
            Problems.Add(place, $"nothing is mated at {Name(port)}, so there is nothing to pull", "a port that is mated in the design");
        else if (HoldsOne(port, place))
            _matings.Pull(at);
    }

    private bool HoldsOne(PortRef port, SourcePlace place)
    {
        if (!_matings.HoldsSeveral(port))
            return true;
        Problems.Add(place, $"{Name(port)} holds two simplex plugs", "the end of one of the cords, such as CORD/near");
        return false;
    }

    private bool SameFace(PortRef a, PortRef b, SourcePlace place)
    {
        if (Port(a).Face == Port(b).Face)
            return true;
        Problems.Add(place, $"{Name(a)} is a {Port(a).Face} port and {Name(b)} a {Port(b).Face} port");
        return false;
    }

    /// <summary>The mating with one of its ports replaced; the keys follow the new port where it holds an adapter.</summary>
    private Mating Moved(Mating mating, PortRef from, PortRef to, SourcePlace place)
    {
        Mating moved = mating.A == from ? mating with { A = to, Place = place } : mating with { B = to, Place = place };
        return Port(to).Keys is { } keys ? moved with { Keys = keys } : moved;
    }
}
