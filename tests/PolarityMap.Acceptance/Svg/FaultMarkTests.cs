using PolarityMap.Core.Checks;
using Xunit;

namespace PolarityMap.Acceptance.Svg;

/// <summary>What marks findings on strand sheets can be told apart from everything else, and the legend explains what is there.</summary>
public sealed class FaultMarkTests
{
    private const string NotShown = "positions not shown";
    private const string Crossing = "Lines that cross do not touch.";

    public static TheoryData<string> Svgs => SvgFiles.OfStrands;

    public static TheoryData<string> Faults => [.. RuleCatalogue.All.Select(r => $"faults/{r.Code}.svg")];

    [Theory]
    [MemberData(nameof(Svgs))]
    public void No_sign_lies_on_a_word_or_on_another_sign(string svg)
    {
        DrawnSheet sheet = DrawnSheet.Of(svg);
        for (int i = 0; i < sheet.Signs.Count; i++)
        {
            Rect sign = sheet.Signs[i];
            Assert.All(sheet.Texts, t => Assert.False(t.Letters.Overlaps(sign, 0.02), $"the sign at {sign} lies on '{t.Content}'"));
            Assert.All(sheet.Signs.Skip(i + 1), other => Assert.False(other.Overlaps(sign, 0.02), $"the signs at {sign} and {other} overlap"));
        }
    }

    // A series for teaching reveals the gutter with the number one step after the part.
    [Theory]
    [MemberData(nameof(Svgs))]
    public void Every_strand_has_its_number(string svg)
    {
        if (svg.Contains("-steps/", StringComparison.Ordinal))
            return;
        DrawnSheet sheet = DrawnSheet.Of(svg);
        HashSet<int> labelled = [.. sheet.StrandLabels.Select(l => DrawnSheet.StrandNumber(l.Content))];
        Assert.All(sheet.Strands, s => Assert.Contains(s.Number, labelled));
    }

    // By hand, from the documents: how many signs are there, one for a whole array plug, and at the far ends of its strands; left of
    // which box or in which the fault is, counted from 1 from the left.
    [Theory]
    [InlineData("M01", 1, 12, 2, 3)]
    [InlineData("M03", 2, 2, 2, 3)]
    [InlineData("M05", 2, 2, 2, 3)]
    [InlineData("M07", 2, 2, 2, 3)]
    [InlineData("F01", 2, 2, 2, 3)]
    [InlineData("F04", 2, 2, 2, 2)]
    [InlineData("D06", 2, 2, 2, 2)]
    [InlineData("S01", 2, 2, 3, 3)]
    public void A_fault_at_a_mating_or_part_has_its_sign_there(string code, int signs, int strands, int after, int before)
    {
        DrawnSheet sheet = DrawnSheet.Of($"faults/{code}.svg");
        Rect[] boxes = [.. sheet.Parts.OrderBy(p => p.X).DistinctBy(p => p.X)];
        double from = after == before ? boxes[after - 1].X : boxes[after - 1].Right, to = after == before ? boxes[after - 1].Right : boxes[before - 1].X;
        Rect[] there = [.. sheet.Signs.Where(s => s.X > from && s.Right < to)];
        Assert.Equal(signs, there.Length);

        // Besides, at the far end.
        Assert.Equal(strands, sheet.Signs.Count(s => s.X > boxes[^1].Right));
    }

    [Theory]
    [MemberData(nameof(Faults))]
    public void The_legend_explains_dots_and_crossings_where_there_are_any(string svg)
    {
        DrawnSheet sheet = DrawnSheet.Of(svg);
        bool dots = sheet.Root.Descendants().Any(e => e.Name.LocalName == "circle" && e.Attribute("r")?.Value == "0.25" && e.Ancestors().Any(a => a.Attribute("id")?.Value == "labels"));
        Assert.Equal(dots, sheet.Texts.Any(t => t.Content == NotShown));
        bool dashed = sheet.Root.Descendants().Any(e => e.Attribute("stroke-dasharray") is not null && e.Ancestors().Any(a => a.Attribute("id")?.Value == "expected"));
        Assert.Equal(dashed || Geometry.Crossings(sheet.Strands).Count > 0, sheet.Texts.Any(t => t.Content == Crossing));
    }

    // Where the part that is meant is not on the sheet, the words say where the strand should go.
    [Theory]
    [InlineData("D01", "D01 expected: SW-L/1 at SW-R/1")]
    [InlineData("W04", "W04 expected: SW-L/2 at SW-R/2")]
    [InlineData("W02", "W02 expected: a run that mates SW-X")]
    public void The_foot_says_what_was_expected(string code, string words) =>
        Assert.Contains(DrawnSheet.Of($"faults/{code}.svg").Texts, t => t.Content == words);
}
