using PolarityMap.Drawing.Fonts;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Svg;

/// <summary>
/// Prints the elements of a scene, each with its attributes in one fixed order: place, fill, stroke, width, dashes.
/// A parent is expected to set the font, its size for <see cref="InheritedCapMm"/>, and no fill. Labels that follow each other in
/// one style share a group that says it once, and plain boxes and polygons that do share one path: a large sheet is a third as long for it.
/// </summary>
internal sealed class SvgElements(Utf8Text output, string idPrefix)
{
    /// <summary>Labels of this height need no font size of their own.</summary>
    internal const double InheritedCapMm = CapHeights.Strand;

    private readonly Utf8Text _path = new(256);

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
            case Label:
                Labels([element], 0, 1);
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
                _path.Clear();
                SvgPathData.Append(_path, curve.Route);
                Stroke(curve.Stroke, curve.WidthMm, curve.Dash, curve.WidthMm);
                break;
            default:
                throw new ArgumentException($"No SVG is known for {element}.", nameof(element));
        }
    }

    private void Group(SceneGroup group)
    {
        bool kept = group.Repeats && idPrefix.Length == 0;
        if (kept && group.Svg is { } text)
        {
            output.Append(text);
            return;
        }

        int start = output.Length;
        Print(group);
        if (kept)
            group.Svg = output.Written.Span[start..].ToArray();
    }

    private void Print(SceneGroup group)
    {
        output.Append("<g"u8);
        if (group.Id is not null)
            output.Append(" id=\""u8).Append(idPrefix).Append(group.Id).Append((byte)'"');
        if (group.Role != GroupRole.None)
            output.Append(group.Role == GroupRole.GraphicsObject ? " role=\"graphics-object\""u8 : " role=\"graphics-symbol\""u8);
        output.Append(">\n"u8);
        Words("title"u8, group.Title);
        Words("desc"u8, group.Description);
        IReadOnlyList<SceneElement> children = group.Children;
        for (int i = 0; i < children.Count;)
        {
            int end = EndOfRun(children, i);
            if (end == i + 1)
                Append(children[i]);
            else if (children[i] is Label)
                Labels(children, i, end);
            else if (children[i] is Box)
                Boxes(children, i, end);
            else
                Polygons(children, i, end);
            i = end;
        }

        output.Append("</g>\n"u8);
    }

    /// <summary>The end of the elements from a place on that can share one element or group.</summary>
    private static int EndOfRun(IReadOnlyList<SceneElement> elements, int start)
    {
        int end = start + 1;
        switch (elements[start])
        {
            case Label first:
                while (end < elements.Count && elements[end] is Label label && label.Anchor == first.Anchor && label.Colour == first.Colour && label.CapHeightMm == first.CapHeightMm)
                    end++;
                break;
            case Box { CornerRadius: 0 } first:
                while (end < elements.Count && elements[end] is Box { CornerRadius: 0 } box && box.Fill == first.Fill && box.Stroke == first.Stroke && box.StrokeWidthMm == first.StrokeWidthMm)
                    end++;
                break;
            case Polygon first:
                while (end < elements.Count && elements[end] is Polygon polygon && polygon.Fill == first.Fill && polygon.Stroke == first.Stroke && polygon.StrokeWidthMm == first.StrokeWidthMm)
                    end++;
                break;
        }

        return end;
    }

    private void Words(ReadOnlySpan<byte> tag, string? text)
    {
        if (string.IsNullOrWhiteSpace(text))
            return;
        output.Append((byte)'<').Append(tag).Append((byte)'>');
        SvgText.Append(output, text);
        output.Append("</"u8).Append(tag).Append(">\n"u8);
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
        output.Append("<path d=\""u8).Append(_path.Written.Span).Append((byte)'"');
        Paint(" stroke=\""u8, colour);
        Number(" stroke-width=\""u8, width);
        Dashes(dash, dashUnit);
        output.Append("/>\n"u8);
    }

    /// <summary>Labels of one style: the paper under them first, then the words.</summary>
    private void Labels(IReadOnlyList<SceneElement> labels, int start, int end)
    {
        Papers(labels, start, end);
        var first = (Label)labels[start];
        bool shared = end > start + 1;
        if (shared)
        {
            output.Append("<g"u8);
            Style(first);
            output.Append(">\n"u8);
        }

        for (int i = start; i < end; i++)
        {
            var label = (Label)labels[i];
            output.Append("<text x=\""u8);
            SvgNumber.Append(output, label.X);
            output.Append("\" y=\""u8);
            SvgNumber.Append(output, label.BaselineY);
            output.Append((byte)'"');
            if (!shared)
                Style(first);
            output.Append((byte)'>');
            SvgText.Append(output, label.Text);
            output.Append("</text>\n"u8);
        }

        if (shared)
            output.Append("</g>\n"u8);
    }

    /// <summary>The paper under labels; what follows each other in one colour is one path.</summary>
    private void Papers(IReadOnlyList<SceneElement> labels, int start, int end)
    {
        for (int i = start; i < end;)
        {
            if (PaperOf(labels[i]) is not { } fill)
            {
                i++;
                continue;
            }

            int next = i + 1, count = 1;
            for (; next < end && (PaperOf(labels[next]) is not { } other || other == fill); next++)
                count += PaperOf(labels[next]) is null ? 0 : 1;
            if (count == 1)
                Rectangle(((Label)labels[i]).UnderlayBox()!);
            else
                Papers(labels, i, next, fill);
            i = next;
        }
    }

    private void Papers(IReadOnlyList<SceneElement> labels, int start, int end, Colour fill)
    {
        output.Append("<path d=\""u8);
        for (int i = start; i < end; i++)
        {
            if (((Label)labels[i]).UnderlayArea() is { } paper)
                SvgPathData.AppendBox(output, paper);
        }

        output.Append((byte)'"');
        FillAndOutline(fill, null, 0);
    }

    /// <summary>The colour of the paper under a label, or null without any.</summary>
    private static Colour? PaperOf(SceneElement element) => element is Label { Underlay: { } underlay, Text.Length: > 0 } ? underlay.Fill : null;

    private void Style(Label label)
    {
        if (label.CapHeightMm != InheritedCapMm)
            Number(" font-size=\""u8, FontMetrics.FontSizeFor(label.CapHeightMm));
        if (label.Anchor != Anchor.Start)
            output.Append(label.Anchor == Anchor.Middle ? " text-anchor=\"middle\""u8 : " text-anchor=\"end\""u8);
        Paint(" fill=\""u8, label.Colour);
    }

    /// <summary>Boxes that look alike, as one path.</summary>
    private void Boxes(IReadOnlyList<SceneElement> boxes, int start, int end)
    {
        output.Append("<path d=\""u8);
        for (int i = start; i < end; i++)
        {
            var box = (Box)boxes[i];
            SvgPathData.AppendBox(output, new Area(box.X, box.Y, box.Width, box.Height));
        }

        output.Append((byte)'"');
        var first = (Box)boxes[start];
        FillAndOutline(first.Fill, first.Stroke, first.StrokeWidthMm);
    }

    /// <summary>Polygons that look alike, as one path.</summary>
    private void Polygons(IReadOnlyList<SceneElement> polygons, int start, int end)
    {
        output.Append("<path d=\""u8);
        for (int i = start; i < end; i++)
            SvgPathData.AppendPolygon(output, ((Polygon)polygons[i]).Points);
        output.Append((byte)'"');
        var first = (Polygon)polygons[start];
        FillAndOutline(first.Fill, first.Stroke, first.StrokeWidthMm);
    }

    private void Rectangle(Box box)
    {
        output.Append("<rect"u8);
        Number(" x=\""u8, box.X);
        Number(" y=\""u8, box.Y);
        Number(" width=\""u8, box.Width);
        Number(" height=\""u8, box.Height);
        if (box.CornerRadius > 0)
            Number(" rx=\""u8, box.CornerRadius);
        FillAndOutline(box.Fill, box.Stroke, box.StrokeWidthMm);
    }

    private void StraightLine(Line line)
    {
        output.Append("<line"u8);
        Number(" x1=\""u8, line.X1);
        Number(" y1=\""u8, line.Y1);
        Number(" x2=\""u8, line.X2);
        Number(" y2=\""u8, line.Y2);
        Paint(" stroke=\""u8, line.Stroke);
        Number(" stroke-width=\""u8, line.WidthMm);
        Dashes(line.Dash, line.WidthMm);
        output.Append("/>\n"u8);
    }

    private void ClosedLine(Polygon polygon)
    {
        output.Append("<polygon points=\""u8);
        for (int i = 0; i < polygon.Points.Count; i++)
        {
            if (i > 0)
                output.Append((byte)' ');
            SvgPathData.AppendPoint(output, polygon.Points[i]);
        }

        output.Append((byte)'"');
        FillAndOutline(polygon.Fill, polygon.Stroke, polygon.StrokeWidthMm);
    }

    private void Disc(Circle circle)
    {
        output.Append("<circle"u8);
        Number(" cx=\""u8, circle.CentreX);
        Number(" cy=\""u8, circle.CentreY);
        Number(" r=\""u8, circle.Radius);
        FillAndOutline(circle.Fill, circle.Stroke, circle.StrokeWidthMm);
    }

    private void FillAndOutline(Colour? fill, Colour? stroke, double width)
    {
        if (fill is { } inside)
            Paint(" fill=\""u8, inside);
        if (stroke is { } outline)
        {
            Paint(" stroke=\""u8, outline);
            Number(" stroke-width=\""u8, width);
        }

        output.Append("/>\n"u8);
    }

    private void Dashes(DashKind kind, double unit)
    {
        ReadOnlySpan<double> multiples = DashPattern.Multiples(kind);
        if (multiples.Length == 0)
            return;

        // Some renderers read a list parted by spaces as one number.
        output.Append(" stroke-dasharray=\""u8);
        for (int i = 0; i < multiples.Length; i++)
        {
            if (i > 0)
                output.Append((byte)',');
            SvgNumber.Append(output, multiples[i] * unit);
        }

        output.Append((byte)'"');
    }

    private void Paint(ReadOnlySpan<byte> attribute, Colour colour)
    {
        Span<char> hex = stackalloc char[7];
        colour.WriteHex(hex);
        output.Append(attribute).Append(hex).Append((byte)'"');
    }

    private void Number(ReadOnlySpan<byte> attribute, double value)
    {
        output.Append(attribute);
        SvgNumber.Append(output, value);
        output.Append((byte)'"');
    }
}
