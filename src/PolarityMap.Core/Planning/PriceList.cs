using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Planning;

/// <summary>A line of a user's price list: what is said has to fit, what is null fits anything.</summary>
/// <param name="Price">The price of one part.</param>
public sealed record PriceLine(decimal Price)
{
    public string? Type { get; init; }

    public string? Kind { get; init; }

    public int? Fibres { get; init; }

    public string? FibreClass { get; init; }

    public decimal? Metres { get; init; }

    public string? KeyCode { get; init; }

    public string? Description { get; init; }

    /// <summary>Where the list says so.</summary>
    public SourcePlace Place { get; init; }

    /// <summary>How much is said of the part.</summary>
    public int Said => (Type is null ? 0 : 1) + (Kind is null ? 0 : 1) + (Fibres is null ? 0 : 1) + (FibreClass is null ? 0 : 1)
        + (Metres is null ? 0 : 1) + (KeyCode is null ? 0 : 1) + (Description is null ? 0 : 1);

    public bool Fits(PlanItem item) => (Type is null || Type == item.Type) && (Kind is null || Kind == item.Kind) && (Fibres is null || Fibres == item.Fibres)
        && (FibreClass is null || FibreClass == item.FibreClass) && (Metres is null || Metres == item.Metres)
        && (KeyCode is null || KeyCode == item.KeyCode) && (Description is null || Description == item.Description);
}

/// <summary>A user's prices. None are known without one.</summary>
/// <param name="Currency">The currency in the user's words; may be empty.</param>
/// <param name="Lines">The lines, in the order of the list.</param>
public sealed record PriceList(string Currency, IReadOnlyList<PriceLine> Lines)
{
    /// <summary>The price of one part: that of the line which says most of it, of equals the first; null without one.</summary>
    public decimal? Of(PlanItem item) => Lines.Where(l => l.Fits(item)).MaxBy(l => l.Said)?.Price;

    /// <summary>The lines that fit none of some parts, so that nothing comes of their prices.</summary>
    public IReadOnlyList<PriceLine> Unused(IReadOnlyCollection<PlanItem> items) => [.. Lines.Where(l => !items.Any(l.Fits))];

    /// <summary>What parts cost together, beside interfaces.</summary>
    public PriceSum Sum(IEnumerable<PlanItem> items)
    {
        decimal total = 0;
        var without = new List<PlanItem>();
        foreach (PlanItem item in items.Where(i => !i.IsInterface))
        {
            if (Of(item) is { } price)
                total += price * item.Quantity;
            else
                without.Add(item);
        }

        return new PriceSum(total, without);
    }
}

/// <summary>A sum of prices.</summary>
/// <param name="Total">The sum of those that are known.</param>
/// <param name="Without">Parts that have no price, which the sum leaves out.</param>
public sealed record PriceSum(decimal Total, IReadOnlyList<PlanItem> Without)
{
    public bool IsComplete => Without.Count == 0;

    /// <summary>How many parts the sum leaves out.</summary>
    public int PartsWithout => Without.Sum(i => i.Quantity);
}
