using System.Globalization;

namespace PolarityMap.Core.Planning;

/// <summary>A share in hundredths, such as <c>25 %</c>. From 0 to <see cref="Most"/>; 100 % of spare doubles what is planned.</summary>
/// <param name="Value">The number of hundredths.</param>
public readonly record struct Percentage(decimal Value)
{
    /// <summary>The largest share that is read, in hundredths.</summary>
    public const int Most = 400;

    /// <summary>Reads a share such as <c>25 %</c>; a number without its sign is refused, and <paramref name="why"/> says so.</summary>
    public static bool TryParse(string text, out Percentage share, out string why)
    {
        share = default;
        string trimmed = text.Trim();
        bool signed = trimmed.EndsWith('%');
        if (!decimal.TryParse(trimmed.TrimEnd('%').TrimEnd(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal number))
        {
            why = "expected a number and the sign %, such as '25 %'";
            return false;
        }

        why = !signed ? $"a share needs its sign: write '{number.ToString(CultureInfo.InvariantCulture)} %'" : number > Most ? $"a share of more than {Most} % is not accepted" : "";
        share = new Percentage(number);
        return why.Length == 0;
    }

    /// <summary>So many and this share more, rounded up.</summary>
    public int Over(int count) => checked((int)decimal.Ceiling(count * (100 + Value) / 100));

    public override string ToString() => Value.ToString("0.##", CultureInfo.InvariantCulture) + " %";
}
