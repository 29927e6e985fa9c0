using PolarityMap.Core.Budget;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using Xunit;

namespace PolarityMap.Core.Tests.Budget;

/// <summary>What counts as a mating, a splice and a length, and which figure is taken for it.</summary>
public sealed class FigureTests
{
    // Source: interface facts 4.3: matings at the interfaces are not counted; an adapter is one, a cassette two. 1 source, practice.
    [Theory]
    [InlineData(1, 0)]
    [InlineData(3, 2)]
    [InlineData(5, 4)]
    public void Cords_through_panel_adapters_have_one_mating_less_than_there_are_cords(int cords, int matings)
    {
        StrandBudget worst = LossChannels.Cords("10GBASE-SR", "OM3", [.. Enumerable.Repeat((int?)10, cords)]).Worst();
        Assert.Equal(matings, worst.Stated.MatingCount);
        Assert.Equal(matings * 0.75m, worst.Standard.Matings.Value);
        Assert.Equal(matings * 0.3m, worst.Expected.Matings.Value);
        Assert.Equal(cords * 10, worst.Length.Metres);
    }

    [Fact]
    public void A_cassette_is_two_matings()
    {
        StrandBudget worst = LossChannels.Cassettes("1000BASE-SX", "OM3", 100).Worst();
        Assert.Equal(4, worst.Stated.MatingCount);

        // Two arrays at 0.75 dB and two single-fibre connectors at 0.3 dB (interface facts 4.2, FOA, 1 source).
        Assert.Equal(2.1m, worst.Expected.Matings.Value);
    }

    [Fact]
    public void Two_interfaces_joined_directly_lose_nothing_that_is_counted()
    {
        Bench bench = new Bench().Add("L", "duplex interface").Add("R", "duplex interface").Mate("L/1", "R/1");
        StrandBudget worst = Assert.Single(bench.Budgets().Links).Worst;
        Assert.Equal(Decibel.Zero, worst.Standard.Total);
        Assert.Equal(default, worst.Length);
        Assert.Null(bench.Budgets().Acceptance(worst));
    }

    // A low-loss plug proves nothing in a plug of unknown loss.
    [Theory]
    [InlineData(0.25, null, 0.75)]
    [InlineData(null, 0.25, 0.75)]
    [InlineData(null, null, 0.75)]
    [InlineData(0.25, 0.15, 0.25)]
    [InlineData(0.15, 0.25, 0.25)]
    [InlineData(0.9, 0.25, 0.9)]
    [InlineData(0.9, null, 0.75)]
    public void A_mating_counts_as_stated_when_both_connectors_state_a_loss_and_then_the_larger_counts(double? first, double? second, double stated)
    {
        StrandBudget worst = TwoCords(v => v.Duplex((decimal?)first), v => v.Duplex((decimal?)second));
        Assert.Equal((decimal)stated, worst.Stated.Matings.Value);
        Assert.Equal(0.75m, worst.Standard.Matings.Value);
        Assert.Equal(Math.Min(0.3m, (decimal)stated), worst.Expected.Matings.Value);
    }

    [Theory]
    [InlineData(0.1, 0.2, null, 0.2)]
    [InlineData(0.1, null, null, 0.3)]
    [InlineData(0.5, 0.6, null, 0.6)]
    [InlineData(0.5, 0.6, 0.25, 0.25)]
    public void The_expected_loss_is_the_larger_of_two_expected_ones_else_the_estimate_and_never_above_the_stated(double first, double? second, double? stated, double expected)
    {
        AttributeValues Expect(AttributeValues v, double? loss) => loss is { } l ? v.Set("expected-duplex-loss", new Decibel((decimal)l)) : v;
        StrandBudget worst = TwoCords(v => Expect(v, first).Duplex((decimal?)stated), v => Expect(v, second).Duplex((decimal?)stated));
        Assert.Equal((decimal)expected, worst.Expected.Matings.Value);
    }

    // Source: interface facts 4.1: OM3 3.5 dB/km by ISO/IEC 11801 (3 sources), 3.0 dB/km expected (FOA, 2 sources).
    [Theory]
    [InlineData(null, 0.35, 0.35, 0.30)]
    [InlineData(2.5, 0.35, 0.25, 0.25)]
    [InlineData(3.2, 0.35, 0.32, 0.30)]
    [InlineData(5.0, 0.35, 0.50, 0.30)]
    public void Fibre_counts_by_its_class_by_its_own_statement_and_as_expected(double? own, double standard, double stated, double expected)
    {
        StrandBudget worst = LossChannels.Cords("10GBASE-SR", "OM3", [100], v =>
        {
            if (own is { } a)
                v.Set("attenuation", new Attenuation((decimal)a));
        }).Worst();
        Assert.Equal(((decimal)standard, (decimal)stated, (decimal)expected), (worst.Standard.Fibre.Value, worst.Stated.Fibre.Value, worst.Expected.Fibre.Value));
    }

    // Source: interface facts 4.2: 0.3 dB by the standards (3 sources), 0.15 dB single-mode and 0.3 dB multimode expected (FOA, 1 source).
    [Theory]
    [InlineData("OS2", null, 0.3, 0.15)]
    [InlineData("OS2", 0.1, 0.1, 0.1)]
    [InlineData("OM4", null, 0.3, 0.3)]
    public void A_splice_is_counted_where_bare_fibres_meet_and_the_bare_joint_is_no_mating(string fibre, double? own, double stated, double expected)
    {
        Bench bench = new Bench()
            .Add("L", "duplex interface").Add("R", "duplex interface").Link("L/1", "R/1")
            .Add("F1", "field termination", v => v.Set("fibres", 2))
            .Add("A", "cable", v => v.Glass(fibre, 100).Set("fibres", 2))
            .Add("S", "splice", v =>
            {
                v.Set("fibres", 2);
                if (own is { } loss)
                    v.Set("splice-loss", new Decibel((decimal)loss));
            })
            .Add("B", "cable", v => v.Glass(fibre, 200).Set("fibres", 2))
            .Add("F2", "field termination", v => v.Set("fibres", 2).Set("wiring", "reverse-pair"))
            .Mate("L/1", "F1/1").Mate("F1/bare", "A/near", Keying.Opposed).Mate("A/far", "S/near", Keying.Opposed)
            .Mate("S/far", "B/near", Keying.Opposed).Mate("B/far", "F2/bare", Keying.Opposed).Mate("F2/1", "R/1");
        StrandBudget worst = bench.Worst();
        Assert.Equal((0, 1), (worst.Stated.MatingCount, worst.Stated.SpliceCount));
        Assert.Equal((0.3m, (decimal)stated, (decimal)expected), (worst.Standard.Splices.Value, worst.Stated.Splices.Value, worst.Expected.Splices.Value));
        Assert.Equal(300, worst.Length.Metres);
        Assert.Equal(0, worst.LengthsMissing);
    }

    [Fact]
    public void Cables_without_a_length_are_counted_and_the_length_is_then_the_least()
    {
        StrandBudget worst = LossChannels.Cords("10GBASE-SR", "OM3", [null, 50, null]).Worst();
        Assert.Equal(50, worst.Length.Metres);
        Assert.Equal(2, worst.LengthsMissing);
        Assert.Contains("2 cables state no length", BudgetWords.Remarks(worst, null)[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Lengths_of_more_than_a_thousand_kilometres_together_are_kept_at_that()
    {
        StrandBudget worst = LossChannels.Cords("10GBASE-SR", "OS2", [900_000, 900_000, 900_000]).Worst();
        Assert.Equal(Length.MaxMillimetres, worst.Length.Millimetres);
        Assert.Equal(3 * 900 * 0.4m, worst.Stated.Fibre.Value);
    }

    // Source: interface facts 8, no. 5: 3.5 dB/km by ISO/IEC 11801, 3.0 dB/km by TIA-568.3-D.
    [Fact]
    public void The_plant_s_limits_decide_the_figures()
    {
        Assert.Equal(0.35m, LossChannels.Cords("10GBASE-SR", "OM4", [100]).Worst().Standard.Fibre.Value);
        Assert.Equal(0.30m, LossChannels.Cords("10GBASE-SR", "OM4", [100]).By("TIA-568.3-D").Worst().Standard.Fibre.Value);
        Assert.Equal(0.30m, Assert.Single(BudgetTable.Of(LossChannels.Cords("10GBASE-SR", "OM4", [100]).Trace(), LimitProfile.Find("TIA-568.3-E")!).Links).Worst.Standard.Fibre.Value);
    }

    // A mating of which only one side is named by a simplex plug in one place of a duplex port is a mating like any other.
    [Fact]
    public void A_simplex_plug_in_a_duplex_adapter_is_a_mating()
    {
        Bench bench = new Bench().Add("L", "duplex interface").Add("R", "duplex interface")
            .Add("C", "duplex cord", v => v.Glass("OM3", 10).Set("type", "A-to-B"))
            .Add("S", "simplex cord", v => v.Glass("OM3", 10))
            .Mate("L/1", "C/near").Mate("C/far:A", "S/near").Mate("S/far", "R/1:B");
        Assert.Equal(1, bench.Budgets().Strands[0].Stated.MatingCount);
    }

    private static StrandBudget TwoCords(Action<AttributeValues> first, Action<AttributeValues> second)
    {
        Bench bench = new Bench().Add("L", "duplex interface").Add("R", "duplex interface")
            .Add("A", "duplex cord", v => first(v.Glass("OM3", 10).Set("type", "A-to-B")))
            .Add("B", "duplex cord", v => second(v.Glass("OM3", 10).Set("type", "A-to-B")))
            .Add("P", "duplex panel")
            .Mate("L/1", "A/near").Mate("A/far", "B/near", through: "P/1").Mate("B/far", "R/1");
        return Assert.Single(bench.Budgets().Links).Worst;
    }
}
