using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Svg;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Annotations;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Tokens;
using Xunit;

namespace PolarityMap.Export.Tests.Pdf;

public sealed class PdfLinkTests
{
    private static readonly Area Mark = new(180, 40, 12, 5);
    private static readonly Area Other = new(10, 20, 8, 6);

    [Fact]
    public void A_link_leads_from_its_rectangle_to_the_top_of_the_other_sheet()
    {
        using PdfDocument document = Written.Open(
            Sheets.Linked(Sheets.Of(210, 297), new SheetLink(Mark, 2), new SheetLink(Other, 3)),
            Sheets.Linked(Sheets.Of(420, 297), new SheetLink(Other, 1)),
            Sheets.Of(297, 210));
        Assert.Equal([(Mark, 2), (Other, 3)], Links(document, 1));
        Assert.Equal([(Other, 1)], Links(document, 2));
        Assert.Empty(Links(document, 3));
    }

    // Other documents can point at a page by this name.
    [Fact]
    public void Every_sheet_is_a_named_destination()
    {
        using PdfDocument document = Written.Open(Sheets.All);
        Assert.Equal(["sheet-1", "sheet-2", "sheet-3"], Destinations(document).Data.Keys.Order(StringComparer.Ordinal));
        Assert.Equal([1, 2, 3], Enumerable.Range(1, 3).Select(n => PageOf(document, $"sheet-{n}")));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(-1)]
    public void A_link_out_of_the_set_is_refused(int number)
    {
        DrawingSheet linked = Sheets.Linked(Sheets.Of(210, 297), new SheetLink(Mark, number));
        using var output = new MemoryStream();
        ArgumentException thrown = Assert.Throws<ArgumentException>(() => PdfFile.Write([Sheets.Of(210, 297), linked], new PdfDetails("x"), output));
        Assert.Contains($"Sheet 2 has a link to sheet {number}, but the set has sheets 1 to 2.", thrown.Message, StringComparison.Ordinal);
        Assert.Equal(0, output.Length);
    }

    [Fact]
    public void Links_leave_no_trace_in_SVG_and_PNG()
    {
        DrawingSheet plain = Sheets.Of(50, 40, new Line(5, 5, 45, 35, Palette.Ink, 1));
        DrawingSheet linked = Sheets.Linked(plain, new SheetLink(Mark, 7));
        Assert.Equal(SvgWriter.Write(plain, new SvgOptions()), SvgWriter.Write(linked, new SvgOptions()));
        using var one = new MemoryStream();
        using var other = new MemoryStream();
        PngFile.Write(plain, 100, one);
        PngFile.Write(linked, 100, other);
        Assert.Equal(one.ToArray(), other.ToArray());
    }

    /// <summary>The links of a page: where they are clicked, to a tenth of a mm, and the number of the page that they lead to.</summary>
    private static (Area Area, int Page)[] Links(PdfDocument document, int number)
    {
        Page page = document.GetPage(number);
        return
        [
            .. page.GetAnnotations().Where(a => a.Type == AnnotationType.Link).Select(a =>
            {
                PdfRectangle r = a.Rectangle;
                (double left, double top) = Written.Mm(r.TopLeft, page.Height);
                (double right, double bottom) = Written.Mm(r.BottomRight, page.Height);
                return (new Area(Math.Round(left, 1), Math.Round(top, 1), Math.Round(right - left, 1), Math.Round(bottom - top, 1)), PageOf(document, Written.Name(a.AnnotationDictionary, "Dest")!));
            }),
        ];
    }

    private static DictionaryToken Destinations(PdfDocument document)
    {
        IndirectReferenceToken reference = Written.Get<IndirectReferenceToken>(document.Structure.Catalog.CatalogDictionary, "Dests")!;
        return (DictionaryToken)document.Structure.GetObject(reference.Data).Data;
    }

    /// <summary>The number of the page that a name leads to; it must lead to the page's top left corner.</summary>
    private static int PageOf(PdfDocument document, string name)
    {
        ArrayToken place = Written.Get<ArrayToken>(Destinations(document), name)!;
        var target = ((IndirectReferenceToken)place.Data[0]).Data;
        Page page = document.GetPages().Single(p => ReferenceEquals(p.Dictionary, document.Structure.GetObject(target).Data));
        Assert.Equal("XYZ", ((NameToken)place.Data[1]).Data);
        Assert.Equal(0, ((NumericToken)place.Data[2]).Double, 0.1);
        Assert.Equal(page.Height, ((NumericToken)place.Data[3]).Double, 0.5);
        return page.Number;
    }
}
