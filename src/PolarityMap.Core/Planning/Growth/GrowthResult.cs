using PolarityMap.Core.Checks;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>How a plant grows to meet a brief, or why it cannot.</summary>
/// <param name="Brief">The new brief.</param>
/// <param name="Before">The existing plant with its findings.</param>
public sealed record GrowthResult(Brief Brief, CheckReport Before)
{
    /// <summary>How it is built on, or null where it is not.</summary>
    public PlanCandidate? Candidate { get; init; }

    /// <summary>Why it is not, where that is not for what the brief asks; else null.</summary>
    public string? Reason { get; init; }

    /// <summary>Where the brief itself cannot be met: what the planner says of it.</summary>
    public PlanResult? Refused { get; init; }

    public GrowthDifference? Difference { get; init; }

    /// <summary>The plant afterwards, proven, as a document would have it.</summary>
    public PlanProof? After { get; init; }

    /// <summary>What is to be known besides: what the brief says otherwise than the plant and does not change.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>Findings that the plant has afterwards and had not before.</summary>
    public IReadOnlyList<Finding> Raised { get; init; } = [];

    /// <summary>True where <see cref="After"/> can be written as a document; a plant by hand may have what the planner's style cannot say.</summary>
    public bool IsWritable { get; init; }

    public IReadOnlyList<GrowthStep> Steps { get; init; } = [];

    /// <summary>Fibres of laid cables that carry a link and that carry none, before.</summary>
    public FibreCount FibresBefore { get; init; }

    /// <summary>The same afterwards.</summary>
    public FibreCount FibresAfter { get; init; }

    /// <summary>How many ways of building on were made and compared.</summary>
    public int Compared { get; init; }

    /// <summary>True when the new brief is met and every step on the way is proven.</summary>
    public bool IsMet => After is { Report: { } report } && Raised.Count == 0 && report.Proven == report.Traced.Plant.Links.Count && Steps.All(s => s.Proven == s.Live.Count && s.Errors.Count == 0);

    /// <summary>The sum over the steps of the links that are dark in them.</summary>
    public int DarkLinkSteps => Steps.Sum(s => s.Dark.Count);
}

/// <summary>Fibres of laid cables.</summary>
/// <param name="Used">That carry a link.</param>
/// <param name="Idle">That carry none.</param>
public readonly record struct FibreCount(int Used, int Idle);
