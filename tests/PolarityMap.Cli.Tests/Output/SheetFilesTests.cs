using System.Buffers.Binary;
using System.Text;
using PolarityMap.Cli.Output;
using PolarityMap.Drawing.Scene;
using PolarityMap.Export;
using Xunit;

namespace PolarityMap.Cli.Tests.Output;

public sealed class SheetFilesTests
{
    private static readonly SheetFileOptions Usual = new(new PdfDetails("Two halls"));

    private static readonly (string Name, DrawingSheet Sheet)[] One = [("strands", Sheet(100, 50))];
    private static readonly (string Name, DrawingSheet Sheet)[] Three =
        [("hall", Sheet(100, 50)), ("hall/../annex", Sheet(120, 60)), ("Hall", Sheet(90, 40))];

    [Theory]
    [InlineData("out.svg", "<svg ")]
    [InlineData("out.SVG", "<svg ")]
    [InlineData("out.pdf", "%PDF-")]
    [InlineData("out.png", "\u0089PNG")]
    [InlineData("deep/er/out.pdf", "%PDF-")]
    public void The_ending_says_what_is_written(string target, string begins)
    {
        using var bench = new Workbench();
        Assert.Equal([target], Write(bench, target, One, Usual));
        Assert.Equal([target], bench.Files());
        Assert.StartsWith(begins, Encoding.Latin1.GetString(File.ReadAllBytes(bench.Path(target))), StringComparison.Ordinal);
    }

    [Fact]
    public void All_sheets_go_into_one_PDF()
    {
        using var bench = new Workbench();
        Write(bench, "out.pdf", Three, Usual);
        Assert.Equal(["out.pdf"], bench.Files());
        Assert.Equal(3, Encoding.Latin1.GetString(File.ReadAllBytes(bench.Path("out.pdf"))).Split("/Type /Page\n").Length - 1);
    }

    [Theory]
    [InlineData("sheets/", null, "svg")]
    [InlineData("sheets/", "svg", "svg")]
    [InlineData("sheets/", "png", "png")]
    [InlineData("sheets/", "pdf", "pdf")]
    [InlineData("there", null, "svg")]
    public void A_folder_gets_a_file_for_each_sheet_and_no_name_leads_out_of_it(string target, string? format, string ending)
    {
        using var bench = new Workbench();
        Directory.CreateDirectory(bench.Path("there"));
        IReadOnlyList<string> written = Write(bench, target, Three, Usual with { As = format });
        string folder = target.TrimEnd('/');
        Assert.Equal([$"{folder}/hall.{ending}", $"{folder}/hall----annex.{ending}", $"{folder}/Hall-2.{ending}"], written);
        Assert.Equal(written.Order(StringComparer.Ordinal), bench.Files());
    }

    // A link leads to a sheet of the same file, so a file of one sheet has none.
    [Fact]
    public void Sheets_with_links_can_be_written_apart()
    {
        using var bench = new Workbench();
        (string, DrawingSheet)[] linked = [("one", Sheet(100, 50, new SheetLink(new Area(1, 1, 5, 5), 2))), ("two", Sheet(100, 50))];
        Assert.Equal(2, Write(bench, "sheets/", linked, Usual with { As = "pdf" }).Count);
        Assert.Equal(["all.pdf"], Write(bench, "all.pdf", linked, Usual));
        Assert.Contains("/Subtype /Link", Encoding.Latin1.GetString(File.ReadAllBytes(bench.Path("all.pdf"))), StringComparison.Ordinal);
    }

    // PNG specification: width and height stand in the header, from the 17th byte on.
    [Theory]
    [InlineData(null, 1181, 591)]
    [InlineData(72, 283, 142)]
    public void The_resolution_is_300_unless_it_is_said(int? dpi, int width, int height)
    {
        using var bench = new Workbench();
        Write(bench, "out.png", One, Usual with { DotsPerInch = dpi });
        byte[] png = File.ReadAllBytes(bench.Path("out.png"));
        Assert.Equal((width, height), (BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)), BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20))));
    }

    [Fact]
    public void The_font_is_left_out_of_an_SVG_when_the_call_says_so()
    {
        using var bench = new Workbench();
        Write(bench, "with.svg", One, Usual);
        Write(bench, "bare.svg", One, Usual with { EmbedFont = false });
        Assert.Contains("data:font", bench.Read("with.svg"), StringComparison.Ordinal);
        Assert.DoesNotContain("data:font", bench.Read("bare.svg"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("out.jpg", "'out.jpg' ends in .jpg; expected .svg, .pdf or .png; did you mean .png?")]
    [InlineData("out.pgn", "'out.pgn' ends in .pgn; expected .svg, .pdf or .png; did you mean .png?")]
    [InlineData("out.pdff", "did you mean .pdf?")]
    [InlineData("out.svgz", "did you mean .svg?")]
    [InlineData("out.docx", "'out.docx' ends in .docx; expected .svg, .pdf or .png")]
    [InlineData("out", "'out' has no ending; expected .svg, .pdf or .png, or a folder, such as out/")]
    [InlineData("out.", "'out.' has no ending; expected .svg, .pdf or .png")]
    [InlineData("out.svg", "'out.svg' takes one sheet and there are 3; name a folder, such as sheets/, or a .pdf for all of them")]
    [InlineData("out.png", "'out.png' takes one sheet and there are 3")]
    public void A_target_that_cannot_take_the_sheets_is_refused_in_words(string target, string words) =>
        Refused(target, Three, Usual, words);

    public static TheoryData<string, string?, int?, bool, string> Contradictions => new()
    {
        { "out.pdf", "png", null, true, "'out.pdf' ends in .pdf, but --as says png" },
        { "out.pdf", null, 300, true, "--dpi 300 is for .png" },
        { "sheets/", null, 300, true, "--dpi 300 is for .png" },
        { "out.png", null, 71, true, "--dpi 71 is no resolution that is drawn; expected 72 to 600" },
        { "out.png", null, 601, true, "expected 72 to 600" },
        { "out.png", null, null, false, "--without-font is for .svg" },
        { "out.pdf", null, null, false, "--without-font is for .svg" },
    };

    [Theory]
    [MemberData(nameof(Contradictions))]
    public void Options_that_do_not_go_together_are_refused_in_words(string target, string? format, int? dpi, bool embed, string words) =>
        Refused(target, One, Usual with { As = format, DotsPerInch = dpi, EmbedFont = embed }, words);

    // 20 m by 297 mm at 300 dots per inch: 236,220 by 3508 pixels.
    [Fact]
    public void A_sheet_too_large_for_a_picture_leaves_all_that_was_there_untouched()
    {
        using var bench = new Workbench().With("sheets/one.png", "yesterday's one").With("sheets/two.png", "yesterday's two");
        (string, DrawingSheet)[] sheets = [("one", Sheet(10, 10)), ("two", Sheet(20_000, 297))];
        CallException refused = Assert.Throws<CallException>(() => Write(bench, "sheets/", sheets, Usual with { As = "png" }));
        Assert.Contains("sheet 'two' cannot be drawn: a picture of 236220 by 3508 pixels is 829 megapixels; at most 400", refused.Message, StringComparison.Ordinal);
        Assert.Equal("yesterday's one", bench.Read("sheets/one.png"));
        Assert.Equal(["sheets/one.png", "sheets/two.png"], bench.Files());
    }

    [Fact]
    public void A_file_that_cannot_be_written_leaves_all_that_was_there_untouched()
    {
        using var bench = new Workbench().With("sheets/one.svg", "yesterday's one").With("sheets/two.svg/taken", "a folder stands here");
        CallException refused = Assert.Throws<CallException>(() => Write(bench, "sheets/", [("one", Sheet(10, 10)), ("two", Sheet(10, 10))], Usual));
        Assert.Contains("is a folder; name a file", refused.Message, StringComparison.Ordinal);
        Assert.Equal("yesterday's one", bench.Read("sheets/one.svg"));
        Assert.Equal(["sheets/one.svg", "sheets/two.svg/taken"], bench.Files());
    }

    private static void Refused(string target, (string Name, DrawingSheet Sheet)[] sheets, SheetFileOptions options, string words)
    {
        using var bench = new Workbench().With(target.Contains('.', StringComparison.Ordinal) ? target : "other", "yesterday");
        IReadOnlyList<string> before = bench.Files();
        CallException refused = Assert.Throws<CallException>(() => Write(bench, target, sheets, options));
        Assert.Contains(words, refused.Message, StringComparison.Ordinal);
        Assert.Equal(before, bench.Files());
        Assert.Equal("yesterday", bench.Read(before[0]));
    }

    private static IReadOnlyList<string> Write(Workbench bench, string target, (string Name, DrawingSheet Sheet)[] sheets, SheetFileOptions options) =>
        SheetFiles.Write(new CommandContext(TextWriter.Null, TextWriter.Null) { Folder = bench.Folder }, target, sheets, options);

    private static DrawingSheet Sheet(double widthMm, double heightMm, params SheetLink[] links) => new()
    {
        WidthMm = widthMm,
        HeightMm = heightMm,
        Title = "Sheet",
        Layers = [new SceneGroup("layer", [new Label(2, 5, "Hall", 2.5, Anchor.Start, Palette.Ink)])],
        Links = links,
    };
}
