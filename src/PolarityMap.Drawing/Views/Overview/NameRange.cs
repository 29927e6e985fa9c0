using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views.Overview;

/// <summary>Many names in few words: <c>K1 … K4</c>.</summary>
internal static class NameRange
{
    /// <summary>More stretches than this are told by the first and the last name only.</summary>
    private const int MostStretches = 3;

    private const string To = " \u2026 ";

    /// <summary>
    /// The names in the order in which 2 comes before 10; three or more that differ only in their last number and follow each
    /// other without a gap are told by the first and the last.
    /// </summary>
    public static string Of(List<string> names)
    {
        if (!IsSorted(names))
            names.Sort(NaturalOrder.Compare);
        var stretches = new List<(int First, int Last)>();
        for (int i = 0; i < names.Count; i++)
        {
            if (stretches.Count > 0 && Follows(names[i - 1], names[i]))
                stretches[^1] = (stretches[^1].First, i);
            else
                stretches.Add((i, i));
        }

        if (stretches.Count > MostStretches)
            return names[0] + To + names[^1];
        return string.Join(", ", stretches.Select(s => Stretch(names, s.First, s.Last)));
    }

    private static string Stretch(List<string> names, int first, int last) => (last - first) switch
    {
        0 => names[first],
        1 => $"{names[first]}, {names[last]}",
        _ => names[first] + To + names[last],
    };

    private static bool IsSorted(List<string> names)
    {
        for (int i = 1; i < names.Count; i++)
        {
            if (NaturalOrder.Compare(names[i - 1], names[i]) > 0)
                return false;
        }

        return true;
    }

    /// <summary>True when a name is another with its last number one higher.</summary>
    private static bool Follows(string before, string name)
    {
        (int from, int to) = LastNumber(before);
        (int nextFrom, int nextTo) = LastNumber(name);
        return from < to && nextFrom < nextTo
            && before.AsSpan(0, from).SequenceEqual(name.AsSpan(0, nextFrom))
            && before.AsSpan(to).SequenceEqual(name.AsSpan(nextTo))
            && long.TryParse(before.AsSpan(from, to - from), out long number)
            && long.TryParse(name.AsSpan(nextFrom, nextTo - nextFrom), out long next)
            && next == number + 1;
    }

    private static (int From, int To) LastNumber(string name)
    {
        int to = name.Length;
        while (to > 0 && !char.IsAsciiDigit(name[to - 1]))
            to--;
        int from = to;
        while (from > 0 && char.IsAsciiDigit(name[from - 1]))
            from--;
        return (from, to);
    }
}
