using PolarityMap.Core.Checks;
using Xunit;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>W01 to W04 beyond their examples, and the order of findings.</summary>
public sealed class DocumentRuleTests
{
    [Fact]
    public void Legs_declared_spare_are_not_left_over_and_may_be_used_all_the_same()
    {
        Assert.Equal("W01", Legs(used: 2, legs: 4).Codes());
        Assert.Equal("W01", Legs(used: 2, legs: 4, spare: 3).Codes());
        Assert.Equal("", Legs(used: 2, legs: 4, 3, 4).Codes());
        Assert.Equal("", Legs(used: 4, legs: 4, 3, 4).Codes());
        Assert.Contains("legs 3, 4 of T have an open end", Assert.Single(Legs(used: 2, legs: 4).Check()).Message);
        Assert.Contains("leg 4 of T has an open end", Assert.Single(Legs(used: 2, legs: 4, spare: 3).Check()).Message);
    }

    [Fact]
    public void A_leg_with_one_open_end_is_left_over_and_its_transmitter_is_dark()
    {
        Bench bench = new Bench()
            .Add("QL", "parallel interface", v => v.Set("ports", 2)).Add("QR", "parallel interface")
            .Add("T", "trunk", v => v.Set("type", "Type-B").Set("legs", 2).Set("base", 8))
            .Mate("QL/1", "T/near1").Mate("T/far1", "QR/1").Mate("QL/2", "T/near2");
        Assert.Equal("P03 W01", bench.Codes());
    }

    [Fact]
    public void A_plug_in_an_adapter_is_not_left_over() => Assert.Equal("", new Bench()
        .Add("T", "trunk", v => v.Set("type", "Type-B").Set("legs", 2).Set("base", 8))
        .Add("PANEL", "array panel")
        .Open("T/near1", "PANEL/1").Open("T/near2", "PANEL/2").Open("T/far1", "PANEL/3").Open("T/far2", "PANEL/4")
        .Codes());

    [Fact]
    public void A_trunk_that_no_run_comes_to_is_one_finding_for_the_trunk_and_none_for_its_legs() =>
        Assert.Equal("W02", new Bench().Add("T", "trunk", v => v.Set("type", "Type-B").Set("legs", 8)).Codes());

    [Fact]
    public void A_panel_is_used_when_plugs_meet_in_it_or_one_plug_sits_in_it()
    {
        Bench bench = new Bench()
            .Add("L", "duplex interface").Add("R", "duplex interface").Add("PANEL", "duplex panel")
            .Add("C1", "duplex cord", v => v.Set("type", "A-to-B")).Add("C2", "duplex cord", v => v.Set("type", "A-to-B"))
            .Mate("L/1", "C1/near").Mate("C1/far", "C2/near", through: "PANEL/1").Mate("C2/far", "R/1");
        // Cord, adapter and cord cross three times, which is odd (trade facts 8, rule of thumb: 2 sources, proved).
        Assert.Equal("", bench.Codes());
        Assert.Equal("", new Bench().Add("C", "duplex cord", v => v.Set("type", "A-to-B")).Add("PANEL", "duplex panel").Open("C/far", "PANEL/1").Codes());
        Assert.Equal("W02", new Bench().Add("PANEL", "duplex panel").Codes());
    }

    [Fact]
    public void The_loops_of_one_cord_are_one_finding()
    {
        Finding finding = Assert.Single(new Bench()
            .Add("C", "duplex cord", v => v.Set("type", "A-to-B"))
            .Add("PANEL", "duplex panel")
            .Mate("C/near", "C/far", through: "PANEL/1")
            .Check());
        Assert.Equal("W03", finding.Rule.Code);
        Assert.Equal(2, finding.Strands.Count);
        Assert.Equal("2 strands run in a circle through C", finding.Message);
    }

    [Fact]
    public void A_loop_of_several_cords_names_them_all_and_two_loops_are_two_findings()
    {
        var bench = new Bench();
        foreach (string name in (string[])["A", "B", "C", "D"])
            bench.Add(name, "duplex cord", v => v.Set("type", "A-to-B"));
        bench.Mate("A/far", "B/near").Mate("B/far", "A/near").Mate("C/far", "D/near").Mate("D/far", "C/near");
        IReadOnlyList<Finding> findings = bench.Check();
        Assert.Equal(["W03", "W03"], findings.Select(f => f.Rule.Code));
        Assert.EndsWith("through A, B", findings[0].Message);
        Assert.EndsWith("through C, D", findings[1].Message);
    }

    [Fact]
    public void A_link_with_both_ends_unplugged_is_one_finding_that_names_both()
    {
        Finding finding = new Bench()
            .Add("L", "duplex interface").Add("R", "duplex interface").Link("L/1", "R/1")
            .Check().Single(f => f.Rule.Code == "W04");
        Assert.Equal("nothing is plugged into L/1 and R/1", finding.Message);
        Assert.Equal([0], finding.Links);
    }

    [Fact]
    public void A_link_of_a_lane_is_wired_when_that_lane_is()
    {
        Bench bench = new Bench()
            .Add("Q", "parallel interface").Add("S", "duplex interface", v => v.Set("ports", 4)).Add("H", "harness")
            .Mate("Q/1", "H/array").Mate("H/leg1", "S/1").Mate("H/leg2", "S/2").Mate("H/leg3", "S/3").Mate("H/leg4", "S/4");
        Assert.Equal("", bench.Link("Q/1:2", "S/2").Codes());
    }

    [Fact]
    public void Errors_come_before_warnings_and_each_in_the_order_of_the_document()
    {
        // Lines: 1 the unused cord, 2 and 3 the interfaces; the two links stand last, the second port's first.
        Bench bench = new Bench()
            .Add("UNUSED", "duplex cord", v => v.Set("type", "A-to-B"))
            .Add("L", "duplex interface", v => v.Set("ports", 2)).Add("R", "duplex interface", v => v.Set("ports", 2))
            .Cord("C1", "L/1", "A-to-A", "R/1").Cord("C2", "L/2", "A-to-A", "R/2")
            .Link("L/2", "R/2").Link("L/1", "R/1");
        IReadOnlyList<Finding> findings = bench.Check();
        Assert.Equal(["P01", "P01", "W02"], findings.Select(f => f.Rule.Code));
        Assert.Contains("L/2", findings[0].Message);
        Assert.Contains("L/1", findings[1].Message);
        Assert.Equal(1, findings[2].Place.Line);
    }

    [Fact]
    public void Findings_of_one_line_come_in_the_order_of_their_codes()
    {
        IReadOnlyList<Finding> findings = new Bench()
            .Add("L", "duplex interface").Add("R", "duplex interface", v => v.Set("ports", 2))
            .Cord("C", "L/1", "A-to-A", "R/2").Link("L/1", "R/1")
            .Check();
        Assert.Equal(["D01", "P01"], findings.Select(f => f.Rule.Code));
        Assert.Single(findings.Select(f => f.Place).Distinct());
    }

    private static Bench Legs(int used, int legs, params int[] spare)
    {
        Bench bench = new Bench()
            .Add("QL", "parallel interface", v => v.Set("ports", 4)).Add("QR", "parallel interface", v => v.Set("ports", 4))
            .Add("T", "trunk", v => v.Set("type", "Type-B").Set("base", 8).Set("legs", legs), spare: spare);
        for (int leg = 1; leg <= used; leg++)
            bench.Mate($"QL/{leg}", $"T/near{leg}").Mate($"T/far{leg}", $"QR/{leg}");
        return bench;
    }
}
