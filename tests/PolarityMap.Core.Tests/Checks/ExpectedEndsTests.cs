using PolarityMap.Core.Checks;
using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>Where strands should come out. Oracle: transmit is meant to meet receive of the link's far port (TIA-568, duplex A and B).</summary>
public sealed class ExpectedEndsTests
{
    [Fact]
    public void A_pair_that_is_crossed_should_come_out_at_the_other_position_of_the_same_port()
    {
        TracedPlant traced = Pair("A-to-A").Link("L/1", "R/1").Trace();
        IReadOnlyDictionary<int, int> ends = ExpectedEnds.Of(new CheckContext(traced));
        Assert.Equal(["L/1:A to R/1:B", "L/1:B to R/1:A"], ends.Select(e => $"{traced.Address(traced.Strands[e.Key][0])} to {traced.Address(e.Value)}").Order());
    }

    [Fact]
    public void A_link_that_is_proven_expects_nothing_else() =>
        Assert.Empty(ExpectedEnds.Of(new CheckContext(Pair("A-to-B").Link("L/1", "R/1").Trace())));

    [Fact]
    public void Without_links_nothing_is_expected() =>
        Assert.Empty(ExpectedEnds.Of(new CheckContext(Pair("A-to-A").Trace())));

    private static Bench Pair(string type) => new Bench()
        .Add("L", "duplex interface").Add("R", "duplex interface").Add("C", "duplex cord", v => v.Set("type", type))
        .Mate("L/1", "C/near").Mate("C/far", "R/1");
}
