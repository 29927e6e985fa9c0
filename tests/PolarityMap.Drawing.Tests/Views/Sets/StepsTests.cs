using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Tests.Views.Overview;
using PolarityMap.Drawing.Views;
using PolarityMap.Drawing.Views.Compare;
using PolarityMap.Drawing.Views.Steps;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.Sets;

/// <summary>Figures for teaching: the step series and plants side by side.</summary>
public sealed class StepsTests
{
    private static readonly DrawingSheet[] Steps = Drawn("gallery/methods/duplex-B.yaml");

    // Method B for duplex (TIA-568.3): interface, A-to-B cord, cassette, Type-B trunk, cassette, A-to-B cord, interface.
    [Fact]
    public void A_channel_of_seven_parts_has_seven_steps() => Assert.Equal(7, Steps.Length);

    [Fact]
    public void Each_step_shows_as_many_columns_of_parts_as_its_number()
    {
        int[] parts = [.. Steps.Select(s => s.Layers.Single(l => l.Id == "parts").Children.Count)];
        Assert.Equal([1, 7, 8, 9, 10, 16, 17], parts);
    }

    // Position tables of method B (TIA-568.3 summaries): the first pair leaves the trunk in position i, having entered in 13 - i.
    [Fact]
    public void The_table_of_the_fourth_step_tells_the_trunk_reversed()
    {
        string[] cells = [.. Texts(Steps[3], "table")];
        for (int i = 1; i <= 12; i++)
            Assert.Contains($"{i} → {13 - i}", cells);
        Assert.DoesNotContain(Texts(Steps[2], "table"), c => c == "1 → 12");
    }

    [Fact]
    public void Each_step_names_the_part_that_it_adds_and_says_how_it_is_marked()
    {
        string[] added = ["SW-L", "cord A-to-B 2 m", "K-L", "TRUNK", "K-R", "cord A-to-B 2 m", "SW-R"];
        for (int i = 0; i < added.Length; i++)
            Assert.Contains($"Step {i + 1} of 7: {added[i]}", Steps[i].Layers.SelectMany(All).OfType<Label>().Select(l => l.Text.Replace('\u00A0', ' ')));
        Assert.All(Steps, s => Assert.Contains(Texts(s, "table"), t => t.StartsWith("Heavy frame: what this step adds.", StringComparison.Ordinal)));
    }

    [Fact]
    public void The_drawing_stands_still_from_step_to_step()
    {
        Box first = (Box)Steps[0].Layers.Single(l => l.Id == "parts").Children[0];
        Assert.All(Steps, s => Assert.Equal(first, s.Layers.Single(l => l.Id == "parts").Children[0]));
    }

    [Fact]
    public void A_finding_is_told_with_the_last_step_only()
    {
        DrawingSheet[] steps = Drawn("gallery/faults/P01.yaml");
        Assert.All(steps[..^1], s => Assert.DoesNotContain(s.Layers.SelectMany(l => Texts(s, l.Id!)), t => t.Contains("P01", StringComparison.Ordinal)));
        Assert.Contains(Texts(steps[^1], "notes"), t => t.StartsWith("P01 ", StringComparison.Ordinal));
    }

    [Fact]
    public void Plants_side_by_side_are_named_and_keep_their_strands_apart()
    {
        ViewInput[] inputs = [Plants.OfFile("gallery/methods/duplex-A.yaml"), Plants.OfFile("gallery/methods/duplex-B.yaml"), Plants.OfFile("gallery/methods/duplex-C.yaml")];
        DrawingSheet figure = CompareFigure.Draw(inputs, "Three methods");
        Assert.Equal(["Three methods", "(a) Method A, duplex", "(b) Method B, duplex", "(c) Method C, duplex"], Texts(figure, "captions"));
        string[] ids = [.. figure.Layers.Single(l => l.Id == "strands").Children.OfType<SceneGroup>().Select(g => g.Id!)];
        Assert.Equal(36, ids.Length);
        Assert.Equal(ids, ids.Distinct());
    }

    private static DrawingSheet[] Drawn(string file)
    {
        IReadOnlyList<PlannedSheet> planned = new StepsView().Plan(Plants.OfFile(file));
        return [.. planned.Select((s, i) => s.Draw(new SheetPlace(i + 1, planned.Count)))];
    }

    private static IEnumerable<string> Texts(DrawingSheet sheet, string layer) =>
        sheet.Layers.Where(l => l.Id == layer).SelectMany(All).OfType<Label>().Select(l => l.Text);

    private static IEnumerable<SceneElement> All(SceneElement element) => element is SceneGroup group ? group.Children.SelectMany(All) : [element];
}
