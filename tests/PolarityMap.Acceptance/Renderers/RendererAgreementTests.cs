using System.Globalization;
using System.Xml.Linq;
using PolarityMap.Acceptance.Gallery;
using Xunit;
using Xunit.Abstractions;

namespace PolarityMap.Acceptance.Renderers;

/// <summary>Two renderers that share no code draw the same picture from the gallery's files.</summary>
public sealed class RendererAgreementTests(ITestOutputHelper output)
{
    // Measured on clean pairs and on planted faults at 8 pixels a mm: clean pairs stay below, every fault lies above.
    private const double MostShare = 0.0003;
    private const double WorstTile = 0.20;

    private const double MostShareOfSentences = 0.0033;
    private const int LongestLabel = 6;

    [Theory]
    [InlineData("methods/duplex-B.svg")]
    [InlineData("faults/P01.svg")]
    [InlineData("opera-house/desk-7.svg")]
    public void Both_renderers_draw_the_same_lines(string svg)
    {
        Disagreement apart = Compare(WithoutText(MadeGallery.Now.Files[svg]), WithoutText(MadeGallery.Now.Files[svg]));
        Assert.True(IsSame(apart), $"{apart}");
    }

    // Labels of strands, names of positions, Tx and Rx: short words, in which kerning moves nothing.
    [Theory]
    [InlineData("methods/duplex-B.svg")]
    [InlineData("opera-house/desk-7.svg")]
    public void Both_renderers_draw_the_same_sheet_with_its_labels(string svg)
    {
        string fine = Pixels.FineText(Without(MadeGallery.Now.Files[svg], e => e.Name.LocalName == "text" && e.Value.Length > LongestLabel));
        Disagreement apart = Compare(fine, fine);
        Assert.True(IsSame(apart), $"{apart}");
    }

    // One renderer draws certain pairs of letters closer and the other does not, which adds up along a sentence; so each word is
    // set where the font's own tables put it, and the share of failing pixels alone is limited: 0.19 % where lines are short, and
    // 1.7 % when the letters of one were spaced wrongly.
    [Fact]
    public void Both_renderers_set_sentences_in_the_same_font()
    {
        string fine = Pixels.FineText(Pixels.WordByWord(MadeGallery.Now.Files["methods/duplex-B.svg"]));
        Disagreement apart = Compare(fine, fine);
        Assert.True(apart.Share <= MostShareOfSentences, $"{apart}");
    }

    // The comparison would be worth nothing if it passed a drawing with a strand too few.
    [Fact]
    public void A_missing_strand_is_noticed()
    {
        string whole = WithoutText(MadeGallery.Now.Files["methods/duplex-B.svg"]);
        Disagreement apart = Compare(whole, Without(whole, e => e.Attribute("id")?.Value == "strand-5"));
        Assert.False(IsSame(apart), $"{apart}");
    }

    [Fact]
    public void A_missing_casing_is_noticed()
    {
        string whole = WithoutText(MadeGallery.Now.Files["methods/duplex-B.svg"]);
        XElement? light = null;
        string bare = Without(whole, e => e.Name.LocalName == "path" && e.Attribute("fill") is null && e.Attribute("stroke")?.Value == "#222222"
            && (light ??= FillIsLight(e) ? e : null) == e);
        Assert.NotNull(light);
        Disagreement apart = Compare(whole, bare);
        Assert.False(IsSame(apart), $"{apart}");
    }

    private static bool IsSame(Disagreement apart) => apart.Share <= MostShare && apart.WorstTile <= WorstTile;

    private static bool FillIsLight(XElement casing) =>
        casing.ElementsAfterSelf().First().Attribute("stroke")!.Value is var hex && PolarityMap.Drawing.Scene.Colour.FromHex(hex).RelativeLuminance > 0.5;

    private Disagreement Compare(string one, string other)
    {
        (int width, int height) = Pixels.Of(one);
        Disagreement apart = Envelope.Compare(SkiaRenderer.Render(one, width, height), LibrsvgRenderer.Render(other, width, height));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{width} x {height}: share {apart.Share:0.000000}, worst tile {apart.WorstTile:0.000}"));
        return apart;
    }

    private static string WithoutText(string svg) => Without(svg, e => e.Name.LocalName == "text");

    private static string Without(string svg, Func<XElement, bool> leave)
    {
        XElement root = XElement.Parse(svg);
        root.Descendants().Where(leave).ToList().Remove();
        return root.ToString(SaveOptions.DisableFormatting);
    }
}
