using System.Runtime.CompilerServices;

namespace PolarityMap.Documents.Tests;

/// <summary>The source tree as it lies on disk, found from this file.</summary>
internal static class Repository
{
    public static string Root { get; } = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(ThisFile())!, "..", ".."));

    /// <summary>The faulty documents of the corpus with what is to be said about them.</summary>
    public static string Errors { get; } = Path.Combine(Path.GetDirectoryName(ThisFile())!, "Corpus", "errors");

    /// <summary>Every document that the repository shows as an example, as paths from its root with forward slashes.</summary>
    public static IReadOnlyList<string> Examples() =>
    [
        .. new[] { "gallery", "templates" }
            .SelectMany(folder => Directory.EnumerateFiles(Path.Combine(Root, folder), "*.yaml", SearchOption.AllDirectories))
            .Select(file => Path.GetRelativePath(Root, file).Replace('\\', '/'))
            .Order(StringComparer.Ordinal),
    ];

    private static string ThisFile([CallerFilePath] string path = "") => path;
}
