using PolarityMap.Core.Optics;
using PolarityMap.Core.Planning;
using PolarityMap.Core.Plants;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Comparison;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.Comparison;

/// <summary>The figure of plans side by side: everything is on it in words, inside the frame, and large enough to read on A4.</summary>
public sealed class ComparisonSheetTests
{
    private static readonly Brief s_plain = Brief("10GBASE-SR", "OM4");

    private static readonly Brief s_full = s_plain with
    {
        Networks = [.. s_plain.Networks.Select(n => n with { Later = Application.Find("40GBASE-SR4") })],
        Prices = new PriceList("EUR without tax", [new PriceLine(123_456.78m) { Kind = "duplex cord" }]),
        Weights = new PlanWeights(Later: 1, Price: 2),
        TrunksArePinned = true,
    };

    // Four methods share a row, and idle fibres make a narrow part of the bar.
    private static readonly Brief s_gathered = s_plain with
    {
        Separation = SeparationPolicy.Gathered,
        Outlets = [.. s_plain.Outlets.Select(o => o with { Distance = Length.FromMillimetres(10_000) })],
        Weights = new PlanWeights(Idle: 0.2m),
    };

    public static TheoryData<string> Briefs => ["plain", "full", "single-mode", "gathered"];

    private static PlanComparison Of(string name) => PlanComparison.Of(name switch { "plain" => s_plain, "full" => s_full, "gathered" => s_gathered, _ => Brief("10GBASE-LR", "OS2") });

    [Theory]
    [MemberData(nameof(Briefs))]
    public void Every_word_is_inside_the_frame_and_no_smaller_than_the_least(string name)
    {
        foreach (DrawingSheet sheet in new[] { false, true }.SelectMany(set => ComparisonSheets.Draw(Of(name), static _ => true, set)))
        {
            Label[] labels = [.. Labels(sheet.Layers.Where(l => l.Id != "frame"))];
            Assert.All(labels, l => Assert.True(l.CapHeightMm >= CapHeights.Least, l.Text));
            Assert.All(labels, l => Assert.True(l.Extent() is var e && e.X >= 20 && e.Right <= sheet.WidthMm - 10 && e.Bottom <= sheet.HeightMm - 35, $"{l.Text} at {l.Extent()}"));
            Assert.DoesNotContain(labels, l => l.Text.Contains('\u2026', StringComparison.Ordinal));
        }
    }

    [Theory]
    [MemberData(nameof(Briefs))]
    public void No_words_lie_on_others(string name)
    {
        foreach (DrawingSheet sheet in ComparisonSheets.Draw(Of(name), static _ => true, asSet: false))
        {
            Area[] areas = [.. Labels(sheet.Layers.Where(l => l.Id != "frame")).Where(l => l.Text.Length > 0).Select(l => l.Extent())];
            for (int i = 0; i < areas.Length; i++)
            {
                for (int j = i + 1; j < areas.Length; j++)
                    Assert.False(areas[i].X < areas[j].Right && areas[j].X < areas[i].Right && areas[i].Y < areas[j].Bottom && areas[j].Y < areas[i].Bottom, $"{areas[i]} and {areas[j]}");
            }
        }
    }

    [Fact]
    public void Each_plan_and_each_code_that_excludes_one_is_told()
    {
        string words = Words(ComparisonSheets.Draw(Of("single-mode"), static _ => false, asSet: false));
        Assert.Contains("Methods B and U2: M06", words, StringComparison.Ordinal);
        foreach (int fibres in PlanCandidate.Bases)
            Assert.Contains($", base {fibres}", words, StringComparison.Ordinal);
        Assert.DoesNotContain("Arrow:", words, StringComparison.Ordinal);
    }

    // Twelve links, a leg of twelve fibres for each.
    [Fact]
    public void What_comes_later_and_what_a_price_leaves_out_is_told()
    {
        string words = Words(ComparisonSheets.Draw(Of("full"), static _ => true, asSet: false));
        Assert.Contains("over 2962962.72", words, StringComparison.Ordinal);
        Assert.Contains("the price list is incomplete", words, StringComparison.Ordinal);
        Assert.Contains("Prices are left out of the sum", words, StringComparison.Ordinal);
        Assert.Contains("x Type-B trunk, 144 fibres, 40 m", words, StringComparison.Ordinal);
        Assert.Contains(" stays. Left over ", words, StringComparison.Ordinal);
        Assert.Contains("go on later", words, StringComparison.Ordinal);
        Assert.Contains("Arrow: what the brief itself asks for.", words, StringComparison.Ordinal);
    }

    // What is said of a row's plans alike is said once: each quantity of interfaces to buy stands once in a row.
    [Fact]
    public void Plans_of_one_row_share_what_is_bought_later()
    {
        PlanComparison full = Of("full");
        DrawingSheet sheet = ComparisonSheets.Draw(full, static _ => false, asSet: false).Single();
        int rows = Labels(sheet.Layers.Where(l => l.Id == "plans")).Count(l => l.Text.Contains(", base ", StringComparison.Ordinal));
        Assert.True(rows < full.Plans.Count, $"{rows} rows");
        Assert.Equal(rows, Labels(sheet.Layers).Count(l => l.Text.StartsWith("Later buy ", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_part_of_a_bar_without_room_for_its_letter_is_told_in_numbers()
    {
        DrawingSheet sheet = ComparisonSheets.Draw(Of("gathered"), static _ => false, asSet: false).Single();
        string[] texts = [.. Labels(sheet.Layers.Where(l => l.Id == "plans")).Select(l => l.Text)];
        Assert.Contains(texts, t => t.StartsWith("U1 U2 A C, base ", StringComparison.Ordinal));
        Assert.Contains(texts, t => t.StartsWith("Sum K ", StringComparison.Ordinal) && t.Contains(" + I 0.", StringComparison.Ordinal));
    }

    [Fact]
    public void A_set_has_sheets_of_A4_only() =>
        Assert.All(ComparisonSheets.Draw(Of("full"), static _ => true, asSet: true), s => Assert.Equal((297d, 210d), (s.WidthMm, s.HeightMm)));

    private static IEnumerable<Label> Labels(IEnumerable<SceneElement> elements) => elements.SelectMany(e => e switch { SceneGroup group => Labels(group.Children), Label label => [label], _ => [] });

    private static string Words(IEnumerable<DrawingSheet> sheets) => string.Join(' ', sheets.SelectMany(s => Labels(s.Layers)).Select(l => l.Text));

    private static Brief Brief(string application, string fibre)
    {
        var place = new SourcePlace("brief", 0, 0);
        return new Brief
        {
            Title = new PlantTitle("Twelve links"),
            Fibre = FibreClass.Find(fibre)!,
            Networks = [new BriefNetwork(new Network("house", null, place), "H", Application.Find(application)!)],
            Rooms = [new BriefRoom("Main", "M", place), new BriefRoom("Stage", "S", place) { Distance = Length.FromMillimetres(40_000) }],
            Outlets = [new BriefOutlets(new PlannedName("D", 1, 12, ""), 1, [1], place)],
            ArrayLoss = new Decibel(0.25m),
            DuplexLoss = new Decibel(0.15m),
        };
    }
}
