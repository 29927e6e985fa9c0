using PolarityMap.Core.Checks;
using PolarityMap.Drawing.Views;
using PolarityMap.Reports.Model;

namespace PolarityMap.Reports.Drawings;

/// <summary>A drawing of just the strands of one finding.</summary>
internal static class FindingFigure
{
    /// <summary>The drawing, or null where its strands do not fit on paper.</summary>
    /// <param name="whole">The whole plant's drawing.</param>
    /// <param name="finding">The finding.</param>
    /// <param name="mostStrands">How many of its strands are drawn at most.</param>
    /// <param name="idPrefix">Put before every id of the drawing; no other drawing on the page has it.</param>
    public static Markup? Of(ViewInput whole, Finding finding, int mostStrands, string idPrefix)
    {
        int[] strands = [.. finding.Strands.Distinct().Take(mostStrands).OrderBy(whole.Traced.NumberOf)];
        return StrandFigure.Of(whole with { Selection = whole.Selection.Narrowed(strands) }, $"Strands of finding {finding.Rule.Code}", idPrefix, PaperChoice.SmallestThatIsClear);
    }
}
