using PolarityMap.Core.Deviations;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using Xunit;

namespace PolarityMap.Core.Tests.Deviations;

/// <summary>Several deviations at once: laid in any order, lifted again, and as the plant built with all of them.</summary>
public sealed class LayingTests
{
    public static TheoryData<string> Plants => [.. SmallPlants.Names];

    // Source: a property: what is lifted is gone.
    [Theory]
    [MemberData(nameof(Plants))]
    public void Laying_and_lifting_leaves_the_design(string name)
    {
        var context = new DeviationContext(SmallPlants.Of(name));
        Deviation[] all = [.. context.All()];
        int[] design = Ends(new TrialGraph(context.Graph), context);
        foreach (ulong seed in Lots.Seeds)
        {
            var lots = new Lots(seed);
            var trial = new TrialGraph(context.Graph);
            var laid = new List<Deviation>();
            for (int step = 0; step < 60; step++)
            {
                Deviation next = lots.Of(all);
                if (laid.All(d => AreApart(d, next)) && lots.Next(3) > 0)
                {
                    trial.Lay(next);
                    laid.Add(next);
                }
                else if (laid.Count > 0)
                {
                    trial.Lift();
                    laid.RemoveAt(laid.Count - 1);
                }
            }

            for (; laid.Count > 0; laid.RemoveAt(laid.Count - 1))
                trial.Lift();
            Assert.Equal(design, Ends(trial, context));
            Assert.False(trial.PassedLoss);
        }
    }

    // Source: a property, and the trace of the plant built with all of the differences in either order.
    [Theory]
    [MemberData(nameof(Plants))]
    public void Deviations_that_share_no_position_commute_and_do_together_what_the_plant_built_with_all_of_them_does(string name)
    {
        var context = new DeviationContext(SmallPlants.Of(name));
        Deviation[] all = [.. context.All().Where(d => !d.Patch.IsEmpty)];
        int tried = 0;
        foreach (ulong seed in Lots.Seeds)
        {
            foreach (Deviation[] set in Draws(all, new Lots(seed)))
            {
                int[] there = Ends(Laid(context, set), context);
                Assert.Equal(there, Ends(Laid(context, [.. set.Reverse()]), context));
                if (SharePart(set))
                    continue;
                tried++;
                foreach (IEnumerable<Deviation> order in (IEnumerable<Deviation>[])[set, set.Reverse()])
                {
                    Plant? built = context.Build(order.SelectMany(d => d.Differences));
                    Assert.True(built is not null, string.Join("; ", set.Select(d => d.Text)));
                    TracedPlant traced = TracedPlant.Of(built);
                    for (int position = 0; position < there.Length; position++)
                        Assert.True(there[position] == SoundnessTests.Arrives(traced, position), $"{string.Join("; ", set.Select(d => d.Text))}: from {traced.Address(position)}");
                }
            }
        }

        Assert.True(tried > 20, $"only {tried} sets were built");
    }

    /// <summary>Sets of two to four deviations of which no two share a position.</summary>
    private static IEnumerable<Deviation[]> Draws(Deviation[] all, Lots lots)
    {
        for (int n = 0; n < 12; n++)
        {
            var set = new List<Deviation>();
            for (int i = 0; i < 12 && set.Count < 2 + (n % 3); i++)
            {
                Deviation next = lots.Of(all);
                if (set.All(d => AreApart(d, next)))
                    set.Add(next);
            }

            if (set.Count > 1)
                yield return [.. set];
        }
    }

    /// <summary>One part cannot be of two other makes at once, though patches of its positions can lie side by side.</summary>
    private static bool SharePart(Deviation[] set) => set.SelectMany(d => d.Differences).OfType<PartDiffers>().GroupBy(p => p.Part).Any(g => g.Count() > 1);

    private static bool AreApart(Deviation a, Deviation b) =>
        a.Id != b.Id && !Positions(a).Intersect(Positions(b)).Any();

    private static IEnumerable<(bool, int)> Positions(Deviation deviation) =>
        deviation.Patch.Inside.Select(c => (true, c.Position)).Concat(deviation.Patch.Outside.Select(c => (false, c.Position)));

    private static TrialGraph Laid(DeviationContext context, Deviation[] set)
    {
        var trial = new TrialGraph(context.Graph);
        foreach (Deviation deviation in set)
            trial.Lay(deviation);
        return trial;
    }

    private static int[] Ends(TrialGraph trial, DeviationContext context) =>
        [.. Enumerable.Range(0, context.Graph.PositionCount).Select(p => trial.Follow(p, -1))];
}
