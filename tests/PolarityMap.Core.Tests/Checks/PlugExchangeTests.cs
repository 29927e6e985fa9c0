using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using Xunit;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>
/// The remedy of a reversible cord. Source: trade facts polarity 2.4: reversing one end turns A-to-B into A-to-A and back,
/// reversing both leaves it (mechanism: two sources; algebra proved).
/// </summary>
public sealed class PlugExchangeTests
{
    [Fact]
    public void A_reversible_cord_of_the_wrong_type_is_put_right_by_hand_and_the_proof_names_the_ports()
    {
        Finding finding = Assert.Single(Direct("A-to-A", reversible: true).Link("L/1", "R/1").Check());
        Assert.Equal("P01", finding.Rule.Code);
        Remedy remedy = Assert.Single(finding.Remedies);
        Assert.Equal("exchange the plugs at one end of C (reversible in the field)", remedy.Text);
        Assert.Equal("transmit L/1:A lands on receive R/1:B and transmit R/1:A lands on receive L/1:B, the ports that are meant", remedy.Proof);
    }

    [Fact]
    public void Without_a_link_the_proof_says_so() =>
        Assert.EndsWith("; no link says which ports are meant", Assert.Single(Assert.Single(Direct("A-to-A", reversible: true).Check()).Remedies).Proof);

    [Fact]
    public void A_cord_that_is_not_reversible_has_no_remedy() =>
        Assert.Empty(Assert.Single(Direct("A-to-A", reversible: false).Link("L/1", "R/1").Check()).Remedies);

    [Fact]
    public void Reversing_does_not_help_where_the_cord_sits_in_the_wrong_port()
    {
        IReadOnlyList<Finding> findings = Direct("A-to-A", reversible: true).Link("L/1", "R/2").Check();
        Assert.Equal(["D01", "P01"], findings.Select(f => f.Rule.Code));
        Assert.All(findings, f => Assert.Empty(f.Remedies));
    }

    [Fact]
    public void Reversing_does_not_help_where_only_one_fibre_of_the_pair_passes_the_cord()
    {
        // The transmitters meet over a simplex cord, the receivers over one fibre of the reversible cord.
        Bench bench = Ports()
            .Add("C", "duplex cord", Reversible("A-to-B"))
            .Add("S1", "simplex cord").Add("S2", "simplex cord").Add("S3", "simplex cord")
            .Mate("L/1:A", "S1/near").Mate("S1/far", "R/1:A")
            .Mate("L/1:B", "S2/near").Mate("S2/far", "C/near:A").Mate("C/far:B", "S3/near").Mate("S3/far", "R/1:B");
        Finding finding = Assert.Single(bench.Check());
        Assert.Equal("P01", finding.Rule.Code);
        Assert.Empty(finding.Remedies);
    }

    [Fact]
    public void Reversing_does_not_help_where_the_far_ends_hear_another_wavelength()
    {
        Bench bench = new Bench()
            .Add("L", "duplex interface", v => v.Set("application", "10GBASE-SR")).Add("R", "duplex interface", v => v.Set("application", "10GBASE-LR"))
            .Add("C", "duplex cord", Reversible("A-to-A")).Mate("L/1", "C/near").Mate("C/far", "R/1");
        Assert.Empty(Assert.Single(bench.Check(), f => f.Rule.Code == "P01").Remedies);
    }

    [Fact]
    public void Each_reversible_cord_of_a_channel_is_a_remedy_by_itself()
    {
        Finding finding = Assert.Single(Method("C1", "C2").Check());
        Assert.Equal(
            ["exchange the plugs at one end of C1 (reversible in the field)", "exchange the plugs at one end of C2 (reversible in the field)"],
            finding.Remedies.Select(r => r.Text));
    }

    // Source: the meaning of a remedy: the document changed as it says raises nothing.
    [Theory]
    [InlineData("C1", "near")]
    [InlineData("C1", "far")]
    [InlineData("C2", "near")]
    [InlineData("C2", "far")]
    public void The_plant_with_the_remedy_done_is_right(string cord, string end) =>
        Assert.Equal("", Method("C1", "C2", cord, end).Codes());

    [Theory]
    [InlineData("C1")]
    [InlineData("C2")]
    public void Exchanging_at_both_ends_changes_nothing(string cord) => Assert.Equal("P01", Method("C1", "C2", cord, "both").Codes());

    [Fact]
    public void A_crossed_pair_among_right_ones_has_the_remedy_too()
    {
        Bench bench = new Bench()
            .Add("L", "duplex interface", v => v.Set("ports", 2)).Add("R", "duplex interface", v => v.Set("ports", 2))
            .Add("KL", "cassette", v => v.Set("wiring", "U1")).Add("KR", "cassette", v => v.Set("wiring", "U1"))
            .Add("T", "trunk", v => v.Set("type", "Type-B")).Mate("KL/rear", "T/near").Mate("T/far", "KR/rear")
            .Cord("CL1", "L/1", "A-to-B", "KL/1").Cord("CL2", "L/2", "A-to-B", "KL/2").Cord("CR1", "KR/1", "A-to-B", "R/1")
            .Add("CR2", "duplex cord", Reversible("A-to-A")).Mate("CR2/far", "KR/2").Mate("R/2", "CR2/near");
        Finding finding = Assert.Single(Channels.Links(bench, 2).Check());
        Assert.Equal("D02", finding.Rule.Code);
        Assert.Contains("CR2", Assert.Single(finding.Remedies).Text);
    }

    [Fact]
    public void Receivers_that_face_each_other_get_the_remedy_when_the_whole_cord_is_right_after_it()
    {
        // Both fibres of the cord lead to ports of two interfaces each; no link says which are meant.
        Bench bench = new Bench()
            .Add("L", "duplex interface", v => v.Set("ports", 2)).Add("R", "duplex interface", v => v.Set("ports", 2))
            .Add("C", "duplex cord", Reversible("A-to-A"));
        foreach ((string cord, string a, string b) in ((string, string, string)[])
            [("S1", "L/1:B", "C/near:A"), ("S2", "C/far:A", "R/1:B"), ("S3", "L/2:A", "C/near:B"), ("S4", "C/far:B", "R/2:A")])
            bench.Cord(cord, a, "simplex", b);
        IReadOnlyList<Finding> findings = bench.Check();
        Assert.Equal(["P02", "P01"], findings.Select(f => f.Rule.Code));
        Assert.All(findings, f => Assert.Equal(
            "transmit L/2:A lands on receive R/1:B and transmit R/2:A lands on receive L/1:B; no link says which ports are meant",
            Assert.Single(f.Remedies).Proof));
    }

    private static Bench Ports() => new Bench()
        .Add("L", "duplex interface").Add("R", "duplex interface", v => v.Set("ports", 2));

    private static Bench Direct(string type, bool reversible) => Ports()
        .Add("C", "duplex cord", v => v.Set("type", type).Set("reversible", reversible ? "yes" : "no"))
        .Mate("L/1", "C/near").Mate("C/far", "R/1");

    private static Action<AttributeValues> Reversible(string type) => v => v.Set("type", type).Set("reversible", "yes");

    /// <summary>One link of method U1 with an A-to-A cord for the right one, and the named end of a cord reversed.</summary>
    private static Bench Method(string left, string right, string? reversed = null, string end = "none")
    {
        Action<AttributeValues> Cord(string name, string type) => v =>
            v.Set("type", type).Set("reversible", "yes").Set("reversed", name == reversed ? end : "none");
        return new Bench()
            .Add("L", "duplex interface").Add("R", "duplex interface")
            .Add("KL", "cassette", v => v.Set("wiring", "U1")).Add("KR", "cassette", v => v.Set("wiring", "U1"))
            .Add("T", "trunk", v => v.Set("type", "Type-B")).Mate("KL/rear", "T/near").Mate("T/far", "KR/rear")
            .Add(left, "duplex cord", Cord(left, "A-to-B")).Add(right, "duplex cord", Cord(right, "A-to-A"))
            .Mate("L/1", $"{left}/near").Mate($"{left}/far", "KL/1").Mate("KR/1", $"{right}/near").Mate($"{right}/far", "R/1")
            .Link("L/1", "R/1");
    }
}
