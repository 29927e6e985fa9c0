using System.Globalization;
using PolarityMap.Drawing.Scene;
using SkiaSharp;

namespace PolarityMap.Export;

/// <summary>Writes sheets as one PDF: text stays text in the embedded font, lines stay lines, nothing becomes an image.</summary>
public static class PdfFile
{
    private const float PointsPerMm = 72 / 25.4f;

    /// <summary>
    /// Writes a page for each sheet, in the size of the sheet. Page N is the named destination <c>sheet-N</c>, which links of
    /// other sheets lead to. Equal input gives equal bytes. Nothing is written when it fails.
    /// </summary>
    /// <param name="sheets">The sheets in the order in which they are bound.</param>
    /// <param name="details">What the file says about itself.</param>
    /// <param name="output">Takes the file; stays open.</param>
    /// <exception cref="ArgumentException">
    /// There is no sheet, a link leads to a sheet that is not in the set, or the date is not written <c>yyyy-MM-dd</c>.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is not a finite number.</exception>
    public static void Write(IReadOnlyList<DrawingSheet> sheets, PdfDetails details, Stream output)
    {
        if (sheets.Count == 0)
            throw new ArgumentException("A PDF has at least one sheet.", nameof(sheets));
        for (int i = 0; i < sheets.Count; i++)
            CheckLinks(sheets[i], i + 1, sheets.Count);
        using var stream = new SKDynamicMemoryWStream();
        using (var document = SKDocument.CreatePdf(stream, Metadata(details)))
        using (var font = new SheetFont())
        {
            for (int i = 0; i < sheets.Count; i++)
                Page(document, sheets[i], i + 1, font);
            document.Close();
        }

        using SKData data = stream.DetachAsData();
        output.Write(data.AsSpan());
    }

    private static void Page(SKDocument document, DrawingSheet sheet, int number, SheetFont font)
    {
        SheetPainter.CheckSize(sheet);

        // The document owns the canvas.
        SKCanvas canvas = document.BeginPage((float)(sheet.WidthMm * 72 / 25.4), (float)(sheet.HeightMm * 72 / 25.4));
        canvas.Scale(PointsPerMm);
        canvas.DrawNamedDestinationAnnotation(SKPoint.Empty, Destination(number));
        using (var painter = new SheetPainter(canvas, font))
            painter.Draw(sheet);
        foreach (SheetLink link in sheet.Links)
        {
            Area area = link.Area;
            canvas.DrawLinkDestinationAnnotation(
                new SKRect((float)area.X, (float)area.Y, (float)area.Right, (float)area.Bottom), Destination(link.Sheet));
        }

        document.EndPage();
    }

    private static string Destination(int sheet) => $"sheet-{sheet}";

    private static void CheckLinks(DrawingSheet sheet, int number, int count)
    {
        foreach (SheetLink link in sheet.Links)
        {
            if (link.Sheet < 1 || link.Sheet > count)
                throw new ArgumentException($"Sheet {number} has a link to sheet {link.Sheet}, but the set has sheets 1 to {count}.", nameof(sheet));
        }
    }

    private static SKDocumentPdfMetadata Metadata(PdfDetails details)
    {
        DateTime? date = null;
        if (details.Date is { } written)
        {
            date = DateTime.TryParseExact(
                written, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal, out DateTime read)
                ? read
                : throw new ArgumentException($"A date is written yyyy-MM-dd, not '{written}'.", nameof(details));
        }

        return new SKDocumentPdfMetadata
        {
            Title = CleanText.Of(details.Title),
            Author = CleanText.Of(details.Author ?? ""),
            Subject = CleanText.Of(details.Subject ?? ""),
            Creator = "PolarityMap",
            Creation = date,
            Modified = date,

            // Nothing becomes an image, but the library rounds a page to whole dots of this: a hundredth of a point.
            RasterDpi = 7200,

            // Above 100 the library keeps what it encodes without loss.
            EncodingQuality = 101,
        };
    }
}
