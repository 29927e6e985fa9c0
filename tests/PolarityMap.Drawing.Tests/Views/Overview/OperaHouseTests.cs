using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views;
using PolarityMap.Drawing.Views.Overview;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.Overview;

/// <summary>
/// The opera house of the gallery, counted by hand from its document: per network a switch, 4 cassettes, a trunk of 8 legs of
/// which 4 are spare, 4 cassettes, 3 times 16 cords of 2 m, 0.5 m and 3 m, 16 devices; shared by the four 16 zone boxes, 16 desk
/// cables of 25 m and 16 outlets. Each network has 16 links of 2 strands.
/// </summary>
public sealed class OperaHouseTests
{
    private const string Document = "gallery/opera-house/plant.yaml";

    private static readonly string[] s_networks = ["lighting", "sound", "machinery", "office"];

    [Fact]
    public void Every_group_has_the_counts_of_the_document()
    {
        OverviewFit fit = Plants.Fit(Plants.OfFile(Document));

        // 4 networks times (switch, cassettes, cassettes, devices), zone boxes, outlets.
        Assert.Equal(18, fit.Chart.Columns.Sum(c => c.Count));
        Assert.Equal([4, 4, 4, 1, 1, 4], fit.Chart.Columns.Select(c => c.Count));
        Assert.All(fit.Chart.Columns.SelectMany(c => c), box => Assert.Equal(box.Networks.Count == 4 ? 128 : 32, box.Strands));

        // 4 times (3 lines of cords, a trunk), and the desk cables.
        Assert.Equal(17, fit.Chart.Lines.Count);
        Assert.Equal(12, fit.Chart.Lines.Count(l => l.Cables.Count == 16 && l.Cables.TrueForAll(c => c.Fibres == 2)));
        Assert.Equal(4, fit.Chart.Lines.Count(l => l.Cables is [{ Fibres: 32, Legs: 0b1111 }]));
        Assert.Single(fit.Chart.Lines, l => l.Cables.Count == 16 && l.Cables.TrueForAll(c => c.Fibres == 8));
    }

    // As found on site two strands of machinery come out at office, and two of office at machinery.
    [Theory]
    [InlineData(Document, false)]
    [InlineData("gallery/opera-house/as-built.yaml", true)]
    public void Where_strands_join_two_networks_the_sheet_says_that_they_count_twice(string document, bool said) =>
        Assert.Equal(said, Plants.Fit(Plants.OfFile(document)).Foot.Any(l => l.Text == "A strand that joins two networks counts in both."));

    [Fact]
    public void The_sheet_says_the_totals_of_the_document()
    {
        DrawingSheet sheet = Plants.Sheet(Plants.OfFile(Document));

        // Parts: 4 x (1 + 4 + 4 + 16) + 16 + 16 = 132; cables: 4 x (48 + 1) + 16 = 212; cords 4 x 16 x 5.5 m; trunks 4 x 62 m + 16 x 25 m.
        Assert.Equal(
            "Overview diagram of 132 parts, 212 cables, 128 strands of 4 networks, from left to right. Cables: 192 x cord A-to-B, 352 m in all; 20 x trunk Type-B, 648 m in all. No findings.",
            sheet.Description);
        Assert.Equal("Opera house, four networks to sixteen desks", sheet.Title);
    }

    [Fact]
    public void Each_network_is_named_with_its_colour_in_words()
    {
        IReadOnlyList<string> words = new DrawnSheet(Plants.Sheet(Plants.OfFile(Document))).Words("labels");
        foreach (string word in (string[])[.. s_networks, "red", "pink", "white", "grey"])
            Assert.Contains(word, words);
    }

    [Fact]
    public void Cables_are_told_by_number_fibres_legs_and_length()
    {
        DrawnSheet sheet = new(Plants.Sheet(Plants.OfFile(Document)));
        IReadOnlyList<string> words = sheet.Words("labels");
        string all = string.Join(' ', words);
        Assert.Equal(12, words.Count(w => w == "2"));
        Assert.Equal(4, words.Count(w => w == "32"));
        Assert.Equal(1, words.Count(w => w == "8"));
        Assert.Contains("LX-T 4 legs of trunk Type-B 62 m 4 legs spare", all, StringComparison.Ordinal);
        Assert.Contains("DC1 … DC16 16 x trunk Type-B 25 m", all, StringComparison.Ordinal);
        Assert.Contains("16 x cord A-to-B 0.5 m", all, StringComparison.Ordinal);
        string boxes = string.Join(' ', sheet.Words("parts"));
        Assert.Contains("LX-K1 … LX-K4 4 x cassette U1 +Equipment room 32 strands", boxes, StringComparison.Ordinal);
        Assert.Contains("ZB1 … ZB16 16 x cassette U1 +Zone box 128 strands 4 networks share these", boxes, StringComparison.Ordinal);
    }

    [Fact]
    public void Rows_of_networks_stand_apart_in_the_order_of_the_document()
    {
        ViewInput input = Plants.OfFile(Document);
        OverviewFit fit = Plants.Fit(input);
        double before = double.MinValue;
        for (int n = 0; n < s_networks.Length; n++)
        {
            (double top, double bottom) = fit.Placement.Heights.RowsOf(n);
            Assert.Equal(s_networks[n], input.Traced.Plant.Networks[n].Name);
            Assert.True(top > before, s_networks[n]);
            before = bottom;
        }
    }

    [Fact]
    public void Every_line_runs_straight()
    {
        OverviewFit fit = Plants.Fit(Plants.OfFile(Document));
        Assert.All(fit.Placement.Bends, bends => Assert.Equal(0, bends.Count));
    }

    [Fact]
    public void Faults_are_marked_at_the_interfaces_where_their_strands_end_and_nowhere_else()
    {
        // Found on site: an A-to-A cord crosses a pair of lighting (D02); two legs of sound are exchanged, 4 links each (D05); two
        // cords of machinery and office are exchanged at a zone box (D06).
        OverviewFit fit = Plants.Fit(Plants.OfFile("gallery/opera-house/as-built.yaml"));
        BoxGroup[] faulty = [.. fit.Chart.Columns.SelectMany(c => c).Where(b => b.Faults is not null)];
        Assert.Equal(8, faulty.Length);
        Assert.Equal([2, 2, 2, 2, 2, 2, 16, 16], faulty.Select(b => b.Faults!.Errors).Order());
        Assert.Equal(2, faulty.Count(b => b.Faults!.ErrorCodes.SetEquals(["D02"])));
        Assert.Equal(2, faulty.Count(b => b.Faults!.ErrorCodes.SetEquals(["D05"])));
        Assert.Equal(4, faulty.Count(b => b.Faults!.ErrorCodes.SetEquals(["D06"])));
        DrawnSheet sheet = new(Plants.Sheet(Plants.OfFile("gallery/opera-house/as-built.yaml")));
        Assert.Equal(8, sheet.Signs.Count);
        Assert.Contains("D05 wrong leg: 1 finding", sheet.Words("notes"));
    }

    [Fact]
    public void Legs_that_other_strands_light_are_not_called_spare()
    {
        ViewInput whole = Plants.OfFile(Document);
        int part = Enumerable.Range(0, whole.Traced.Plant.Parts.Count).Single(p => whole.Traced.Plant.Parts[p].Name == "LX-K1");
        string words = string.Join(' ', new DrawnSheet(Plants.Sheet(Plants.OfFile(Document, new Choice { Part = part }))).Words("labels"));
        Assert.Contains("LX-T 1 leg of trunk Type-B 62 m 4 legs spare", words, StringComparison.Ordinal);
    }
}
