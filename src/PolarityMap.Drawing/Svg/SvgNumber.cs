using System.Buffers.Binary;
using System.Globalization;

namespace PolarityMap.Drawing.Svg;

/// <summary>Numbers with at most three decimals: a thousandth of a millimetre is finer than any print.</summary>
internal static class SvgNumber
{
    private const double Limit = 1e9;

    /// <summary>Appends a number without trailing zeros, without exponent, and never as minus zero.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite or is beyond any sheet.</exception>
    internal static void Append(Utf8Text output, double value) => output.Advance(Write(value, output.Reserve(MostBytes)));

    /// <summary>Writes a number into room for <see cref="MostBytes"/>; returns how many bytes it takes.</summary>
    /// <inheritdoc cref="Append"/>
    internal static int Write(double value, Span<byte> room)
    {
        if (!(Math.Abs(value) < Limit))
            throw new ArgumentOutOfRangeException(nameof(value), value, "A length on a sheet is a finite number of millimetres.");

        // A half is rounded away from zero, where the base library's rounding is many times slower.
        double scaled = value * 1000;
        return Write((long)(scaled + (scaled < 0 ? -0.5 : 0.5)), room);
    }

    /// <summary>Sign, ten digits, point, three digits, and what a store of four bytes may reach beyond.</summary>
    internal const int MostBytes = 20;

    /// <summary>For each number below a thousand its three digits, the first in the lowest byte, and above them how many are left without zeros at the end.</summary>
    private static readonly uint[] s_digits = Digits();

    private static uint[] Digits()
    {
        var digits = new uint[1000];
        for (uint n = 0; n < digits.Length; n++)
        {
            uint left = n % 10 > 0 ? 3u : n % 100 > 0 ? 2u : 1u;
            digits[n] = ('0' + (n / 100)) | (('0' + (n / 10 % 10)) << 8) | (('0' + (n % 10)) << 16) | (left << 24);
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

        // Three digits go out as four bytes in one step; what comes next overwrites those that are too many.
        uint whole = (uint)((ulong)thousandths / 1000);
        uint fraction = (uint)((ulong)thousandths - ((ulong)whole * 1000));
        if (whole < 1000)
        {
            int zeros = whole < 10 ? 2 : whole < 100 ? 1 : 0;
            BinaryPrimitives.WriteUInt32LittleEndian(room[length..], s_digits[whole] >> (8 * zeros));
            length += 3 - zeros;
        }
        else
        {
            whole.TryFormat(room[length..], out int digits, default, CultureInfo.InvariantCulture);
            length += digits;
        }

        if (fraction == 0)
            return length;
        uint entry = s_digits[fraction];
        room[length] = (byte)'.';
        BinaryPrimitives.WriteUInt32LittleEndian(room[(length + 1)..], entry);
        return length + 1 + (int)(entry >> 24);
    }

    /// <summary>The number as it is written, in thousandths: two that are equal here look equal in the file.</summary>
    internal static long Thousandths(double value) => (long)Math.Floor((value * 1000) + 0.5);
}
