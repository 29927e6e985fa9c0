using System.Text;
using ImageMagick;

namespace PolarityMap.Acceptance.Renderers;

/// <summary>Draws SVG with librsvg, which finds fonts through fontconfig; it is told of this project's font alone.</summary>
internal static class LibrsvgRenderer
{
    private static readonly Lazy<string> Fonts = new(TellFonts);

    public static bool IsThere => MagickNET.Delegates.Contains("rsvg", StringComparison.OrdinalIgnoreCase);

    public static Picture Render(string svg, int width, int height)
    {
        _ = Fonts.Value;
        using var image = new MagickImage(Encoding.UTF8.GetBytes(Pixels.Size(svg, width, height)), new MagickReadSettings
        {
            Format = MagickFormat.Svg,
            BackgroundColor = MagickColors.White,
        });
        image.Alpha(AlphaAction.Remove);
        using IPixelCollection<byte> pixels = image.GetPixels();
        return new Picture((int)image.Width, (int)image.Height, pixels.ToByteArray(PixelMapping.RGB)!);
    }

    /// <summary>Writes a fontconfig file and names it to the native library, before that is used for the first time.</summary>
    private static string TellFonts()
    {
        string folder = Directory.CreateTempSubdirectory("fonts-").FullName;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(folder, recursive: true);
        string file = Path.Combine(folder, "fonts.conf");
        File.WriteAllText(file, $"""
            <?xml version="1.0"?>
            <!DOCTYPE fontconfig SYSTEM "fonts.dtd">
            <fontconfig>
              <dir>{Path.Combine(Repository.Root, "src", "PolarityMap.Drawing", "Fonts")}</dir>
              <cachedir>{Path.Combine(folder, "cache")}</cachedir>
            </fontconfig>

            """);
        MagickNET.SetEnvironmentVariable("FONTCONFIG_FILE", file);
        return file;
    }
}
