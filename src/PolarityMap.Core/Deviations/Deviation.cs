using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations;

/// <summary>
/// What names a deviation: its kind and where it is. An exchange is the same seen from either plug, so the smaller number
/// stands first.
/// </summary>
/// <param name="Kind">Index in <see cref="DeviationCatalogue.All"/>.</param>
/// <param name="At">A part, port or position, as the kind counts them.</param>
/// <param name="With">A second one, or -1.</param>
/// <param name="Variant">Tells variants at one place apart.</param>
public readonly record struct DeviationId(int Kind, int At, int With = -1, int Variant = 0);

/// <summary>One way in which a plant may be built other than described, at one place.</summary>
/// <param name="Id">Its name among all.</param>
/// <param name="Kind">What went wrong.</param>
/// <param name="Parts">Indices of the parts to look at; the first is the one to change.</param>
/// <param name="Text">One sentence on what is wrong, with names: <c>cord C-7 is A-to-A instead of A-to-B</c>.</param>
/// <param name="Differences">The same as differences; empty where only light is lost.</param>
/// <param name="Patch">What it changes in the strand graph; empty where light goes the same way.</param>
public sealed record Deviation(DeviationId Id, DeviationKind Kind, IReadOnlyList<int> Parts, string Text, IReadOnlyList<Difference> Differences, GraphPatch Patch)
{
    /// <summary>Positions at which light is lost beyond what is stated; empty when none is.</summary>
    public IReadOnlyList<int> Lossy { get; init; } = [];

    /// <summary>The part of the kind's weight that falls to it, where one place can be wrong in several ways: 0 to 1.</summary>
    public double Share { get; init; } = 1;

    /// <summary>How often it happens beside other deviations: the kind's weight times <see cref="Share"/>. Common practice.</summary>
    public double Weight => Kind.Weight * Share;

    /// <summary>What to do to put it right.</summary>
    public required string Mend { get; init; }

    /// <summary>A port to go to, for tests and drawings.</summary>
    public PortRef? Port { get; init; }

    /// <summary>
    /// True when two deviations can be there at once: they change neither the same position nor the same part. What two hands
    /// did to one place, one after the other, is not looked for.
    /// </summary>
    public bool GoesWith(Deviation other) =>
        Id != other.Id && Patch.IsApartFrom(other.Patch) && !Differences.Any(d => d is PartDiffers own && other.Differences.Any(o => o is PartDiffers its && its.Part == own.Part));
}
