using PolarityMap.Core.Parts;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Card;

/// <summary>
/// A connector's end face, key up, as small as a line of text: a ring for every place, filled where the light is; a point where
/// the ferrule has no fibre.
/// </summary>
/// <param name="Face">The face.</param>
/// <param name="Lit">The position that is lit, from 1.</param>
/// <param name="Fibres">For each position whether there is a fibre.</param>
internal sealed record ConnectorFace(Face Face, int Lit, IReadOnlyList<bool> Fibres)
{
    private const double Disc = 0.66;
    private const double Ring = 0.5;
    private const double Empty = 0.22;
    private const double Margin = 0.4;
    private const double KeyWidth = 2.2;

    public double WidthMm => (Face.Columns * CardMeasures.Place) + (2 * Margin);

    /// <summary>The face as drawn.</summary>
    /// <param name="left">Its left edge.</param>
    /// <param name="middleY">The middle of its height.</param>
    /// <param name="elements">Where it goes.</param>
    public void Append(double left, double middleY, List<SceneElement> elements)
    {
        double height = (Face.Rows * CardMeasures.Place) + (2 * Margin) - 0.3;
        double top = middleY - (height / 2);
        elements.Add(new Box(left, top, WidthMm, height, 0.4, Palette.Ink, LineWidths.Leader));
        // Where the key of a wide ferrule sits is not on record but that it is to one side, so none is drawn.
        if (Face is { Family: ConnectorFamily.Array, OffsetKey: false })
            elements.Add(new Box(left + ((WidthMm - KeyWidth) / 2), top - 0.45, KeyWidth, 0.45, 0, Fill: Palette.Ink));
        for (int i = 0; i < Face.Count; i++)
        {
            double x = left + Margin + ((i % Face.Columns) + 0.5) * CardMeasures.Place;
            double y = top + Margin - 0.15 + ((i / Face.Columns) + 0.5) * CardMeasures.Place;
            elements.Add(i + 1 == Lit ? new Circle(x, y, Disc, Fill: Palette.Ink)
                : Fibres[i] ? new Circle(x, y, Ring, Palette.Ink, LineWidths.Leader)
                : new Circle(x, y, Empty, Fill: Palette.Ink));
        }
    }
}
