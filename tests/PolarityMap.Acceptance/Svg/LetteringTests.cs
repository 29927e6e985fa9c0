using PolarityMap.Drawing.Fonts;
using PolarityMap.Drawing.Scene;
using Xunit;

namespace PolarityMap.Acceptance.Svg;

/// <summary>Every word of every drawing can be read on paper: tall enough, on the sheet, free of other words and of lines.</summary>
public sealed class LetteringTests
{
    // Heights of capitals after ISO 3098 (from memory): 2.5 mm for lettering, 1.8 mm as the least anywhere.
    private const double Least = 1.8;
    private const double Strand = 2.5;

    // WCAG 2.2, success criterion 1.4.3: 4.5 to 1 for text.
    private const double TextContrast = 4.5;

    public static TheoryData<string> Svgs => SvgFiles.All;

    // An independent measure of the cap height: 0.66 em, read off the font's OS/2 table with another program.
    [Fact]
    public void The_cap_height_is_0_66_em() => Assert.Equal(0.66, FontMetrics.CapHeightPerEm, 3);

    [Theory]
    [MemberData(nameof(Svgs))]
    public void No_text_is_lower_than_1_8_mm_and_no_label_lower_than_2_5_mm(string svg) =>
        Assert.All(DrawnSheet.Of(svg).Texts, t =>
            Assert.True(t.CapHeight > (t.Layer is "labels" or "findings" ? Strand : Least) - DrawnSheet.Rounding, $"'{t.Content}' is {t.CapHeight:0.00} mm high"));

    [Theory]
    [MemberData(nameof(Svgs))]
    public void No_text_leaves_the_sheet_and_nothing_but_zone_marks_leaves_the_frame(string svg)
    {
        DrawnSheet sheet = DrawnSheet.Of(svg);
        Rect paper = sheet.Sheet;
        Assert.All(sheet.Texts, t => Assert.True(paper.Contains(t.Letters), $"'{t.Content}' at {t.Letters} leaves the sheet {paper}"));
        if (!sheet.HasFrame)
            return;
        var frame = new Rect(20, 10, paper.Width - 30, paper.Height - 20);
        Assert.All(sheet.Texts.Where(t => t.Layer != "frame"), t => Assert.True(frame.Contains(t.Letters), $"'{t.Content}' at {t.Letters} leaves the frame {frame}"));
    }

    [Theory]
    [MemberData(nameof(Svgs))]
    public void Every_character_is_in_the_font(string svg) =>
        Assert.All(DrawnSheet.Of(svg).Texts, t => Assert.True(FontMetrics.Contains(t.Content), t.Content));

    [Theory]
    [MemberData(nameof(Svgs))]
    public void No_two_texts_overlap(string svg)
    {
        DrawnText[] texts = [.. DrawnSheet.Of(svg).Texts.OrderBy(t => t.Letters.X)];
        var over = new List<string>();
        for (int i = 0; i < texts.Length; i++)
        {
            for (int j = i + 1; j < texts.Length && texts[j].Letters.X < texts[i].Letters.Right; j++)
            {
                if (texts[i].Letters.Overlaps(texts[j].Letters, 0.02))
                    over.Add($"'{texts[i].Content}' and '{texts[j].Content}' near {texts[j].Letters.X:0.0},{texts[j].Letters.Y:0.0}");
            }
        }

        Assert.True(over.Count == 0, string.Join("\n", over));
    }

    // Lines of text on one sheet are 1.5 capitals apart (ISO 3098, from memory); at 2.5 mm the drawings use 4 mm.
    [Theory]
    [MemberData(nameof(Svgs))]
    public void Lines_of_text_below_each_other_keep_their_distance(string svg)
    {
        DrawnText[] texts = [.. DrawnSheet.Of(svg).Texts.Where(t => t.Content.Length > 3).OrderBy(t => t.Capitals.Bottom)];
        var near = new List<string>();
        for (int i = 0; i < texts.Length; i++)
        {
            for (int j = i + 1; j < texts.Length && texts[j].Capitals.Bottom - texts[i].Capitals.Bottom < 1.3 * texts[j].CapHeight - DrawnSheet.Rounding; j++)
            {
                double apart = texts[j].Capitals.Bottom - texts[i].Capitals.Bottom;
                bool below = Math.Min(texts[i].Capitals.Right, texts[j].Capitals.Right) > Math.Max(texts[i].Capitals.X, texts[j].Capitals.X);
                if (below && apart > DrawnSheet.Rounding)
                    near.Add($"'{texts[i].Content}' and '{texts[j].Content}' are {apart:0.00} mm apart");
            }
        }

        Assert.True(near.Count == 0, string.Join("\n", near));
    }

    // A name inside a box stays inside it, and one above it stays above: no word lies across the edge of a part.
    [Theory]
    [MemberData(nameof(Svgs))]
    public void No_word_lies_across_the_edge_of_a_part(string svg)
    {
        DrawnSheet sheet = DrawnSheet.Of(svg);
        string[] across =
        [
            .. sheet.Texts.Where(t => t.Layer is "labels" or "findings" or "notes" or "legend" or "table" or "captions")
                .SelectMany(t => sheet.Parts.Where(p => p.Overlaps(t.Capitals, 0.05) && !p.Grown(0.05).Contains(t.Capitals)).Select(p => $"'{t.Content}' at {t.Capitals} lies across {p}")),
        ];
        Assert.True(across.Length == 0, string.Join("\n", across));
    }

    // A word on white paper of its own may stand on its strand; every other word has to keep clear of all strands.
    [Theory]
    [MemberData(nameof(Svgs))]
    public void No_strand_runs_through_a_word(string svg)
    {
        DrawnSheet sheet = DrawnSheet.Of(svg);
        DrawnText[] bare = [.. sheet.Texts.Where(t => t.Layer is "labels" or "findings" && !sheet.Covers.Any(c => c.Grown(DrawnSheet.Rounding).Contains(t.Capitals)))];
        string[] through = [.. bare.SelectMany(t => sheet.Strands.Where(s => s.Routes.Any(r => Geometry.Enters(r, t.Capitals))).Select(s => $"strand {s.Number} runs through '{t.Content}' at {t.MiddleX:0.0},{t.MiddleY:0.0}"))];
        Assert.True(through.Length == 0, string.Join("\n", through));
    }

    [Theory]
    [MemberData(nameof(Svgs))]
    public void Text_has_a_contrast_of_4_5_to_1_on_the_sheet_and_on_the_boxes_of_parts(string svg) =>
        Assert.All(DrawnSheet.Of(svg).Texts.Select(t => t.Fill).Distinct(), fill =>
        {
            var colour = Colour.FromHex(fill);
            Assert.True(Colour.Contrast(colour, Colour.FromHex("#FFFFFF")) >= TextContrast, fill);
            Assert.True(Colour.Contrast(colour, Palette.PartFill) >= TextContrast, fill);
        });
}
