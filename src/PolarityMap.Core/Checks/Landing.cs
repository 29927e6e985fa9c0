using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks;

/// <summary>Where the strand of one lane comes out.</summary>
/// <param name="Start">The lane's own position.</param>
/// <param name="Lane">The lane.</param>
/// <param name="Strand">Its strand.</param>
/// <param name="End">The position at the strand's other end; equal to <paramref name="Start"/> where nothing is plugged in.</param>
/// <param name="EndPort">The port of that position.</param>
/// <param name="EndLane">The lane there, or null where the strand ends outside an interface.</param>
public readonly record struct Landing(int Start, Lane Lane, int Strand, int End, PortRef EndPort, Lane? EndLane)
{
    /// <summary>True when something is plugged in.</summary>
    public bool IsWired => End != Start;

    /// <summary>True when the strand meets a lane that does the same as this one.</summary>
    public bool MeetsSame => EndLane is { } far && far.Direction == Lane.Direction;
}
