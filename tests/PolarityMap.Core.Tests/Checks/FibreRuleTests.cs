using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using Xunit;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>F01 to F04: which fibres go together along a strand, and that each cause is told once.</summary>
public sealed class FibreRuleTests
{
    // Source: trade facts interfaces 4.4 and 5 row 20, polarity 12: cores 9, 50 (OM2 to OM5) and 62.5 (OM1); a class mix of one
    // core is a matter of rate. Classes: ISO/IEC 11801-1.
    [Theory]
    [InlineData("OM4", "OM4", "OM4", "")]
    [InlineData("OS2", "OM4", "OS2", "F01 F01")]
    [InlineData("OM4", "OM4", "OS2", "F01")]
    [InlineData("OM1", "OM4", "OM4", "F02")]
    [InlineData("OM4", "OM1", "OM4", "F02 F02")]
    [InlineData("OM1", "OM1", "OM1", "")]
    [InlineData("OM3", "OM4", "OM4", "F03")]
    [InlineData("OM4", "OM3", "OM4", "F03")]
    [InlineData("OS1a", "OS2", "OS2", "F03")]
    [InlineData("OM1", "OM4", "OS2", "F01 F02")]
    [InlineData(null, "OM4", null, "")]
    [InlineData(null, null, null, "")]
    [InlineData("OM4", null, "OM4", "")]
    [InlineData("OM4", null, "OS2", "F01")]
    public void Fibres_along_a_strand_are_compared_where_they_are_stated(string? left, string? middle, string? right, string codes) =>
        Assert.Equal(codes, Chain([left, middle, right]).Codes());

    [Fact]
    public void Single_mode_on_multimode_stands_at_the_mating_and_names_both_parts()
    {
        // Lines: 1 and 2 the interfaces, 3 to 5 the cords, 6 the mating with L, 7 that of C1 with C2.
        Finding finding = Assert.Single(Chain(["OS2", "OM4", "OM4"]).Check());
        Assert.Equal("C1 of OS2 meets C2 of OM4", finding.Message);
        Assert.Equal("single-mode OS2 on multimode OM4", finding.Actual);
        Assert.Equal(7, finding.Place.Line);
        Assert.Equal([3, 4], finding.Related.Select(p => p.Line));
        Assert.Equal(2, finding.Strands.Count);
    }

    [Fact]
    public void Parts_between_whose_fibre_is_not_stated_are_named() =>
        Assert.Equal("C1 of OM4 meets C3 of OS2 by way of C2, which states no fibre", Assert.Single(Chain(["OM4", null, "OS2"]).Check()).Message);

    // Source: trade facts interfaces 4.4: 62.5 to 50 um 2.2 dB at NA 0.20, the other way 0, overfilled upper bounds (one source).
    [Fact]
    public void Mixed_cores_say_the_bound_and_never_a_reckoned_loss()
    {
        Finding finding = Assert.Single(Chain(["OM1", "OM4", "OM4"]).Check());
        Assert.Equal("62.5 on 50 micrometres; up to 2.2 dB lost stepping down (overfilled upper bound, NA 0.20), none stepping up", finding.Actual);
    }

    [Fact]
    public void Twelve_strands_from_one_part_to_another_are_one_finding()
    {
        Finding finding = Assert.Single(new Bench()
            .Add("K", "cassette", v => v.Set("wiring", "U1").Set("fibre", "OM4"))
            .Add("T", "trunk", v => v.Set("type", "Type-B").Set("fibre", "OM1"))
            .Mate("K/rear", "T/near").Check());
        Assert.Equal("F02", finding.Rule.Code);
        Assert.Equal(12, finding.Strands.Count);
        Assert.Equal("K of OM4 meets T of OM1", finding.Message);
    }

    [Fact]
    public void Cords_of_one_stop_are_one_finding()
    {
        Bench bench = new Bench().Add("K", "cassette", v => v.Set("wiring", "U1").Set("fibre", "OS2"));
        bench.AtOneStop(b =>
        {
            for (int n = 1; n <= 6; n++)
                b.Add($"C{n}", "duplex cord", v => v.Set("type", "A-to-B").Set("fibre", "OM3")).Mate($"C{n}/far", $"K/{n}");
        });
        Finding finding = Assert.Single(bench.Check());
        Assert.EndsWith(", and 5 more at the same stop", finding.Message);
        Assert.Equal(12, finding.Strands.Count);
    }

    // Source: 10GBASE-SR reaches 300 m on OM3 and 400 m on OM4 (IEEE 802.3 clause 52; three sources).
    [Fact]
    public void A_lower_class_says_what_the_application_loses()
    {
        Finding finding = Assert.Single(Chain(["OM3", "OM4", "OM4"], "10GBASE-SR").Check());
        Assert.Equal("F03", finding.Rule.Code);
        Assert.Equal(Severity.Warning, finding.Rule.Severity);
        Assert.Equal("C1 of OM3 lies in a channel of OM4", finding.Message);
        Assert.Equal("the channel counts as OM3; 10GBASE-SR reaches 300 m instead of 400 m", finding.Actual);
        Assert.Equal(3, finding.Place.Line);
        Assert.Equal(2, finding.Strands.Count);
    }

    // Source: 1000BASE-SX reaches 550 m on OM3 and on OM4 alike (trade facts interfaces 8 no. 6).
    [Fact]
    public void A_lower_class_that_costs_no_reach_says_nothing_of_it() =>
        Assert.Equal("the channel counts as OM3", Assert.Single(Chain(["OM3", "OM4", "OM4"], "1000BASE-SX").Check()).Actual);

    // The rule's own words: the rest is the class of most parts, or that of the longest cable if that is better.
    [Theory]
    [InlineData("OM3", 2, "OM3", 60, "OM4", 2, "")]
    [InlineData("OM3", 2, "OM4", 60, "OM3", 2, "F03 F03")]
    [InlineData("OM4", 2, "OM3", 60, "OM4", 2, "F03")]
    [InlineData("OM3", 0, "OM4", 0, "OM3", 0, "")]
    [InlineData("OM2", 2, "OM3", 60, "OM4", 2, "F03 F03")]
    public void One_better_cord_makes_no_plant_lower_and_two_lower_cords_make_no_trunk_too_good(
        string left, int leftMetres, string middle, int middleMetres, string right, int rightMetres, string codes) =>
        Assert.Equal(codes, Chain([left, middle, right], metres: [leftMetres, middleMetres, rightMetres]).Codes());

    [Fact]
    public void A_lower_part_on_many_strands_is_one_finding_with_all_of_them()
    {
        Finding finding = Assert.Single(new Bench()
            .Add("KL", "cassette", v => v.Set("wiring", "U1").Set("fibre", "OM4")).Add("KR", "cassette", v => v.Set("wiring", "U1").Set("fibre", "OM4"))
            .Add("T", "trunk", v => v.Set("type", "Type-B").Set("fibre", "OM3"))
            .Mate("KL/rear", "T/near").Mate("T/far", "KR/rear").Check());
        Assert.Equal("F03", finding.Rule.Code);
        Assert.Equal(12, finding.Strands.Count);
    }

    // Source: the tables of IEEE 802.3: 10GBASE-LR is for single-mode, 10GBASE-SR for multimode, 1000BASE-LX for both but OM4.
    [Theory]
    [InlineData("10GBASE-LR", "OM4", "F04")]
    [InlineData("10GBASE-LR", "OS2", "")]
    [InlineData("10GBASE-SR", "OS2", "F04")]
    [InlineData("10GBASE-SR", "OM1", "")]
    [InlineData("25GBASE-SR", "OM2", "F04")]
    [InlineData("25GBASE-SR", "OM3", "")]
    [InlineData("1000BASE-LX", "OM3", "")]
    [InlineData("1000BASE-LX", "OS1", "")]
    public void A_class_without_a_row_in_the_table_is_not_for_the_application(string application, string fibre, string codes) =>
        Assert.Equal(codes, Chain([fibre], application).Codes());

    [Fact]
    public void A_class_that_is_not_listed_is_one_finding_for_a_channel_and_names_its_longest_part()
    {
        Finding finding = Assert.Single(Chain(["OM4", "OM4", "OM4"], "10GBASE-LR", [2, 80, 3]).Check());
        Assert.Equal("10GBASE-LR is not specified for OM4, the fibre of C2", finding.Message);
        Assert.Equal("10GBASE-LR on OS1, OS1a, OS2", finding.Expected);
        Assert.Equal(2, finding.Strands.Count);
    }

    // Source: the fixed order of the family: F01 before F02 before F04 before F03.
    [Theory]
    [InlineData("OM2", "OM4", "OM4", "25GBASE-SR", "F04")]
    [InlineData("OM1", "OM4", "OM4", "25GBASE-SR", "F02")]
    [InlineData("OS2", "OM4", "OM4", "25GBASE-SR", "F01")]
    [InlineData("OM3", "OM4", "OM4", "25GBASE-SR", "F03")]
    public void Each_cause_is_told_once(string left, string middle, string right, string application, string codes) =>
        Assert.Equal(codes, Chain([left, middle, right], application).Codes());

    [Fact]
    public void A_part_that_is_not_for_the_application_is_not_called_lower_on_its_dark_strands()
    {
        Bench bench = new Bench()
            .Add("L", "duplex interface", v => v.Set("application", "25GBASE-SR")).Add("R", "duplex interface", v => v.Set("application", "25GBASE-SR"))
            .Add("KL", "cassette", v => v.Set("wiring", "U1").Set("fibre", "OM4")).Add("KR", "cassette", v => v.Set("wiring", "U1").Set("fibre", "OM4"))
            .Add("T", "trunk", v => v.Set("type", "Type-B").Set("fibre", "OM2"))
            .Mate("KL/rear", "T/near").Mate("T/far", "KR/rear")
            .Cord("CL", "L/1", "A-to-B", "KL/1").Cord("CR", "KR/1", "A-to-B", "R/1");
        Finding finding = Assert.Single(bench.Check());
        Assert.Equal("F04", finding.Rule.Code);
        Assert.Equal(2, finding.Strands.Count);
    }

    // Source: the meaning of an application's row: it is about light that passes.
    [Fact]
    public void Parts_that_no_light_passes_are_not_judged_by_an_application()
    {
        Bench dark = new Bench().Add("L", "duplex interface", v => v.Set("application", "10GBASE-LR"))
            .Add("S", "simplex cord", v => v.Set("fibre", "OM4")).Mate("L/1:B", "S/near");
        Assert.Equal("", dark.Codes());
    }

    /// <summary>Duplex cords one after the other between two interfaces, with as many crossings as a channel needs.</summary>
    private static Bench Chain(string?[] fibres, string? application = null, int[]? metres = null)
    {
        void Port(AttributeValues values)
        {
            if (application is not null)
                values.Set("application", application);
        }

        Bench bench = new Bench().Add("L", "duplex interface", Port).Add("R", "duplex interface", Port);
        for (int i = 1; i <= fibres.Length; i++)
        {
            string? fibre = fibres[i - 1];
            int length = metres?[i - 1] ?? 0;
            bench.Add($"C{i}", "duplex cord", v =>
            {
                v.Set("type", "A-to-B");
                if (fibre is not null)
                    v.Set("fibre", fibre);
                if (length > 0)
                    v.Set("length", Core.Optics.Length.FromMillimetres(length * 1000L));
            });
        }

        bench.Mate("L/1", "C1/near");
        for (int i = 1; i < fibres.Length; i++)
            bench.Mate($"C{i}/far", $"C{i + 1}/near");
        return bench.Mate($"C{fibres.Length}/far", "R/1");
    }
}
