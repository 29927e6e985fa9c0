using System.Globalization;
using PolarityMap.Core.Planning;
using PolarityMap.Documents.Binding;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Planning;

/// <summary>
/// The names of outlets: one, or several by one pair of brackets with ranges that count up and single numbers, such as
/// <c>DESK[1..16]</c>, <c>D[01..12]</c> and <c>F[1..3,7]</c>.
/// </summary>
internal static class BriefOutletNames
{
    private const string Expected = "a name such as DESK, or with numbers in one pair of brackets, DESK[1..16], D[01..12], F[1..3,7]; " + BriefLabels.Rule;

    /// <summary>The largest number in a name.</summary>
    private const int MostDigits = 6;

    /// <summary>The names, those that count up without a gap together; null after a report.</summary>
    public static IReadOnlyList<PlannedName>? Read(NodeReader reader, YamlScalar name)
    {
        string text = name.Value;
        if (Split(text, out IReadOnlyList<PlannedName> names) is not { } wrong)
            return names;
        reader.Problems.Add(name.Place, $"'{PartNames.Shorten(text)}' is no name for outlets{(wrong.Why.Length > 0 ? ": " + wrong.Why : "")}", wrong.Write ?? Expected);
        return null;
    }

    /// <summary>What is wrong and what to write instead, or null.</summary>
    private static (string Why, string? Write)? Split(string text, out IReadOnlyList<PlannedName> names)
    {
        names = [];
        int open = text.IndexOf('['), close = text.IndexOf(']');
        if (open >= 0 != close >= 0 || close < open)
            return ("a bracket is open", null);
        string prefix = open < 0 ? text : text[..open], suffix = open < 0 ? "" : text[(close + 1)..];
        if (suffix.Contains('[') || suffix.Contains(']'))
            return ("it has more than one pair of brackets", null);
        if (prefix.Length > 0 && char.IsDigit(prefix[0]))
            return ("it begins with a digit", $"a letter first, such as D{PartNames.Shorten(text)}");
        if (prefix.Length == 0 && open == 0)
            return ("it begins with a number", $"a letter first, such as D{PartNames.Shorten(text)}");
        if (prefix.Length + suffix.Length > BriefLabels.Longest)
            return ($"it has more than {BriefLabels.Longest} letters", null);
        if (!BriefLabels.IsSound(prefix, spaces: false) || !suffix.All(BriefLabels.IsInside))
            return ((prefix + suffix).FirstOrDefault(c => !BriefLabels.IsInside(c)) is not '\0' and char other ? $"'{other}' cannot be part of it" : "", null);
        if (open < 0)
        {
            names = [PlannedName.One(text)];
            return null;
        }

        var all = new List<PlannedName>();
        foreach (string piece in text[(open + 1)..close].Split(','))
        {
            if (Range(prefix, piece.Trim(), suffix, all) is { } wrong)
                return wrong;
        }

        names = all;
        return null;
    }

    private static (string Why, string? Write)? Range(string prefix, string piece, string suffix, List<PlannedName> all)
    {
        if (piece.Contains(" by ", StringComparison.Ordinal))
            return ("steps are not read in a brief", $"the numbers one by one, such as {prefix}[1,3,5]{suffix}");
        string[] ends = piece.Split("..");
        if (ends.Length > 2 || !ends.All(e => e.Length is > 0 and <= MostDigits && e.All(char.IsAsciiDigit)))
            return ($"'{PartNames.Shorten(piece)}' is no number and no range", $"numbers such as {prefix}[1..16]{suffix} or {prefix}[1..3,7]{suffix}, at most {MostDigits} digits each");
        int first = Number(ends[0]), last = Number(ends[^1]);
        bool padded = ends.Any(e => e.Length > 1 && e[0] == '0');
        if (padded && ends[0].Length != ends[^1].Length)
            return ("with leading zeros all numbers have as many digits", $"{prefix}[{ends[0].PadLeft(ends[^1].Length, '0')}..{ends[^1].PadLeft(ends[0].Length, '0')}]{suffix}");
        if (last < first)
            return ("outlets count up", $"{prefix}[{ends[1]}..{ends[0]}]{suffix}");
        if (last - first >= NamePattern.MaxNames)
            return ($"this stands for more than {NamePattern.MaxNames} names", null);
        all.Add(new PlannedName(prefix, first, last - first + 1, suffix) { Width = padded ? ends[0].Length : 0 });
        return null;
    }

    private static int Number(string digits) => int.Parse(digits, CultureInfo.InvariantCulture);
}
