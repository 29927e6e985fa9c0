using System.Globalization;

namespace PolarityMap.Core.Optics;

/// <summary>
/// A loss, or a difference of losses such as a margin, in decibels. The number is an exact decimal, so that sums of
/// printed figures equal the printed sum; only <see cref="ToString"/> rounds. Differences may be negative.
/// </summary>
/// <param name="Value">The number of decibels.</param>
public readonly record struct Decibel(decimal Value) : IComparable<Decibel>
{
    /// <summary>The largest loss that <see cref="TryParse"/> accepts, in decibels: beyond it no light is left to speak of.</summary>
    public const int MostRead = 100;

    /// <summary>No loss.</summary>
    public static Decibel Zero => default;

    public static Decibel operator +(Decibel left, Decibel right) => new(left.Value + right.Value);

    public static Decibel operator -(Decibel left, Decibel right) => new(left.Value - right.Value);

    public static Decibel operator -(Decibel value) => new(-value.Value);

    public static Decibel operator *(Decibel value, int times) => new(value.Value * times);

    public static Decibel operator *(int times, Decibel value) => new(value.Value * times);

    public static bool operator <(Decibel left, Decibel right) => left.Value < right.Value;

    public static bool operator >(Decibel left, Decibel right) => left.Value > right.Value;

    public static bool operator <=(Decibel left, Decibel right) => left.Value <= right.Value;

    public static bool operator >=(Decibel left, Decibel right) => left.Value >= right.Value;

    /// <summary>The greater of two.</summary>
    public static Decibel Max(Decibel a, Decibel b) => a >= b ? a : b;

    /// <summary>The smaller of two.</summary>
    public static Decibel Min(Decibel a, Decibel b) => a <= b ? a : b;

    /// <summary>
    /// Reads a loss such as <c>0.35 dB</c>, from 0 to <see cref="MostRead"/>. A number without its unit is refused, and
    /// <paramref name="why"/> then says which unit to add.
    /// </summary>
    public static bool TryParse(string text, out Decibel d, out string why)
    {
        bool read = Quantity.TryRead(text, "a loss", "dB", "0.35 dB", MostRead, out decimal number, out why);
        d = read ? new Decibel(number) : default;
        return read;
    }

    /// <inheritdoc/>
    public int CompareTo(Decibel other) => Value.CompareTo(other.Value);

    /// <summary>Two decimals, halves rounded away from zero, such as <c>0.35 dB</c>. What rounds to nothing has no sign.</summary>
    public override string ToString()
    {
        decimal rounded = Math.Round(Value, 2, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0m : rounded).ToString("0.00", CultureInfo.InvariantCulture) + " dB";
    }
}
