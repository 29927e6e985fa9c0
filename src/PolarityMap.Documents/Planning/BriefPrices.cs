using PolarityMap.Core.Planning;
using PolarityMap.Documents.Binding;
using PolarityMap.Documents.Tables;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Planning;

/// <summary>Reads the price list that a brief names; it lies in the brief's folder, unless the user lets it lie elsewhere.</summary>
internal sealed class BriefPrices(string brief, IDocumentSource source, NodeReader reader, bool allowOutside, Func<string, bool>? isYetToCome)
{
    private const string Expected = "a price list in the folder of the brief, such as 'prices.csv'";

    /// <summary>The prices; null where the brief names none or they are yet to come, or after a report.</summary>
    /// <param name="root">The brief.</param>
    /// <param name="currency">What it says of the currency, or null.</param>
    public PriceList? Read(YamlMapping root, string? currency)
    {
        if (root.Find(BriefKeys.Prices) is not { } node)
            return null;
        var references = new References(source, reader.Problems, allowOutside);
        if (references.Resolve(brief, node, "prices names a price list", Expected) is not { } path)
            return null;
        if (isYetToCome?.Invoke(path) == true)
            return null;
        string folder = brief[..(brief.LastIndexOfAny(['/', '\\']) + 1)];
        bool read = allowOutside
            ? source.TryRead(path, TableLimits.FileBytes, out byte[] bytes, out string why)
            : source.TryReadInside(folder, path, TableLimits.FileBytes, out bytes, out why);
        if (read)
            return new PriceList(currency ?? "", new PriceTable(path, reader.Problems).Read(bytes));
        reader.Problems.Add(node.Place, why);
        return null;
    }
}
