using PolarityMap.Core.Checks;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Tests.Remedies;

/// <summary>Small plants in which something is wrong, built so that what is wrong can be read off the call.</summary>
internal static class FaultyPlants
{
    /// <summary>
    /// Method U1 over one trunk of several legs of eight fibres, with a cassette at both ends of each leg and four links to a leg.
    /// </summary>
    /// <param name="legs">Number of legs.</param>
    /// <param name="links">Links that are patched on each leg, 1 to 4.</param>
    /// <param name="trunk">The trunk's type; Type-B is right.</param>
    /// <param name="fibre">The fibre class; single-mode brings angled array plugs, which only opposed keys let meet.</param>
    /// <param name="rightCord">The type of each right cord by its link, from 0; A-to-B is right.</param>
    /// <param name="reversible">True for cords whose plugs change places by hand.</param>
    public static Bench Legs(int legs, int links, string trunk = "Type-B", string fibre = "OM4", Func<int, string>? rightCord = null, bool reversible = false)
    {
        Bench bench = new Bench()
            .Add("L", "duplex interface", v => v.Set("ports", 4 * legs))
            .Add("R", "duplex interface", v => v.Set("ports", 4 * legs))
            .Add("T", "trunk", v => v.Set("type", trunk).Set("base", 8).Set("legs", legs).Set("fibre", fibre));
        for (int leg = 1; leg <= legs; leg++)
        {
            string suffix = legs == 1 ? "" : $"{leg}";
            foreach (string side in (string[])["L", "R"])
                bench.Add($"K{side}{leg}", "cassette", v => v.Set("wiring", "U1").Set("base", 8).Set("keys", "opposed").Set("fibre", fibre));
            bench.Mate($"KL{leg}/rear", $"T/near{suffix}").Mate($"T/far{suffix}", $"KR{leg}/rear");
            for (int port = 1; port <= links; port++)
            {
                int n = (4 * (leg - 1)) + port;
                Cord(bench, $"CL{n}", $"L/{n}", "A-to-B", $"KL{leg}/{port}", fibre, reversible);
                Cord(bench, $"CR{n}", $"KR{leg}/{port}", rightCord?.Invoke(n - 1) ?? "A-to-B", $"R/{n}", fibre, reversible);
                bench.Link($"L/{n}", $"R/{n}");
            }
        }

        return bench;
    }

    /// <summary>Cords straight between two switches, each from its own left port to the right port that is named.</summary>
    public static Bench Cords(params (string Type, int RightPort)[] cords)
    {
        Bench bench = new Bench().Add("L", "duplex interface", v => v.Set("ports", cords.Length + 1)).Add("R", "duplex interface", v => v.Set("ports", cords.Length + 1));
        for (int i = 1; i <= cords.Length; i++)
            bench.Cord($"C{i}", $"L/{i}", cords[i - 1].Type, $"R/{cords[i - 1].RightPort}");
        for (int i = 1; i <= cords.Length; i++)
            bench.Link($"L/{i}", $"R/{i}");
        return bench;
    }

    /// <summary>Two pinned trunks and a flat cord where an angled one belongs: faults that light does not show.</summary>
    public static Bench Connectors()
    {
        return new Bench()
            .Add("L", "duplex interface")
            .Add("R", "duplex interface")
            .Add("KL", "cassette", v => v.Set("wiring", "U1").Set("base", 8).Set("fibre", "OS2").Set("duplex-polish", "angled"))
            .Add("KR", "cassette", v => v.Set("wiring", "U1").Set("base", 8).Set("fibre", "OM4").Set("polish", "angled"))
            .Add("T", "trunk", v => v.Set("type", "Type-B").Set("base", 8).Set("fibre", "OS2").Set("pins", "near"))
            .Add("CL", "duplex cord", v => v.Set("type", "A-to-B").Set("fibre", "OS2"))
            .Add("CR", "duplex cord", v => v.Set("type", "A-to-A").Set("fibre", "OS2").Set("reversible", "yes"))
            .Mate("L/1", "CL/near").Mate("CL/far", "KL/1").Mate("KL/rear", "T/near").Mate("T/far", "KR/rear").Mate("KR/1", "CR/near").Mate("CR/far", "R/1")
            .Link("L/1", "R/1");
    }

    private static void Cord(Bench bench, string name, string from, string type, string to, string fibre, bool reversible)
    {
        bench.Add(name, "duplex cord", v => v.Set("type", type).Set("fibre", fibre).Set("reversible", reversible ? "yes" : "no"));
        bench.Mate(from, $"{name}/near").Mate($"{name}/far", to);
    }

    public static CheckReport Report(this Bench bench) => CheckReport.Of(TracedPlant.Of(bench.Build()));
}
