using System.Xml.Linq;

namespace PolarityMap.Acceptance.Renderers;

/// <summary>The committed figures of the gallery by what they are.</summary>
internal static class GalleryFigures
{
    // What a figure's file name tells about its view; whatever tells nothing is a strand diagram.
    private static readonly string[] Views = ["side-by-side", "step-", "card-", "end-face", "overview", "index"];

    /// <summary>Paths inside the gallery, grouped by view and size in mm, each group in order.</summary>
    public static IEnumerable<IGrouping<string, string>> ByKind() =>
        Directory.EnumerateFiles(Repository.Gallery, "*.svg", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(Repository.Gallery, f).Replace('\\', '/'))
            .Order(StringComparer.Ordinal)
            .GroupBy(svg => $"{View(svg)} {Size(svg)}");

    public static string Read(string svg) => File.ReadAllText(Path.Combine(Repository.Gallery, svg));

    private static string View(string svg) =>
        Views.FirstOrDefault(v => Path.GetFileName(svg).Contains(v, StringComparison.Ordinal))?.TrimEnd('-') ?? "strands";

    private static string Size(string svg)
    {
        string[] box = XElement.Parse(Read(svg)).Attribute("viewBox")!.Value.Split(' ');
        return $"{box[2]} x {box[3]}";
    }
}
