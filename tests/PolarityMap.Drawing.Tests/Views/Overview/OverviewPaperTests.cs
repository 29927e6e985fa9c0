using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Svg;
using PolarityMap.Drawing.Views;
using PolarityMap.Drawing.Views.Overview;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.Overview;

/// <summary>An overview is one sheet of standard size wherever it can be.</summary>
public sealed class OverviewPaperTests
{
    private static readonly PaperChoice s_onlyA4 = new([SheetFormat.A4Landscape], MayGrow: false);

    public static TheoryData<string> Documents => [.. Plants.Gallery];

    [Theory]
    [MemberData(nameof(Documents))]
    public void Every_document_of_the_gallery_has_one_sheet_of_standard_size(string path)
    {
        ViewInput input = Plants.OfFile(path);
        IReadOnlyList<PlannedSheet> sheets = new OverviewView().Plan(input);
        if (input.Selection.Strands.Count == 0)
            Assert.Empty(sheets);
        else
            Assert.Contains(Assert.Single(sheets).Format.Name, (string[])["A4", "A3"]);
    }

    [Fact]
    public void A_campus_of_3456_strands_goes_on_A4() =>
        Assert.Equal("A4", Assert.Single(new OverviewView().Plan(Plants.OfText(Plants.Campus))).Format.Name);

    [Fact]
    public void Twelve_networks_go_on_A3() =>
        Assert.Equal("A3", Assert.Single(new OverviewView().Plan(Plants.OfText(Plants.SideBySide(12)))).Format.Name);

    [Fact]
    public void A_long_chain_is_folded_before_a_larger_sheet_is_taken()
    {
        OverviewFit fit = Plants.Fit(Plants.OfText(Plants.Chain(6)));
        Assert.Equal("A4", fit.Format.Name);
        Assert.True(fit.Placement.BandCount > 1);
        DrawnSheet sheet = new(Plants.Sheet(Plants.OfText(Plants.Chain(6))));

        // Each line that is cut has a circle at either end, with the same letter.
        Assert.Equal(2 * (fit.Placement.BandCount - 1), sheet.Rings.Count);
        Assert.Equal(2, sheet.Words("labels").Count(w => w == "A"));
    }

    [Fact]
    public void What_no_sheet_takes_grows_where_it_may()
    {
        ViewInput input = Plants.OfText(Plants.SideBySide(30));
        PlannedSheet sheet = Assert.Single(new OverviewView().Plan(input));
        Assert.Equal("Custom", sheet.Format.Name);
        Assert.All(new DrawnSheet(sheet.Draw(new SheetPlace(1, 1))).Labels, l => Assert.True(l.Label.CapHeightMm >= CapHeights.Least));
    }

    [Fact]
    public void Where_it_may_not_grow_each_network_has_a_sheet()
    {
        ViewInput input = Plants.OfText(Plants.SideBySide(20)) with { Paper = s_onlyA4 };
        IReadOnlyList<PlannedSheet> sheets = new OverviewView().Plan(input);
        Assert.Equal(20, sheets.Count);
        Assert.Equal(20, sheets.Select(s => s.Name).Distinct().Count());
        Assert.All(sheets, s => Assert.Equal("A4", s.Format.Name));
        Assert.Equal("Parts and cables, network net7", sheets[6].Subject);
        Assert.Equal(2 * 12, Plants.Fit(input with { Selection = Selection.Of(input.Traced, [], new Choice { Network = 6 }) }).Chart.StrandCount);
    }

    [Fact]
    public void What_fits_no_sheet_of_the_choice_is_refused() =>
        Assert.Throws<DrawingTooLargeException>(() => new OverviewView().Plan(Plants.OfText(Plants.Chain(60)) with { Paper = s_onlyA4 }));

    [Fact]
    public void A5_is_too_small_for_an_overview()
    {
        var small = new PaperChoice([SheetFormat.A5Landscape, SheetFormat.LetterLandscape], MayGrow: false);
        Assert.Equal("Letter", Assert.Single(new OverviewView().Plan(Plants.OfText(Plants.Campus) with { Paper = small })).Format.Name);
    }

    [Fact]
    public void Ids_are_unique_and_layers_stand_in_drawing_order()
    {
        DrawingSheet sheet = Plants.Sheet(Plants.OfFile("gallery/opera-house/as-built.yaml"));
        Assert.Equal(["frame", "lines", "parts", "labels", "findings", "notes", "legend"], sheet.Layers.Select(l => l.Id));
        string[] ids = [.. sheet.Layers.SelectMany(Ids)];
        Assert.Equal(ids.Length, ids.Distinct().Count());
        Assert.Equal(18, ids.Count(i => i.StartsWith("box-", StringComparison.Ordinal)));
    }

    [Fact]
    public void Slashes_lie_on_top_of_their_lines()
    {
        SceneGroup[] lines = [.. Plants.Sheet(Plants.OfText(Plants.Chain(6))).Layers.Single(l => l.Id == "lines").Children.OfType<SceneGroup>()];
        Assert.Equal(11, lines.Length);
        Assert.All(lines, l => Assert.IsType<Line>(l.Children[^1]));
        Assert.All(lines, l => Assert.All(l.Children.SkipLast(1), c => Assert.IsType<StrandPath>(c)));
    }

    [Fact]
    public void The_same_plant_is_drawn_the_same_way_twice()
    {
        string first = SvgWriter.Write(Plants.Sheet(Plants.OfText(Plants.Ring)), new SvgOptions());
        Assert.Equal(first, SvgWriter.Write(Plants.Sheet(Plants.OfText(Plants.Ring)), new SvgOptions()));
    }

    [Fact]
    public void It_stands_in_the_catalogue() => Assert.IsType<OverviewView>(ViewCatalogue.Find("overview"));

    private static IEnumerable<string> Ids(SceneGroup group) =>
        (group.Id is null ? [] : (string[])[group.Id]).Concat(group.Children.OfType<SceneGroup>().SelectMany(Ids));
}
