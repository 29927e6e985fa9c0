using PolarityMap.Core.Checks;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Tests.Views.Overview;
using PolarityMap.Drawing.Views;
using PolarityMap.Drawing.Views.Strands;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.Strands;

/// <summary>What a stranger reads off a strand sheet besides its lines, against what the documents say, written down by hand.</summary>
public sealed class ReadingTests
{
    // Method U1: a Type-B trunk between cassettes through Type-A adapters, both keys opposed (TIA-568.3-E). The cassettes stand
    // key up at both ends, as on the end-face sheets, so both plugs of the trunk are turned over.
    [Fact]
    public void Keys_of_fixed_parts_stand_up_and_the_plugs_in_them_hang_down_where_keys_are_opposed()
    {
        DrawingSheet sheet = Drawn("gallery/methods/duplex-U1.yaml");
        bool[] turned = [.. Keys(sheet).OrderBy(k => k.X).Select(k => k.IsDown)];
        Assert.Equal([false, true, true, false], turned);
    }

    // Method B has aligned keys at both ends (TIA-568), so that no plug is turned over.
    [Fact]
    public void No_key_hangs_down_where_keys_are_aligned() =>
        Assert.Equal([false, false, false, false], Keys(Drawn("gallery/methods/duplex-B.yaml")).Select(k => k.IsDown));

    // The catalogue's cassettes have guide pins and its trunks holes; by hand, from the parts of the document.
    [Fact]
    public void Each_array_plug_says_whether_it_has_guide_pins()
    {
        DrawingSheet sheet = Drawn("gallery/methods/duplex-U1.yaml");
        double legend = Top(sheet, "legend");
        Circle[] dots = [.. Of<Circle>(sheet).Where(c => c.Radius is > 0.4 and < 0.6 && c.CentreY < legend).OrderBy(c => c.CentreX)];
        Assert.Equal([true, false, false, true], dots.Select(d => d.Fill == Palette.Ink));
        Assert.Contains(Words(sheet), w => w == "guide pins");
        Assert.Contains(Words(sheet), w => w == "pin holes");
    }

    [Fact]
    public void An_adapter_in_which_two_cords_meet_has_its_address() =>
        Assert.Equal(["PANEL/1", "PANEL/2"], Words(Drawn("gallery/faults/S05.yaml")).Where(w => w.StartsWith("PANEL/", StringComparison.Ordinal)).Order());

    [Fact]
    public void The_foot_tells_networks_apart_where_a_sheet_has_several() =>
        Assert.Contains("Networks: lighting (red, key K1): strands 1, 2; sound (blue, key K1): strands 3, 4.", Words(Drawn("gallery/faults/S07.yaml")));

    [Fact]
    public void The_foot_of_a_sheet_of_one_network_names_none() =>
        Assert.DoesNotContain(Words(Drawn("gallery/faults/D05.yaml")), w => w.StartsWith("Networks", StringComparison.Ordinal));

    [Fact]
    public void Plugs_with_nothing_at_the_other_side_of_their_adapter_are_told() =>
        Assert.Contains("Open plugs sit in PANEL/1, PANEL/2, with nothing at the other side.", Words(Drawn("gallery/faults/W03.repaired.yaml", dark: true)));

    // Each exchanged leg has a plug at both ends, and the sheet cannot know which end was mixed up.
    [Fact]
    public void Exchanged_legs_have_one_sign_at_each_of_their_four_plugs()
    {
        DrawingSheet sheet = Drawn("gallery/faults/D05.yaml");
        double left = Of<Label>(sheet).Where(l => l.Text == "SW-R").Min(l => l.X) - 10;
        Assert.Equal(4, Of<Label>(sheet).Count(l => l.Text == "D05" && l.X < left));
    }

    // A dashed line on the strand it leaves would not be seen.
    [Theory]
    [InlineData("D03")]
    [InlineData("D05")]
    public void An_expected_way_lies_on_no_level_stretch_of_a_strand(string code)
    {
        ViewInput input = Plants.OfFile($"gallery/faults/{code}.yaml");
        DrawingSheet sheet = Drawn(input with { ExpectedEnds = ExpectedEnds.Of(CheckReport.Of(input.Traced).Context) });
        Curve[] dashed = [.. sheet.Layers.Single(l => l.Id == "expected").Children.OfType<Curve>().Where(c => c.Dash != DashKind.Continuous)];
        Assert.NotEmpty(dashed);
        List<(Point From, Point To)> level = [.. Of<StrandPath>(sheet).SelectMany(p => Level(p.Route))];
        foreach ((Point from, Point to) in dashed.SelectMany(d => Level(d.Route)))
        {
            Assert.DoesNotContain(level, l => Math.Abs(l.From.Y - from.Y) < 1.3 && Math.Min(l.To.X, to.X) - Math.Max(l.From.X, from.X) > 0.5);
        }
    }

    // Zones 1, 5, 9 and 13 of the opera house are alike, and so are 2, 6, 10 and 14.
    [Fact]
    public void A_name_for_several_parts_tells_their_steps()
    {
        ViewInput input = Plants.OfFile("gallery/opera-house/plant.yaml", new Choice { Network = 0 }) with { FoldAlike = true, Division = SheetDivision.Network, Paper = new PaperChoice([SheetFormat.A3Landscape], false) };
        string[] words = [.. new StrandsView().Plan(input).SelectMany(s => Words(s.Draw(new SheetPlace(1, 1))))];
        Assert.Contains("DC1, 5…13", words);
        Assert.DoesNotContain(words, w => w.StartsWith("DC1…", StringComparison.Ordinal));
    }

    // On site cords were exchanged between networks, legs and cords as well: a strand keeps the number of the switch position that it
    // begins at, so that the two sets of sheets can be laid side by side.
    [Fact]
    public void What_is_plugged_otherwise_on_site_changes_no_number()
    {
        TracedPlant designed = Plants.OfFile("gallery/opera-house/plant.yaml").Traced, built = Plants.OfFile("gallery/opera-house/as-built.yaml").Traced;
        Assert.Equal(Starts(designed), Starts(built));

        static IEnumerable<(int, string)> Starts(TracedPlant traced) =>
            Enumerable.Range(0, traced.Strands.Count).Where(traced.IsActive).Select(s => (traced.NumberOf(s), traced.Address(traced.Strands[s][0]))).Order();
    }

    [Fact]
    public void A_part_that_is_there_once_and_drawn_twice_is_said_to_be_one() =>
        Assert.Contains("SW-L is one part, drawn twice.", Words(Drawn("gallery/faults/P04.yaml")));

    // Two A-to-B cords and a panel: the crossing is in the first cord, and the last one is twisted, so that no two lines cross in
    // free paper.
    [Fact]
    public void A_chain_of_two_cords_crosses_in_a_cord_and_not_in_free_paper()
    {
        DrawingSheet sheet = Drawn("gallery/faults/S05.yaml");
        double[] turns = [.. Of<StrandPath>(sheet).Take(4).SelectMany(p => Turns(p.Route))];
        Area[] boxes = [.. Elements([sheet.Layers.Single(l => l.Id == "parts")]).OfType<Box>().Select(b => new Area(b.X, b.Y, b.Width, b.Height))];
        Assert.NotEmpty(turns);
        Assert.All(turns, x => Assert.Contains(boxes, b => b.X < x && x < b.Right));
    }

    /// <summary>Where a route leaves its height.</summary>
    private static IEnumerable<double> Turns(Route route)
    {
        IReadOnlyList<Point> points = route.Flatten(0.05);
        for (int i = 1; i < points.Count; i++)
        {
            if (Math.Abs(points[i].Y - points[i - 1].Y) > 0.2)
                yield return points[i].X;
        }
    }

    private static IEnumerable<(Point, Point)> Level(Route route)
    {
        Point from = route.Start;
        foreach (RouteSegment segment in route.Segments)
        {
            if (!segment.IsCurve && Math.Abs(segment.End.Y - from.Y) < 1e-6 && segment.End.X - from.X > 1)
                yield return (from, segment.End);
            from = segment.End;
        }
    }

    private static DrawingSheet Drawn(string document, bool dark = false) =>
        Drawn(dark ? Plants.OfFile(document, new Choice { WithDark = true }) : Plants.OfFile(document));

    private static DrawingSheet Drawn(ViewInput input) =>
        new StrandsView().Plan(input with { Division = SheetDivision.None, Paper = new PaperChoice([SheetFormat.A3Landscape], true) }).Single().Draw(new SheetPlace(1, 1));

    private static IEnumerable<(double X, bool IsDown)> Keys(DrawingSheet sheet)
    {
        double legend = Top(sheet, "legend");
        return Of<Polygon>(sheet).Where(p => p.Points.Count == 4 && p.Points[0].Y < legend - 1).Select(p => (p.Points[0].X, p.Points[1].Y > p.Points[0].Y));
    }

    private static double Top(DrawingSheet sheet, string layer) =>
        Elements([sheet.Layers.Single(l => l.Id == layer)]).OfType<Label>().Min(l => l.BaselineY) - 4;

    private static IEnumerable<string> Words(DrawingSheet sheet) => Of<Label>(sheet).Select(l => l.Text);

    private static IEnumerable<T> Of<T>(DrawingSheet sheet) => Elements(sheet.Layers).OfType<T>();

    private static IEnumerable<SceneElement> Elements(IEnumerable<SceneElement> elements) =>
        elements.SelectMany(e => e is SceneGroup group ? Elements(group.Children) : [e]);
}
