using PolarityMap.Core.Tests.Oracles;

namespace PolarityMap.Core.Tests;

/// <summary>A permanent link between two cassettes, named by its ingredients.</summary>
internal sealed record LinkParts(string LeftTransition, string LeftAdapter, string Trunk, string RightAdapter, string RightTransition)
{
    /// <summary>The link of a printed method.</summary>
    public static LinkParts Of(MethodIngredients method) =>
        new(method.LeftTransition, method.Adapters, method.Trunk, method.Adapters, method.RightTransition);

    /// <summary>The same link in the reference model.</summary>
    public SlowLink Slow(int fibres = 12) => SlowModel.Link(LeftTransition, LeftAdapter, Trunk, RightAdapter, RightTransition, fibres);
}

/// <summary>
/// Channels built from ingredient names. Interfaces are <c>L</c> and <c>R</c> (or <c>QL</c> and <c>QR</c>), cords
/// <c>C1-1</c> (first row of cords, port 1), and link n is <c>KLn</c>, <c>Tn</c>, <c>KRn</c>.
/// </summary>
internal static class Channels
{
    /// <summary>The keys of an adapter type, in the words of the typed table.</summary>
    public static string Keys(string adapter) => adapter == "Type-A" ? PartTables.AdapterTypeA.Keys : PartTables.AdapterTypeB.Keys;

    /// <summary>A duplex channel of a printed method.</summary>
    public static Bench Method(string method, int fibres = 12)
    {
        MethodIngredients parts = MethodTables.IngredientsOf(method);
        return Duplex(LinkParts.Of(parts), parts.LeftCord, parts.RightCord, fibres);
    }

    /// <summary>Cord, cassette, trunk, cassette, cord, with a link from every left port to the same right port.</summary>
    public static Bench Duplex(LinkParts link, string leftCord, string rightCord, int fibres = 12) =>
        Links(Series([leftCord, rightCord], [link], fibres), fibres / 2);

    /// <summary>Cords and links in turn, one cord more than links. States no links.</summary>
    public static Bench Series(IReadOnlyList<string> cords, IReadOnlyList<LinkParts> links, int fibres)
    {
        int ports = fibres / 2;
        Bench bench = new Bench()
            .Add("L", "duplex interface", v => v.Set("ports", ports))
            .Add("R", "duplex interface", v => v.Set("ports", ports));
        for (int i = 1; i <= links.Count; i++)
            AddLinkParts(bench, i, links[i - 1], fibres);
        for (int i = 1; i <= cords.Count; i++)
        {
            for (int port = 1; port <= ports; port++)
            {
                string from = i == 1 ? $"L/{port}" : $"KR{i - 1}/{port}";
                string to = i == cords.Count ? $"R/{port}" : $"KL{i}/{port}";
                bench.Cord($"C{i}-{port}", from, cords[i - 1], to);
            }
        }

        return bench;
    }

    /// <summary>States a link from every left port to the same right port.</summary>
    public static Bench Links(Bench bench, int ports)
    {
        for (int port = 1; port <= ports; port++)
            bench.Link($"L/{port}", $"R/{port}");
        return bench;
    }

    /// <summary>
    /// Array cables one after the other between two four-lane ports, with a panel adapter of the named kind between each
    /// two; states the link of the ports, or one for each lane.
    /// </summary>
    public static Bench Parallel(IReadOnlyList<string> cables, IReadOnlyList<string> adapters, bool byLane = false)
    {
        Bench bench = new Bench().Add("QL", "parallel interface").Add("QR", "parallel interface");
        ArrayChain(bench, cables, adapters);
        bench.Mate("QL/1", "X1/near").Mate($"X{cables.Count}/far", "QR/1");
        if (!byLane)
            return bench.Link("QL/1", "QR/1");
        foreach (LaneRow row in PartTables.FourLanes)
            bench.Link($"QL/1:{row.Lane}", $"QR/1:{row.Lane}");
        return bench;
    }

    /// <summary>
    /// Array cables <c>X1</c>, <c>X2</c>, … one after the other, both outer ends open. The middle ones are trunks. Their pins
    /// are those of the trade (trade facts 7.1): cords have none, so that a trunk between cords is bought with pins at both
    /// ends, and one that another trunk extends with pins at its near end only. The second of two cords alone has pins.
    /// </summary>
    public static Bench ArrayChain(Bench bench, IReadOnlyList<string> cables, IReadOnlyList<string> adapters, int fibres = 12)
    {
        for (int i = 1; i <= cables.Count; i++)
        {
            string kind = i == 1 || i == cables.Count ? "array cord" : "trunk";
            string pins = i == 1 ? "none" : kind == "trunk" && i == cables.Count - 1 ? "both" : kind == "trunk" || cables.Count == 2 ? "near" : "none";
            bench.Add($"X{i}", kind, v => v.Set("type", cables[i - 1]).Set("base", fibres).Set("pins", pins));
        }

        for (int i = 1; i < cables.Count; i++)
        {
            bench.Add($"P{i}", "array panel", v => v.Set("ports", 1).Set("keys", Keys(adapters[i - 1])))
                .Mate($"X{i}/far", $"X{i + 1}/near", through: $"P{i}/1");
        }

        return bench;
    }

    private static void AddLinkParts(Bench bench, int number, LinkParts link, int fibres) => bench
        .Add($"KL{number}", "cassette", v => v.Set("wiring", link.LeftTransition).Set("base", fibres).Set("keys", Keys(link.LeftAdapter)))
        .Add($"T{number}", "trunk", v => v.Set("type", link.Trunk).Set("base", fibres))
        .Add($"KR{number}", "cassette", v => v.Set("wiring", link.RightTransition).Set("base", fibres).Set("keys", Keys(link.RightAdapter)))
        .Mate($"KL{number}/rear", $"T{number}/near")
        .Mate($"T{number}/far", $"KR{number}/rear");
}
