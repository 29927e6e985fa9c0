using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>Benches with the networks lighting (0) and sound (1), for the separation rules.</summary>
internal static class TwoNetworks
{
    public const int Lighting = 0;
    public const int Sound = 1;

    /// <summary>Two plain networks without policies, with the interfaces <c>LX1</c>, <c>LX2</c> and <c>SD1</c>, <c>SD2</c> of four ports.</summary>
    public static Bench Plain() => WithPolicies(null, null);

    /// <summary>As <see cref="Plain"/>, with what lighting and sound may share.</summary>
    public static Bench WithPolicies(IReadOnlyList<SharedPlace>? lighting, IReadOnlyList<SharedPlace>? sound)
    {
        var bench = new Bench();
        bench.Network("lighting", mayShare: lighting);
        bench.Network("sound", mayShare: sound);
        return Interfaces(bench);
    }

    /// <summary>As <see cref="Plain"/>, with the key codes of lighting and sound.</summary>
    public static Bench WithKeys(string? lighting, string? sound, bool plainFits = false)
    {
        var bench = new Bench();
        bench.Network("lighting", key: lighting, plainFits: plainFits);
        bench.Network("sound", key: sound, plainFits: plainFits);
        return Interfaces(bench);
    }

    /// <summary>A duplex cord, of a network or of none.</summary>
    public static Bench CordOf(this Bench bench, string name, int network, string from, string to) => bench
        .Add(name, "duplex cord", v => v.Set("type", "A-to-B"), network)
        .Mate(from, name + "/near").Mate(name + "/far", to);

    /// <summary>
    /// Two 8-fibre U1 cassettes <c>KL</c> and <c>KR</c> and a trunk <c>T</c>, each of a network or of none, with port 1 wired to lighting and port 2 to sound.
    /// </summary>
    public static Bench SharedChannel(this Bench bench, int cassettes = -1, int trunk = -1) => bench
        .Cassettes(cassettes, trunk)
        .CordOf("C1", -1, "LX1/1", "KL/1").CordOf("C2", -1, "KR/1", "LX2/1")
        .CordOf("C3", -1, "SD1/1", "KL/2").CordOf("C4", -1, "KR/2", "SD2/1");

    /// <summary>The cassettes and the trunk of <see cref="SharedChannel"/> alone.</summary>
    public static Bench Cassettes(this Bench bench, int cassettes = -1, int trunk = -1) => bench
        .Add("KL", "cassette", v => v.Set("wiring", "U1").Set("base", 8), cassettes)
        .Add("T", "trunk", v => v.Set("type", "Type-B").Set("base", 8), trunk)
        .Add("KR", "cassette", v => v.Set("wiring", "U1").Set("base", 8), cassettes)
        .Mate("KL/rear", "T/near").Mate("T/far", "KR/rear");

    /// <summary>A cassette <c>K</c> with an outlet <c>DESK</c> at the other end of its cable, of no network; a key is the outlet's own.</summary>
    public static Bench Outlet(this Bench bench, string? key = null) => bench
        .Add("K", "cassette", v => v.Set("wiring", "U1").Set("base", 8))
        .Add("T", "trunk", v => v.Set("type", "Type-B").Set("base", 8))
        .Add("DESK", "outlet", v => _ = key is null ? v.Set("wiring", "U1").Set("base", 8) : v.Set("wiring", "U1").Set("base", 8).Set("key", key))
        .Mate("K/rear", "T/near").Mate("T/far", "DESK/rear");

    private static Bench Interfaces(Bench bench)
    {
        foreach (string name in (string[])["LX1", "LX2"])
            bench.Add(name, "duplex interface", v => v.Set("ports", 4), Lighting);
        foreach (string name in (string[])["SD1", "SD2"])
            bench.Add(name, "duplex interface", v => v.Set("ports", 4), Sound);

        // Ports that a test does not wire are no parts left over.
        return bench.CordOf("IDLE-LX", -1, "LX1/4", "LX2/4").CordOf("IDLE-SD", -1, "SD1/4", "SD2/4");
    }
}
