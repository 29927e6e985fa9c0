using PolarityMap.Core.Deviations;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Tests.Views.Card;
using PolarityMap.Drawing.Views.Plan;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.Plan;

/// <summary>The decision card: everything is on it, inside the outline, and nothing covers anything.</summary>
public sealed class PlanCardTests
{
    private static readonly TracedPlant s_traced = CardDocuments.Gallery("opera-house/plant.yaml").Traced;

    private static readonly DeviationContext s_context = new(s_traced);

    /// <summary>Cords of the other type, each at one part, as far as they are asked for.</summary>
    private static readonly Explanation[] s_explanations =
        [.. s_context.All().Where(d => d.Kind.Name == "other-cord").Select((d, i) => new Explanation([d], 0.01, i, []))];

    private static readonly Observation[] s_seen = [new LampSeen(new(0, 0), false)];

    /// <summary>A look at one part after the other, each of which leaves it or goes on; the last leaves two.</summary>
    private static TestPlan Looks(int count, int first = 0)
    {
        Explanation[] left = [.. s_explanations.Skip(first).Take(count + 1)];
        if (count == 1)
            return Step(left, new TestPlan(null, left, []), new TestPlan(null, [], []));
        return Step(left, Looks(count - 1, first + 1), new TestPlan(null, [left[0]], []));
    }

    private static TestPlan Step(Explanation[] left, TestPlan same, TestPlan different)
    {
        int part = left[0].Deviations[0].Parts[0];
        var next = new NextTest(new LookTest(part, 2), 0.5, [new TestOutcome(new PartLooked(part, true), 0.9, []), new TestOutcome(new PartLooked(part, false), 0.1, [])]);
        return new TestPlan(next, left, [same, different]);
    }

    private static IEnumerable<SceneElement> All(IEnumerable<SceneElement> elements) => elements.SelectMany(e => e is SceneGroup group ? All(group.Children) : [e]);

    private static Label[] Labels(DrawingSheet sheet) => [.. All(sheet.Layers).OfType<Label>()];

    private static string Words(IEnumerable<DrawingSheet> sheets) => string.Join(' ', sheets.SelectMany(Labels).Select(l => l.Text)).Replace('\u00A0', ' ');

    public static TheoryData<int> Sizes => [1, 2, 3, 5, 8, 13, 40];

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Every_step_and_every_end_is_on_the_card(int steps)
    {
        TestPlan plan = Looks(steps);
        IReadOnlyList<DrawingSheet> sheets = PlanCard.Draw(s_traced, s_seen, plan);
        string words = Words(sheets);
        Assert.All(s_explanations.Take(steps + 1), e => Assert.Contains(FieldWords.Wrong(e), words, StringComparison.OrdinalIgnoreCase));
        Assert.All(s_explanations.Take(steps + 1), e => Assert.Contains($"Mend: {FieldWords.Mends(e).Single()}", words, StringComparison.Ordinal));
        Assert.Contains("None of what was found; note what you saw and search again.", words, StringComparison.Ordinal);

        // A number stands once before its step, again where the step goes on on another sheet, and once where it is gone to.
        string[] numbers = [.. sheets.SelectMany(Labels).Where(l => l.Anchor == Anchor.Middle).Select(l => l.Text)];
        Assert.Equal(Enumerable.Range(1, steps), numbers.Select(int.Parse).Distinct().Order());
        Assert.Equal(steps + steps - 1 + words.Split(" goes on ").Length - 1, numbers.Length);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Nothing_leaves_the_outline_and_no_words_cover_others(int steps)
    {
        foreach (DrawingSheet sheet in PlanCard.Draw(s_traced, s_seen, Looks(steps)))
        {
            Label[] labels = Labels(sheet);
            Assert.All(labels, l =>
            {
                Area extent = l.Extent();
                Assert.InRange(extent.X, 5, sheet.WidthMm - 5 - extent.Width);
                Assert.InRange(extent.Y, 5, sheet.HeightMm - 5 - extent.Height);
                Assert.True(l.CapHeightMm >= CapHeights.Strand);
            });
            for (int a = 0; a < labels.Length; a++)
            {
                for (int b = a + 1; b < labels.Length; b++)
                    Assert.False(Overlap(labels[a].Extent(), labels[b].Extent()), $"{labels[a].Text} and {labels[b].Text}");
            }
        }
    }

    private static bool Overlap(Area a, Area b) => a.X < b.X + b.Width && b.X < a.X + a.Width && a.Y < b.Y + b.Height && b.Y < a.Y + a.Height;

    [Fact]
    public void A_short_plan_takes_A5_and_a_long_one_sheets_of_A4()
    {
        DrawingSheet small = Assert.Single(PlanCard.Draw(s_traced, s_seen, Looks(2)));
        Assert.Equal((148, 210), (small.WidthMm, small.HeightMm));
        IReadOnlyList<DrawingSheet> large = PlanCard.Draw(s_traced, s_seen, Looks(40));
        Assert.True(large.Count > 1);
        Assert.All(large, s => Assert.Equal((210, 297), (s.WidthMm, s.HeightMm)));
        Assert.All(large.Index(), s => Assert.Contains($"card {s.Index + 1} of {large.Count}", Words([s.Item]), StringComparison.Ordinal));
    }

    [Fact]
    public void Every_sheet_carries_the_cautions_and_the_first_what_was_seen()
    {
        IReadOnlyList<DrawingSheet> sheets = PlanCard.Draw(s_traced, s_seen, Looks(40));
        Assert.All(sheets, s => Assert.Contains("Assume every fibre is live", Words([s]), StringComparison.Ordinal));
        Assert.All(sheets, s => Assert.Contains("never look into a fibre or the source", Words([s]), StringComparison.Ordinal));
        Assert.Contains($"Seen: {FieldWords.Saw(s_traced, s_seen[0])}.", Words(sheets.Take(1)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_head_of_a_step_stays_with_an_outcome()
    {
        foreach (DrawingSheet sheet in PlanCard.Draw(s_traced, s_seen, Looks(40)))
        {
            Label[] labels = Labels(sheet);
            double lastStep = labels.Where(l => l.CapHeightMm == CapHeights.Part).Max(l => l.BaselineY);
            double lastTick = All(sheet.Layers).OfType<Box>().Where(b => b.Width < 5).Max(b => b.Y);
            Assert.True(lastTick > lastStep);
        }
    }

    [Fact]
    public void A_plan_without_a_test_says_what_it_is() =>
        Assert.Contains(FieldWords.Mends(s_explanations[0]).Single(), Words(PlanCard.Draw(s_traced, s_seen, new TestPlan(null, [s_explanations[0]], []))), StringComparison.Ordinal);

    [Fact]
    public void An_outcome_that_leaves_many_lists_the_first_and_counts_the_rest()
    {
        string words = Words(PlanCard.Draw(s_traced, s_seen, new TestPlan(null, s_explanations[..20], [])));
        Assert.Contains("Or one of 14 less likely ones", words, StringComparison.Ordinal);
        Assert.DoesNotContain(FieldWords.Mends(s_explanations[6]).Single(), words, StringComparison.Ordinal);
    }
}
