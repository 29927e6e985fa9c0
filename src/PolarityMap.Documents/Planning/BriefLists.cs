using PolarityMap.Core.Optics;
using PolarityMap.Core.Planning;
using PolarityMap.Core.Plants;
using PolarityMap.Documents.Binding;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Planning;

/// <summary>Reads the networks, rooms and outlets of a brief.</summary>
/// <param name="reader">Asks nodes.</param>
/// <param name="fields">Reads values.</param>
/// <param name="places">Takes where things stand.</param>
/// <param name="note">Keeps where the keys of a mapping stand.</param>
internal sealed class BriefLists(NodeReader reader, BriefFields fields, Dictionary<string, SourcePlace> places, Action<YamlMapping, string> note)
{
    private const int MostNetworks = 100;

    private const int MostRooms = 1_000;

    private const int MostLinksEach = 1_000;

    /// <summary>Far beyond a campus, and small enough for a desk machine.</summary>
    private const int MostLinks = 100_000;

    private ProblemList Problems => reader.Problems;

    public IReadOnlyList<BriefNetwork> Networks(YamlMapping root)
    {
        string? common = fields.Word(root, BriefKeys.Application, BriefKeys.Applications), later = fields.Word(root, BriefKeys.Later, BriefKeys.Applications);
        string? which = fields.Word(root, BriefKeys.LaterLinks, LaterLinksWords.All);
        var networks = new List<BriefNetwork>();
        var labels = new BriefLabels(reader);
        foreach (YamlEntry entry in Entries(root, BriefKeys.Networks, "network names with their attributes", MostNetworks))
        {
            string path = $"{BriefKeys.Networks}.{entry.Key.Value}";
            if (!BriefLabels.CheckName(reader, entry.Key, "a network"))
                continue;
            YamlMapping? map = Attributes(entry, BriefKeys.OfNetwork, "a network", path);
            string? now = (map is null ? null : fields.Word(map, BriefKeys.Application, BriefKeys.Applications)) ?? common;
            if (now is null)
            {
                if (root.Find(BriefKeys.Application) is null && map?.Find(BriefKeys.Application) is null)
                    Problems.Add(entry.Key.Place, $"it is not said what {entry.Key.Value} is for", $"'{BriefKeys.Application}:' here or for all networks, such as 10GBASE-SR");
                continue;
            }

            string? then = (map is null ? null : fields.Word(map, BriefKeys.Later, BriefKeys.Applications)) ?? later;
            networks.Add(new BriefNetwork(Network(entry, map), labels.Of(entry.Key, map, 2), Application.Find(now)!)
            {
                Later = then is null || then == now ? null : Application.Find(then),
                LaterLinks = ((map is null ? null : fields.Word(map, BriefKeys.LaterLinks, LaterLinksWords.All)) ?? which) == LaterLinks.Arrays.Word() ? LaterLinks.Arrays : LaterLinks.All,
                Switches = map is null ? null : fields.Whole(map, BriefKeys.Switches, 1, 10_000),
            });

            // What all networks have in common stands on a line of its own.
            foreach (string key in new[] { BriefKeys.Application, BriefKeys.Later })
            {
                if (places.TryGetValue(key, out SourcePlace place))
                    places.TryAdd($"{path}.{key}", place);
            }
        }

        return networks;
    }

    /// <summary>The rooms; from which of them each is reached is not known yet (<see cref="BriefReach"/>).</summary>
    public IReadOnlyList<(BriefRoom Room, YamlScalar? From)> Rooms(YamlMapping root)
    {
        var rooms = new List<(BriefRoom, YamlScalar?)>();
        var labels = new BriefLabels(reader);
        foreach (YamlEntry entry in Entries(root, BriefKeys.Rooms, "room names with their attributes", MostRooms))
        {
            if (!BriefLabels.CheckName(reader, entry.Key, "a room"))
                continue;
            YamlMapping? map = Attributes(entry, BriefKeys.OfRoom, "a room", $"{BriefKeys.Rooms}.{entry.Key.Value}");
            string? rack = map is null ? null : fields.Text(map, BriefKeys.Rack, "the name of a rack, or none");
            Length? distance = map is null ? null : fields.Length(map, BriefKeys.Distance);
            string label = labels.Of(entry.Key, map, 2);
            YamlScalar? from = map?.Find(BriefKeys.From) is { } node ? reader.Text(node, BriefKeys.From, "the name of a room without a distance") : null;
            rooms.Add((new BriefRoom(entry.Key.Value, label, entry.Key.Place)
            {
                Distance = distance,
                Rack = rack == "none" ? null : rack ?? (map?.Find(BriefKeys.Distance) is null ? label + "-R1" : null),
            }, from));
        }

        return rooms;
    }

    public IReadOnlyList<BriefOutlets> Outlets(YamlMapping root, IReadOnlyList<BriefNetwork> networks, IReadOnlyList<BriefRoom> rooms)
    {
        var outlets = new List<BriefOutlets>();
        var links = new BriefLinks(reader, fields, networks, MostLinksEach);
        var named = new Dictionary<string, YamlScalar>();
        long all = 0;
        foreach (YamlEntry entry in Entries(root, BriefKeys.Outlets, "outlet names with their room and links", MostLinks))
        {
            string path = $"{BriefKeys.Outlets}.{entry.Key.Value}";
            YamlMapping? map = Attributes(entry, BriefKeys.OfOutlets, "an outlet", path);
            if (BriefOutletNames.Read(reader, entry.Key) is not { } names || map is null)
            {
                if (map is null && entry.Value is YamlScalar { IsNull: true })
                    Problems.Add(entry.Key.Place, $"it is not said what {PartNames.Shorten(entry.Key.Value)} has", "{ room: Stage, links: { lighting: 1 } }");
                continue;
            }

            int room = RoomOf(map, rooms);
            Length? distance = fields.Length(map, BriefKeys.Distance);
            if (links.Of(entry, map) is not { } each || room < 0)
                continue;
            all += names.Sum(n => (long)n.Count) * each.Sum();
            if (all > MostLinks)
            {
                Problems.Add(entry.Key.Place, $"the outlets up to here have more than {MostLinks} links; a campus has fewer");
                break;
            }

            CheckNew(entry.Key, names, named);
            foreach (PlannedName name in names)
            {
                outlets.Add(new BriefOutlets(name, room, each, entry.Key.Place) { Distance = distance, Written = entry.Key.Value });
                if (name.ToString() != entry.Key.Value)
                    NoteAs(map, $"{BriefKeys.Outlets}.{name}", entry.Key);
            }
        }

        return outlets;
    }

    /// <summary>Reports the first outlet that is named already.</summary>
    private void CheckNew(YamlScalar key, IReadOnlyList<PlannedName> names, Dictionary<string, YamlScalar> named)
    {
        foreach (string name in names.SelectMany(n => Enumerable.Range(0, n.Count).Select(n.At)))
        {
            if (named.TryAdd(name, key))
                continue;
            YamlScalar first = named[name];
            string where = first == key ? "twice in" : $"in {PartNames.Shorten(first.Value)} already, {NodeReader.Where(first.Place, key.Place)}, and again in";
            Problems.Add(key.Place, $"the outlet {name} is {where} {PartNames.Shorten(key.Value)}", "each outlet once, with all its links; in another room it has another name");
            return;
        }
    }

    /// <summary>Keeps where an entry stands under another name for some of it.</summary>
    private void NoteAs(YamlMapping map, string path, YamlScalar key)
    {
        places.TryAdd(path, key.Place);
        note(map, path + ".");
    }

    private int RoomOf(YamlMapping map, IReadOnlyList<BriefRoom> rooms)
    {
        if (map.Find(BriefKeys.Room) is not { } node)
        {
            Problems.Add(map.Place, "it is not said in which room the outlet is", $"'{BriefKeys.Room}:' with the name of a room");
            return -1;
        }

        if (reader.Text(node, BriefKeys.Room, "the name of a room") is not { } name)
            return -1;
        for (int i = 0; i < rooms.Count; i++)
        {
            if (rooms[i].Name == name.Value)
                return i;
        }

        if (rooms.Count > 0)
            reader.Unknown(name.Place, $"there is no room '{PartNames.Shorten(name.Value)}'", name.Value, [.. rooms.Select(r => r.Name)]);
        return -1;
    }

    private Network Network(YamlEntry entry, YamlMapping? map) => new(entry.Key.Value, map is null ? null : fields.Text(map, DocumentKeys.Colour, "a colour in words, such as red"), entry.Key.Place)
    {
        Key = map is null ? null : fields.Text(map, DocumentKeys.Key, "a key code, such as K1"),
        PlainFits = map is not null && (fields.YesNo(map, DocumentKeys.PlainFits) ?? false),
    };

    private IReadOnlyList<YamlEntry> Entries(YamlMapping root, string key, string expected, int most)
    {
        if (root.Find(key) is not { } node)
        {
            Problems.Add(root.Place, $"the brief has no '{key}:'", $"'{key}:' with {expected}");
            return [];
        }

        if (reader.Mapping(node, key, expected) is not { } map)
            return [];
        note(map, key + ".");
        if (map.Entries.Count == 0)
            Problems.Add(node.Place, $"{key} is empty", expected);
        if (map.Entries.Count <= most)
            return map.Entries;
        Problems.Add(map.Entries[most].Key.Place, $"a brief has at most {most} {key}");
        return [];
    }

    private YamlMapping? Attributes(YamlEntry entry, IReadOnlyList<string> known, string what, string path)
    {
        if (entry.Value is YamlScalar { IsNull: true } || reader.Mapping(entry.Value, what, "attributes in braces, such as " + (known.Contains(BriefKeys.Links) ? "{ room: Stage, links: { lighting: 1 } }" : "{ label: LX }")) is not { } map)
            return null;
        reader.CheckKeys(map, known, what);
        note(map, path + ".");
        return map;
    }
}
