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

/// <summary>Plugs side by side at one part: of one face, on one side, all of cords or all of cables that stay; in the order of the ports.</summary>
/// <param name="Seats">The plugs.</param>
internal sealed record SeatRow(Seat[] Seats)
{
    /// <summary>
    /// How many places to either side a hand is thought to miss by. Rows of ports up to this long are one unit; longer ones do not
    /// exist in one housing (common practice).
    /// </summary>
    public const int Reach = 144;

    /// <summary>The first place that can be taken for one.</summary>
    public static int First(int index) => Math.Max(0, index - Reach);

    /// <summary>The place after the last that can be taken for one.</summary>
    public int End(int index) => Math.Min(Seats.Length, index + Reach + 1);

    /// <summary>The share of one exchange in the weight of all that a plug of this row can be in.</summary>
    public double Share => 1.0 / Math.Max(1, Math.Min(Seats.Length - 1, 2 * Reach));
}
