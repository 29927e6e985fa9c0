
namespace PolarityMap.Documents.Yaml;

/// <summary>One <c>key: value</c> of a mapping.</summary>
public readonly record struct YamlEntry(YamlScalar Key, YamlNode Value);

/// <summary>Entries in the order of the document, each key once.</summary>
public sealed class YamlMapping : YamlNode
{
    private readonly KeyIndex index;

    internal YamlMapping(IReadOnlyList<YamlEntry> entries, KeyIndex index, SourcePlace place, int endLine, int endColumn)
        : base(place, endLine, endColumn)
    {
        Entries = entries;
        this.index = index;
    }

    public IReadOnlyList<YamlEntry> Entries { get; }

    /// <summary>The value of a key, upper and lower case distinct, or null when there is no such key.</summary>
    public YamlNode? Find(string key)
    {
        var at = index.Find(Entries, key);
        return at < 0 ? null : Entries[at].Value;
    }
}
