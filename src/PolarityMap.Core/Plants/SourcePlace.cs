namespace PolarityMap.Core.Plants;

/// <summary>
/// A place in a document: file as the user named it, line and column counted from 1; line 0 is the document as a whole.
/// A column counts UTF-16 code units, as most editors do, and a tab counts as one.
/// </summary>
public readonly record struct SourcePlace(string File, int Line, int Column)
{
    /// <summary>The usual form <c>file:line:column</c>.</summary>
    public override string ToString() => Line == 0 ? File : $"{File}:{Line}:{Column}";
}
