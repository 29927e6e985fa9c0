using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Svg;

/// <summary>Prints the attributes that elements have in common.</summary>
internal sealed class SvgAttributes(Utf8Text output)
{
    /// <summary>Fill and outline of an element, and its end.</summary>
    public void FillAndOutline(Colour? fill, Colour? stroke, double width)
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

    public void Dashes(DashKind kind, double unit)
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

    public void Paint(ReadOnlySpan<byte> attribute, Colour colour)
    {
        Span<char> hex = stackalloc char[7];
        colour.WriteHex(hex);
        output.Append(attribute).Append(hex).Append((byte)'"');
    }

    public void Number(ReadOnlySpan<byte> attribute, double value)
    {
        output.Append(attribute);
        SvgNumber.Append(output, value);
        output.Append((byte)'"');
    }
}
