using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>How cards of one size lie on a sheet: in rows and columns, upright, edge to edge, centred.</summary>
internal sealed class CardGrid
{
    private const double MarkLength = 4;

    private readonly SheetFormat _card;
    private readonly int _columns;
    private readonly int _rows;

    private CardGrid(SheetFormat sheet, SheetFormat card)
    {
        Sheet = sheet;
        _card = card;
        _columns = Math.Max(1, (int)(sheet.WidthMm / card.WidthMm));
        _rows = Math.Max(1, (int)(sheet.HeightMm / card.HeightMm));
    }

    public SheetFormat Sheet { get; }

    /// <summary>How many cards a sheet takes.</summary>
    public int Count => _columns * _rows;

    private double Left => (Sheet.WidthMm - (_columns * _card.WidthMm)) / 2;

    private double Top => (Sheet.HeightMm - (_rows * _card.HeightMm)) / 2;

    /// <summary>A sheet of the card's own size, unless the paper is nothing but larger sheets: then the first of them.</summary>
    public static CardGrid Of(PaperChoice paper, SheetFormat card)
    {
        SheetFormat largest = SheetFormat.A5Portrait;
        bool larger = paper.Formats.Count > 0;
        foreach (SheetFormat format in paper.Formats)
            larger &= format.WidthMm * format.HeightMm > (largest.WidthMm * largest.HeightMm) + 1;
        bool takes = larger && paper.Formats[0].WidthMm >= card.WidthMm && paper.Formats[0].HeightMm >= card.HeightMm;
        return new CardGrid(takes ? paper.Formats[0] : card, card);
    }

    /// <summary>Top left corner of a card, counted from 0 along the rows.</summary>
    public (double X, double Y) Corner(int index) => (Left + (index % _columns * _card.WidthMm), Top + (index / _columns * _card.HeightMm));

    /// <summary>Short lines at the edges of the sheet and a cross where four cards meet: cut along them.</summary>
    public IEnumerable<SceneElement> CutMarks()
    {
        if (Sheet == _card)
            yield break;
        for (int c = 0; c <= _columns; c++)
        {
            double x = Left + (c * _card.WidthMm);
            if (x < 1 || x > Sheet.WidthMm - 1)
                continue;
            for (int r = 0; r <= _rows; r++)
            {
                double y = Top + (r * _card.HeightMm);
                yield return new Line(x, Math.Max(0, y - MarkLength), x, Math.Min(Sheet.HeightMm, y + MarkLength), Palette.Ink, LineWidths.Leader);
            }
        }

        for (int r = 0; r <= _rows; r++)
        {
            double y = Top + (r * _card.HeightMm);
            if (y < 1 || y > Sheet.HeightMm - 1)
                continue;
            for (int c = 0; c <= _columns; c++)
            {
                double x = Left + (c * _card.WidthMm);
                yield return new Line(Math.Max(0, x - MarkLength), y, Math.Min(Sheet.WidthMm, x + MarkLength), y, Palette.Ink, LineWidths.Leader);
            }
        }
    }
}
