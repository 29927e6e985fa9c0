using PolarityMap.Core.Checks;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>What stands in words at the foot of a sheet.</summary>
/// <param name="Findings">The findings.</param>
/// <param name="Sample">The strand that the legend takes as an example.</param>
/// <param name="Signs">What the legend has to explain.</param>
/// <param name="Words">Further sentences, such as what the sheet stands for.</param>
internal sealed record SheetNotes(IReadOnlyList<Finding> Findings, SampleStrand Sample, SheetSigns Signs, IReadOnlyList<string> Words)
{
    /// <summary>Findings whose strands are shown where they should go, so that the words need not say it.</summary>
    public IReadOnlyList<Finding> Ghosted { get; init; } = [];

    /// <summary>What the strand of the example is a strand of.</summary>
    public string Of { get; init; } = "this plant";
}
