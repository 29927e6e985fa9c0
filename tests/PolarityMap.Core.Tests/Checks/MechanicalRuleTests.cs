using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using Xunit;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>M01 to M06 in the smallest plants that raise them, and in those that nearly do.</summary>
public sealed class MechanicalRuleTests
{
    // Source: trade facts polarity 7.1: exactly one of two mated ferrules has pins (more than six sources).
    [Theory]
    [InlineData("far", "near", "M01")]
    [InlineData("none", "far", "M02")]
    [InlineData("far", "far", "")]
    [InlineData("none", "near", "")]
    [InlineData("both", "none", "")]
    public void Of_two_mated_array_plugs_exactly_one_has_pins(string left, string right, string codes) =>
        Assert.Equal(codes, Cords(l => l.Set("pins", left), r => r.Set("pins", right)).Codes());

    // Source: trade facts polarity 7.1: transceiver ports are pinned (six sources), cords unpinned (five).
    [Fact]
    public void A_cord_enters_an_interface_without_pins()
    {
        Bench Direct(string pins) => new Bench()
            .Add("Q", "parallel interface").Add("R", "parallel interface")
            .Add("X", "array cord", v => v.Set("type", "Type-B").Set("pins", pins))
            .Mate("Q/1", "X/near").Mate("X/far", "R/1");
        Assert.Equal("", Direct("none").Codes());
        Finding finding = Assert.Single(Direct("near").Check());
        Assert.Equal("M01", finding.Rule.Code);
        Assert.Equal("Q/1 and X/near both have guide pins and cannot seat", finding.Message);
        Assert.Equal("M01 M01", Direct("both").Codes());
    }

    // Source: trade facts polarity 7.1: cassette pinned with the trunk unpinned (four sources), or the reverse (three).
    [Theory]
    [InlineData("pinned", "none", "")]
    [InlineData("unpinned", "both", "")]
    [InlineData("pinned", "both", "M01 M01")]
    [InlineData("unpinned", "none", "M02 M02")]
    public void Either_the_cassette_or_the_trunk_has_the_pins(string cassette, string trunk, string codes) => Assert.Equal(codes, new Bench()
        .Add("KL", "cassette", v => v.Set("wiring", "U1").Set("pins", cassette))
        .Add("KR", "cassette", v => v.Set("wiring", "U1").Set("pins", cassette))
        .Add("T", "trunk", v => v.Set("type", "Type-B").Set("pins", trunk))
        .Mate("KL/rear", "T/near").Mate("T/far", "KR/rear")
        .Codes());

    // Source: trade facts polarity 7.1: a trunk between panels for parallel use is bought pinned (two sources).
    [Fact]
    public void A_trunk_between_cords_needs_pins_at_both_ends_and_each_open_joint_is_told()
    {
        Bench Channel(string pins)
        {
            Bench bench = new Bench()
                .Add("Q", "parallel interface").Add("R", "parallel interface")
                .Add("X1", "array cord", v => v.Set("type", "Type-B")).Add("X2", "array cord", v => v.Set("type", "Type-B"))
                .Add("T", "trunk", v => v.Set("type", "Type-B").Set("pins", pins))
                .Add("P", "array panel", v => v.Set("ports", 2).Set("keys", "aligned"));
            return bench.Mate("Q/1", "X1/near").Mate("X1/far", "T/near", through: "P/1").Mate("T/far", "X2/near", through: "P/2").Mate("X2/far", "R/1");
        }

        Assert.Equal("", Channel("both").Codes());
        IReadOnlyList<Finding> findings = Channel("none").Check();
        Assert.Equal(["M02", "M02"], findings.Select(f => f.Rule.Code));
        Assert.Equal("X1/far and T/near in P/1 both lack guide pins, so nothing aligns their fibres", findings[0].Message);

        // Lines: 1 and 2 the interfaces, 3 and 4 the cords, 5 the trunk, 6 the panel, 8 the mating.
        Assert.Equal(8, findings[0].Place.Line);
        Assert.Equal([3, 6, 5], findings[0].Related.Select(p => p.Line));
        Assert.Equal(12, findings[0].Strands.Count);
    }

    // Common practice: one hand makes one mistake at one stop of a run.
    [Fact]
    public void Alike_matings_of_one_stop_are_one_finding_with_all_their_strands()
    {
        Bench bench = new Bench()
            .Add("T", "trunk", v => v.Set("type", "Type-B").Set("base", 8).Set("legs", 4), spare: [1, 2, 3, 4])
            .Add("U", "trunk", v => v.Set("type", "Type-B").Set("base", 8).Set("legs", 4), spare: [1, 2, 3, 4]);
        bench.AtOneStop(b =>
        {
            for (int leg = 1; leg <= 4; leg++)
                b.Mate($"T/far{leg}", $"U/near{leg}", Keying.Opposed);
        });
        Finding finding = Assert.Single(bench.Check());
        Assert.Equal("T/far1 and U/near1 both lack guide pins, so nothing aligns their fibres, and 3 more at the same stop", finding.Message);

        // Four legs of eight fibres; the four dark places of each ferrule are no strands.
        Assert.Equal(32, finding.Strands.Distinct().Count());
        Assert.Equal(32, finding.Strands.Count);
    }

    [Fact]
    public void Matings_of_one_stop_with_other_faults_are_findings_of_their_own()
    {
        Bench bench = new Bench()
            .Add("K", "cassette", v => v.Set("wiring", "U1"))
            .Add("S", "duplex cord", v => v.Set("type", "A-to-B").Set("connector", "SC"))
            .Add("F", "duplex cord", v => v.Set("type", "A-to-B").Set("connector", "FC"));
        IReadOnlyList<Finding> findings = bench.AtOneStop(b => b.Mate("S/far", "K/1").Mate("F/far", "K/2")).Check();
        Assert.Equal(["M03", "M03"], findings.Select(f => f.Rule.Code));
        Assert.Single(findings.Select(f => f.Place).Distinct());
    }

    // Source: trade facts polarity 8: LC ferrule 1.25 mm, SC 2.5 mm (two sources).
    [Theory]
    [InlineData("LC", "LC", "LC", "")]
    [InlineData("SC", "SC", "SC", "")]
    [InlineData("LC", "SC", "LC", "M03")]
    [InlineData("LC", "LC", "SC", "M03")]
    [InlineData("SC", "SC", "LC", "M03")]
    public void A_mating_has_one_connector_on_both_sides_and_in_the_adapter(string left, string right, string adapter, string codes)
    {
        Bench bench = new Bench()
            .Add("C1", "duplex cord", v => v.Set("type", "A-to-B").Set("connector", left))
            .Add("C2", "duplex cord", v => v.Set("type", "A-to-B").Set("connector", right))
            .Add("P", "duplex panel", v => v.Set("ports", 1).Set("connector", adapter));
        Assert.Equal(codes, bench.Mate("C1/far", "C2/near", through: "P/1").Codes());
    }

    [Fact]
    public void A_plug_that_waits_alone_in_a_foreign_adapter_is_told_too()
    {
        Bench cord = new Bench().Add("C", "duplex cord", v => v.Set("type", "A-to-B")).Add("P", "duplex panel", v => v.Set("connector", "SC"));
        Finding finding = Assert.Single(cord.Open("C/far", "P/3").Check());
        Assert.Equal("M03", finding.Rule.Code);
        Assert.Equal("the LC plug C/far does not go into the SC adapter P/3", finding.Message);
        Bench trunk = new Bench().Add("T", "trunk", v => v.Set("type", "Type-B")).Add("P", "duplex panel");
        Assert.Equal("the array plug T/far does not go into the duplex adapter P/1", Assert.Single(trunk.Open("T/far", "P/1").Check()).Message);
    }

    [Fact]
    public void Faces_of_different_families_do_not_mate_and_that_alone_is_told()
    {
        Bench bench = new Bench()
            .Add("L", "duplex interface").Add("Q", "parallel interface")
            .Add("C", "duplex cord", v => v.Set("type", "A-to-B"))
            .Mate("L/1", "C/near").Mate("C/far", "Q/1", Keying.Aligned)
            .Link("L/1", "Q/1");
        Finding finding = Assert.Single(bench.Check());
        Assert.Equal("M03", finding.Rule.Code);
        Assert.Equal("C/far is duplex and Q/1 is a 12-position array, which do not go together", finding.Message);
        Assert.Equal([0], finding.Links);
    }

    // Source: the document's own grammar: PART/PORT:A names one position of a duplex port.
    [Fact]
    public void A_simplex_plug_on_a_whole_duplex_port_is_told_to_name_the_position()
    {
        Finding finding = Assert.Single(new Bench()
            .Add("L", "duplex interface").Add("S", "simplex cord").Mate("S/far", "L/1").Check());
        Assert.Equal("M03", finding.Rule.Code);
        Assert.Equal("L/1:A or L/1:B", finding.Expected);
        Assert.Equal("P03", new Bench().Add("L", "duplex interface").Add("S", "simplex cord").Mate("S/far", "L/1:A").Codes());
    }

    // Source: trade facts polarity 7.3: 12/24 and 16/32 do not mate (two sources); 12 with 24: the rows do not line up (from memory).
    [Theory]
    [InlineData(12, 12, "")]
    [InlineData(8, 12, "")]
    [InlineData(16, 16, "")]
    [InlineData(12, 16, "M04")]
    [InlineData(16, 32, "M04")]
    [InlineData(12, 24, "M04")]
    [InlineData(24, 32, "M04")]
    public void Array_ferrules_mate_with_their_like_only(int left, int right, string codes) =>
        Assert.Equal(codes, Cords(Base(left, "none"), Base(right, "near")).Codes());

    [Fact]
    public void A_message_about_sizes_says_what_differs()
    {
        Assert.Equal(
            "X1/far is a 12-position array and X2/near a 16-position array: the key of a 16-wide ferrule sits to one side and does not go into a 12-wide port",
            Assert.Single(Cords(Base(12, "none"), Base(16, "near")).Check()).Message);
        Assert.Equal(
            "X1/far is a 2x12-position array and X2/near a 12-position array: one row meets two and the fibres lie beside each other",
            Assert.Single(Cords(Base(24, "none"), Base(12, "near")).Check()).Message);
    }

    // Source: trade facts polarity 7.3; an adapter has no rows, so 12 and 24 share one.
    [Theory]
    [InlineData(12, 12, "")]
    [InlineData(24, 12, "")]
    [InlineData(16, 16, "")]
    [InlineData(32, 16, "")]
    [InlineData(16, 12, "M04")]
    [InlineData(12, 16, "M04")]
    public void An_adapter_takes_the_plugs_of_its_key(int plug, int adapter, string codes)
    {
        Bench Panel() => new Bench()
            .Add("X1", "array cord", v => Base(plug, "none")(v)).Add("X2", "array cord", v => Base(plug, "near")(v))
            .Add("P", "array panel", v => v.Set("ports", 2).Set("base", adapter));
        Assert.Equal(codes, Panel().Mate("X1/far", "X2/near", through: "P/1").Codes());
        IReadOnlyList<Finding> open = Panel().Mate("X1/near", "X2/near", Keying.Opposed).Open("X1/far", "P/2").Check();
        Assert.Equal(codes, string.Join(' ', open.Select(f => f.Rule.Code)));
    }

    [Fact]
    public void A_dark_transmit_behind_a_plug_that_does_not_go_in_is_left_to_the_mechanical_rule()
    {
        Bench Open(int adapter) => new Bench()
            .Add("Q", "parallel interface", v => v.Set("ports", 2))
            .Add("X", "array cord", v => v.Set("type", "Type-B")).Add("P", "array panel", v => v.Set("base", adapter))
            .Mate("Q/1", "X/near").Open("X/far", "P/1").Link("Q/1", "Q/2");
        Assert.Equal("P03", Open(12).Codes());
        Finding finding = Assert.Single(Open(16).Check());
        Assert.Equal("M04", finding.Rule.Code);
        Assert.Equal([0], finding.Links);
    }

    // Source: trade facts polarity 7.2: flat never mates with angled (three sources).
    [Theory]
    [InlineData("flat", "flat", "")]
    [InlineData("angled", "angled", "")]
    [InlineData("flat", "angled", "M05")]
    [InlineData("up-angled", "flat", "M05")]
    [InlineData(null, "angled", "")]
    [InlineData(null, "flat", "")]
    public void Flat_arrays_do_not_meet_angled_ones_where_both_are_known(string? left, string right, string codes) =>
        Assert.Equal(codes, Cords(Polished(left, "none"), Polished(right, "near")).Codes());

    [Theory]
    [InlineData("duplex cord", "flat", "")]
    [InlineData("duplex cord", "angled", "M05")]
    [InlineData("simplex cord", "flat", "")]
    [InlineData("simplex cord", "angled", "M05")]
    public void Flat_and_angled_matter_for_duplex_and_simplex_too(string kind, string polish, string codes)
    {
        Bench bench = new Bench()
            .Add("K", "cassette", v => v.Set("wiring", "U1"))
            .Add("C", kind, v => (kind == "duplex cord" ? v.Set("type", "A-to-B") : v).Set("far-duplex-polish", polish));
        Assert.Equal(codes, bench.Mate("C/far", kind == "duplex cord" ? "K/1" : "K/1:A").Codes());
    }

    // Source: trade facts polarity 7.2: the end face is an attribute of each port; single-mode arrays are angled in practice.
    [Fact]
    public void The_end_face_of_an_array_that_follows_from_the_wrong_fibre_is_left_to_the_fibre_rules()
    {
        Assert.Equal("F01", Cords(v => v.Set("fibre", "OM4"), v => v.Set("fibre", "OS2").Set("pins", "near")).Codes());
        Assert.Equal("F04", Direct("400GBASE-DR4", v => v.Set("fibre", "OM4")).Codes());
        Assert.Equal("M05 M05", Direct("400GBASE-DR4", v => v.Set("fibre", "OS2").Set("polish", "flat")).Codes());
        Assert.Equal("", Direct("400GBASE-DR4", v => v.Set("fibre", "OS2")).Codes());
    }

    // Source: trade facts polarity 7.2 and section 10: down with down 0 degrees opposed, 16 aligned; down with up the reverse. Proved.
    [Theory]
    [InlineData("angled", "angled", Keying.Opposed, "")]
    [InlineData("angled", "angled", Keying.Aligned, "M06")]
    [InlineData("up-angled", "up-angled", Keying.Opposed, "")]
    [InlineData("up-angled", "up-angled", Keying.Aligned, "M06")]
    [InlineData("angled", "up-angled", Keying.Opposed, "M06")]
    [InlineData("up-angled", "angled", Keying.Opposed, "M06")]
    [InlineData("angled", "up-angled", Keying.Aligned, "")]
    [InlineData("flat", "flat", Keying.Aligned, "")]
    [InlineData("flat", "flat", Keying.Opposed, "")]
    public void Two_slopes_fit_in_one_of_the_two_keyings(string left, string right, Keying keys, string codes) =>
        Assert.Equal(codes, Cords(Polished(left, "none"), Polished(right, "near"), keys).Codes());

    // Source: trade facts polarity 7.2: the receptacle has the complementary slope although the mating is aligned (proved).
    [Theory]
    [InlineData("angled", "")]
    [InlineData("up-angled", "")]
    [InlineData("flat", "M05 M05")]
    public void A_receptacle_has_the_slope_of_its_plug(string polish, string codes) =>
        Assert.Equal(codes, Direct("400GBASE-DR4", v => v.Set("polish", polish)).Codes());

    // Source: trade facts polarity 3: method B with normal angled single-mode plugs is not buildable (one source; proved).
    [Theory]
    [InlineData("Type-A", "")]
    [InlineData("Type-B", "M06 M06")]
    public void Angled_trunks_want_opposed_adapters(string adapter, string codes) => Assert.Equal(codes, new Bench()
        .Add("KL", "cassette", v => v.Set("wiring", "U1").Set("fibre", "OS2").Set("keys", Channels.Keys(adapter)))
        .Add("KR", "cassette", v => v.Set("wiring", "U1").Set("fibre", "OS2").Set("keys", Channels.Keys(adapter)))
        .Add("T", "trunk", v => v.Set("type", "Type-B").Set("fibre", "OS2"))
        .Mate("KL/rear", "T/near").Mate("T/far", "KR/rear")
        .Codes());

    /// <summary>Two array cords that meet with their keys opposed, or as told.</summary>
    private static Bench Cords(Action<AttributeValues> left, Action<AttributeValues> right, Keying keys = Keying.Opposed)
    {
        void Typed(AttributeValues v, Action<AttributeValues> set)
        {
            set(v);
            if (!v.Has("type"))
                v.Set("type", "Type-B");
        }

        return new Bench().Add("X1", "array cord", v => Typed(v, left)).Add("X2", "array cord", v => Typed(v, right)).Mate("X1/far", "X2/near", keys);
    }

    private static Action<AttributeValues> Base(int fibres, string pins) => v =>
        v.Set("base", fibres).Set("pins", pins).Set("type", fibres is 24 or 32 ? "reversed-in-row" : "Type-B");

    private static Action<AttributeValues> Polished(string? polish, string pins) => v =>
    {
        v.Set("pins", pins);
        if (polish is not null)
            v.Set("polish", polish);
    };

    /// <summary>One Type-B cord between two ports of an application.</summary>
    private static Bench Direct(string application, Action<AttributeValues> cord) => new Bench()
        .Add("Q", "parallel interface", v => v.Set("application", application))
        .Add("R", "parallel interface", v => v.Set("application", application))
        .Add("X", "array cord", v => { v.Set("type", "Type-B"); cord(v); })
        .Mate("Q/1", "X/near").Mate("X/far", "R/1");
}
