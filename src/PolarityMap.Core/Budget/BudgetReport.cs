using PolarityMap.Core.Optics;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Budget;

/// <summary>One line of the table: a link and what it loses; null where nothing lights it from end to end.</summary>
public sealed record BudgetRow(int Link, LinkEnd From, LinkEnd To, LinkBudget? Budget);

/// <summary>The budgets of links with their verdict, for the table, reports and programs alike.</summary>
/// <param name="Table">The budgets of the plant.</param>
/// <param name="Rows">The links that were asked for.</param>
/// <param name="All">Whether every strand is told, or only the worst of each link.</param>
public sealed record BudgetReport(BudgetTable Table, IReadOnlyList<BudgetRow> Rows, bool All)
{
    /// <summary>Every link in the order of the document, lit or not, then pairs of ports without one.</summary>
    public static BudgetReport Of(BudgetTable table, bool all = false)
    {
        Plant plant = table.Traced.Plant;
        var rows = new List<BudgetRow>();
        for (int i = 0; i < plant.Links.Count; i++)
            rows.Add(new BudgetRow(i, plant.Links[i].From, plant.Links[i].To, table.OfLink(i)));
        foreach (LinkBudget budget in table.Links)
        {
            if (budget.Link < 0)
                rows.Add(new BudgetRow(-1, budget.From, budget.To, budget));
        }

        return new BudgetReport(table, rows, all);
    }

    public Plant Plant => Table.Traced.Plant;

    public Decibel? Margin => Plant.Practice.Margin;

    public int Exceeding => Rows.Count(r => r.Budget is { Exceeds: true });

    /// <summary>Rows that fit and were judged.</summary>
    public int Fitting => Rows.Count(r => r.Budget is { Exceeds: false, IsJudged: true });

    /// <summary>Rows that fit only by what the parts state.</summary>
    public int FittingByStatement => Rows.Count(r => r.Budget is { Exceeds: false, IsJudged: true, FailsByStandard: true });

    /// <summary>The strands to tell of a link.</summary>
    public IReadOnlyList<StrandBudget> Told(LinkBudget link) => All ? link.Strands : [link.Worst];

    /// <summary>The verdict on a row.</summary>
    public static string VerdictOf(BudgetRow row) => row.Budget is { } budget ? BudgetWords.Verdict(budget) : "not lit from end to end; 'polaritymap check' says why";

    /// <summary>The verdict on all rows, in one or two sentences.</summary>
    public string Verdict()
    {
        if (Rows.Count == 0)
            return "No light goes from one interface to another.";
        if (Rows.Count == 1)
        {
            return Exceeding > 0 ? "The link exceeds its limit."
                : Fitting == 0 ? "The link is not judged."
                : FittingByStatement > 0 ? "The link fits, but only by what its parts state." : "The link fits.";
        }

        var counts = new List<string>();
        if (Fitting > 0)
            counts.Add($"{Fitting} {(Fitting == 1 ? "fits" : "fit")}{(FittingByStatement > 0 ? $" ({FittingByStatement} only by what the parts state)" : "")}");
        if (Exceeding > 0)
            counts.Add($"{Exceeding} {(Exceeding == 1 ? "exceeds its limit" : "exceed their limits")}");
        if (Rows.Count - Fitting - Exceeding is > 0 and int open)
            counts.Add($"{open} {(open == 1 ? "is" : "are")} not judged");
        return $"{Rows.Count} links: {string.Join(", ", counts)}.";
    }

    /// <summary>The applications of the rows, each once in the order of the rows.</summary>
    public IReadOnlyList<Application> Applications() =>
        [.. Rows.Where(r => r.Budget is not null).SelectMany(r => r.Budget!.Strands).Select(s => s.Application).OfType<Application>().Distinct()];
}
