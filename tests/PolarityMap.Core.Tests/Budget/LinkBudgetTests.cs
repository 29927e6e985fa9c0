using PolarityMap.Core.Budget;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Strands;
using PolarityMap.Core.Tests.Checks;
using Xunit;

namespace PolarityMap.Core.Tests.Budget;

/// <summary>Which strands belong to which link, and which of them is told.</summary>
public sealed class LinkBudgetTests
{
    [Fact]
    public void The_table_of_a_plant_is_made_once()
    {
        TracedPlant traced = LossChannels.Cords("10GBASE-SR", "OM3", [10]).Trace();
        Assert.Same(BudgetTable.Of(traced), BudgetTable.Of(traced));
        Assert.Same(BudgetTable.Of(traced), BudgetTable.Of(traced, LimitProfile.Default));
        Assert.NotSame(BudgetTable.Of(traced), BudgetTable.Of(traced, LimitProfile.All[1]));
        Assert.Same(BudgetTable.Of(traced).Links, BudgetTable.Of(traced).Links);
    }

    // The strand from left to right is 60 m, the one back 80 m: two simplex cords of different length.
    [Fact]
    public void The_strand_with_less_to_spare_is_the_worst()
    {
        Bench bench = new Bench().Add("L", "duplex interface", v => v.Set("application", "10GBASE-SR")).Add("R", "duplex interface", v => v.Set("application", "10GBASE-SR"))
            .Add("A", "simplex cord", v => v.Glass("OM3", 60)).Add("B", "simplex cord", v => v.Glass("OM3", 80))
            .Mate("L/1:A", "A/near").Mate("A/far", "R/1:B").Mate("R/1:A", "B/near").Mate("B/far", "L/1:B").Link("R/1", "L/1");
        BudgetTable table = bench.Budgets();
        LinkBudget link = Assert.Single(table.Links);
        Assert.Equal([80d, 60d], link.Strands.Select(s => s.Length.Metres));
        Assert.Same(link, table.OfLink(0));
    }

    [Fact]
    public void Ports_that_light_joins_without_a_link_are_a_pair()
    {
        Bench bench = new Bench().Add("L", "duplex interface").Add("R", "duplex interface").Cord("C", "L/1", "A-to-B", "R/1");
        TracedPlant traced = bench.Trace();
        LinkBudget link = Assert.Single(BudgetTable.Of(traced).Links);
        Assert.Equal((-1, "L/1", "R/1", 2), (link.Link, traced.Plant.Address(link.From), traced.Plant.Address(link.To), link.Strands.Count));
        Assert.Null(BudgetTable.Of(traced).OfLink(0));
    }

    [Fact]
    public void A_link_that_comes_out_wrong_keeps_its_strands()
    {
        Bench bench = new Bench().Add("L", "duplex interface", v => v.Set("ports", 2)).Add("R", "duplex interface", v => v.Set("ports", 2))
            .Cord("C1", "L/1", "A-to-B", "R/2").Cord("C2", "L/2", "A-to-B", "R/1").Link("L/1", "R/1").Link("L/2", "R/2");
        Assert.Equal([0, 1], bench.Budgets().Links.Select(l => l.Link));
        Assert.All(bench.Budgets().Links, l => Assert.Equal(2, l.Strands.Count));
    }

    [Theory]
    [InlineData("A-to-A")]
    [InlineData(null)]
    public void A_link_that_is_not_lit_has_no_budget(string? cord)
    {
        Bench bench = new Bench().Add("L", "duplex interface").Add("R", "duplex interface").Link("L/1", "R/1");
        if (cord is not null)
            bench.Cord("C", "L/1", cord, "R/1");
        Assert.Empty(bench.Budgets().Strands);
        Assert.Null(bench.Budgets().OfLink(0));
    }

    [Fact]
    public void Verdicts_are_told_in_words()
    {
        static string Verdict(Bench bench) => BudgetWords.Verdict(Assert.Single(bench.Budgets().Links));
        Assert.Equal("fits, 1.05 dB left", Verdict(LossChannels.Cassettes("10GBASE-SR", "OM3", 100, 0.35m, 0.25m)));
        Assert.Equal("too many matings, over by 0.75 dB", Verdict(LossChannels.Cassettes("10GBASE-SR", "OM3", 100)));
        Assert.Equal("too long by 50 m", Verdict(LossChannels.Cords("10GBASE-SR", "OM3", [350])));
        Assert.Equal("over by 0.20 dB and too long by 500 m", Verdict(LossChannels.Cords("10GBASE-SR", "OM3", [800])));
        Assert.Equal("not judged: neither end says what it is for", Verdict(LossChannels.Cords(null, "OM3", [10])));
        Assert.Equal("not judged: 10GBASE-SR is not specified on OS2", Verdict(LossChannels.Cords("10GBASE-SR", "OS2", [10])));

        // 260 m at 10.001 dB/km are 2.60026 dB where 2.6 dB are allowed: an excess is never printed as 0.00 dB.
        Assert.Equal("over by less than 0.01 dB", Verdict(LossChannels.Cords("10GBASE-SR", "OM3", [260], v => v.Set("attenuation", new Attenuation(10.001m)))));
        Assert.Equal("fits, 0.00 dB left", Verdict(LossChannels.Cords("10GBASE-SR", "OM3", [260], v => v.Set("attenuation", new Attenuation(10m)))));
    }

    [Fact]
    public void Two_thousand_links_have_four_thousand_strands()
    {
        BudgetTable table = BudgetTable.Of(LargePlantTests.Campus(2_000, "A-to-B"));
        Assert.Equal(4_000, table.Strands.Count);
        Assert.Equal(Enumerable.Range(0, 2_000), table.Links.Select(l => l.Link));
        Assert.All(table.Strands, s => Assert.Equal(4, s.Stated.MatingCount));
    }
}
