using PolarityMap.Core.Optics;
using PolarityMap.Core.Schedules;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Strands;
using PolarityMap.Reports.Interactive;
using PolarityMap.Reports.Model;
using PolarityMap.Reports.Templates;

namespace PolarityMap.Reports.Pages;

/// <summary>The report as one page that needs nothing beside it.</summary>
public static class ReportPage
{
    /// <summary>The template that the page starts from.</summary>
    public const string Template = "index.html";

    /// <summary>The page in HTML. Equal input gives equal text.</summary>
    /// <exception cref="TemplateException">A template is wrong.</exception>
    public static string Write(ReportInput input, TemplateFolder folder) =>
        ContentPolicy.Apply(new PageRenderer(folder).Render(Template, ModelOf(input, folder)));

    /// <summary>What the template sees.</summary>
    internal static ModelObject ModelOf(ReportInput input, TemplateFolder folder)
    {
        var findings = new FindingModel(input);
        InteractiveDiagram? diagram = input.Sheets.Count > 0 ? InteractiveDiagram.Of(input.View, input.Sheets, folder) : null;
        Schedule? parts = input.Schedules.FirstOrDefault(s => s.Name == "parts");
        return new ModelObject()
            .Inner("page", new ModelObject().Html("style", new Markup(PageStyle.Of(folder, ["page.css"], diagram?.Style ?? "")))
                .Html("script", new Markup(diagram?.Script ?? "")).Flag("has_script", diagram is not null))
            .Inner("plant", PlantModel.Of(input))
            .Inner("verdict", PlantModel.VerdictOf(input))
            .Inner("seen", SeenModel.Of(input))
            .Inner("findings", findings.Of())
            .Inner("diagram", new ModelObject().Html("section", new Markup(diagram?.Html ?? "")).Number("sheets", input.Sheets.Count).Text("missing", input.SheetsMissing))
            .List("links", LinkModel.Links(input, findings))
            .Inner("losses", LinkModel.Losses(input))
            .Inner("separation", SeparationModel.Of(input))
            .Inner("parts", parts is null ? null : ScheduleModel.Of(parts))
            .List("colours", Colours(input))
            .List("files", input.Files.Select(g => new ModelObject().Text("title", g.Title)
                .List("files", g.Files.Select(f => new ModelObject().Text("path", f.Path).Text("title", f.Title).Text("purpose", f.Purpose)))));
    }

    /// <summary>The colours of the strands, in the order of their sequence.</summary>
    private static IEnumerable<ModelObject> Colours(ReportInput input) => input.View.Selection.Strands
        .Select(s => StrandColours.Of(input.Traced, s) with { Tracers = 0 }).Distinct().OrderBy(c => c.Number)
        .Select(c => new ModelObject().Text("code", c.Code).Text("name", c.Name).Html("swatch", Swatch(c)));

    /// <summary>A short piece of a strand as drawings show it.</summary>
    private static Markup Swatch(FibreColour colour) => new(
        $"<svg width=\"32\" height=\"8\" viewBox=\"0 0 32 8\" aria-hidden=\"true\"><path d=\"M0 4H32\" stroke=\"{Palette.Ink.Hex}\" stroke-width=\"6\"/><path d=\"M0 4H32\" stroke=\"{StrandColours.Drawn(colour).Hex}\" stroke-width=\"4\"/></svg>");
}
