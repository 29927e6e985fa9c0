using System.Runtime.CompilerServices;

namespace PolarityMap.Acceptance;

/// <summary>The source tree as it lies on disk, found from this file.</summary>
internal static class Repository
{
    public static string Root { get; } = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(ThisFile())!, "..", ".."));

    public static string Gallery { get; } = Path.Combine(Root, "gallery");

    private static string ThisFile([CallerFilePath] string path = "") => path;
}
