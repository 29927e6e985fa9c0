using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Svg;
namespace PolarityMap.Cli.Output;
internal sealed record PdfDetails(string Title) { public string? Author { get; init; } public string? Subject { get; init; } public string? Date { get; init; } }
internal sealed record SheetFileOptions(PdfDetails Details) {
    public const int UsualDotsPerInch = 300;
    public static readonly string[] Formats = ["svg", "png", "pdf"];
    public string? As { get; init; }
    public int? DotsPerInch { get; init; }
    public bool EmbedFont { get; init; } = true;
}
internal static class SheetFiles {
    public static bool IsFolder(CommandContext context, string target) =>
        target.EndsWith('/') || Directory.Exists(context.FullPath(target));
    public static IReadOnlyList<string> Write(CommandContext context, string target, IReadOnlyList<(string Name, DrawingSheet Sheet)> sheets, SheetFileOptions options) {
        bool folder = IsFolder(context, target);
        var files = new List<string>();
        foreach ((string name, DrawingSheet sheet) in sheets) {
            string file = folder ? Path.Combine(target, name.Replace(' ','-') + ".svg") : target;
            WholeFile.Write(context.FullPath(file), SvgWriter.Write(sheet, new SvgOptions { EmbedFont = options.EmbedFont }));
            files.Add(file);
        }
        return files;
    }
}
