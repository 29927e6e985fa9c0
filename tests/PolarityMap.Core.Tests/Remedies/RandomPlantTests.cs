using CsCheck;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Remedies;
using PolarityMap.Core.Strands;
using PolarityMap.Core.Tests.Plants;
using PolarityMap.Core.Tests.Strands;
using Xunit;

namespace PolarityMap.Core.Tests.Remedies;

/// <summary>What must hold of the remedies of any plant, however little sense it makes.</summary>
public sealed class RandomPlantTests
{
    // Source: the definition of a remedy in docs/remedy.md; plants and links are random, sameness is written a second time.
    [Fact]
    public void Every_remedy_clears_its_finding_and_raises_none()
    {
        int sets = 0;
        Sketch.Random.Select(Gen.Int[0, 1_000_000]).Sample((sketch, seed) =>
        {
            CheckReport before = CheckReport.Of(TracedPlant.Of(WithLinks(sketch.Build(), new Lots((ulong)seed))));
            RemedyResult result = RemedySearch.Of(before, new RemedyOptions { MostChanges = 2, MostProofs = 40, MostTrialsEach = 300 });
            var context = new ChangeContext(before.Context);
            HashSet<string> known = [.. before.Findings.SelectMany(f => Sameness.Subjects(before, f))];
            foreach (FindingRemedies finding in result.Findings)
            {
                foreach (RemedySet set in finding.Sets)
                {
                    CheckReport after = CheckReport.Of(TracedPlant.Of(context.Build(set.Changes)!));
                    HashSet<string> now = [.. after.Findings.SelectMany(f => Sameness.Subjects(after, f))];
                    Assert.Subset(known, now);
                    Assert.Empty(Sameness.Subjects(before, before.Findings[finding.Finding]).Intersect(now));
                    Assert.Equal(set.Proven, after.Proven);
                    Interlocked.Increment(ref sets);
                }
            }

            if (result.Plan is { } plan)
            {
                Assert.Subset(known, plan.After.Findings.SelectMany(f => Sameness.Subjects(plan.After, f)).ToHashSet());
                Assert.True(plan.After.Proven >= before.Proven);
            }
        }, iter: 150);

        // The sample is only worth something when it has remedies.
        Assert.True(sets > 50, $"{sets} remedies in the sample");
    }

    /// <summary>The plant with a few links between random interface ports.</summary>
    private static Plant WithLinks(Plant plant, Lots lots)
    {
        PlantBuilder builder = PlantCopy.Of(plant);
        List<PortRef> ports = PlantCopy.InterfacePorts(plant);
        for (int i = 0; i < 3 && ports.Count > 1; i++)
        {
            PortRef from = lots.Of(ports), to = lots.Of(ports);
            if (from != to)
                builder.AddLink(new Link(new LinkEnd(from, 0), new LinkEnd(to, 0), new SourcePlace("random", i + 1, 1)));
        }

        return builder.Build();
    }
}
