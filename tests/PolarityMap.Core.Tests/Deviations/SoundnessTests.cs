using CsCheck;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Core.Tests.Strands;
using Xunit;

namespace PolarityMap.Core.Tests.Deviations;

/// <summary>A deviation laid over a strand graph does what it does to a plant that is built with it, for every deviation there is.</summary>
public sealed class SoundnessTests
{
    public static TheoryData<string> Plants => [.. SmallPlants.Names];

    // Source: the trace of the plant built anew with the differences.
    [Theory]
    [MemberData(nameof(Plants))]
    public void Light_goes_as_in_the_plant_built_with_the_deviation_from_every_position(string name)
    {
        var context = new DeviationContext(SmallPlants.Of(name));
        int tried = 0;
        foreach (Deviation deviation in context.All())
        {
            AssertAsBuilt(context, deviation);
            tried++;
        }

        Assert.True(tried > 10, $"{name} has only {tried} deviations");
    }

    // Source: connected components found by a general graph library; matings by the coordinates of the reference model.
    [Theory]
    [MemberData(nameof(Plants))]
    public void The_strands_of_the_plant_built_with_the_deviation_end_where_a_graph_library_finds_their_ends(string name)
    {
        var context = new DeviationContext(SmallPlants.Of(name));
        foreach (Deviation deviation in context.All().Where(d => d.Differences.Count > 0 && !d.Patch.IsEmpty))
        {
            Plant built = context.Build(deviation.Differences)!;
            (int, int)[] ends = Joined.Ends(built);
            TracedPlant traced = TracedPlant.Of(built);
            for (int position = 0; position < ends.Length; position++)
            {
                int strand = traced.StrandOf(position);
                ReadOnlySpan<int> positions = traced.Strands[strand];
                (int, int) own = traced.Strands.IsLoop(strand) ? (-1, -1) : (Math.Min(positions[0], positions[^1]), Math.Max(positions[0], positions[^1]));
                Assert.True(ends[position] == own, $"{deviation.Text}: {traced.Address(position)}");
            }
        }
    }

    // Source: as the first; plants without sense have what ordered ones lack: loops, adapters with several matings, cords into themselves.
    [Fact]
    public void Light_goes_as_in_the_plant_built_with_the_deviation_in_plants_without_sense_too()
    {
        int tried = 0;
        Sketch.Random.Sample(sketch =>
        {
            var context = new DeviationContext(TracedPlant.Of(sketch.Build()));
            foreach (Deviation deviation in context.All())
            {
                AssertAsBuilt(context, deviation);
                Interlocked.Increment(ref tried);
            }
        }, iter: 150);
        Assert.True(tried > 1000, $"only {tried} deviations in the sample");
    }

    // Source: what the search for causes rests on: whoever stands at a part that a deviation touches is told of it.
    [Theory]
    [MemberData(nameof(Plants))]
    public void A_deviation_is_listed_at_every_part_that_it_touches_or_is_seen_at(string name)
    {
        var context = new DeviationContext(SmallPlants.Of(name));
        var at = Enumerable.Range(0, context.Plant.Parts.Count).Select(p => context.At(p).Select(d => d.Id).ToHashSet()).ToList();
        foreach (Deviation deviation in context.All())
        {
            IEnumerable<int> touched = deviation.Patch.Inside.Concat(deviation.Patch.Outside).Select(c => c.Position).Concat(deviation.Lossy).Select(context.Graph.PartOf);
            foreach (int part in touched.Concat(deviation.Parts).Distinct())
                Assert.True(at[part].Contains(deviation.Id), $"'{deviation.Text}' is not listed at {context.Plant.Parts[part].Name}");
        }
    }

    [Theory]
    [MemberData(nameof(Plants))]
    public void Each_deviation_is_one_wherever_it_is_seen_from_and_no_two_have_one_name(string name)
    {
        var context = new DeviationContext(SmallPlants.Of(name));
        Deviation[] all = [.. context.All()];
        Assert.Equal(all.Length, all.Select(d => d.Id).Distinct().Count());
        Assert.Equal(all.Length, all.Select(d => d.Text).Distinct().Count());
        Dictionary<DeviationId, Deviation> known = all.ToDictionary(d => d.Id);
        for (int part = 0; part < context.Plant.Parts.Count; part++)
        {
            IReadOnlyList<Deviation> here = context.At(part);
            Assert.All(here, d => Assert.Same(known[d.Id], d));
            Assert.Equal(here.Count, here.Select(d => d.Id).Distinct().Count());
            Assert.Equal(here.Select(d => d.Id.Kind).Order(), here.Select(d => d.Id.Kind));
        }
    }

    [Theory]
    [MemberData(nameof(Plants))]
    public void A_deviation_names_what_it_changes_and_says_what_to_do(string name)
    {
        var context = new DeviationContext(SmallPlants.Of(name));
        Assert.All(context.All(), d =>
        {
            Assert.Same(DeviationCatalogue.All[d.Id.Kind], d.Kind);
            Assert.True(d.Text.Length > 0 && d.Mend.Length > 0 && !d.Text.EndsWith('.') && !d.Mend.EndsWith('.'), d.Text);
            Assert.NotEmpty(d.Parts);
            Assert.Equal(d.Parts.Count, d.Parts.Distinct().Count());
            Assert.Contains(context.Plant.Parts[d.Parts[0]].Name, d.Text, StringComparison.Ordinal);
            Assert.True(d.Share is > 0 and <= 1 && d.Weight == d.Kind.Weight * d.Share, d.Text);
            Assert.True(!d.Patch.IsEmpty || d.Lossy.Count > 0 || d.Differences.Count > 0, d.Text);
        });
    }

    private static void AssertAsBuilt(DeviationContext context, Deviation deviation)
    {
        var trial = new TrialGraph(context.Graph);
        trial.Lay(deviation);
        Plant? built = context.Build(deviation.Differences);
        Assert.True(built is not null, deviation.Text);
        TracedPlant traced = TracedPlant.Of(built);
        for (int position = 0; position < traced.Graph.PositionCount; position++)
            Assert.True(trial.Follow(position, -1) == Arrives(traced, position), $"{deviation.Text}: from {traced.Address(position)}");
    }

    /// <summary>Where light that is put in at a position comes out at an interface, as the strands have it; -1 where it does not.</summary>
    internal static int Arrives(TracedPlant traced, int position)
    {
        int strand = traced.StrandOf(position);
        int[] positions = traced.Strands[strand].ToArray();
        if (traced.Strands.IsLoop(strand))
            return -1;
        int at = Array.IndexOf(positions, position);
        bool isLane = traced.Graph.HasLane(position);
        int next = isLane ? traced.Graph.Outside[position] : traced.Graph.Inside[position];
        if (next < 0)
            return -1;
        int end = at + 1 < positions.Length && positions[at + 1] == next ? positions[^1] : positions[0];
        return traced.Graph.HasLane(end) ? end : -1;
    }
}
