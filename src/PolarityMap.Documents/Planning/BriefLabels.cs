using System.Globalization;
using PolarityMap.Core.Planning;
using PolarityMap.Documents.Binding;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Planning;

/// <summary>
/// The names in a brief that names of parts are made of. They hold less than names in a plant may: letters, digits, <c>-</c>,
/// <c>_</c> and <c>.</c>, and those of networks and rooms single spaces, so that a document made of them needs no quotes.
/// </summary>
internal sealed class BriefLabels(NodeReader reader)
{
    /// <summary>Names of parts put some letters around these, and a plant's names are bounded.</summary>
    public const int Longest = 40;

    public const string Rule = "letters, digits, - _ . with a letter first";

    public const string NameRule = "letters, digits, single spaces inside, - _ . with a letter first";

    private readonly HashSet<string> _taken = [];

    /// <summary>The label of an entry, as given or made of its name, unlike any before.</summary>
    public string Of(YamlScalar name, YamlMapping? map, int letters)
    {
        if (map?.Find(BriefKeys.Label) is { } node)
        {
            if (reader.Text(node, BriefKeys.Label, $"a short label of {Rule}") is not { } given)
                return "";
            if (!IsSound(given.Value, spaces: false))
                reader.Problems.Add(given.Place, $"'{PartNames.Shorten(given.Value)}' is no label", Rule);
            else if (!_taken.Add(given.Value))
                reader.Problems.Add(given.Place, $"the label {given.Value} is taken", "a label of its own for each");
            return given.Value;
        }

        string upper = string.Concat(name.Value.Where(char.IsLetterOrDigit)).ToUpperInvariant();
        for (int length = Math.Min(letters, upper.Length); length <= upper.Length; length++)
        {
            if (_taken.Add(upper[..length]))
                return upper[..length];
        }

        int number = 2;
        while (!_taken.Add($"{upper}{number}"))
            number++;
        return $"{upper}{number}";
    }

    /// <summary>True for a name that needs no quotes; else it is reported.</summary>
    public static bool CheckName(NodeReader reader, YamlScalar name, string what)
    {
        if (IsSound(name.Value, spaces: true))
            return true;
        reader.Problems.Add(name.Place, $"'{PartNames.Shorten(name.Value)}' is no name for {what} in a brief", NameRule);
        return false;
    }

    /// <summary>The names of outlets: one, or a range such as <c>DESK[1..16]</c>; null after a report.</summary>
    public static PlannedName? Outlets(NodeReader reader, YamlScalar name)
    {
        const string expected = "a name such as DESK, or with one range, DESK[1..16]; " + Rule;
        string text = name.Value;
        int open = text.IndexOf('['), close = text.IndexOf(']');
        string prefix = open < 0 ? text : text[..open], suffix = open < 0 || close < open ? "" : text[(close + 1)..];
        bool sound = IsSound(prefix, spaces: false) && suffix.All(IsInside) && prefix.Length + suffix.Length <= Longest && (open < 0) == (close < 0);
        if (sound && open < 0)
            return PlannedName.One(text);
        string[] ends = sound && close > open ? text[(open + 1)..close].Split("..") : [];
        if (ends.Length == 2 && int.TryParse(ends[0], NumberStyles.None, CultureInfo.InvariantCulture, out int first) && int.TryParse(ends[1], NumberStyles.None, CultureInfo.InvariantCulture, out int last)
            && first <= last && last - first < NamePattern.MaxNames && ends[0] == $"{first}" && ends[1] == $"{last}")
            return new PlannedName(prefix, first, last - first + 1, suffix);
        reader.Problems.Add(name.Place, $"'{PartNames.Shorten(text)}' is no name for outlets", expected);
        return null;
    }

    private static bool IsSound(string text, bool spaces)
    {
        if (text.Length is 0 or > Longest || text.ToLowerInvariant() is "null" or "true" or "false" || !char.IsLetter(text[0]) || text[^1] == ' ' || text.Contains("  ", StringComparison.Ordinal))
            return false;
        return text.All(c => IsInside(c) || (spaces && c == ' '));
    }

    private static bool IsInside(char c) => char.IsLetterOrDigit(c) || c is '-' or '_' or '.';
}
