using PolarityMap.Core.Parts;
using PolarityMap.Drawing.Scene;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.EndFace;

/// <summary>Where things are on a face that is seen looking into its own ferrule with key up.</summary>
public sealed class FaceGeometryTests
{
    /// <summary>Left to right with key up, second row below: TIA-604-5, IEC 61754-7 (one row five public sources, two rows one).</summary>
    [Theory]
    [InlineData(12, "Type-A", 1, 12)]
    [InlineData(24, "fully-reversed", 2, 12)]
    public void Positions_count_from_the_left_and_the_second_row_goes_on_below(int fibres, string type, int rows, int columns)
    {
        DrawingSheet sheet = FacePlants.RearAndTrunk(fibres, type, Keying.Aligned).Draw()[0];
        foreach (string id in (string[])["kind-1-left", "kind-1-right"])
        {
            DrawnPlace[] places = Faces.Places(sheet, id);
            Assert.Equal(Enumerable.Range(1, rows * columns).Select(n => $"{n}"), places.Select(p => p.Name));
            for (int i = 1; i < places.Length; i++)
            {
                bool sameRow = i % columns != 0;
                Assert.Equal(sameRow, places[i].Circle.CentreX > places[i - 1].Circle.CentreX);
                Assert.Equal(sameRow, places[i].Circle.CentreY == places[i - 1].Circle.CentreY);
                Assert.True(places[i].Circle.CentreY >= places[i - 1].Circle.CentreY);
            }
        }
    }

    /// <summary>
    /// Two faces look at each other, so left meets right: with keys aligned a place meets that in the same row and the mirrored
    /// column; half a turn mirrors both once more. Checked on the circles as drawn, for every ferrule.
    /// </summary>
    [Theory]
    [InlineData(12, "Type-B", Keying.Aligned)]
    [InlineData(12, "Type-B", Keying.Opposed)]
    [InlineData(16, "Type-B", Keying.Aligned)]
    [InlineData(16, "Type-B", Keying.Opposed)]
    [InlineData(24, "fully-reversed", Keying.Aligned)]
    [InlineData(24, "fully-reversed", Keying.Opposed)]
    [InlineData(32, "fully-reversed", Keying.Aligned)]
    [InlineData(32, "fully-reversed", Keying.Opposed)]
    public void What_meets_lies_in_the_mirrored_column_and_when_turned_in_the_mirrored_row(int fibres, string type, Keying keys)
    {
        DrawingSheet sheet = FacePlants.RearAndTrunk(fibres, type, keys).Draw()[0];
        DrawnPlace[] left = Faces.Places(sheet, "kind-1-left");
        DrawnPlace[] right = Faces.Places(sheet, "kind-1-right");
        Box a = Faces.Outline(sheet, "kind-1-left");
        Box b = Faces.Outline(sheet, "kind-1-right");
        string[] meets = fibres > 16 ? ["kind-1-meets-1", "kind-1-meets-2"] : ["kind-1-meets"];
        List<(string Upper, string Lower)> pairs = [.. meets.SelectMany(id => Faces.Pairs(sheet, id))];
        Assert.Equal(fibres, pairs.Count);
        double middle = left.Average(p => p.Circle.CentreY) - a.Y;
        foreach ((string upper, string lower) in pairs)
        {
            Circle own = left.Single(p => p.Name == upper).Circle;
            Circle other = right.Single(p => p.Name == lower).Circle;
            double fromLeft = own.CentreX - a.X;
            double height = own.CentreY - a.Y;
            Assert.Equal(keys == Keying.Aligned ? b.X + b.Width - fromLeft : b.X + fromLeft, other.CentreX, 6);
            Assert.Equal(keys == Keying.Aligned ? height : (2 * middle) - height, other.CentreY - b.Y, 6);
        }
    }

    /// <summary>Key up is the position from which everything is counted: the tab stands on the top edge, in the middle of ferrules of 12 (one source).</summary>
    [Theory]
    [InlineData(8, "Type-B")]
    [InlineData(12, "Type-B")]
    [InlineData(24, "fully-reversed")]
    public void The_key_stands_on_top_in_the_middle(int fibres, string type)
    {
        DrawingSheet sheet = FacePlants.RearAndTrunk(fibres, type, Keying.Opposed).Draw()[0];
        foreach (string id in (string[])["kind-1-left", "kind-1-right"])
        {
            Box outline = Faces.Outline(sheet, id);
            Polygon key = Assert.Single(Faces.Group(sheet, id).Children.OfType<Polygon>());
            Assert.Equal(outline.Y, key.Points.Max(p => p.Y), 6);
            Assert.True(key.Points.Min(p => p.Y) < outline.Y);
            Assert.Equal(outline.X + (outline.Width / 2), (key.Points.Min(p => p.X) + key.Points.Max(p => p.X)) / 2, 6);
        }
    }

    /// <summary>That the key of 16-wide ferrules is not in the middle: TIA-604-18 (implied by one source). To which side is not known.</summary>
    [Theory]
    [InlineData(16, "Type-B")]
    [InlineData(32, "fully-reversed")]
    public void The_key_of_a_wide_ferrule_is_not_in_the_middle(int fibres, string type)
    {
        DrawingSheet sheet = FacePlants.RearAndTrunk(fibres, type, Keying.Aligned).Draw()[0];
        Box outline = Faces.Outline(sheet, "kind-1-left");
        Polygon key = Assert.Single(Faces.Group(sheet, "kind-1-left").Children.OfType<Polygon>());
        double middle = outline.X + (outline.Width / 2);
        Assert.True(key.Points.All(p => p.X < middle) || key.Points.All(p => p.X > middle));
    }

    /// <summary>
    /// Plugged together, keys aligned, the two offset keys lie at opposite sides, as each is on the same side of its own face; turned
    /// over they come to lie above each other. Geometry of the half turn.
    /// </summary>
    [Theory]
    [InlineData(Keying.Aligned, false)]
    [InlineData(Keying.Opposed, true)]
    public void Offset_keys_lie_as_the_half_turn_puts_them(Keying keys, bool above)
    {
        DrawingSheet sheet = FacePlants.RearAndTrunk(16, "Type-B", keys).Draw()[0];
        Box[] boxes = [.. Faces.Group(sheet, "kind-1-meets").Children.OfType<Box>()];
        Box[] marks = [.. boxes.Where(b => b.Height < 2)];
        double middle = boxes[0].X + (boxes[0].Width / 2);
        Assert.Equal(2, marks.Length);
        Assert.Equal(above, Math.Sign(marks[0].X + (marks[0].Width / 2) - middle) == Math.Sign(marks[1].X + (marks[1].Width / 2) - middle));
    }

    /// <summary>Pins and holes: two, outside the rows, at their middle height; the cassette has pins and the trunk holes (four public sources).</summary>
    [Theory]
    [InlineData(12, "Type-B")]
    [InlineData(24, "fully-reversed")]
    public void Pins_are_filled_and_holes_open_at_both_ends_of_the_rows(int fibres, string type)
    {
        DrawingSheet sheet = FacePlants.RearAndTrunk(fibres, type, Keying.Aligned).Draw()[0];
        foreach ((string id, Colour fill) in new[] { ("kind-1-left", Palette.Ink), ("kind-1-right", Palette.Paper) })
        {
            Circle[] pins = [.. Faces.Pins(sheet, id).OrderBy(p => p.CentreX)];
            DrawnPlace[] places = Faces.Places(sheet, id);
            Box outline = Faces.Outline(sheet, id);
            Assert.Equal(2, pins.Length);
            Assert.All(pins, p => Assert.Equal(fill, p.Fill));
            Assert.True(pins[0].CentreX + pins[0].Radius < places.Min(p => p.Circle.CentreX - p.Circle.Radius));
            Assert.True(pins[1].CentreX - pins[1].Radius > places.Max(p => p.Circle.CentreX + p.Circle.Radius));
            Assert.True(pins[0].CentreX - pins[0].Radius > outline.X && pins[1].CentreX + pins[1].Radius < outline.X + outline.Width);
            Assert.All(pins, p => Assert.Equal(outline.Y + (outline.Height / 2), p.CentreY, 6));
        }
    }

    /// <summary>A left, B right, keys up (TIA-568-B.3, one source); the transmitter is left, so it is A (two public sources).</summary>
    [Fact]
    public void A_is_left_and_the_transmitter_of_an_interface_is_A()
    {
        DrawingSheet sheet = FacePlants.Duplex().Draw()[0];
        DrawnPlace[] port = Faces.Places(sheet, "kind-1-left");
        Assert.Equal(["A", "B"], port.Select(p => p.Name));
        Assert.Equal(["Tx", "Rx"], port.Select(p => p.Letters));
        Assert.True(port[0].Circle.CentreX < port[1].Circle.CentreX);
        Assert.Equal(2, Faces.Group(sheet, "kind-1-left").Children.OfType<Polygon>().Count());
    }

    [Fact]
    public void Only_the_turned_connector_is_said_to_be_turned_over()
    {
        DrawingSheet opposed = FacePlants.RearAndTrunk(12, "Type-A", Keying.Opposed).Draw()[0];
        string[] lines = [.. Faces.All(opposed).OfType<Label>().Select(l => l.Text)];
        Assert.Contains("TRUNK/near, key down", lines);
        Assert.Contains("CAS/rear, key up", lines);
        Assert.Contains("turned over in the adapter", string.Join(' ', lines));
        DrawingSheet aligned = FacePlants.RearAndTrunk(12, "Type-A", Keying.Aligned).Draw()[0];
        Assert.DoesNotContain("turned over in", Faces.Words(aligned));
    }

    /// <summary>Every face says from where it is seen.</summary>
    [Fact]
    public void Every_face_is_said_to_be_seen_from_its_own_end()
    {
        string words = Faces.Words(FacePlants.Duplex().Draw()[0]).Replace('\n', ' ');
        Assert.Contains("Seen looking into its port, key up.", words);
        Assert.Contains("Plug, seen looking into its ferrule, key up.", words);
        Assert.Contains("Inner plug, seen looking into its ferrule, key up.", words);
    }
}
