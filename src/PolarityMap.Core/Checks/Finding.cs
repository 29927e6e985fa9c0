using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks;

/// <summary>How much a finding matters.</summary>
public enum Severity
{
    /// <summary>Nothing that a rule finds: a place that a drawing points at, such as a suspect part.</summary>
    Note,

    /// <summary>Worth a look; the plant may still be right.</summary>
    Warning,

    /// <summary>The plant does not do what it is for.</summary>
    Error,
}

/// <summary>Something to do that was proved to clear a finding.</summary>
/// <param name="Text">What to do.</param>
/// <param name="Proof">What was proved of it.</param>
/// <param name="Part">Index of the part to change, or <see cref="NoPart"/> where it stays as it is.</param>
public sealed record Remedy(string Text, string Proof, int Part)
{
    /// <summary>For what changes no part, such as cleaning.</summary>
    public const int NoPart = -1;

    /// <summary>Indices of further parts that are changed with it; without them it clears nothing.</summary>
    public IReadOnlyList<int> With { get; init; } = [];

    /// <summary>True where light then goes another way through the part; false where plugs go elsewhere and the part stays what it is.</summary>
    public bool IsInside { get; init; } = true;

    /// <summary>All parts to change, as drawings mark them.</summary>
    public IEnumerable<int> Parts => With.Prepend(Part);
}

/// <summary>One statement of the checker.</summary>
/// <param name="Rule">The rule that made it; it carries code, title and severity.</param>
/// <param name="Place">The place in the document that says what is meant, or where the strand begins.</param>
/// <param name="Message">One sentence on what is wrong, with addresses.</param>
/// <param name="Expected">What should be, in words.</param>
/// <param name="Actual">What is, in words.</param>
public sealed record Finding(Rule Rule, SourcePlace Place, string Message, string Expected, string Actual)
{
    /// <summary>The strands it is about, in the order in which they are shown.</summary>
    public IReadOnlyList<int> Strands { get; init; } = [];

    /// <summary>Other places in the document that have to do with it.</summary>
    public IReadOnlyList<SourcePlace> Related { get; init; } = [];

    /// <summary>Where in the plant it is, as far as its rule knows; empty where only the far end tells that something is wrong.</summary>
    public IReadOnlyList<FindingSite> At { get; init; } = [];

    /// <summary>Links it refutes, as indices into the plant's links.</summary>
    public IReadOnlyList<int> Links { get; init; } = [];

    /// <summary>What was proved to clear it, each by itself; most findings have none.</summary>
    public IReadOnlyList<Remedy> Remedies { get; init; } = [];
}
