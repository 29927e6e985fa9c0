using System.Text.RegularExpressions;
using Xunit;

namespace PolarityMap.Cli.Tests.Commands;

/// <summary>How a call says where labels lie.</summary>
public sealed class LabelOptionTests
{
    // Three columns of 60 mm at a pitch of 65 from 10 mm: frames at 10, 75, 140; two rows of 30 mm at 40 from 20 mm.
    [Theory]
    [InlineData("3 x 2, 60 x 30 mm, margins 10 x 20 mm, pitch 65 x 40 mm")]
    [InlineData("3x2,60x30mm,pitch 65x40mm,margins 10x20mm")]
    public void Measures_are_read_with_and_without_blanks_and_in_any_order(string words)
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        Outcome outcome = bench.Run("draw", "plant.yaml", "--view", "labels", "--part", "SW-L", "--label-sheet", words, "--label-frames", "--without-font", "-o", "labels.svg");
        Assert.Equal((0, ""), (outcome.Status, outcome.Error));
        IEnumerable<string> corners = Regex.Matches(bench.Read("labels.svg"), "M([0-9.]+),([0-9.]+)h60v30h-60z").Select(m => $"{m.Groups[1].Value},{m.Groups[2].Value}");
        Assert.Equal(["10,20", "75,20", "140,20"], corners);
    }

    // 25.4 mm to the inch.
    [Fact]
    public void Inches_are_inches()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        Assert.Equal(0, bench.Run("draw", "plant.yaml", "--view", "labels", "--part", "SW-L", "--paper", "Letter", "--label-sheet", "2 x 5, 4 x 2 in, margins 0.25 x 0.5 in", "--label-frames", "--without-font", "-o", "labels.svg").Status);
        Assert.Contains("M6.35,12.7h101.6v50.8h-101.6z", bench.Read("labels.svg"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("3 x 8", "expected columns x rows, then the size of a label")]
    [InlineData("3 x 8, 63.5 x 33.9", "has no unit; write mm or in")]
    [InlineData("3, 63.5 x 33.9 mm", "no pair of measures for columns x rows")]
    [InlineData("3 x 0, 63.5 x 33.9 mm", "no number of labels")]
    [InlineData("3 x 8, 63.5 x 33.9 mm, margin 1 x 1 mm", "expected margins or pitch")]
    [InlineData("3 x 8, -5 x 33.9 mm", "no pair of measures")]
    [InlineData("3 x 8, NaN x 33.9 mm", "no pair of measures")]
    [InlineData("3 x 8, 63.5 x 33.9 mm, pitch 60 x 33.9 mm", "overlap at a pitch")]
    [InlineData("9 x 8, 63.5 x 33.9 mm", "A4 is 210 x 297 mm")]
    [InlineData("3 x 8, 24 x 10 mm", "the label of SW-L/1")]
    public void Measures_that_do_not_go_are_refused_in_one_line(string words, string why)
    {
        using var bench = new Workbench().With("plant.yaml", Samples.Clean);
        Outcome outcome = bench.Run("draw", "plant.yaml", "--view", "labels", "--label-sheet", words, "-o", "labels/");
        Assert.Equal(2, outcome.Status);
        Assert.Contains(why, Assert.Single(outcome.ErrorLines), StringComparison.Ordinal);
        Assert.Equal(["plant.yaml"], bench.Files());
    }

    [Fact]
    public void Labels_of_spare_cables_are_drawn_though_nothing_is_lit()
    {
        using var bench = new Workbench().With("plant.yaml", Samples.EmptyOfLight);
        Assert.Equal(0, bench.Run("draw", "plant.yaml", "--view", "labels", "-o", "labels/").Status);
        Assert.Contains("labels/labels.svg", bench.Files());
    }
}
