using System.Globalization;
using PolarityMap.Core.Planning;
using PolarityMap.Drawing.Fonts;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Comparison;

/// <summary>A column of the comparison of plans.</summary>
/// <param name="Head">Its heading.</param>
/// <param name="Below">The second line of the heading, or empty.</param>
/// <param name="Value">What stands in it.</param>
internal sealed record ComparisonColumn(string Head, string Below, Func<ComparedPlan, string> Value)
{
    private const double Gap = 2.6;

    /// <summary>A currency in the user's own words may be long; it is cut then.</summary>
    private const double MostBelow = 18;

    /// <summary>The columns between the names of plans and their sums.</summary>
    public static IReadOnlyList<ComparisonColumn> Of(PlanComparison comparison)
    {
        var columns = new List<ComparisonColumn>
        {
            new("Cassettes", "kinds, pieces", p => Kinds(p.Measures.CassetteKinds)),
            new("Cords", "kinds, pieces", p => Kinds(p.Measures.CordKinds)),
            new("Trunks", "kinds, pieces", p => Kinds(p.Measures.TrunkKinds)),
            new("Adapters", "kinds, pieces", p => Kinds(p.Measures.AdapterKinds)),
            new("Parts", "", p => Number(p.Measures.Parts)),
            new("Fibres", "used + idle", p => $"{Number(p.Measures.FibresUsed)} + {Number(p.Measures.FibresIdle)}"),
            new("Matings", "in a link", p => Number(p.Measures.Matings)),
            new("Margin", "worst", p => p.Measures.WorstMargin?.ToString() ?? "not judged"),
            new("Ends", "", p => p.Measures.IsAlikeAtBothEnds ? "alike" : "differ"),
        };
        if (comparison.HasLater)
        {
            columns.Add(new("Later", "buy + stay", p => p.Measures.Later is { } later ? $"{Number(later.PartsToBuy)} + {Number(later.PartsThatStay)}" : "-"));
            columns.Add(new("Links", "go on later", p => p.Measures.LinksLater is { Now: > 0 } links ? links.ToString() : "-"));
        }

        if (comparison.HasPrices)
            columns.Add(new("Price", comparison.Brief.Prices!.Currency, p => Price(p.Measures.Price)));
        return columns;
    }

    /// <summary>The width that it takes with the gap before the next, in mm.</summary>
    /// <param name="comparison">The plans.</param>
    /// <param name="cap">The height of capitals of its numbers.</param>
    public double Width(PlanComparison comparison, double cap) => Gap + Math.Max(
        FontMetrics.WidthMm(Head, cap), Math.Max(Math.Min(FontMetrics.WidthMm(Below, CapHeights.Least), MostBelow), comparison.Plans.Select(p => FontMetrics.WidthMm(Value(p), cap)).DefaultIfEmpty(0).Max()));

    /// <summary>A sum of prices; what leaves parts out says so.</summary>
    private static string Price(PriceSum? price) => price is null ? "-"
        : (price.IsComplete ? "" : "over ") + price.Total.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Kinds(IReadOnlyList<KindCount> kinds) => kinds.Count == 0 ? "none" : $"{Number(kinds.Count)} {(kinds.Count == 1 ? "kind" : "kinds")}, {Number(kinds.Sum(k => k.Count))}";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
