using PolarityMap.Drawing.Fonts;
using SkiaSharp;
using Svg.Skia;
using Svg.Skia.TypefaceProviders;

namespace PolarityMap.Acceptance.Renderers;

/// <summary>Draws SVG with the Skia graphics library. It has no font but the one it is given.</summary>
internal static class SkiaRenderer
{
    private static readonly byte[] Font = EmbeddedFont.Bytes();

    public static Picture Render(string svg, int width, int height)
    {
        using var drawing = new SKSvg();
        drawing.Settings.TypefaceProviders?.Clear();
        drawing.Settings.TypefaceProviders?.Add(new CustomTypefaceProvider(new MemoryStream(Font)));
        SKPicture picture = drawing.FromSvg(Pixels.Size(svg, width, height)) ?? throw new InvalidOperationException("The drawing cannot be read.");
        using var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Clear(SKColors.White);
            canvas.DrawPicture(picture);
        }

        ReadOnlySpan<byte> rgba = bitmap.GetPixelSpan();
        byte[] rgb = new byte[width * height * 3];
        for (int i = 0, j = 0; j < rgb.Length; i += 4, j += 3)
            rgba.Slice(i, 3).CopyTo(rgb.AsSpan(j));
        return new Picture(width, height, rgb);
    }
}
