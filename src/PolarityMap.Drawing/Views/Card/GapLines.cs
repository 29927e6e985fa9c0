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

    /// <summary>Height of all lines, at least of one.</summary>
    public double Height => _lines.Count == 0 ? CardMeasures.Line : _lines.Sum(HeightOf);

    /// <summary>Height of the first line.</summary>
    public double FirstHeight => _lines.Count == 0 ? CardMeasures.Line : HeightOf(_lines[0]);

    /// <summary>The lines as drawn, from <paramref name="top"/> down.</summary>
    public void Append(double left, double top, List<SceneElement> elements)
    {
        foreach (List<GapItem> line in _lines)
        {
            double x = left;
            double middleY = top + (HeightOf(line) / 2);
            foreach (GapItem item in line)
            {
                item.Append(x, middleY, elements);
                x += item.WidthMm + Between;
            }

            top += HeightOf(line);
        }
    }

    private static double HeightOf(List<GapItem> line) => line.Exists(i => i.Face is { Face.Rows: > 1 }) ? CardMeasures.TallLine : CardMeasures.Line;

    private static IEnumerable<GapItem> Broken(GapItem item, double width) => item.Face is not null || item.WidthMm <= width
        ? [item]
        : CardWrap.Lines(item.Before, width, most: 4).Select(l => new GapItem(l));
}
