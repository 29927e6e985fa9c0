using PolarityMap.Drawing.Scene;
using Xunit;

namespace PolarityMap.Drawing.Tests.Scene;

public sealed class SheetFrameTests
{
    public static TheoryData<string> Formats =>
        ["A4 portrait", "A4 landscape", "A3 portrait", "A3 landscape", "Letter portrait", "Letter landscape",
            "Tabloid portrait", "Tabloid landscape", "custom"];

    // Trimmed sizes and drawing spaces: ISO 216, ISO 5457 and ASME Y14.1, borders 20, 10, 10, 10 mm.
    [Theory]
    [InlineData("A4 portrait", 210, 297, 180, 277)]
    [InlineData("A4 landscape", 297, 210, 267, 190)]
    [InlineData("A3 portrait", 297, 420, 267, 400)]
    [InlineData("A3 landscape", 420, 297, 390, 277)]
    [InlineData("Letter portrait", 215.9, 279.4, 185.9, 259.4)]
    [InlineData("Letter landscape", 279.4, 215.9, 249.4, 195.9)]
    [InlineData("Tabloid portrait", 279.4, 431.8, 249.4, 411.8)]
    [InlineData("Tabloid landscape", 431.8, 279.4, 401.8, 259.4)]
    public void The_frame_leaves_the_drawing_space_of_the_standard(
        string name, double width, double height, double spaceWidth, double spaceHeight)
    {
        SheetFrame frame = SheetFrame.For(Format(name), new TitleBlock());
        Assert.Equal((width, height), (frame.Format.WidthMm, frame.Format.HeightMm));
        Assert.Equal((20.0, 10.0), (frame.Frame.X, frame.Frame.Y));
        Assert.Equal(spaceWidth, frame.Frame.Width, 9);
        Assert.Equal(spaceHeight, frame.Frame.Height, 9);
        Box line = Assert.Single(frame.Drawing.Children.OfType<Box>());
        Assert.Equal(0.7, line.StrokeWidthMm);
    }

    [Theory]
    [MemberData(nameof(Formats))]
    public void Nothing_of_the_frame_stands_in_the_free_space(string name)
    {
        SheetFrame frame = SheetFrame.For(Format(name), Specimen.Title());
        Area free = Inset(frame.Free, 0.4);
        Area beside = Inset(frame.BesideTitleBlock, 0.4);
        Assert.NotEmpty(frame.Drawing.Children.OfType<Label>());
        foreach (Area extent in frame.Drawing.Children.Where(e => e is not Box).Select(Extent))
        {
            Assert.False(Overlap(extent, free), $"{extent} in {free}");
            Assert.False(beside.Width > 0 && Overlap(extent, beside), $"{extent} in {beside}");
            Assert.True(extent.X >= 0 && extent.Y >= 0);
            Assert.True(extent.Right <= frame.Format.WidthMm && extent.Bottom <= frame.Format.HeightMm);
        }
    }

    // ISO 5457, edition 1999 (from memory): A3 landscape has 8 by 6 zones, A4 portrait 4 by 6.
    [Theory]
    [InlineData("A3 landscape", 8, "F")]
    [InlineData("A4 portrait", 4, "F")]
    [InlineData("A4 landscape", 6, "D")]
    public void Zones_are_counted_as_in_the_standard(string name, int numerals, string lastLetter)
    {
        SheetFrame frame = SheetFrame.For(Format(name), new TitleBlock());
        Assert.Equal("A1", frame.ZoneAt(0, 0));
        Assert.Equal(lastLetter + numerals, frame.ZoneAt(frame.Format.WidthMm, frame.Format.HeightMm));
    }

    [Fact]
    public void A_zone_changes_at_every_50_mm_from_the_middle()
    {
        SheetFrame frame = SheetFrame.For(SheetFormat.A3Landscape, new TitleBlock());
        Assert.Equal("C4", frame.ZoneAt(209.9, 148.4));
        Assert.Equal("D5", frame.ZoneAt(210.1, 148.6));
        Assert.Equal("C5", frame.ZoneAt(259.9, 98.6));
        Assert.Equal("B6", frame.ZoneAt(260.1, 98.4));
        Assert.Equal("A1", frame.ZoneAt(-5, -5));
    }

    [Theory]
    [MemberData(nameof(Formats))]
    public void Each_zone_mark_stands_in_the_zone_it_names(string name)
    {
        SheetFrame frame = SheetFrame.For(Format(name), new TitleBlock());
        var marks = frame.Drawing.Children.OfType<Label>().Where(l => l.CapHeightMm == 3.5).ToList();
        Assert.NotEmpty(marks);
        foreach (Label mark in marks)
        {
            Area at = mark.Extent();
            Assert.Contains(mark.Text, frame.ZoneAt(at.CentreX, at.CentreY));
            Assert.True(at.Right < frame.Frame.X || at.X > frame.Frame.Right || at.Bottom < frame.Frame.Y || at.Y > frame.Frame.Bottom);
        }
    }

    [Fact]
    public void The_letters_I_and_O_are_never_used()
    {
        SheetFrame frame = SheetFrame.For(SheetFormat.Custom(841, 1900), new TitleBlock());
        var letters = frame.Drawing.Children.OfType<Label>().Select(l => l.Text).Where(t => t.All(char.IsAsciiLetterUpper)).ToList();
        Assert.Contains("Z", letters);
        Assert.Contains("AA", letters);
        Assert.DoesNotContain(letters, t => t.Contains('I') || t.Contains('O'));
    }

    [Fact]
    public void Desk_sheets_have_marks_on_two_sides_and_larger_ones_on_four()
    {
        Assert.Single(Marks(SheetFormat.A4Landscape, "2"));
        Assert.Equal(2, Marks(SheetFormat.A3Landscape, "2").Count());

        static IEnumerable<Label> Marks(SheetFormat format, string text) =>
            SheetFrame.For(format, new TitleBlock()).Drawing.Children.OfType<Label>().Where(l => l.Text == text);
    }

    [Theory]
    [InlineData(209, 297)]
    [InlineData(297, 99)]
    [InlineData(100_001, 500)]
    [InlineData(double.NaN, 297)]
    [InlineData(297, double.PositiveInfinity)]
    public void A_sheet_that_cannot_hold_its_title_block_is_refused(double width, double height) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SheetFormat.Custom(width, height));

    private static SheetFormat Format(string name) => name switch
    {
        "A4 portrait" => SheetFormat.A4Portrait,
        "A4 landscape" => SheetFormat.A4Landscape,
        "A3 portrait" => SheetFormat.A3Portrait,
        "A3 landscape" => SheetFormat.A3Landscape,
        "Letter portrait" => SheetFormat.LetterPortrait,
        "Letter landscape" => SheetFormat.LetterLandscape,
        "Tabloid portrait" => SheetFormat.TabloidPortrait,
        "Tabloid landscape" => SheetFormat.TabloidLandscape,
        _ => SheetFormat.Custom(594, 420),
    };

    private static Area Extent(SceneElement element) => element switch
    {
        Label label => label.Extent(),
        Line line => new Area(
            Math.Min(line.X1, line.X2), Math.Min(line.Y1, line.Y2), Math.Abs(line.X2 - line.X1), Math.Abs(line.Y2 - line.Y1)),
        _ => throw new ArgumentException($"unexpected {element}"),
    };

    private static Area Inset(Area a, double by) => new(a.X + by, a.Y + by, a.Width - (2 * by), a.Height - (2 * by));

    private static bool Overlap(Area a, Area b) =>
        a.Right > b.X && a.X < b.Right && a.Bottom > b.Y && a.Y < b.Bottom;
}
