using System.Globalization;
using System.IO.Compression;
using PolarityMap.Drawing.Fonts;
using PolarityMap.Drawing.Scene;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Tokens;
using Xunit;

namespace PolarityMap.Export.Tests.Pdf;

public sealed class PdfFileTests
{
    private static readonly PdfDetails Details = new("Two halls")
    {
        Author = "Drawing office",
        Subject = "Ring λ → 2",
        Date = "2026-03-01",
    };

    // ISO 216 and ASME Y14.1 sizes; a point is 1/72 inch, an inch 25.4 mm.
    [Fact]
    public void Every_sheet_is_a_page_of_its_own_size()
    {
        using PdfDocument document = Written.Open(
            Sheets.Of(210, 297), Sheets.Of(420, 297), Sheets.Of(279.4, 215.9), Sheets.Of(1298, 935));
        Assert.Equal(4, document.NumberOfPages);
        Assert.Equal(
            [(595.28, 841.89), (1190.55, 841.89), (792, 612), (3679.37, 2650.39)],
            document.GetPages().Select(p => (Math.Round(p.Width, 2), Math.Round(p.Height, 2))));
    }

    [Fact]
    public void The_file_says_what_it_is_and_who_made_it()
    {
        using PdfDocument document = PdfDocument.Open(Written.Bytes(Details, Sheets.Twelve));
        DocumentInformation said = document.Information;
        Assert.Equal(("Two halls", "Drawing office", "Ring λ → 2", "PolarityMap"), (said.Title, said.Author, said.Subject, said.Creator));
        var date = new DateTimeOffset(2026, 3, 1, 0, 0, 0, TimeSpan.Zero);
        Assert.Equal((date, date), (said.GetCreatedDateTimeOffset(), said.GetModifiedDateTimeOffset()));
    }

    [Fact]
    public void Without_a_date_there_is_none()
    {
        using PdfDocument document = Written.Open(Sheets.Twelve);
        Assert.Null(document.Information.CreationDate);
        Assert.Null(document.Information.ModifiedDate);
        Assert.DoesNotContain(DateTime.UtcNow.Year.ToString(CultureInfo.InvariantCulture), document.Information.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Equal_sheets_give_equal_bytes()
    {
        byte[] first = Written.Bytes(Details, Sheets.All);
        Thread.Sleep(1100); // A clock of whole seconds would have moved on.
        Assert.Equal(first, Written.Bytes(Details, Sheets.All));
        Assert.Equal(Written.Bytes(new PdfDetails("x"), Sheets.Twelve), Written.Bytes(new PdfDetails("x"), Sheets.Twelve));
    }

    [Fact]
    public void The_one_font_is_embedded_as_TrueType_with_a_table_of_its_characters()
    {
        using PdfDocument document = Written.Open(Sheets.All);
        DictionaryToken[] fonts = [.. Written.Dictionaries(document).Where(d => Written.Name(d, "Type") == "Font")];
        Assert.Equal(["CIDFontType2", "Type0"], fonts.Select(f => Written.Name(f, "Subtype")).Order(StringComparer.Ordinal));
        Assert.All(fonts, f => Assert.EndsWith("PolarityMapSans-Regular", Written.Name(f, "BaseFont"), StringComparison.Ordinal));
        Assert.True(fonts.Single(f => Written.Name(f, "Subtype") == "Type0").ContainsKey(NameToken.ToUnicode));

        DictionaryToken descriptor = Assert.Single(Written.Dictionaries(document), d => Written.Name(d, "Type") == "FontDescriptor");
        IndirectReferenceToken file = Written.Get<IndirectReferenceToken>(descriptor, "FontFile2")!;
        var stream = (StreamToken)document.Structure.GetObject(file.Data).Data;
        Assert.Equal("FlateDecode", Written.Name(stream.StreamDictionary, "Filter"));
        using var font = new MemoryStream();
        using (var packed = new ZLibStream(new MemoryStream(stream.Data.ToArray()), CompressionMode.Decompress))
            packed.CopyTo(font);

        // OpenType specification: 1.0 for outlines of TrueType.
        Assert.Equal([0, 1, 0, 0], font.ToArray()[..4]);
        Assert.InRange(font.Length, 1000, EmbeddedFont.Bytes().Length);
    }

    [Fact]
    public void Nothing_is_an_image_a_pattern_or_see_through()
    {
        using PdfDocument document = Written.Open(Sheets.All);
        Assert.All(document.GetPages(), p => Assert.Empty(p.GetImages()));
        Assert.DoesNotContain(Written.Dictionaries(document), d => Written.Name(d, "Subtype") == "Image" || d.ContainsKey(NameToken.Create("PatternType")));
        foreach (DictionaryToken state in Written.Dictionaries(document))
        {
            foreach (string alpha in (string[])["ca", "CA"])
            {
                if (Written.Get<NumericToken>(state, alpha) is { } share)
                    Assert.Equal(1, share.Double);
            }
        }
    }

    // The first bytes are the format's, the last ones its end: the file is whole.
    [Fact]
    public void The_output_gets_the_whole_file_and_stays_open()
    {
        using var output = new MemoryStream();
        PdfFile.Write([Sheets.Twelve], Details, output);
        PdfFile.Write([Sheets.Twelve], Details, output);
        byte[] one = Written.Bytes(Details, Sheets.Twelve);
        Assert.Equal([.. one, .. one], output.ToArray());
        Assert.Equal("%PDF-"u8.ToArray(), one[..5]);
        Assert.Equal("%%EOF"u8.ToArray(), one.AsSpan().TrimEnd((byte)'\n')[^5..].ToArray());
    }

    // A drawing of a hundred strands has to be mailed; the font is two thirds of it.
    [Fact]
    public void A_sheet_of_twelve_strands_takes_less_than_60_kB() =>
        Assert.InRange(Written.Bytes(Details, Sheets.Twelve).Length, 10_000, 60_000);

    public static TheoryData<DrawingSheet[], string?, Type, string> Refused => new()
    {
        { [], null, typeof(ArgumentException), "at least one sheet" },
        { [Sheets.Of(100, 100)], "1 March 2026", typeof(ArgumentException), "yyyy-MM-dd, not '1 March 2026'" },
        { [Sheets.Of(100, 100)], "2026-02-30", typeof(ArgumentException), "yyyy-MM-dd" },
        { [Sheets.Of(double.NaN, 100)], null, typeof(ArgumentOutOfRangeException), "positive number" },
        { [Sheets.Of(100, 0)], null, typeof(ArgumentOutOfRangeException), "positive number" },
        { [Sheets.Of(100, 100, new Line(0, 0, double.PositiveInfinity, 0, Palette.Ink, 1))], null, typeof(ArgumentOutOfRangeException), "finite number" },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void What_cannot_be_written_is_refused_and_nothing_is_written(DrawingSheet[] sheets, string? date, Type error, string words)
    {
        using var output = new MemoryStream();
        Exception thrown = Assert.Throws(error, () => PdfFile.Write(sheets, new PdfDetails("x") { Date = date }, output));
        Assert.Contains(words, thrown.Message, StringComparison.Ordinal);
        Assert.Equal(0, output.Length);
    }
}
