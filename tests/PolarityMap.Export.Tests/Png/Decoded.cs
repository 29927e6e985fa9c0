using ImageMagick;
using PolarityMap.Acceptance.Renderers;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Export.Tests.Png;

/// <summary>A written PNG, read back by a library that shares no code with what wrote it.</summary>
internal static class Decoded
{
    public static byte[] Bytes(DrawingSheet sheet, int dotsPerInch)
    {
        using var output = new MemoryStream();
        PngFile.Write(sheet, dotsPerInch, output);
        return output.ToArray();
    }

    public static Picture Picture(DrawingSheet sheet, int dotsPerInch)
    {
        using var image = new MagickImage(Bytes(sheet, dotsPerInch));
        using IPixelCollection<byte> pixels = image.GetPixels();
        return new Picture((int)image.Width, (int)image.Height, pixels.ToByteArray(PixelMapping.RGB)!);
    }
}
