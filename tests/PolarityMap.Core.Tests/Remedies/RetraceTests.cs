using PolarityMap.Core.Checks;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Remedies;
using PolarityMap.Core.Strands;
using QuikGraph;
using QuikGraph.Algorithms;
using Xunit;

namespace PolarityMap.Core.Tests.Remedies;

/// <summary>Every remedy of some plants traced again by a general graph library, from the parts and matings of the plant it makes.</summary>
public sealed class RetraceTests
{
    public static TheoryData<string> Plants => ["trunk", "cords", "connectors", "legs", "ring"];

    [Theory]
    [MemberData(nameof(Plants))]
    public void The_strands_of_a_remedy_are_those_that_a_graph_library_finds(string name)
    {
        CheckReport before = Plant(name).Report();
        RemedyResult result = RemedySearch.Of(before);
        var context = new ChangeContext(before.Context);
        IReadOnlyList<Change>[] sets = [.. result.Findings.SelectMany(f => f.Sets).Select(s => s.Changes), [.. result.Plan!.Steps.Select(s => s.Change)]];
        Assert.NotEmpty(sets);
        foreach (IReadOnlyList<Change> set in sets)
        {
            Plant plant = context.Build(set)!;
            TracedPlant traced = TracedPlant.Of(plant);
            int[] component = Components(plant, traced.Graph);
            Assert.Equal(component.Distinct().Count(), traced.Strands.Count);
            for (int strand = 0; strand < traced.Strands.Count; strand++)
                Assert.Single(traced.Strands[strand].ToArray().Select(p => component[p]).Distinct());
        }
    }

    [Theory]
    [MemberData(nameof(Plants))]
    public void In_the_plan_transmit_shares_a_component_with_the_receive_that_each_link_means(string name)
    {
        CheckReport before = Plant(name).Report();
        RemedyPlan plan = RemedySearch.Of(before).Plan!;
        Plant plant = plan.After.Traced.Plant;
        StrandGraph graph = plan.After.Traced.Graph;
        int[] component = Components(plant, graph);
        Assert.NotEmpty(plant.Links);
        foreach (Link link in plant.Links)
        {
            // Duplex ports: position A transmits and B receives.
            Assert.Equal(component[graph.PositionOf(link.From.Port, 1)], component[graph.PositionOf(link.To.Port, 2)]);
            Assert.Equal(component[graph.PositionOf(link.From.Port, 2)], component[graph.PositionOf(link.To.Port, 1)]);
            Assert.NotEqual(component[graph.PositionOf(link.From.Port, 1)], component[graph.PositionOf(link.From.Port, 2)]);
        }
    }

    [Theory]
    [MemberData(nameof(Plants))]
    public void The_patch_of_a_change_makes_the_graph_of_the_plant_built_anew(string name)
    {
        CheckReport before = Plant(name).Report();
        var search = new RemedySearch(before);
        search.Run();
        var context = new ChangeContext(before.Context);
        Assert.True(search.Looked.Count > 5);
        foreach (Change change in search.Looked)
        {
            int[] inside = before.Traced.Graph.Inside.ToArray(), outside = before.Traced.Graph.Outside.ToArray();
            foreach (Rejoined join in change.Patch.Inside)
                inside[join.Position] = join.Partner;
            foreach (Rejoined join in change.Patch.Outside)
                outside[join.Position] = join.Partner;
            StrandGraph built = StrandGraph.Of(context.Build([change])!);
            Assert.Equal(built.Inside.ToArray(), inside);
            Assert.Equal(built.Outside.ToArray(), outside);
        }
    }

    private static Bench Plant(string name) => name switch
    {
        "trunk" => FaultyPlants.Legs(1, 3, "Type-A"),
        "cords" => FaultyPlants.Cords(("A-to-A", 2), ("A-to-B", 1), ("A-to-B", 3)),
        "connectors" => FaultyPlants.Connectors(),
        "legs" => FaultyPlants.Legs(2, 2, "Type-C", rightCord: n => n == 1 ? "A-to-A" : "A-to-B", reversible: true),
        _ => FaultyPlants.Cords(("A-to-B", 2), ("A-to-B", 3), ("A-to-B", 1)),
    };

    /// <summary>The component of each position, with edges from what the parts join inside and from what the matings join.</summary>
    private static int[] Components(Plant plant, StrandGraph numbers)
    {
        var graph = new UndirectedGraph<int, SUndirectedEdge<int>>(allowParallelEdges: true);
        graph.AddVertexRange(Enumerable.Range(0, numbers.PositionCount));
        void Join(int a, int b) => graph.AddEdge(new SUndirectedEdge<int>(Math.Min(a, b), Math.Max(a, b)));
        for (int part = 0; part < plant.Parts.Count; part++)
        {
            Shape shape = plant.Parts[part].Shape;
            int first = numbers.FirstPositionOf(part);
            for (int i = 0; i < shape.PositionCount; i++)
            {
                if (shape.Inside[i] > i)
                    Join(first + i, first + shape.Inside[i]);
            }
        }

        foreach (Mating mating in plant.Matings.Where(plant.Fits))
        {
            for (int p = 1; p <= plant.Port(mating.A).Face.Count; p++)
                Join(numbers.PositionOf(mating.A, p), numbers.PositionOf(mating.B, Met(plant.Port(mating.A).Face, mating.Keys, p)));
        }

        var components = new Dictionary<int, int>();
        graph.ConnectedComponents(components);
        return [.. Enumerable.Range(0, numbers.PositionCount).Select(p => components[p])];
    }

    /// <summary>What a mating joins, from the words of the manual: one row only, as in all of these plants.</summary>
    private static int Met(Face face, Keying keys, int position) => face.Family switch
    {
        ConnectorFamily.Duplex => 3 - position,
        _ => keys == Keying.Aligned ? face.Columns + 1 - position : position,
    };
}
