namespace PolarityMap.Drawing.Scene;

/// <summary>The fixed part of a sheet: frame, zone marks, title block, scale bar; and the space they leave.</summary>
/// <remarks>Borders follow ISO 5457: 20 mm on the left for filing, 10 mm on the other sides.</remarks>
public sealed class SheetFrame
{
    private const double FilingBorder = 20;
    private const double Border = 10;

    private SheetFrame(SheetFormat format, Area frame, SceneGroup drawing)
    {
        Format = format;
        Frame = frame;
        Drawing = drawing;
    }

    public SheetFormat Format { get; }

    /// <summary>Centre of the frame line.</summary>
    public Area Frame { get; }

    /// <summary>The layer to draw first, with the id <c>frame</c>.</summary>
    public SceneGroup Drawing { get; }

    /// <summary>Free drawing space: the full width inside the frame, above the title block.</summary>
    public Area Free => FreeOf(Frame);

    /// <summary>Free space left of the title block, as for a legend; without width where the block fills the sheet.</summary>
    public Area BesideTitleBlock => BesideTitleBlockOf(Frame);

    /// <summary>The free drawing space of a sheet whose frame is not drawn yet.</summary>
    public static Area FreeOf(SheetFormat format) => FreeOf(FrameOf(format));

    /// <summary>The space left of the title block of a sheet whose frame is not drawn yet.</summary>
    public static Area BesideTitleBlockOf(SheetFormat format) => BesideTitleBlockOf(FrameOf(format));

    /// <summary>Draws the frame of a sheet.</summary>
    public static SheetFrame For(SheetFormat format, TitleBlock title)
    {
        Area frame = FrameOf(format);
        var elements = new List<SceneElement>(96);
        SheetZones.Append(format, frame, elements);
        TitleBlockDrawing.Append(title, frame, elements);

        // The frame comes last, so that it lies on the ends of the rules.
        elements.Add(new Box(frame.X, frame.Y, frame.Width, frame.Height, 0, Palette.Ink, LineWidths.Frame));
        return new SheetFrame(format, frame, new SceneGroup("frame", elements));
    }

    private static Area FrameOf(SheetFormat format) =>
        new(FilingBorder, Border, format.WidthMm - FilingBorder - Border, format.HeightMm - (2 * Border));

    private static Area FreeOf(Area frame) => frame with { Height = frame.Height - TitleBlockDrawing.HeightMm };

    private static Area BesideTitleBlockOf(Area frame) => new(
        frame.X,
        frame.Bottom - TitleBlockDrawing.HeightMm,
        frame.Width - TitleBlockDrawing.WidthMm,
        TitleBlockDrawing.HeightMm);

    /// <summary>Zone of a place on the sheet, letter then numeral: <c>C4</c>.</summary>
    public string ZoneAt(double x, double y) => SheetZones.At(Format, x, y);
}
