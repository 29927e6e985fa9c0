using System.Buffers.Binary;
using System.IO.Compression;
using ImageMagick;
using PolarityMap.Acceptance.Renderers;
using PolarityMap.Drawing.Scene;
using Xunit;

namespace PolarityMap.Export.Tests.Png;

public sealed class PngFileTests
{
    // An inch is 25.4 mm: A4 at 300 dots per inch is 2480 by 3508, as every scanner makes it.
    [Theory]
    [InlineData(210, 297, 300, 2480, 3508)]
    [InlineData(210, 297, 72, 595, 842)]
    [InlineData(25.4, 50.8, 600, 600, 1200)]
    [InlineData(0.01, 0.01, 72, 1, 1)]
    public void A_picture_has_as_many_pixels_as_its_size_and_resolution_say(double widthMm, double heightMm, int dpi, uint width, uint height)
    {
        using var image = new MagickImage(Decoded.Bytes(Sheets.Of(widthMm, heightMm), dpi));
        Assert.Equal((width, height), (image.Width, image.Height));
        Assert.True(image.IsOpaque);
    }

    [Theory]
    [InlineData(72)]
    [InlineData(300)]
    [InlineData(600)]
    public void The_file_states_its_resolution(int dpi)
    {
        using var image = new MagickImage(Decoded.Bytes(Sheets.Of(10, 10), dpi));
        Density density = image.Density.ChangeUnits(DensityUnit.PixelsPerInch);
        Assert.Equal(dpi, density.X, 0.02);
        Assert.Equal(dpi, density.Y, 0.02);
    }

    // PNG specification: a chunk is length, type, content and a CRC-32 of type and content. The oracle for the sum is gzip, which
    // ends in the same CRC-32 of what it packs (RFC 1952). Before the pixels pHYs must have stood.
    [Fact]
    public void Every_chunk_has_the_right_check_sum_and_the_resolution_stands_before_the_pixels()
    {
        byte[] png = Decoded.Bytes(Sheets.Every, 72);
        var types = new List<string>();
        for (int at = 8; at < png.Length;)
        {
            int length = BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at));
            ReadOnlySpan<byte> summed = png.AsSpan(at + 4, 4 + length);
            types.Add(System.Text.Encoding.ASCII.GetString(summed[..4]));
            Assert.Equal(Crc(summed), BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(at + 8 + length)));
            at += 12 + length;
        }

        Assert.Equal("IHDR", types[0]);
        Assert.Equal("IEND", types[^1]);
        Assert.InRange(types.IndexOf("pHYs"), 1, types.IndexOf("IDAT") - 1);
    }

    [Fact]
    public void Equal_sheets_give_equal_bytes() => Assert.Equal(Decoded.Bytes(Sheets.Every, 150), Decoded.Bytes(Sheets.Every, 150));

    [Fact]
    public void The_paper_is_white_to_its_last_pixel()
    {
        // 100.3 mm at 72 dots per inch are 284.3 pixels, 100.4 mm are 284.6: rounded down and up.
        foreach (double side in (double[])[100.3, 100.4])
            Assert.All(Decoded.Picture(Sheets.Of(side, side), 72).Pixels, p => Assert.Equal(255, p));
    }

    // The lines of a long sheet stay where they are, far beyond the 32,767 pixels at which some renderers give up.
    [Fact]
    public void A_long_sheet_is_drawn_to_its_far_end()
    {
        Picture picture = Decoded.Picture(Sheets.Of(4000, 5, new Line(3990, 0, 3990, 5, Palette.Ink, 2), new Line(0, 2.5, 4000, 2.5, Palette.Ink, 1)), 300);
        Assert.Equal((47244, 59), (picture.Width, picture.Height));
        Assert.Equal((0x22, 0x22, 0x22), picture.At((int)(3990 / 25.4 * 300), 5));
        Assert.Equal((255, 255, 255), picture.At((int)(3988 / 25.4 * 300), 5));
        Assert.Equal((0x22, 0x22, 0x22), picture.At(picture.Width - 1, 29));
    }

    [Theory]
    [InlineData(71)]
    [InlineData(601)]
    [InlineData(0)]
    [InlineData(-300)]
    public void Another_resolution_is_refused(int dpi)
    {
        using var output = new MemoryStream();
        ArgumentOutOfRangeException thrown = Assert.Throws<ArgumentOutOfRangeException>(() => PngFile.Write(Sheets.Every, dpi, output));
        Assert.Contains("72 to 600", thrown.Message, StringComparison.Ordinal);
        Assert.Equal(0, output.Length);
    }

    // 14 m by 297 mm are 165,354 by 3508 pixels at 300 dots per inch, 580 million; at 249 they are just under 400 million.
    [Theory]
    [InlineData(14_000, 297, 300, "a picture of 165354 by 3508 pixels is 581 megapixels; at most 400 are drawn: choose 249 dots per inch or fewer")]
    [InlineData(100_000, 100_000, 72, "are drawn: write this sheet as SVG or PDF")]
    public void A_picture_that_no_memory_takes_is_refused_in_words(double widthMm, double heightMm, int dpi, string words)
    {
        using var output = new MemoryStream();
        PictureTooLargeException thrown = Assert.Throws<PictureTooLargeException>(() => PngFile.Write(Sheets.Of(widthMm, heightMm), dpi, output));
        Assert.Contains(words, thrown.Message, StringComparison.Ordinal);
        Assert.Equal(0, output.Length);
    }

    [Theory]
    [InlineData(0, 100)]
    [InlineData(100, -1)]
    [InlineData(double.NaN, 100)]
    [InlineData(100, double.PositiveInfinity)]
    public void A_sheet_without_a_size_is_refused(double widthMm, double heightMm) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PngFile.Write(Sheets.Of(widthMm, heightMm), 300, Stream.Null));

    private static uint Crc(ReadOnlySpan<byte> bytes)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Fastest, leaveOpen: true))
            gzip.Write(bytes);
        return BinaryPrimitives.ReadUInt32LittleEndian(packed.ToArray().AsSpan()[^8..]);
    }
}
