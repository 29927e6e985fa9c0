using PolarityMap.Core.Budget;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Tests.Oracles;
using Xunit;

namespace PolarityMap.Core.Tests.Budget;

public sealed class DelayTests
{
    public static TheoryData<string, int?> Rows
    {
        get
        {
            var rows = new TheoryData<string, int?>();
            foreach (DelayRow row in LossTables.Delay)
                rows.Add(row.Fibre, row.WavelengthNm);
            return rows;
        }
    }

    // Source: interface facts 4.5, 1 source; the rule of thumb is practice.
    [Theory]
    [MemberData(nameof(Rows))]
    public void A_metre_takes_as_long_as_printed(string fibre, int? wavelength)
    {
        DelayRow row = LossTables.Delay.Single(r => r.Fibre == fibre && r.WavelengthNm == wavelength);
        decimal metre = Delay.Over(LossChannels.Metres(1), row.GroupIndex).Nanoseconds;
        Assert.Equal(row.NsPerMetre, Math.Round(metre, row.PrintedDecimals));
    }

    // Source: interface facts 4.5: 50 um at 850 nm 1.481.
    [Fact]
    public void A_strand_takes_the_time_of_its_lengths()
    {
        StrandBudget worst = LossChannels.Cords("10GBASE-SR", "OM3", [10, 80, 10]).Worst();
        Assert.Equal(100 * 1.481m / 0.299792458m, worst.Delay!.Value.Nanoseconds, 6);
        Assert.Equal("494 ns", worst.Delay.ToString());
    }

    [Fact]
    public void The_document_s_group_index_replaces_the_fibre_s()
    {
        StrandBudget worst = LossChannels.Cords("10GBASE-SR", null, [100]).Practice(new PlantPractice { GroupIndex = 1.5m }).Worst();
        Assert.Equal("500 ns", worst.Delay.ToString());
        Assert.Null(LossChannels.Cords("10GBASE-SR", null, [100]).Worst().Delay);
    }

    [Fact]
    public void Short_delays_are_printed_with_a_decimal() => Assert.Equal("9.9 ns", Delay.Over(LossChannels.Metres(2), 1.481m).ToString());
}
