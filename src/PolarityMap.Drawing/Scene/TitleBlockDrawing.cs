using PolarityMap.Drawing.Fonts;

namespace PolarityMap.Drawing.Scene;

/// <summary>
/// Draws a title block of three low rows, 180 by 25 mm, so that it fits A4 portrait between the borders and leaves
/// the height of a landscape sheet to the drawing. Its last cell holds the scale bar, as the space beside the block
/// is too short for one on desk sheets.
/// </summary>
internal static class TitleBlockDrawing
{
    internal const double WidthMm = 180;

    internal const double HeightMm = 25;

    private const double Padding = 1.5;
    private const double CaptionFoot = 2.5;
    private const double ValueFoot = 1.4;
    private const double FirstLineFoot = 5.3;
    private const double FirstRow = 9;
    private const double Row = 8;

    /// <summary>Draws the block with its lower right corner in the corner of the frame.</summary>
    internal static void Append(TitleBlock block, Area frame, List<SceneElement> elements)
    {
        double left = frame.Right - WidthMm;
        double top = frame.Bottom - HeightMm;

        double x = left;
        Cell(elements, ref x, top, 76, FirstRow, "Title", block.Title, CapHeights.Part);
        TwoLineCell(elements, ref x, top, 58, "Supplementary title", block.SupplementaryTitle, CapHeights.Strand);
        Cell(elements, ref x, top, 46, FirstRow, "Site", block.Site, CapHeights.Strand);

        x = left;
        double second = top + FirstRow;
        Cell(elements, ref x, second, 42, Row, "Document type", block.DocumentType, CapHeights.Strand);
        Cell(elements, ref x, second, 39, Row, "Identification number", block.IdentificationNumber, CapHeights.Strand);
        Cell(elements, ref x, second, 14, Row, "Revision", block.Revision, CapHeights.Strand);
        Cell(elements, ref x, second, 24, Row, "Date of issue", block.DateOfIssue, CapHeights.Strand);
        Cell(elements, ref x, second, 39, Row, "Creator", block.Creator, CapHeights.Strand);
        Cell(elements, ref x, second, 22, Row, "Sheet", $"{block.Sheet} of {block.Sheets}", CapHeights.Strand);

        x = left;
        double third = second + Row;
        Cell(elements, ref x, third, 37, Row, "Legal owner", block.LegalOwner, CapHeights.Strand);
        Cell(elements, ref x, third, 37, Row, "Approval", block.Approval, CapHeights.Strand);
        ScaleBar.Append(new Area(x, third, left + WidthMm - x, Row), elements);

        Rule(elements, left, second, left + WidthMm, second);
        Rule(elements, left, third, left + WidthMm, third);
        elements.Add(new Line(left, top, left + WidthMm, top, Palette.Ink, LineWidths.Frame));
        if (left > frame.X)
            elements.Add(new Line(left, top, left, frame.Bottom, Palette.Ink, LineWidths.Frame));
    }

    private static void Cell(
        List<SceneElement> elements,
        ref double x,
        double y,
        double width,
        double height,
        string caption,
        string? value,
        double capHeightMm)
    {
        elements.Add(new Label(x + Padding, y + CaptionFoot, caption, CapHeights.Least, Anchor.Start, Palette.MutedInk));
        if (!string.IsNullOrWhiteSpace(value))
        {
            (string text, double cap) = TextFit.Fit(value, width - (2 * Padding), capHeightMm);
            elements.Add(new Label(x + Padding, y + height - ValueFoot, text, cap, Anchor.Start, Palette.Ink));
        }

        x += width;
        Rule(elements, x, y, x, y + height);
    }

    /// <summary>A cell of the first row whose words go on in a second line before any of them is cut off.</summary>
    private static void TwoLineCell(List<SceneElement> elements, ref double x, double y, double width, string caption, string? value, double capHeightMm)
    {
        double room = width - (2 * Padding);
        int end = value is null || TextFit.Fit(value, room, capHeightMm).Text == value ? -1 : BreakOf(value, room);
        if (end < 0)
        {
            Cell(elements, ref x, y, width, FirstRow, caption, value, capHeightMm);
            return;
        }

        double left = x + Padding;
        Cell(elements, ref x, y, width, FirstRow, caption, null, capHeightMm);
        elements.Add(new Label(left, y + FirstLineFoot, TextFit.Fit(value![..end], room, CapHeights.Least).Text, CapHeights.Least, Anchor.Start, Palette.Ink));
        elements.Add(new Label(left, y + FirstLineFoot + (1.5 * CapHeights.Least), TextFit.Fit(value[(end + 1)..], room, CapHeights.Least).Text, CapHeights.Least, Anchor.Start, Palette.Ink));
    }

    /// <summary>
    /// The last space before which the words fit in the smallest letters, or one after a comma if what follows it fits too; -1
    /// without one.
    /// </summary>
    private static int BreakOf(string words, double room)
    {
        int last = -1, lastAfterComma = -1;
        for (int space = words.IndexOf(' '); space > 0 && FontMetrics.WidthMm(words.AsSpan(0, space), CapHeights.Least) <= room; space = words.IndexOf(' ', space + 1))
        {
            last = space;
            if (words[space - 1] == ',')
                lastAfterComma = space;
        }

        return lastAfterComma > 0 && FontMetrics.WidthMm(words.AsSpan(lastAfterComma + 1), CapHeights.Least) <= room ? lastAfterComma : last;
    }

    private static void Rule(List<SceneElement> elements, double x1, double y1, double x2, double y2) =>
        elements.Add(new Line(x1, y1, x2, y2, Palette.Ink, LineWidths.Leader));
}
