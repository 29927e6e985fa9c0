using System.Globalization;
using PolarityMap.Acceptance.Renderers;
using PolarityMap.Drawing.Scene;
using Xunit;

namespace PolarityMap.Export.Tests.Png;

/// <summary>
/// Twelve strands in the twelve colours of the sequence, rendered and then seen in grey and with each kind of colour deficiency:
/// every strand stands out, every word can be read, and no strand is known by its hue alone.
/// </summary>
public sealed class ColourSightTests
{
    private const int Dpi = 300;

    // WCAG 2.2: 1.4.11, parts of a graphic that are needed to understand it; 1.4.3, text.
    private const double LeastForLines = 3;
    private const double LeastForText = 4.5;

    private static readonly Picture Picture = Decoded.Picture(Sheets.Twelve, Dpi);
    private static readonly IReadOnlyList<(int Number, StrandPath Path)> Strands = [.. StrandsOf(Sheets.Twelve)];
    private static readonly IReadOnlyList<Label> StrandLabels = [.. Layer("labels").OfType<Label>().Where(l => NumberOf(l) > 0)];

    public static TheoryData<string> Sights => [.. Sight.All.Select(s => s.Name)];

    [Fact]
    public void The_sheet_has_twelve_strands_in_twelve_colours()
    {
        Assert.Equal(Enumerable.Range(1, 12), Strands.Select(s => s.Number).Distinct().Order());
        Assert.Equal(12, Strands.Select(s => s.Path.Fill).Distinct().Count());
        Assert.Equal(12, StrandLabels.Select(l => l.Text.Split(' ')[1]).Distinct().Count());
    }

    // White paper stays white in every sight: the rows of each matrix add up to 1.
    [Theory]
    [MemberData(nameof(Sights))]
    public void Paper_stays_paper(string name) =>
        Assert.Equal(1, Sight.All.Single(s => s.Name == name).Luminance(255, 255, 255), 0.000_01);

    [Theory]
    [MemberData(nameof(Sights))]
    public void Every_strand_has_an_edge_that_stands_out_from_the_paper_at_both_sides(string name)
    {
        Sight sight = Sight.All.Single(s => s.Name == name);
        foreach (IGrouping<int, (int Number, StrandPath Path, double X, double Y)> strand in Places().GroupBy(p => p.Number))
        {
            Assert.True(strand.Count() >= 4, $"strand {strand.Key} is looked at in {strand.Count()} places only");
            foreach ((_, StrandPath path, double x, double y) in strand)
            {
                double half = path.CasingMm / 2;
                foreach (int side in (int[])[-1, 1])
                {
                    // The casing is seen in the outer half of the strand, the paper beyond it in the middle of the halo.
                    double edge = Darkest(sight, x, y + (side * half * 0.4), y + (side * half));
                    double paper = At(sight, x, y + (side * (half + path.HaloMm / 2) / 2));
                    double contrast = Sight.Contrast(edge, paper);
                    Assert.True(contrast >= LeastForLines, string.Create(CultureInfo.InvariantCulture, $"strand {strand.Key} at {x:0.0}, {y:0.0}: {contrast:0.00}"));
                }
            }
        }

        Assert.Equal(12, Places().Select(p => p.Number).Distinct().Count());
    }

    // Without its casing a white or a yellow strand would be lost: the test above must be able to fail.
    [Theory]
    [InlineData("WH")]
    [InlineData("YE")]
    [InlineData("PK")]
    [InlineData("TQ")]
    [InlineData("OG")]
    public void The_fill_of_a_light_strand_would_not_stand_out_by_itself(string code)
    {
        Label label = StrandLabels.First(l => l.Text.EndsWith($" {code}", StringComparison.Ordinal));
        StrandPath path = Strands.First(s => s.Number == NumberOf(label)).Path;
        Assert.All(Sight.All, s => Assert.True(Sight.Contrast(s.Luminance(path.Fill), 1) < LeastForLines, s.Name));
    }

    [Theory]
    [MemberData(nameof(Sights))]
    public void Every_word_stands_out_from_what_is_behind_it(string name)
    {
        Sight sight = Sight.All.Single(s => s.Name == name);
        foreach (Label label in Sheets.Elements(Sheets.Twelve).OfType<Label>().Where(l => l.Text.Trim().Length > 0))
        {
            Area letters = label.Extent();
            double ink = Darkest(sight, letters);
            foreach (Colour behind in (Colour[])[Palette.Paper, Palette.PartFill])
            {
                double contrast = Sight.Contrast(ink, sight.Luminance(behind));
                Assert.True(contrast >= LeastForText, string.Create(CultureInfo.InvariantCulture, $"'{label.Text}' on {behind.Hex}: {contrast:0.00}"));
            }
        }
    }

    // The words of findings are coloured; the sheet with every mark has all of them.
    [Theory]
    [MemberData(nameof(Sights))]
    public void Every_colour_of_words_can_be_read(string name)
    {
        Sight sight = Sight.All.Single(s => s.Name == name);
        Colour[] inks = [.. Sheets.All.SelectMany(Sheets.Elements).OfType<Label>().Select(l => l.Colour).Distinct()];
        Assert.True(inks.Length >= 5);
        foreach (Colour ink in inks)
        {
            foreach (Colour behind in (Colour[])[Palette.Paper, Palette.PartFill])
                Assert.True(Sight.Contrast(sight.Luminance(ink), sight.Luminance(behind)) >= LeastForText, $"{ink.Hex} on {behind.Hex}");
        }
    }

    // A column of labels between two parts, or between a part and the fold, is a gutter; this sheet has seven. In each, a strand is known by a number that no other has there, and by the
    // letters of its colour, which are the same wherever it is named.
    [Fact]
    public void A_strand_is_known_by_its_number_and_letters_in_every_gutter()
    {
        var gutters = Gutters().ToList();
        Assert.True(gutters.Count == 7, $"{gutters.Count} gutters");
        foreach (IReadOnlyList<Label> gutter in gutters)
        {
            Assert.Equal(12, gutter.Count);
            Assert.Equal(12, gutter.Select(NumberOf).Distinct().Count());
            Assert.Equal(12, gutter.Select(l => l.Text.Split(' ')[1]).Distinct().Count());
        }

        Assert.Equal(StrandLabels.Count, gutters.Sum(g => g.Count));
        Assert.All(StrandLabels.GroupBy(NumberOf), labels => Assert.Single(labels.Select(l => l.Text).Distinct()));
    }

    /// <summary>Labels one below the other, a row of 5 mm each, in one column.</summary>
    private static IEnumerable<IReadOnlyList<Label>> Gutters()
    {
        foreach (IGrouping<double, Label> column in StrandLabels.GroupBy(l => Math.Round(l.X, 1)))
        {
            var gutter = new List<Label>();
            foreach (Label label in column.OrderBy(l => l.BaselineY))
            {
                if (gutter.Count > 0 && label.BaselineY - gutter[^1].BaselineY > 8)
                {
                    yield return gutter;
                    gutter = [];
                }

                gutter.Add(label);
            }

            yield return gutter;
        }
    }

    /// <summary>
    /// Where to look at a strand: every half millimetre of its level stretches, apart from labels, marks, outlines and other
    /// strands.
    /// </summary>
    private static IEnumerable<(int Number, StrandPath Path, double X, double Y)> Places()
    {
        Area[] covers = [.. Covers()];
        foreach ((int number, StrandPath path) in Strands)
        {
            IReadOnlyList<Point> points = path.Route.Flatten(0.01);
            for (int i = 0; i + 1 < points.Count; i++)
            {
                if (points[i].Y != points[i + 1].Y)
                    continue;
                (double from, double to) = (Math.Min(points[i].X, points[i + 1].X), Math.Max(points[i].X, points[i + 1].X));
                for (double x = from + 0.5; x < to - 0.5; x += 0.5)
                {
                    double y = points[i].Y;
                    var near = new Area(x - 0.5, y - 1.2, 1, 2.4);
                    if (!covers.Any(c => Overlap(c, near)) && !Strands.Any(s => s.Path != path && Passes(s.Path, near)))
                        yield return (number, path, x, y);
                }
            }
        }
    }

    /// <summary>What is drawn later than the strands and may lie on them: labels with their paper, cells, edges and marks.</summary>
    private static IEnumerable<Area> Covers()
    {
        foreach (SceneElement element in Sheets.Twelve.Layers.SkipWhile(l => l.Id != "strands").Skip(1).SelectMany(Sheets.Elements))
        {
            switch (element)
            {
                case Label label:
                    Box box = label.UnderlayBox() ?? new Box(label.Extent().X, label.Extent().Y, label.Extent().Width, label.Extent().Height);
                    yield return new Area(box.X, box.Y, box.Width, box.Height);
                    break;
                case Box { Fill: not null } b:
                    yield return new Area(b.X - 0.5, b.Y - 0.5, b.Width + 1, b.Height + 1);
                    break;
                case Box { Stroke: not null } b:
                    double w = b.StrokeWidthMm;
                    yield return new Area(b.X - (w / 2), b.Y - (w / 2), w, b.Height + w);
                    yield return new Area(b.X + b.Width - (w / 2), b.Y - (w / 2), w, b.Height + w);
                    yield return new Area(b.X - (w / 2), b.Y - (w / 2), b.Width + w, w);
                    yield return new Area(b.X - (w / 2), b.Y + b.Height - (w / 2), b.Width + w, w);
                    break;
                case Circle c:
                    yield return new Area(c.CentreX - c.Radius - 0.5, c.CentreY - c.Radius - 0.5, (2 * c.Radius) + 1, (2 * c.Radius) + 1);
                    break;
                case Polygon p:
                    yield return Bounds(p.Points, 0.5);
                    break;
                case Line l:
                    yield return Bounds([(l.X1, l.Y1), (l.X2, l.Y2)], l.WidthMm / 2);
                    break;
                default:
                    break;
            }
        }
    }

    private static Area Bounds(IReadOnlyList<Point> points, double margin)
    {
        double left = points.Min(p => p.X) - margin, top = points.Min(p => p.Y) - margin;
        return new Area(left, top, points.Max(p => p.X) + margin - left, points.Max(p => p.Y) + margin - top);
    }

    private static bool Overlap(Area a, Area b) => a.X < b.Right && b.X < a.Right && a.Y < b.Bottom && b.Y < a.Bottom;

    /// <summary>True when a strand or its halo comes into a rectangle.</summary>
    private static bool Passes(StrandPath path, Area area)
    {
        double margin = path.HaloMm / 2;
        var wide = new Area(area.X - margin, area.Y - margin, area.Width + (2 * margin), area.Height + (2 * margin));
        IReadOnlyList<Point> points = path.Route.Flatten(0.05);
        for (int i = 0; i + 1 < points.Count; i++)
        {
            if (Overlap(Bounds([points[i], points[i + 1]], 0.001), wide))
                return true;
        }

        return false;
    }

    private static double At(Sight sight, double x, double y)
    {
        (byte r, byte g, byte b) = Picture.At((int)(x / 25.4 * Dpi), (int)(y / 25.4 * Dpi));
        return sight.Luminance(r, g, b);
    }

    /// <summary>The darkest pixel in a column between two heights.</summary>
    private static double Darkest(Sight sight, double x, double y0, double y1) =>
        Darkest(sight, new Area(x, Math.Min(y0, y1), 0, Math.Abs(y1 - y0)));

    private static double Darkest(Sight sight, Area area)
    {
        double darkest = 1;
        for (int y = (int)(area.Y / 25.4 * Dpi); y <= (int)(area.Bottom / 25.4 * Dpi); y++)
        {
            for (int x = (int)(area.X / 25.4 * Dpi); x <= (int)(area.Right / 25.4 * Dpi); x++)
            {
                (byte r, byte g, byte b) = Picture.At(x, y);
                darkest = Math.Min(darkest, sight.Luminance(r, g, b));
            }
        }

        return darkest;
    }

    private static IEnumerable<SceneElement> Layer(string id) =>
        Sheets.Twelve.Layers.Single(l => l.Id == id).Children;

    private static IEnumerable<(int Number, StrandPath Path)> StrandsOf(DrawingSheet sheet)
    {
        foreach (SceneGroup strand in sheet.Layers.Single(l => l.Id == "strands").Children.OfType<SceneGroup>())
        {
            int number = int.Parse(strand.Id!["strand-".Length..], CultureInfo.InvariantCulture);
            foreach (StrandPath path in strand.Children.OfType<StrandPath>())
                yield return (number, path);
        }
    }

    /// <summary>The strand's number in a label such as <c>7 RD</c>, or 0.</summary>
    private static int NumberOf(Label label) =>
        label.Text.Split(' ') is [var number, { Length: 2 }] && int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out int n) ? n : 0;
}
