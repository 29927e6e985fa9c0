using System.Globalization;
using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Budget;

/// <summary>The time that light takes along a strand, one way, in nanoseconds.</summary>
/// <param name="Nanoseconds">The number of nanoseconds.</param>
public readonly record struct Delay(decimal Nanoseconds)
{
    /// <summary>Metres that light goes in vacuum in a nanosecond.</summary>
    private const decimal MetresPerNanosecond = 0.299792458m;

    public static Delay operator +(Delay left, Delay right) => new(left.Nanoseconds + right.Nanoseconds);

    /// <summary>The delay of <paramref name="length"/> of a fibre with this group index.</summary>
    public static Delay Over(Length length, decimal groupIndex) => new(length.Millimetres / 1000m * groupIndex / MetresPerNanosecond);

    /// <summary>Whole nanoseconds, such as <c>459 ns</c>; below 10 one decimal.</summary>
    public override string ToString() => Nanoseconds.ToString(Nanoseconds < 9.95m ? "0.0" : "0", CultureInfo.InvariantCulture) + " ns";
}
