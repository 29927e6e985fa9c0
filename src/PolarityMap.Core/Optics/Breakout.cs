namespace PolarityMap.Core.Optics;

/// <summary>
/// One port of many lanes used as several ports of fewer. Group g has the lanes (g-1)·n+1 to g·n of the port, each lane
/// with its transmit and its receive; n is <paramref name="LanesPerGroup"/>. The host must support it: cabling can show
/// where the light goes, not how a port is set.
/// </summary>
/// <param name="Name">The trade's word: <c>4x</c>, <c>8x</c>, <c>2x</c>. Tells the breakouts of one application apart.</param>
/// <param name="From">Name of the <see cref="Application"/> of the port.</param>
/// <param name="To">Name of the <see cref="Application"/> of each group.</param>
/// <param name="Groups">How many links it becomes.</param>
/// <param name="LanesPerGroup">Lanes each way of each link.</param>
/// <param name="Source">How well it is attested, in words.</param>
public sealed record Breakout(string Name, string From, string To, int Groups, int LanesPerGroup, string Source);

/// <summary>
/// The breakouts on record. None of a port whose wavelengths share a fibre (LR4, FR4, SR4.2): a leg cannot take them apart.
/// None of 100GBASE-SR10: which transmitting goes with which receiving position is not settled, so that its legs are the
/// user's own wiring list.
/// </summary>
public static class Breakouts
{
    private const string Lanes = "lane pairing 1 public source, order of the legs common practice, positions derived";

    private const string Halves = "lanes 1 to 4 make the first link: common practice, order of the groups from memory, positions derived";

    private const string ByBuild = "; two ports of 12 are such links by their build, 2 public sources";

    private static Breakout[]? s_all;

    /// <summary>Every breakout, in the order of the ports.</summary>
    public static IReadOnlyList<Breakout> All => s_all ??=
    [
        new("4x", "40GBASE-SR4", "10GBASE-SR", 4, 1, Lanes),
        new("4x", "100GBASE-SR4", "25GBASE-SR", 4, 1, Lanes),
        new("4x", "200GBASE-SR4", "50GBASE-SR", 4, 1, Lanes),
        new("4x", "400GBASE-SR4", "100GBASE-SR1", 4, 1, Lanes),
        new("4x", "400GBASE-DR4", "100GBASE-DR", 4, 1, Lanes),
        new("8x", "400GBASE-SR8", "50GBASE-SR", 8, 1, Lanes),
        new("2x", "400GBASE-SR8", "200GBASE-SR4", 2, 4, Halves),
        new("8x", "800GBASE-DR8", "100GBASE-DR", 8, 1, Lanes),
        new("2x", "800GBASE-DR8", "400GBASE-DR4", 2, 4, Halves),
        new("8x", "800GBASE-SR8", "100GBASE-SR1", 8, 1, Lanes),
        new("2x", "800GBASE-SR8", "400GBASE-SR4", 2, 4, Halves + ByBuild),
        new("2x", "800GBASE-DR8-2", "400GBASE-DR4-2", 2, 4, Halves + ByBuild),
        new("2x", "800GBASE-VR8", "400GBASE-VR4", 2, 4, Halves + ByBuild),
    ];

    /// <summary>The breakouts of a port's application, by its very name.</summary>
    public static IEnumerable<Breakout> Of(string application) =>
        All.Where(b => string.Equals(b.From, application, StringComparison.Ordinal));

    /// <summary>The breakout of that very name from that very application, or null.</summary>
    public static Breakout? Find(string application, string name) =>
        Of(application).FirstOrDefault(b => string.Equals(b.Name, name, StringComparison.Ordinal));
}
