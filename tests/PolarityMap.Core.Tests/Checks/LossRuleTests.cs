using PolarityMap.Core.Checks;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Tests.Budget;
using Xunit;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>L01 to L06 beyond their examples.</summary>
public sealed class LossRuleTests
{
    // 1000BASE-SX allows 3.56 dB on OM2 (interface facts 2.1, 2 sources): 4 x 0.75 + 0.2 km x 3.5 = 3.70.
    [Fact]
    public void L01_tells_the_three_figures_the_limit_and_the_excess()
    {
        Finding finding = Assert.Single(LossChannels.Cassettes("1000BASE-SX", "OM2", 200).Check());
        Assert.Equal("L01", finding.Rule.Code);
        Assert.Equal(
            "L/1 to R/1 loses 3.70 dB at 850 nm by what its parts state (3.70 dB by the standard, 2.70 dB expected), 0.14 dB over the 3.56 dB of 1000BASE-SX on OM2",
            finding.Message);
        Assert.Equal("at most 3.56 dB for 1000BASE-SX on OM2", finding.Expected);
        Assert.Equal("0.70 dB in 200 m of fibre, 3.00 dB in 4 matings", finding.Actual);
        Assert.Equal(2, finding.Strands.Count);
        Assert.Equal(0, Assert.Single(finding.Links));
    }

    [Fact]
    public void L04_tells_how_many_matings_would_fit()
    {
        Finding finding = Assert.Single(LossChannels.OperaHouse().Check());
        Assert.Contains("6.00 dB in 8 matings", finding.Message, StringComparison.Ordinal);
        Assert.Contains("the 2.90 dB of 10GBASE-SR on OM4", finding.Message, StringComparison.Ordinal);
        Assert.EndsWith("of these matings 3 fit beside the fibre", finding.Expected, StringComparison.Ordinal);

        // 40GBASE-SR4 allows 1.5 dB on OM4 (1 source): of two matings of 1.0 dB one fits, of 2.0 dB none.
        Assert.EndsWith("of these matings 1 fits beside the fibre", Assert.Single(LossChannels.Arrays("40GBASE-SR4", "OM4", 60, 3, 1.0m).Check()).Expected, StringComparison.Ordinal);
        Assert.EndsWith("of these matings none fits beside the fibre", Assert.Single(LossChannels.Arrays("40GBASE-SR4", "OM4", 60, 3, 2.0m).Check()).Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void A_link_may_be_too_long_and_over_the_loss_at_once() =>
        Assert.Equal("L01 L02", LossChannels.Cords("10GBASE-SR", "OM3", [800]).Codes());

    [Fact]
    public void A_link_exactly_at_its_limits_is_within_them()
    {
        Assert.Equal("", LossChannels.Cords("10GBASE-SR", "OM3", [300]).Codes());
        Assert.Equal("L02", LossChannels.Cords("10GBASE-SR", "OM3", [301]).Codes());
        Assert.Equal("", LossChannels.Cords("10GBASE-SR", "OM3", [260], v => v.Set("attenuation", new Attenuation(10m))).Codes());
        Assert.Equal("L01", LossChannels.Cords("10GBASE-SR", "OM3", [260], v => v.Set("attenuation", new Attenuation(10.001m))).Codes());
    }

    // 10GBASE-SR, OM3: 2.6 - 0.35 = 2.25 dB are left.
    [Theory]
    [InlineData(2.25, "")]
    [InlineData(2.26, "L03")]
    [InlineData(null, "")]
    public void A_margin_is_asked_for_by_the_document_alone(double? margin, string codes) =>
        Assert.Equal(codes, LossChannels.Cords("10GBASE-SR", "OM3", [100]).By("ISO/IEC 11801", (decimal?)margin).Codes());

    [Fact]
    public void A_link_over_its_limit_is_not_blamed_for_its_margin_too() =>
        Assert.Equal("L01", LossChannels.Cassettes("1000BASE-SX", "OM2", 200).By("ISO/IEC 11801", 1m).Codes());

    // Source: interface facts 8, no. 3: on OM1 TIA allows 2.4 dB (2 sources) and IEEE 802.3 less, by the 0.8 dB that it calls
    // additional. Two matings that admit to 1.0 dB each lie between.
    [Theory]
    [InlineData("ISO/IEC 11801", "L04")]
    [InlineData("TIA-568.3-D", "L06")]
    [InlineData("TIA-568.3-E", "L06")]
    public void A_pass_by_TIA_alone_is_a_warning(string limits, string code)
    {
        Finding finding = Assert.Single(LossChannels.Cords("10GBASE-SR", "OM1", [2, 28, 2], v => v.Set("duplex-loss", new Decibel(1.0m))).By(limits).Check());
        Assert.Equal(code, finding.Rule.Code);
        Assert.Equal(code == "L04" ? Severity.Error : Severity.Warning, finding.Rule.Severity);
        Assert.Equal(code == "L04" ? 1 : 0, finding.Links.Count);
    }

    // Source: interface facts 2.2: 100GBASE-FR1 is specified for cable of 0.5 dB/km at most. 1 source.
    [Theory]
    [InlineData("OS2", null, "")]
    [InlineData("OS1a", null, "L05")]
    [InlineData("OS1a", 0.5, "")]
    [InlineData("OS2", 0.51, "L05")]
    public void The_cable_s_own_statement_comes_before_its_class(string fibre, double? attenuation, string codes) =>
        Assert.Equal(codes, LossChannels.Cords("100GBASE-FR1", fibre, [500], v =>
        {
            if (attenuation is { } a)
                v.Set("attenuation", new Attenuation((decimal)a));
        }).Codes());

    [Fact]
    public void Two_ports_without_a_declared_link_are_one_finding_all_the_same()
    {
        Bench bench = new Bench().Add("L", "duplex interface", v => v.Set("application", "10GBASE-SR")).Add("R", "duplex interface", v => v.Set("application", "10GBASE-SR"))
            .Add("C", "duplex cord", v => v.Glass("OM3", 350).Set("type", "A-to-B"))
            .Mate("L/1", "C/near").Mate("C/far", "R/1");
        Finding finding = Assert.Single(bench.Check());
        Assert.Equal("L02", finding.Rule.Code);
        Assert.Equal(2, finding.Strands.Count);
        Assert.Empty(finding.Links);
    }

    [Fact]
    public void Lengths_that_are_not_stated_make_the_figures_the_least()
    {
        Finding finding = Assert.Single(LossChannels.Cords("10GBASE-SR", "OM3", [null, 350, null], v => v.Duplex(0.5m)).Check());
        Assert.Equal("L/1 to R/1 is at least 350 m long, 50 m more than 10GBASE-SR on OM3 reaches", finding.Message);
        Assert.Equal("350 m, and 2 cables without a length", finding.Actual);
    }
}
