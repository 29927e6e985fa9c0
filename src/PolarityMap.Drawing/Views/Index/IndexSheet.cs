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

    // So that the sign before a finding stays clear of its heading.
    private const double HeadRise = 0.6;

    private readonly ViewInput _input;
    private readonly IReadOnlyList<List<IndexLine>> _columns;
    private readonly int _page;
    private readonly int _pages;

    private IndexSheet(ViewInput input, SheetFormat format, IReadOnlyList<List<IndexLine>> columns, int page, int pages)
    {
        _input = input;
        Format = format;
        _columns = columns;
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
            List<List<IndexLine>> columns = IndexLines.InColumns(IndexLines.Of(input, following, pages, column), LinesOfColumn(free));
            int needed = (columns.Count + 1) / 2;
            if (needed <= pages)
                return [.. Enumerable.Range(0, pages).Select(p => new IndexSheet(input, format, [.. columns.Skip(p * 2).Take(2)], p, pages))];
            pages = needed;
        }
    }

    /// <summary>As many as leave the caution a line of its own.</summary>
    private static int LinesOfColumn(Area free) => (int)((free.Height - (2 * Margin) - Measures.LineOfText) / Measures.LineOfText) + 1;

    public override DrawingSheet Draw(SheetPlace place)
    {
        SheetFrame frame = SheetFrame.For(Format, _input.TitleBlock(DocumentType, Subject, place));
        Area free = frame.Free;
        double width = (free.Width - (2 * Margin) - ColumnGap) / 2;
        var words = new List<SceneElement>();
        var links = new List<SheetLink>();
        for (int c = 0; c < _columns.Count; c++)
        {
            double x = free.X + Margin + (c * (width + ColumnGap));
            for (int row = 0; row < _columns[c].Count; row++)
                Draw(_columns[c][row], x, free.Y + Margin + CapHeights.Strand + (row * Measures.LineOfText), width, words, links);
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

    private static void Draw(IndexLine line, double x, double y, double width, List<SceneElement> words, List<SheetLink> links)
    {
        if (line.Sheet.Length > 0)
            words.Add(new Label(x + IndexLines.SheetColumn - 2, y, line.Sheet, CapHeights.Strand, Anchor.End, Palette.Ink));
        words.Add(line.IsHead
            ? new Label(x, y - HeadRise, line.Words, CapHeights.Part, Anchor.Start, Palette.Ink)
            : new Label(x + IndexLines.SheetColumn, y, line.Words, CapHeights.Strand, Anchor.Start, Palette.Ink));
        double middle = y - (CapHeights.Strand / 2);
        if (line.Mark is { } severity)
            words.Add(severity == Severity.Error ? Marks.Error(x + IndexLines.SheetColumn - 4, middle, 3.2) : Marks.Warning(x + IndexLines.SheetColumn - 4, middle, 3.2));
        if (line.LeadsTo > 0)
            links.Add(new SheetLink(new Area(x, y - CapHeights.Strand - 0.7, width, Measures.LineOfText), line.LeadsTo));
    }
}
