using System.Globalization;
using PolarityMap.Core.Planning;

namespace PolarityMap.Drawing.Views.Comparison;

/// <summary>A column of the comparison of plans.</summary>
/// <param name="Head">Its heading.</param>
/// <param name="Below">The second line of the heading, or empty.</param>
/// <param name="Width">Its width in mm, with the gap before the next.</param>
/// <param name="Value">What stands in it.</param>
internal sealed record ComparisonColumn(string Head, string Below, double Width, Func<ComparedPlan, string> Value)
{
    /// <summary>The columns between the names of plans and their sums.</summary>
    public static IReadOnlyList<ComparisonColumn> Of(PlanComparison comparison)
    {
        var columns = new List<ComparisonColumn>
        {
            new("Cassettes", "kinds, pieces", 20.5, p => Kinds(p.Measures.CassetteKinds)),
            new("Cords", "kinds, pieces", 20.5, p => Kinds(p.Measures.CordKinds)),
            new("Trunks", "kinds, pieces", 20.5, p => Kinds(p.Measures.TrunkKinds)),
            new("Adapters", "kinds, pieces", 20.5, p => Kinds(p.Measures.AdapterKinds)),
            new("Parts", "", 14, p => Number(p.Measures.Parts)),
            new("Fibres", "used + idle", 21, p => $"{Number(p.Measures.FibresUsed)} + {Number(p.Measures.FibresIdle)}"),
            new("Matings", "in a link", 16, p => Number(p.Measures.Matings)),
            new("Margin", "worst", 15.5, p => p.Measures.WorstMargin?.ToString() ?? "not judged"),
            new("Ends", "", 14, p => p.Measures.IsAlikeAtBothEnds ? "alike" : "differ"),
        };
        if (comparison.HasLater)
            columns.Add(new("Later", "buy + stay", 16.5, p => p.Measures.Later is { } later ? $"{Number(later.PartsToBuy)} + {Number(later.PartsThatStay)}" : "-"));
        if (comparison.HasPrices)
            columns.Add(new("Price", comparison.Brief.Prices!.Currency, 22, p => Price(p.Measures.Price)));
        return columns;
    }

    /// <summary>A sum of prices; what leaves parts out says so.</summary>
    private static string Price(PriceSum? price) => price is null ? "-"
        : (price.IsComplete ? "" : "over ") + price.Total.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Kinds(IReadOnlyList<KindCount> kinds) => kinds.Count == 0 ? "none" : $"{Number(kinds.Count)} {(kinds.Count == 1 ? "kind" : "kinds")}, {Number(kinds.Sum(k => k.Count))}";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
