using System.Text.Json;
using Xunit;

namespace PolarityMap.Cli.Tests.Commands;

public sealed class TraceCommandTests
{
    // Followed by finger on the document: A of the left switch enters the cord's B, leaves at A, and takes position 2 of
    // the cassette (positions 1 and 2 are A and B of port 1; the cord's A is in the adapter's B).
    [Fact]
    public void A_position_is_followed_to_both_ends()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        Outcome outcome = bench.Run("trace", "plant.yaml", "SW-L/1:A");
        Assert.Equal(0, outcome.Status);
        string[] lines = outcome.Out.Split('\n');
        Assert.Contains("light runs from SW-L/1:A (transmit) to SW-R/1:B (receive)", lines[0], StringComparison.Ordinal);
        Assert.Equal(7, lines.Count(l => l.Length > 5 && char.IsAsciiDigit(l[4])));
        Assert.Single(lines, l => l.StartsWith('>'));
        Assert.StartsWith(">   1  SW-L", lines.Single(l => l.StartsWith('>')), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("SW-L/1", 2)]
    [InlineData("SW-L/1:A", 1)]
    [InlineData("SW-L/1:B", 1)]
    [InlineData("K-L/rear", 12)]
    [InlineData("K-L/rear:7", 1)]
    [InlineData("TRUNK/near", 12)]
    [InlineData("TRUNK", 24)]
    [InlineData("DESK", 2)]
    [InlineData("SW-L/1~K-L/1/near", 2)]
    [InlineData("SW-L/1~K-L/1/far:A", 1)]
    [InlineData("SW-L/1~K-L/1", 4)]
    public void A_part_a_port_a_position_and_an_inline_cord_have_their_positions(string address, int positions)
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        Outcome outcome = bench.Run("trace", "plant.yaml", address, "--format", "json");
        Assert.Equal(0, outcome.Status);
        JsonElement[] found = [.. Json.Parse(outcome.Out, "polaritymap/trace").GetProperty("positions").EnumerateArray()];
        Assert.Equal(positions, found.Length);
        Assert.All(found, p => Assert.StartsWith(address.Split(':')[0], p.GetProperty("address").GetString(), StringComparison.Ordinal));
    }

    // Asking at one end or at the other gives one and the same strand.
    [Fact]
    public void Both_ends_of_a_strand_tell_the_same_hops()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        Assert.Equal(Hops(bench, "SW-L/1:A"), Hops(bench, "SW-R/1:B"));
        Assert.Equal(["SW-L", "SW-L/1~K-L/1", "K-L", "TRUNK", "K-R", "K-R/1~SW-R/1", "SW-R"], Hops(bench, "TRUNK/far:2"));
    }

    [Fact]
    public void An_adapter_has_the_strands_of_the_plug_in_it()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Fault("W03"));
        Outcome outcome = bench.Run("trace", "plant.yaml", "PANEL/1");
        Assert.Equal(0, outcome.Status);
        Assert.Contains("closed loop", outcome.Out, StringComparison.Ordinal);
        Assert.Contains("Nothing is plugged in here.", bench.Run("trace", "plant.yaml", "PANEL/2").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("SWL/1", "there is no part 'SWL'; did you mean 'SW-L'?")]
    [InlineData("SW-L/9", "SW-L has no port '9'; expected one of 1, 2, 3")]
    [InlineData("K-L/raer", "did you mean 'rear'?")]
    [InlineData("TRUNK/neer", "did you mean 'near'?")]
    [InlineData("SW-L/1:C", "SW-L/1 has no position 'C'; expected A or B")]
    [InlineData("K-L/rear:13", "K-L/rear has no position '13'; expected 1 to 12")]
    [InlineData("TRUNC", "there is no part 'TRUNC'; did you mean 'TRUNK'?")]
    public void A_wrong_address_is_told_what_was_expected(string address, string expected)
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        Outcome outcome = bench.Run("trace", "plant.yaml", address);
        Assert.Equal(2, outcome.Status);
        Assert.Equal("", outcome.Out);
        Assert.Contains(expected, outcome.Error, StringComparison.Ordinal);
    }

    private static string[] Hops(Workbench bench, string address) =>
    [
        .. Json.Parse(bench.Run("trace", "plant.yaml", address, "--format", "json").Out, "polaritymap/trace")
            .GetProperty("positions")[0].GetProperty("strand").GetProperty("hops").EnumerateArray().Select(h => h.GetProperty("part").GetString()!),
    ];
}
