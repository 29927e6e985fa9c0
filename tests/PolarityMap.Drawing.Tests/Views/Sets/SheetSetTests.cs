using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Tests.Views.Overview;
using PolarityMap.Drawing.Views;
using PolarityMap.Drawing.Views.Index;
using PolarityMap.Drawing.Views.Strands;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.Sets;

/// <summary>
/// A plant on several sheets: nothing is lost, every sheet has a standard size, and every cut names the sheet and zone where the
/// strand goes on. Oracles: the strands of the trace, the sizes of ISO 216 and ASME Y14.1, and the drawn marks themselves, each
/// of which has to find its partner where it says.
/// </summary>
public sealed class SheetSetTests
{
    private static readonly (double, double)[] StandardSizes = [(210, 297), (297, 420), (215.9, 279.4), (279.4, 431.8)];

    private static readonly ViewInput OperaHouse = Plants.OfFile("gallery/opera-house/plant.yaml");

    public static TheoryData<string, SheetDivision> Papers => new()
    {
        { "A4", SheetDivision.Network }, { "A3", SheetDivision.Network }, { "A4", SheetDivision.Room }, { "A3", SheetDivision.Room },
        { "A4", SheetDivision.Trunk }, { "Letter", SheetDivision.Network }, { "Tabloid", SheetDivision.Room }, { "A4", SheetDivision.None },
    };

    [Theory]
    [MemberData(nameof(Papers))]
    public void Every_sheet_has_the_size_that_was_asked_for(string paper, SheetDivision division)
    {
        foreach (DrawingSheet sheet in Drawn(Set(paper, division)))
        {
            (double, double) size = (Math.Min(sheet.WidthMm, sheet.HeightMm), Math.Max(sheet.WidthMm, sheet.HeightMm));
            Assert.Contains(size, StandardSizes);
        }
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void Every_strand_is_on_a_sheet_and_no_sheet_has_a_strand_that_was_not_chosen(string paper, SheetDivision division)
    {
        IReadOnlyList<PlannedSheet> sheets = new StrandsView().Plan(Input(paper, division));
        Assert.Equal(OperaHouse.Selection.Strands.Order(), sheets.SelectMany(s => s.Strands).Distinct().Order());
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("A3")]
    public void Divided_by_network_a_strand_is_on_one_sheet_alone(string paper)
    {
        IReadOnlyList<PlannedSheet> sheets = new StrandsView().Plan(Input(paper, SheetDivision.Network));
        Assert.Equal(128, sheets.Sum(s => s.Strands.Count));
    }

    // The opera house has three rooms. Every strand crosses from the first to the second and from the second to the third, so
    // there are two cuts of each of its 128 strands, each with a mark at both ends.
    [Theory]
    [InlineData("A4")]
    [InlineData("A3")]
    public void Every_mark_of_a_cut_leads_to_its_partner_on_the_sheet_and_in_the_zone_that_it_names(string paper)
    {
        DrawingSheet[] sheets = Drawn(Set(paper, SheetDivision.Room));
        List<Mark>[] marks = [.. sheets.Select(Marks)];
        int count = 0;
        for (int s = 0; s < sheets.Length; s++)
        {
            foreach (Mark mark in marks[s])
            {
                count++;
                int other = mark.Sheet - 1;
                Assert.Contains(marks[other], m => m.Strand == mark.Strand && m.Leaves != mark.Leaves && m.Sheet == s + 1 && mark.Zone == m.OwnZone && m.Zone == mark.OwnZone);
                Assert.Contains(sheets[s].Links, l => l.Sheet == mark.Sheet && l.Area.Y < mark.Y && l.Area.Bottom > mark.Y);
            }
        }

        Assert.Equal(2 * 2 * 128, count);
    }

    // Two strands through thirty cassettes need more bands than A4 takes, so they go on on further sheets.
    [Fact]
    public void Strands_of_one_port_that_fill_more_than_a_sheet_go_on_on_the_next_with_marks()
    {
        ViewInput input = Plants.OfText(Chain(30)) with { Division = SheetDivision.Network, Paper = new PaperChoice([SheetFormat.A4Landscape], false) };
        DrawingSheet[] sheets = Drawn(new StrandsView().Plan(input));
        Assert.True(sheets.Length > 1);
        List<Mark>[] marks = [.. sheets.Select(Marks)];
        Assert.All(marks.SelectMany((m, s) => m.Select(mark => (mark, s))), found =>
            Assert.Contains(marks[found.mark.Sheet - 1], m => m.Strand == found.mark.Strand && m.Sheet == found.s + 1 && m.Leaves != found.mark.Leaves));
        Assert.NotEmpty(marks[0]);
    }

    [Fact]
    public void A_set_begins_with_an_index_that_names_every_other_sheet_and_an_overview()
    {
        IReadOnlyList<PlannedSheet> set = Set("A4", SheetDivision.Network);
        Assert.Equal("Index of sheets", set[0].DocumentType);
        int index = set.Count(s => s.DocumentType == "Index of sheets");
        Assert.Equal("Overview diagram", set[index].DocumentType);
        string[] words = [.. Drawn(set).Take(index).SelectMany(Labels).Select(l => l.Text)];
        for (int i = index; i < set.Count; i++)
            Assert.Contains($"{i + 1}", words);
        Assert.Contains("Parts and cables, network lighting (A4)", words);
        Assert.Contains("Network lighting, strands 1 to 8 (A4)", words);
        Assert.Contains(words, w => w.StartsWith("LX-T:", StringComparison.Ordinal));
    }

    [Fact]
    public void A_column_of_the_index_that_begins_within_a_list_has_its_heading()
    {
        IndexLine[] lines =
        [
            new("", "Sheets") { IsHead = true }, .. Enumerable.Range(2, 9).Select(n => new IndexLine($"{n}", $"sheet {n}")),
            new("", ""), new("", "Parts") { IsHead = true }, .. Enumerable.Range(1, 20).Select(n => new IndexLine("", $"part {n}")),
        ];
        for (int rows = 3; rows < 40; rows++)
        {
            List<List<IndexLine>> columns = IndexLines.InColumns(lines, rows);
            Assert.All(columns, c => Assert.InRange(c.Count, 1, rows));
            Assert.All(columns, c => Assert.True(c[0].IsHead, $"{rows} rows: a column begins with '{c[0].Words}'"));
            Assert.All(columns, c => Assert.False(c[^1].IsHead, $"{rows} rows: a column ends with a heading"));
            Assert.Equal(lines.Where(l => !l.IsHead && !l.IsEmpty), columns.SelectMany(c => c).Where(l => !l.IsHead && !l.IsEmpty));
        }
    }

    // The drawing shows the cord by what it is, the finding by its two ends.
    [Theory]
    [InlineData("F01", true)]
    [InlineData("M01", false)]
    public void A_sheet_explains_the_name_of_a_cord_that_has_none_where_a_finding_says_it(string code, bool explained)
    {
        ViewInput input = Plants.OfFile($"gallery/faults/{code}.yaml", new Choice { Finding = code });
        string[] words = [.. Drawn(SheetSet.Of(input, new StrandsView())).SelectMany(Labels).Select(l => l.Text)];
        Assert.Equal(explained, words.Any(w => w.Contains('~') && w.Contains('/')));
        Assert.Equal(explained, string.Join(' ', words).Contains("X~Y: the cord between X and Y.", StringComparison.Ordinal));
    }

    [Fact]
    public void Sheets_are_numbered_through_and_say_how_many_there_are()
    {
        DrawingSheet[] sheets = Drawn(Set("A4", SheetDivision.Network));
        for (int i = 0; i < sheets.Length; i++)
            Assert.Contains(Labels(sheets[i]), l => l.Text == $"{i + 1} of {sheets.Length}");
    }

    // 288 cassettes of twelve strands, all alike.
    [Fact]
    public void Channels_that_are_alike_are_drawn_once_and_every_strand_is_told()
    {
        ViewInput input = Plants.OfText(Campus(6)) with { Division = SheetDivision.Network, FoldAlike = true, Paper = new PaperChoice([SheetFormat.A4Landscape], false) };
        PlannedSheet sheet = Assert.Single(new StrandsView().Plan(input));
        Assert.Equal(72, sheet.Strands.Count);
        DrawingSheet drawn = sheet.Draw(new SheetPlace(1, 1));
        Assert.Equal(12, Strands(drawn).Count());
        Assert.Contains(Labels(drawn), l => l.Text.Contains("strands 1 to 12; 13 to 24; 25 to 36; 37 to 48; 49 to 60; 61 to 72", StringComparison.Ordinal));
        Assert.Contains(Labels(drawn), l => l.Text == "K-L1…6");
    }

    [Fact]
    public void A_channel_with_a_wrong_cord_is_drawn_apart_from_those_that_are_alike()
    {
        ViewInput faulty = Plants.OfFile("gallery/opera-house/as-built.yaml", new Choice { Network = 0 }) with { Division = SheetDivision.Network, FoldAlike = true, Paper = new PaperChoice([SheetFormat.A3Landscape], false) };
        IReadOnlyList<PlannedSheet> sheets = new StrandsView().Plan(faulty);

        // Four channels of eight strands on this network; one has the wrong cord.
        Assert.Equal(16, Drawn(sheets).Sum(s => Strands(s).Count()));
        Assert.Equal(faulty.Selection.Strands.Order(), sheets.SelectMany(s => s.Strands).Order());
    }

    [Fact]
    public void A_choice_narrows_to_a_link_a_strand_or_a_finding()
    {
        TracedPlant traced = OperaHouse.Traced;
        Assert.Equal(2, Selection.Of(traced, [], new Choice { Link = 3 }).Strands.Count);
        Assert.Equal([5], Selection.Of(traced, [], new Choice { Strand = 5 }).Strands.Select(traced.NumberOf));
        ViewInput found = Plants.OfFile("gallery/opera-house/as-built.yaml", new Choice { Finding = "D02" });
        Assert.Equal([13, 14], found.Selection.Strands.Select(found.Traced.NumberOf));
        Assert.All(found.Findings, f => Assert.Equal("D02", f.Rule.Code));
        Assert.Empty(Selection.Of(traced, [], new Choice { Link = 3, Strand = 1 }).Strands);
    }

    /// <summary>A plant of so many channels of twelve strands, all built alike.</summary>
    private static string Campus(int channels) => $"""
        plant: Campus
        parts:
          SW-L[1..{channels / 3}]: {"{"} kind: duplex interface, ports: 18 {"}"}
          SW-R[1..{channels / 3}]: {"{"} kind: duplex interface, ports: 18 {"}"}
          K-L[1..{channels}]: {"{"} kind: straight cassette, base: 12 {"}"}
          K-R[1..{channels}]: {"{"} kind: straight cassette, base: 12 {"}"}
          T: {"{"} kind: Type-A trunk, base: 12, legs: {channels}, length: 60 m {"}"}
        runs:
          - SW-L[1..{channels / 3}]/1..18, A-to-B cord 2 m, K-L[1..{channels}]/1..6
          - K-L[1..{channels}]/rear, T/1..{channels}, K-R[1..{channels}]/rear
          - K-R[1..{channels}]/1..6, A-to-A cord 2 m, SW-R[1..{channels / 3}]/1..18

        """;

    /// <summary>One link through so many pairs of cassettes in a row.</summary>
    private static string Chain(int pairs)
    {
        var text = new System.Text.StringBuilder("plant: A long chain\nparts:\n  SW-L: duplex interface\n  SW-R: duplex interface\n");
        for (int i = 1; i <= pairs; i++)
            text.Append($"  A{i}: straight cassette\n  B{i}: straight cassette\n  T{i}: {{ kind: Type-A trunk, length: 10 m }}\n");
        text.Append("runs:\n  - SW-L/1, A-to-B cord 2 m, A1/1\n");
        for (int i = 1; i <= pairs; i++)
            text.Append($"  - A{i}/rear, T{i}, B{i}/rear\n  - B{i}/1, A-to-A cord 2 m, {(i < pairs ? $"A{i + 1}/1" : "SW-R/1")}\n");
        return text.ToString();
    }

    private static ViewInput Input(string paper, SheetDivision division)
    {
        SheetFormat[] formats = paper switch
        {
            "A4" => [SheetFormat.A4Landscape, SheetFormat.A4Portrait],
            "A3" => [SheetFormat.A3Landscape, SheetFormat.A3Portrait],
            "Letter" => [SheetFormat.LetterLandscape, SheetFormat.LetterPortrait],
            _ => [SheetFormat.TabloidLandscape, SheetFormat.TabloidPortrait],
        };
        return OperaHouse with
        {
            Division = division == SheetDivision.None ? SheetDivision.Network : division,
            Paper = new PaperChoice(division == SheetDivision.None ? [formats[1]] : formats, MayGrow: false),
        };
    }

    private static IReadOnlyList<PlannedSheet> Set(string paper, SheetDivision division) => SheetSet.Of(Input(paper, division), new StrandsView());

    private static DrawingSheet[] Drawn(IReadOnlyList<PlannedSheet> set) => [.. set.Select((s, i) => s.Draw(new SheetPlace(i + 1, set.Count)))];

    /// <summary>A mark of a cut as drawn: the strand on whose height it stands, where it leads, and the zone it is in.</summary>
    private sealed record Mark(int Strand, bool Leaves, int Sheet, string Zone, string OwnZone, double Y);

    private static List<Mark> Marks(DrawingSheet sheet)
    {
        var marks = new List<Mark>();
        Label[] labels = [.. Labels(sheet)];
        foreach (Label label in labels)
        {
            bool leaves = label.Text.StartsWith("→ /", StringComparison.Ordinal), arrives = label.Text.EndsWith(" →", StringComparison.Ordinal);
            if (!leaves && !arrives)
                continue;
            string[] place = label.Text.Trim('→', ' ', '/').Split('.');
            Label strand = labels.Where(l => Math.Abs(l.BaselineY - label.BaselineY) < 0.01 && l.Text.Contains(' ') && char.IsAsciiDigit(l.Text[0]))
                .MinBy(l => Math.Abs(l.Extent().CentreX - label.Extent().CentreX))!;

            // The zone is that of the edge of the part at which the strand is cut: beyond the label, seen from the mark.
            double edge = leaves ? strand.Extent().X - 2 : strand.Extent().Right + 2;
            marks.Add(new Mark(int.Parse(strand.Text.Split(' ')[0]), leaves, int.Parse(place[0]), place[1], Zone(sheet, edge, label.BaselineY - 1.25), label.BaselineY - 1.25));
        }

        return marks;
    }

    // ISO 5457, edition of 1999 (from memory, as the conventions of this project hold it): fields of 50 mm counted outward from the
    // middle, letters down without I and O, numerals across. The edge of a part may lie a little beside the boundary of a field.
    private static string Zone(DrawingSheet sheet, double x, double y)
    {
        static int Index(double side, double at)
        {
            int count = 2 * Math.Max(1, (int)Math.Round(side / 100, MidpointRounding.AwayFromZero));
            return Math.Clamp((int)Math.Floor((at - (side / 2)) / 50) + (count / 2), 0, count - 1);
        }

        return "ABCDEFGHJKLMNP"[Index(sheet.HeightMm, y)] + (Index(sheet.WidthMm, x) + 1).ToString();
    }

    private static IEnumerable<Label> Labels(DrawingSheet sheet) => sheet.Layers.SelectMany(All).OfType<Label>();

    private static IEnumerable<SceneGroup> Strands(DrawingSheet sheet) => sheet.Layers.Single(l => l.Id == "strands").Children.OfType<SceneGroup>();

    private static IEnumerable<SceneElement> All(SceneElement element) => element is SceneGroup group ? group.Children.SelectMany(All) : [element];
}
