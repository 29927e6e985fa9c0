using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views.Index;

/// <summary>The first sheet of a set: which sheet shows what, which findings are where, and on which sheets each part is drawn.</summary>
internal sealed class IndexSheet : PlannedSheet
{
    private const double Margin = 4;
    private const double ColumnGap = 6;

    private readonly ViewInput _input;
    private readonly IReadOnlyList<IndexLine> _lines;
    private readonly int _page;
    private readonly int _pages;

    private IndexSheet(ViewInput input, SheetFormat format, IReadOnlyList<IndexLine> lines, int page, int pages)
    {
        _input = input;
        Format = format;
        _lines = lines;
        _page = page;
        _pages = pages;
    }

    public override string Name => _pages == 1 ? "index" : $"index-{_page + 1}";

    public override string Subject => "Index of sheets";

    public override string DocumentType => "Index of sheets";

    public override SheetFormat Format { get; }

    /// <summary>Plans the index of the sheets that follow it.</summary>
    public static IReadOnlyList<PlannedSheet> Plan(ViewInput input, IReadOnlyList<PlannedSheet> following)
    {
        SheetFormat format = input.Paper.Formats.FirstOrDefault(f => f.Name != SheetFormat.A5Landscape.Name) ?? input.Paper.Formats[0];
        Area free = SheetFrame.FreeOf(format);
        double column = (free.Width - (2 * Margin) - ColumnGap) / 2;

        // The numbers of the sheets depend on how many the index itself has, and that hardly ever on the numbers.
        int pages = 1;
        while (true)
        {
            List<IndexLine> lines = IndexLines.Of(input, following, pages, column);
            int onPage = 2 * LinesOfColumn(free);
            int needed = Math.Max(1, (lines.Count + onPage - 1) / onPage);
            if (needed <= pages)
                return [.. Enumerable.Range(0, pages).Select(p => new IndexSheet(input, format, [.. lines.Skip(p * onPage).Take(onPage)], p, pages))];
            pages = needed;
        }
    }

    private static int LinesOfColumn(Area free) => (int)((free.Height - (2 * Margin) - Measures.LineOfText) / Measures.LineOfText);

    public override DrawingSheet Draw(SheetPlace place)
    {
        SheetFrame frame = SheetFrame.For(Format, _input.TitleBlock(DocumentType, Subject, place));
        Area free = frame.Free;
        int rows = LinesOfColumn(free);
        double width = (free.Width - (2 * Margin) - ColumnGap) / 2;
        var words = new List<SceneElement>();
        var links = new List<SheetLink>();
        for (int i = 0; i < _lines.Count; i++)
        {
            double x = free.X + Margin + (i / rows * (width + ColumnGap));
            double y = free.Y + Margin + CapHeights.Strand + (i % rows * Measures.LineOfText);
            IndexLine line = _lines[i];
            if (line.Sheet.Length > 0)
                words.Add(new Label(x + IndexLines.SheetColumn - 2, y, line.Sheet, CapHeights.Strand, Anchor.End, Palette.Ink));
            words.Add(new Label(line.IsHead ? x : x + IndexLines.SheetColumn, y, line.Words, line.IsHead ? CapHeights.Part : CapHeights.Strand, Anchor.Start, Palette.Ink));
            if (line.Mark is { } severity)
                words.Add(severity == Severity.Error ? Marks.Error(x + IndexLines.SheetColumn - 4, y - (CapHeights.Strand / 2), 3.2) : Marks.Warning(x + IndexLines.SheetColumn - 4, y - (CapHeights.Strand / 2), 3.2));
            if (line.LeadsTo > 0)
                links.Add(new SheetLink(new Area(x, y - CapHeights.Strand - 0.7, width, Measures.LineOfText), line.LeadsTo));
        }

        PlantTitle title = _input.Title;
        return new DrawingSheet
        {
            WidthMm = Format.WidthMm,
            HeightMm = Format.HeightMm,
            Title = title.Title.Length > 0 ? title.Title : Subject,
            Description = $"Index of {place.Sheets} sheets: what each shows, the findings, and where each part is drawn.",
            Links = links,
            Layers =
            [
                frame.Drawing,
                new SceneGroup("labels", words),
                new SceneGroup("notes", [new Label(free.X + Margin, free.Bottom - 1.6, Legend.ShortCaution(free.Width - (2 * Margin)), CapHeights.Strand, Anchor.Start, Palette.Ink)]),
            ],
        };
    }
}
