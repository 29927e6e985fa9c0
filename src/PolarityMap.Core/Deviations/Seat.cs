using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations;

/// <summary>A plug where it sits.</summary>
/// <param name="plug">The end of a cord, trunk or harness.</param>
/// <param name="socket">The port of a part that is no cable, or the adapter.</param>
/// <param name="mating">Index of the mating.</param>
internal sealed class Seat(PortRef plug, PortRef socket, int mating)
{
    public PortRef Plug { get; } = plug;

    public PortRef Socket { get; } = socket;

    public int Mating { get; } = mating;

    /// <summary>The position of the socket that a simplex plug takes; 0 for the whole.</summary>
    public int Position { get; init; }

    /// <summary>
    /// At the front of the part. Of two plugs in an adapter a cord is in front of a cable that stays; of two alike, the one that
    /// the run names first.
    /// </summary>
    public bool IsFront { get; init; }

    /// <summary>True for the plug of a cord, which hands move; other cables stay where they are laid.</summary>
    public bool IsCord { get; init; }

    /// <summary>The plugs that it can be taken for.</summary>
    public SeatRow Row { get; internal set; } = null!;

    /// <summary>Its place in <see cref="Row"/>.</summary>
    public int Index { get; internal set; }
}
