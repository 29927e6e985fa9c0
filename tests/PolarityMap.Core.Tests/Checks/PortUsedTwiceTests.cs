using PolarityMap.Core.Checks;
using Xunit;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>M08, and that what lies behind a plug without room is told once. Source: a port holds one plug.</summary>
public sealed class PortUsedTwiceTests
{
    [Fact]
    public void The_finding_names_both_places_and_stands_at_the_second()
    {
        // Lines: 1 to 4 the parts, 5 and 6 the first cord's matings, 7 the second cord's, 8 the clash, 9 the link.
        Finding finding = Assert.Single(Twice("R/1", "D/far").Link("L/2", "R/2").Check());
        Assert.Equal("M08", finding.Rule.Code);
        Assert.Equal(Severity.Error, finding.Rule.Severity);
        Assert.Equal("R/1 is used twice, at line 6 and at line 8", finding.Message);
        Assert.Equal("D/far has no room there", finding.Actual);
        Assert.Equal(8, finding.Place.Line);
        Assert.Equal([6], finding.Related.Select(p => p.Line));
        Assert.Equal([0], finding.Links);

        // Two strands of the cord without room and two of the port that is taken.
        Assert.Equal(4, finding.Strands.Count);
    }

    [Fact]
    public void The_first_link_through_the_port_stays_proven()
    {
        Bench bench = Twice("R/1", "D/far").Link("L/1", "R/1").Link("L/2", "R/2");
        Assert.Equal([1], Assert.Single(bench.Check()).Links);
    }

    [Fact]
    public void One_position_that_is_taken_is_named() => Assert.StartsWith(
        "L/1:A is used twice, at line 4 and at line 5",
        Assert.Single(
            new Bench().Add("L", "duplex interface").Add("S", "simplex cord").Add("U", "simplex cord").Mate("S/far", "L/1:A").Clash("L/1:A", "U/far", 4).Check(),
            f => f.Rule.Code == "M08").Message);

    [Fact]
    public void An_adapter_with_two_plugs_has_no_room_for_a_third()
    {
        // Lines: 1 to 4 the parts, 5 the mating in the adapter, 6 the other end of the third cord.
        Bench bench = new Bench()
            .Add("C", "duplex cord", v => v.Set("type", "A-to-B")).Add("D", "duplex cord", v => v.Set("type", "A-to-B"))
            .Add("P", "duplex panel").Add("L", "duplex interface").Add("E", "duplex cord", v => v.Set("type", "A-to-B"))
            .Mate("C/far", "D/near", through: "P/1").Mate("L/1", "E/near").Clash("P/1", "E/far", 6);
        Finding finding = Assert.Single(bench.Check());
        Assert.Equal("P/1 is used twice, at line 6 and at line 8", finding.Message);
        Assert.Equal(2, finding.Strands.Count);
    }

    [Fact]
    public void A_plug_that_is_in_use_elsewhere_leaves_the_other_plug_of_the_adapter_alone_and_that_is_told_once()
    {
        // T/far sits in K already; the run that takes it through P/1 goes on to R.
        Bench bench = new Bench()
            .Add("K", "duplex interface").Add("T", "duplex cord", v => v.Set("type", "A-to-B")).Add("P", "duplex panel")
            .Add("C", "duplex cord", v => v.Set("type", "A-to-B")).Add("R", "duplex interface").Add("L", "duplex interface")
            .Mate("L/1", "T/near").Mate("T/far", "K/1").Clash("T/far", "P/1", 8).Open("C/near", "P/1").Mate("C/far", "R/1")
            .Link("K/1", "L/1").Link("R/1", "L/1");
        Finding finding = Assert.Single(bench.Check(), f => f.Rule.Code != "D01");
        Assert.Equal("M08", finding.Rule.Code);
        Assert.Equal([1], finding.Links);
    }

    [Fact]
    public void Clashes_of_two_ranges_are_one_finding()
    {
        Bench bench = new Bench().Add("L", "duplex interface", v => v.Set("ports", 4)).Add("R", "duplex interface", v => v.Set("ports", 4));
        bench.AtOneStop(b =>
        {
            for (int n = 1; n <= 4; n++)
                b.Cord($"C{n}", $"L/{n}", "A-to-B", $"R/{n}").Add($"D{n}", "duplex cord", v => v.Set("type", "A-to-B"));
        });
        bench.AtOneStop(b =>
        {
            for (int n = 1; n <= 4; n++)
                b.Clash($"R/{n}", $"D{n}/far", 3);
        });
        Finding finding = Assert.Single(bench.Check());
        Assert.Equal("R/1 is used twice, at line 3 and at line 4, and 3 more at the same stop", finding.Message);
    }

    private static Bench Twice(string taken, string refused) => new Bench()
        .Add("L", "duplex interface", v => v.Set("ports", 2)).Add("R", "duplex interface", v => v.Set("ports", 2))
        .Add("C", "duplex cord", v => v.Set("type", "A-to-B")).Add("D", "duplex cord", v => v.Set("type", "A-to-B"))
        .Mate("L/1", "C/near").Mate("C/far", "R/1").Mate("L/2", "D/near").Clash(taken, refused, 6);
}
