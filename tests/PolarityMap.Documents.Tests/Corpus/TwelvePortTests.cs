using PolarityMap.Core.Plants;
using Xunit;

namespace PolarityMap.Documents.Tests.Corpus;

/// <summary>A channel of twelve ports is short to write.</summary>
public class TwelvePortTests
{
    private const string Channel =
        """
        plant: Twelve duplex links over a trunk of 24 fibres
        site: Building name
        date: 2026-03-01
        parts:
          SW-L: { kind: duplex interface, ports: 12, room: Equipment room }
          SW-R: { kind: duplex interface, ports: 12, room: Stage left }
          K-L[1..2]: U1 cassette
          K-R[1..2]: U1 cassette
          T: { kind: Type-B trunk, legs: 2, length: 62 m }
        runs:
          - SW-L/1..12, A-to-B cord 2 m, K-L[1..2]/1..6
          - K-L[1..2]/rear, T/1..2, K-R[1..2]/rear
          - K-R[1..2]/1..6, A-to-B cord 2 m, SW-R/1..12
        links:
          - SW-L/1..12 to SW-R/1..12
        """;

    [Fact]
    public void Twelve_links_are_described_in_at_most_25_lines() => Assert.InRange(Channel.Split('\n').Length, 1, 25);

    [Fact]
    public void The_twelve_links_are_right()
    {
        Plant plant = Reading.Plant(Channel);

        // Five named kinds with two cassettes at each end are seven parts, and a cord at each of 24 ports.
        Assert.Equal(12, plant.Links.Count);
        Assert.Equal(7 + 24, plant.Parts.Count);
        Assert.Equal("", Reading.Codes(plant));
    }

    /// <summary>An odd number of crossings is what makes the channel right (TIA-568.3), so one cord of the other type spoils it.</summary>
    [Fact]
    public void With_one_cord_of_the_other_type_twelve_links_are_wrong()
    {
        string text = Channel.Replace("SW-L/1..12, A-to-B", "SW-L/1..12, A-to-A", StringComparison.Ordinal);

        Assert.Equal(12, Reading.Codes(Reading.Plant(text)).Split(' ').Count(c => c == "P01"));
    }
}
