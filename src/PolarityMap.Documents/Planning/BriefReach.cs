using PolarityMap.Core.Planning;
using PolarityMap.Documents.Binding;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Planning;

/// <summary>From which room with switches each room is reached, and whether every cable has a way to cover.</summary>
internal sealed class BriefReach(NodeReader reader, IReadOnlyList<(BriefRoom Room, YamlScalar? From)> rooms, IReadOnlyList<BriefOutlets> outlets)
{
    private readonly int[] _main = [.. Enumerable.Range(0, rooms.Count).Where(i => rooms[i].Room.Distance is null)];

    private ProblemList Problems => reader.Problems;

    /// <summary>The rooms with what they are reached from; problems are reported.</summary>
    /// <param name="list">Where the list of rooms stands.</param>
    public IReadOnlyList<BriefRoom> Rooms(SourcePlace list)
    {
        BriefRoom[] reached = [.. rooms.Select(r => r.Room)];
        if (_main.Length == 0 && rooms.Count > 0)
            Problems.Add(list, "every room has a distance, and switches stand in a room without one", "a room such as 'Equipment room:' with no distance");
        if (_main.Length == 0)
            return reached;
        foreach (int main in _main.Where(m => rooms[m].From is not null))
            Problems.Add(rooms[main].From!.Place, $"{reached[main].Name} has no distance, so it holds switches and is reached from no other room", $"its '{BriefKeys.Distance}:' as well, or no '{BriefKeys.From}:'");
        int[] forgotten = Forgotten();
        int[] sound = [.. _main.Except(forgotten)];
        bool isOpen = false;
        for (int i = 0; i < rooms.Count; i++)
        {
            int at = From(i, sound);
            if (at >= 0)
                reached[i] = reached[i] with { From = at };
            isOpen |= at < 0;
        }

        if (!isOpen && forgotten.Length == 0)
            CheckServed(reached, sound);
        return reached;
    }

    /// <summary>Index of the room that one is reached from, or -1 after a report.</summary>
    private int From(int room, int[] main)
    {
        (BriefRoom of, YamlScalar? from) = rooms[room];
        if (of.Distance is null)
            return room;
        if (from is null && main.Length == 1)
            return main[0];
        string[] names = [.. main.Select(m => rooms[m].Room.Name)];
        if (from is not null)
        {
            int at = Array.FindIndex(_main, m => rooms[m].Room.Name == from.Value);
            if (at < 0)
                reader.Unknown(from.Place, $"there is no room '{PartNames.Shorten(from.Value)}' without a distance", from.Value, names);
            return at < 0 ? -1 : _main[at];
        }

        Problems.Add(of.Place, $"it is not said from which room {of.Name} is reached", $"'{BriefKeys.From}:' with {NodeReader.OneOf(names)}");
        return -1;
    }

    /// <summary>Rooms with neither a distance nor outlets that all have one: their cables would have no length. They are reported.</summary>
    private int[] Forgotten()
    {
        var forgotten = new List<int>();
        foreach (int main in _main)
        {
            BriefOutlets[] near = [.. outlets.Where(o => o.Room == main && o.Distance is null)];
            if (near.Length == 0)
                continue;
            BriefRoom room = rooms[main].Room;
            string told = Told(near);
            string[] others = [.. _main.Where(m => m != main).Select(m => rooms[m].Room.Name)];
            bool isNamed = rooms.Any(r => r.From?.Value == room.Name);
            if (others.Length == 0 || isNamed || outlets.Any(o => o.Room == main && o.Distance is not null))
                Problems.Add(near[0].Place, $"{room.Name} holds switches, and {told} in it {(near.Sum(o => o.Name.Count) == 1 ? "has" : "have")} no distance, so their cables would have no length", $"their '{BriefKeys.Distance}:' from the switches, such as 10 m");
            else
                Problems.Add(room.Place, $"{room.Name} has no distance, so it would hold switches beside {told}", $"its '{BriefKeys.Distance}:' from {string.Join(" or ", others)}, or that of these outlets");
            if (others.Length > 0 && !isNamed)
                forgotten.Add(main);
        }

        // Where every room is one of them, any may be the one with the switches.
        return forgotten.Count == _main.Length ? [.. forgotten.Skip(1)] : [.. forgotten];
    }

    private void CheckServed(BriefRoom[] reached, int[] main)
    {
        foreach (int room in main)
        {
            bool serves = outlets.Any(o => o.Room == room) || Enumerable.Range(0, reached.Length).Any(i => i != room && reached[i].From == room);
            if (!serves && _main.Length > 1)
                Problems.Add(reached[room].Place, $"{reached[room].Name} has no distance, so it would hold switches, and nothing is reached from it", $"its '{BriefKeys.Distance}:', '{BriefKeys.From}: {reached[room].Name}' at a room, or no {reached[room].Name}");
        }
    }

    private static string Told(BriefOutlets[] near) => PartNames.Shorten(near[0].Written ?? near[0].Name.ToString()) + (near.Length > 1 ? $" and {near.Length - 1} more" : "");
}
