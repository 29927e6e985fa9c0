using System.Text;

namespace PolarityMap.Drawing.Svg;

/// <summary>Numbers with at most three decimals: a thousandth of a millimetre is finer than any print.</summary>
internal static class SvgNumber
{
    private const double Limit = 1e9;

    /// <summary>Appends a number without trailing zeros, without exponent, and never as minus zero.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite or is beyond any sheet.</exception>
    internal static void Append(StringBuilder output, double value)
    {
        if (!(Math.Abs(value) < Limit))
            throw new ArgumentOutOfRangeException(nameof(value), value, "A length on a sheet is a finite number of millimetres.");
        long thousandths = (long)Math.Round(value * 1000, MidpointRounding.AwayFromZero);
        ulong rest = (ulong)Math.Abs(thousandths);

        // Digits are found from the right; a zero is kept only left of a kept digit or of the point.
        Span<char> digits = stackalloc char[16];
        int start = digits.Length;
        for (int place = 0; rest > 0 || place <= 3; place++)
        {
            (rest, ulong digit) = Math.DivRem(rest, 10);
            if (place == 3 && start < digits.Length)
                digits[--start] = '.';
            if (place >= 3 || digit > 0 || start < digits.Length)
                digits[--start] = (char)('0' + digit);
        }

        if (thousandths < 0)
            digits[--start] = '-';
        output.Append(digits[start..]);
    }
}
