using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Tests.Views.Card;
using PolarityMap.Drawing.Views;
using PolarityMap.Drawing.Views.Labels;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.Labels;

public class LabelViewTests
{
    private const string Channel = """
        plant: Two links over one trunk
        networks:
          stage: { colour: red }
        parts:
          SW-L: { kind: duplex interface, ports: 2, network: stage, room: Equipment room }
          SW-R: { kind: duplex interface, ports: 2, network: stage }
          CAS-L: { kind: U1 cassette, room: Equipment room }
          CAS-R: U1 cassette
          TRUNK: { kind: Type-B trunk, length: 62 m }
          SPARE: { kind: A-to-B cord, length: 5 m }
        runs:
          - SW-L/1..2, A-to-B cord 2 m, CAS-L/1..2
          - CAS-L/rear, TRUNK, CAS-R/rear
          - CAS-R/1..2, A-to-B cord 2 m, SW-R/1..2
        links:
          - SW-L/1..2 to SW-R/1..2
        """;

    public static TheoryData<string> Documents => CardDocuments.All;

    [Theory]
    [MemberData(nameof(Documents))]
    public void Every_cable_end_and_every_port_of_a_plant_has_one_label(string document)
    {
        ViewInput input = CardDocuments.Gallery(document);
        var expected = new List<string>();
        foreach (Part part in input.Traced.Plant.Parts)
        {
            foreach (PortShape port in part.Shape.Ports)
            {
                if (port.Face.Family != ConnectorFamily.Bare || (part.Shape.IsCable && part.Shape.Splices == 0))
                    expected.Add($"Label {part.Name}/{port.Name}");
            }
        }

        Assert.Equal(expected, Draw(input).SelectMany(Stickers).Select(l => l.Title));
    }

    [Theory]
    [MemberData(nameof(Documents))]
    public void Words_and_codes_stay_on_their_label_and_apart(string document)
    {
        ViewInput input = CardDocuments.Gallery(document);
        LabelSheet sheet = LabelSheet.UsualFor(SheetFormat.A4Portrait);
        foreach (DrawingSheet drawn in Draw(input))
        {
            SceneGroup[] labels = [.. Stickers(drawn)];
            for (int i = 0; i < labels.Length; i++)
            {
                Area on = sheet.Place(i, SheetFormat.A4Portrait);
                Label[] words = [.. labels[i].Children.OfType<Label>()];
                Assert.All(words, w => Assert.True(Within(w.Extent(), on) && w.CapHeightMm >= CapHeights.Least, w.Text));
                Assert.True(words[0].CapHeightMm >= CapHeights.Strand);
                Area? code = labels[i].Children.OfType<SceneGroup>().SelectMany(g => g.Children).OfType<Box>().Select(b => (Area?)new Area(b.X, b.Y, b.Width, b.Height)).SingleOrDefault();
                Assert.True(code is { } c && Within(c, on));
                Assert.All(words, w => Assert.True(w.Extent().Right <= code.Value.X));
            }
        }
    }

    // By the runs of the document, as a finger follows them.
    [Theory]
    [InlineData("SW-L/1", "Equipment room | far end SW-R/1 | duplex interface, stage")]
    [InlineData("SW-L/1~CAS-L/1/near", "in SW-L/1, Equipment room | far end CAS-L/1, Equipment room | A-to-B cord, 2 m")]
    [InlineData("SW-L/1~CAS-L/1/far", "in CAS-L/1, Equipment room | far end SW-L/1, Equipment room | A-to-B cord, 2 m")]
    [InlineData("CAS-L/2", "Equipment room | far end CAS-R/2 | U1 cassette")]
    [InlineData("CAS-L/rear", "Equipment room | far end CAS-R/rear | U1 cassette")]
    [InlineData("CAS-L/6", "Equipment room | far end CAS-R/6 | U1 cassette")]
    [InlineData("TRUNK/near", "in CAS-L/rear, Equipment room | far end CAS-R/rear | Type-B trunk, 62 m")]
    [InlineData("TRUNK/far", "in CAS-R/rear | far end CAS-L/rear, Equipment room | Type-B trunk, 62 m")]
    [InlineData("SPARE/near", "in nothing yet | far end SPARE/far | A-to-B cord, 5 m")]
    public void A_label_tells_its_end_and_the_far_end(string address, string expected)
    {
        LabelText label = Texts(CardDocuments.Text(Channel)).Single(t => t.Address == address);
        Assert.Equal(expected, string.Join(" | ", [.. label.Ends, label.About]).Replace('\u00A0', ' '));
    }

    [Fact]
    public void A_choice_leaves_the_labels_of_what_it_passes()
    {
        Assert.Equal(
            ["SW-L/2", "CAS-L/2", "CAS-L/rear", "SW-L/2~CAS-L/2/near", "SW-L/2~CAS-L/2/far", "TRUNK/near", "TRUNK/far", "CAS-R/2", "CAS-R/rear", "CAS-R/2~SW-R/2/near", "CAS-R/2~SW-R/2/far", "SW-R/2"],
            Texts(CardDocuments.Text(Channel, new Choice { Link = 1 })).Select(t => t.Address).OrderBy(a => Order(a)));
        ViewInput whole = CardDocuments.Text(Channel);
        int trunk = whole.Traced.Plant.Parts.ToList().FindIndex(p => p.Name == "TRUNK");
        Assert.Equal(["TRUNK/near", "TRUNK/far"], Texts(CardDocuments.Text(Channel, new Choice { Part = trunk })).Select(t => t.Address));
    }

    [Fact]
    public void Labels_lie_where_the_measures_say()
    {
        var sheet = new LabelSheet(2, 3, 70, 40) { MarginLeft = 15, MarginTop = 20, PitchAcross = 80, PitchDown = 50 };
        ViewInput input = CardDocuments.Text(Channel) with { Labels = new LabelOptions { Sheet = sheet, Frames = true } };
        Box[] frames = [.. Draw(input)[0].Layers.Single(l => l.Id == "frames").Children.OfType<Box>()];
        Assert.Equal([(15, 20), (95, 20), (15, 70), (95, 70), (15, 120), (95, 120)], frames.Select(f => (f.X, f.Y)));
        Assert.All(frames, f => Assert.Equal((70, 40), (f.Width, f.Height)));
    }

    [Fact]
    public void The_usual_sheets_are_centred_and_within_what_a_printer_reaches()
    {
        foreach (SheetFormat paper in (SheetFormat[])[SheetFormat.A4Portrait, SheetFormat.LetterPortrait])
        {
            var sheet = LabelSheet.UsualFor(paper);
            Assert.Null(sheet.Fault(paper));
            Area first = sheet.Place(0, paper), last = sheet.Place(sheet.Count - 1, paper);
            Assert.Equal(first.X, paper.WidthMm - last.Right, 6);
            Assert.Equal(first.Y, paper.HeightMm - last.Bottom, 6);
            Assert.True(first.Y > 6);
        }
    }

    [Theory]
    [InlineData(4, 8, 63.5, 33.9, "reach from")]
    [InlineData(3, 9, 63.5, 33.9, "reach from")]
    [InlineData(3, 8, 15, 33.9, "takes no words")]
    [InlineData(3, 8, 63.5, 5, "takes no words")]
    public void Labels_that_do_not_go_on_the_paper_are_refused(int columns, int rows, double width, double height, string why) =>
        Assert.Contains(why, Assert.Throws<LabelFitException>(() => Draw(CardDocuments.Text(Channel) with { Labels = new LabelOptions { Sheet = new LabelSheet(columns, rows, width, height) } })).Message, StringComparison.Ordinal);

    [Fact]
    public void Labels_that_overlap_are_refused() =>
        Assert.Contains("overlap", new LabelSheet(3, 8, 63.5, 33.9) { PitchAcross = 60 }.Fault(SheetFormat.A4Portrait), StringComparison.Ordinal);

    [Fact]
    public void Words_that_do_not_fit_are_refused_and_never_cut()
    {
        string message = Assert.Throws<LabelFitException>(() => Draw(CardDocuments.Text(Channel) with { Labels = new LabelOptions { Sheet = new LabelSheet(3, 8, 24, 10) } })).Message;
        Assert.Contains("the label of SW-L/1", message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_flat_label_goes_without_a_code_and_the_sheet_says_so()
    {
        ViewInput input = CardDocuments.Text(Channel) with { Labels = new LabelOptions { Sheet = new LabelSheet(2, 18, 90, 15.5) } };
        DrawingSheet drawn = Draw(input)[0];
        Assert.Contains("leave no room for it", drawn.Description, StringComparison.Ordinal);
        Assert.Contains(Stickers(drawn), l => l.Children.OfType<SceneGroup>().Any());
        Assert.Contains(Stickers(drawn), l => !l.Children.OfType<SceneGroup>().Any());
    }

    [Fact]
    public void The_test_page_comes_first_with_all_outlines_and_a_bar_of_100_mm()
    {
        ViewInput input = CardDocuments.Text(Channel) with { Labels = new LabelOptions { TestPage = true } };
        IReadOnlyList<DrawingSheet> sheets = Draw(input);
        Assert.Equal(24, sheets[0].Layers[0].Children.OfType<Box>().Count());
        Assert.Empty(sheets[1].Layers[0].Children);
        Assert.Contains(sheets[0].Layers[1].Children.OfType<Line>(), l => Math.Abs(Math.Abs(l.X2 - l.X1) - 100) < 1e-9);
    }

    private static int Order(string address) => Array.FindIndex(
        ["SW-L/2", "CAS-L/2", "CAS-L/rear", "SW-L/2~CAS-L/2/near", "SW-L/2~CAS-L/2/far", "TRUNK/near", "TRUNK/far", "CAS-R/2", "CAS-R/rear", "CAS-R/2~SW-R/2/near", "CAS-R/2~SW-R/2/far", "SW-R/2"],
        a => a == address);

    private static List<LabelText> Texts(ViewInput input) => LabelTexts.Of(input.Traced, input.Selection);

    private static bool Within(Area inner, Area outer) => inner.X >= outer.X && inner.Y >= outer.Y && inner.Right <= outer.Right && inner.Bottom <= outer.Bottom;

    private static IEnumerable<SceneGroup> Stickers(DrawingSheet sheet) => sheet.Layers.Single(l => l.Id == "stickers").Children.OfType<SceneGroup>();

    private static IReadOnlyList<DrawingSheet> Draw(ViewInput input)
    {
        IReadOnlyList<PlannedSheet> sheets = new LabelsView().Plan(input);
        return [.. sheets.Select((s, i) => s.Draw(new SheetPlace(i + 1, sheets.Count)))];
    }
}
