using PolarityMap.Acceptance.Gallery;
using PolarityMap.Acceptance.Svg;
using PolarityMap.Drawing.Scene;
using Xunit;

namespace PolarityMap.Acceptance.Renderers;

/// <summary>What must be dark on paper is dark in the rendered picture.</summary>
public sealed class RenderedInkTests
{
    private const int PixelsPerMm = Pixels.PerMm;
    private const string Svg = "methods/duplex-B.svg";

    // Twelve strands of one trunk carry the twelve colours of the sequence, the light ones among them.
    private static readonly DrawnSheet Sheet = DrawnSheet.Of(Svg);
    private static readonly Lazy<Picture> Skia = new(() => Render(SkiaRenderer.Render));
    private static readonly Lazy<Picture> Librsvg = new(() => Render(LibrsvgRenderer.Render));

    // WCAG 2.2, success criterion 1.4.11: 3 to 1 against white paper, which is this luminance.
    private const double DarkOnPaper = (1.05 / 3) - 0.05;

    [Theory]
    [InlineData("WH")]
    [InlineData("YE")]
    [InlineData("TQ")]
    public void A_light_strand_leaves_a_dark_casing_at_both_sides_of_its_colour(string code)
    {
        DrawnText label = Sheet.StrandLabels.First(l => l.Content.EndsWith($" {code}", StringComparison.Ordinal));
        DrawnStrand strand = Sheet.Strands.Single(s => s.Number == DrawnSheet.StrandNumber(label.Content));
        var fill = Colour.FromHex(strand.Strokes[2].Stroke);
        Assert.True(fill.RelativeLuminance > 0.3, $"{code} is drawn in the dark colour {fill.Hex}");
        foreach (Picture picture in (Picture[])[Skia.Value, Librsvg.Value])
        {
            // Beside the label's white paper the strand runs level.
            double x = label.Capitals.Right + 1.0;
            double middle = strand.Routes[0].Where(p => Math.Abs(p.Y - label.MiddleY) < 0.01).Select(p => p.Y).First();
            Assert.True(Luminance(picture, x, middle) > 0.2, "the fill is not seen");
            double half = (strand.Strokes[1].Width + strand.Strokes[2].Width) / 4;
            Assert.True(Darkest(picture, x, middle - half) < DarkOnPaper, "no casing above the fill");
            Assert.True(Darkest(picture, x, middle + half) < DarkOnPaper, "no casing below the fill");
        }
    }

    // A renderer that lacks the font draws nothing and says nothing.
    [Fact]
    public void Every_word_leaves_ink_in_both_renderers()
    {
        Assert.True(LibrsvgRenderer.IsThere, "the picture library was built without librsvg");
        foreach (DrawnText text in Sheet.Texts.Where(t => t.Content != "-" && t.Content.Length > 0))
        {
            Assert.True(InkIn(Skia.Value, text.Capitals) > 0.08, $"the first renderer leaves no ink for '{text.Content}'");
            Assert.True(InkIn(Librsvg.Value, text.Capitals) > 0.08, $"the second renderer leaves no ink for '{text.Content}'");
        }
    }

    // Letters fill the width that the layout reckoned with: the last tenth of a long word holds ink, what follows does not.
    [Fact]
    public void Words_are_as_wide_as_the_layout_reckons()
    {
        DrawnText text = Sheet.Texts.Where(t => t.Layer == "notes").MaxBy(t => t.Content.Length)!;
        foreach (Picture picture in (Picture[])[Skia.Value, Librsvg.Value])
        {
            Assert.True(InkIn(picture, text.Capitals with { X = text.Capitals.Right - 6, Width = 6 }) > 0.05, "the words end too early");
            Assert.Equal(0, InkIn(picture, text.Capitals with { X = text.Capitals.Right + 0.4, Width = 1.2 }));
        }
    }

    private static Picture Render(Func<string, int, int, Picture> renderer) =>
        renderer(Pixels.FineText(MadeGallery.Now.Files[Svg]), Pixels.Of(MadeGallery.Now.Files[Svg]).Width, Pixels.Of(MadeGallery.Now.Files[Svg]).Height);

    private static double Luminance(Picture picture, double x, double y)
    {
        (byte r, byte g, byte b) = picture.At((int)(x * PixelsPerMm), (int)(y * PixelsPerMm));
        return new Colour(r, g, b).RelativeLuminance;
    }

    /// <summary>The darkest of the three pixels at and next to a height.</summary>
    private static double Darkest(Picture picture, double x, double y) =>
        Math.Min(Luminance(picture, x, y), Math.Min(Luminance(picture, x, y - (1.0 / PixelsPerMm)), Luminance(picture, x, y + (1.0 / PixelsPerMm))));

    /// <summary>The share of dark pixels in a rectangle.</summary>
    private static double InkIn(Picture picture, Rect rect)
    {
        int dark = 0, all = 0;
        for (int y = (int)(rect.Y * PixelsPerMm); y < rect.Bottom * PixelsPerMm; y++)
        {
            for (int x = (int)(rect.X * PixelsPerMm); x < rect.Right * PixelsPerMm; x++)
            {
                (byte r, byte g, byte b) = picture.At(x, y);
                dark += new Colour(r, g, b).RelativeLuminance < 0.4 ? 1 : 0;
                all++;
            }
        }

        return (double)dark / all;
    }
}
