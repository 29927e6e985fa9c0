using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.EndFace;

/// <summary>Lines of words beside or below the pictures of a panel.</summary>
internal sealed class WordsBlock(string words, double width) : Block
{
    /// <summary>Narrower than this they go below.</summary>
    public const double Least = 60;

    private readonly List<(string Text, double Cap)> _lines = FaceMeasures.Wrapped(words, width);

    public override double Width => width;

    public override double Height => (_lines.Count * FaceMeasures.Line) - FaceMeasures.Line + CapHeights.Strand + 0.8;

    public override void Paint(double x, double y, PanelPaint paint) => PanelPaint.Write(paint.Words, x, y, _lines, FaceMeasures.Line);
}
