using PolarityMap.Core.Checks;
using PolarityMap.Core.Planning;
using PolarityMap.Core.Schedules;
using PolarityMap.Core.Strands;
using PolarityMap.Documents;
using PolarityMap.Documents.Planning;
using PolarityMap.Documents.Tables;
using PolarityMap.Documents.Text;

namespace PolarityMap.Cli.Output;

/// <summary>Writes a plan: the plant document, read back and checked again before it is, and the parts list.</summary>
internal static class PlanFiles
{
    /// <summary>The document of a plan, proven by the ordinary reader and a second check.</summary>
    /// <exception cref="InvalidOperationException">The text is not the plant that was proven: a defect, and nothing is written.</exception>
    public static string Text(PlanProof plan, string path)
    {
        string text = PlanDocument.Write(plan.Planned!, PlanParts.Lines(PlanParts.Of(plan)));
        var problems = new ProblemList();
        if (PlantDocument.Read(path, new TextSource(path, text), problems) is not { } plant)
            throw new InvalidOperationException($"the plan cannot be read back: {problems.Items[0]}");
        CheckReport again = CheckReport.Of(TracedPlant.Of(plant));
        if (again.Findings.Count != plan.Report!.Findings.Count || again.Proven != plan.Report.Proven || plant.Parts.Count != plan.Report.Traced.Plant.Parts.Count)
            throw new InvalidOperationException($"the plan reads back as another plant: {again.Verdict()}");
        return text;
    }

    /// <summary>Writes what is asked for, all of it or nothing.</summary>
    /// <param name="context">The call.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="document">Where the document goes, or null.</param>
    /// <param name="parts">Where the parts list goes, or null.</param>
    /// <param name="list">The parts list, where it is not that of the whole plant.</param>
    /// <returns>The paths that were written.</returns>
    /// <exception cref="CallException">It cannot be written.</exception>
    public static IReadOnlyList<string> Write(CommandContext context, PlanProof plan, string? document, string? parts, Schedule? list = null)
    {
        var paths = new List<string>();
        string text = Text(plan, document ?? "plan.yaml");
        using var files = new WholeFiles();
        if (document is not null)
        {
            files.Add(context.FullPath(document), new System.Text.UTF8Encoding(false).GetBytes(text));
            paths.Add(document);
        }

        if (parts is not null)
        {
            list ??= PlanParts.Of(plan);
            files.Add(context.FullPath(parts), parts.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase) ? XlsxWriter.Write([list]) : CsvWriter.Write(list));
            paths.Add(parts);
        }

        files.Commit();
        return paths;
    }
}
