using PolarityMap.Core.Planning;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;
using PolarityMap.Documents.Tables;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Comparison;
using PolarityMap.Export;

namespace PolarityMap.Cli.Output;

/// <summary>Writes a comparison of plans: the figure, and a list of all parts to fill in prices.</summary>
internal static class ComparisonFiles
{
    /// <summary>Writes what is asked for.</summary>
    /// <returns>The paths that were written.</returns>
    /// <exception cref="CallException">It cannot be written.</exception>
    public static IReadOnlyList<string> Write(CommandContext context, PlanComparison comparison, Func<PlanCandidate, bool> asked, string? figure, string? parts, bool embedFont)
    {
        var paths = new List<string>();
        using var files = new WholeFiles();
        if (parts is not null)
        {
            Schedule list = Prices(comparison);
            files.Add(context.FullPath(parts), parts.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase) ? XlsxWriter.Write([list]) : CsvWriter.Write(list));
        }

        if (figure is not null)
        {
            PlantTitle title = comparison.Brief.Title;
            bool isSet = SheetFiles.IsFolder(context, figure) || figure.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase);
            IReadOnlyList<DrawingSheet> sheets = ComparisonSheets.Draw(comparison, asked, isSet);
            var options = new SheetFileOptions(new PdfDetails(title.Title) { Author = title.Author, Subject = title.Site, Date = title.Date }) { EmbedFont = embedFont };
            paths.AddRange(SheetFiles.Write(context, figure, [.. sheets.Select((s, i) => ($"comparison-{i + 1}", s))], options));
        }

        files.Commit();
        if (parts is not null)
            paths.Add(parts);
        return paths;
    }

    /// <summary>Every part that any of the plans takes, each once, with its price where one is known.</summary>
    private static Schedule Prices(PlanComparison comparison)
    {
        var rows = new List<IReadOnlyList<Cell>>();
        foreach (PlanItem item in comparison.Plans.SelectMany(p => PlanItem.Of(p.Proof)).Where(i => !i.IsInterface).Select(i => i.Each()).Distinct())
        {
            rows.Add(
            [
                Cell.Of(item.Kind), Cell.Of(item.Type), item.Fibres is { } fibres ? Cell.Of(fibres) : Cell.Empty, Cell.Of(item.FibreClass),
                item.Metres is { } metres ? Cell.OfMetres(metres) : Cell.Empty, Cell.Of(item.KeyCode), Cell.Of(item.Description),
                comparison.Brief.Prices?.Of(item) is { } price ? Cell.OfMetres(price) : Cell.Empty,
            ]);
        }

        return new Schedule("prices", "Price list", "For whoever asks for prices: every part that a plan may take, each once.",
        [
            new("kind", "Kind"), new("type", "Type"), new("fibres", "Fibres", CellKind.Whole), new("fibre-class", "Fibre class"),
            new("length", "Length each (m)", CellKind.Metres), new("key-code", "Key code"), new("description", "Description"), new("price", "Price each", CellKind.Metres),
        ], rows);
    }
}
