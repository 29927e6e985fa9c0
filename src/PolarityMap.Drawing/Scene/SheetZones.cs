namespace PolarityMap.Drawing.Scene;

/// <summary>
/// The grid of a sheet (ISO 5457): capitals down, numerals across, fields of 50 mm counted outward from the
/// middle of the trimmed sheet, the outermost taking what is left. I and O are not used.
/// </summary>
internal static class SheetZones
{
    /// <summary>Length of a field.</summary>
    internal const double FieldMm = 50;

    /// <summary>Depth of the strip outside the frame that carries the marks.</summary>
    internal const double StripMm = 5;

    // The frame line takes its half width from the strip, so the middle of what is left lies farther out.
    private const double ClearOfFrameMm = LineWidths.Frame / 4;

    private const string Letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    /// <summary>Number of fields along a side; always even.</summary>
    internal static int Count(double sideMm) => 2 * Math.Max(1, (int)Math.Round(sideMm / 2 / FieldMm, MidpointRounding.AwayFromZero));

    /// <summary>The zone of a place, letter then numeral; a place off the sheet counts to the nearest zone.</summary>
    internal static string At(SheetFormat format, double x, double y) =>
        Letter(Index(format.HeightMm, y)) + Numeral(Index(format.WidthMm, x));

    /// <summary>Ticks and characters along the sides of the frame.</summary>
    internal static void Append(SheetFormat format, Area frame, List<SceneElement> elements)
    {
        AppendAcross(format, frame, frame.Y - StripMm, elements);
        AppendDown(format, frame, frame.Right, elements);
        if (format.HasZonesOnAllSides)
        {
            AppendAcross(format, frame, frame.Bottom, elements);
            AppendDown(format, frame, frame.X - StripMm, elements);
        }
    }

    private static void AppendAcross(SheetFormat format, Area frame, double stripY, List<SceneElement> elements)
    {
        int count = Count(format.WidthMm);
        double outward = stripY < frame.Y ? -ClearOfFrameMm : ClearOfFrameMm;
        for (int i = 0; i < count; i++)
        {
            double from = Math.Max(frame.X, Boundary(format.WidthMm, i));
            double to = Math.Min(frame.Right, Boundary(format.WidthMm, i + 1));
            if (i > 0)
                elements.Add(new Line(from, stripY, from, stripY + StripMm, Palette.Ink, LineWidths.Inner));
            elements.Add(Character((from + to) / 2, stripY + (StripMm / 2) + outward, Numeral(i)));
        }
    }

    private static void AppendDown(SheetFormat format, Area frame, double stripX, List<SceneElement> elements)
    {
        int count = Count(format.HeightMm);
        double outward = stripX < frame.X ? -ClearOfFrameMm : ClearOfFrameMm;
        for (int i = 0; i < count; i++)
        {
            double from = Math.Max(frame.Y, Boundary(format.HeightMm, i));
            double to = Math.Min(frame.Bottom, Boundary(format.HeightMm, i + 1));
            if (i > 0)
                elements.Add(new Line(stripX, from, stripX + StripMm, from, Palette.Ink, LineWidths.Inner));
            elements.Add(Character(stripX + (StripMm / 2) + outward, (from + to) / 2, Letter(i)));
        }
    }

    private static Label Character(double x, double middleY, string text) =>
        Label.CentredOn(x, middleY, text, CapHeights.Part, Anchor.Middle, Palette.Ink);

    private static int Index(double sideMm, double place)
    {
        int count = Count(sideMm);
        int fields = (int)Math.Floor((Math.Clamp(place, 0, sideMm) - (sideMm / 2)) / FieldMm);
        return Math.Clamp(fields + (count / 2), 0, count - 1);
    }

    private static double Boundary(double sideMm, int index)
    {
        int count = Count(sideMm);
        if (index == 0)
            return 0;
        return index == count ? sideMm : (sideMm / 2) + ((index - (count / 2)) * FieldMm);
    }

    private static string Numeral(int index) => (index + 1).ToString();

    private static string Letter(int index) => index < Letters.Length
        ? Letters.Substring(index, 1)
        : Letters.Substring((index / Letters.Length) - 1, 1) + Letters[index % Letters.Length];
}
