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
        Span<byte> room = output.Reserve(MostBytes);
        int length = 0;
        if (thousandths < 0)
        {
            room[length++] = (byte)'-';
            thousandths = -thousandths;
        }

        ulong whole = (ulong)thousandths / 1000;
        uint fraction = (uint)((ulong)thousandths - (whole * 1000));
        length += Digits((uint)whole, room[length..]);
        if (fraction > 0)
        {
            // Zeros at the end of the fraction are left out.
            room[length++] = (byte)'.';
            room[length++] = (byte)('0' + (fraction / 100));
            uint rest = fraction % 100;
            if (rest > 0)
                room[length++] = (byte)('0' + (rest / 10));
            if (rest % 10 > 0)
                room[length++] = (byte)('0' + (rest % 10));
        }

        output.Advance(length);
    }

    /// <summary>Sign, ten digits, point, three digits.</summary>
    private const int MostBytes = 16;

    /// <summary>Writes a whole number; returns how many digits it has.</summary>
    private static int Digits(uint number, Span<byte> room)
    {
        int count = 1;
        for (uint n = number; n >= 10; n /= 10)
            count++;
        for (int i = count - 1; i >= 0; i--)
        {
            room[i] = (byte)('0' + (number % 10));
            number /= 10;
        }

        return count;
    }

    /// <summary>The number as it is written, in thousandths: two that are equal here look equal in the file.</summary>
    internal static long Thousandths(double value) => (long)Math.Floor((value * 1000) + 0.5);
}
