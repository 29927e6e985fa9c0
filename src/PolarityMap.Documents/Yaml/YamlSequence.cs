
namespace PolarityMap.Documents.Yaml;

/// <summary>A list of nodes.</summary>
public sealed class YamlSequence : YamlNode
{
    internal YamlSequence(IReadOnlyList<YamlNode> items, SourcePlace place, int endLine, int endColumn)
        : base(place, endLine, endColumn) => Items = items;

    public IReadOnlyList<YamlNode> Items { get; }
}
