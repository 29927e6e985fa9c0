namespace PolarityMap.Drawing.Svg;

/// <summary>Numbers with at most three decimals: a thousandth of a millimetre is finer than any print.</summary>
internal static class SvgNumber
{
    private const double Limit = 1e9;

    /// <summary>Appends a number without trailing zeros, without exponent, and never as minus zero.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite or is beyond any sheet.</exception>
    internal static void Append(Utf8Text output, double value)
    {
        if (!(Math.Abs(value) < Limit))
            throw new ArgumentOutOfRangeException(nameof(value), value, "A length on a sheet is a finite number of millimetres.");

        // A half is rounded away from zero, where the base library's rounding is many times slower.
        double scaled = value * 1000;
        long thousandths = (long)(scaled + (scaled < 0 ? -0.5 : 0.5));
        ulong whole = (ulong)Math.Abs(thousandths);
        ulong fraction = whole % 1000;
        whole /= 1000;

        // Digits are found from the right; zeros at the end of the fraction are left out.
        Span<byte> digits = stackalloc byte[16];
        int start = digits.Length;
        if (fraction > 0)
        {
            int places = 3;
            while (fraction % 10 == 0)
            {
                fraction /= 10;
                places--;
            }

            for (; places > 0; places--, fraction /= 10)
                digits[--start] = (byte)('0' + (fraction % 10));
            digits[--start] = (byte)'.';
        }

        do
        {
            digits[--start] = (byte)('0' + (whole % 10));
            whole /= 10;
        }
        while (whole > 0);
        if (thousandths < 0)
            digits[--start] = (byte)'-';
        output.Append(digits[start..]);
    }

    /// <summary>The number as it is written, in thousandths: two that are equal here look equal in the file.</summary>
    internal static long Thousandths(double value) => (long)Math.Floor((value * 1000) + 0.5);
}
