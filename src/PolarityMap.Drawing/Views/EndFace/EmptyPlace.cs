using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.EndFace;

/// <summary>The hatching of a place that no fibre comes to.</summary>
internal static class EmptyPlace
{
    /// <summary>Slanted lines cut at the circle; patterns would print as blurred pictures.</summary>
    public static IEnumerable<SceneElement> Hatch(double x, double y, double radius = FaceMeasures.Place)
    {
        foreach (double away in (double[])[-1.1, 0, 1.1])
        {
            // A chord of the circle at 45 degrees, as far from the middle as the line lies away.
            double half = Math.Sqrt((radius * radius) - (away * away)) * Math.Sqrt(0.5);
            double cx = x + (away * Math.Sqrt(0.5)), cy = y + (away * Math.Sqrt(0.5));
            yield return new Line(cx - half, cy + half, cx + half, cy - half, Palette.Ink, LineWidths.Leader);
        }
    }
}
