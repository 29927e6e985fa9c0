namespace PolarityMap.Core.Optics;

/// <summary>A length of cable or cord. Never negative; kept in whole millimetres so that sums are exact.</summary>
public readonly record struct Length : IComparable<Length>
{
    /// <summary>The longest length accepted: 1,000 km.</summary>
    public const long MaxMillimetres = 1_000_000_000;

    private Length(long millimetres) => Millimetres = millimetres;

    /// <summary>The length in millimetres.</summary>
    public long Millimetres { get; }

    /// <summary>The length in metres.</summary>
    public double Metres => Millimetres / 1000.0;

    /// <summary>Makes a length from millimetres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below zero or above <see cref="MaxMillimetres"/>.</exception>
    public static Length FromMillimetres(long millimetres) =>
        millimetres is >= 0 and <= MaxMillimetres
            ? new Length(millimetres)
            : throw new ArgumentOutOfRangeException(nameof(millimetres));

    /// <summary>
    /// Reads a length such as <c>62 m</c>, <c>1.5m</c>, <c>30 cm</c>, <c>0.2 km</c> or <c>10 ft</c>.
    /// A number without a unit is refused: <paramref name="why"/> then says which unit to add.
    /// </summary>
    public static bool TryParse(string text, out Length length, out string why)
    {
        length = default;
        if (!Quantity.TrySplit(text, out decimal number, out ReadOnlySpan<char> digits, out ReadOnlySpan<char> unit))
        {
            why = text.AsSpan().TrimStart() is ['-' or '\u2212', ..] ? "a length is never negative" : "expected a number and a unit, such as '62 m'";
            return false;
        }

        decimal factor = unit switch { "mm" => 1, "cm" => 10, "m" => 1_000, "km" => 1_000_000, "ft" => 304.8m, _ => 0 };
        if (factor == 0)
        {
            why = unit switch
            {
                [] => $"a length needs its unit: write '{digits} m'",
                [',', ..] => $"unknown unit '{unit}'; expected m, cm, mm, km or ft, and decimals with a point",
                _ => $"unknown unit '{unit}'; expected m, cm, mm, km or ft",
            };
            return false;
        }

        if (number > MaxMillimetres / factor)
        {
            why = "a length of more than 1000 km is not accepted";
            return false;
        }

        length = new Length((long)Math.Round(number * factor));
        why = "";
        return true;
    }

    /// <inheritdoc/>
    public int CompareTo(Length other) => Millimetres.CompareTo(other.Millimetres);

    public static bool operator <(Length left, Length right) => left.CompareTo(right) < 0;

    public static bool operator >(Length left, Length right) => left.CompareTo(right) > 0;

    public static bool operator <=(Length left, Length right) => left.CompareTo(right) <= 0;

    public static bool operator >=(Length left, Length right) => left.CompareTo(right) >= 0;

    /// <summary>Metres with as many decimals as needed, such as <c>2 m</c> or <c>0.3 m</c>.</summary>
    public override string ToString() =>
        (Millimetres / 1000m).ToString("0.###", System.Globalization.CultureInfo.InvariantCulture) + " m";
}
