using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>Items set in lines, as many to a line as it takes.</summary>
internal sealed class GapLines
{
    private const double Between = 3.2;

    private readonly List<List<GapItem>> _lines = [];

    /// <param name="items">The items; one without a face is broken between words where it is too long for a line.</param>
    /// <param name="width">Length of a line, mm.</param>
    public GapLines(IEnumerable<GapItem> items, double width)
    {
        double used = 0;
        foreach (GapItem item in items.SelectMany(i => Broken(i, width)))
        {
            if (_lines.Count > 0 && used + Between + item.WidthMm <= width)
            {
                _lines[^1].Add(item);
                used += Between + item.WidthMm;
                continue;
            }

            _lines.Add([item]);
            used = item.WidthMm;
        }
    }

    public int Count => _lines.Count;

    /// <summary>The lines as drawn, the first centred on <paramref name="middleY"/>.</summary>
    public void Append(double left, double middleY, List<SceneElement> elements)
    {
        foreach (List<GapItem> line in _lines)
        {
            double x = left;
            foreach (GapItem item in line)
            {
                item.Append(x, middleY, elements);
                x += item.WidthMm + Between;
            }

            middleY += CardMeasures.Line;
        }
    }

    private static IEnumerable<GapItem> Broken(GapItem item, double width) => item.Face is not null || item.WidthMm <= width
        ? [item]
        : CardWrap.Lines(item.Before, width, most: 4).Select(l => new GapItem(l));
}
