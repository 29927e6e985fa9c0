using System.Globalization;

namespace PolarityMap.Core.Optics;

/// <summary>The loss of a cabled fibre per length, in decibels per kilometre. Never negative where it was read.</summary>
/// <param name="DecibelPerKm">The number of decibels per kilometre.</param>
public readonly record struct Attenuation(decimal DecibelPerKm) : IComparable<Attenuation>
{
    /// <summary>The largest attenuation that <see cref="TryParse"/> accepts, in decibels per kilometre.</summary>
    public const int MostRead = 100;

    private const decimal MillimetresPerKm = 1_000_000m;

    public static bool operator <(Attenuation left, Attenuation right) => left.DecibelPerKm < right.DecibelPerKm;

    public static bool operator >(Attenuation left, Attenuation right) => left.DecibelPerKm > right.DecibelPerKm;

    public static bool operator <=(Attenuation left, Attenuation right) => left.DecibelPerKm <= right.DecibelPerKm;

    public static bool operator >=(Attenuation left, Attenuation right) => left.DecibelPerKm >= right.DecibelPerKm;

    /// <summary>The loss of <paramref name="length"/> of this fibre, exact.</summary>
    public Decibel Over(Length length) => new(DecibelPerKm * length.Millimetres / MillimetresPerKm);

    /// <summary>
    /// Reads an attenuation such as <c>3.0 dB/km</c>, from 0 to <see cref="MostRead"/>. A number without its unit is
    /// refused, and <paramref name="why"/> then says which unit to add.
    /// </summary>
    public static bool TryParse(string text, out Attenuation attenuation, out string why)
    {
        bool read = Quantity.TryRead(text, "an attenuation", "dB/km", "3.0 dB/km", MostRead, out decimal number, out why);
        attenuation = read ? new Attenuation(number) : default;
        return read;
    }

    /// <inheritdoc/>
    public int CompareTo(Attenuation other) => DecibelPerKm.CompareTo(other.DecibelPerKm);

    /// <summary>One decimal, or two or three where it has them, such as <c>3.5 dB/km</c>.</summary>
    public override string ToString() => DecibelPerKm.ToString("0.0##", CultureInfo.InvariantCulture) + " dB/km";
}
