
namespace PolarityMap.Documents.Yaml;

/// <summary>A node of a document: a scalar, a sequence or a mapping, with the places where it starts and ends.</summary>
public abstract class YamlNode
{
    private protected YamlNode(SourcePlace place, int endLine, int endColumn)
    {
        Place = place;
        EndLine = endLine;
        EndColumn = endColumn;
    }

    /// <summary>Where the node starts.</summary>
    public SourcePlace Place { get; }

    /// <summary>The line, counted from 1, on which the node ends.</summary>
    public int EndLine { get; }

    /// <summary>The column, counted from 1, just after the node's last character.</summary>
    public int EndColumn { get; }
}
