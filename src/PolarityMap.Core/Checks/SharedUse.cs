using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks;

/// <summary>What the networks' policies say of something that several of them share.</summary>
public enum SharingVerdict
{
    /// <summary>Every network that shares it may.</summary>
    Allowed,

    /// <summary>No network forbids it, and at least one does not say what it may share.</summary>
    NotStated,

    /// <summary>The policy of at least one network forbids it.</summary>
    Against,

    /// <summary>It is shared only through strands that left their network or join two, which are findings of their own.</summary>
    Astray,
}

/// <summary>The words for <see cref="SharingVerdict"/>.</summary>
public static class SharingVerdictWords
{
    public static string Word(this SharingVerdict verdict) => verdict switch
    {
        SharingVerdict.Allowed => "allowed",
        SharingVerdict.NotStated => "not stated",
        SharingVerdict.Against => "against the policy",
        _ => "strands astray",
    };
}

/// <summary>One sheath, cassette, array connector or panel that several networks share.</summary>
/// <param name="Part">The part; of an array connector the one whose port comes first.</param>
/// <param name="Port">The port of an array connector, else null.</param>
/// <param name="Mating">The mating of an array connector, or null where nothing is mated to it.</param>
/// <param name="Strands">For each network one strand that brings it here, where one does.</param>
public sealed record SharedUse(int Part, PortRef? Port, Mating? Mating, IReadOnlyList<int> Strands);

/// <summary>What is shared in the same way and described at the same place of the document, such as sixteen cables of one line.</summary>
/// <param name="Place">What is shared.</param>
/// <param name="Networks">The networks that share it, as indices in rising order.</param>
/// <param name="Astray">Further networks, there only by strands that left their network or join two.</param>
/// <param name="Source">The place in the document: of the parts, or of the stop that makes the matings.</param>
public sealed record SharedGroup(SharedPlace Place, IReadOnlyList<int> Networks, IReadOnlyList<int> Astray, SourcePlace Source)
{
    /// <summary>What is shared, in the order of the plant; at least one.</summary>
    public IReadOnlyList<SharedUse> Uses { get; internal init; } = [];

    public SharingVerdict Verdict { get; internal init; }

    /// <summary>The networks whose policy forbids it.</summary>
    public IReadOnlyList<int> ForbiddenBy { get; internal init; } = [];
}
