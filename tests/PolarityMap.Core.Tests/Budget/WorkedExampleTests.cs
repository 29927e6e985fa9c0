using PolarityMap.Core.Budget;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Tests.Oracles;
using Xunit;
using Sum = PolarityMap.Core.Budget.LossSum;

namespace PolarityMap.Core.Tests.Budget;

/// <summary>
/// The worked examples of interface facts 4.4, through the product's sums and plants. Of W1b, a statistical form, the product
/// gives the mean: it adds losses and no variances.
/// </summary>
public sealed class WorkedExampleTests
{
    private const decimal Tolerance = 0.01m;

    public static TheoryData<string> Sums => [.. LossTables.WorkedExamples.Where(e => e.TotalDb is not null).Select(e => e.Id)];

    // Source: interface facts 4.4: W1 to W4 published (a handbook, two guides, a text on mixed fibres), W5 to W10 derived.
    [Theory]
    [MemberData(nameof(Sums))]
    public void A_worked_example_comes_to_the_printed_sum_and_margin(string id)
    {
        WorkedExample example = Example(id);
        Sum sum = Add(example);
        Assert.InRange(sum.Total.Value, example.TotalDb!.Value - Tolerance, example.TotalDb.Value + Tolerance);
        if (example.MarginDb is { } margin)
            Assert.InRange(sum.MarginTo(new(example.LimitDb!.Value)).Value, margin - Tolerance, margin + Tolerance);
        foreach (LossItem item in example.Items.Where(i => i.PrintedDb is not null))
            Assert.Equal(item.PrintedDb, Add(example with { Items = [item] }).Total.Value);
    }

    // Source: W1b, published: W1 as the mean, three times the deviation of all connections and the system, and a fixed loss.
    [Fact]
    public void W1b_the_statistical_form_around_the_product_s_mean()
    {
        StatisticalExample example = LossTables.W1b;
        decimal variance = example.Variances.Sum(v => v.Count * v.Variance) + example.SystemVariance;
        decimal spread = example.Sigmas * (decimal)Math.Sqrt((double)variance);
        decimal total = Add(Example("W1")).Total.Value + spread + example.FixedDb;
        Assert.InRange(total, example.TotalDb - Tolerance, example.TotalDb + Tolerance);
    }

    // Source: W1, published: 2 matings of 0.35, 2 splices of 0.15, 210 m of cords of 0.8, 19.76 km of trunk of 0.5 dB/km.
    [Fact]
    public void W1_as_a_plant_of_cords_pigtails_and_a_cable()
    {
        Bench bench = new Bench()
            .Add("L", "duplex interface").Add("R", "duplex interface").Link("L/1", "R/1")
            .Add("C1", "duplex cord", v => v.Glass("OS2", 105).Set("type", "A-to-B").Set("attenuation", new Attenuation(0.8m)).Duplex(0.35m))
            .Add("F1", "field termination", v => v.Set("fibres", 2).Set("method", "pigtail").Set("splice-loss", new Decibel(0.15m)).Duplex(0.35m))
            .Add("T", "cable", v => v.Glass("OS2", 19_760).Set("fibres", 2).Set("attenuation", new Attenuation(0.5m)))
            .Add("F2", "field termination", v => v.Set("fibres", 2).Set("wiring", "reverse-pair").Set("method", "pigtail").Set("splice-loss", new Decibel(0.15m)).Duplex(0.35m))
            .Add("C2", "duplex cord", v => v.Glass("OS2", 105).Set("type", "A-to-B").Set("attenuation", new Attenuation(0.8m)).Duplex(0.35m))
            .Mate("L/1", "C1/near").Mate("C1/far", "F1/1").Mate("F1/bare", "T/near", Core.Parts.Keying.Opposed)
            .Mate("T/far", "F2/bare", Core.Parts.Keying.Opposed).Mate("F2/1", "C2/near").Mate("C2/far", "R/1");
        StrandBudget worst = bench.Worst();
        Assert.Equal(11.048m, worst.Stated.Total.Value);
        Assert.Equal((2, 2), (worst.Stated.MatingCount, worst.Stated.SpliceCount));
        Assert.Equal((10.048m, 0.70m, 0.30m), (worst.Stated.Fibre.Value, worst.Stated.Matings.Value, worst.Stated.Splices.Value));
    }

    [Fact]
    public void W5_four_matings_of_the_largest_loss_do_not_fit_into_10GBASE_SR_on_OM3()
    {
        Bench bench = LossChannels.Cassettes("10GBASE-SR", "OM3", 100);
        Judge("W5", bench.Worst(), exceeds: true);
        Assert.Equal("L04", bench.Codes());
    }

    [Fact]
    public void W6_low_loss_connectors_fit_into_10GBASE_SR_on_OM3_and_the_standard_s_would_not()
    {
        Bench bench = LossChannels.Cassettes("10GBASE-SR", "OM3", 100, 0.35m, 0.25m);
        StrandBudget worst = bench.Worst();
        Judge("W6", worst, exceeds: false);
        Assert.Equal("1.05 dB", worst.Margin.ToString());
        Assert.True(worst.FailsByStandard);
        Assert.True(Assert.Single(bench.Budgets().Links).FailsByStandard);
        Assert.Equal("", bench.Codes());
    }

    [Fact]
    public void W7_four_low_loss_arrays_do_not_fit_into_40GBASE_SR4_and_two_do()
    {
        Bench four = LossChannels.Arrays("40GBASE-SR4", "OM4", 60, 5, 0.35m);
        Judge("W7", four.Worst(), exceeds: true);
        Assert.Equal("L01", four.Codes());
        Bench two = LossChannels.Arrays("40GBASE-SR4", "OM4", 60, 3, 0.35m);
        Judge("W7, two matings", two.Worst(), exceeds: false);
        Assert.Equal("", two.Codes());
    }

    [Fact]
    public void W8_four_arrays_of_half_a_decibel_fit_into_400GBASE_DR4()
    {
        StrandBudget worst = LossChannels.Arrays("400GBASE-DR4", "OS2", 300, 5, 0.5m).Worst();
        Judge("W8", worst, exceeds: false);
        Assert.False(worst.HasWorseCable);
    }

    [Fact]
    public void W9_ninety_metres_of_OM3_are_too_long_for_100GBASE_SR4_whatever_they_lose()
    {
        WorkedExample example = Example("W9");
        Bench bench = LossChannels.Arrays("100GBASE-SR4", "OM3", example.Metres!.Value, 1, 0.1m);
        StrandBudget worst = bench.Worst();
        Assert.False(worst.IsOverLoss);
        Assert.True(worst.IsTooLong);
        Assert.Equal((double?)example.MetresLimit, worst.DistanceLimit!.Value.Metres);
        Assert.Equal("20 m", worst.LengthOver.ToString());
        Assert.Equal("L02", bench.Codes());
    }

    [Fact]
    public void W10_indoor_cable_fits_by_loss_into_100GBASE_FR1_and_its_distance_is_not_specified()
    {
        Bench bench = LossChannels.Cords("100GBASE-FR1", "OS1a", [5, 1490, 5], v => v.Duplex(0.5m));
        StrandBudget worst = bench.Worst();
        Judge("W10", worst, exceeds: false);
        Assert.Equal("0.5 dB/km", worst.Limit!.AssumedCable.ToString());
        Assert.True(worst.HasWorseCable);
        Assert.Equal("L05", bench.Codes());
    }

    private static WorkedExample Example(string id) => LossTables.WorkedExamples.Single(e => e.Id == id);

    /// <summary>The plant's judged figure, limit, length and class are those of the example.</summary>
    private static void Judge(string id, StrandBudget worst, bool exceeds)
    {
        WorkedExample example = Example(id);
        Assert.Equal(example.Interface, worst.Application!.Name);
        Assert.Equal(example.Fibre, worst.Fibre!.Name);
        Assert.Equal((double?)example.Metres, worst.Length.Metres);
        Assert.InRange(worst.Stated.Total.Value, example.TotalDb!.Value - Tolerance, example.TotalDb.Value + Tolerance);
        Assert.Equal(example.LimitDb, worst.LossLimit!.Value.Value);
        Assert.Equal(exceeds, worst.IsOverLoss);
        Assert.False(worst.IsTooLong);
    }

    private static Sum Add(WorkedExample example)
    {
        Sum sum = default;
        foreach (LossItem item in example.Items)
        {
            var each = new Decibel(item.EachDb);
            sum = item.What switch
            {
                string what when what.StartsWith("cable", StringComparison.Ordinal) || what is "cords" or "trunk" =>
                    sum.PlusFibre(Length.FromMillimetres((long)(item.Count * 1_000_000)), new Attenuation(item.EachDb)),
                string what when what.EndsWith("matings", StringComparison.Ordinal) => sum.PlusMatings((int)item.Count, each),
                "splices" => sum.PlusSplices((int)item.Count, each),
                string what => sum.Plus(new NamedLoss(what, (int)item.Count * each)),
            };
        }

        return sum;
    }
}
