using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Strands;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>Words of a gap that stay together on one line, with a connector's face among them or without.</summary>
/// <param name="Before">Words before the face.</param>
/// <param name="Face">The face, or null.</param>
/// <param name="After">Words after it.</param>
internal sealed record GapItem(string Before, ConnectorFace? Face = null, string After = "")
{
    private const double Gap = 1.1;

    public double WidthMm { get; } = SheetText.Width(Before) + (Face is null ? 0 : (Before.Length > 0 ? Gap : 0) + Face.WidthMm + Gap) + SheetText.Width(After);

    /// <summary>The item as drawn.</summary>
    public void Append(double x, double middleY, List<SceneElement> elements)
    {
        if (Before.Length > 0)
        {
            elements.Add(Label.CentredOn(x, middleY, Before, CapHeights.Strand, Anchor.Start, Palette.Ink));
            x += SheetText.Width(Before) + Gap;
        }

        if (Face is null)
            return;
        Face.Append(x, middleY, elements);
        x += Face.WidthMm + Gap;
        if (After.Length > 0)
            elements.Add(Label.CentredOn(x, middleY, After, CapHeights.Strand, Anchor.Start, Palette.Ink));
    }
}
