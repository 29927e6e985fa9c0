using System.Globalization;

namespace PolarityMap.Core.Optics;

/// <summary>Takes a written quantity such as <c>0.35 dB</c> apart into its number and its unit.</summary>
internal static class Quantity
{
    /// <summary>
    /// Splits <paramref name="text"/> after its digits. False when it does not begin with an unsigned number; the number
    /// has a point, never a comma or an exponent.
    /// </summary>
    public static bool TrySplit(ReadOnlySpan<char> text, out decimal number, out ReadOnlySpan<char> digits, out ReadOnlySpan<char> unit)
    {
        ReadOnlySpan<char> span = text.Trim();
        int length = 0;
        while (length < span.Length && (char.IsAsciiDigit(span[length]) || span[length] == '.'))
            length++;
        digits = span[..length];
        unit = span[length..].Trim();
        number = 0;
        return length > 0 && decimal.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number);
    }

    /// <summary>
    /// Reads a number that must carry <paramref name="unit"/> and lie between 0 and <paramref name="most"/>.
    /// When it does not, <paramref name="why"/> says what to write instead.
    /// </summary>
    /// <param name="text">What is written.</param>
    /// <param name="noun">What is read, with its article, such as "a loss".</param>
    /// <param name="unit">The only unit accepted.</param>
    /// <param name="example">A right one, such as "0.35 dB".</param>
    /// <param name="most">The greatest number accepted.</param>
    /// <param name="number">The number read.</param>
    /// <param name="why">Empty when it was read.</param>
    public static bool TryRead(string text, string noun, string unit, string example, int most, out decimal number, out string why)
    {
        bool hasNumber = TrySplit(text, out number, out ReadOnlySpan<char> digits, out ReadOnlySpan<char> written);
        if (!hasNumber)
        {
            why = text.AsSpan().TrimStart() is ['-' or '\u2212', ..]
                ? $"{noun} is never negative"
                : $"expected a number and a unit, such as '{example}'";
            return false;
        }

        if (!written.SequenceEqual(unit))
        {
            why = written switch
            {
                [] => $"{noun} needs its unit: write '{digits} {unit}'",
                [',', ..] => $"unknown unit '{written}'; expected {unit}, and decimals with a point",
                _ => $"unknown unit '{written}'; expected {unit}",
            };
            return false;
        }

        if (number > most)
        {
            why = $"{noun} of more than {most} {unit} is not accepted";
            return false;
        }

        why = "";
        return true;
    }
}
