using PolarityMap.Core.Budget;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Core.Tests.Budget;

/// <summary>What a light-source test of the fixed part may read.</summary>
public sealed class AcceptanceTests
{
    // Source: interface facts 4.3: 2 x 0.50 (multimode) + cable + inner matings x 0.75 + splices x 0.3, ISO/IEC 14763-3, 1 source.
    // Inner: trunk of 90 m at 3.5 and 1.5 dB/km, two array matings.
    [Fact]
    public void Between_two_cassettes_the_cords_are_left_out_and_their_plugs_replaced_by_reference_plugs()
    {
        TracedPlant traced = LossChannels.Cassettes("10GBASE-SR", "OM3", 100).Trace();
        AcceptanceLimit limit = Acceptance(traced);
        Assert.Equal(90, limit.Length.Metres);
        Assert.False(limit.IsSingleCord);
        Assert.Equal([(850m, 1.0m + 0.315m + 1.5m), (1300m, 1.0m + 0.135m + 1.5m)], limit.Tests.Select(t => (t.Wavelength.Nanometres, t.Limit.Value)));
        Assert.All(limit.Tests, t => Assert.Equal(2, t.Inner.MatingCount));
        Assert.Equal(["K1/1:B", "K2/1:A"], new[] { traced.Address(limit.From), traced.Address(limit.To) });
        Assert.Equal("one-cord reference of IEC 61280-4-1", limit.Method);
    }

    // Source: interface facts 4.2: reference plug to ordinary plug, 568.3-D 0.30 multimode and 0.50 single-mode, 568.3-E 0.50 and
    // 0.50, 14763-3 0.50 and 0.75 (1 source each).
    [Theory]
    [InlineData("TIA-568.3-D", "OM3", 0.60)]
    [InlineData("TIA-568.3-D", "OS2", 1.00)]
    [InlineData("TIA-568.3-E", "OM3", 1.00)]
    [InlineData("TIA-568.3-E", "OS2", 1.00)]
    [InlineData("ISO/IEC 11801", "OM3", 1.00)]
    [InlineData("ISO/IEC 11801", "OS2", 1.50)]
    public void The_reference_plugs_are_those_of_the_limits(string limits, string fibre, double ends)
    {
        AcceptanceLimit limit = Acceptance(LossChannels.Cords("1000BASE-LX", fibre, [2, 100, 2]).By(limits).Trace());
        Assert.All(limit.Tests, t => Assert.Equal((decimal)ends, t.Limit.Value - t.Inner.Total.Value));
        Assert.All(limit.Tests, t => Assert.Equal(0, t.Inner.MatingCount));
        Assert.Equal(100, limit.Length.Metres);
        Assert.Equal(fibre == "OM3", limit.IsMultimode);
    }

    [Fact]
    public void Low_loss_connectors_and_stated_attenuation_lower_the_limit_in_their_own_window()
    {
        TracedPlant traced = LossChannels.Cords("10GBASE-SR", "OM3", [2, 100, 2], v => v.Set("attenuation", new Attenuation(2.5m))).Trace();

        // 2.5 dB/km is stated at 850 nm; nothing is stated at 1300 nm, where the class allows 1.5 dB/km.
        Assert.Equal([0.25m, 0.15m], Acceptance(traced).Tests.Select(t => t.Inner.Total.Value));
        Assert.Equal(0.7m, Acceptance(LossChannels.Cassettes("10GBASE-SR", "OM3", 100, 0.35m, 0.25m).Trace()).Tests[0].Inner.Matings.Value);
    }

    [Fact]
    public void A_single_cord_is_tested_itself()
    {
        AcceptanceLimit limit = Acceptance(LossChannels.Cords("10GBASE-SR", "OM3", [20]).Trace());
        Assert.True(limit.IsSingleCord);
        Assert.Equal([1.07m, 1.03m], limit.Tests.Select(t => t.Limit.Value));
    }

    [Fact]
    public void Two_cords_and_a_panel_leave_nothing_fixed_and_an_unknown_length_no_limit()
    {
        Assert.Null(Find(Joined().Trace()));
        Assert.Null(Find(LossChannels.Cords("10GBASE-SR", "OM3", [2, null, 2]).Trace()));
        Assert.NotNull(Find(LossChannels.Cords("10GBASE-SR", "OM3", [null, 50, null]).Trace()));
        Assert.Null(Find(LossChannels.Cords("10GBASE-SR", null, [2, 50, 2]).Trace()));
    }

    // Source: interface facts 5, names of the methods, from memory.
    [Fact]
    public void The_method_is_named_by_the_standard_of_the_limits()
    {
        Assert.Equal("one-cord reference of IEC 61280-4-2", ReferenceMethod.Name(LimitProfile.Default, multimode: false));
        Assert.Equal("one-jumper reference of TIA-526-14", ReferenceMethod.Name(LimitProfile.Find("TIA-568.3-D")!, multimode: true));
        Assert.Equal("one-jumper reference of TIA-526-7", ReferenceMethod.Name(LimitProfile.Find("TIA-568.3-E")!, multimode: false));
    }

    private static Bench Joined() => new Bench().Add("L", "duplex interface", v => v.Set("application", "10GBASE-SR")).Add("R", "duplex interface")
        .Add("P", "duplex panel")
        .Add("A", "duplex cord", v => v.Glass("OM3", 10).Set("type", "A-to-B"))
        .Add("B", "duplex cord", v => v.Glass("OM3", 10).Set("type", "A-to-B"))
        .Mate("L/1", "A/near").Mate("A/far", "B/near", through: "P/1").Mate("B/far", "R/1");

    private static AcceptanceLimit Acceptance(TracedPlant traced)
    {
        AcceptanceLimit? limit = Find(traced);
        Assert.NotNull(limit);
        return limit;
    }

    private static AcceptanceLimit? Find(TracedPlant traced)
    {
        BudgetTable table = BudgetTable.Of(traced);
        return table.Acceptance(table.Strands[0]);
    }
}
