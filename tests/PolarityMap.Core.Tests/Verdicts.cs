using PolarityMap.Core.Checks;
using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Core.Tests;

/// <summary>What the checker says of light and destination alone; other families are judged by tests of their own.</summary>
internal static class Verdicts
{
    /// <summary>The codes of the polarity and destination findings, each once, in alphabetical order, separated by blanks.</summary>
    public static string LightCodes(this TracedPlant traced) => LightCodes(Checker.Check(traced));

    /// <summary>
    /// Fails unless the checker agrees: no such finding where all is right, at least one where something is wrong. Every plant
    /// that is judged so goes together, so that no connector may be at fault either.
    /// </summary>
    public static void AssertVerdict(this TracedPlant traced, bool right, string what)
    {
        IReadOnlyList<Finding> findings = Checker.Check(traced);
        Assert.DoesNotContain(findings, f => f.Rule.Family == "mechanical");
        string codes = LightCodes(findings);
        Assert.True(right == (codes.Length == 0), $"{what}: {(right ? "right" : "wrong")} by the reference model, but the checker says '{codes}'");
    }

    private static string LightCodes(IReadOnlyList<Finding> findings) => string.Join(
        ' ',
        findings.Where(f => f.Rule.Family is "polarity" or "destination").Select(f => f.Rule.Code).Distinct().Order(StringComparer.Ordinal));
}
