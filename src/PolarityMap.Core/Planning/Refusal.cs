using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Planning;

/// <summary>What kind of reason stands behind a refusal.</summary>
public enum RefusalCode
{
    /// <summary>The checker found something in the plant that was built anyway; the finding's code tells what.</summary>
    Finding,

    /// <summary>No cable in stock is long enough.</summary>
    Stock,

    /// <summary>The switches that are allowed have too few ports.</summary>
    Ports,

    /// <summary>One kind of cassette is asked for, and the method takes two.</summary>
    Cassettes,

    /// <summary>The array of the interface and that of the trunk do not go together.</summary>
    Array,

    /// <summary>The application is none that is planned.</summary>
    Application,

    /// <summary>The application later cannot be served from what is there now.</summary>
    Later,

    /// <summary>Parts would have the same names.</summary>
    Names,

    /// <summary>No trunk has as many legs as one cable needs.</summary>
    Legs,

    /// <summary>A cable would have no way to cover.</summary>
    Way,
}

/// <summary>A brief near to one that was refused, planned and found to be met as far as the refusal goes.</summary>
/// <param name="Words">What is changed, as the brief would write it.</param>
/// <param name="Brief">The brief with nothing else changed.</param>
/// <param name="Candidate">The candidate that meets it.</param>
public sealed record NearestBrief(string Words, Brief Brief, PlanCandidate Candidate);

/// <summary>A requirement of a brief that cannot be met.</summary>
/// <param name="Requirement">The path of its key in the brief, such as <c>fibre</c> or <c>rooms.Stage.distance</c>.</param>
/// <param name="Code">What kind of reason it is.</param>
/// <param name="Reason">Why, one sentence without a full stop.</param>
public sealed record Refusal(string Requirement, RefusalCode Code, string Reason)
{
    /// <summary>The code of the finding that says so, or null.</summary>
    public string? Finding { get; init; }

    /// <summary>What can be met instead, the least change first; each changes one thing and was planned. Empty where nothing was found.</summary>
    public IReadOnlyList<NearestBrief> Nearest { get; init; } = [];

    /// <summary>The length of cable that would be needed, where that is what is missing.</summary>
    internal Length Needed { get; init; }

    /// <summary>The number that would be needed, where that is what is missing.</summary>
    internal int Number { get; init; }

    /// <summary>True when another refusal is for the same reason, whatever its words.</summary>
    public bool IsLike(Refusal other) => Code == other.Code && Finding == other.Finding && Requirement == other.Requirement;
}
