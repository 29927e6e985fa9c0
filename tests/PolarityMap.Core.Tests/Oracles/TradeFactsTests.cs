using Xunit;

namespace PolarityMap.Core.Tests.Oracles;

/// <summary>The simple counts of the trade agree with the typed tables.</summary>
public sealed class TradeFactsTests
{
    [Fact]
    public void Eight_legs_of_eight_make_64_fibres()
    {
        var fibres = new HashSet<(int Leg, int Position)>();
        for (var leg = 1; leg <= TradeFacts.LegsOfTrunk; leg++)
        {
            foreach (var position in PartTables.EightOfTwelve)
                fibres.Add((leg, position));
        }

        Assert.Equal(TradeFacts.FibresOfLeg, PartTables.EightOfTwelve.Count);
        Assert.Equal(TradeFacts.FibresOfEightLegsOfEight, fibres.Count);
    }

    [Theory]
    [InlineData("straight")]
    [InlineData("straight-reversed")]
    [InlineData("U1")]
    [InlineData("U2")]
    public void Twelve_fibres_are_six_pairs_and_eight_are_four(string transition)
    {
        foreach (var (fibres, pairs) in TradeFacts.PairsOfCable)
        {
            var wiring = PartTables.Transition(transition, fibres);
            Assert.Equal(pairs, wiring.Count);
            Assert.Equal(fibres, wiring.SelectMany(p => new[] { p.A, p.B }).Distinct().Count());
        }
    }

    [Fact]
    public void A_four_lane_port_leaves_four_fibres_of_twelve_unused()
    {
        var used = PartTables.FourLanes.SelectMany(l => new[] { l.PlugTx, l.PlugRx }).ToHashSet();
        var unused = PartTables.CableTypeB.Select(c => c.Near).Where(p => !used.Contains(p)).ToArray();
        Assert.Equal(TradeFacts.UnusedOfTwelveBehindFourLanes, unused.Length);
        Assert.Equal(PartTables.DarkOfTwelve, unused);
    }
}
