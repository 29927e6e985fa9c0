using PolarityMap.Documents.Text;

namespace PolarityMap.Documents.Binding;

/// <summary>The named parts of a plant, found by name.</summary>
internal sealed class PartNames
{
    private readonly Dictionary<string, int> _index = [];
    private readonly HashSet<string> _reported = [];

    public bool TryFind(string name, out int part) => _index.TryGetValue(name, out part);

    public bool TryAdd(string name, int part) => _index.TryAdd(name, part);

    /// <summary>Reports a name that is no part, once for each name.</summary>
    public void ReportUnknown(NodeReader reader, SourcePlace place, string name, IEnumerable<string> alsoPossible)
    {
        if (!_reported.Add(name))
            return;
        string? near = NearestWord.Find(name, _index.Keys.Concat(alsoPossible));
        reader.Problems.Add(place, $"there is no part '{Shorten(name)}'", _index.Count == 0 ? "a part from the section parts" : "the name of a part", near);
    }

    /// <summary>A text cut for a message, so that a hostile one cannot flood it.</summary>
    public static string Shorten(string text) => text.Length <= 80 ? text : text[..77] + "...";
}
