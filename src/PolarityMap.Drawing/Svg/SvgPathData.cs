using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Svg;

/// <summary>Writes routes as path data with absolute M, L, H and C only.</summary>
internal static class SvgPathData
{
    internal static void Append(Utf8Text output, Route route)
    {
        output.Append((byte)'M');
        AppendPoint(output, route.Start);
        long y = SvgNumber.Thousandths(route.Start.Y);
        foreach (RouteSegment segment in route.SegmentsSpan)
        {
            long endY = SvgNumber.Thousandths(segment.End.Y);
            if (segment.IsCurve)
            {
                output.Append((byte)'C');
                AppendPoint(output, segment.Control1);
                output.Append((byte)' ');
                AppendPoint(output, segment.Control2);
                output.Append((byte)' ');
                AppendPoint(output, segment.End);
            }
            else if (endY == y)
            {
                output.Append((byte)'H');
                SvgNumber.Append(output, segment.End.X);
            }
            else
            {
                output.Append((byte)'L');
                AppendPoint(output, segment.End);
            }

            y = endY;
        }
    }

    /// <summary>A rectangle as a path of its own, so that many alike are one element: M, then h, v, h and z.</summary>
    internal static void AppendBox(Utf8Text output, Area box)
    {
        Span<byte> room = output.Reserve(5 * (1 + SvgNumber.MostBytes) + 1);
        int length = 0;
        Put(room, ref length, (byte)'M', box.X);
        Put(room, ref length, (byte)',', box.Y);
        Put(room, ref length, (byte)'h', box.Width);
        Put(room, ref length, (byte)'v', box.Height);
        Put(room, ref length, (byte)'h', -box.Width);
        room[length++] = (byte)'z';
        output.Advance(length);
    }

    /// <summary>A polygon as a path of its own: M, then L to each further corner, and z.</summary>
    internal static void AppendPolygon(Utf8Text output, IReadOnlyList<Point> corners)
    {
        for (int i = 0; i < corners.Count; i++)
        {
            output.Append((byte)(i == 0 ? 'M' : 'L'));
            AppendPoint(output, corners[i]);
        }

        output.Append((byte)'z');
    }

    /// <summary>Writes <c>x,y</c>.</summary>
    internal static void AppendPoint(Utf8Text output, Point point)
    {
        SvgNumber.Append(output, point.X);
        output.Append((byte)',');
        SvgNumber.Append(output, point.Y);
    }

    private static void Put(Span<byte> room, ref int length, byte letter, double value)
    {
        room[length++] = letter;
        length += SvgNumber.Write(value, room[length..]);
    }
}
