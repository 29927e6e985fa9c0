using CsCheck;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Core.Tests.Strands;
using Xunit;

namespace PolarityMap.Core.Tests.Checks;

/// <summary>What must hold of the verdict on any plant: a link is proven, or an error says why not.</summary>
public sealed class SoundnessTests
{
    // Source: the definition of a proven link; plants and links are random, so no rule's own example is needed.
    [Fact]
    public void A_link_that_is_not_proven_has_an_error_and_a_proven_link_has_none() =>
        Sketch.Random.Select(Gen.Int[0, 1_000_000]).Sample((sketch, seed) =>
        {
            Plant plant = WithLinks(sketch.Build(), new Random(seed));
            var context = new CheckContext(TracedPlant.Of(plant));
            IReadOnlyList<Finding> findings = Checker.Check(context);
            var refuted = new HashSet<int>(findings.Where(f => f.Rule.Severity == Severity.Error).SelectMany(f => f.Links));
            foreach (LinkOutcome outcome in context.Outcomes.All)
            {
                if (!outcome.IsProven)
                    Assert.Contains(outcome.Index, refuted);
                else
                    Assert.DoesNotContain(findings, f => f.Links.Contains(outcome.Index) && f.Rule.Family == "polarity");
            }
        }, iter: 400);

    /// <summary>The plant with a few links between random interface ports, some of them at ends that really are joined.</summary>
    private static Plant WithLinks(Plant plant, Random random)
    {
        var builder = new PlantBuilder();
        foreach (Network network in plant.Networks)
            builder.AddNetwork(network);
        var ports = new List<PortRef>();
        for (int p = 0; p < plant.Parts.Count; p++)
        {
            builder.AddPart(plant.Parts[p]);
            for (int n = 0; plant.Parts[p].Shape.IsInterface && n < plant.Parts[p].Shape.Ports.Count; n++)
                ports.Add(new PortRef(p, n));
        }

        foreach (Mating mating in plant.Matings)
            builder.AddMating(mating);
        foreach (OpenPlug plug in plant.OpenPlugs)
            builder.AddOpenPlug(plug);
        TracedPlant traced = TracedPlant.Of(plant);
        for (int i = 0; i < 4 && ports.Count > 1; i++)
        {
            PortRef from = ports[random.Next(ports.Count)];
            int other = traced.OtherEnd(traced.Graph.PositionOf(from, 1));
            PortRef to = random.Next(2) == 0 && traced.Graph.LaneAt(other) is not null ? traced.Graph.PlaceOf(other).Port : ports[random.Next(ports.Count)];
            if (from != to)
                builder.AddLink(new Link(new LinkEnd(from, 0), new LinkEnd(to, 0), new SourcePlace("random", i + 1, 1)));
        }

        return builder.Build();
    }
}
