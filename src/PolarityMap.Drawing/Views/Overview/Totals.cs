using PolarityMap.Core.Optics;
using PolarityMap.Core.Plants;

namespace PolarityMap.Drawing.Views.Overview;

/// <summary>What an overview comes to in all, in words.</summary>
internal static class Totals
{
    /// <summary>Parts, strands and networks, such as <c>12 parts, 5 cables, 32 strands of 2 networks</c>.</summary>
    public static string Counts(Chart chart)
    {
        string networks = chart.StrandsOfNetwork.Count == 0 ? "" : " of " + OverviewWords.Counted(chart.StrandsOfNetwork.Count, "network");
        return $"{OverviewWords.Counted(chart.PartCount, "part")}, {OverviewWords.Counted(chart.CableCount, "cable")}, {OverviewWords.Counted(chart.StrandCount, "strand")}{networks}";
    }

    /// <summary>For each kind of cable how many there are and how long they are together; empty without cables.</summary>
    public static string Cables(Plant plant, Chart chart)
    {
        var kinds = new List<string>();
        var sums = new Dictionary<string, (int Count, long Millimetres, int Without)>(StringComparer.Ordinal);
        foreach (LineGroup line in chart.Lines)
        {
            if (line.NewCables == 0)
                continue;
            string kind = OverviewWords.Caption(plant.Parts[line.Cables[0].Part]);
            if (!sums.TryGetValue(kind, out (int Count, long Millimetres, int Without) sum))
                kinds.Add(kind);
            sums[kind] = (sum.Count + line.NewCables, sum.Millimetres + line.NewMillimetres, sum.Without + line.NewWithoutLength);
        }

        return string.Join("; ", kinds.Select(k => Words(k, sums[k].Count, sums[k].Millimetres, sums[k].Without)));
    }

    private static string Words(string kind, int count, long millimetres, int without)
    {
        string length = without == count ? "no length stated" : count - without == 1 ? Metres(millimetres) : Metres(millimetres) + "\u00A0in\u00A0all";
        string missing = without > 0 && without < count ? $", {without} without a length" : "";
        return $"{count}\u00A0x\u00A0{kind}, {length}{missing}";
    }

    /// <summary>A sum may exceed the longest cable, so it is no <see cref="Length"/>.</summary>
    private static string Metres(long millimetres) =>
        (millimetres / 1000m).ToString("0.###", System.Globalization.CultureInfo.InvariantCulture) + "\u00A0m";
}
