using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Documents;
using PolarityMap.Documents.Text;

namespace PlantsInCode;

/// <summary>Reads a plant and makes another, traces and checks both, and tells what came of it.</summary>
public static class LibraryExample
{
    private const string Document = """
        plant: Two links over one trunk
        parts:
          SW-L: { kind: duplex interface, ports: 2 }
          SW-R: { kind: duplex interface, ports: 2 }
          CAS-L: U1 cassette
          CAS-R: U1 cassette
          TRUNK: { kind: Type-B trunk, length: 62 m }
        runs:
          - SW-L/1..2, A-to-B cord 2 m, CAS-L/1..2
          - CAS-L/rear, TRUNK, CAS-R/rear
          - CAS-R/1, A-to-B cord 2 m, SW-R/1
          - CAS-R/2, A-to-A cord 2 m, SW-R/2
        links:
          - SW-L/1..2 to SW-R/1..2
        """;

    public static void Run(TextWriter output)
    {
        var problems = new ProblemList();
        Plant? plant = PlantDocument.Read("plant.yaml", new TextSource("plant.yaml", Document), problems);
        if (plant is null)
        {
            output.WriteLine(problems);
            return;
        }

        Tell(plant, output);
        Tell(MadeInCode(), output);
    }

    /// <summary>A plant without a document: two switches and a cord of the wrong type.</summary>
    private static Plant MadeInCode()
    {
        var builder = new PlantBuilder { Title = new PlantTitle("One cord") };
        builder.AddPart("SW-L", "duplex interface");
        builder.AddPart("SW-R", "duplex interface");
        builder.AddPart("CORD", "duplex cord", values => values.Set("type", "A-to-A"));
        builder.Mate("SW-L/1", "CORD/near");
        builder.Mate("CORD/far", "SW-R/1");
        builder.AddLink("SW-L/1", "SW-R/1");
        return builder.Build();
    }

    private static void Tell(Plant plant, TextWriter output)
    {
        output.WriteLine(plant.Title.Title);
        TracedPlant traced = TracedPlant.Of(plant);
        var context = new CheckContext(traced);
        IReadOnlyList<Finding> findings = Checker.Check(context);

        // A link holds when light lands where it is meant to, and nothing along its strands is an error.
        foreach (LinkOutcome link in context.Outcomes.All)
        {
            bool faulty = findings.Any(f => f.Rule.Severity == Severity.Error && f.Strands.Intersect(link.Strands).Any());
            output.WriteLine($"  {plant.Address(link.Link.From)} to {plant.Address(link.Link.To)}: {(link.IsProven && !faulty ? "proven" : "refuted")}");
        }

        foreach (Finding finding in findings)
            output.WriteLine($"  {finding.Rule.Code} {finding.Message}");

        // A strand is a row of positions; its hops are the parts that it visits.
        int first = traced.StrandOf(traced.Graph.PositionOf(plant.Links[0].From.Port, 1));
        foreach (Hop hop in traced.Hops(first))
            output.WriteLine($"    {HopLine.Words(traced, hop)}");
    }
}
