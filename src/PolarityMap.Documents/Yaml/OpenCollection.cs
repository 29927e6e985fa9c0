
namespace PolarityMap.Documents.Yaml;

/// <summary>A sequence or mapping that is being read.</summary>
internal sealed class OpenCollection(SourcePlace place, int index, bool isMapping, bool isFlow)
{
    public SourcePlace Place { get; set; } = place;

    /// <summary>The index of its first character in the text, or -1 for a pair without braces inside a flow sequence.</summary>
    public int Index { get; } = index;

    public bool IsMapping { get; } = isMapping;

    public bool IsFlow { get; } = isFlow;

    public List<YamlNode> Items { get; } = isMapping ? Unused<YamlNode>.List : [];

    public List<YamlEntry> Entries { get; } = isMapping ? [] : Unused<YamlEntry>.List;

    public KeyIndex Keys { get; } = isMapping ? new KeyIndex() : Unused<YamlEntry>.Keys;

    /// <summary>The key whose value comes next.</summary>
    public YamlScalar? Key { get; set; }

    /// <summary>Where the last node inside ended.</summary>
    public (int Line, int Column) LastEnd { get; set; } = (place.Line, place.Column);

    /// <summary>A document of two million nodes should not carry an empty list for each.</summary>
    private static class Unused<T>
    {
        public static readonly List<T> List = [];
        public static readonly KeyIndex Keys = new();
    }
}
