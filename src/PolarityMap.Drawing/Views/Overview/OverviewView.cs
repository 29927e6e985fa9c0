using PolarityMap.Core.Plants;

namespace PolarityMap.Drawing.Views.Overview;

/// <summary>Parts and cables with counts, networks and lengths: like parts are one box, like cables one line.</summary>
public sealed class OverviewView : IDrawingView
{
    public string Name => "overview";

    public string Summary => "Parts and cables with counts, networks and lengths.";

    /// <inheritdoc/>
    public IReadOnlyList<PlannedSheet> Plan(ViewInput input)
    {
        if (input.Selection.Strands.Count == 0)
            return [];
        var plan = new OverviewPlan(input);
        if (plan.Fit() is { } one)
            return [new OverviewSheet(input, one, "overview")];
        if (input.Paper.MayGrow)
            return [new OverviewSheet(input, plan.Grown(), "overview")];
        return PerNetwork(input, plan);
    }

    /// <summary>One sheet for each network, where one for all is too small and may not grow.</summary>
    private static IReadOnlyList<PlannedSheet> PerNetwork(ViewInput input, OverviewPlan whole)
    {
        IReadOnlyList<Network> networks = input.Traced.Plant.Networks;
        IReadOnlyList<IReadOnlyList<int>> strands = whole.StrandsByNetwork();
        var sheets = new List<PlannedSheet>();
        for (int n = 0; n < strands.Count; n++)
        {
            if (strands[n].Count == 0)
                continue;
            string name = n < networks.Count ? networks[n].Name : "no network";
            ViewInput part = strands[n].Count == input.Selection.Strands.Count
                ? input
                : input with { Selection = input.Selection.Narrowed(strands[n], n < networks.Count ? $"Network {name}" : "Without a network") };
            OverviewFit fit = new OverviewPlan(part).Fit()
                ?? throw new DrawingTooLargeException($"the boxes and lines of {strands[n].Count} strands ({name}) do not fit the largest sheet of the choice");
            sheets.Add(new OverviewSheet(part, fit, $"overview-{sheets.Count + 1}"));
        }

        return sheets;
    }
}
