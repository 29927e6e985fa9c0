using PolarityMap.Drawing.Fonts;
using PolarityMap.Drawing.Scene;
using SkiaSharp;

namespace PolarityMap.Export;

/// <summary>
/// Draws a sheet on a canvas whose unit is the millimetre, element by element as the SVG of it does: fill before outline,
/// square-cut ends, mitred corners, and nothing where SVG draws nothing.
/// </summary>
internal sealed class SheetPainter : IDisposable
{
    private const double Limit = 1e9;

    // How far the control points of a quarter circle lie from its ends, as a share of the radius: 4/3 (√2 - 1).
    private const float Quarter = 0.55228475f;

    private readonly SKCanvas _canvas;
    private readonly SheetFont _font;
    private readonly SKPaint _fill = new() { IsAntialias = true, Style = SKPaintStyle.Fill };

    // The limit of a mitre is that of SVG.
    private readonly SKPaint _stroke = new()
    {
        IsAntialias = true,
        Style = SKPaintStyle.Stroke,
        StrokeCap = SKStrokeCap.Butt,
        StrokeJoin = SKStrokeJoin.Miter,
        StrokeMiter = 4,
    };

    public SheetPainter(SKCanvas canvas, SheetFont font)
    {
        _canvas = canvas;
        _font = font;
    }

    /// <exception cref="ArgumentOutOfRangeException">A side of the sheet is not a positive length.</exception>
    public static void CheckSize(DrawingSheet sheet)
    {
        foreach (double side in (ReadOnlySpan<double>)[sheet.WidthMm, sheet.HeightMm])
        {
            if (!(side > 0 && side < Limit))
                throw new ArgumentOutOfRangeException(nameof(sheet), side, "A side of a sheet is a positive number of millimetres.");
        }
    }

    /// <exception cref="ArgumentOutOfRangeException">A length is not a finite number.</exception>
    public void Draw(DrawingSheet sheet)
    {
        _canvas.Clear(Of(Palette.Paper));
        foreach (SceneGroup layer in sheet.Layers)
            Draw(layer);
    }

    public void Dispose()
    {
        _fill.Dispose();
        _stroke.Dispose();
    }

    private void Draw(SceneElement element)
    {
        switch (element)
        {
            case SceneGroup group:
                foreach (SceneElement child in group.Children)
                    Draw(child);
                break;
            case StrandPath strand:
                Strand(strand);
                break;
            case Label label:
                Text(label);
                break;
            case Box box:
                Rectangle(box);
                break;
            case Line line:
                StraightLine(line);
                break;
            case Polygon polygon:
                ClosedLine(polygon);
                break;
            case Circle circle:
                Disc(circle);
                break;
            case Curve curve:
                Bent(curve);
                break;
            default:
                throw new ArgumentException($"No drawing is known for {element}.", nameof(element));
        }
    }

    private void Strand(StrandPath strand)
    {
        using SKPath path = PathOf(strand.Route);
        using SKPathEffect? dashes = Dashes(strand.Dash, strand.FillMm);
        Stroke(path, Palette.Paper, strand.HaloMm, null);
        Stroke(path, Palette.Ink, strand.CasingMm, dashes);
        Stroke(path, strand.Fill, strand.FillMm, dashes);
    }

    private void Bent(Curve curve)
    {
        using SKPath path = PathOf(curve.Route);
        using SKPathEffect? dashes = Dashes(curve.Dash, curve.WidthMm);
        Stroke(path, curve.Stroke, curve.WidthMm, dashes);
    }

    private static SKPath PathOf(Route route)
    {
        using var builder = new SKPathBuilder();
        builder.MoveTo(At(route.Start));
        foreach (RouteSegment segment in route.Segments)
        {
            if (segment.IsCurve)
                builder.CubicTo(At(segment.Control1), At(segment.Control2), At(segment.End));
            else
                builder.LineTo(At(segment.End));
        }

        return builder.Detach();
    }

    private void Stroke(SKPath path, Colour colour, double width, SKPathEffect? dashes)
    {
        if (!Sets(_stroke, colour, width))
            return;
        _stroke.PathEffect = dashes;
        _canvas.DrawPath(path, _stroke);
        _stroke.PathEffect = null;
    }

    private void Text(Label label)
    {
        if (label.UnderlayBox() is { } underlay)
            Rectangle(underlay);
        string text = SheetFont.Ready(label.Text);
        float x = Mm(label.X);
        float y = Mm(label.BaselineY);
        if (text.Length == 0 || !(label.CapHeightMm > 0))
            return;
        _fill.Color = Of(label.Colour);
        float[] places = SheetFont.Places(text, out float width);
        float start = label.Anchor switch
        {
            Anchor.Middle => -width / 2,
            Anchor.End => -width,
            _ => 0,
        };
        using SKTextBlob? blob = SKTextBlob.CreateHorizontal(text, _font.Font, places, 0);

        // The font keeps its own size, in which advances are whole numbers; a small size would be rounded to sixty-fourths.
        _canvas.Save();
        _canvas.Translate(x, y);
        _canvas.Scale(Mm(FontMetrics.FontSizeFor(label.CapHeightMm)) / SheetFont.UnitsPerEm);
        if (blob is not null)
            _canvas.DrawText(blob, start, 0, _fill);
        _canvas.Restore();
    }

    private void Rectangle(Box box)
    {
        var rect = SKRect.Create(Mm(box.X), Mm(box.Y), Mm(box.Width), Mm(box.Height));
        if (!(box.Width > 0 && box.Height > 0))
            return;
        if (box.CornerRadius > 0)
        {
            using SKPath rounded = Rounded(rect, Mm(box.CornerRadius));
            FillAndOutline(rounded, box.Fill, box.Stroke, box.StrokeWidthMm);
            return;
        }

        if (Fills(box.Fill))
            _canvas.DrawRect(rect, _fill);
        if (Outlines(box.Stroke, box.StrokeWidthMm))
            _canvas.DrawRect(rect, _stroke);
    }

    private void StraightLine(Line line)
    {
        using var builder = new SKPathBuilder();
        builder.MoveTo(Mm(line.X1), Mm(line.Y1));
        builder.LineTo(Mm(line.X2), Mm(line.Y2));
        using SKPath path = builder.Detach();
        using SKPathEffect? dashes = Dashes(line.Dash, line.WidthMm);
        Stroke(path, line.Stroke, line.WidthMm, dashes);
    }

    private void ClosedLine(Polygon polygon)
    {
        if (polygon.Points.Count == 0)
            return;
        using var builder = new SKPathBuilder();
        builder.MoveTo(At(polygon.Points[0]));
        for (int i = 1; i < polygon.Points.Count; i++)
            builder.LineTo(At(polygon.Points[i]));
        builder.Close();
        using SKPath path = builder.Detach();
        FillAndOutline(path, polygon.Fill, polygon.Stroke, polygon.StrokeWidthMm);
    }

    private void Disc(Circle circle)
    {
        float radius = Mm(circle.Radius);
        var around = SKRect.Create(Mm(circle.CentreX) - radius, Mm(circle.CentreY) - radius, 2 * radius, 2 * radius);
        if (!(circle.Radius > 0))
            return;
        using SKPath path = Rounded(around, radius);
        FillAndOutline(path, circle.Fill, circle.Stroke, circle.StrokeWidthMm);
    }

    /// <summary>
    /// A rectangle with round corners, a circle where they meet. Each quarter is one cubic, off by 0.03 % of the radius; the
    /// library's own arcs fall apart into hundreds of pieces in a PDF.
    /// </summary>
    private static SKPath Rounded(SKRect rect, float radius)
    {
        float rx = Math.Min(radius, rect.Width / 2);
        float ry = Math.Min(radius, rect.Height / 2);
        (float left, float top, float right, float bottom) = (rect.Left, rect.Top, rect.Right, rect.Bottom);
        (float x, float y) = (rx * (1 - Quarter), ry * (1 - Quarter));
        using var builder = new SKPathBuilder();
        builder.MoveTo(left + rx, top);
        builder.LineTo(right - rx, top);
        builder.CubicTo(right - x, top, right, top + y, right, top + ry);
        builder.LineTo(right, bottom - ry);
        builder.CubicTo(right, bottom - y, right - x, bottom, right - rx, bottom);
        builder.LineTo(left + rx, bottom);
        builder.CubicTo(left + x, bottom, left, bottom - y, left, bottom - ry);
        builder.LineTo(left, top + ry);
        builder.CubicTo(left, top + y, left + x, top, left + rx, top);
        builder.Close();
        return builder.Detach();
    }

    private void FillAndOutline(SKPath path, Colour? fill, Colour? stroke, double width)
    {
        if (Fills(fill))
            _canvas.DrawPath(path, _fill);
        if (Outlines(stroke, width))
            _canvas.DrawPath(path, _stroke);
    }

    private bool Fills(Colour? colour)
    {
        if (colour is { } inside)
            _fill.Color = Of(inside);
        return colour is not null;
    }

    private bool Outlines(Colour? colour, double width) => colour is { } outline && Sets(_stroke, outline, width);

    /// <summary>True when there is something to stroke: in SVG a width of 0 draws nothing, here it would be a hairline.</summary>
    private static bool Sets(SKPaint stroke, Colour colour, double width)
    {
        stroke.Color = Of(colour);
        stroke.StrokeWidth = Mm(width);
        return width > 0;
    }

    private static SKPathEffect? Dashes(DashKind kind, double unit)
    {
        ReadOnlySpan<double> multiples = DashPattern.Multiples(kind);
        if (multiples.Length == 0 || !(unit > 0))
            return null;
        var lengths = new float[multiples.Length];
        for (int i = 0; i < lengths.Length; i++)
            lengths[i] = Mm(multiples[i] * unit);
        return SKPathEffect.CreateDash(lengths, 0);
    }

    private static SKColor Of(Colour colour) => new(colour.R, colour.G, colour.B);

    private static SKPoint At(Point point) => new(Mm(point.X), Mm(point.Y));

    private static float Mm(double length) => Math.Abs(length) < Limit
        ? (float)length
        : throw new ArgumentOutOfRangeException(nameof(length), length, "A length on a sheet is a finite number of millimetres.");
}
