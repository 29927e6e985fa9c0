using System.Globalization;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Planning;
using PolarityMap.Documents.Binding;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Planning;

/// <summary>Reads single values of a brief, each with its unit, or reports what was expected.</summary>
internal sealed class BriefFields(NodeReader reader)
{
    private const string LengthExpected = "a length such as '62 m'";

    private ProblemList Problems => reader.Problems;

    public string? Text(YamlMapping map, string key, string expected) => map.Find(key) is { } node ? reader.Text(node, key, expected)?.Value : null;

    /// <summary>One of a few words, or null when it is not given or after a report.</summary>
    public string? Word(YamlMapping map, string key, IReadOnlyList<string> words)
    {
        if (map.Find(key) is not { } node || reader.Text(node, key, NodeReader.OneOf(words)) is not { } scalar)
            return null;
        if (words.Contains(scalar.Value))
            return scalar.Value;
        Problems.Add(scalar.Place, $"'{PartNames.Shorten(scalar.Value)}' is no {key}", NodeReader.OneOf(words), (key == BriefKeys.Fibre ? Numbered(scalar.Value, words) : null) ?? reader.Nearest(scalar.Value, words));
        return null;
    }

    public bool? YesNo(YamlMapping map, string key) => Word(map, key, ["yes", "no"]) is { } word ? word == "yes" : null;

    public int? Whole(YamlMapping map, string key, int least, int most)
    {
        if (map.Find(key) is not { } node)
            return null;
        return WholeOf(node, key, least, most);
    }

    public int? WholeOf(YamlNode node, string what, int least, int most)
    {
        string expected = $"a whole number from {least} to {most}";
        if (reader.Text(node, what, expected) is not { } scalar)
            return null;
        if (int.TryParse(scalar.Value, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= least && number <= most)
            return number;
        Problems.Add(scalar.Place, $"'{PartNames.Shorten(scalar.Value)}' is no number of {what}", expected);
        return null;
    }

    /// <summary>A length above nothing: every cable and cord has one.</summary>
    public Length? Length(YamlMapping map, string key) => map.Find(key) is { } node ? LengthOf(node, key) : null;

    /// <summary>As <see cref="Length"/>, of a node.</summary>
    public Length? LengthOf(YamlNode node, string what)
    {
        if (reader.Text(node, what, LengthExpected) is not { } scalar)
            return null;
        if (!PolarityMap.Core.Optics.Length.TryParse(scalar.Value, out Length length, out string why))
            Report(scalar, "length", why, LengthExpected);
        else if (length.Millimetres == 0)
            Problems.Add(scalar.Place, $"'{PartNames.Shorten(scalar.Value)}' is no length for a cable or cord", LengthExpected.Replace("a length", "a length above 0 m,", StringComparison.Ordinal));
        else
            return length;
        return null;
    }

    public Decibel? Loss(YamlMapping map, string key)
    {
        const string expected = "a loss such as '0.35 dB'";
        if (map.Find(key) is not { } node || reader.Text(node, key, expected) is not { } scalar)
            return null;
        if (Decibel.TryParse(scalar.Value, out Decibel loss, out string why))
            return loss;
        Report(scalar, "loss", why, expected);
        return null;
    }

    public Percentage? Share(YamlMapping map, string key)
    {
        const string expected = "a share such as '25 %'";
        if (map.Find(key) is not { } node || reader.Text(node, key, expected) is not { } scalar)
            return null;
        if (Percentage.TryParse(scalar.Value, out Percentage share, out string why))
            return share;
        Report(scalar, "share", why, expected);
        return null;
    }

    /// <summary>How much a measure counts.</summary>
    public decimal? Weight(YamlMapping map, string key)
    {
        if (map.Find(key) is not { } node || reader.Text(node, key, PlanWeightWords.Expected) is not { } scalar)
            return null;
        if (PlanWeightWords.TryParse(scalar.Value, out decimal weight))
            return weight;
        Problems.Add(scalar.Place, $"'{PartNames.Shorten(scalar.Value)}' is no weight", PlanWeightWords.Expected);
        return null;
    }

    /// <summary>A share, a length, or both as <c>5 % and 2 m</c>.</summary>
    public Slack? Slack(YamlMapping map, string key)
    {
        const string expected = "a share, a length, or both: '5 %', '3 m', '5 % and 3 m'";
        if (map.Find(key) is not { } node || reader.Text(node, key, expected) is not { } scalar)
            return null;
        Percentage share = default;
        Length extra = default;
        string[] pieces = scalar.Value.Split(" and ");
        bool read = pieces.Length <= 2;
        foreach (string piece in pieces)
        {
            bool isShare = piece.TrimEnd().EndsWith('%');
            read = read && (isShare ? Percentage.TryParse(piece, out share, out _) : PolarityMap.Core.Optics.Length.TryParse(piece, out extra, out _));
        }

        if (read && (pieces.Length == 1 || (share.Value > 0 && extra.Millimetres > 0)))
            return new Slack(share, extra);
        Problems.Add(scalar.Place, $"'{PartNames.Shorten(scalar.Value)}' is no slack", expected);
        return null;
    }

    /// <summary>A list in ascending order, each item once; null when it is not given or after a report.</summary>
    public List<T>? Ascending<T>(YamlMapping map, string key, string expected, Func<YamlNode, T?> item)
        where T : struct, IComparable<T>
    {
        if (map.Find(key) is not { } node)
            return null;
        var items = new SortedSet<T>();
        IReadOnlyList<YamlNode> nodes = reader.Items(node, key, expected);
        foreach (YamlNode one in nodes)
        {
            if (item(one) is not { } value)
                return null;
            items.Add(value);
        }

        if (items.Count == 0 && node is YamlSequence)
            Problems.Add(node.Place, $"{key} is empty", expected);
        return items.Count == 0 ? null : [.. items];
    }

    /// <summary>Of words that differ in their number alone the one whose number is nearest, of equally near ones the greater; null without one.</summary>
    private static string? Numbered(string word, IReadOnlyList<string> words)
    {
        (string stem, int number) = Split(word);
        return stem.Length == 0 || number < 0 ? null : words.Where(w => Split(w) is { Number: >= 0 } split && split.Stem.Equals(stem, StringComparison.OrdinalIgnoreCase))
            .OrderBy(w => Math.Abs(Split(w).Number - number)).ThenByDescending(w => Split(w).Number).FirstOrDefault();

        static (string Stem, int Number) Split(string text)
        {
            string stem = text.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
            return (stem, int.TryParse(text.AsSpan(stem.Length), NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : -1);
        }
    }

    /// <summary>Reports a quantity; what was expected is told once.</summary>
    private void Report(YamlScalar scalar, string noun, string why, string expected)
    {
        const string also = "; expected ";
        int told = why.StartsWith(also[2..], StringComparison.Ordinal) ? 0 : why.IndexOf(also, StringComparison.Ordinal);
        string reason = told < 0 ? why : why[..told];
        Problems.Add(scalar.Place, $"'{PartNames.Shorten(scalar.Value)}' is no {noun}{(reason.Length > 0 ? ": " + PartNames.Shorten(reason) : "")}", told <= 0 ? expected : why[(told + also.Length)..]);
    }
}
