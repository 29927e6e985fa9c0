using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Binding;

/// <summary>Asks nodes for what a section needs and reports what it finds instead.</summary>
internal sealed class NodeReader(ProblemList problems)
{
    /// <summary>
    /// The most words compared in search of the nearest one: the work grows with the number of unknown words times that of
    /// the known ones.
    /// </summary>
    private const int MostComparisons = 300_000;

    private int _comparisons;

    public ProblemList Problems { get; } = problems;

    public Allowance Allowance { get; } = new(problems);

    /// <summary>True while a further problem is likely to be shown, so that it pays to explain it at length.</summary>
    public bool ExplainsAtLength => Problems.Count < ProblemList.DefaultCap;

    /// <summary>A noun with its article, such as <c>an outlet</c>.</summary>
    public static string A(string noun) => (noun[0] is 'a' or 'e' or 'i' or 'o' or 'A' or 'E' or 'I' or 'O' ? "an " : "a ") + noun;

    /// <summary>Where something else stands, seen from a place that a message is about.</summary>
    public static string Where(SourcePlace other, SourcePlace here) =>
        other.File == here.File ? $"at line {other.Line}" : $"at {other.File}:{other.Line}";

    /// <summary>The node as a mapping, or null after a report.</summary>
    public YamlMapping? Mapping(YamlNode node, string what, string expected)
    {
        if (node is YamlMapping mapping)
            return mapping;
        Problems.Add(node.Place, $"{what} is no mapping", expected);
        return null;
    }

    /// <summary>The items of a list, or none after a report.</summary>
    public IReadOnlyList<YamlNode> Items(YamlNode node, string what, string expected)
    {
        if (node is YamlSequence sequence)
            return sequence.Items;
        Problems.Add(node.Place, $"{what} is no list", expected);
        return [];
    }

    /// <summary>A text that is not empty, or null after a report.</summary>
    public YamlScalar? Text(YamlNode node, string what, string expected)
    {
        if (node is YamlScalar { IsNull: false } scalar && scalar.Value.Length > 0)
            return scalar;
        Problems.Add(node.Place, node is YamlScalar ? $"{what} is empty" : $"{what} is no text", expected);
        return null;
    }

    /// <summary>Reports every key that is not known, with the nearest known one.</summary>
    public void CheckKeys(YamlMapping mapping, IReadOnlyList<string> known, string where)
    {
        foreach (YamlEntry entry in mapping.Entries)
        {
            if (!known.Contains(entry.Key.Value))
                Unknown(entry.Key.Place, $"{where} has no key '{PartNames.Shorten(entry.Key.Value)}'", entry.Key.Value, known);
        }
    }

    /// <summary>Reports an unknown word with what is known and the nearest of it.</summary>
    public void Unknown(SourcePlace place, string message, string word, IReadOnlyCollection<string> known)
    {
        Problems.Add(place, message, OneOf(known), Nearest(word, known));
    }

    /// <summary>The words of which one is expected, the first of them where they are many.</summary>
    public static string OneOf(IReadOnlyCollection<string> known)
    {
        const int mostListed = 14;
        return known.Count switch
        {
            0 => "nothing here",
            <= mostListed => (known.Count == 1 ? "" : "one of ") + Listed(known),
            _ => $"one of {Listed(known.Take(mostListed))} and {known.Count - mostListed} more",
        };

        // A word with a comma in it needs quotes, in the list here as in a document.
        static string Listed(IEnumerable<string> words) => string.Join(", ", words.Select(w => w.Contains(',') ? $"'{w}'" : w));
    }

    /// <summary>The word that was probably meant, or null when none is near or the search has become too long.</summary>
    public string? Nearest(string word, IEnumerable<string> known) => NearestWord.Find(word, Limited(known));

    private IEnumerable<string> Limited(IEnumerable<string> known)
    {
        foreach (string word in known)
        {
            if (_comparisons == MostComparisons)
                yield break;
            _comparisons++;
            yield return word;
        }
    }
}
