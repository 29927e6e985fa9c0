using PolarityMap.Core.Deviations;

namespace PolarityMap.Core.Remedies;

/// <summary>What names a change: its kind, where it is made, and which of several it is there.</summary>
/// <param name="Kind">Index in <see cref="ChangeCatalogue.All"/>.</param>
/// <param name="At">A part or the number of a port, as the kind counts them.</param>
/// <param name="With">A second one, or -1.</param>
/// <param name="Variant">Tells variants at one place apart.</param>
public readonly record struct ChangeId(int Kind, int At, int With = -1, string Variant = "");

/// <summary>One thing that an installer can do to a plant.</summary>
/// <param name="Id">Its name among all.</param>
/// <param name="Kind">What is done.</param>
/// <param name="Parts">Indices of the parts at which something is done; the first is the one to mark on a drawing.</param>
/// <param name="Text">What to do, as one would tell an installer: <c>put an A-to-B cord in the place of cord C-7</c>.</param>
/// <param name="Differences">The same as differences, in the order in which they are laid.</param>
/// <param name="Patch">What it changes in the strand graph; empty where light goes the same way.</param>
/// <param name="Minutes">The work it makes. Common practice.</param>
public sealed record Change(ChangeId Id, ChangeKind Kind, IReadOnlyList<int> Parts, string Text, IReadOnlyList<Difference> Differences, GraphPatch Patch, int Minutes)
{
    /// <summary>How many things the hand does: a set of cords that are exchanged for others counts each of them.</summary>
    public int Weight { get; init; } = 1;

    /// <summary>What makes a part another one, so that two such changes of one part can be made one.</summary>
    internal IReadOnlyList<Setting> Settings { get; init; } = [];

    /// <summary>
    /// True when both can be done: they change neither the same position nor the same part. What one does to the work of the
    /// other, at one place, is not tried.
    /// </summary>
    public bool GoesWith(Change other) =>
        Id != other.Id && Patch.IsApartFrom(other.Patch) && !Differences.Any(d => other.Differences.Any(o => AtOnePlace(d, o)));

    private static bool AtOnePlace(Difference a, Difference b) => (a, b) switch
    {
        (PartDiffers one, PartDiffers two) => one.Part == two.Part,
        (PlugPut one, PlugPut two) => one.Plug == two.Plug || (one.Port == two.Port && one.Position == two.Position),
        _ => false,
    };
}
