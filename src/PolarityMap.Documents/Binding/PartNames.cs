using PolarityMap.Core.Plants;

namespace PolarityMap.Documents.Binding;

/// <summary>
/// The parts of a plant, found by name. The names are those that the parts have anyway: all that is kept beside them is a table
/// of indices, in which a part stands at the place of its name's hash or at the next free one.
/// </summary>
internal sealed class PartNames(PlantBuilder plant)
{
    private readonly HashSet<string> _reported = [];

    /// <summary>Indices of parts plus 1, and 0 where there is none; a power of two long, and at most three quarters full.</summary>
    private int[] _slots = new int[64];

    private int _count;

    public bool TryFind(string name, out int part)
    {
        int found = _slots[SlotOf(name)];
        part = Math.Max(0, found - 1);
        return found > 0;
    }

    /// <summary>Takes up a part whose name is not taken yet.</summary>
    public void Add(int part)
    {
        if (++_count > _slots.Length / 4 * 3)
            Grow();
        _slots[SlotOf(plant.Part(part).Name)] = part + 1;
    }

    /// <summary>Reports a name that is no part, once for each name.</summary>
    public void ReportUnknown(NodeReader reader, SourcePlace place, string name, IEnumerable<string> alsoPossible, string expected = "the name of a part")
    {
        if (!_reported.Add(name))
            return;
        string? near = reader.Nearest(name, plant.Parts.Select(p => p.Name).Concat(alsoPossible));
        reader.Problems.Add(place, $"there is no part '{Shorten(name)}'", expected, near);
    }

    /// <summary>The first line of a text, cut for a message, so that a hostile one cannot flood it.</summary>
    public static string Shorten(string text)
    {
        const int most = 80;
        int line = text.IndexOf('\n');
        int length = line < 0 ? text.Length : line;
        if (length <= most)
            return line < 0 ? text : text[..length] + "...";
        int cut = most - 3;
        return text[..(char.IsHighSurrogate(text[cut - 1]) ? cut - 1 : cut)] + "...";
    }

    /// <summary>Where a name stands, or where it would.</summary>
    private int SlotOf(string name)
    {
        int slot = name.GetHashCode() & (_slots.Length - 1);
        while (_slots[slot] is > 0 and int found && plant.Part(found - 1).Name != name)
            slot = (slot + 1) & (_slots.Length - 1);
        return slot;
    }

    private void Grow()
    {
        int[] before = _slots;
        _slots = new int[2 * before.Length];
        foreach (int found in before)
        {
            if (found > 0)
                _slots[SlotOf(plant.Part(found - 1).Name)] = found;
        }
    }
}
