using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Core.Tests.Strands;

/// <summary>Parts, ports and lanes are found by position. The oracle counts positions part by part and port by port.</summary>
public sealed class PlaceLookupTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Every_position_is_found_where_counting_comes_to_it(int seed)
    {
        var random = new Random(seed);
        Shape[] shapes =
        [
            Bench.ShapeOf("duplex cord", v => v.Set("type", "A-to-B")),
            Bench.ShapeOf("duplex interface", v => v.Set("ports", 20)),
            Bench.ShapeOf("cassette", v => v.Set("wiring", "straight").Set("base", 12)),
            Bench.ShapeOf("array panel", v => v.Set("ports", 3).Set("keys", "aligned")),
            Bench.ShapeOf("simplex cord"),
        ];
        var builder = new PlantBuilder();
        for (int i = 0; i < 60; i++)
        {
            // Panels have no positions; several of them stand in a row.
            Shape shape = i % 7 > 4 ? shapes[3] : shapes[random.Next(shapes.Length)];
            builder.AddPart(new Part($"P{i}", "", shape, default));
        }

        Plant plant = builder.Build();
        StrandGraph graph = StrandGraph.Of(plant);
        int position = 0;
        for (int part = 0; part < plant.Parts.Count; part++)
        {
            Shape shape = plant.Parts[part].Shape;
            for (int port = 0; port < shape.Ports.Count; port++)
            {
                for (int n = 1; n <= shape.Ports[port].PositionCount; n++, position++)
                {
                    Assert.Equal(new PositionPlace(new PortRef(part, port), n), graph.PlaceOf(position));
                    Assert.Equal(part, graph.PartOf(position));
                    Assert.Equal(position, graph.PositionOf(new PortRef(part, port), n));
                    Lane? lane = shape.Lanes.Where(l => l.Port == port && l.Position == n).Cast<Lane?>().FirstOrDefault();
                    Assert.Equal(lane, graph.LaneAt(position));
                    Assert.Equal(lane is not null, graph.HasLane(position));
                }
            }
        }

        Assert.Equal(position, graph.PositionCount);
    }
}
