using PolarityMap.Core.Budget;
using Xunit;

namespace PolarityMap.Core.Tests.Budget;

/// <summary>Which wavelength and which application a strand is judged by.</summary>
public sealed class LightTests
{
    // Source: interface facts 2.1: 1000BASE-BX10-U sends 1310 nm, 6.0 dB upstream; -D sends 1490 nm, 5.5 dB downstream. 1 source.
    [Fact]
    public void A_single_fibre_has_a_budget_each_way_with_the_sender_s_limit()
    {
        Bench bench = new Bench()
            .Add("U", "single-fibre interface", v => v.Set("application", "1000BASE-BX10-U"))
            .Add("D", "single-fibre interface", v => v.Set("application", "1000BASE-BX10-D"))
            .Add("C", "simplex cord", v => v.Glass("OS2", 1000))
            .Mate("U/1", "C/near").Mate("C/far", "D/1").Link("U/1", "D/1");
        BudgetTable table = bench.Budgets();
        Assert.Equal(2, table.Strands.Count);
        Assert.Equal(table.Strands[0].Strand, table.Strands[1].Strand);
        Assert.Equal(
            [("1000BASE-BX10-U", 1310m, 6.0m), ("1000BASE-BX10-D", 1490m, 5.5m)],
            table.Strands.Select(s => (s.Application!.Name, s.Wavelength!.Value.Nanometres, s.LossLimit!.Value.Value)));

        // The smaller limit leaves less, so that direction is the link's.
        Assert.Equal("1000BASE-BX10-D", Assert.Single(table.Links).Worst.Application!.Name);
    }

    // Source: interface facts 3: 40GBASE-SR4 breaks out to 4 x 10GBASE-SR; 2.1: 10GBASE-SR allows 2.6 dB and 300 m on OM3.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void In_breakout_the_slower_port_s_limits_hold(bool farSaysSo)
    {
        Bench bench = new Bench()
            .Add("Q", "parallel interface", v => v.Set("application", "40GBASE-SR4").Set("breakout", "4x"))
            .Add("S", "duplex interface", v =>
            {
                v.Set("ports", 4);
                if (farSaysSo)
                    v.Set("application", "10GBASE-SR");
            })
            .Add("H", "harness", v => v.Glass("OM3", 120))
            .Mate("Q/1", "H/array");
        for (int leg = 1; leg <= 4; leg++)
            bench.Mate($"H/leg{leg}", $"S/{leg}").Link($"Q/1:{leg}", $"S/{leg}");
        BudgetTable table = bench.Budgets();
        Assert.Equal(8, table.Strands.Count);
        Assert.All(table.Strands, s => Assert.Equal(("10GBASE-SR", 2.6m, 300d), (s.Application!.Name, s.LossLimit!.Value.Value, s.DistanceLimit!.Value.Metres)));
        Assert.Equal([0, 1, 2, 3], table.Links.Select(l => l.Link));
        Assert.All(table.Links, l => Assert.Equal(2, l.Strands.Count));
        Assert.DoesNotContain("L", bench.Codes(), StringComparison.Ordinal);
    }

    // A port that is not split carries one link at its own rate: 100 m on OM3 (3 sources).
    [Fact]
    public void A_parallel_link_keeps_its_own_limits()
    {
        Bench bench = LossChannels.Arrays("40GBASE-SR4", "OM3", 120, 1);
        Assert.Equal(100, bench.Worst().DistanceLimit!.Value.Metres);
        Assert.Equal("L02", bench.Codes());
        Assert.Equal(8, Assert.Single(bench.Budgets().Links).Strands.Count);
    }

    // Source: interface facts 2.1: 40GBASE-LR4 sends four wavelengths of the 1310 nm window on one fibre.
    [Fact]
    public void Wavelengths_that_share_a_fibre_are_judged_by_the_worst_of_them()
    {
        StrandBudget worst = LossChannels.Cords("40GBASE-LR4", "OS2", [10_000]).Worst();
        Assert.Contains(worst.Wavelength!.Value, worst.Application!.Wavelengths);
        Assert.False(worst.WavelengthIsAssumed);
        Assert.Equal(4.0m, worst.Stated.Total.Value);
        Assert.Equal(6.7m, worst.LossLimit!.Value.Value);
    }

    // Source: interface facts 5: multimode is tested at 850 nm first, single-mode at 1310 nm. 2 sources.
    [Theory]
    [InlineData("OM3", 850, 0.35)]
    [InlineData("OS2", 1310, 0.04)]
    public void Without_an_application_a_wavelength_is_assumed_and_nothing_is_judged(string fibre, int nanometres, double loss)
    {
        Bench bench = LossChannels.Cords(null, fibre, [100]);
        StrandBudget worst = bench.Worst();
        Assert.True(worst.WavelengthIsAssumed);
        Assert.Equal(nanometres, worst.Wavelength!.Value.Nanometres);
        Assert.Equal((decimal)loss, worst.Stated.Total.Value);
        Assert.Equal(LimitGap.NoApplication, worst.Gap);
        Assert.Null(worst.LossLimit);
        Assert.Null(worst.DistanceLimit);
        Assert.False(bench.Budgets().HasApplications);
        Assert.Equal("", bench.Codes());
    }

    [Fact]
    public void One_end_that_says_what_it_is_for_is_enough()
    {
        Bench bench = new Bench().Add("L", "duplex interface", v => v.Set("application", "10GBASE-SR")).Add("R", "duplex interface")
            .Add("C", "duplex cord", v => v.Glass("OM3", 350).Set("type", "A-to-B"))
            .Mate("L/1", "C/near").Mate("C/far", "R/1");
        Assert.All(bench.Budgets().Strands, s => Assert.Equal("10GBASE-SR", s.Application!.Name));
        Assert.Equal("L02", bench.Codes());
    }

    [Fact]
    public void Applications_that_do_not_work_together_are_not_judged()
    {
        Bench bench = new Bench().Add("L", "duplex interface", v => v.Set("application", "10GBASE-SR")).Add("R", "duplex interface", v => v.Set("application", "25GBASE-SR"))
            .Add("C", "duplex cord", v => v.Glass("OM3", 500).Set("type", "A-to-B"))
            .Mate("L/1", "C/near").Mate("C/far", "R/1");
        Assert.All(bench.Budgets().Strands, s => Assert.Equal((LimitGap.ApplicationsDiffer, null), (s.Gap, s.LossLimit)));
        Assert.DoesNotContain("L0", bench.Codes(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_lowest_class_along_the_strand_limits_it()
    {
        StrandBudget worst = Mixed("OM4", "OM3", null);
        Assert.Equal(("OM3", 300d, 1), (worst.Fibre!.Name, worst.DistanceLimit!.Value.Metres, worst.FibresMissing));
        Assert.Contains(BudgetWords.Remarks(worst, null), r => r.Contains("1 cable states no class of fibre and is taken to be OM3", StringComparison.Ordinal));
    }

    [Fact]
    public void Different_cores_an_unlisted_class_and_an_unknown_one_are_not_judged()
    {
        Assert.Equal(LimitGap.CoresMixed, Mixed("OM4", "OS2", "OM4").Gap);
        Assert.Equal(LimitGap.FibreNotListed, Mixed("OS2", "OS2", "OS2").Gap);
        Assert.Equal(LimitGap.FibreNotStated, Mixed(null, null, null).Gap);
        Assert.True(Mixed(null, null, null).FibreLossIsUnknown);
        Assert.Equal(1.5m, Mixed(null, null, null).Stated.Total.Value);
    }

    // Source: interface facts 2.1: the loss of 10GBASE-BR is not on record; the 10 of BR10 is its distance in kilometres.
    [Fact]
    public void A_loss_that_is_not_on_record_leaves_the_distance_to_judge()
    {
        Bench bench = new Bench()
            .Add("U", "single-fibre interface", v => v.Set("application", "10GBASE-BR10-U"))
            .Add("D", "single-fibre interface", v => v.Set("application", "10GBASE-BR10-D"))
            .Add("C", "simplex cord", v => v.Glass("OS2", 12_000))
            .Mate("U/1", "C/near").Mate("C/far", "D/1");
        StrandBudget worst = Assert.Single(bench.Budgets().Links).Worst;
        Assert.Equal(LimitGap.NotOnRecord, worst.Gap);
        Assert.Null(worst.Margin);
        Assert.True(worst.IsTooLong);
        Assert.Equal("L02", bench.Codes());
    }

    // The figure is the table's own, since no source for it was read; the remark must name it.
    [Fact]
    public void Too_little_loss_is_remarked()
    {
        StrandBudget worst = LossChannels.Cords("10GBASE-ER", "OS2", [100]).Worst();
        Assert.True(worst.IsBelowLeastLoss);
        string least = worst.Limit!.LeastLoss.ToString()!;
        Assert.Contains(BudgetWords.Remarks(worst, null), r => r.Contains(least, StringComparison.Ordinal) && r.Contains("overloaded", StringComparison.Ordinal));
        Assert.False(LossChannels.Cords("10GBASE-ER", "OS2", [25_000]).Worst().IsBelowLeastLoss);
    }

    private static StrandBudget Mixed(string? first, string? second, string? third)
    {
        string?[] classes = [first, second, third];
        Bench bench = new Bench().Add("L", "duplex interface", v => v.Set("application", "10GBASE-SR")).Add("R", "duplex interface", v => v.Set("application", "10GBASE-SR"))
            .Add("P", "duplex panel", v => v.Set("ports", 2));
        for (int i = 1; i <= 3; i++)
        {
            string? fibre = classes[i - 1];
            bench.Add($"C{i}", "duplex cord", v => v.Glass(fibre, 10).Set("type", "A-to-B"));
        }

        bench.Mate("L/1", "C1/near").Mate("C1/far", "C2/near", through: "P/1").Mate("C2/far", "C3/near", through: "P/2").Mate("C3/far", "R/1");
        return Assert.Single(bench.Budgets().Links).Worst;
    }
}
