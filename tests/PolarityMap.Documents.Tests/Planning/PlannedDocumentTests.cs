using CsCheck;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Planning;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;
using PolarityMap.Core.Strands;
using PolarityMap.Core.Tests.Planning;
using PolarityMap.Documents.Planning;
using PolarityMap.Documents.Tables;
using PolarityMap.Documents.Text;
using Xunit;

namespace PolarityMap.Documents.Tests.Planning;

/// <summary>What is written of a plan reads back as the plant that was proven.</summary>
public sealed class PlannedDocumentTests
{
    [Fact]
    public void The_document_of_a_plan_reads_back_as_the_same_plant_with_the_same_verdict() => RandomBriefs.Any.Sample(
        static brief =>
        {
            if (Planner.Served(brief) is not { } plan)
                return;
            string text = Text(plan);
            var problems = new ProblemList();
            Plant? read = PlantDocument.Read("plant.yaml", new TextSource("plant.yaml", text), problems);
            Assert.True(read is not null, $"{problems}\n{text}");
            CheckReport again = CheckReport.Of(TracedPlant.Of(read));
            Assert.Equal(plan.Report!.Verdict(), again.Verdict());
            Assert.Equal(Links(plan.Report.Traced.Plant), Links(read));

            // Every table of the field is the same, and with them every strand, length, label, network and attribute.
            foreach (ScheduleKind kind in ScheduleCatalogue.All)
                Assert.Equal(Table(kind, plan.Report.Traced), Table(kind, again.Traced));
        },
        iter: 150);

    [Fact]
    public void The_document_is_short_by_its_ranges()
    {
        (Brief? brief, ProblemList problems) = BriefReadingTests.Read(
            """
            brief: Four hundred links
            networks: { house: }
            rooms:
              Main:
              Floor: { distance: 40 m }
            outlets:
              D[1..400]: { room: Floor, links: { house: 1 } }
            application: 10GBASE-SR
            fibre: OM4
            array-loss: 0.35 dB
            duplex-loss: 0.25 dB
            method: U1
            base: 8
            ports-per-switch: 40
            cassettes-per-panel: 50

            """);
        Assert.True(problems.IsEmpty, problems.ToString());
        string[] lines = Text(Planner.Plan(brief!).Chosen!).Split('\n');
        Assert.Equal(
            ["  - HO-SW[1..10]/1..40, house cord 2 m, HO-K[1..100]/1..4"],
            lines.Where(l => l.StartsWith("  - HO-SW", StringComparison.Ordinal) && l.Contains("cord", StringComparison.Ordinal)));
        Assert.InRange(lines.Length, 30, 80);
    }

    private static string Table(ScheduleKind kind, TracedPlant traced) => System.Text.Encoding.UTF8.GetString(CsvWriter.Write(kind.Of(ScheduleInput.Of(traced))));

    internal static string Text(PlanProof plan) => PlanDocument.Write(plan.Planned!, PlanParts.Lines(PlanParts.Of(plan)));

    private static IEnumerable<string> Links(Plant plant) => plant.Links.Select(l => $"{plant.Address(l.From)} to {plant.Address(l.To)}");
}
