using System.Globalization;

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
        output.Advance(Write(thousandths, output.Reserve(MostBytes)));
    }

    /// <summary>Sign, ten digits, point, three digits, and what a store of four bytes may reach beyond.</summary>
    internal const int MostBytes = 20;

    /// <summary>For each number below a thousand its three digits, and how many of them are left without zeros at the end.</summary>
    private static readonly byte[] s_digits = Digits();

    private static byte[] Digits()
    {
        var digits = new byte[4 * 1000];
        for (int n = 0; n < 1000; n++)
        {
            digits[4 * n] = (byte)('0' + (n / 100));
            digits[(4 * n) + 1] = (byte)('0' + (n / 10 % 10));
            digits[(4 * n) + 2] = (byte)('0' + (n % 10));
            digits[(4 * n) + 3] = (byte)(n % 10 > 0 ? 3 : n % 100 > 0 ? 2 : 1);
        }

        return digits;
    }

    /// <summary>Writes thousandths; returns how many bytes it takes.</summary>
    private static int Write(long thousandths, Span<byte> room)
    {
        int length = 0;
        if (thousandths < 0)
        {
            room[length++] = (byte)'-';
            thousandths = -thousandths;
        }

        uint whole = (uint)((ulong)thousandths / 1000);
        uint fraction = (uint)((ulong)thousandths - ((ulong)whole * 1000));
        if (whole < 1000)
        {
            int zeros = whole < 10 ? 2 : whole < 100 ? 1 : 0;
            s_digits.AsSpan((int)(4 * whole) + zeros, 3 - zeros).CopyTo(room[length..]);
            length += 3 - zeros;
        }
        else
        {
            whole.TryFormat(room[length..], out int digits, default, CultureInfo.InvariantCulture);
            length += digits;
        }

        if (fraction == 0)
            return length;
        ReadOnlySpan<byte> entry = s_digits.AsSpan((int)(4 * fraction), 4);
        room[length] = (byte)'.';
        entry.CopyTo(room[(length + 1)..]);
        return length + 1 + entry[3];
    }

    /// <summary>The number as it is written, in thousandths: two that are equal here look equal in the file.</summary>
    internal static long Thousandths(double value) => (long)Math.Floor((value * 1000) + 0.5);
}
