using PolarityMap.Core.Checks;
using Xunit;
using static PolarityMap.Core.Tests.Checks.TwoNetworks;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>S07 to S09: keys, colours and jackets against the legend written into each bench.</summary>
public sealed class NetworkLegendTests
{
    [Theory]
    [InlineData("K1", "K2", "")]
    [InlineData("K1", null, "")]
    [InlineData(null, null, "")]
    [InlineData("K1", "k1", "")]
    [InlineData("K1", "K1", "S07")]
    public void Two_networks_with_one_key_are_found(string? first, string? second, string codes)
    {
        var bench = new Bench();
        bench.Network("lighting", key: first);
        bench.Network("sound", key: second);
        Assert.Equal(codes, bench.Codes());
    }

    [Theory]
    [InlineData("red", "blue", "")]
    [InlineData("red", null, "")]
    [InlineData(null, null, "")]
    [InlineData("red", "red", "S08")]
    [InlineData("red", "RED", "S08")]
    public void Two_networks_with_one_colour_are_found_in_whatever_letters(string? first, string? second, string codes)
    {
        var bench = new Bench();
        bench.Network("lighting", colour: first);
        bench.Network("sound", colour: second);
        Assert.Equal(codes, bench.Codes());
    }

    [Fact]
    public void The_finding_stands_at_the_second_network_and_a_third_is_one_more()
    {
        var bench = new Bench();
        foreach (string name in (string[])["lighting", "sound", "office"])
            bench.Network(name, colour: "red", key: "K1");
        Assert.Equal("S07 S07 S08 S08", bench.Codes());
        Assert.Equal([2, 2, 3, 3], bench.Check().Select(f => f.Place.Line));
        Assert.Equal("office has the key K1, which lighting has already", bench.Check().Last(f => f.Rule.Code == "S07").Message);
    }

    // The network of the cord (-1 for none), its jacket, and whether that contradicts the legend lighting red, sound blue.
    [Theory]
    [InlineData(Lighting, "blue", "S09")]
    [InlineData(Lighting, "BLUE", "S09")]
    [InlineData(Lighting, "red", "")]
    [InlineData(Lighting, "Red", "")]
    [InlineData(Lighting, "aqua", "")]
    [InlineData(Lighting, null, "")]
    [InlineData(-1, "blue", "S09")]
    [InlineData(-1, "red", "")]
    public void A_jacket_in_the_colour_of_another_network_contradicts_the_legend(int network, string? jacket, string codes)
    {
        Bench bench = Legend("red", "blue").Add("L", "duplex interface", network: Lighting).Add("R", "duplex interface", network: Lighting)
            .Add("C", "duplex cord", v => _ = jacket is null ? v.Set("type", "A-to-B") : v.Set("type", "A-to-B").Set("jacket", jacket), network)
            .Mate("L/1", "C/near").Mate("C/far", "R/1");
        Assert.Equal(codes, bench.Codes());
    }

    [Fact]
    public void A_jacket_of_a_network_without_a_colour_must_not_be_another_s()
    {
        Assert.Equal("S09", Cords(Legend(null, "blue"), "blue").Codes());
        Assert.Equal("", Cords(Legend(null, "blue"), "red").Codes());
        Assert.Equal("", Cords(Legend(null, null), "red").Codes());
    }

    [Fact]
    public void A_jacket_in_a_colour_that_two_networks_have_contradicts_neither() =>
        Assert.Equal("S08", Cords(Legend("red", "red"), "red").Codes());

    [Fact]
    public void A_cable_of_both_networks_or_of_none_contradicts_nothing()
    {
        Bench both = Plainly(Legend("red", "blue")).Add("T", "trunk", v => v.Set("type", "Type-B").Set("base", 8).Set("legs", 2).Set("jacket", "blue"))
            .Mate("QL1/1", "T/near1").Mate("T/far1", "QL2/1").Mate("QS1/1", "T/near2").Mate("T/far2", "QS2/1");
        Assert.Equal("", both.Codes());
        Bench none = Legend("red", "blue").Add("L", "duplex interface").Add("R", "duplex interface")
            .Add("C", "duplex cord", v => v.Set("type", "A-to-B").Set("jacket", "blue")).Mate("L/1", "C/near").Mate("C/far", "R/1");
        Assert.Equal("", none.Codes());
    }

    // Source: trade facts 9.3: aqua is the jacket of OM3, and network colours are in no standard. The two facts stay apart.
    [Fact]
    public void A_jacket_is_never_compared_with_the_fibre_class() => Assert.Equal("", Legend("red", "blue")
        .Add("L", "duplex interface", network: Lighting).Add("R", "duplex interface", network: Lighting)
        .Add("C", "duplex cord", v => v.Set("type", "A-to-B").Set("jacket", "red").Set("fibre", "OM3"), Lighting)
        .Mate("L/1", "C/near").Mate("C/far", "R/1")
        .Codes());

    [Fact]
    public void Alike_cords_of_one_line_are_one_finding()
    {
        Bench bench = Legend("red", "blue").Add("L", "duplex interface", v => v.Set("ports", 3), Lighting).Add("R", "duplex interface", v => v.Set("ports", 3), Lighting);
        bench.AtOneStop(b =>
        {
            for (int n = 1; n <= 3; n++)
                b.Add($"C{n}", "duplex cord", v => v.Set("type", "A-to-B").Set("jacket", "blue"), Lighting);
        });
        for (int n = 1; n <= 3; n++)
            bench.Mate($"L/{n}", $"C{n}/near").Mate($"C{n}/far", $"R/{n}");
        Finding finding = Assert.Single(bench.Check());
        Assert.Equal("C1 of lighting has a blue jacket, and 2 more alike; blue is the colour of sound", finding.Message);
    }

    private static Bench Legend(string? lighting, string? sound)
    {
        var bench = new Bench();
        bench.Network("lighting", colour: lighting);
        bench.Network("sound", colour: sound);
        return bench;
    }

    private static Bench Cords(Bench bench, string jacket) => bench
        .Add("L", "duplex interface", network: Lighting).Add("R", "duplex interface", network: Lighting)
        .Add("C", "duplex cord", v => v.Set("type", "A-to-B").Set("jacket", jacket), Lighting)
        .Mate("L/1", "C/near").Mate("C/far", "R/1");

    private static Bench Plainly(Bench bench) => bench
        .Add("QL1", "parallel interface", network: Lighting).Add("QL2", "parallel interface", network: Lighting)
        .Add("QS1", "parallel interface", network: Sound).Add("QS2", "parallel interface", network: Sound);
}
