using PolarityMap.Core.Locate;
using PolarityMap.Core.Plants;

namespace PolarityMap.Reports;

/// <summary>What was seen on site of the plant of a report, and what was found of it.</summary>
/// <param name="Result">What was found.</param>
/// <param name="Suspects">The plant as the likeliest explanation has it; null where nothing is suspect.</param>
public sealed record SeenInput(LocateResult Result, SuspectPlant? Suspects)
{
    /// <summary>The file of the observations as the pages name it.</summary>
    public string File { get; init; } = "";

    /// <summary>The decision tree from here, or null where there is nothing to tell apart.</summary>
    public TestPlan? Plan { get; init; }

    /// <summary>What to know about the observations, with where the file says them.</summary>
    public IReadOnlyList<(SourcePlace Place, string Text)> Remarks { get; init; } = [];
}
