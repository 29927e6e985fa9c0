using PolarityMap.Core.Deviations;

namespace PolarityMap.Core.Locate;

/// <summary>Finds what explains what was seen, and what to test next.</summary>
public static class Locator
{
    /// <summary>The smallest explanations of what was seen, and the next test.</summary>
    /// <param name="context">The plant as it is described.</param>
    /// <param name="observations">What was seen.</param>
    /// <param name="options">How far to search.</param>
    public static LocateResult Locate(DeviationContext context, IReadOnlyList<Observation> observations, LocateOptions? options = null) =>
        throw new NotImplementedException();

    /// <summary>The whole decision tree from what is known.</summary>
    /// <param name="context">The plant as it is described.</param>
    /// <param name="result">What is known.</param>
    /// <param name="depth">The most tests one after the other.</param>
    public static TestPlan Plan(DeviationContext context, LocateResult result, int depth = 8) =>
        throw new NotImplementedException();
}
