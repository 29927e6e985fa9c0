namespace PolarityMap.Documents.Binding;

/// <summary>The named parts of a plant, found by name.</summary>
internal sealed class PartNames
{
    private readonly Dictionary<string, int> _index = [];
    private readonly HashSet<string> _reported = [];

    public bool TryFind(string name, out int part) => _index.TryGetValue(name, out part);

    /// <summary>Makes room for names to come, where they are many beside what there is.</summary>
    public void Expect(int names)
    {
        if (names > _index.Count / 4)
            _index.EnsureCapacity(_index.Count + names);
    }

    public bool TryAdd(string name, int part) => _index.TryAdd(name, part);

    /// <summary>Reports a name that is no part, once for each name.</summary>
    public void ReportUnknown(NodeReader reader, SourcePlace place, string name, IEnumerable<string> alsoPossible, string expected = "the name of a part")
    {
        if (!_reported.Add(name))
            return;
        string? near = reader.Nearest(name, _index.Keys.Concat(alsoPossible));
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
}
