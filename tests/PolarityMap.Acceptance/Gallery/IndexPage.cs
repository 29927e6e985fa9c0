using System.Text;
using PolarityMap.Core.Checks;

namespace PolarityMap.Acceptance.Gallery;

/// <summary>The gallery's index: every figure with its document, its call, and what the check says.</summary>
internal static class IndexPage
{
    public static string Write(MadeGallery made)
    {
        var page = new StringBuilder();
        page.Append("""
            # Gallery

            Every figure here is made by the program from the document beside it; this page is made with them. The tests compare each
            file with what the program makes now. To make all of them anew:

                POLARITYMAP_APPROVE=1 dotnet test tests/PolarityMap.Acceptance --filter Gallery

            - [The methods](#the-methods): the same link built by each method, all of them right.
            - [Arrays, conversions, interfaces](#arrays-conversions-interfaces): other ferrules, breakouts, one fibre both ways, splices.
            - [The faults](#the-faults): for each rule the smallest document that raises it, and the same repaired.
            - [The opera house](#the-opera-house): four separate networks to sixteen desks, as designed and as found on site.
            - [Planned from a brief](#planned-from-a-brief): the opera house by each method and all of them side by side, a brief that cannot be met, two plants that grow, and a campus.
            - [Fault finding](faultfinding/README.md): six cases from what was seen to what to mend.

            """);
        Head(page, "The methods", "`check` proves every link of every document in this part.");
        foreach (GalleryDocument document in GalleryIndex.Documents.Where(d => d.Folder == GalleryIndex.Methods))
            Show(page, made, document, $"### {Title(document)}");

        Head(page, "Arrays, conversions, interfaces", "Every link of every document is proven here too.");
        foreach (GalleryDocument document in GalleryIndex.Documents.Where(d => d.Folder == GalleryIndex.Arrays))
            Show(page, made, document, $"### {Title(document)}");

        Head(page, "The faults", "`polaritymap explain CODE` prints the rule with the same two documents.");
        foreach (Rule rule in RuleCatalogue.All)
        {
            page.Append($"\n### {rule.Code} {rule.Title}\n\n{rule.Why}\n\n**What clears it.** {rule.Clears}\n");
            Show(page, made, GalleryIndex.Find(GalleryIndex.Faults, rule.Code), $"#### {rule.Code} raised");
            Show(page, made, GalleryIndex.Find(GalleryIndex.Faults, $"{rule.Code}.repaired"), $"#### {rule.Code} repaired");
        }

        Head(page, "The opera house", "Sixteen desks, each with a pair from each of four networks, over a trunk of eight legs for each network.");
        Show(page, made, GalleryIndex.Find(GalleryIndex.Demo, "plant"), "### As designed");
        Show(page, made, GalleryIndex.Find(GalleryIndex.Demo, "as-built"), "### As found on site");

        Head(page, "Planned from a brief", $"The brief is {string.Join(", the one that cannot be met ", GalleryIndex.Briefs.Select(b => $"[{b}]({GalleryIndex.Planned}/{b})"))}.");
        foreach (GalleryDocument document in GalleryIndex.Documents.Where(d => d.Plan is not null))
        {
            Show(page, made, document, document.Heading ?? $"### Planned with method {document.Plan![3]}");
            page.Append($"\nMade by `polaritymap {string.Join(' ', document.Plan!)}`\n");
        }

        return page.ToString();
    }

    private static void Head(StringBuilder page, string head, string text) => page.Append($"\n## {head}\n\n{text}\n");

    private static void Show(StringBuilder page, MadeGallery made, GalleryDocument document, string head)
    {
        page.Append($"\n{head}\n\nDocument [{document.File}]({document.Folder}/{document.File}), ");
        page.Append($"report [{document.Report}]({document.Folder}/{document.Report}): {Verdict(made.CheckOf(document).Out)}\n");
        foreach (PrintedText text in document.Texts)
        {
            page.Append($"\n`polaritymap {string.Join(' ', text.Call)}`: [{text.File}]({document.Folder}/{text.File})\n");
            if (text.Drawing is { } drawing)
                page.Append($"\n![{Path.GetFileNameWithoutExtension(drawing)}]({document.Folder}/{drawing})\n");
        }

        foreach (Figure figure in document.Figures)
        {
            page.Append($"\n`polaritymap {string.Join(' ', made.CallOf(figure))}`\n\n");
            foreach (string svg in made.FilesOf(figure))
                page.Append($"![{Path.GetFileNameWithoutExtension(svg)}]({document.Folder}/{svg})\n");
        }
    }

    /// <summary>The report's sentence on links and findings.</summary>
    private static string Verdict(string report) =>
        report.Split('\n').Last(l => l.Length > 0 && !l.StartsWith("'polaritymap explain", StringComparison.Ordinal));

    /// <summary>The title that the document gives itself.</summary>
    private static string Title(GalleryDocument document) =>
        File.ReadLines(Path.Combine(Repository.Gallery, document.Folder, document.File))
            .First(l => l.StartsWith("plant: ", StringComparison.Ordinal))["plant: ".Length..];
}
