using System.Text;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Svg;

/// <summary>Writes routes as path data with absolute M, L and C only.</summary>
internal static class SvgPathData
{
    internal static void Append(StringBuilder output, Route route)
    {
        output.Append('M');
        AppendPoint(output, route.Start);
        foreach (RouteSegment segment in route.Segments)
        {
            if (segment.IsCurve)
            {
                output.Append('C');
                AppendPoint(output, segment.Control1);
                output.Append(' ');
                AppendPoint(output, segment.Control2);
                output.Append(' ');
            }
            else
            {
                output.Append('L');
            }

            AppendPoint(output, segment.End);
        }
    }

    /// <summary>Writes <c>x,y</c>.</summary>
    internal static void AppendPoint(StringBuilder output, Point point)
    {
        SvgNumber.Append(output, point.X);
        output.Append(',');
        SvgNumber.Append(output, point.Y);
    }
}
