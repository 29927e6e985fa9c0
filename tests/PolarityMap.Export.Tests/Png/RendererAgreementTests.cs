using System.Globalization;
using System.Xml.Linq;
using PolarityMap.Acceptance.Renderers;
using PolarityMap.Drawing.Fonts;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Svg;
using Xunit;
using Xunit.Abstractions;

namespace PolarityMap.Export.Tests.Png;

/// <summary>The picture is the one that librsvg, which shares no code with the product, draws from the SVG of the same sheet.</summary>
public sealed class RendererAgreementTests(ITestOutputHelper output)
{
    // Measured on clean pairs and on planted faults at 8 pixels a mm: clean pairs stay below, every fault lies above.
    private const double MostShare = 0.0003;
    private const double WorstTile = 0.20;

    // Nearly 8 pixels a mm.
    private const int Dpi = 203;

    public static TheoryData<int> EverySheet => [.. Enumerable.Range(0, Sheets.All.Count)];

    // librsvg draws certain pairs of letters closer, which would add up along a sentence. So the SVG has each letter as a text of
    // its own, where the widths of the letters before it lead, from the font's tables.
    [Theory]
    [MemberData(nameof(EverySheet))]
    public void The_picture_is_that_of_the_SVG(int sheet)
    {
        Disagreement apart = Compare(Sheets.All[sheet], Sheets.Changed(Sheets.All[sheet], e => e is Label label ? Letters(label) : e));
        Assert.True(IsSame(apart), $"{apart}");
    }

    // Shapes at which renderers part: no width, no length, a sharp corner, a radius beyond the half, a line that is only a point.
    [Fact]
    public void Odd_shapes_are_drawn_as_in_the_SVG()
    {
        DrawingSheet odd = Sheets.Of(
            100,
            60,
            new Box(5, 5, 20, 10, 99, Palette.Ink, 1, Palette.Note),
            new Box(30, 5, 0, 10, 0, Palette.Ink, 1, Palette.Note),
            new Box(35, 5, 20, 10, 2, Palette.Ink, 0, Palette.Fault),
            new Circle(65, 10, 0, Palette.Ink, 2, Palette.Ink),
            new Circle(75, 10, 4, Palette.Ink, 1),
            new Line(5, 20, 95, 20, Palette.Ink, 0),
            new Line(5, 22, 5, 22, Palette.Ink, 2),
            new Line(10, 22, 90, 26, Palette.Ink, 0.7, DashKind.LongDashDot),
            new Polygon([(5, 30), (25, 32), (5, 34)], Palette.Ink, 1),
            new Polygon([(30, 30), (50, 40), (30, 50)], Palette.Ink, 2, Palette.WarningFill),
            new Polygon([(60, 30)], Palette.Ink, 2),
            new StrandPath(Route.From(55, 35).LineTo(70, 35).CurveTo(90, 55).LineTo(95, 30), Palette.Fault, true, DashKind.SpacedDashed));
        Disagreement apart = Compare(odd, odd);
        Assert.True(IsSame(apart), $"{apart}");
    }

    // The comparison would be worth nothing if it passed a drawing with a strand too few, or with one half a millimetre off.
    [Fact]
    public void A_missing_strand_is_noticed()
    {
        DrawingSheet whole = Sheets.Without(Sheets.Twelve, e => e is Label);
        Disagreement apart = Compare(Sheets.Without(whole, e => e is SceneGroup { Id: "strand-5" }), whole);
        Assert.False(IsSame(apart), $"{apart}");
    }

    [Fact]
    public void A_strand_half_a_millimetre_off_is_noticed()
    {
        DrawingSheet whole = Sheets.Without(Sheets.Every, e => e is Label);
        DrawingSheet moved = Sheets.Changed(whole, e => e is Line line && line.Dash == DashKind.LongDashDoubleDot
            ? line with { Y1 = line.Y1 + 0.5, Y2 = line.Y2 + 0.5 }
            : e);
        Disagreement apart = Compare(moved, whole);
        Assert.False(IsSame(apart), $"{apart}");
    }

    [Fact]
    public void Dashes_that_are_left_out_are_noticed()
    {
        DrawingSheet whole = Sheets.Without(Sheets.Every, e => e is Label);
        DrawingSheet solid = Sheets.Changed(whole, e => e is StrandPath strand ? strand with { Dash = DashKind.Continuous } : e);
        Disagreement apart = Compare(solid, whole);
        Assert.False(IsSame(apart), $"{apart}");
    }

    private static SceneGroup Letters(Label label)
    {
        double left = label.Extent().X;
        return new SceneGroup(null,
        [
            .. label.UnderlayBox() is { } underlay ? (SceneElement[])[underlay] : [],
            .. label.Text.Select((c, i) => label with
            {
                X = left + FontMetrics.WidthMm(label.Text.AsSpan(0, i), label.CapHeightMm),
                Text = c.ToString(),
                Anchor = Anchor.Start,
                Underlay = null,
            }),
        ]);
    }

    private static bool IsSame(Disagreement apart) => apart.Share <= MostShare && apart.WorstTile <= WorstTile;

    /// <summary>Compares the product's picture of one sheet with librsvg's of the other.</summary>
    private Disagreement Compare(DrawingSheet product, DrawingSheet other)
    {
        Assert.True(LibrsvgRenderer.IsThere, "the picture library was built without librsvg");
        Picture picture = Decoded.Picture(product, Dpi);
        Picture reference = LibrsvgRenderer.Render(InPixels(SvgWriter.Write(other, new SvgOptions()), picture.Width, picture.Height), picture.Width, picture.Height);
        Disagreement apart = Envelope.Compare(picture, reference);
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{picture.Width} x {picture.Height}: share {apart.Share:0.000000}, worst tile {apart.WorstTile:0.000}"));
        return apart;
    }

    /// <summary>The SVG cut to whole pixels, in which the PNG is drawn.</summary>
    private static string InPixels(string svg, int width, int height)
    {
        XElement root = XElement.Parse(Pixels.FineText(svg), LoadOptions.PreserveWhitespace);
        root.SetAttributeValue("viewBox", string.Create(CultureInfo.InvariantCulture, $"0 0 {width * 25.4 / Dpi} {height * 25.4 / Dpi}"));
        return root.ToString(SaveOptions.DisableFormatting);
    }
}
