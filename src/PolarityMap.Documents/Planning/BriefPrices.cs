using PolarityMap.Core.Planning;
using PolarityMap.Documents.Binding;
using PolarityMap.Documents.Tables;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Planning;

/// <summary>Reads the price list that a brief names; it lies in the brief's folder.</summary>
internal sealed class BriefPrices(string brief, IDocumentSource source, NodeReader reader)
{
    private const string Expected = "a price list in the folder of the brief, such as 'prices.csv'";

    /// <summary>The prices; null where the brief names none, or after a report.</summary>
    /// <param name="root">The brief.</param>
    /// <param name="currency">What it says of the currency, or null.</param>
    public PriceList? Read(YamlMapping root, string? currency)
    {
        if (root.Find(BriefKeys.Prices) is not { } node)
            return null;
        var references = new References(source, reader.Problems, allowOutside: false);
        if (references.Resolve(brief, node, "prices names a price list", Expected) is not { } path)
            return null;
        string folder = brief[..(brief.LastIndexOfAny(['/', '\\']) + 1)];
        if (source.TryReadInside(folder, path, TableLimits.FileBytes, out byte[] bytes, out string why))
            return new PriceList(currency ?? "", new PriceTable(path, reader.Problems).Read(bytes));
        reader.Problems.Add(node.Place, why);
        return null;
    }
}
