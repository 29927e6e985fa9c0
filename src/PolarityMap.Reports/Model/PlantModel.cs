using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;

namespace PolarityMap.Reports.Model;

/// <summary>What every page says of the plant, and the verdict on it.</summary>
internal static class PlantModel
{
    public static ModelObject Of(ReportInput input)
    {
        PlantTitle title = input.Title;
        return new ModelObject()
            .Text("title", title.Title).Text("site", title.Site).Text("number", title.Number).Text("revision", title.Revision)
            .Text("date", title.Date).Text("author", title.Author).Text("document", input.Document)
            .Number("parts", input.Plant.Parts.Count).Number("matings", input.Plant.Matings.Count)
            .Number("networks", input.Plant.Networks.Count).Number("links", input.Plant.Links.Count)
            .Number("strands", input.View.Selection.Strands.Count)
            .Number("dark_strands", input.Traced.Strands.Count - input.View.Selection.Strands.Count);
    }

    public static ModelObject VerdictOf(ReportInput input)
    {
        CheckReport check = input.Check;
        int links = input.Plant.Links.Count;
        bool proven = links > 0 && check.Proven == links && check.Errors == 0;
        return new ModelObject()
            .Text("state", check.Errors > 0 || check.Proven < links ? "refuted" : !proven ? "open" : check.Warnings > 0 ? "warned" : "proven")
            .Text("headline", Headline(check, links))
            .Text("words", check.Verdict())
            .Text("loss", input.Budget.Rows.Count > 0 ? input.Budget.Verdict() : null)
            .Number("links", links).Number("proven", check.Proven).Number("errors", check.Errors).Number("warnings", check.Warnings);
    }

    private static string Headline(CheckReport check, int links) => (links, check.Proven, check.Errors, check.Warnings) switch
    {
        (0, _, 0, _) => "Nothing to prove: the document declares no links",
        (0, _, _, _) => "Not in order: errors were found",
        var (n, proven, _, _) when proven < n => $"Not proven: {n - proven} of {n} {(n == 1 ? "link" : "links")} {(n - proven == 1 ? "does" : "do")} not do what {(n - proven == 1 ? "it is" : "they are")} meant to",
        (_, _, > 0, _) => "Links proven, but the plant has errors",
        (_, _, _, > 0) => "Proven, with warnings to look at",
        _ => "Proven: every link does what it is meant to",
    };
}
