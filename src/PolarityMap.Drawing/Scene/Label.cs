using PolarityMap.Drawing.Fonts;

namespace PolarityMap.Drawing.Scene;

/// <summary>Which point of a label its X names.</summary>
public enum Anchor
{
    Start,
    Middle,
    End,
}

/// <summary>A box of paper colour behind a label, so that lines do not run through its letters.</summary>
/// <param name="Fill">Colour of the box.</param>
/// <param name="MarginMm">How far it reaches beyond the letters on each side.</param>
public readonly record struct Underlay(Colour Fill, double MarginMm)
{
    /// <summary>Paper with half a millimetre around the letters.</summary>
    public static Underlay Paper => new(Palette.Paper, 0.5);
}

/// <summary>One line of text.</summary>
/// <param name="X">The point named by <paramref name="Anchor"/>.</param>
/// <param name="BaselineY">Foot of the capitals.</param>
/// <param name="Text">The words; line breaks are set as spaces.</param>
/// <param name="CapHeightMm">Height of a capital.</param>
/// <param name="Anchor">Whether the text starts at, is centred on, or ends at <paramref name="X"/>.</param>
/// <param name="Colour">Colour of the letters.</param>
/// <param name="Underlay">Box drawn first behind the letters, or none.</param>
public sealed record Label(
    double X,
    double BaselineY,
    string Text,
    double CapHeightMm,
    Anchor Anchor,
    Colour Colour,
    Underlay? Underlay = null) : SceneElement
{
    /// <summary>Its place, where labels of several sheets stand there one after the other; else null.</summary>
    internal LabelSpot? Spot { get; init; }

    /// <summary>Width of the letters.</summary>
    public double WidthMm => FontMetrics.WidthMm(Text, CapHeightMm);

    /// <summary>A label whose capitals stand centred on the height <paramref name="middleY"/>, as on a strand.</summary>
    public static Label CentredOn(
        double x, double middleY, string text, double capHeightMm, Anchor anchor, Colour colour, Underlay? underlay = null) =>
        new(x, middleY + (capHeightMm / 2), text, capHeightMm, anchor, colour, underlay);

    /// <summary>The rectangle from the foot to the top of the capitals, as wide as the letters.</summary>
    public Area Extent()
    {
        double width = WidthMm;
        double left = Anchor switch
        {
            Anchor.Middle => X - (width / 2),
            Anchor.End => X - width,
            _ => X,
        };
        return new Area(left, BaselineY - CapHeightMm, width, CapHeightMm);
    }

    /// <summary>The area to draw behind the letters, or null without an underlay or without letters.</summary>
    public Area? UnderlayArea()
    {
        if (Underlay is not { } underlay || Text.Length == 0)
            return null;
        Area extent = Extent();
        double margin = underlay.MarginMm;
        return new Area(extent.X - margin, extent.Y - margin, extent.Width + (2 * margin), extent.Height + (2 * margin));
    }

    /// <summary>The box to draw behind the letters, or null without an underlay or without letters.</summary>
    public Box? UnderlayBox() => UnderlayArea() is { } area ? new Box(area.X, area.Y, area.Width, area.Height, Fill: Underlay!.Value.Fill) : null;
}
