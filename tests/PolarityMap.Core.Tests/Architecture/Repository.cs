using System.Runtime.CompilerServices;

namespace PolarityMap.Core.Tests.Architecture;

/// <summary>The source tree as it lies on disk, found from this file.</summary>
internal static class Repository
{
    public static string Root { get; } = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(ThisFile())!, "..", "..", ".."));

    /// <summary>All C# files below a folder of the repository, without what a build leaves.</summary>
    public static IReadOnlyList<string> Sources(string folder) =>
    [
        .. Directory.EnumerateFiles(Path.Combine(Root, folder), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}"))
            .Order(StringComparer.Ordinal),
    ];

    private static string ThisFile([CallerFilePath] string path = "") => path;
}
