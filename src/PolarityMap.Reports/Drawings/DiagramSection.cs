using PolarityMap.Reports.Model;

namespace PolarityMap.Reports.Drawings;

/// <summary>The strand diagram of a page, with what it needs of style and script.</summary>
/// <param name="Html">A <c>section</c> with the id <c>diagram</c>.</param>
/// <param name="Style">Its style sheet.</param>
/// <param name="Script">Its script; empty without one.</param>
public sealed record DiagramSection(Markup Html, string Style, string Script);
