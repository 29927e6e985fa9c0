using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Core.Tests.Strands;

public sealed class LongChainTests
{
    private const int Cords = 100_000;
    private const int SmallStack = 128 * 1024;

    [Fact]
    public void A_chain_of_a_hundred_thousand_cords_is_two_strands_on_a_small_stack()
    {
        TracedPlant traced = Traced(closed: false);
        Assert.Equal((2, 2), (traced.Strands.Count, traced.Strands.OpenCount));
        Assert.All(Enumerable.Range(0, 2), s => Assert.Equal(2 * Cords, traced.Strands[s].Length));
        // Each cord and each of the matings between them exchanges A and B: an odd count in all.
        Assert.Equal($"C{Cords - 1}/far:B", traced.Meets("C0/near:A"));
        Assert.Equal(Cords, traced.Hops(0).Count);
    }

    [Fact]
    public void A_ring_of_a_hundred_thousand_cords_is_two_loops_on_a_small_stack()
    {
        TracedPlant traced = Traced(closed: true);
        Assert.Equal((2, 0), (traced.Strands.Count, traced.Strands.OpenCount));
        Assert.All(Enumerable.Range(0, 2), s => Assert.Equal(2 * Cords, traced.Strands[s].Length));
    }

    private static TracedPlant Traced(bool closed)
    {
        Shape cord = Bench.ShapeOf("duplex cord", v => v.Set("type", "A-to-B"));
        var builder = new PlantBuilder();
        for (int i = 0; i < Cords; i++)
            builder.AddPart(new Part($"C{i}", "duplex cord", cord, default));
        for (int i = 0; i < (closed ? Cords : Cords - 1); i++)
            builder.AddMating(new Mating(new PortRef(i, 1), new PortRef((i + 1) % Cords, 0), Keying.Aligned, default));
        Plant plant = builder.Build();
        TracedPlant? traced = null;
        var thread = new Thread(() => traced = TracedPlant.Of(plant), SmallStack);
        thread.Start();
        thread.Join();
        Assert.NotNull(traced);
        return traced;
    }
}
