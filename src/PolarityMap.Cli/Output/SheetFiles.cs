using PolarityMap.Documents.Text;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Svg;
using PolarityMap.Export;

namespace PolarityMap.Cli.Output;

/// <summary>
/// Writes drawn sheets where and as the call wants them: one SVG or PNG file of one sheet, one PDF of all, or a folder with a
/// file for each sheet.
/// </summary>
internal static class SheetFiles
{
    private const string Expected = "expected .svg, .pdf or .png";

    /// <summary>Writes sheets that are drawn already.</summary>
    /// <inheritdoc cref="Write(CommandContext, string, IReadOnlyList{ValueTuple{string, Func{DrawingSheet}}}, SheetFileOptions)"/>
    public static IReadOnlyList<string> Write(
        CommandContext context, string target, IReadOnlyList<(string Name, DrawingSheet Sheet)> sheets, SheetFileOptions options) =>
        Write(context, target, [.. sheets.Select(s => (s.Name, (Func<DrawingSheet>)(() => s.Sheet)))], options);

    /// <summary>
    /// Draws sheet after sheet, each into its new file, and lets the files take their places when all are drawn, so that a failure
    /// leaves what was there untouched and no more than one sheet is kept.
    /// </summary>
    /// <param name="context">Where the call runs.</param>
    /// <param name="target">A file whose ending says what is written, or a folder: one that is there, or a name with a final stroke.</param>
    /// <param name="sheets">The sheets in the order in which they are bound; a name becomes the name of a file in a folder.</param>
    /// <param name="options">How they are written.</param>
    /// <returns>The paths written, as the call names them.</returns>
    /// <exception cref="CallException">The call cannot be carried out; nothing was written.</exception>
    public static IReadOnlyList<string> Write(
        CommandContext context, string target, IReadOnlyList<(string Name, Func<DrawingSheet> Draw)> sheets, SheetFileOptions options)
    {
        bool folder = IsFolder(context, target);
        string format = folder ? options.As ?? SheetFileOptions.Formats[0] : FormatOf(target, options.As);
        Check(format, options);
        var paths = new List<string>();
        using var files = new WholeFiles();
        if (folder)
        {
            string[] names = FileNames([.. sheets.Select(s => s.Name)], format);
            byte[] buffer = [];
            for (int i = 0; i < names.Length; i++)
            {
                paths.Add(Path.Combine(target, names[i]));
                files.Add(context.FullPath(paths[i]), Drawn(sheets[i].Name, [WithoutLinks(sheets[i].Draw())], format, options, ref buffer));
            }
        }
        else if (format == "pdf" || sheets.Count == 1)
        {
            byte[] buffer = [];
            paths.Add(target);
            files.Add(context.FullPath(target), Drawn(sheets[0].Name, [.. sheets.Select(s => s.Draw())], format, options, ref buffer));
        }
        else
        {
            throw new CallException($"'{target}' takes one sheet and there are {sheets.Count}; name a folder, such as sheets/, or a .pdf for all of them");
        }

        files.Commit();
        return paths;
    }

    /// <summary>True when the target is a folder that is there, or is written as one.</summary>
    public static bool IsFolder(CommandContext context, string target) =>
        target.EndsWith('/') || target.EndsWith(Path.DirectorySeparatorChar) || Directory.Exists(context.FullPath(target));

    private static string FormatOf(string target, string? wanted)
    {
        string ending = Path.GetExtension(target).ToLowerInvariant();
        if (ending.Length <= 1)
            throw new CallException($"'{target}' has no ending; {Expected}, or a folder, such as {Path.TrimEndingDirectorySeparator(target)}/");
        string format = ending[1..];
        if (!SheetFileOptions.Formats.Contains(format))
            throw new CallException($"'{target}' ends in {ending}; {Expected}{(Near(ending) is { } near ? $"; did you mean {near}?" : "")}");
        return wanted is null || wanted == format
            ? format
            : throw new CallException($"'{target}' ends in {ending}, but --as says {wanted}; leave --as out, or name a folder, such as sheets/");
    }

    /// <summary>What to write instead of another kind of picture, or of a slip of the finger.</summary>
    private static string? Near(string ending) => ending switch
    {
        ".jpg" or ".jpeg" or ".gif" or ".bmp" or ".tif" or ".tiff" or ".webp" => ".png",
        ".eps" or ".ps" => ".pdf",
        ".emf" or ".wmf" or ".dxf" or ".svgz" => ".svg",
        _ => NearestWord.Find(ending, SheetFileOptions.Formats.Select(f => "." + f)),
    };

    private static void Check(string format, SheetFileOptions options)
    {
        if (options.DotsPerInch is { } dpi && format != "png")
            throw new CallException($"--dpi {dpi} is for .png; {format} has no dots");
        if (options.DotsPerInch is < PngFile.LeastDotsPerInch or > PngFile.MostDotsPerInch)
            throw new CallException($"--dpi {options.DotsPerInch} is no resolution that is drawn; expected {PngFile.LeastDotsPerInch} to {PngFile.MostDotsPerInch}");
        if (!options.EmbedFont && format != "svg")
            throw new CallException($"--without-font is for .svg; a {format} needs no font of its reader");
    }

    private static ReadOnlySpan<byte> Drawn(string name, IReadOnlyList<DrawingSheet> sheets, string format, SheetFileOptions options, ref byte[] buffer)
    {
        if (format == "svg")
        {
            int length = SvgWriter.WriteUtf8(sheets[0], new SvgOptions { EmbedFont = options.EmbedFont }, ref buffer);
            return buffer.AsSpan(0, length);
        }

        using var output = new MemoryStream();
        try
        {
            if (format == "pdf")
                PdfFile.Write(sheets, options.Details, output);
            else
                PngFile.Write(sheets[0], options.DotsPerInch ?? SheetFileOptions.UsualDotsPerInch, output);
        }
        catch (PictureTooLargeException tooLarge)
        {
            throw new CallException($"sheet '{name}' cannot be drawn: {tooLarge.Message}");
        }
        catch (Exception missing) when ((missing as TypeInitializationException)?.InnerException is DllNotFoundException || missing is DllNotFoundException)
        {
            throw new CallException($"a {format} needs the library libSkiaSharp beside the program, and that needs the system's C++ library; one of them is missing, so write .svg");
        }

        return output.ToArray();
    }

    /// <summary>A file of its own has no other sheets to lead to.</summary>
    private static DrawingSheet WithoutLinks(DrawingSheet sheet) => sheet.Links.Count == 0 ? sheet : new DrawingSheet
    {
        WidthMm = sheet.WidthMm,
        HeightMm = sheet.HeightMm,
        Title = sheet.Title,
        Description = sheet.Description,
        Layers = sheet.Layers,
    };

    /// <summary>A file name for each sheet: it cannot leave the folder, and no two are the same even where case counts for nothing.</summary>
    private static string[] FileNames(string[] sheets, string format)
    {
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        string[] names = new string[sheets.Length];
        for (int i = 0; i < names.Length; i++)
        {
            string plain = FileName.Of(sheets[i]);
            string name = plain;
            for (int n = 2; !taken.Add(name); n++)
                name = $"{plain}-{n}";
            names[i] = $"{name}.{format}";
        }

        return names;
    }
}
