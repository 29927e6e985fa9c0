using System.Text;
using PolarityMap.Drawing.Fonts;
using PolarityMap.Drawing.Scene;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using Xunit;

namespace PolarityMap.Export.Tests.Pdf;

/// <summary>Words of a PDF, found again as text, at their places and in their sizes.</summary>
public sealed class PdfTextTests
{
    // Capitals without overshoot: their height is that of the lettering (ISO 3098). The font's own table states a height of 660,
    // its outlines are 656 high, a hundred and fiftieth less.
    private const string FlatCapitals = "BDEFHIKLMNPRTVWXYZ";

    public static TheoryData<int> EverySheet => [.. Enumerable.Range(0, Sheets.All.Count)];

    [Theory]
    [MemberData(nameof(EverySheet))]
    public void Every_label_is_text_in_drawing_order(int sheet)
    {
        using PdfDocument document = Written.Open(Sheets.All[sheet]);
        string words = string.Concat(document.GetPage(1).Letters.Select(l => l.Value));
        Assert.Equal(string.Concat(Labels(Sheets.All[sheet]).Select(Plain)), words);
    }

    [Theory]
    [MemberData(nameof(EverySheet))]
    public void Labels_start_end_or_are_centred_where_the_scene_says(int sheet)
    {
        double worst = 0;
        foreach ((Label label, Letter[] letters, double pageHeight) in Set(Sheets.All[sheet]))
        {
            (double left, double y) = Written.Mm(letters[0].StartBaseLine, pageHeight);
            (double right, _) = Written.Mm(letters[^1].EndBaseLine, pageHeight);
            double x = label.Anchor switch
            {
                Anchor.Middle => (left + right) / 2,
                Anchor.End => right,
                _ => left,
            };
            worst = Math.Max(worst, Math.Max(Math.Abs(x - label.X), Math.Abs(y - label.BaselineY)));
            Assert.True(worst < 0.02, $"'{label.Text}' is at {x:0.000}, {y:0.000} and not at {label.X:0.000}, {label.BaselineY:0.000}");

            // The box behind it and its neighbours were placed by this width.
            Assert.Equal(label.WidthMm, right - left, 0.02);
        }
    }

    [Theory]
    [MemberData(nameof(EverySheet))]
    public void Capitals_are_as_high_as_the_scene_says(int sheet)
    {
        int measured = 0;
        foreach ((Label label, Letter[] letters, _) in Set(Sheets.All[sheet]))
        {
            foreach (Letter capital in letters.Where(l => FlatCapitals.Contains(l.Value, StringComparison.Ordinal)))
            {
                Assert.InRange(capital.BoundingBox.Height / Written.PointsPerMm, label.CapHeightMm * 0.993, label.CapHeightMm * 1.001);
                measured++;
            }
        }

        Assert.True(measured > 30, $"only {measured} capitals were measured");
    }

    [Fact]
    public void Words_can_be_found()
    {
        using PdfDocument document = Written.Open(Sheets.Faulty);
        string[] words = [.. document.GetPage(1).GetWords().Select(w => w.Text)];
        Assert.All((string[])["P01", "SW-L/1", "SW-R/1", "A-to-A", "Tx", "Rx"], w => Assert.Contains(w, words));
    }

    // A reader that copies text must get the letter it sees. Where the font has one sign for two characters, the first of them
    // comes out: micro for mu, phi for its other form, the plain hyphen, omega for ohm.
    [Fact]
    public void Every_character_of_the_font_comes_out_as_itself()
    {
        char[] all = [.. Enumerable.Range(0x21, 0xFFFF - 0x21).Select(c => (char)c).Where(c => FontMetrics.Has(c) && c is not ('\u00A0' or '\u00AD'))];
        Assert.True(all.Length > 400);
        DrawingSheet sheet = Sheets.Of(600, 600, [.. all.Select((c, i) => new Label(10 + (i % 25 * 20), 20 + (i / 25 * 20), c.ToString(), 5, Anchor.Start, Palette.Ink))]);
        using PdfDocument document = Written.Open(sheet);
        IReadOnlyList<Letter> letters = document.GetPage(1).Letters;
        Assert.Equal(all.Length, letters.Count);
        Assert.Equal(
            ["\u03BC as \u00B5", "\u03D5 as \u03C6", "\u2010 as -", "\u2011 as -", "\u2126 as \u03A9"],
            all.Zip(letters).Where(p => p.First.ToString() != p.Second.Value).Select(p => $"{p.First} as {p.Second.Value}"));
    }

    // SVG 1.1, white space handling: runs of spaces are one, those at the ends are none. What the font lacks is one box.
    [Theory]
    [InlineData("two  spaces,   three", "two spaces, three")]
    [InlineData("  around ", "around")]
    [InlineData("two\r\nlines", "two lines")]
    [InlineData("soft\u00ADhyphen and join\u200Der", "softhyphen and joiner")]
    [InlineData("turned\u202Eround", "turnedround")]
    [InlineData("\u65E5\u672C hall", "\u25A1\u25A1 hall")]
    [InlineData("a \U0001F600 b", "a \u25A1 b")]
    [InlineData("bell\u0007", "bell\u25A1")]
    public void Hostile_text_is_set_as_a_reader_of_the_SVG_sees_it(string text, string expected) => Assert.Equal(expected, Seen(text));

    [Theory]
    [InlineData('\uD800')]
    [InlineData('\uDC00')]
    public void Half_a_character_is_one_box(char half) => Assert.Equal("a \u25A1 b", Seen($"a {half} b"));

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("\u200B")]
    public void A_label_without_letters_leaves_no_text(string text) => Assert.Empty(Seen(text));

    /// <summary>The text of a page with one label.</summary>
    private static string Seen(string text)
    {
        using PdfDocument document = Written.Open(Sheets.Of(200, 50, new Label(20, 20, text, 2.5, Anchor.Middle, Palette.Ink, Underlay.Paper)));
        return string.Concat(document.GetPage(1).Letters.Select(l => l.Value));
    }

    private static IEnumerable<Label> Labels(DrawingSheet sheet) => Sheets.Elements(sheet).OfType<Label>();

    /// <summary>The words of a label; a space that does not break has the same sign as one that does.</summary>
    private static string Plain(Label label) => label.Text.Replace('\u00A0', ' ');

    /// <summary>Each label of a sheet with its letters on the page.</summary>
    private static List<(Label Label, Letter[] Letters, double PageHeight)> Set(DrawingSheet sheet)
    {
        using PdfDocument document = Written.Open(sheet);
        Page page = document.GetPage(1);
        var set = new List<(Label, Letter[], double)>();
        int from = 0;
        foreach (Label label in Labels(sheet).Where(l => l.Text.Length > 0))
        {
            var words = new StringBuilder();
            int to = from;
            while (words.Length < label.Text.Length)
                words.Append(page.Letters[to++].Value);
            Assert.Equal(Plain(label), words.ToString());
            set.Add((label, [.. page.Letters.Skip(from).Take(to - from)], page.Height));
            from = to;
        }

        return set;
    }
}
