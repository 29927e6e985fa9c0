using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Tests.Deviations;

/// <summary>Small plants that have between them every kind of part and every way of being built wrong.</summary>
internal static class SmallPlants
{
    private static readonly Dictionary<string, Func<Bench>> s_made = new()
    {
        ["method A"] = static () => Channels.Method("A"),
        ["method B"] = static () => Channels.Method("B"),
        ["method C"] = static () => Channels.Method("C"),
        ["method U1"] = static () => Channels.Method("U1"),
        ["method U2"] = static () => Channels.Method("U2"),
        ["method B of 8 fibres"] = static () => Channels.Method("B", 8),
        ["method A of 16 fibres"] = static () => Channels.Method("A", 16),
        ["two rows of 12"] = TwoRows,
        ["parallel A"] = static () => Channels.Parallel(["Type-A", "Type-A", "Type-B"], ["Type-A", "Type-A"]),
        ["parallel B by lane"] = static () => Channels.Parallel(["Type-B", "Type-B", "Type-B"], ["Type-B", "Type-B"], byLane: true),
        ["parallel C"] = static () => Channels.Parallel(["Type-C", "Type-C", "Type-B"], ["Type-A", "Type-A"]),
        ["parallel ports side by side"] = ParallelPanel,
        ["zone boxes"] = ZoneBoxes,
        ["splice and termination"] = Spliced,
        ["duplex panels"] = DuplexPanels,
        ["simplex cords"] = SimplexCords,
        ["single fibre"] = SingleFibre,
        ["breakout"] = Breakout,
        ["conversion"] = ConversionTwins,
        ["conversion harness"] = SixteenToTwo,
        ["own wirings and a loop"] = OwnWirings,
    };

    public static IReadOnlyCollection<string> Names => s_made.Keys;

    public static TracedPlant Of(string name) => s_made[name]().Trace();

    /// <summary>Duplex through two rows of twelve, every second port left free.</summary>
    private static Bench TwoRows()
    {
        Bench bench = new Bench()
            .Add("L", "duplex interface", v => v.Set("ports", 12))
            .Add("R", "duplex interface", v => v.Set("ports", 12))
            .Add("KL", "cassette", v => v.Set("base", 24).Set("wiring", "straight").Set("keys", "aligned"))
            .Add("KR", "cassette", v => v.Set("base", 24).Set("wiring", "straight-reversed-in-row").Set("keys", "aligned"))
            .Add("T", "trunk", v => v.Set("base", 24).Set("type", "reversed-in-row"))
            .Mate("KL/rear", "T/near").Mate("T/far", "KR/rear");
        for (int port = 1; port <= 12; port += 2)
            bench.Cord($"CL{port}", $"L/{port}", "A-to-B", $"KL/{port}").Cord($"CR{port}", $"KR/{port}", "A-to-B", $"R/{port}").Link($"L/{port}", $"R/{port}");
        return bench;
    }

    /// <summary>
    /// Three parallel links through one trunk of four legs between panels of six adapters, whose fourth leg waits in both; the
    /// fifth and sixth adapters are empty, and one cord hangs in the sixth with nothing behind it.
    /// </summary>
    private static Bench ParallelPanel()
    {
        Bench bench = new Bench()
            .Add("QL", "parallel interface", v => v.Set("ports", 4))
            .Add("QR", "parallel interface", v => v.Set("ports", 4))
            .Add("PL", "array panel", v => v.Set("keys", "aligned"))
            .Add("PR", "array panel", v => v.Set("keys", "aligned"))
            .Add("T", "trunk", v => v.Set("type", "Type-B").Set("legs", 4).Set("pins", "both"))
            .Add("IDLE", "array cord", v => v.Set("type", "Type-B"));
        for (int n = 1; n <= 3; n++)
        {
            bench.Add($"XL{n}", "array cord", v => v.Set("type", "Type-B")).Add($"XR{n}", "array cord", v => v.Set("type", "Type-B"))
                .Mate($"QL/{n}", $"XL{n}/near").Mate($"XL{n}/far", $"T/near{n}", through: $"PL/{n}")
                .Mate($"T/far{n}", $"XR{n}/near", through: $"PR/{n}").Mate($"XR{n}/far", $"QR/{n}")
                .Link($"QL/{n}", $"QR/{n}");
        }

        return bench.Open("T/near4", "PL/4").Open("T/far4", "PR/4").Open("IDLE/near", "PL/6");
    }

    /// <summary>
    /// Two networks, each with a switch, two cassettes, a trunk of four legs of which two are spare, and two cassettes at the zone
    /// box, gathered by pairs into one cable to each of two desks. A third cassette of each row has its rear free.
    /// </summary>
    private static Bench ZoneBoxes()
    {
        var bench = new Bench();
        int[] networks = [bench.Network("lighting", "red", "K1"), bench.Network("sound", "pink", "K2")];
        foreach (int network in networks)
        {
            string n = network == 0 ? "LX" : "SD";
            bench.Add($"{n}-SW", "duplex interface", v => v.Set("ports", 4).Set("network", n == "LX" ? "lighting" : "sound"))
                .Add($"{n}-T", "trunk", v => v.Set("type", "Type-B").Set("base", 8).Set("legs", 4).Set("spare", [3, 4]).Set("fibre", "OM4"), network);
            foreach (string row in (string[])["K", "Z"])
            {
                for (int k = 1; k <= 3; k++)
                    bench.Add($"{n}-{row}{k}", "cassette", v => v.Set("wiring", "U1").Set("base", 8).Set("network", n == "LX" ? "lighting" : "sound"));
            }

            for (int k = 1; k <= 2; k++)
            {
                bench.Mate($"{n}-K{k}/rear", $"{n}-T/near{k}").Mate($"{n}-T/far{k}", $"{n}-Z{k}/rear")
                    .Add($"{n}-D{k}", "duplex interface", v => v.Set("network", n == "LX" ? "lighting" : "sound"));
                Cord(bench, $"{n}-C{k}", n, "far", $"{n}-SW/{k}", $"{n}-K{k}/1");
            }
        }

        for (int desk = 1; desk <= 2; desk++)
        {
            bench.Add($"ZB{desk}", "cassette", v => v.Set("wiring", "U1").Set("base", 8).Set("networks", ["lighting", "sound"]).Set("keyed", "no"))
                .Add($"DC{desk}", "trunk", v => v.Set("type", "Type-B").Set("base", 8))
                .Add($"DESK{desk}", "outlet", v => v.Set("wiring", "U1").Set("base", 8).Set("networks", ["lighting", "sound"]))
                .Mate($"ZB{desk}/rear", $"DC{desk}/near").Mate($"DC{desk}/far", $"DESK{desk}/rear");
            int port = 1;
            foreach (string n in (string[])["LX", "SD"])
            {
                Cord(bench, $"{n}-J{desk}", n, "near", $"{n}-Z{desk}/1", $"ZB{desk}/{port}");
                Cord(bench, $"{n}-W{desk}", n, "near", $"DESK{desk}/{port++}", $"{n}-D{desk}/1");
                bench.Link($"{n}-SW/{desk}", $"{n}-D{desk}/1");
            }
        }

        // A plain cord of a network between plain ports: any other network's would go in.
        bench.Add("PLAIN", "duplex cord", v => v.Set("type", "A-to-B").Set("network", "sound").Set("keyed", "none").Set("fibre", "OM3"));
        return bench.Mate("SD-SW/4", "PLAIN/near").Mate("PLAIN/far", "LX-SW/4");

        static void Cord(Bench bench, string name, string network, string keyed, string from, string to) => bench
            .Add(name, "duplex cord", v => v.Set("type", "A-to-B").Set("reversible", "yes").Set("network", network == "LX" ? "lighting" : "sound").Set("keyed", keyed))
            .Mate(from, name + "/near").Mate(name + "/far", to);
    }

    /// <summary>Two cables of 26 fibres spliced, with terminations at both outer ends; one cord is reversed to make the pairs cross once.</summary>
    private static Bench Spliced()
    {
        Bench bench = new Bench()
            .Add("L", "duplex interface", v => v.Set("ports", 4))
            .Add("R", "duplex interface", v => v.Set("ports", 4))
            .Add("FL", "field termination", v => v.Set("fibres", 26).Set("method", "pigtail"))
            .Add("FR", "field termination", v => v.Set("fibres", 26).Set("wiring", "reverse-pair"))
            .Add("CA", "cable", v => v.Set("fibres", 26).Set("fibre", "OS2"))
            .Add("CB", "cable", v => v.Set("fibres", 26).Set("fibre", "OS1"))
            .Add("S", "splice", v => v.Set("fibres", 26))
            .Mate("FL/bare", "CA/near").Mate("CA/far", "S/near").Mate("S/far", "CB/near").Mate("CB/far", "FR/bare");
        foreach (int port in (int[])[1, 2, 4])
            bench.Cord($"CL{port}", $"L/{port}", "A-to-B", $"FL/{port}").Cord($"CR{port}", $"FR/{port}", "A-to-B", $"R/{port}").Link($"L/{port}", $"R/{port}");
        return bench;
    }

    /// <summary>Cords that meet harness legs and each other in duplex panels, with empty adapters and plugs that wait on either side.</summary>
    private static Bench DuplexPanels()
    {
        Bench bench = new Bench()
            .Add("Q", "parallel interface", v => v.Set("breakout", "4x"))
            .Add("H", "harness", v => v.Set("fibre", "OM1"))
            .Add("F", "duplex interface", v => v.Set("ports", 6))
            .Add("P", "duplex panel", v => v.Set("ports", 7))
            .Add("N", "duplex panel", v => v.Set("ports", 4))
            .Add("WAIT", "duplex cord", v => v.Set("type", "A-to-A"))
            .Mate("Q/1", "H/array");
        for (int leg = 1; leg <= 2; leg++)
        {
            bench.Add($"C{leg}", "duplex cord", v => v.Set("type", "A-to-A"))
                .Mate($"H/leg{leg}", $"C{leg}/near", through: $"P/{leg}").Mate($"C{leg}/far", $"F/{leg}").Link($"Q/1:{leg}", $"F/{leg}");
        }

        // Two rows of cords through one panel, from one port of F to another.
        bench.Add("D1", "duplex cord", v => v.Set("type", "A-to-B")).Add("D2", "duplex cord", v => v.Set("type", "A-to-B").Set("reversible", "yes").Set("reversed", "far"))
            .Mate("F/4", "D1/near").Mate("D1/far", "D2/near", through: "N/2").Mate("D2/far", "F/5");
        return bench.Open("H/leg3", "P/4").Open("WAIT/near", "P/6");
    }

    /// <summary>Simplex cords in the halves of duplex ports, through a cassette whose second port has one of its two.</summary>
    private static Bench SimplexCords()
    {
        Bench bench = Channels.Links(Channels.Series([], [new LinkParts("straight", "Type-A", "Type-C", "Type-A", "straight")], 12), 0)
            .Add("CR1", "duplex cord", v => v.Set("type", "A-to-B")).Mate("KR1/1", "CR1/near").Mate("CR1/far", "R/1")
            .Cord("CR2", "KR1/2", "A-to-B", "R/2")
            .Cord("S1", "L/1:A", "simplex", "KL1/1:B").Cord("S2", "L/1:B", "simplex", "KL1/1:A").Cord("S3", "L/2:A", "simplex", "KL1/2:B");
        return bench.Link("L/1", "R/1");
    }

    private static Bench SingleFibre() => new Bench()
        .Add("U", "single-fibre interface", v => v.Set("application", "1000BASE-BX10-U").Set("ports", 4))
        .Add("D", "single-fibre interface", v => v.Set("application", "1000BASE-BX10-D").Set("ports", 4))
        .Cord("S1", "U/1", "simplex", "D/1").Cord("S2", "U/2", "simplex", "D/2")
        .Link("U/1", "D/1").Link("U/2", "D/2");

    private static Bench Breakout()
    {
        Bench bench = new Bench()
            .Add("Q", "parallel interface", v => v.Set("ports", 2).Set("breakout", "4x"))
            .Add("F", "duplex interface", v => v.Set("ports", 9));
        for (int q = 1; q <= 2; q++)
        {
            bench.Add($"H{q}", "harness", v => v.Set("spare", [4])).Mate($"Q/{q}", $"H{q}/array");
            for (int leg = 1; leg <= 3; leg++)
                bench.Mate($"H{q}/leg{leg}", $"F/{(4 * (q - 1)) + leg}").Link($"Q/{q}:{leg}", $"F/{(4 * (q - 1)) + leg}");
        }

        return bench;
    }

    /// <summary>Two trunks of twelve between twin modules, two of three parallel ports in use.</summary>
    private static Bench ConversionTwins()
    {
        Bench bench = new Bench()
            .Add("L", "parallel interface", v => v.Set("ports", 3))
            .Add("R", "parallel interface", v => v.Set("ports", 3))
            .Add("ML", "conversion module", v => v.Set("conversion", "2x12 to 3x8"))
            .Add("MR", "conversion module", v => v.Set("conversion", "2x12 to 3x8"))
            .Add("T1", "trunk", v => v.Set("type", "Type-B"))
            .Add("T2", "trunk", v => v.Set("type", "Type-B"))
            .Mate("ML/rear1", "T1/near").Mate("ML/rear2", "T2/near").Mate("T1/far", "MR/rear1").Mate("T2/far", "MR/rear2");
        for (int port = 1; port <= 2; port++)
        {
            bench.Add($"XL{port}", "array cord", v => v.Set("type", "Type-B").Set("base", 8)).Add($"XR{port}", "array cord", v => v.Set("type", "Type-B").Set("base", 8))
                .Mate($"L/{port}", $"XL{port}/near").Mate($"XL{port}/far", $"ML/{port}").Mate($"MR/{port}", $"XR{port}/near").Mate($"XR{port}/far", $"R/{port}");
        }

        return bench;
    }

    private static Bench SixteenToTwo() => new Bench()
        .Add("Q", "parallel interface", v => v.Set("application", "800GBASE-DR8").Set("breakout", "2x"))
        .Add("H", "conversion harness", v => v.Set("conversion", "16 to 2x8").Set("type", "reversed").Set("fibre", "OM2"))
        .Add("F", "parallel interface", v => v.Set("ports", 3).Set("application", "400GBASE-DR4"))
        .Mate("Q/1", "H/array").Mate("H/leg1", "F/1").Mate("H/leg2", "F/2")
        .Link("Q/1:1", "F/1").Link("Q/1:2", "F/2");

    /// <summary>A trunk, a cassette and a splice with wirings written out that leave places open, and a cord plugged into itself by way of a panel.</summary>
    private static Bench OwnWirings() => new Bench()
        .Add("L", "duplex interface", v => v.Set("ports", 2))
        .Add("K1", "cassette", v => v.Set("wiring", (DuplexPair[])[new(2, 5), new(7, 1)]))
        .Add("K2", "cassette", v => v.Set("wiring", "U2"))
        .Add("K3", "outlet", v => v.Set("rear", "duplex").Set("ports", 2))
        .Add("T1", "trunk", v => v.Set("wiring", (DuplexPair[])[new(1, 7), new(2, 3), new(7, 12)]))
        .Add("T2", "trunk", v => v.Set("type", "Type-A"))
        .Add("E", "array panel", v => v.Set("ports", 2))
        .Add("X", "array cord", v => v.Set("type", "Type-C"))
        .Add("S", "splice", v => v.Set("fibres", 14).Set("wiring", (DuplexPair[])[new(1, 2), new(2, 13), new(14, 1)]))
        .Add("W1", "cable", v => v.Set("fibres", 14))
        .Add("W2", "cable", v => v.Set("fibres", 14))
        .Cord("C1", "L/1", "A-to-B", "K1/1").Cord("C2", "L/2", "A-to-A", "K1/2")
        .Mate("K1/rear", "T1/near").Mate("T1/far", "T2/near", through: "E/1").Mate("T2/far", "K2/rear")
        .Mate("X/near", "X/far", through: "E/2")
        .Mate("W1/far", "S/near").Mate("S/far", "W2/near");
}
