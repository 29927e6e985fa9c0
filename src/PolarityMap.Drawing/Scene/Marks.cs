namespace PolarityMap.Drawing.Scene;

/// <summary>Small signs drawn as shapes, so that no font needs them. All sizes are mm.</summary>
public static class Marks
{
    /// <summary>Length of an arrowhead along the line.</summary>
    public const double ArrowLength = 3;

    /// <summary>Width of an arrowhead across the line.</summary>
    public const double ArrowWidth = 3.2;

    /// <summary>Width and height of the signs of a finding.</summary>
    public const double SignSize = 5;

    // Half the side of a regular octagon as a share of half its width: the square root of 2, less 1.
    private const double OctagonCut = 0.41421356237309503;

    /// <summary>Filled arrowhead with its tip at the given point.</summary>
    public static Polygon ArrowRight(double tipX, double y, Colour fill) => Arrow(tipX, y, -ArrowLength, fill);

    /// <summary>Filled arrowhead with its tip at the given point.</summary>
    public static Polygon ArrowLeft(double tipX, double y, Colour fill) => Arrow(tipX, y, ArrowLength, fill);

    /// <summary>Sign of an error: an octagon with a cross.</summary>
    public static SceneGroup Error(double centreX, double centreY, double size = SignSize)
    {
        double h = size / 2;
        double c = h * OctagonCut;
        double arm = size * 0.2;
        double width = size * 0.12;
        return new SceneGroup(null,
        [
            new Polygon(
                [
                    (centreX - c, centreY - h), (centreX + c, centreY - h), (centreX + h, centreY - c), (centreX + h, centreY + c),
                    (centreX + c, centreY + h), (centreX - c, centreY + h), (centreX - h, centreY + c), (centreX - h, centreY - c),
                ],
                Fill: Palette.Fault),
            new Line(centreX - arm, centreY - arm, centreX + arm, centreY + arm, Palette.Paper, width),
            new Line(centreX - arm, centreY + arm, centreX + arm, centreY - arm, Palette.Paper, width),
        ]);
    }

    /// <summary>Sign of a warning: a triangle with an exclamation mark.</summary>
    public static SceneGroup Warning(double centreX, double centreY, double size = SignSize)
    {
        double inset = LineWidths.Outline / 2;
        double h = (size / 2) - inset;
        return new SceneGroup(null,
        [
            new Polygon(
                [(centreX, centreY - h), (centreX + h, centreY + h), (centreX - h, centreY + h)],
                Palette.Ink,
                LineWidths.Outline,
                Palette.WarningFill),
            new Line(centreX, centreY - (size * 0.14), centreX, centreY + (size * 0.16), Palette.Ink, size * 0.11),
            new Circle(centreX, centreY + (size * 0.29), size * 0.065, Fill: Palette.Ink),
        ]);
    }

    /// <summary>Sign of a note: a disc with a small letter i.</summary>
    public static SceneGroup Note(double centreX, double centreY, double size = SignSize) => new(null,
    [
        new Circle(centreX, centreY, size / 2, Fill: Palette.Note),
        new Circle(centreX, centreY - (size * 0.23), size * 0.07, Fill: Palette.Paper),
        new Line(centreX, centreY - (size * 0.09), centreX, centreY + (size * 0.28), Palette.Paper, size * 0.12),
    ]);

    /// <summary>A connector's key as a tab standing on the edge of its box: key up.</summary>
    /// <param name="centreX">Middle of the tab.</param>
    /// <param name="edgeY">Top edge of the box.</param>
    public static Polygon KeyUp(double centreX, double edgeY) => KeyTab(centreX, edgeY, -1.4);

    /// <summary>A connector's key as a tab hanging from the edge of its box: key down.</summary>
    /// <param name="centreX">Middle of the tab.</param>
    /// <param name="edgeY">Bottom edge of the box.</param>
    public static Polygon KeyDown(double centreX, double edgeY) => KeyTab(centreX, edgeY, 1.4);

    private const double PinRadius = 0.55;

    /// <summary>A connector has guide pins: a full dot.</summary>
    public static Circle Pins(double centreX, double centreY) => new(centreX, centreY, PinRadius, Fill: Palette.Ink);

    /// <summary>A connector has holes for guide pins: an open dot.</summary>
    public static Circle Holes(double centreX, double centreY) => new(centreX, centreY, PinRadius - (LineWidths.Leader / 2), Palette.Ink, LineWidths.Leader, Palette.Paper);

    /// <summary>A bar across the end of a strand that leads nowhere.</summary>
    public static Line DeadEnd(double x, double y) => new(x, y - 1.6, x, y + 1.6, Palette.Ink, LineWidths.Frame);

    /// <summary>
    /// Short slanted ticks across a strand, one for each further dozen of colours, as on the rings and tracers of real fibres.
    /// </summary>
    /// <param name="x">Middle of the ticks.</param>
    /// <param name="y">Height of the strand.</param>
    /// <param name="count">How many ticks, 1 mm apart.</param>
    public static SceneGroup Ticks(double x, double y, int count)
    {
        var ticks = new SceneElement[count];
        double first = x - ((count - 1) / 2.0);
        for (int i = 0; i < count; i++)
            ticks[i] = new Line(first + i - 0.6, y + 1.2, first + i + 0.6, y - 1.2, Palette.Ink, LineWidths.Inner);
        return new SceneGroup(null, ticks);
    }

    private static Polygon Arrow(double tipX, double y, double back, Colour fill) => new(
        [(tipX, y), (tipX + back, y - (ArrowWidth / 2)), (tipX + back, y + (ArrowWidth / 2))],
        Fill: fill);

    private static Polygon KeyTab(double centreX, double edgeY, double rise) => new(
        [(centreX - 1.5, edgeY), (centreX - 1, edgeY + rise), (centreX + 1, edgeY + rise), (centreX + 1.5, edgeY)],
        Fill: Palette.Ink);
}
