using PolarityMap.Drawing.Scene;
using Xunit;

namespace PolarityMap.Drawing.Tests.Scene;

public sealed class SceneTests
{
    [Theory]
    [InlineData(Anchor.Start, 100)]
    [InlineData(Anchor.Middle, 95)]
    [InlineData(Anchor.End, 90)]
    public void An_underlay_surrounds_its_label_whatever_the_anchor(Anchor anchor, double expectedLeftOfTenMm)
    {
        // A cap height that makes the ten figures 10 mm wide: 4.97 em wide, 0.660 em high.
        double cap = 10 / 4.97 * 0.660;
        var label = new Label(100, 50, "0123456789", cap, anchor, Palette.Ink, Underlay.Paper);
        Box box = Assert.IsType<Box>(label.UnderlayBox());
        Assert.Equal(expectedLeftOfTenMm - 0.5, box.X, 6);
        Assert.Equal(11, box.Width, 6);
        Assert.Equal(50 - cap - 0.5, box.Y, 6);
        Assert.Equal(cap + 1, box.Height, 6);
        Assert.Equal(Palette.Paper, box.Fill);
        Assert.Null((label with { Underlay = null }).UnderlayBox());
        Assert.Null((label with { Text = "" }).UnderlayBox());
    }

    [Fact]
    public void A_centred_label_has_equal_room_above_and_below_its_capitals()
    {
        Area extent = Label.CentredOn(10, 40, "7 RD", 2.5, Anchor.Start, Palette.Ink).Extent();
        Assert.Equal(38.75, extent.Y, 9);
        Assert.Equal(41.25, extent.Bottom, 9);
    }

    [Fact]
    public void Emphasis_doubles_the_fill_and_leaves_room_for_letters_between_neighbours()
    {
        var plain = new StrandPath(Route.From(0, 0).LineTo(1, 0), Palette.Note);
        StrandPath wide = plain with { Emphasised = true };
        Assert.Equal((1.9, 1.0, 0.7), (plain.HaloMm, plain.CasingMm, plain.FillMm));
        Assert.Equal(1.4, wide.FillMm, 9);
        Assert.Equal(plain.CasingMm - plain.FillMm, wide.CasingMm - wide.FillMm, 9);
        Assert.Equal(plain.HaloMm - plain.FillMm, wide.HaloMm - wide.FillMm, 9);
        Assert.True(5 - wide.CasingMm >= CapHeights.Strand + 0.7);
    }

    // ISO 128-2 gives dashes and gaps as multiples of the line width.
    [Theory]
    [InlineData(DashKind.Continuous, new double[] { })]
    [InlineData(DashKind.Dashed, new double[] { 12, 3 })]
    [InlineData(DashKind.SpacedDashed, new double[] { 12, 18 })]
    [InlineData(DashKind.LongDashDot, new[] { 24, 3, 0.5, 3 })]
    [InlineData(DashKind.LongDashDoubleDot, new[] { 24, 3, 0.5, 3, 0.5, 3 })]
    [InlineData(DashKind.Dotted, new[] { 0.5, 3 })]
    public void Dashes_follow_the_standard(DashKind kind, double[] expected) =>
        Assert.Equal(expected, DashPattern.Multiples(kind).ToArray());

    [Theory]
    [InlineData("")]
    [InlineData("7")]
    [InlineData("a b")]
    [InlineData("a\"onload=\"x")]
    [InlineData("ä")]
    public void An_id_of_another_form_is_refused(string id) =>
        Assert.Throws<ArgumentException>(() => new SceneGroup(id, []));

    [Theory]
    [InlineData(null)]
    [InlineData(" ")]
    public void A_group_with_a_role_must_have_a_title(string? title) =>
        Assert.Throws<ArgumentException>(() => new SceneGroup("s", GroupRole.GraphicsSymbol, title, null, []));

    [Fact]
    public void Arrowheads_point_where_their_name_says()
    {
        Polygon right = Marks.ArrowRight(50, 20, Palette.Ink);
        Polygon left = Marks.ArrowLeft(50, 20, Palette.Ink);
        Assert.Equal(new Point(50, 20), right.Points.MaxBy(p => p.X));
        Assert.Equal(new Point(50, 20), left.Points.MinBy(p => p.X));
        Assert.All([right, left], a => Assert.Equal((3.0, 3.2), (Math.Round(Size(a).Item1, 9), Math.Round(Size(a).Item2, 9))));
    }

    [Fact]
    public void A_key_tab_stands_outside_the_box_on_the_named_edge()
    {
        Assert.All(Marks.KeyUp(10, 30).Points, p => Assert.True(p.Y <= 30));
        Assert.All(Marks.KeyDown(10, 30).Points, p => Assert.True(p.Y >= 30));
    }

    [Fact]
    public void The_sign_of_an_error_is_a_regular_octagon_of_the_asked_size()
    {
        Polygon octagon = Assert.Single(Marks.Error(10, 10, 6).Children.OfType<Polygon>());
        Assert.Equal(8, octagon.Points.Count);
        Assert.Equal(6, Size(octagon).Width, 9);
        var sides = Enumerable.Range(0, 8).Select(i => (A: octagon.Points[i], B: octagon.Points[(i + 1) % 8]))
            .Select(s => Math.Sqrt(Math.Pow(s.A.X - s.B.X, 2) + Math.Pow(s.A.Y - s.B.Y, 2)));
        Assert.All(sides, side => Assert.Equal(6 * Math.Tan(Math.PI / 8), side, 9));
    }

    [Fact]
    public void Each_severity_has_a_shape_of_its_own()
    {
        Assert.Equal(8, Marks.Error(0, 0).Children.OfType<Polygon>().Single().Points.Count);
        Assert.Equal(3, Marks.Warning(0, 0).Children.OfType<Polygon>().Single().Points.Count);
        Assert.Empty(Marks.Note(0, 0).Children.OfType<Polygon>());
        Assert.Equal(2.5, Marks.Note(0, 0).Children.OfType<Circle>().Max(c => c.Radius));
    }

    [Fact]
    public void Ticks_are_as_many_as_asked_and_centred()
    {
        var xs = Marks.Ticks(20, 5, 3).Children.Cast<Line>().Select(l => Math.Round((l.X1 + l.X2) / 2, 9)).ToList();
        Assert.Equal([19.0, 20.0, 21.0], xs);
    }

    private static (double Width, double Height) Size(Polygon p) => (
        Math.Round(p.Points.Max(q => q.X) - p.Points.Min(q => q.X), 9),
        Math.Round(p.Points.Max(q => q.Y) - p.Points.Min(q => q.Y), 9));
}
