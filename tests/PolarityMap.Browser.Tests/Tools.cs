using PolarityMap.Acceptance;

namespace PolarityMap.Browser.Tests;

/// <summary>
/// Programs that these tests need and a machine may lack. <c>.ci/run</c> installs them; where one is missing the tests that need
/// it report themselves as skipped and say so.
/// </summary>
internal static class Tools
{
    /// <summary>The browser: that of the variable POLARITYMAP_CHROMIUM, else Debian's.</summary>
    public static string Chromium { get; } = Environment.GetEnvironmentVariable("POLARITYMAP_CHROMIUM") ?? "/usr/bin/chromium";

    /// <summary>The Nu HTML checker: that of the variable POLARITYMAP_VNU, else the one that <c>.ci/run</c> puts into .ci/tools.</summary>
    public static string NuChecker { get; } = Environment.GetEnvironmentVariable("POLARITYMAP_VNU")
        ?? Path.Combine(Repository.Root, ".ci", "tools", "node_modules", "vnu-jar", "build", "dist", "vnu.jar");

    /// <summary>The Java program on the path, or null.</summary>
    public static string? Java { get; } = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .Select(folder => Path.Combine(folder, OperatingSystem.IsWindows() ? "java.exe" : "java")).FirstOrDefault(File.Exists);

    /// <summary>Why no browser can be started, or null.</summary>
    public static string? NoBrowser { get; } = File.Exists(Chromium) ? null : $"Chromium is not installed: there is no {Chromium}.";

    /// <summary>Why no page can be checked, or null.</summary>
    public static string? NoNuChecker { get; } = Java is null ? "Java is not installed." : File.Exists(NuChecker) ? null : $"The Nu HTML checker is not installed: there is no {NuChecker}.";
}
