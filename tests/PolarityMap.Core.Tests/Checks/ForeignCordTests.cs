using PolarityMap.Core.Checks;
using Xunit;
using static PolarityMap.Core.Tests.Checks.TwoNetworks;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>S06 and the table of what fits where. Keys: trade facts 8, equal codes go together; plain with keyed only where a set lets it.</summary>
public sealed class ForeignCordTests
{
    // Source: trade facts 8. Key codes of lighting and sound, whether plain fits their keys, and whether a wrong cord goes in.
    [Theory]
    [InlineData(null, null, false, "S06")]
    [InlineData("K1", "K2", false, "")]
    [InlineData("K1", "K1", false, "S06 S07")]
    [InlineData("K1", null, false, "")]
    [InlineData(null, "K2", false, "")]
    [InlineData("K1", null, true, "S06")]
    [InlineData(null, "K2", true, "S06")]
    [InlineData("K1", "K2", true, "")]
    [InlineData("K1", "k1", false, "")]
    public void A_wrong_cord_fits_where_keys_are_equal_both_plain_or_plain_fits(string? lighting, string? sound, bool plainFits, string codes) =>
        Assert.Equal(codes, Separate(Desk(WithKeys(lighting, sound, plainFits))));

    [Fact]
    public void Keys_of_networks_do_not_help_at_an_outlet_that_carries_none()
    {
        Bench bench = WithKeys("K1", "K2").Add("DESK", "outlet", v => v.Set("rear", "duplex").Set("ports", 2).Set("networks", ["lighting", "sound"]).Set("keyed", "no"));
        FitTable table = Assert.Single(Tables(bench));
        Assert.All(table.Ports, p => Assert.Null(p.Key));
        Assert.Equal([CordFit.OwnBlocked, CordFit.Blocked], table.Ports[0].Cords);
        Assert.Equal([CordFit.Blocked, CordFit.OwnBlocked], table.Ports[1].Cords);
        Assert.Equal("", Separate(bench));
    }

    [Fact]
    public void A_key_of_the_outlet_itself_counts_for_all_its_ports()
    {
        Bench bench = WithKeys("K1", "K2").Add("DESK", "outlet", v => v.Set("rear", "duplex").Set("ports", 2).Set("networks", ["lighting", "sound"]).Set("key", "K1"));
        FitTable table = Assert.Single(Tables(bench));
        Assert.Equal([CordFit.Own, CordFit.Blocked], table.Ports[0].Cords);
        Assert.Equal([CordFit.Fits, CordFit.OwnBlocked], table.Ports[1].Cords);
        Assert.Equal("S06", Separate(bench));
    }

    // As the rule on key codes has it: what a set lets in is known of ports of its network only.
    [Fact]
    public void A_key_of_an_outlet_without_stated_networks_takes_no_plain_cord()
    {
        Bench bench = AtDesk(WithKeys("K1", null, plainFits: true), "K1");
        FitTable table = Tables(bench).Single(t => t.Kind == "outlet");
        Assert.All(table.Ports, p => Assert.Equal("K1", p.Key));
        Assert.Equal([CordFit.Own, CordFit.Blocked], table.Ports[0].Cords);
        Assert.Equal([CordFit.Fits, CordFit.OwnBlocked], table.Ports[1].Cords);
    }

    [Fact]
    public void The_finding_names_a_port_and_what_goes_into_each()
    {
        Finding finding = Assert.Single(Desk(Plain()).Check(), f => f.Rule.Code == "S06");
        Assert.Equal("a cord of sound goes into DESK/1, a port of lighting", finding.Message);
        Assert.Equal("port 1 of lighting (plain) takes cords of sound; port 2 of sound (plain) takes cords of lighting", finding.Actual);
        Assert.Equal(Severity.Warning, finding.Rule.Severity);
    }

    [Fact]
    public void Ports_without_a_stated_network_are_of_the_network_whose_strands_they_carry()
    {
        Bench bench = AtDesk(Plain());
        Finding finding = Assert.Single(bench.Check());
        Assert.Equal("S06", finding.Rule.Code);
        FitTable table = Tables(bench).Single(t => t.Kind == "outlet");
        Assert.Equal([Lighting, Sound, -1, -1], table.Ports.Select(p => p.Network));
        Assert.Equal([CordFit.Fits, CordFit.Fits], table.Ports[3].Cords);
    }

    [Fact]
    public void Where_strands_join_two_networks_the_cord_plugged_in_tells_the_port_s()
    {
        Bench bench = Plain().Outlet().CordOf("C1", Sound, "SD1/1", "K/1").CordOf("C2", Lighting, "LX1/1", "K/2")
            .CordOf("C3", Lighting, "DESK/1", "LX2/1").CordOf("C4", Sound, "DESK/2", "SD2/1");
        Assert.Equal("D06 D06 S06", bench.Codes());
        FitTable table = Tables(bench).Single(t => t.Kind == "outlet");
        Assert.Equal([Lighting, Sound, -1, -1], table.Ports.Select(p => p.Network));
    }

    [Fact]
    public void Adapters_take_the_network_of_the_strands_through_them()
    {
        Bench bench = Plain().Add("DESK", "outlet", v => v.Set("rear", "duplex").Set("ports", 3));
        foreach ((string name, int port) in (ReadOnlySpan<(string, int)>)[("LX", 1), ("SD", 2)])
        {
            bench.Add(name + "C1", "duplex cord", v => v.Set("type", "A-to-B")).Add(name + "C2", "duplex cord", v => v.Set("type", "A-to-B"))
                .Mate(name + "1/1", name + "C1/near").Mate(name + "C1/far", name + "C2/near", through: $"DESK/{port}").Mate(name + "C2/far", name + "2/1");
        }

        Assert.Equal("S06", bench.Codes());
        Assert.Equal([Lighting, Sound, -1], Assert.Single(Tables(bench)).Ports.Select(p => p.Network));
    }

    [Fact]
    public void Outlets_alike_are_one_finding_and_another_one_is_its_own()
    {
        Bench bench = Plain();
        foreach (string name in (string[])["D1", "D2", "D3"])
            bench.Add(name, "outlet", v => v.Set("rear", "duplex").Set("ports", 2).Set("networks", ["lighting", "sound"]));
        bench.Add("E", "outlet", v => v.Set("rear", "duplex").Set("ports", 2).Set("networks", ["sound", "lighting"]));
        Finding[] findings = [.. bench.Check().Where(f => f.Rule.Code == "S06")];
        Assert.Equal(2, findings.Length);
        Assert.Equal("a cord of sound goes into D1/1, a port of lighting; so at 2 more outlets alike", findings[0].Message);
    }

    [Fact]
    public void A_cassette_of_several_networks_has_a_table_and_no_finding()
    {
        Bench bench = Plain().SharedChannel();
        Assert.Equal("", bench.Codes());
        FitTable table = Assert.Single(Tables(bench));
        Assert.Equal("cassette", table.Kind);
        Assert.Equal(2, table.Parts.Count);
        Assert.True(table.LetsForeignCordsIn);
    }

    [Fact]
    public void An_outlet_of_one_network_has_no_table() => Assert.Empty(Tables(Plain()
        .Add("D1", "outlet", v => v.Set("rear", "duplex").Set("networks", ["lighting", "lighting"]))
        .Add("D2", "outlet", v => v.Set("rear", "duplex"), Sound)));

    private static IReadOnlyList<FitTable> Tables(Bench bench) => new CheckContext(bench.Trace()).Separation.Fits;

    /// <summary>The codes of the separation family.</summary>
    private static string Separate(Bench bench) =>
        string.Join(' ', bench.Check().Select(f => f.Rule.Code).Where(c => c[0] == 'S').Order(StringComparer.Ordinal));

    /// <summary>An outlet with a port of lighting and one of sound, nothing plugged in.</summary>
    private static Bench Desk(Bench bench) =>
        bench.Add("DESK", "outlet", v => v.Set("rear", "duplex").Set("ports", 2).Set("networks", ["lighting", "sound"]));

    /// <summary>A lighting and a sound channel over one cable to an outlet that states no networks.</summary>
    private static Bench AtDesk(Bench bench, string? key = null) => bench
        .Outlet(key)
        .CordOf("C1", Lighting, "LX1/1", "K/1").CordOf("C2", Sound, "SD1/1", "K/2")
        .CordOf("C3", Lighting, "DESK/1", "LX2/1").CordOf("C4", Sound, "DESK/2", "SD2/1");
}
