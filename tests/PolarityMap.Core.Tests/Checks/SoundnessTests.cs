using CsCheck;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Core.Tests.Plants;
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
            AssertEveryLinkIsJudged(WithLinks(sketch.Build(), new Random(seed)));
        }, iter: 400);

    // Source: as above; hands on site put plugs where they cannot go, and what such a plug cuts off is told all the same.
    [Fact]
    public void A_link_that_is_cut_off_by_a_plug_that_cannot_go_in_has_an_error_too() =>
        Sketch.Random.Select(Gen.Int[0, 1_000_000]).Sample((sketch, seed) =>
        {
            var random = new Random(seed);
            Plant plant = WithLinks(sketch.Build(), random, builder => AddMisfits(builder, random));
            AssertEveryLinkIsJudged(plant);
            IReadOnlyList<Finding> findings = Checker.Check(TracedPlant.Of(plant));
            Assert.Equal(plant.Clashes.Count > 0, findings.Any(f => f.Rule.Code == "M08"));
            Assert.Equal(
                plant.Matings.Any(m => !plant.Fits(m)) || plant.OpenPlugs.Any(o => !plant.Fits(o)),
                findings.Any(f => f.Rule.Code is "M03" or "M04"));
        }, iter: 400);

    private static void AssertEveryLinkIsJudged(Plant plant)
    {
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
    }

    /// <summary>Free ports mated whatever their faces, plugs left in foreign adapters, and ports used once more.</summary>
    private static void AddMisfits(PlantBuilder builder, Random random)
    {
        var taken = new HashSet<PortRef>();
        foreach (Mating mating in builder.Matings)
            taken.UnionWith([mating.A, mating.B]);
        var free = new List<PortRef>();
        var adapters = new List<PortRef>();
        for (int p = 0; p < builder.Parts.Count; p++)
        {
            for (int n = 0; n < builder.Parts[p].Shape.Ports.Count; n++)
            {
                var port = new PortRef(p, n);
                if (builder.Parts[p].Shape.Ports[n].IsAdapter)
                    adapters.Add(port);
                else if (!taken.Contains(port))
                    free.Add(port);
            }
        }

        PortRef Next()
        {
            int i = random.Next(free.Count);
            PortRef port = free[i];
            free.RemoveAt(i);
            return port;
        }

        for (int i = 0; i < 3 && free.Count >= 2; i++)
        {
            var place = new SourcePlace("misfit", i + 1, 1);
            PortRef first = Next();
            if (random.Next(3) == 0 && taken.Count > 0)
                builder.AddClash(new PortClash(taken.ElementAt(random.Next(taken.Count)), 0, first, default, place));
            else if (random.Next(2) == 0 && adapters.Count > 0)
                builder.AddOpenPlug(new OpenPlug(first, adapters[random.Next(adapters.Count)], place));
            else
                builder.AddMating(new Mating(first, Next(), random.Next(2) == 0 ? Keying.Aligned : Keying.Opposed, place));
        }
    }

    /// <summary>The plant with a few links between random interface ports, some of them at ends that really are joined.</summary>
    private static Plant WithLinks(Plant plant, Random random, Action<PlantBuilder>? spoil = null)
    {
        PlantBuilder builder = PlantCopy.Of(plant);
        List<PortRef> ports = PlantCopy.InterfacePorts(plant);
        spoil?.Invoke(builder);
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
