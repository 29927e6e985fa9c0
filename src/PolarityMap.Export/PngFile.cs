using PolarityMap.Drawing.Scene;
using SkiaSharp;

namespace PolarityMap.Export;

/// <summary>Writes one sheet as a PNG on white paper.</summary>
public static class PngFile
{
    public const int LeastDotsPerInch = 72;

    public const int MostDotsPerInch = 600;

    /// <summary>The most pixels of a picture: 400 million, which take 1.6 GB while it is drawn.</summary>
    public const long MostPixels = 400_000_000;

    // Compressing is most of the work. The lowest level takes half the time of the usual one, for a file a sixth larger.
    private const int CompressionLevel = 1;

    /// <summary>
    /// Writes the sheet in its true size: mm * dpi / 25.4 pixels, rounded, and the resolution stated in the file. Nothing is
    /// written when it fails.
    /// </summary>
    /// <param name="sheet">The sheet; its links are left out.</param>
    /// <param name="dotsPerInch">Resolution, 72 to 600.</param>
    /// <param name="output">Takes the file; stays open.</param>
    /// <exception cref="ArgumentOutOfRangeException">The resolution is another, or a length is not a finite number.</exception>
    /// <exception cref="PictureTooLargeException">The picture would have more than <see cref="MostPixels"/>, or there is no memory for it.</exception>
    public static void Write(DrawingSheet sheet, int dotsPerInch, Stream output)
    {
        if (dotsPerInch is < LeastDotsPerInch or > MostDotsPerInch)
        {
            throw new ArgumentOutOfRangeException(
                nameof(dotsPerInch), dotsPerInch, $"The resolution is {LeastDotsPerInch} to {MostDotsPerInch} dots per inch.");
        }

        SheetPainter.CheckSize(sheet);
        double scale = dotsPerInch / 25.4;
        double width = Pixels(sheet.WidthMm * scale);
        double height = Pixels(sheet.HeightMm * scale);
        if (width * height > MostPixels)
            throw TooLarge(width, height, $"at most {MostPixels / 1_000_000} are drawn: {Instead(sheet)}");
        using SKBitmap bitmap = Draw(sheet, (int)width, (int)height, (float)scale);
        using SKPixmap pixels = bitmap.PeekPixels();
        using var stream = new SKDynamicMemoryWStream();
        if (!pixels.Encode(stream, new SKPngEncoderOptions(SKPngEncoderFilterFlags.Up, CompressionLevel)))
            throw TooLarge(width, height, "this machine cannot encode it");
        using SKData data = stream.DetachAsData();
        PngChunks.WriteWithResolution(data.AsSpan(), dotsPerInch, output);
    }

    private static SKBitmap Draw(DrawingSheet sheet, int width, int height, float scale)
    {
        var bitmap = new SKBitmap();
        if (!bitmap.TryAllocPixels(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque)))
        {
            bitmap.Dispose();
            throw TooLarge(width, height, "this machine has no memory for it");
        }

        using var canvas = new SKCanvas(bitmap);
        canvas.Scale(scale);
        using var font = new SheetFont();
        using var painter = new SheetPainter(canvas, font);
        painter.Draw(sheet);
        return bitmap;
    }

    private static string Instead(DrawingSheet sheet)
    {
        double most = Math.Floor(25.4 * Math.Sqrt(MostPixels / (sheet.WidthMm * sheet.HeightMm)));
        return most >= LeastDotsPerInch ? $"choose {most:0} dots per inch or fewer" : "write this sheet as SVG or PDF";
    }

    private static double Pixels(double exact) => Math.Max(1, Math.Round(exact, MidpointRounding.AwayFromZero));

    private static PictureTooLargeException TooLarge(double width, double height, string why) =>
        new($"a picture of {width:0} by {height:0} pixels is {Math.Ceiling(width * height / 1_000_000):0} megapixels; {why}");
}
