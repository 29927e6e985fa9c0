using System.Globalization;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations;

/// <summary>
/// Which parts stand side by side. A plant says no places in racks, so it is taken from the names: parts of one kind in one room
/// whose names differ by the last number stand in its order (common practice).
/// </summary>
internal sealed class Beside
{
    /// <summary>How many parts to either side a hand is thought to miss by: about as many cassettes lie in one housing (common practice).</summary>
    public const int Reach = 12;

    private readonly int[] _left;
    private readonly int[] _right;

    public Beside(Plant plant)
    {
        _left = new int[plant.Parts.Count];
        _right = new int[plant.Parts.Count];
        Array.Fill(_left, -1);
        Array.Fill(_right, -1);
        var groups = new Dictionary<(string Kind, string? Room, string Before, string After), List<(long Number, int Part)>>();
        for (int i = 0; i < plant.Parts.Count; i++)
        {
            Part part = plant.Parts[i];
            if (part.Shape.IsCable || !Numbered(part.Name, out string before, out long number, out string after))
                continue;
            (string, string?, string, string) key = (part.Kind, part.Room, before, after);
            if (!groups.TryGetValue(key, out List<(long, int)>? group))
                groups[key] = group = [];
            group.Add((number, i));
        }

        foreach (List<(long Number, int Part)> group in groups.Values)
        {
            group.Sort();
            for (int i = 1; i < group.Count; i++)
            {
                _right[group[i - 1].Part] = group[i].Part;
                _left[group[i].Part] = group[i - 1].Part;
            }
        }
    }

    /// <summary>The part to the left (-1) or right (1), or -1.</summary>
    public int Of(int part, int step) => step < 0 ? _left[part] : _right[part];

    /// <summary>Parts a name at its last number: <c>LX-K3</c> is <c>LX-K</c>, 3 and nothing.</summary>
    private static bool Numbered(string name, out string before, out long number, out string after)
    {
        int end = name.Length;
        while (end > 0 && !char.IsAsciiDigit(name[end - 1]))
            end--;
        int start = end;
        while (start > 0 && char.IsAsciiDigit(name[start - 1]))
            start--;
        (before, after) = (name[..start], name[end..]);
        return long.TryParse(name.AsSpan(start, end - start), NumberStyles.None, CultureInfo.InvariantCulture, out number);
    }
}
