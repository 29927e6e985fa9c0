using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies;

/// <summary>
/// One of the things that installers do to put a plant right. A kind is data: where it can be done, what it changes, and the
/// work it makes. One file each, listed in <see cref="ChangeCatalogue"/>.
/// </summary>
public abstract class ChangeKind
{
    /// <summary>Its short name in files, such as <c>other-cord</c>.</summary>
    public abstract string Name { get; }

    /// <summary>What is done, in a few words.</summary>
    public abstract string Title { get; }

    /// <summary>Where facts about it come from. No published figures for the work were found.</summary>
    public virtual string Source => "common practice";

    /// <summary>What to mind while doing it beside what holds for all work on fibre; null for nothing more.</summary>
    public virtual string? Caution => null;

    /// <summary>True for a kind that is worth trying where only a look at parts and plugs tells the fault, as at two polishes that meet.</summary>
    public abstract bool MayClear(Rule rule);

    /// <summary>Every change of this kind that makes a part another one.</summary>
    public virtual IEnumerable<Change> AtPart(ChangeContext context, int part) => [];

    /// <summary>Every change of this kind to what is plugged in at a port, where the ports of its part are few.</summary>
    public virtual IEnumerable<Change> AtPort(ChangeContext context, PortRef port) => [];

    /// <summary>
    /// Every change of this kind that leads light from one way into another, where the ports of a part may be many.
    /// </summary>
    /// <param name="context">The plant.</param>
    /// <param name="way">The positions of the strand from the end that is led wrong.</param>
    /// <param name="meant">The positions of the strand from the end that it is meant to reach.</param>
    public virtual IEnumerable<Change> Toward(ChangeContext context, IReadOnlyList<int> way, IReadOnlyList<int> meant) => [];
}
