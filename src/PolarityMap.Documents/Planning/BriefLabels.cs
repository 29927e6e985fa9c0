using PolarityMap.Documents.Binding;
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

    private static readonly char[] s_digits = [.. "0123456789"];

    private readonly HashSet<string> _taken = [];

    /// <summary>The label of an entry, as given, or its first letters and the number at its end; unlike any before.</summary>
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
        string stem = upper.TrimEnd(s_digits), number = upper[stem.Length..];
        for (int length = Math.Min(letters, stem.Length); length <= stem.Length; length++)
        {
            if (_taken.Add(stem[..length] + number))
                return stem[..length] + number;
        }

        int other = 2;
        while (!_taken.Add($"{upper}-{other}"))
            other++;
        return $"{upper}-{other}";
    }

    /// <summary>True for a name that needs no quotes; else it is reported.</summary>
    public static bool CheckName(NodeReader reader, YamlScalar name, string what)
    {
        if (IsSound(name.Value, spaces: true))
            return true;
        reader.Problems.Add(name.Place, $"'{PartNames.Shorten(name.Value)}' is no name for {what} in a brief", NameRule);
        return false;
    }

    /// <summary>True for a text of the letters that names are made of, beginning with one.</summary>
    public static bool IsSound(string text, bool spaces)
    {
        if (text.Length is 0 or > Longest || text.ToLowerInvariant() is "null" or "true" or "false" || !char.IsLetter(text[0]) || text[^1] == ' ' || text.Contains("  ", StringComparison.Ordinal))
            return false;
        return text.All(c => IsInside(c) || (spaces && c == ' '));
    }

    public static bool IsInside(char c) => char.IsLetterOrDigit(c) || c is '-' or '_' or '.';
}
