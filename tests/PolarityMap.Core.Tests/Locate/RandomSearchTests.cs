using CsCheck;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Core.Tests.Plants;
using PolarityMap.Core.Tests.Strands;
using Xunit;

namespace PolarityMap.Core.Tests.Locate;

/// <summary>What must hold of the search in any plant, however little sense it and the observations make.</summary>
public sealed class RandomSearchTests
{
    // Source: the plant built anew with the explanation; plants without sense have loops, and adapters and cords in themselves.
    [Fact]
    public void Every_search_ends_and_what_it_finds_agrees_with_everything_in_the_plant_built_anew()
    {
        int found = 0;
        Sketch.Random.Select(Gen.Int[0, 1_000_000]).Sample((sketch, seed) =>
        {
            var context = new DeviationContext(TracedPlant.Of(sketch.Build()));
            Observation[] seen = [.. Seen(context, new Lots((ulong)seed))];
            LocateResult result = Locator.Locate(context, seen, new LocateOptions { MostDeviations = 2, MostTried = 5000 });
            const int mostBuilt = 20;
            foreach (Explanation explanation in result.Explanations.Take(mostBuilt))
            {
                var site = new RebuiltSite(context, explanation.Deviations);
                Assert.All(seen, o => Assert.True(site.Agrees(o), $"{FieldWords.Wrong(explanation)}: {FieldWords.Saw(context.Traced, o)}"));
                Interlocked.Increment(ref found);
            }
        }, iter: 150);

        // The sample is only worth something when it has explanations.
        Assert.True(found > 100, $"{found} explanations in the sample");
    }

    /// <summary>Light that comes out nowhere or somewhere, and lamps.</summary>
    private static IEnumerable<Observation> Seen(DeviationContext context, Lots lots)
    {
        List<PortRef> ports = PlantCopy.InterfacePorts(context.Plant);
        for (int i = 0; i < 3 && context.Graph.PositionCount > 0; i++)
        {
            if (ports.Count > 0 && lots.Coin())
                yield return new LampSeen(lots.Of(ports), lots.Coin());
            int look = lots.Coin() ? -1 : lots.Next(context.Plant.Parts.Count);
            yield return new LightSeen(lots.Next(context.Graph.PositionCount), look, -1);
        }
    }
}
