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
          QS[1..2]: { kind: parallel interface, ports: 2 }
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
    public void Links_join_ports_or_lanes_in_step(string link, string links) => Assert.Equal(links, Links(link));

    [Fact]
    public void A_link_knows_its_place() =>
        Assert.All(Reading.Plant(Parts + "  - SW-1/1..2 to SW-2/1..2\n").Links, l => Assert.Equal(new SourcePlace("p", 7, 5), l.Place));

    // The second address begins after "  - SW-1/1 to ", in column 15.
    [Theory]
    [InlineData("SW-1/1 to SW-2/9", "p:7:15: SW-2 has no port '9'")]
    [InlineData("SW-1/1 to QS1/1:0", "p:7:15: QS1/1 has no lane '0'")]
    [InlineData("SW-1/1 to QS1/1:x", "p:7:15: QS1/1 has no lane 'x'")]
    [InlineData("SW-1/1 to SW-2/1:A", "p:7:15: SW-2/1 has no lane 'A'")]
    [InlineData("SW-1/1 to SW-2/[1..", "p:7:20: the '[' is not closed")]
    [InlineData("SW-1/1 to ", "p:7:5: 'SW-1/1 to' is no link")]
    public void What_is_wrong_with_the_far_end_is_told_at_its_place(string link, string problem) =>
        Assert.StartsWith(problem, Reading.Problems(Parts + $"  - {link}\n"), StringComparison.Ordinal);

    [Fact]
    public void Places_within_quotes_are_exact_as_well() =>
        Assert.StartsWith("p:7:16: SW-2 has no port '9'", Reading.Problems(Parts + "  - \"SW-1/1 to SW-2/9\"\n"), StringComparison.Ordinal);
}
