using PolarityMap.Core.Parts;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Strands;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.EndFace;

/// <summary>
/// Colours behind the places. The sequence is that of TIA-598 (more than eight public sources), the letters are those of IEC 60757
/// as this project prints them.
/// </summary>
public sealed class FaceColourTests
{
    private static readonly string[] Dozen = ["BU", "OG", "GN", "BN", "GY", "WH", "RD", "BK", "YE", "VT", "PK", "TQ"];

    [Fact]
    public void The_near_end_of_a_trunk_shows_every_fibre_once_in_the_order_of_the_sequence()
    {
        DrawingSheet sheet = FacePlants.RearAndTrunk(12, "Type-B", Keying.Aligned).Draw()[0];
        Assert.Equal(Dozen, Faces.Places(sheet, "kind-1-right").Select(p => p.Letters));
    }

    /// <summary>Type-B takes 1 to 12, 2 to 11 and so on (more than eight public sources), Type-C 1 to 2 and 2 to 1.</summary>
    [Theory]
    [InlineData("Type-A", "BU OG GN BN GY WH RD BK YE VT PK TQ")]
    [InlineData("Type-B", "TQ PK VT YE BK RD WH GY BN GN OG BU")]
    [InlineData("Type-C", "OG BU BN GN WH GY BK RD VT YE TQ PK")]
    public void The_far_end_shows_the_fibres_where_the_trunk_takes_them(string type, string expected)
    {
        DrawingSheet sheet = new FaceBench()
            .Add("CAS", "cassette", v => v.Set("wiring", "straight"))
            .Add("TRUNK", "trunk", v => v.Set("type", type))
            .Mate("TRUNK/far", "CAS/rear").Draw()[0];
        Assert.Equal(expected.Split(' '), Faces.Places(sheet, "kind-1-right").Select(p => p.Letters));
    }

    /// <summary>Fibres 13 to 24 have the same colours with a tracer (three public sources).</summary>
    [Fact]
    public void The_second_dozen_has_the_same_letters_and_a_tick()
    {
        DrawingSheet sheet = FacePlants.RearAndTrunk(24, "fully-reversed", Keying.Aligned).Draw()[0];
        DrawnPlace[] places = Faces.Places(sheet, "kind-1-right");
        Assert.Equal([.. Dozen, .. Dozen], places.Select(p => p.Letters));
        Assert.Equal([.. Enumerable.Repeat(0, 12), .. Enumerable.Repeat(1, 12)], places.Select(p => p.Ticks));
    }

    /// <summary>Eight fibres sit at 1 to 4 and 9 to 12 (four public sources).</summary>
    [Fact]
    public void Of_eight_fibres_the_middle_places_are_hatched_and_have_no_letters()
    {
        DrawingSheet sheet = FacePlants.RearAndTrunk(8, "Type-B", Keying.Aligned).Draw()[0];
        DrawnPlace[] places = Faces.Places(sheet, "kind-1-right");
        Assert.Equal(["BU", "OG", "GN", "BN", "", "", "", "", "GY", "WH", "RD", "BK"], places.Select(p => p.Letters));
        Assert.Equal(["5", "6", "7", "8"], places.Where(p => p.Marks.OfType<Line>().Any()).Select(p => p.Name));
    }

    [Fact]
    public void The_hatching_stays_inside_its_circle()
    {
        DrawingSheet sheet = FacePlants.RearAndTrunk(8, "Type-B", Keying.Aligned).Draw()[0];
        DrawnPlace place = Faces.Places(sheet, "kind-1-right")[5];
        foreach (Line line in place.Marks.OfType<Line>())
        {
            foreach ((double x, double y) in new[] { (line.X1, line.Y1), (line.X2, line.Y2) })
                Assert.True(Math.Sqrt(Math.Pow(x - place.Circle.CentreX, 2) + Math.Pow(y - place.Circle.CentreY, 2)) <= place.Circle.Radius + 1e-9);
        }
    }

    [Fact]
    public void The_fill_of_a_place_is_that_of_its_letters_and_its_casing_is_dark()
    {
        DrawingSheet sheet = FacePlants.RearAndTrunk(12, "Type-B", Keying.Aligned).Draw()[0];
        foreach (DrawnPlace place in Faces.Places(sheet, "kind-1-right"))
            Assert.True(Colour.Contrast(place.Circle.Stroke!.Value, Palette.Paper) >= 3);
        Circle white = Faces.Places(sheet, "kind-1-right").Single(p => p.Letters == "WH").Circle;
        Circle blue = Faces.Places(sheet, "kind-1-right").Single(p => p.Letters == "BU").Circle;
        Assert.Equal(Palette.Paper, white.Fill);
        Assert.True(blue.Fill!.Value.B > blue.Fill.Value.R && blue.Fill.Value.B > blue.Fill.Value.G);
    }

    /// <summary>A leg has the two fibres that the harness brings it: leg k A from 13 - k, B from k (derived and proved in the fact sheet).</summary>
    [Fact]
    public void A_leg_of_a_harness_has_the_colours_of_its_two_fibres()
    {
        DrawingSheet sheet = FacePlants.Harness().Draw()[0];
        DrawnPlace[] leg = Faces.Places(sheet, "kind-2-right");
        Assert.Equal(["BK", "BU"], leg.Select(p => p.Letters));
        Assert.Contains("SW/1 with H/leg1, and 3 alike. Fibre colours are those of this one.", Faces.Words(sheet).Replace('\n', ' '));
    }

    /// <summary>A splice has no fibre of its own, and nothing says which colours the fibres of a duplex cord or inside a cassette have.</summary>
    [Fact]
    public void No_colour_is_made_up()
    {
        DrawingSheet bare = FacePlants.Bare(8).Draw()[0];
        Assert.All(Faces.Places(bare, Joint(bare)), p => Assert.Equal("", p.Letters));
        DrawingSheet duplex = FacePlants.Duplex().Draw()[0];
        Assert.All(Faces.Places(duplex, "kind-2-left").Concat(Faces.Places(duplex, "kind-2-right")), p => Assert.Equal("", p.Letters));
    }

    /// <summary>The face and the strand sheet must not tell two stories of one fibre.</summary>
    [Theory]
    [InlineData(8, "Type-B")]
    [InlineData(12, "Type-C")]
    [InlineData(24, "rows-exchanged")]
    public void A_place_has_the_colour_that_its_strand_has_on_the_strand_sheet(int fibres, string type)
    {
        FaceBench bench = FacePlants.TrunkBetweenCassettes(fibres, type, Keying.Opposed);
        TracedPlant traced = bench.Trace();
        List<DrawingSheet> sheets = bench.Draw();
        int kinds = 0;
        foreach (DrawingSheet sheet in sheets)
        {
            foreach (SceneGroup face in Faces.All(sheet).OfType<SceneGroup>().Where(g => g.Id is { } id && id.EndsWith("-right", StringComparison.Ordinal)))
            {
                string address = kinds++ == 0 ? "near" : "far";
                int part = Enumerable.Range(0, traced.Plant.Parts.Count).Single(p => traced.Plant.Parts[p].Name == "TRUNK");
                int port = traced.Plant.Parts[part].Shape.FindPort(address);
                foreach (DrawnPlace place in Faces.Places(sheet, face.Id!).Where(p => p.Letters.Length > 0))
                {
                    int position = traced.Graph.PositionOf(new Core.Plants.PortRef(part, port), int.Parse(place.Name));
                    Assert.Equal(StrandColours.Of(traced, traced.StrandOf(position)).Code, place.Letters);
                }
            }
        }

        Assert.True(kinds is 1 or 2);
    }

    private static string Joint(DrawingSheet sheet) =>
        Faces.Places(sheet, "kind-1-left").All(p => p.Letters.Length == 0) ? "kind-1-left" : "kind-1-right";
}
