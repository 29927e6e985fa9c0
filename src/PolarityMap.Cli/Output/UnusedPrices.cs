using System.Globalization;
using PolarityMap.Core.Planning;

namespace PolarityMap.Cli.Output;

/// <summary>Rows of a price list that fit no part of any plan compared.</summary>
internal static class UnusedPrices
{
    public static IReadOnlyList<PriceLine> Of(PlanComparison comparison) => comparison.Brief.Prices is not { } prices || comparison.Plans.Count == 0
        ? []
        : prices.Unused([.. comparison.Plans.SelectMany(p => PlanItem.Of(p.Proof)).Where(i => !i.IsInterface).Select(i => i.Each()).Distinct()]);

    /// <summary>What a row says its price is for.</summary>
    public static string Words(PriceLine line)
    {
        string?[] said =
        [
            line.Type, line.Kind, line.Fibres is { } fibres ? string.Create(CultureInfo.InvariantCulture, $"{fibres} fibres") : null, line.FibreClass,
            line.Metres is { } metres ? metres.ToString("0.###", CultureInfo.InvariantCulture) + " m" : null, line.KeyCode is { } key ? "key " + key : null, line.Description,
        ];
        return string.Join(", ", said.Where(s => s is not null));
    }
}
