using System.Diagnostics;
using Xunit;

namespace PolarityMap.Browser.Tests;

/// <summary>The Nu HTML checker, an independent judge of markup, over pages of all kinds.</summary>
public sealed class NuCheckerTests
{
    [SkippableFact]
    public async Task The_checker_finds_no_error_in_any_page_but_the_one_put_into_a_copy()
    {
        Skip.If(Tools.NoNuChecker is not null, Tools.NoNuChecker);
        string faulty = ReportPages.Duplex.Replace(".html", ".faulty.html", StringComparison.Ordinal);
        await File.WriteAllTextAsync(faulty, (await File.ReadAllTextAsync(ReportPages.Duplex)).Replace("id=\"s1-strand-2\"", "id=\"s1-strand-1\"", StringComparison.Ordinal));
        string[] pages = [ReportPages.Duplex, ReportPages.OfFile("gallery/faults/D06.yaml"), ReportPages.BothWays, ReportPages.DarkDesk, ReportPages.Unfriendly, ReportPages.OfFile("gallery/methods/parallel-B.yaml"), .. ReportPages.Papers];
        (int status, string messages) = await Check([.. pages, faulty]);
        Assert.Equal(1, status);
        string[] lines = messages.Split('\n');
        Assert.Contains(lines, l => l.Contains("Duplicate ID", StringComparison.Ordinal));
        Assert.All(lines, l => Assert.Contains(".faulty.html", l, StringComparison.Ordinal));
    }

    private static async Task<(int Status, string Messages)> Check(string[] pages)
    {
        using var java = Process.Start(new ProcessStartInfo(Tools.Java!, ["-jar", Tools.NuChecker, "--errors-only", "--format", "gnu", .. pages]) { RedirectStandardError = true })!;
        string messages = await java.StandardError.ReadToEndAsync();
        await java.WaitForExitAsync();
        return (java.ExitCode, messages.Trim());
    }
}
