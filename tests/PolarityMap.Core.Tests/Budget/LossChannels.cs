using PolarityMap.Core.Budget;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Tests.Budget;

/// <summary>Channels with lengths, classes and losses. Interfaces are <c>L</c> and <c>R</c>; a link joins their ports 1.</summary>
internal static class LossChannels
{
    /// <summary>Cord 5 m, cassette, trunk, cassette, cord 5 m: four matings, two of arrays inside and two duplex outside.</summary>
    public static Bench Cassettes(string application, string fibre, int metres, decimal? array = null, decimal? duplex = null) => Link(new Bench(), application)
        .Add("C1", "duplex cord", v => Glass(v, fibre, 5).Set("type", "A-to-B").Duplex(duplex))
        .Add("K1", "cassette", v => v.Set("wiring", "U1").Array(array).Duplex(duplex))
        .Add("T", "trunk", v => Glass(v, fibre, metres - 10).Set("type", "Type-B").Array(array))
        .Add("K2", "cassette", v => v.Set("wiring", "U1").Array(array).Duplex(duplex))
        .Add("C2", "duplex cord", v => Glass(v, fibre, 5).Set("type", "A-to-B").Duplex(duplex))
        .Mate("L/1", "C1/near").Mate("C1/far", "K1/1")
        .Mate("K1/rear", "T/near").Mate("T/far", "K2/rear")
        .Mate("K2/1", "C2/near").Mate("C2/far", "R/1");

    /// <summary>Duplex cords one after the other, a panel adapter between each two.</summary>
    public static Bench Cords(string? application, string? fibre, IReadOnlyList<int?> metres, Action<AttributeValues>? set = null)
    {
        Bench bench = Link(new Bench(), application);
        if (metres.Count > 1)
            bench.Add("P", "duplex panel", v => v.Set("ports", metres.Count - 1));
        for (int i = 1; i <= metres.Count; i++)
        {
            int number = i;
            bench.Add($"C{i}", "duplex cord", v =>
            {
                Glass(v, fibre, metres[number - 1]).Set("type", "A-to-B");
                set?.Invoke(v);
            });
        }

        for (int i = 1; i < metres.Count; i++)
            bench.Mate($"C{i}/far", $"C{i + 1}/near", through: $"P/{i}");
        return bench.Mate("L/1", "C1/near").Mate($"C{metres.Count}/far", "R/1");
    }

    /// <summary>Array cords of equal length one after the other, an aligned panel adapter between each two; an odd number of them.</summary>
    public static Bench Arrays(string application, string fibre, int metres, int cables, decimal? loss = null)
    {
        Bench bench = new Bench().Add("L", "parallel interface", v => v.Set("application", application)).Add("R", "parallel interface", v => v.Set("application", application));
        if (cables > 1)
            bench.Add("P", "array panel", v => v.Set("ports", cables - 1).Set("keys", "aligned"));
        // Every second cord has pins, so that each mating has them on one side and the interfaces meet none.
        for (int i = 1; i <= cables; i++)
        {
            string pins = i % 2 == 0 ? "both" : "none";
            bench.Add($"C{i}", "array cord", v => Glass(v, fibre, metres / cables).Set("type", "Type-B").Set("pins", pins).Array(loss));
        }

        for (int i = 1; i < cables; i++)
            bench.Mate($"C{i}/far", $"C{i + 1}/near", through: $"P/{i}");
        return bench.Mate("L/1", "C1/near").Mate($"C{cables}/far", "R/1").Link("L/1", "R/1");
    }

    /// <summary>
    /// The opera house's: 93 m of OM4 over two trunks with a cassette at each end of each, so that a link passes four duplex and
    /// four array matings.
    /// </summary>
    public static Bench OperaHouse(decimal? array = null, decimal? duplex = null)
    {
        Bench bench = Link(new Bench(), "10GBASE-SR");
        for (int i = 1; i <= 3; i++)
            bench.Add($"C{i}", "duplex cord", v => Glass(v, "OM4", i == 2 ? 5 : 2).Set("type", "A-to-B").Duplex(duplex));
        for (int i = 1; i <= 4; i++)
            bench.Add($"K{i}", "cassette", v => v.Set("wiring", "U1").Array(array).Duplex(duplex));
        for (int i = 1; i <= 2; i++)
            bench.Add($"T{i}", "trunk", v => Glass(v, "OM4", 42).Set("type", "Type-B").Array(array));
        return bench.Mate("L/1", "C1/near").Mate("C1/far", "K1/1").Mate("K1/rear", "T1/near").Mate("T1/far", "K2/rear")
            .Mate("K2/1", "C2/near").Mate("C2/far", "K3/1").Mate("K3/rear", "T2/near").Mate("T2/far", "K4/rear")
            .Mate("K4/1", "C3/near").Mate("C3/far", "R/1");
    }

    /// <summary>The worst strand of the only link.</summary>
    public static StrandBudget Worst(this Bench bench) => Xunit.Assert.Single(bench.Budgets().Links).Worst;

    public static BudgetTable Budgets(this Bench bench) => BudgetTable.Of(bench.Trace());

    /// <summary>The bench judged by a set of limits.</summary>
    public static Bench By(this Bench bench, string limits, decimal? margin = null) =>
        bench.Practice(new PlantPractice { Limits = LimitProfile.Find(limits)!, Margin = margin is { } m ? new Decibel(m) : null });

    public static AttributeValues Array(this AttributeValues values, decimal? loss) => loss is { } l ? values.Set("array-loss", new Decibel(l)) : values;

    public static AttributeValues Duplex(this AttributeValues values, decimal? loss) => loss is { } l ? values.Set("duplex-loss", new Decibel(l)) : values;

    public static AttributeValues Glass(this AttributeValues values, string? fibre, int? metres)
    {
        if (fibre is not null)
            values.Set("fibre", fibre);
        return metres is { } m ? values.Set("length", Metres(m)) : values;
    }

    public static Length Metres(int metres) => Length.FromMillimetres(metres * 1000L);

    private static Bench Link(Bench bench, string? application)
    {
        foreach (string name in (string[])["L", "R"])
        {
            bench.Add(name, "duplex interface", v =>
            {
                if (application is not null)
                    v.Set("application", application);
            });
        }

        return bench.Link("L/1", "R/1");
    }
}
