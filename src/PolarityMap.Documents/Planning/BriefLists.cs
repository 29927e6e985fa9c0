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
/// <param name="note">Keeps where the keys of a mapping stand.</param>
internal sealed class BriefLists(NodeReader reader, BriefFields fields, Action<YamlMapping, string> note)
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
                Switches = map is null ? null : fields.Whole(map, BriefKeys.Switches, 1, 10_000),
            });
        }

        return networks;
    }

    public IReadOnlyList<BriefRoom> Rooms(YamlMapping root)
    {
        var rooms = new List<BriefRoom>();
        var from = new List<YamlScalar?>();
        var labels = new BriefLabels(reader);
        foreach (YamlEntry entry in Entries(root, BriefKeys.Rooms, "room names with their attributes", MostRooms))
        {
            if (!BriefLabels.CheckName(reader, entry.Key, "a room"))
                continue;
            YamlMapping? map = Attributes(entry, BriefKeys.OfRoom, "a room", $"{BriefKeys.Rooms}.{entry.Key.Value}");
            string? rack = map is null ? null : fields.Text(map, BriefKeys.Rack, "the name of a rack, or none");
            Length? distance = map is null ? null : fields.Length(map, BriefKeys.Distance);
            string label = labels.Of(entry.Key, map, 2);
            from.Add(map?.Find(BriefKeys.From) is { } node ? reader.Text(node, BriefKeys.From, "the name of a room without a distance") : null);
            rooms.Add(new BriefRoom(entry.Key.Value, label, entry.Key.Place)
            {
                Distance = distance,
                Rack = rack == "none" ? null : rack ?? (map?.Find(BriefKeys.Distance) is null ? label + "-R1" : null),
            });
        }

        return Problems.IsEmpty ? Reached(root, rooms, from) : rooms;
    }

    public IReadOnlyList<BriefOutlets> Outlets(YamlMapping root, IReadOnlyList<BriefNetwork> networks, IReadOnlyList<BriefRoom> rooms)
    {
        var outlets = new List<BriefOutlets>();
        var links = new BriefLinks(reader, fields, networks, MostLinksEach);
        long all = 0;
        foreach (YamlEntry entry in Entries(root, BriefKeys.Outlets, "outlet names with their room and links", MostLinks))
        {
            YamlMapping? map = Attributes(entry, BriefKeys.OfOutlets, "an outlet", $"{BriefKeys.Outlets}.{entry.Key.Value}");
            if (BriefLabels.Outlets(reader, entry.Key) is not { } name || map is null)
            {
                if (map is null && entry.Value is YamlScalar { IsNull: true })
                    Problems.Add(entry.Key.Place, $"it is not said what {PartNames.Shorten(entry.Key.Value)} has", "{ room: Stage, links: { lighting: 1 } }");
                continue;
            }

            int room = RoomOf(map, rooms);
            if (links.Of(entry, map) is not { } each || room < 0)
                continue;
            var group = new BriefOutlets(name, room, each, entry.Key.Place) { Distance = fields.Length(map, BriefKeys.Distance) };
            all += (long)name.Count * group.LinksEach;
            if (all > MostLinks)
            {
                Problems.Add(entry.Key.Place, $"the outlets up to here have more than {MostLinks} links; a campus has fewer");
                break;
            }

            outlets.Add(group);
        }

        return outlets;
    }

    private List<BriefRoom> Reached(YamlMapping root, List<BriefRoom> rooms, List<YamlScalar?> from)
    {
        int[] main = [.. Enumerable.Range(0, rooms.Count).Where(i => rooms[i].Distance is null)];
        if (main.Length == 0 && rooms.Count > 0)
            Problems.Add(root.Find(BriefKeys.Rooms)!.Place, "every room has a distance, and switches stand in a room without one", "a room such as 'Equipment room:' with no distance");
        for (int i = 0; i < rooms.Count && main.Length > 0; i++)
        {
            int reached = i;
            if (rooms[i].Distance is not null)
                reached = from[i] is { } word ? Array.FindIndex(main, m => rooms[m].Name == word.Value) is >= 0 and int at ? main[at] : -1 : main.Length == 1 ? main[0] : -1;
            if (reached < 0 && from[i] is { } wrong)
                reader.Unknown(wrong.Place, $"there is no room '{PartNames.Shorten(wrong.Value)}' without a distance", wrong.Value, [.. main.Select(m => rooms[m].Name)]);
            else if (reached < 0)
                Problems.Add(rooms[i].Place, $"it is not said from which room {rooms[i].Name} is reached", $"'{BriefKeys.From}:' with {NodeReader.OneOf([.. main.Select(m => rooms[m].Name)])}");
            else
                rooms[i] = rooms[i] with { From = reached };
        }

        return rooms;
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
