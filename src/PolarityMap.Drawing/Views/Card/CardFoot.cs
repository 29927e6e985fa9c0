using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>What stands at the foot of every card: how to read it, and the cautions.</summary>
internal sealed class CardFoot
{
    /// <summary>
    /// What to heed with a visible light source besides <see cref="Legend.Caution"/>. Practice of the trade; the class label of
    /// the source and the local rules say more.
    /// </summary>
    public const string SourceCaution =
        "Red-light source: first unplug or power down the transmitters at both ends; never look into a fibre or the source; follow its laser class label and local rules. Clean and inspect before mating. Fibre shards cut: collect them.";

    private const string Reading =
        "Source at the top end: unplug at a gap, and its light shows at the filled place of the part above, nowhere else. Faces are seen at the end, key up, places counted from the left, top row first.";

    private const double MarkSize = 3.2;

    private readonly double _cap;
    private readonly List<string> _lines;
    private readonly int _cautionFrom;
    private readonly double _width;

    private CardFoot(double width, double capHeight)
    {
        _width = width;
        _cap = capHeight;
        _lines = CardWrap.Lines(Reading, width, capHeight);
        _cautionFrom = _lines.Count;
        double beside = width - MarkSize - 1.2;
        _lines.AddRange(CardWrap.Lines($"{Legend.Caution} {SourceCaution}", beside, capHeight));
    }

    /// <summary>The same words in letters of three heights, the tallest first.</summary>
    public static CardFoot[] Sizes(SheetFormat format)
    {
        double width = CardMeasures.Inside(format).Width;
        return [new CardFoot(width, CapHeights.Strand), new CardFoot(width, 2), new CardFoot(width, CapHeights.Least)];
    }

    public double Height => (_lines.Count * Pitch) + 1.6;

    private double Pitch => _cap * 1.56;

    /// <summary>The foot as drawn.</summary>
    /// <param name="left">Left edge of the card's inside.</param>
    /// <param name="bottom">Bottom edge of the card's inside.</param>
    public List<SceneElement> Draw(double left, double bottom)
    {
        double top = bottom - Height;
        var elements = new List<SceneElement> { new Line(left, top, left + _width, top, Palette.Ink, LineWidths.Leader) };
        double baseline = top + 1 + _cap;
        for (int i = 0; i < _lines.Count; i++)
        {
            if (i == _cautionFrom)
                elements.Add(Marks.Warning(left + (MarkSize / 2), baseline - _cap + (MarkSize / 2), MarkSize));
            elements.Add(new Label(left + (i < _cautionFrom ? 0 : MarkSize + 1.2), baseline, _lines[i], _cap, Anchor.Start, Palette.Ink));
            baseline += Pitch;
        }

        return elements;
    }
}
