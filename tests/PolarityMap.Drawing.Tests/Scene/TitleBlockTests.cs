using PolarityMap.Drawing.Fonts;
using PolarityMap.Drawing.Scene;
using Xunit;

namespace PolarityMap.Drawing.Tests.Scene;

public sealed class TitleBlockTests
{
    private static readonly string[] Captions =
    [
        "Title", "Supplementary title", "Site", "Document type", "Identification number", "Revision", "Date of issue",
        "Creator", "Sheet", "Legal owner", "Approval",
    ];

    // Lengths allowed by ISO 7200 for title, document type, identification number, date, persons.
    [Theory]
    [InlineData("")]
    [InlineData("n")]
    [InlineData("Backbone of the north hall")]
    [InlineData("WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW")]
    [InlineData("a very long title which nobody would ever set in a cell of this size but somebody will, one day")]
    public void Every_text_stays_in_its_own_cell(string value)
    {
        var block = new TitleBlock
        {
            Title = value,
            SupplementaryTitle = value,
            Site = value,
            DocumentType = value,
            IdentificationNumber = value,
            Revision = value,
            DateOfIssue = value,
            Creator = value,
            Approval = value,
            LegalOwner = value,
            Sheet = 1234,
            Sheets = 1234,
        };
        foreach (SheetFormat format in new[] { SheetFormat.A4Portrait, SheetFormat.A3Landscape, SheetFormat.LetterPortrait })
        {
            SheetFrame frame = SheetFrame.For(format, block);
            var labels = LabelsInBlock(frame);
            Assert.True(labels.Count >= Captions.Length);
            var upright = LinesInBlock(frame).Where(l => l.X1 == l.X2).Select(l => (X: l.X1, Top: Math.Min(l.Y1, l.Y2), Bottom: Math.Max(l.Y1, l.Y2))).ToList();
            foreach (Area text in labels.Select(l => l.Extent()))
            {
                Assert.True(text.X > frame.Frame.Right - 180 && text.Right < frame.Frame.Right, text.ToString());
                Assert.DoesNotContain(upright, r => r.X > text.X && r.X < text.Right && r.Top < text.Bottom && r.Bottom > text.Y);
            }

            for (int i = 0; i < labels.Count; i++)
            {
                for (int j = 0; j < i; j++)
                    Assert.False(Overlap(labels[i].Extent(), labels[j].Extent()), $"{labels[i].Text} / {labels[j].Text}");
            }
        }
    }

    [Fact]
    public void Letters_with_tails_stay_above_the_rule_below()
    {
        SheetFrame frame = SheetFrame.For(SheetFormat.A4Landscape, Specimen.Title());
        var level = LinesInBlock(frame).Where(l => l.Y1 == l.Y2).Select(l => l.Y1).Append(frame.Frame.Bottom).Distinct().ToList();
        foreach (Label label in LabelsInBlock(frame))
        {
            // A tail of this font hangs at most 0.31 of the cap height (205 of 660 units, from its outlines).
            double foot = label.BaselineY + (0.31 * label.CapHeightMm);
            Assert.DoesNotContain(level, y => y > label.Extent().Y && y < foot);
        }
    }

    [Fact]
    public void A_field_without_a_value_prints_its_caption_and_an_empty_cell()
    {
        SheetFrame frame = SheetFrame.For(SheetFormat.A4Landscape, new TitleBlock());
        var texts = LabelsInBlock(frame).Select(l => l.Text).ToList();
        Assert.All(Captions, c => Assert.Contains(c, texts));
        Assert.Equal([.. Captions.Append("1 of 1").Append(ScaleBar.Words).Order(StringComparer.Ordinal)], texts.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Ordinary_values_print_whole_and_at_their_full_height()
    {
        var labels = LabelsInBlock(SheetFrame.For(SheetFormat.A4Landscape, Specimen.Title()));
        Assert.Equal(3.5, labels.Single(l => l.Text == "Reversal of twelve strands").CapHeightMm);
        Assert.Equal(2.5, labels.Single(l => l.Text == "2024-05-17").CapHeightMm);
        Assert.Equal(2.5, labels.Single(l => l.Text == "strand diagram").CapHeightMm);
        Assert.Equal(2.5, labels.Single(l => l.Text == "1 of 2").CapHeightMm);
    }

    // As long as the sheets of a room with four networks have it.
    [Fact]
    public void A_supplementary_title_goes_on_in_a_second_line_before_it_is_cut()
    {
        var block = new TitleBlock { SupplementaryTitle = "Stage, strands 9 to 16, 41 to 48, 73 to 80, 105 to 112" };
        var labels = LabelsInBlock(SheetFrame.For(SheetFormat.A4Landscape, block));
        Label first = labels.Single(l => l.Text == "Stage, strands 9 to 16, 41 to 48, 73 to 80,");
        Label second = labels.Single(l => l.Text == "105 to 112");
        Assert.Equal((first.X, CapHeights.Least), (second.X, second.CapHeightMm));
        Assert.True(second.BaselineY - first.BaselineY > (1.5 * CapHeights.Least) - 1e-9);
    }

    [Fact]
    public void The_scale_bar_measures_100_mm_with_a_tick_every_10_mm()
    {
        foreach (SheetFormat format in new[] { SheetFormat.A4Portrait, SheetFormat.TabloidLandscape })
        {
            SheetFrame frame = SheetFrame.For(format, new TitleBlock());
            Line bar = Assert.Single(LinesInBlock(frame), l => l.Y1 == l.Y2 && Math.Abs(l.X2 - l.X1 - 100) < 1e-9);
            var ticks = LinesInBlock(frame).Where(l => l.X1 == l.X2 && l.Y1 == bar.Y1).Select(l => l.X1).Order().ToList();
            Assert.Equal(11, ticks.Count);
            for (int i = 0; i <= 10; i++)
                Assert.Equal(bar.X1 + (10 * i), ticks[i], 9);
            Assert.Contains(LabelsInBlock(frame), l => l.Text.Contains("print at 100 %"));
        }
    }

    [Theory]
    [InlineData("short", 40, "short", 2.5)]
    [InlineData("", 40, "", 2.5)]
    public void A_text_that_fits_is_left_alone(string text, double width, string expected, double cap) =>
        Assert.Equal((expected, cap), TextFit.Fit(text, width, 2.5));

    [Fact]
    public void A_text_that_does_not_fit_is_first_shrunk_and_then_cut()
    {
        const string Text = "Twenty-four characters..";
        double full = FontMetrics.WidthMm(Text, 2.5);
        (string whole, double cap) = TextFit.Fit(Text, full * 0.8, 2.5);
        Assert.Equal(Text, whole);
        Assert.Equal(2.0, cap, 9);

        (string cut, double least) = TextFit.Fit(Text, full * 0.5, 2.5);
        Assert.Equal(1.8, least);
        Assert.EndsWith("…", cut);
        Assert.StartsWith(cut[..^1], Text);
        Assert.True(FontMetrics.WidthMm(cut, least) <= full * 0.5);
        Assert.True(FontMetrics.WidthMm(Text[..(cut.Length + 1)] + "…", least) > full * 0.5);
    }

    [Fact]
    public void A_cut_never_splits_a_character_and_can_leave_nothing()
    {
        string faces = string.Concat(Enumerable.Repeat("\U0001F600", 40));
        for (double width = 3; width < 12; width += 0.1)
        {
            string cut = TextFit.Fit(faces, width, 2.5).Text;
            Assert.True(cut.EndsWith('…'));
            Assert.True(cut.Length == 1 || char.IsLowSurrogate(cut[^2]));
        }

        Assert.Equal("", TextFit.Fit(faces, 0.5, 2.5).Text);
    }

    private static List<Label> LabelsInBlock(SheetFrame frame) =>
        [.. frame.Drawing.Children.OfType<Label>().Where(l => InBlock(frame, l.X, l.BaselineY))];

    private static List<Line> LinesInBlock(SheetFrame frame) =>
        [.. frame.Drawing.Children.OfType<Line>().Where(l => InBlock(frame, l.X1, l.Y1) && InBlock(frame, l.X2, l.Y2))];

    private static bool InBlock(SheetFrame frame, double x, double y) =>
        x >= frame.Frame.Right - 180 - 1e-9 && x <= frame.Frame.Right + 1e-9
        && y >= frame.Free.Bottom - 1e-9 && y <= frame.Frame.Bottom + 1e-9;

    private static bool Overlap(Area a, Area b) =>
        a.Right > b.X && a.X < b.Right && a.Bottom > b.Y && a.Y < b.Bottom;
}
