using System.Text;
using PolarityMap.Drawing.Fonts;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Svg;

/// <summary>
/// Prints the elements of a scene, each with its attributes in one fixed order: place, fill, stroke, width, dashes.
/// A parent is expected to set the font, its size for <see cref="InheritedCapMm"/>, and no fill.
/// </summary>
internal sealed class SvgElements(StringBuilder output, string idPrefix)
{
    /// <summary>Labels of this height need no font size of their own.</summary>
    internal const double InheritedCapMm = CapHeights.Strand;

    private readonly StringBuilder _path = new(256);

    internal void Append(SceneElement element)
    {
        switch (element)
        {
            case SceneGroup group:
                Group(group);
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
            default:
                throw new ArgumentException($"No SVG is known for {element}.", nameof(element));
        }
    }

    private void Group(SceneGroup group)
    {
        output.Append("<g");
        if (group.Id is not null)
            output.Append(" id=\"").Append(idPrefix).Append(group.Id).Append('"');
        if (group.Role != GroupRole.None)
            output.Append(group.Role == GroupRole.GraphicsObject ? " role=\"graphics-object\"" : " role=\"graphics-symbol\"");
        output.Append(">\n");
        Words("title", group.Title);
        Words("desc", group.Description);
        foreach (SceneElement child in group.Children)
            Append(child);
        output.Append("</g>\n");
    }

    private void Words(string tag, string? text)
    {
        if (string.IsNullOrWhiteSpace(text))
            return;
        output.Append('<').Append(tag).Append('>');
        SvgText.Append(output, text);
        output.Append("</").Append(tag).Append(">\n");
    }

    private void Strand(StrandPath strand)
    {
        _path.Clear();
        SvgPathData.Append(_path, strand.Route);
        Stroke(Palette.Paper, strand.HaloMm, DashKind.Continuous, strand.FillMm);
        Stroke(Palette.Ink, strand.CasingMm, strand.Dash, strand.FillMm);
        Stroke(strand.Fill, strand.FillMm, strand.Dash, strand.FillMm);
    }

    private void Stroke(Colour colour, double width, DashKind dash, double dashUnit)
    {
        output.Append("<path d=\"").Append(_path).Append('"');
        Paint(" stroke=\"", colour);
        Number(" stroke-width=\"", width);
        Dashes(dash, dashUnit);
        output.Append("/>\n");
    }

    private void Text(Label label)
    {
        if (label.UnderlayBox() is { } underlay)
            Rectangle(underlay);
        output.Append("<text");
        Number(" x=\"", label.X);
        Number(" y=\"", label.BaselineY);
        if (label.CapHeightMm != InheritedCapMm)
            Number(" font-size=\"", FontMetrics.FontSizeFor(label.CapHeightMm));
        if (label.Anchor != Anchor.Start)
            output.Append(label.Anchor == Anchor.Middle ? " text-anchor=\"middle\"" : " text-anchor=\"end\"");
        Paint(" fill=\"", label.Colour);
        output.Append('>');
        SvgText.Append(output, label.Text);
        output.Append("</text>\n");
    }

    private void Rectangle(Box box)
    {
        output.Append("<rect");
        Number(" x=\"", box.X);
        Number(" y=\"", box.Y);
        Number(" width=\"", box.Width);
        Number(" height=\"", box.Height);
        if (box.CornerRadius > 0)
            Number(" rx=\"", box.CornerRadius);
        FillAndOutline(box.Fill, box.Stroke, box.StrokeWidthMm);
    }

    private void StraightLine(Line line)
    {
        output.Append("<line");
        Number(" x1=\"", line.X1);
        Number(" y1=\"", line.Y1);
        Number(" x2=\"", line.X2);
        Number(" y2=\"", line.Y2);
        Paint(" stroke=\"", line.Stroke);
        Number(" stroke-width=\"", line.WidthMm);
        Dashes(line.Dash, line.WidthMm);
        output.Append("/>\n");
    }

    private void ClosedLine(Polygon polygon)
    {
        output.Append("<polygon points=\"");
        for (int i = 0; i < polygon.Points.Count; i++)
        {
            if (i > 0)
                output.Append(' ');
            SvgPathData.AppendPoint(output, polygon.Points[i]);
        }

        output.Append('"');
        FillAndOutline(polygon.Fill, polygon.Stroke, polygon.StrokeWidthMm);
    }

    private void Disc(Circle circle)
    {
        output.Append("<circle");
        Number(" cx=\"", circle.CentreX);
        Number(" cy=\"", circle.CentreY);
        Number(" r=\"", circle.Radius);
        FillAndOutline(circle.Fill, circle.Stroke, circle.StrokeWidthMm);
    }

    private void FillAndOutline(Colour? fill, Colour? stroke, double width)
    {
        if (fill is { } inside)
            Paint(" fill=\"", inside);
        if (stroke is { } outline)
        {
            Paint(" stroke=\"", outline);
            Number(" stroke-width=\"", width);
        }

        output.Append("/>\n");
    }

    private void Dashes(DashKind kind, double unit)
    {
        ReadOnlySpan<double> multiples = DashPattern.Multiples(kind);
        if (multiples.Length == 0)
            return;

        // Some renderers read a list parted by spaces as one number.
        output.Append(" stroke-dasharray=\"");
        for (int i = 0; i < multiples.Length; i++)
        {
            if (i > 0)
                output.Append(',');
            SvgNumber.Append(output, multiples[i] * unit);
        }

        output.Append('"');
    }

    private void Paint(string attribute, Colour colour)
    {
        Span<char> hex = stackalloc char[7];
        colour.WriteHex(hex);
        output.Append(attribute).Append(hex).Append('"');
    }

    private void Number(string attribute, double value)
    {
        output.Append(attribute);
        SvgNumber.Append(output, value);
        output.Append('"');
    }
}
