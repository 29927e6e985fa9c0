using PolarityMap.Core.Schedules;
using PolarityMap.Reports.Model;
using PolarityMap.Reports.Templates;

namespace PolarityMap.Reports.Pages;

/// <summary>A schedule as a page for print, to be carried and filled in.</summary>
public static class PaperPage
{
    /// <summary>The template that the page starts from.</summary>
    public const string Template = "paper.html";

    /// <summary>Columns that an upright sheet takes.</summary>
    private const int MostUprightColumns = 7;

    /// <summary>Columns that letters of the usual size leave room for.</summary>
    private const int MostUsualColumns = 15;

    /// <summary>The page in HTML. Equal input gives equal text.</summary>
    /// <exception cref="TemplateException">A template is wrong.</exception>
    public static string Write(ReportInput input, Schedule schedule, TemplateFolder folder) =>
        ContentPolicy.Apply(new PageRenderer(folder).Render(Template, ModelOf(input, schedule, folder)));

    /// <summary>What the template sees.</summary>
    internal static ModelObject ModelOf(ReportInput input, Schedule schedule, TemplateFolder folder)
    {
        bool isTermination = schedule.Name == "terminations";
        int columns = schedule.Columns.Count(c => !c.ForPrograms);
        return new ModelObject()
            .Inner("page", new ModelObject().Html("style", new Markup(PageStyle.Of(folder, ["page.css", "paper.css"]))))
            .Inner("plant", PlantModel.Of(input))
            .Inner("verdict", PlantModel.VerdictOf(input))
            .Inner("paper", new ModelObject()
                .Inner("schedule", ScheduleModel.Of(schedule))
                .Text("shape", columns <= MostUprightColumns ? "upright" : columns <= MostUsualColumns ? "wide" : "widest")
                .Flag("to_fill", schedule.Columns.Any(c => c.Kind == CellKind.Blank))
                .List("cautions", isTermination ? FieldTerminationNotes.Cautions.Select(Note) : [])
                .List("steps", isTermination ? FieldTerminationNotes.Preparation.Select(Note) : []));
    }

    private static ModelObject Note(FieldNote note) => new ModelObject().Text("text", note.Text).Text("source", note.Source);
}
