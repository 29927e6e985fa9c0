using PolarityMap.Drawing.Fonts;
using Xunit;

namespace PolarityMap.Drawing.Tests.Fonts;

/// <summary>Oracle: the tables of the embedded font file itself.</summary>
public sealed class FontMetricsTests
{
    private static readonly TrueTypeFile Font = new(EmbeddedFont.Bytes());

    [Fact]
    public void Every_character_of_the_plane_has_the_advance_the_font_file_gives_it()
    {
        Assert.Equal(1000, Font.UnitsPerEm);
        int covered = 0;
        for (int c = 0; c < 0xFFFF; c++)
        {
            int glyph = Font.Glyph(c);
            Assert.Equal(glyph != 0, FontMetrics.Contains(((char)c).ToString()));
            if (glyph == 0)
                continue;
            covered++;
            Assert.Equal(Font.Advance(glyph), FontMetrics.Advance((char)c));
        }

        Assert.True(covered > 450, $"only {covered} characters");
    }

    [Fact]
    public void Cap_height_is_that_of_the_font_file() =>
        Assert.Equal(FontMetrics.CapHeightPerEm, Font.CapHeight / 1000.0);

    [Fact]
    public void The_ten_figures_have_one_width_so_that_columns_stand() =>
        Assert.Single("0123456789".Select(c => Font.Advance(Font.Glyph(c))).Distinct());

    // The set every sheet and report needs: figures, arrows, ohm, micro, lambda, signs of comparison.
    [Theory]
    [InlineData("0123456789→←↔Ωµλ·—−≤≥×✓●▲■")]
    [InlineData("ABCDEFGHIJKLMNOPQRSTUVWXYZ abcdefghijklmnopqrstuvwxyz äöüßéèñçøåłőš")]
    public void The_font_has_what_sheets_need(string text) => Assert.True(FontMetrics.Contains(text));

    [Theory]
    [InlineData("漢")]
    [InlineData("a\u0007")]
    [InlineData("\U0001F600")]
    public void A_text_with_a_foreign_character_is_not_contained(string text) =>
        Assert.False(FontMetrics.Contains(text));

    [Fact]
    public void Width_is_the_sum_of_advances_at_the_size_that_prints_the_cap_height()
    {
        // 2.5 mm capitals at cap height 0.660 em need 3.79 mm (measured in print for this family).
        Assert.Equal(3.79, FontMetrics.FontSizeFor(2.5), 2);
        double em = "WH 12".Sum(c => Font.Advance(Font.Glyph(c))) / 1000.0;
        Assert.Equal(em * 3.7878787878787878, FontMetrics.WidthMm("WH 12", 2.5), 9);
        Assert.Equal(0, FontMetrics.WidthMm("", 2.5));
    }

    [Theory]
    [InlineData("漢")]
    [InlineData("\U0001F600")]
    public void An_unknown_character_counts_as_one_figure(string text) =>
        Assert.Equal(FontMetrics.WidthMm("0", 2.5), FontMetrics.WidthMm(text, 2.5));

    [Fact]
    public void The_family_in_the_file_is_the_family_asked_for_and_the_reserved_name_is_gone()
    {
        // OFL 1.1, condition 3: a modified font may not use a reserved name. The copyright notice (record 0) must stay.
        var names = Font.Names().ToList();
        Assert.Contains((1, FontMetrics.Family), names);
        Assert.Contains((16, FontMetrics.Family), names);
        Assert.Contains(names, n => n.Id == 0 && n.Text.Contains("Reserved Font Name"));
        Assert.Contains(names, n => n.Id == 13 && n.Text.Contains("SIL Open Font License"));
        Assert.All(names.Where(n => n.Id is not (0 or 13)), n => Assert.DoesNotContain("Source", n.Text));
    }
}
