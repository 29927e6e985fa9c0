using PolarityMap.Core.Checks;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Views;
using PolarityMap.Reports.Model;

namespace PolarityMap.Reports.Drawings;

/// <summary>The way as it is described, and as the likeliest explanation has it with the suspects and the next test.</summary>
/// <param name="Described">The way as it is described.</param>
/// <param name="Built">The way as it is built.</param>
/// <param name="IsWhole">True when every strand that something was found of is drawn.</param>
internal sealed record SuspectFigure(Markup Described, Markup Built, bool IsWhole)
{
    /// <summary>The drawings, or null where they do not go on paper.</summary>
    /// <param name="described">The plant as it is described, as views see it.</param>
    /// <param name="suspects">The plant as the likeliest explanation has it.</param>
    public static SuspectFigure? Of(ViewInput described, SuspectPlant suspects)
    {
        PaperChoice paper = PaperChoice.SmallestThatIsClear with { MayGrow = false };
        foreach (int most in SuspectPlant.Fewer)
        {
            if (Of(described, suspects, most, paper) is { } figure)
                return figure;
        }

        return Of(described, suspects, SuspectPlant.Fewer[^1], PaperChoice.SmallestThatIsClear);
    }

    private static SuspectFigure? Of(ViewInput described, SuspectPlant suspects, int most, PaperChoice paper)
    {
        TracedPlant built = suspects.Report.Traced;
        IReadOnlyList<int> strands = suspects.FirstStrands(most), meant = suspects.Described(described.Traced, strands);
        if (strands.Count == 0 || meant.Count == 0)
            return null;
        var asBuilt = new ViewInput(built, Selection.Of(built, suspects.Findings, new Choice()).Narrowed(strands))
        {
            Title = described.Title,
            ExpectedEnds = ExpectedEnds.Of(suspects.Report.Context),
            Premise = suspects.PremiseFor(strands),
        };
        ViewInput asDescribed = described with { Selection = Selection.Of(described.Traced, [], new Choice()).Narrowed(meant) };
        return StrandFigure.Of(asBuilt, "The way as the likeliest explanation has it", "built-", paper) is { } one
            && StrandFigure.Of(asDescribed, "The way as it is described", "meant-", paper) is { } other
            ? new SuspectFigure(other, one, strands.Count == suspects.Strands.Count) : null;
    }
}
