using PolarityMap.Core.Plants;
using PolarityMap.Drawing.Views;
using PolarityMap.Drawing.Views.Overview;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.Overview;

/// <summary>No strand is lost or counted twice when parts and cables are folded.</summary>
public sealed class ConservationTests
{
    public static TheoryData<string> Documents => [.. Plants.Gallery];

    [Theory]
    [MemberData(nameof(Documents))]
    public void What_enters_a_box_leaves_it_or_ends_there(string path) => AssertConserved(Plants.OfFile(path));

    [Theory]
    [InlineData(Plants.Campus)]
    [InlineData(Plants.Ring)]
    [InlineData(Plants.Mixed)]
    public void Nothing_is_lost_in_larger_plants(string text) => AssertConserved(Plants.OfText(text));

    [Fact]
    public void Interfaces_of_a_campus_have_two_ends_for_every_strand()
    {
        OverviewFit fit = Plants.Fit(Plants.OfText(Plants.Campus));

        // 72 switches of 24 ports of 2 fibres at either side.
        Assert.Equal(2 * 72 * 24 * 2, fit.Chart.Columns.SelectMany(c => c).Where(b => b.Parts.Count == 72).Sum(b => b.Strands));
        Assert.Equal([1, 1, 1, 1], fit.Chart.Columns.Select(c => c.Count));
        Assert.Equal([1728, 36, 1728], fit.Chart.Lines.Select(l => l.Cables.Count));
        Assert.All(fit.Chart.Lines, l => Assert.Equal(3456, l.Cables.Sum(c => c.Fibres)));
    }

    [Fact]
    public void Strands_of_a_ring_are_drawn_without_showing_a_part_twice()
    {
        Chart chart = Plants.Fit(Plants.OfText(Plants.Ring)).Chart;
        Assert.DoesNotContain(chart.Columns.SelectMany(c => c), b => b.IsAgain);
        Assert.Equal(8, chart.PartCount);
    }

    [Fact]
    public void Panels_joints_and_open_ends_are_shown()
    {
        BoxGroup[] boxes = [.. Plants.Fit(Plants.OfText(Plants.Mixed)).Chart.Columns.SelectMany(c => c)];
        Assert.Contains(boxes, b => b.Sort == BoxSort.Joint);
        BoxGroup open = Assert.Single(boxes, b => b.Sort == BoxSort.OpenEnd);

        // 40GBASE-SR4 uses eight fibres; the cord's eight are lit or listened to from one end.
        Assert.Equal(8, open.Ends);

        // QS, SRV1 to SRV8, P, QR.
        Assert.Equal(1 + 8 + 1 + 1, boxes.Where(b => b.Sort == BoxSort.Part).Sum(b => b.Parts.Count));
    }

    private static void AssertConserved(ViewInput input)
    {
        IReadOnlyList<int> strands = input.Selection.Strands;
        if (strands.Count == 0)
            return;
        Chart chart = Plants.Fit(input).Chart;
        foreach (BoxGroup box in chart.Columns.SelectMany(c => c))
        {
            int into = chart.Lines.Where(l => l.To == box).Sum(l => l.Strands);
            int from = chart.Lines.Where(l => l.From == box).Sum(l => l.Strands);
            Assert.Equal(2 * box.Strands, into + from + box.Ends);
            if (box.Ends == 0)
                Assert.Equal(into, from);
        }

        Assert.All(chart.Lines, l => Assert.True(l.Cables.Count == 0 || l.Cables.Sum(c => c.Fibres) == l.Strands));

        // Ends at interfaces, counted on the traced strands.
        int ends = strands.Sum(s => Lit(input, input.Traced.Strands[s][0]) + (input.Traced.Strands[s].Length > 1 ? Lit(input, input.Traced.Strands[s][^1]) : Lit(input, input.Traced.Strands[s][0])));
        IReadOnlyList<Part> parts = input.Traced.Plant.Parts;
        Assert.Equal(ends, chart.Columns.SelectMany(c => c).Where(b => b.Sort == BoxSort.Part && parts[b.Parts[0]].Shape.IsInterface).Sum(b => b.Ends));
    }

    private static int Lit(ViewInput input, int position) => input.Traced.Plant.Parts[input.Traced.Graph.PartOf(position)].Shape.IsInterface ? 1 : 0;
}
