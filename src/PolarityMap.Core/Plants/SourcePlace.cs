namespace PolarityMap.Core.Plants;

/// <summary>A place in a document: file as the user named it, line and column counted from 1.</summary>
public readonly record struct SourcePlace(string File, int Line, int Column)
{
    /// <summary>The usual form <c>file:line:column</c>.</summary>
    public override string ToString() => $"{File}:{Line}:{Column}";
}
