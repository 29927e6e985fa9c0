namespace PolarityMap.Documents.Editing;

/// <summary>One line that an as-built section is to have.</summary>
/// <param name="Comment">What it is for, written above it; null for none.</param>
public abstract record OverlayEntry(string? Comment);

/// <summary>Attributes of a part that differ.</summary>
/// <param name="Part">Its name.</param>
/// <param name="Attributes">Each attribute with its value as a document writes it between braces.</param>
/// <param name="Comment">What it is for.</param>
public sealed record PartEntry(string Part, IReadOnlyList<(string Attribute, string Value)> Attributes, string? Comment) : OverlayEntry(Comment);

/// <summary>A line of one of the lists: two ports that are exchanged, a plug that is moved, pulled or put in.</summary>
/// <param name="List">The key of the list.</param>
/// <param name="Text">The line.</param>
/// <param name="Comment">What it is for.</param>
public sealed record ListEntry(string List, string Text, string? Comment) : OverlayEntry(Comment);
