namespace PolarityMap.Core.Remedies;

/// <summary>What a finding is about, by which it is known again in a plant that was changed.</summary>
internal enum SubjectKind : byte
{
    /// <summary>A lane of an interface, by its position.</summary>
    Lane,

    /// <summary>A link, by its index.</summary>
    Link,

    /// <summary>A part, a port or a mating of two ports.</summary>
    Site,

    /// <summary>Light of a lane in a part.</summary>
    LaneInPart,

    /// <summary>A line of the document.</summary>
    Line,
}

/// <summary>
/// One thing that a rule says something about. Positions, ports, parts and links keep their numbers when a plant is changed;
/// strands do not.
/// </summary>
/// <param name="Group">The rule, or the first of several that say the same in other words.</param>
/// <param name="Kind">What the numbers are.</param>
/// <param name="A">The number, or the smaller of two.</param>
/// <param name="B">The second number, or -1.</param>
internal readonly record struct Subject(int Group, SubjectKind Kind, int A, int B = -1)
{
    /// <summary>Written out, since subjects are looked up by the thousand for each proof and what is made for records is a call for each field.</summary>
    public bool Equals(Subject other) => A == other.A && B == other.B && Group == other.Group && Kind == other.Kind;

    public override int GetHashCode() => unchecked((((A * 31) + B) * 397) ^ ((Group << 8) + (int)Kind));
}
