using CsCheck;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using QuikGraph;
using QuikGraph.Algorithms;
using Xunit;

namespace PolarityMap.Core.Tests.Strands;

/// <summary>Strands against connected components, on random plants.</summary>
public sealed class TracerTests
{
    // Source: the definition of a strand as what is joined; components found by a general graph library, matings by the
    // coordinates of the reference model (trade facts 5).
    [Fact]
    public void Strands_are_the_connected_components_of_the_positions()
    {
        int loops = 0;
        int singlePlugs = 0;
        Sketch.Random.Sample(sketch =>
        {
            TracedPlant traced = TracedPlant.Of(sketch.Build());
            Assert.Equal(Components(sketch), Groups(traced));
            Interlocked.Add(ref loops, traced.Strands.Count - traced.Strands.OpenCount);
            Interlocked.Add(ref singlePlugs, sketch.Matings.Count(m => m.PositionOfA + m.PositionOfB > 0));
        }, iter: 600);

        // The sample is only worth something when it has what is rare.
        Assert.True(loops > 0, "no loop in the sample");
        Assert.True(singlePlugs > 0, "no simplex plug in a duplex port in the sample");
    }

    [Fact]
    public void Each_position_is_in_exactly_one_strand() => Sketch.Random.Sample(sketch =>
    {
        TracedPlant traced = TracedPlant.Of(sketch.Build());
        var seen = new int[traced.Graph.PositionCount];
        for (int strand = 0; strand < traced.Strands.Count; strand++)
        {
            foreach (int position in traced.Strands[strand])
            {
                seen[position]++;
                Assert.Equal(strand, traced.StrandOf(position));
            }
        }

        Assert.All(seen, times => Assert.Equal(1, times));
    }, iter: 200);

    [Fact]
    public void A_strand_alternates_inside_and_outside_and_is_told_in_the_direction_of_the_runs() => Sketch.Random.Sample(sketch =>
    {
        TracedPlant traced = TracedPlant.Of(sketch.Build());
        for (int strand = 0; strand < traced.Strands.Count; strand++)
        {
            int[] positions = traced.Strands[strand].ToArray();
            bool loop = traced.Strands.IsLoop(strand);
            bool inside = loop || traced.Graph.Inside[positions[0]] >= 0;
            for (int i = 0; i + 1 < positions.Length; i++, inside = !inside)
                Assert.Equal(positions[i + 1], inside ? traced.Graph.Inside[positions[i]] : traced.Graph.Outside[positions[i]]);
            foreach (int end in (int[])[positions[0], positions[^1]])
                Assert.Equal(loop, traced.Graph.Inside[end] >= 0 && traced.Graph.Outside[end] >= 0);
            if (loop)
                Assert.Equal(positions[0], traced.Graph.Outside[positions[^1]]);
            else
                Assert.True(MatingsAlongTheRuns(traced, positions) >= 0);
        }
    }, iter: 200);

    /// <summary>Matings that the strand passes in the order of the runs, less those it passes the other way.</summary>
    private static int MatingsAlongTheRuns(TracedPlant traced, int[] positions)
    {
        int along = 0;
        for (int i = 0; i + 1 < positions.Length; i++)
        {
            if (traced.Graph.Outside[positions[i]] != positions[i + 1])
                continue;
            PortRef from = traced.Graph.PlaceOf(positions[i]).Port;
            PortRef to = traced.Graph.PlaceOf(positions[i + 1]).Port;
            along += traced.Plant.Matings.Any(m => m.A == from && m.B == to) ? 1 : -1;
        }

        return along;
    }

    [Fact]
    public void A_strand_walked_from_its_other_end_is_the_same_strand_in_reverse() => Sketch.Random.Sample(sketch =>
    {
        TracedPlant traced = TracedPlant.Of(sketch.Build());
        for (int strand = 0; strand < traced.Strands.OpenCount; strand++)
        {
            int[] positions = traced.Strands[strand].ToArray();
            Assert.Equal(positions.Reverse(), Walk(traced.Graph, positions[^1]));
            Assert.Equal(positions[0], traced.OtherEnd(positions[^1]));
            Assert.Equal(positions[^1], traced.OtherEnd(positions[0]));
        }
    }, iter: 200);

    [Fact]
    public void Telling_a_plant_backwards_turns_its_strands_and_changes_no_other_thing() => Sketch.Random.Sample(sketch =>
    {
        TracedPlant there = TracedPlant.Of(sketch.Build());
        TracedPlant back = TracedPlant.Of(sketch.Build(Enumerable.Range(0, sketch.Parts.Count).Reverse(), backwards: true));
        Assert.Equal(Lines(there), Lines(back));
        Assert.Equal(Groups(there), Groups(back));
    }, iter: 200);

    [Fact]
    public void The_order_in_which_parts_are_added_changes_neither_what_is_joined_nor_the_numbers_of_active_strands() =>
        Gen.Select(Sketch.Random, Gen.Int[0, int.MaxValue].Array[14]).Sample((sketch, keys) =>
        {
            TracedPlant first = TracedPlant.Of(sketch.Build());
            TracedPlant second = TracedPlant.Of(sketch.Build(Enumerable.Range(0, sketch.Parts.Count).OrderBy(i => keys[i])));
            Assert.Equal(Groups(first), Groups(second));
            Assert.Equal(ActiveNumbers(first), ActiveNumbers(second));
        }, iter: 200);

    [Fact]
    public void The_names_of_parts_change_nothing_but_the_addresses() => Sketch.Random.Sample(sketch =>
    {
        TracedPlant first = TracedPlant.Of(sketch.Build());
        TracedPlant second = TracedPlant.Of(sketch.Build(rename: name => $"Z{1000 - int.Parse(name[1..])}"));
        Assert.Equal(first.Strands.Count, second.Strands.Count);
        for (int strand = 0; strand < first.Strands.Count; strand++)
        {
            Assert.Equal(first.Strands[strand].ToArray(), second.Strands[strand].ToArray());
            Assert.Equal(first.NumberOf(strand), second.NumberOf(strand));
        }
    }, iter: 100);

    [Fact]
    public void Places_and_positions_are_each_others_inverse() => Sketch.Random.Sample(sketch =>
    {
        StrandGraph graph = StrandGraph.Of(sketch.Build());
        for (int position = 0; position < graph.PositionCount; position++)
        {
            PositionPlace place = graph.PlaceOf(position);
            Assert.Equal(position, graph.PositionOf(place.Port, place.Position));
            Assert.Equal(place.Port.Part, graph.PartOf(position));
        }
    }, iter: 100);

    private static List<string> Components(Sketch sketch)
    {
        (List<string> positions, List<(string A, string B)> joins) = sketch.Graph();
        // A cord plugged into itself joins two positions twice.
        var graph = new UndirectedGraph<string, Edge<string>>(allowParallelEdges: true);
        graph.AddVertexRange(positions);
        graph.AddEdgeRange(joins.Select(j => new Edge<string>(j.A, j.B)));
        var component = new Dictionary<string, int>();
        graph.ConnectedComponents(component);
        return [.. component.GroupBy(c => c.Value, c => c.Key).Select(g => string.Join(' ', g.Order(StringComparer.Ordinal))).Order(StringComparer.Ordinal)];
    }

    private static List<string> Groups(TracedPlant traced) =>
    [
        .. Enumerable.Range(0, traced.Strands.Count)
            .Select(s => string.Join(' ', Keys(traced, s).Order(StringComparer.Ordinal)))
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>Every open strand as its positions in order, from the end whose name comes first.</summary>
    private static List<string> Lines(TracedPlant traced)
    {
        var lines = new List<string>();
        for (int strand = 0; strand < traced.Strands.OpenCount; strand++)
        {
            List<string> keys = Keys(traced, strand);
            if (string.CompareOrdinal(keys[0], keys[^1]) > 0)
                keys.Reverse();
            lines.Add(string.Join(' ', keys));
        }

        lines.Sort(StringComparer.Ordinal);
        return lines;
    }

    private static List<string> ActiveNumbers(TracedPlant traced) =>
    [
        .. Enumerable.Range(0, traced.Strands.Count)
            .Where(traced.IsActive)
            .OrderBy(traced.NumberOf)
            .Select(s => $"{traced.NumberOf(s)}: {string.Join(' ', Keys(traced, s))}"),
    ];

    private static List<string> Keys(TracedPlant traced, int strand)
    {
        var keys = new List<string>();
        foreach (int position in traced.Strands[strand])
        {
            PositionPlace place = traced.Graph.PlaceOf(position);
            keys.Add(Sketch.Key(traced.Plant.Parts[place.Port.Part].Name, place.Port.Port, place.Position));
        }

        return keys;
    }

    private static List<int> Walk(StrandGraph graph, int start)
    {
        var positions = new List<int> { start };
        bool inside = graph.Inside[start] >= 0;
        for (int next; (next = inside ? graph.Inside[positions[^1]] : graph.Outside[positions[^1]]) >= 0; inside = !inside)
            positions.Add(next);
        return positions;
    }
}
