using PolarityMap.Core.Plants;
using Xunit;

namespace PolarityMap.Documents.Tests.Binding;

public class LinkTests
{
    private const string Parts =
        """
        plant: P
        parts:
          SW-[1..4]: { kind: duplex interface, ports: 8 }
          QS[1..2]: { kind: parallel interface, ports: 2, breakout: 4x }
          ONE: duplex interface
        links:

        """;

    private static string Links(string link)
    {
        Plant plant = Reading.Plant(Parts + $"  - {link}\n");
        return string.Join('\n', plant.Links.Select(l => $"{plant.Address(l.From)} to {plant.Address(l.To)}"));
    }

    [Theory]
    [InlineData("SW-1/3 to SW-2/4", "SW-1/3 to SW-2/4")]
    [InlineData("SW-1/1..2 to SW-2/4..3", "SW-1/1 to SW-2/4\nSW-1/2 to SW-2/3")]
    [InlineData("SW-[1..2]/1..2 to SW-3/1..4", "SW-1/1 to SW-3/1\nSW-1/2 to SW-3/2\nSW-2/1 to SW-3/3\nSW-2/2 to SW-3/4")]
    [InlineData("SW-1/1   to   SW-2/1", "SW-1/1 to SW-2/1")]
    [InlineData("ONE to SW-2/1", "ONE/1 to SW-2/1")]
    [InlineData("QS1/1 to QS2/1", "QS1/1 to QS2/1")]
    [InlineData("QS1/1:2 to SW-1/7", "QS1/1:2 to SW-1/7")]
    [InlineData("QS1/1:1..4 to SW-1/1..4", "QS1/1:1 to SW-1/1\nQS1/1:2 to SW-1/2\nQS1/1:3 to SW-1/3\nQS1/1:4 to SW-1/4")]
    [InlineData("QS1/1..2:3 to SW-1/1..2", "QS1/1:3 to SW-1/1\nQS1/2:3 to SW-1/2")]
    [InlineData("QS[1..2]/2:[4,1] to SW-[1,2,3,4]/8", "QS1/2:4 to SW-1/8\nQS1/2:1 to SW-2/8\nQS2/2:4 to SW-3/8\nQS2/2:1 to SW-4/8")]
    public void Links_join_ports_or_the_links_of_a_split_port_in_step(string link, string links) => Assert.Equal(links, Links(link));

    [Fact]
    public void A_link_knows_its_place() =>
        Assert.All(Reading.Plant(Parts + "  - SW-1/1..2 to SW-2/1..2\n").Links, l => Assert.Equal(new SourcePlace("p", 7, 5), l.Place));

    // The second address begins after "  - SW-1/1 to ", in column 15.
    [Theory]
    [InlineData("SW-1/1 to SW-2/9", "p:7:15: SW-2 has no port '9'")]
    [InlineData("SW-1/1 to QS1/1:0", "p:7:15: QS1/1 has no link '0'; expected a link from 1 to 4")]
    [InlineData("SW-1/1 to QS1/1:x", "p:7:15: QS1/1 has no link 'x'")]
    [InlineData("SW-1/1 to SW-2/1:A", "p:7:15: SW-2/1 is one link, with nothing to split off; expected the port alone")]
    [InlineData("SW-1/1 to SW-2/[1..", "p:7:20: the '[' is not closed")]
    [InlineData("SW-1/1 to ", "p:7:5: 'SW-1/1 to' is no link")]
    public void What_is_wrong_with_the_far_end_is_told_at_its_place(string link, string problem) =>
        Assert.StartsWith(problem, Reading.Problems(Parts + $"  - {link}\n"), StringComparison.Ordinal);

    [Fact]
    public void Places_within_quotes_are_exact_as_well() =>
        Assert.StartsWith("p:7:16: SW-2 has no port '9'", Reading.Problems(Parts + "  - \"SW-1/1 to SW-2/9\"\n"), StringComparison.Ordinal);

    // The breakouts of each application are those that have a source, listed with Breakouts.
    [Theory]
    [InlineData("", "QS/1 is one link of 4 lanes; write breakout: 4x at QS to split it")]
    [InlineData(", application: 100GBASE-SR4", "QS/1 is one link of 4 lanes; write breakout: 4x at QS to split it")]
    [InlineData(", application: 400GBASE-SR8", "QS/1 is one link of 8 lanes; write breakout: 8x at QS to split it")]
    [InlineData(", application: 100GBASE-SR10", "QS/1 is one link of 10 lanes, and no breakout of it is known; expected the port alone")]
    [InlineData(", lanes: [[1, 12], [2, 11]]", "QS/1 is one link of 2 lanes; write breakout: 2x at QS to split it")]
    [InlineData(", lanes: [[1, 12]]", "QS/1 is one link, with nothing to split off; expected the port alone")]
    [InlineData(", lanes: [[1, 12], [2, 11], [3, 10]]", "QS/1 is one link of 3 lanes, and no breakout of it is known; expected the port alone")]
    public void A_port_that_is_not_split_has_no_links_to_name(string attributes, string problem) =>
        Assert.Equal(
            $"p:6:5: {problem}\n",
            Reading.Problems($"plant: P\nparts:\n  QS: {{ kind: parallel interface{attributes} }}\n  SW: duplex interface\nlinks:\n  - QS/1:2 to SW/1\n"));

    [Theory]
    [InlineData("2x", "1..2", "QS/1:1 to SW/1\nQS/1:2 to SW/2")]
    [InlineData("8x", "7..8", "QS/1:7 to SW/1\nQS/1:8 to SW/2")]
    public void A_split_port_has_as_many_links_as_its_breakout_makes(string breakout, string links, string read)
    {
        Plant plant = Reading.Plant(
            $"plant: P\nparts:\n  QS: {{ kind: parallel interface, application: 400GBASE-SR8, breakout: {breakout} }}\n  SW: {{ kind: duplex interface, ports: 2 }}\nlinks:\n  - QS/1:{links} to SW/1..2\n");

        Assert.Equal(read, string.Join('\n', plant.Links.Select(l => $"{plant.Address(l.From)} to {plant.Address(l.To)}")));
    }

    [Theory]
    [InlineData("Door to roof/1 to SW/2", "Door to roof/1 to SW/2")]
    [InlineData("SW/2 to Door to roof/1", "SW/2 to Door to roof/1")]
    [InlineData("Door to roof/1 to Hall to Door/2", "Door to roof/1 to Hall to Door/2")]
    [InlineData("Hall to Door/1..2 to Door to roof/2..1", "Hall to Door/1 to Door to roof/2\nHall to Door/2 to Door to roof/1")]
    public void A_name_may_hold_the_word_that_parts_the_two_ends(string link, string read)
    {
        Plant plant = Reading.Plant(
            $"plant: P\nparts:\n  SW: {{ kind: duplex interface, ports: 2 }}\n  Door to roof: {{ kind: duplex interface, ports: 2 }}\n  Hall to Door: {{ kind: duplex interface, ports: 2 }}\nlinks:\n  - {link}\n");

        Assert.Equal(read, string.Join('\n', plant.Links.Select(l => $"{plant.Address(l.From)} to {plant.Address(l.To)}")));
    }

    [Fact]
    public void Where_no_place_fits_the_first_is_explained() =>
        Assert.Equal(
            "p:5:13: there is no part 'Door to roof'; expected the name of a part\n",
            Reading.Problems("plant: P\nparts:\n  SW: { kind: duplex interface, ports: 2 }\nlinks:\n  - SW/1 to Door to roof/1\n"));
}
