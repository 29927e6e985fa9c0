using System.Runtime.InteropServices;
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
    private readonly SvgAttributes _attributes = new(output);

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
                Labels([element]);
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
        ReadOnlySpan<SceneElement> rest = SpanOf(group.Children);
        while (rest.Length > 0)
        {
            ReadOnlySpan<SceneElement> run = rest[..RunOf(rest)];
            if (run.Length == 1)
                Append(run[0]);
            else if (run[0] is Label)
                Labels(run);
            else if (run[0] is Box)
                Boxes(run);
            else
                Polygons(run);
            rest = rest[run.Length..];
        }

        output.Append("</g>\n"u8);
    }

    /// <summary>Elements without a call for each of them: a sheet has thousands.</summary>
    private static ReadOnlySpan<SceneElement> SpanOf(IReadOnlyList<SceneElement> elements) => elements switch
    {
        SceneElement[] array => array,
        List<SceneElement> list => CollectionsMarshal.AsSpan(list),
        _ => elements.ToArray(),
    };

    /// <summary>How many elements from the first on can share one element or group.</summary>
    private static int RunOf(ReadOnlySpan<SceneElement> elements)
    {
        int end = 1;
        switch (elements[0])
        {
            case Label first:
                while (end < elements.Length && elements[end] is Label label && label.Anchor == first.Anchor && label.Colour == first.Colour && label.CapHeightMm == first.CapHeightMm)
                    end++;
                break;
            case Box { CornerRadius: 0 } first:
                while (end < elements.Length && elements[end] is Box { CornerRadius: 0 } box && box.Fill == first.Fill && box.Stroke == first.Stroke && box.StrokeWidthMm == first.StrokeWidthMm)
                    end++;
                break;
            case Polygon first:
                while (end < elements.Length && elements[end] is Polygon polygon && polygon.Fill == first.Fill && polygon.Stroke == first.Stroke && polygon.StrokeWidthMm == first.StrokeWidthMm)
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
        if (strand.Svg is { } text)
        {
            output.Append(text);
            return;
        }

        int start = output.Length;
        _path.Clear();
        SvgPathData.Append(_path, strand.Route);
        Stroke(Palette.Paper, strand.HaloMm, DashKind.Continuous, strand.FillMm);
        Stroke(Palette.Ink, strand.CasingMm, strand.Dash, strand.FillMm);
        Stroke(strand.Fill, strand.FillMm, strand.Dash, strand.FillMm);
        if (strand.Repeats)
            strand.Svg = output.Written.Span[start..].ToArray();
    }

    private void Stroke(Colour colour, double width, DashKind dash, double dashUnit)
    {
        output.Append("<path d=\""u8).Append(_path.Written.Span).Append((byte)'"');
        _attributes.Paint(" stroke=\""u8, colour);
        _attributes.Number(" stroke-width=\""u8, width);
        _attributes.Dashes(dash, dashUnit);
        output.Append("/>\n"u8);
    }

    /// <summary>Labels of one style: the paper under them first, then the words.</summary>
    private void Labels(ReadOnlySpan<SceneElement> labels)
    {
        Papers(labels);
        var first = (Label)labels[0];
        bool shared = labels.Length > 1;
        if (shared)
        {
            output.Append("<g"u8);
            Style(first);
            output.Append(">\n"u8);
        }

        foreach (SceneElement element in labels)
        {
            var label = (Label)element;
            OpenText(label);
            if (!shared)
                Style(first);
            output.Append((byte)'>');
            SvgText.Append(output, label.Text);
            output.Append("</text>\n"u8);
        }

        if (shared)
            output.Append("</g>\n"u8);
    }

    private void OpenText(Label label)
    {
        if (label.Spot?.Opening is { } kept)
        {
            output.Append(kept);
            return;
        }

        int start = output.Length;
        output.Append("<text x=\""u8);
        SvgNumber.Append(output, label.X);
        output.Append("\" y=\""u8);
        SvgNumber.Append(output, label.BaselineY);
        output.Append((byte)'"');
        if (label.Spot is { } spot)
            spot.Opening = output.Written.Span[start..].ToArray();
    }

    /// <summary>The paper under labels; what follows each other in one colour is one path.</summary>
    private void Papers(ReadOnlySpan<SceneElement> labels)
    {
        Label? first = null;
        bool isPath = false;
        foreach (SceneElement element in labels)
        {
            if (element is not Label { Underlay: { } underlay, Text.Length: > 0 } label)
                continue;
            if (first is null || first.Underlay!.Value.Fill != underlay.Fill)
            {
                EndPapers(first, isPath);
                first = label;
                isPath = false;
                continue;
            }

            if (!isPath)
            {
                output.Append("<path d=\""u8);
                AppendPaper(first);
                isPath = true;
            }

            AppendPaper(label);
        }

        EndPapers(first, isPath);
    }

    private void AppendPaper(Label label)
    {
        if (label.Spot is not { } spot)
        {
            SvgPathData.AppendBox(output, label.UnderlayArea()!.Value);
            return;
        }

        double width = label.WidthMm;
        if (spot.Paper is null || spot.PaperWidthMm != width)
        {
            int start = output.Length;
            SvgPathData.AppendBox(output, label.UnderlayArea()!.Value);
            spot.Paper = output.Written.Span[start..].ToArray();
            spot.PaperWidthMm = width;
            return;
        }

        output.Append(spot.Paper);
    }

    /// <summary>Ends the path of papers of one colour; a paper that is alone is a rectangle.</summary>
    private void EndPapers(Label? first, bool isPath)
    {
        if (isPath)
        {
            output.Append((byte)'"');
            _attributes.FillAndOutline(first!.Underlay!.Value.Fill, null, 0);
        }
        else if (first is not null)
        {
            Rectangle(first.UnderlayBox()!);
        }
    }

    private void Style(Label label)
    {
        if (label.CapHeightMm != InheritedCapMm)
            _attributes.Number(" font-size=\""u8, FontMetrics.FontSizeFor(label.CapHeightMm));
        if (label.Anchor != Anchor.Start)
            output.Append(label.Anchor == Anchor.Middle ? " text-anchor=\"middle\""u8 : " text-anchor=\"end\""u8);
        _attributes.Paint(" fill=\""u8, label.Colour);
    }

    /// <summary>Boxes that look alike, as one path.</summary>
    private void Boxes(ReadOnlySpan<SceneElement> boxes)
    {
        output.Append("<path d=\""u8);
        foreach (SceneElement element in boxes)
        {
            var box = (Box)element;
            SvgPathData.AppendBox(output, new Area(box.X, box.Y, box.Width, box.Height));
        }

        output.Append((byte)'"');
        var first = (Box)boxes[0];
        _attributes.FillAndOutline(first.Fill, first.Stroke, first.StrokeWidthMm);
    }

    /// <summary>Polygons that look alike, as one path.</summary>
    private void Polygons(ReadOnlySpan<SceneElement> polygons)
    {
        output.Append("<path d=\""u8);
        foreach (SceneElement element in polygons)
            SvgPathData.AppendPolygon(output, ((Polygon)element).Points);
        output.Append((byte)'"');
        var first = (Polygon)polygons[0];
        _attributes.FillAndOutline(first.Fill, first.Stroke, first.StrokeWidthMm);
    }

    private void Rectangle(Box box)
    {
        output.Append("<rect"u8);
        _attributes.Number(" x=\""u8, box.X);
        _attributes.Number(" y=\""u8, box.Y);
        _attributes.Number(" width=\""u8, box.Width);
        _attributes.Number(" height=\""u8, box.Height);
        if (box.CornerRadius > 0)
            _attributes.Number(" rx=\""u8, box.CornerRadius);
        _attributes.FillAndOutline(box.Fill, box.Stroke, box.StrokeWidthMm);
    }

    private void StraightLine(Line line)
    {
        output.Append("<line"u8);
        _attributes.Number(" x1=\""u8, line.X1);
        _attributes.Number(" y1=\""u8, line.Y1);
        _attributes.Number(" x2=\""u8, line.X2);
        _attributes.Number(" y2=\""u8, line.Y2);
        _attributes.Paint(" stroke=\""u8, line.Stroke);
        _attributes.Number(" stroke-width=\""u8, line.WidthMm);
        _attributes.Dashes(line.Dash, line.WidthMm);
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
        _attributes.FillAndOutline(polygon.Fill, polygon.Stroke, polygon.StrokeWidthMm);
    }

    private void Disc(Circle circle)
    {
        output.Append("<circle"u8);
        _attributes.Number(" cx=\""u8, circle.CentreX);
        _attributes.Number(" cy=\""u8, circle.CentreY);
        _attributes.Number(" r=\""u8, circle.Radius);
        _attributes.FillAndOutline(circle.Fill, circle.Stroke, circle.StrokeWidthMm);
    }
}
