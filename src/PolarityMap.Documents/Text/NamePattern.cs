using System.Text;

namespace PolarityMap.Documents.Text;

/// <summary>Reports a problem at an index of the text that is being read; the caller knows where that text stands.</summary>
public delegate void ProblemAt(int index, string message, string? expected);

/// <summary>
/// Names with ranges: literal text with any number of bracket groups, such as <c>SW-[1..4]</c>, <c>K[1..4,9..12]</c>,
/// <c>R[3,5,8]</c>, <c>P[01..16]</c> (leading zeros keep the width), <c>P[4..1]</c> (descending) and <c>P[1..15 by 2]</c>.
/// </summary>
public static class NamePattern
{
    /// <summary>The most names that one text may stand for.</summary>
    public const int MaxNames = 100_000;

    /// <summary>
    /// Expands a text into names in order, the leftmost group changing slowest. Every name is valid by <see cref="Names"/>.
    /// The number of names is checked before any is made.
    /// </summary>
    /// <returns>False when a problem was reported; the list is then empty.</returns>
    public static bool TryExpand(string text, ProblemAt report, out IReadOnlyList<string> names) =>
        Expand(text, text.Length, report, out names);

    /// <summary>
    /// As <see cref="TryExpand"/>, for a text where a range at the end may stand without brackets: <c>1..6</c> is
    /// <c>[1..6]</c> and <c>near1..8</c> is <c>near[1..8]</c>.
    /// </summary>
    public static bool TryExpandToken(string text, ProblemAt report, out IReadOnlyList<string> names) =>
        Expand(text, BareRangeAtEnd(text), report, out names);

    /// <param name="text">The text.</param>
    /// <param name="bare">Where a range without brackets begins, or the length of the text.</param>
    /// <param name="report">Told of the problem.</param>
    /// <param name="names">The names.</param>
    private static bool Expand(string text, int bare, ProblemAt report, out IReadOnlyList<string> names)
    {
        names = [];
        var groups = new List<RangeGroup>();
        for (var at = 0; at < bare;)
        {
            if (text[at] == ']')
            {
                report(at, "']' closes no '['", null);
                return false;
            }

            if (text[at] != '[')
            {
                at++;
                continue;
            }

            if (RangeGroup.Parse(text, at, report) is not { } group)
                return false;
            groups.Add(group);
            at = group.End;
        }

        if (bare < text.Length)
        {
            if (RangeGroup.ParseBare(text, bare, report) is not { } group)
                return false;
            groups.Add(group);
        }

        if (!CheckLiterals(text, groups, report) || !CheckSize(text, groups, report))
            return false;

        names = Build(text, groups);
        return true;
    }

    private static bool CheckLiterals(string text, List<RangeGroup> groups, ProblemAt report)
    {
        // Each group is replaced by a digit, so that the rule for names can be asked about the text between the groups.
        var skeleton = new StringBuilder(text.Length);
        var origin = new List<int>(text.Length);
        var next = 0;
        foreach (var group in groups)
        {
            if (!CheckForBareRange(text, next, group.Start, report))
                return false;
            Copy(text, next, group.Start, skeleton, origin);
            skeleton.Append('0');
            origin.Add(group.Start);
            next = group.End;
        }

        if (!CheckForBareRange(text, next, text.Length, report))
            return false;
        Copy(text, next, text.Length, skeleton, origin);
        if (skeleton.Length == 0)
        {
            report(0, "the name is empty", null);
            return false;
        }

        return Names.CheckCharacters(
            skeleton.ToString(),
            (index, message) => report(origin[index], message, message.EndsWith("cannot be part of a name", StringComparison.Ordinal) ? Names.Rule : null));
    }

    private static void Copy(string text, int from, int to, StringBuilder skeleton, List<int> origin)
    {
        for (var at = from; at < to; at++)
        {
            skeleton.Append(text[at]);
            origin.Add(at);
        }
    }

    /// <summary>A range written without brackets inside a literal would silently become part of a name.</summary>
    private static bool CheckForBareRange(string text, int from, int to, ProblemAt report)
    {
        for (var at = from + 1; at + 1 < to; at++)
        {
            if (text[at] != '.' || text[at + 1] != '.' || !char.IsAsciiDigit(text[at - 1]))
                continue;
            var after = at;
            while (after < text.Length && text[after] == '.')
                after++;

            // The text after may be a range at the end, as in 1..2..3: that is one range too many.
            if (after >= text.Length || !char.IsAsciiDigit(text[after]))
                continue;
            var start = at - 1;
            while (start > from && char.IsAsciiDigit(text[start - 1]))
                start--;
            var end = after;
            while (end < text.Length && char.IsAsciiDigit(text[end]))
                end++;
            report(start, "a range inside a name stands in brackets", $"[{text[start..at]}..{text[after..end]}]");
            return false;
        }

        return true;
    }

    private static bool CheckSize(string text, List<RangeGroup> groups, ProblemAt report)
    {
        var length = text.Length;
        foreach (var group in groups)
            length += group.Longest - (group.End - group.Start);
        if (length > Names.MaxLength)
        {
            report(0, $"the longest name has {length} characters, at most {Names.MaxLength} are allowed", null);
            return false;
        }

        // Each group alone stays below the cap before the product is formed, so that the product of two cannot overflow.
        long total = 1;
        foreach (var group in groups)
        {
            if (group.Count <= MaxNames)
                total *= group.Count;
            if (group.Count > MaxNames || total > MaxNames)
            {
                report(group.Start, $"this stands for more than {MaxNames} names", null);
                return false;
            }
        }

        return true;
    }

    private static List<string> Build(string text, List<RangeGroup> groups)
    {
        var values = new List<string>[groups.Count];
        var total = 1;
        for (var g = 0; g < groups.Count; g++)
        {
            values[g] = groups[g].Values();
            total *= values[g].Count;
        }

        var names = new List<string>(total);
        var chosen = new int[groups.Count];
        var name = new StringBuilder(Names.MaxLength);
        while (true)
        {
            name.Clear();
            var next = 0;
            for (var g = 0; g < groups.Count; g++)
            {
                name.Append(text, next, groups[g].Start - next).Append(values[g][chosen[g]]);
                next = groups[g].End;
            }

            names.Add(name.Append(text, next, text.Length - next).ToString());

            // Counts up like the wheels of a meter, the rightmost fastest.
            var wheel = groups.Count - 1;
            while (wheel >= 0 && ++chosen[wheel] == values[wheel].Count)
                chosen[wheel--] = 0;
            if (wheel < 0)
                return names;
        }
    }

    private static int BareRangeAtEnd(string text)
    {
        var last = text.Length;
        while (last > 0 && char.IsAsciiDigit(text[last - 1]))
            last--;
        if (last == text.Length || last < 3 || text[last - 1] != '.' || text[last - 2] != '.')
            return text.Length;
        var first = last - 2;
        while (first > 0 && char.IsAsciiDigit(text[first - 1]))
            first--;
        return first == last - 2 ? text.Length : first;
    }
}
