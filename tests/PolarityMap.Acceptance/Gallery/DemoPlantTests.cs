using System.Text.Json;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Documents;
using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Acceptance.Gallery;

/// <summary>The opera house is the plant that its comments describe: the counts are typed from the description.</summary>
public sealed class DemoPlantTests
{
    private static readonly TracedPlant Traced = Read();

    private static Plant Plant => Traced.Plant;

    [Fact]
    public void It_has_four_networks() =>
        Assert.Equal(["lighting", "sound", "machinery", "office"], Plant.Networks.Select(n => n.Name));

    [Theory]
    [InlineData("LX-T")]
    [InlineData("SD-T")]
    [InlineData("MC-T")]
    [InlineData("OF-T")]
    public void Each_network_has_a_trunk_of_64_fibres_in_eight_legs_of_8(string trunk)
    {
        int part = Plant.Parts.ToList().FindIndex(p => p.Name == trunk);
        IReadOnlyList<PortShape> ports = Plant.Parts[part].Shape.Ports;
        Assert.Equal(
            [.. Enumerable.Range(1, 8).Select(i => $"near{i}"), .. Enumerable.Range(1, 8).Select(i => $"far{i}")],
            ports.Select(p => p.Name).OrderBy(n => n[0] == 'f').ThenBy(n => n, StringComparer.Ordinal));
        int[] fibres = [.. Enumerable.Range(0, ports.Count).Select(port => Enumerable.Range(1, ports[port].Face.Count)
            .Count(n => Traced.Graph.Inside[Traced.Graph.PositionOf(new PortRef(part, port), n)] >= 0))];
        Assert.All(fibres, n => Assert.Equal(8, n));
        Assert.Equal(64, fibres.Sum() / 2);
    }

    [Fact]
    public void Sixteen_desks_have_four_duplex_ports_each()
    {
        Part[] desks = [.. Plant.Parts.Where(p => p.Name.StartsWith("DESK", StringComparison.Ordinal) && !p.Shape.IsCable)];
        Assert.Equal(16, desks.Length);
        Assert.All(desks, desk => Assert.Equal(4, desk.Shape.Ports.Count(p => p.Face.Family == ConnectorFamily.Duplex)));
    }

    [Fact]
    public void Each_desk_has_one_link_of_every_network()
    {
        Assert.Equal(64, Plant.Links.Count);
        Assert.All(
            Plant.Links.GroupBy(l => Plant.Parts[l.To.Port.Part].Name[2..]),
            desk => Assert.Equal(4, desk.Select(l => Plant.Parts[l.To.Port.Part].Network).Distinct().Count()));
    }

    // Followed by finger: cord to cassette, cassette to trunk, trunk to cassette, cassette to cord, cord to zone box,
    // zone box to cable, cable to desk, desk to cord. The matings at the two interfaces are not counted.
    [Theory]
    [InlineData("LX-SW/1:A")]
    [InlineData("SD-SW/7:B")]
    [InlineData("MC-SW/16:A")]
    [InlineData("OF-SW/9:B")]
    public void A_link_passes_eight_matings_between_its_interfaces_cords(string address)
    {
        Outcome outcome = Product.Run(Path.Combine(Repository.Gallery, GalleryIndex.Demo), "trace", "plant.yaml", address, "--format", "json");
        JsonElement strand = JsonDocument.Parse(outcome.Out).RootElement.GetProperty("positions")[0].GetProperty("strand");
        JsonElement[] hops = [.. strand.GetProperty("hops").EnumerateArray()];
        Assert.Equal(11, hops.Length);
        Assert.Equal("duplex interface", hops[0].GetProperty("kind").GetString());
        Assert.Equal("duplex interface", hops[^1].GetProperty("kind").GetString());
        Assert.Equal(8, hops[1..^2].Count(h => h.TryGetProperty("mating", out _)));
    }

    private static TracedPlant Read()
    {
        var problems = new ProblemList();
        Plant? plant = PlantDocument.Read("plant.yaml", new GalleryFolder(), problems);
        Assert.True(plant is not null, problems.ToString());
        return TracedPlant.Of(plant);
    }

    private sealed class GalleryFolder : IDocumentSource
    {
        public bool TryRead(string path, int maxBytes, out byte[] bytes, out string why)
        {
            bytes = File.ReadAllBytes(Path.Combine(Repository.Gallery, GalleryIndex.Demo, path));
            why = "";
            return true;
        }
    }
}
