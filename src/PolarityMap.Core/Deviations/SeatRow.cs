namespace PolarityMap.Core.Deviations;

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
