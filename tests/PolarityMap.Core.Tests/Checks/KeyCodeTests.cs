using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using Xunit;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>
/// M07: which keyed connectors go together. Source for all: trade facts polarity 8: the idea has two sources; equal code goes
/// in, plain against keyed is a mismatch unless the document says otherwise (common practice).
/// </summary>
public sealed class KeyCodeTests
{
    [Theory]
    [InlineData("R", "R", "")]
    [InlineData("R", "B", "M07")]
    [InlineData("R", null, "M07")]
    [InlineData(null, "B", "M07")]
    [InlineData(null, null, "")]
    public void Equal_codes_go_together_and_different_ones_do_not(string? left, string? right, string codes)
    {
        var bench = new Bench();
        int one = bench.Network("one", key: left), two = bench.Network("two", key: right);
        bench.Add("C", "duplex cord", AtoB, one).Add("K", "cassette", U1, two).Mate("C/far", "K/1");

        // That two networks have one code is another rule's matter.
        Assert.Equal(codes, string.Join(' ', bench.Check().Select(f => f.Rule.Code).Where(c => c[0] == 'M')));
    }

    [Theory]
    [InlineData(true, "")]
    [InlineData(false, "M07")]
    public void A_plain_plug_fits_where_the_network_of_the_keyed_one_says_so(bool plainFits, string codes)
    {
        var bench = new Bench();
        int keyed = bench.Network("keyed", key: "R", plainFits: plainFits), plain = bench.Network("plain");
        bench.Add("C", "duplex cord", AtoB, plain).Add("K", "cassette", U1, keyed);
        Assert.Equal(codes, bench.Mate("C/far", "K/1").Codes());
        bench.Add("D", "duplex cord", AtoB).Add("S", "simplex cord", null, plain).Mate("D/near", "K/2").Mate("S/far", "K/3:B");
        Assert.Equal(plainFits ? "" : "M07 M07 M07", bench.Codes());
    }

    [Fact]
    public void Two_codes_do_not_go_together_whatever_fits_plain()
    {
        var bench = new Bench();
        int red = bench.Network("red", key: "R", plainFits: true), blue = bench.Network("blue", key: "B", plainFits: true);
        Finding finding = Assert.Single(bench.Add("C", "duplex cord", AtoB, red).Add("K", "cassette", U1, blue).Mate("C/far", "K/1").Check());
        Assert.Equal("C/far has key code R and K/1 has key code B", finding.Message);
    }

    [Fact]
    public void A_code_of_the_part_itself_counts_before_that_of_its_network()
    {
        var bench = new Bench();
        int red = bench.Network("red", key: "R");
        bench.Add("C", "duplex cord", v => AtoB(v.Set("key", "Z")), red).Add("K", "cassette", v => U1(v.Set("key", "Z"))).Mate("C/far", "K/1");
        Assert.Equal("", bench.Codes());
        bench.Add("D", "duplex cord", v => AtoB(v.Set("key", "Z"))).Add("E", "duplex cord", AtoB).Mate("D/far", "E/near");
        Finding finding = Assert.Single(bench.Check());
        Assert.Equal("D/far has key code Z and E/near is plain", finding.Message);
    }

    [Fact]
    public void The_adapter_that_two_plugs_meet_in_has_a_code_too()
    {
        var bench = new Bench();
        int red = bench.Network("red", key: "R"), blue = bench.Network("blue", key: "B");
        bench.Add("C", "duplex cord", AtoB, red).Add("D", "duplex cord", AtoB, red)
            .Add("P", "duplex panel", v => v.Set("ports", 2).Set("networks", ["red", "blue"]))
            .Mate("C/far", "D/near", through: "P/1");
        Assert.Equal("", bench.Codes());
        bench.Add("E", "duplex cord", AtoB, red).Add("F", "duplex cord", AtoB, blue).Mate("E/far", "F/near", through: "P/2");
        Finding finding = Assert.Single(bench.Check());
        Assert.Equal("E/far has key code R and P/2 has key code B", finding.Message);
    }

    [Fact]
    public void Two_plugs_of_different_codes_do_not_meet_in_a_plain_adapter_either()
    {
        var bench = new Bench();
        int red = bench.Network("red", key: "R", plainFits: true), blue = bench.Network("blue", key: "B", plainFits: true);
        bench.Add("C", "duplex cord", AtoB, red).Add("D", "duplex cord", AtoB, blue).Add("P", "duplex panel")
            .Mate("C/far", "D/near", through: "P/1");
        Assert.Equal("M07", bench.Codes());
    }

    [Fact]
    public void A_plug_that_waits_alone_in_an_adapter_of_another_code_is_told()
    {
        var bench = new Bench();
        int red = bench.Network("red", key: "R"), blue = bench.Network("blue", key: "B");
        Assert.Equal("M07", bench.Add("C", "duplex cord", AtoB, red).Add("P", "duplex panel", null, blue).Open("C/far", "P/1").Codes());
    }

    [Fact]
    public void A_simplex_plug_has_a_code_like_a_duplex_one()
    {
        var bench = new Bench();
        int red = bench.Network("red", key: "R"), blue = bench.Network("blue", key: "B");
        bench.Add("S", "simplex cord", null, red).Add("K", "cassette", U1, blue).Mate("S/far", "K/1:A");
        Finding finding = Assert.Single(bench.Check());
        Assert.Equal("M07", finding.Rule.Code);
        Assert.Single(finding.Strands);
        Assert.Equal("M07", bench.Add("M", "cassette", U1, red).Mate("S/near", "M/1:A").Codes());
    }

    [Fact]
    public void An_interface_is_plain_and_the_finding_says_what_makes_the_cord_so()
    {
        Finding Enter(string end, Action<AttributeValues> cord)
        {
            var bench = new Bench();
            int red = bench.Network("red", key: "R");
            return Assert.Single(bench.Add("L", "duplex interface", null, red).Add("C", "duplex cord", cord, red).Mate("L/1", end).Check(), f => f.Rule.Code == "M07");
        }

        Assert.Equal("a plain plug there: keyed: far on C", Enter("C/near", AtoB).Expected);
        Assert.Equal("a plain plug there: keyed: near on C", Enter("C/far", AtoB).Expected);
        var both = new Bench();
        int red = both.Network("red", key: "R");
        both.Add("L", "duplex interface", v => v.Set("ports", 2), red).Add("C", "duplex cord", AtoB, red).Mate("L/1", "C/near").Mate("C/far", "L/2");
        Assert.Equal(["a plain plug there: keyed: none on C"], both.Check().Select(f => f.Expected).Distinct());
        var harness = new Bench();
        harness.Network("red", key: "R");
        harness.Add("Q", "parallel interface").Add("H", "harness", null, 0).Add("L", "duplex interface", v => v.Set("ports", 4))
            .Mate("Q/1", "H/array").Mate("H/leg1", "L/1").Mate("H/leg2", "L/2").Mate("H/leg3", "L/3").Mate("H/leg4", "L/4");
        Assert.Equal(["a plain plug there: keyed: no on H"], harness.Check().Select(f => f.Expected).Distinct());
    }

    [Theory]
    [InlineData("far", "")]
    [InlineData("both", "M07")]
    [InlineData("near", "M07 M07")]
    [InlineData("none", "M07")]
    public void A_cord_from_an_interface_to_its_network_is_keyed_at_its_far_end(string keyed, string codes)
    {
        var bench = new Bench();
        int red = bench.Network("red", key: "R");
        bench.Add("L", "duplex interface", null, red).Add("K", "cassette", U1, red).Add("C", "duplex cord", v => AtoB(v.Set("keyed", keyed)), red)
            .Mate("L/1", "C/near").Mate("C/far", "K/1");
        Assert.Equal(codes, string.Join(' ', bench.Check().Select(f => f.Rule.Code).Where(c => c == "M07")));
    }

    [Fact]
    public void Arrays_have_no_key_code()
    {
        var bench = new Bench();
        int red = bench.Network("red", key: "R"), blue = bench.Network("blue", key: "B");
        Assert.Equal("", bench.Add("K", "cassette", U1, red).Add("T", "trunk", v => v.Set("type", "Type-B"), blue).Mate("K/rear", "T/near").Codes());
    }

    private static void AtoB(AttributeValues values) => values.Set("type", "A-to-B");

    private static void U1(AttributeValues values) => values.Set("wiring", "U1");
}
