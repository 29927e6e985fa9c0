using PolarityMap.Drawing.Scene;
using Xunit;

namespace PolarityMap.Drawing.Tests.Scene;

public sealed class ColourTests
{
    // Black on white is 21 by the definition in WCAG 2.2; the greys either side of 4.5 and the red are pairs
    // printed in many contrast guides (from memory); #222222 on white is 15.9.
    [Theory]
    [InlineData("#000000", "#FFFFFF", 21.0)]
    [InlineData("#FFFFFF", "#FFFFFF", 1.0)]
    [InlineData("#767676", "#FFFFFF", 4.54)]
    [InlineData("#777777", "#FFFFFF", 4.48)]
    [InlineData("#FF0000", "#FFFFFF", 4.00)]
    [InlineData("#222222", "#FFFFFF", 15.91)]
    public void Contrast_ratio_is_the_published_one_in_either_order(string a, string b, double ratio)
    {
        Assert.Equal(ratio, Colour.Contrast(Colour.FromHex(a), Colour.FromHex(b)), 0.006);
        Assert.Equal(ratio, Colour.Contrast(Colour.FromHex(b), Colour.FromHex(a)), 0.006);
    }

    [Fact]
    public void Luminance_weights_the_channels_by_0_2126_0_7152_0_0722()
    {
        Assert.Equal(0.2126, new Colour(255, 0, 0).RelativeLuminance, 9);
        Assert.Equal(0.7152, new Colour(0, 255, 0).RelativeLuminance, 9);
        Assert.Equal(0.0722, new Colour(0, 0, 255).RelativeLuminance, 9);
    }

    [Theory]
    [InlineData("#00A1ff", "#00A1FF")]
    [InlineData("#C8202C", "#C8202C")]
    public void Hex_reads_and_writes(string read, string written) => Assert.Equal(written, Colour.FromHex(read).Hex);

    [Theory]
    [InlineData("")]
    [InlineData("red")]
    [InlineData("#FFF")]
    [InlineData("#12345G")]
    [InlineData("#12 456")]
    [InlineData("#11223344")]
    public void Another_form_of_colour_is_refused(string text) =>
        Assert.Throws<FormatException>(() => Colour.FromHex(text));
}
