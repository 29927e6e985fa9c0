using PolarityMap.Drawing.Scene;
using Xunit;

namespace PolarityMap.Acceptance.Svg;

/// <summary>Every strand of every drawing can be followed: named at each gutter, cased, never hidden, crossed clearly.</summary>
public sealed class StrandDrawingTests
{
    // How far a label's middle may be off its strand.
    private const double OnStrand = 0.3;

    // The least angle on paper at which the eye follows a line through a crossing (drawing research; the number is ours).
    private const double LeastAngle = 30;

    public static TheoryData<string> Svgs => SvgFiles.OfStrands;

    [Theory]
    [MemberData(nameof(Svgs))]
    public void A_label_stands_on_the_strand_whose_number_it_bears(string svg)
    {
        DrawnSheet sheet = DrawnSheet.Of(svg);
        var strands = sheet.Strands.ToDictionary(s => s.Number);
        Assert.All(sheet.StrandLabels, label =>
        {
            DrawnStrand strand = Assert.Contains(DrawnSheet.StrandNumber(label.Content), (IDictionary<int, DrawnStrand>)strands);
            double off = strand.DistanceTo(new Spot(label.MiddleX, label.MiddleY));
            Assert.True(off < OnStrand, $"'{label.Content}' is {off:0.00} mm off its strand");
        });
    }

    // Gutters are what a strand passes between two boxes, or between a box and the fold of the drawing.
    [Theory]
    [MemberData(nameof(Svgs))]
    public void A_strand_is_labelled_in_every_gutter_it_passes(string svg)
    {
        DrawnSheet sheet = DrawnSheet.Of(svg);
        var missing = new List<string>();
        foreach (DrawnStrand strand in sheet.Strands)
        {
            DrawnText[] labels = [.. sheet.StrandLabels.Where(l => DrawnSheet.StrandNumber(l.Content) == strand.Number)];
            foreach (Stretch gutter in Stretch.OutsideBoxes(strand, sheet.Parts))
            {
                if (!gutter.IsOpenEnd && !labels.Any(l => gutter.DistanceTo(new Spot(l.MiddleX, l.MiddleY)) < OnStrand))
                    missing.Add($"strand {strand.Number} has no label between {gutter.From} and {gutter.To}");
            }
        }

        Assert.True(missing.Count == 0, string.Join("\n", missing));
    }

    [Theory]
    [MemberData(nameof(Svgs))]
    public void All_labels_of_a_strand_name_one_colour(string svg) =>
        Assert.All(DrawnSheet.Of(svg).StrandLabels.GroupBy(l => DrawnSheet.StrandNumber(l.Content)), labels => Assert.Single(labels.Select(l => l.Content).Distinct()));

    // Halo of paper, dark casing, fill, from below: the casing carries the contrast that light colours lack. WCAG 2.2,
    // success criterion 1.4.11: 3 to 1 for parts of a graphic that are needed to understand it.
    [Theory]
    [MemberData(nameof(Svgs))]
    public void A_strand_is_drawn_as_halo_casing_and_fill_of_one_route(string svg) =>
        Assert.All(DrawnSheet.Of(svg).Strands, strand =>
        {
            Assert.Equal(3 * strand.Routes.Count, strand.Strokes.Count);
            foreach ((string Data, string Stroke, double Width)[] stroke in strand.Strokes.Chunk(3))
            {
                Assert.Single(stroke.Select(s => s.Data).Distinct());
                Assert.Equal("#FFFFFF", stroke[0].Stroke);
                var casing = Colour.FromHex(stroke[1].Stroke);
                Assert.True(Colour.Contrast(casing, Palette.Paper) >= 3 && Colour.Contrast(casing, Palette.PartFill) >= 3);
                Assert.True(stroke[0].Width >= stroke[1].Width + 0.8, "the halo leaves less than 0.4 mm of paper at each side");
                Assert.True(stroke[1].Width >= stroke[2].Width + 0.29, "the casing is less than 0.15 mm at each side");
            }
        });

    // White paper under a label covers its own strand and no other.
    [Theory]
    [MemberData(nameof(Svgs))]
    public void No_label_hides_a_strand_that_is_not_its_own(string svg)
    {
        DrawnSheet sheet = DrawnSheet.Of(svg);
        string[] hidden =
        [
            .. sheet.Covers.Select(c => (Cover: c, Under: sheet.Strands.Where(s => s.Routes.Any(r => Geometry.Enters(r, c))).Select(s => s.Number).ToArray()))
                .Where(c => c.Under.Length > 1)
                .Select(c => $"the white box at {c.Cover.X:0.0},{c.Cover.Y:0.0} covers strands {string.Join(", ", c.Under)}"),
        ];
        Assert.True(hidden.Length == 0, string.Join("\n", hidden));
    }

    [Theory]
    [MemberData(nameof(Svgs))]
    public void Strands_cross_at_30_degrees_or_more(string svg)
    {
        string[] flat =
        [
            .. Geometry.Crossings(DrawnSheet.Of(svg).Strands).Where(c => c.Angle < LeastAngle)
                .Select(c => $"strands {c.A.Strand.Number} and {c.B.Strand.Number} cross at {c.Angle:0} degrees at {c.At}"),
        ];
        Assert.True(flat.Length == 0, string.Join("\n", flat));
    }

    // Each crossing has a gap of its own in the lower strand.
    [Theory]
    [MemberData(nameof(Svgs))]
    public void No_two_crossings_are_nearer_than_a_halo_is_wide(string svg)
    {
        Crossing[] crossings = [.. Geometry.Crossings(DrawnSheet.Of(svg).Strands).OrderBy(c => c.At.X)];
        var near = new List<string>();
        for (int i = 0; i < crossings.Length; i++)
        {
            for (int j = i + 1; j < crossings.Length && crossings[j].At.X - crossings[i].At.X < StrandPath.PlainHaloMm; j++)
            {
                double apart = crossings[i].At.DistanceTo(crossings[j].At);
                if (apart < StrandPath.PlainHaloMm)
                    near.Add($"two crossings {apart:0.0} mm apart at {crossings[i].At}");
            }
        }

        Assert.True(near.Count == 0, string.Join("\n", near));
    }

    // Crowding measured in drawing research on twelve strands: more than two crossings in 2.5 mm cannot be told apart.
    [Theory]
    [MemberData(nameof(Svgs))]
    public void No_more_than_two_crossings_lie_within_2_5_mm(string svg)
    {
        const double within = 2.5;
        Crossing[] crossings = [.. Geometry.Crossings(DrawnSheet.Of(svg).Strands).OrderBy(c => c.At.X)];
        var knots = new List<string>();
        for (int i = 0; i < crossings.Length; i++)
        {
            int near = 0;
            for (int j = 0; j < crossings.Length; j++)
                near += Math.Abs(crossings[j].At.X - crossings[i].At.X) <= within && crossings[i].At.DistanceTo(crossings[j].At) <= within ? 1 : 0;
            if (near > 2)
                knots.Add($"{near} crossings within {within} mm of {crossings[i].At}");
        }

        Assert.True(knots.Count == 0, string.Join("\n", knots));
    }

    // Two strands between the same two columns cross when their order at the ends differs, and then once: a drawing never
    // has more crossings than inversions (bilayer crossing counting).
    [Theory]
    [MemberData(nameof(Svgs))]
    public void Two_strands_cross_at_most_once_in_one_gutter_or_box(string svg)
    {
        DrawnSheet sheet = DrawnSheet.Of(svg);
        string[] twice =
        [
            .. Geometry.Crossings(sheet.Strands).GroupBy(c => (Stretch.IndexAt(c.A, c.At, sheet.Parts), Stretch.IndexAt(c.B, c.At, sheet.Parts)))
                .Where(g => g.Count() > 1)
                .Select(g => $"strands {g.Key.Item1.Strand} and {g.Key.Item2.Strand} cross {g.Count()} times near {g.First().At}"),
        ];
        Assert.True(twice.Length == 0, string.Join("\n", twice));
    }
}
