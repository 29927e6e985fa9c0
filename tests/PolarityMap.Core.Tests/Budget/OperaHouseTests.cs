using PolarityMap.Core.Budget;
using Xunit;

namespace PolarityMap.Core.Tests.Budget;

/// <summary>Eight matings in one link: nothing by the standard's largest losses, enough by low-loss connectors.</summary>
public sealed class OperaHouseTests
{
    // Source: interface facts 2.1 and 4: 10GBASE-SR on OM4 allows 2.9 dB; 8 x 0.75 = 6.0 dB; 93 m x 3.5 dB/km = 0.3255 dB.
    [Fact]
    public void Eight_matings_of_the_largest_loss_exceed_10GBASE_SR_without_any_fibre()
    {
        Bench bench = LossChannels.OperaHouse();
        StrandBudget worst = bench.Worst();
        Assert.Equal(93, worst.Length.Metres);
        Assert.Equal(8, worst.Stated.MatingCount);
        Assert.Equal(6.0m, worst.Stated.Connections.Value);
        Assert.Equal(2.9m, worst.LossLimit!.Value.Value);
        Assert.True(worst.HasTooManyMatings);
        Assert.Equal("L04", bench.Codes());

        // (2.9 - 0.3255) / 0.75 = 3.4
        Assert.Equal(3, bench.Budgets().MatingsThatFit(worst));
    }

    // Source: interface facts 4.2: low-loss arrays 0.35 dB (trade, 2 sources), low-loss duplex 0.15 dB (trade). 4 x 0.35 + 4 x 0.15 = 2.0 dB.
    [Fact]
    public void Low_loss_connectors_fit_and_the_link_says_that_it_stands_on_their_statement()
    {
        Bench bench = LossChannels.OperaHouse(0.35m, 0.15m);
        StrandBudget worst = bench.Worst();
        Assert.Equal(2.0m + 0.3255m, worst.Stated.Total.Value);
        Assert.Equal(6.0m + 0.3255m, worst.Standard.Total.Value);
        Assert.False(worst.Exceeds);
        Assert.True(Assert.Single(bench.Budgets().Links).FailsByStandard);
        Assert.Equal("", bench.Codes());
        Assert.Contains(BudgetWords.Remarks(worst, null), r => r.Contains("not by the standard's largest losses, which come to 6.33 dB", StringComparison.Ordinal));
    }
}
