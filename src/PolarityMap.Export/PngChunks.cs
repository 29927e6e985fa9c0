using System.Buffers.Binary;

namespace PolarityMap.Export;

/// <summary>Adds to a PNG the chunk that the graphics package does not write: its resolution.</summary>
/// <remarks>PNG specification (W3C): 5.3 chunk layout, 11.3.4.3 pHYs, annex D the check sum.</remarks>
internal static class PngChunks
{
    // Signature of 8 bytes, then the header chunk: length, type, 13 bytes, check sum. It is always the first.
    private const int EndOfHeader = 8 + 4 + 4 + 13 + 4;

    /// <summary>Writes the picture with a pHYs chunk behind its header.</summary>
    public static void WriteWithResolution(ReadOnlySpan<byte> png, int dotsPerInch, Stream output)
    {
        Span<byte> chunk = stackalloc byte[4 + 4 + 9 + 4];
        BinaryPrimitives.WriteInt32BigEndian(chunk, 9);
        "pHYs"u8.CopyTo(chunk[4..]);
        int perMetre = (int)Math.Round(dotsPerInch / 0.0254, MidpointRounding.AwayFromZero);
        BinaryPrimitives.WriteInt32BigEndian(chunk[8..], perMetre);
        BinaryPrimitives.WriteInt32BigEndian(chunk[12..], perMetre);
        chunk[16] = 1; // The unit is the metre.
        BinaryPrimitives.WriteUInt32BigEndian(chunk[17..], CheckSum(chunk[4..17]));
        output.Write(png[..EndOfHeader]);
        output.Write(chunk);
        output.Write(png[EndOfHeader..]);
    }

    private static uint CheckSum(ReadOnlySpan<byte> bytes)
    {
        uint sum = uint.MaxValue;
        foreach (byte b in bytes)
        {
            sum ^= b;
            for (int bit = 0; bit < 8; bit++)
                sum = (sum & 1) == 0 ? sum >> 1 : (sum >> 1) ^ 0xEDB88320;
        }

        return ~sum;
    }
}
