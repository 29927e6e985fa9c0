using PolarityMap.Drawing.Scene;
using Xunit;

namespace PolarityMap.Drawing.Tests.Scene;

public class QrMarkTests
{
    // ISO/IEC 18004, capacity at level M (from memory): most alphanumeric characters of each version from 1.
    private static readonly int[] s_alphanumeric = [20, 38, 61, 90, 122, 154, 178, 221, 262, 311];

    [Fact]
    public void A_text_takes_the_smallest_version_that_holds_it_and_each_can_be_drawn()
    {
        for (int version = 1; version <= s_alphanumeric.Length; version++)
        {
            Assert.Equal(17 + (4 * version) + 8, QrMark.Of(new string('A', s_alphanumeric[version - 1]))!.Modules);
            foreach (int length in (int[])[s_alphanumeric[version - 1], version == 1 ? 1 : s_alphanumeric[version - 2] + 1])
                Assert.NotEmpty(QrMark.Of(new string('Z', length))!.Draw(0, 0, 0.4).Children);
        }
    }

    [Theory]
    [InlineData("a")]
    [InlineData("ö")]
    [InlineData("ж")]
    [InlineData("漢")]
    public void Texts_of_any_length_and_script_can_be_drawn_or_have_no_mark(string letter)
    {
        for (int length = 1; length <= 220; length += 3)
        {
            if (QrMark.Of(string.Concat(Enumerable.Repeat(letter, length))) is { } mark)
                Assert.NotEmpty(mark.Draw(0, 0, 0.4).Children);
            else
                Assert.True(length > 60);
        }
    }

    [Fact]
    public void What_is_too_long_or_empty_has_no_mark()
    {
        Assert.Null(QrMark.Of(""));
        Assert.Null(QrMark.Of(new string('A', 312)));
        Assert.Null(QrMark.Of(new string('a', 212)));
    }

    [Fact]
    public void Squares_are_never_smaller_than_they_can_be_printed() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => QrMark.Of("SW-L/1")!.Draw(0, 0, 0.39));

    // ISO/IEC 18004: a free edge of four squares on every side.
    [Fact]
    public void Nothing_dark_lies_in_the_free_edge_and_the_pattern_fills_the_rest()
    {
        QrMark mark = QrMark.Of("SW-L/1")!;
        SceneGroup drawn = mark.Draw(10, 20, 0.5);
        Point[] corners = [.. drawn.Children.OfType<Polygon>().SelectMany(p => p.Points)];
        Assert.Equal((12, 22, 10 + 14.5 - 2, 20 + 14.5 - 2), (corners.Min(p => p.X), corners.Min(p => p.Y), corners.Max(p => p.X), corners.Max(p => p.Y)));
        Box paper = Assert.Single(drawn.Children.OfType<Box>());
        Assert.Equal((10, 20, 14.5, 14.5), (paper.X, paper.Y, paper.Width, paper.Height));
    }

    [Fact]
    public void The_same_text_is_drawn_the_same_and_said_to_a_reader()
    {
        Assert.Equal(QrMark.Of("SW-L/1")!.Draw(1, 2, 0.4).Children.Count, QrMark.Of("SW-L/1")!.Draw(1, 2, 0.4).Children.Count);
        Assert.Equal("QR code of the text SW-L/1", QrMark.Of("SW\u202E-L/1")!.Draw(0, 0, 0.4).Title);
    }
}
