using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks;

/// <summary>Parts and lists in the words of findings.</summary>
internal static class PartWords
{
    /// <summary>A part with what it is, such as <c>the cord C7</c>; a cord without a name of its own is <c>the cord</c>.</summary>
    public static string WithKind(Part part) => part.IsInline ? $"the {Noun(part)}" : $"the {Noun(part)} {part.Name}";

    /// <summary>What a part is in one word: the last of its kind's name.</summary>
    public static string Noun(Part part)
    {
        string noun = part.Kind[(part.Kind.LastIndexOf(' ') + 1)..];
        return noun.Length > 0 ? noun : "part";
    }

    /// <summary>Words in a row, such as <c>a, b and c</c>.</summary>
    public static string List(IReadOnlyList<string> words) => words.Count switch
    {
        0 => "",
        1 => words[0],
        _ => $"{string.Join(", ", words.Take(words.Count - 1))} and {words[^1]}",
    };

    /// <summary>The first words of a row, and how many more there are.</summary>
    public static string List(IReadOnlyList<string> words, int most) =>
        words.Count <= most ? List(words) : $"{string.Join(", ", words.Take(most))} and {words.Count - most} more";

    /// <summary>The names of networks.</summary>
    public static string Networks(Plant plant, IReadOnlyList<int> networks) => List([.. networks.Select(n => plant.Networks[n].Name)]);
}
