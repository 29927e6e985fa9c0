using System.Globalization;
using PolarityMap.Core.Planning;

namespace PolarityMap.Documents.Planning;

/// <summary>How weights are written in briefs and calls.</summary>
public static class PlanWeightWords
{
    /// <summary>What a weight is.</summary>
    public static string Expected { get; } = string.Create(CultureInfo.InvariantCulture, $"a number from 0 to {PlanWeights.Most}");

    /// <summary>Reads one weight.</summary>
    public static bool TryParse(string text, out decimal weight) =>
        decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out weight) && weight <= PlanWeights.Most;
}
