using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>One sheet with a card on it, or with several cards of one size to be cut apart.</summary>
internal sealed class CardSheet : PlannedSheet
{
    private readonly ViewInput _input;
    private readonly CardNotes _notes;
    private readonly IReadOnlyList<CardPage> _pages;
    private readonly CardGrid _grid;

    private CardSheet(ViewInput input, CardNotes notes, IReadOnlyList<CardPage> pages, CardGrid grid, string name)
    {
        _input = input;
        _notes = notes;
        _pages = pages;
        _grid = grid;
        Name = name;
    }

    public override string Name { get; }

    public override string Subject => _pages.Count == 1 ? _pages[0].Words : $"{_pages.Count} cards, from {_pages[0].Words} to {_pages[^1].Words}";

    public override string DocumentType => "Installer's card";

    public override SheetFormat Format => _grid.Sheet;

    /// <summary>The sheets that take the cards: a card each, or on larger paper as many of one size as go side by side.</summary>
    public static List<PlannedSheet> Of(ViewInput input, CardNotes notes, IReadOnlyList<CardPage> pages)
    {
        var sheets = new List<PlannedSheet>();
        var names = new SheetNames();
        int from = 0;
        while (from < pages.Count)
        {
            var grid = CardGrid.Of(input.Paper, pages[from].Format);
            int to = from + 1;
            while (to < pages.Count && to - from < grid.Count && pages[to].Format == pages[from].Format)
                to++;
            CardPage[] cards = [.. pages.Skip(from).Take(to - from)];
            string name = grid.Count == 1 ? cards[0].Heading.Title + (cards[0].Count > 1 ? $" card {cards[0].Number}" : "") : "cards";
            sheets.Add(new CardSheet(input, notes, cards, grid, names.Of(name)));
            from = to;
        }

        return sheets;
    }

    public override DrawingSheet Draw(SheetPlace place)
    {
        var painter = new CardPainter(_input.Traced, _notes);
        painter.AddMarks(_grid.CutMarks());
        string sheet = place.Sheets > 1 ? $"sheet {place.Sheet} of {place.Sheets}" : "";
        for (int i = 0; i < _pages.Count; i++)
        {
            (double x, double y) = _grid.Corner(i);
            painter.Paint(_pages[i], x, y, sheet, _pages.Count == 1 ? "" : $"card-{i + 1}-");
        }

        return new DrawingSheet
        {
            WidthMm = Format.WidthMm,
            HeightMm = Format.HeightMm,
            Title = $"{DocumentType}: {Subject}",
            Description = string.Join(' ', _pages.Select(Describe)),
            Layers = painter.Layers,
        };
    }

    private static string Describe(CardPage page)
    {
        string strands = string.Join(" and ", page.Strip.Trails.Select(t => t.Number));
        string rows = page.From == page.To ? "findings only" : $"hops {page.From + 1} to {page.To} of {page.Strip.Rows.Count}";
        string found = page.About.Count == 0 ? "No findings." : $"Findings: {string.Join(", ", page.About.Select(f => $"{f.Rule.Code} {f.Rule.Title}").Distinct())}.";
        string ends = page.Ends.Count == 0 ? "" : " " + string.Join(' ', page.Ends);
        return $"Strand{(page.Strip.IsPair ? "s" : "")} {strands} from top to bottom, {rows}. {found}{ends}";
    }
}
