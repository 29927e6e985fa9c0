using PolarityMap.Drawing.Fonts;
using PolarityMap.Drawing.Scene;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views.Card;

/// <summary>Every word of every card of the gallery can be read on paper, and every line followed.</summary>
public sealed class CardGeometryTests
{
    // Heights of capitals after ISO 3098 (from memory): 1.8 mm as the least anywhere, 2.5 mm for lettering, 3.5 mm for names.
    private const double Least = 1.8;
    private const double Lettering = 2.5;

    /// <summary>
    /// Tall letters such as l and those that hang, such as g, as shares of a capital's height: 0.712 and 0.205 em against 0.66,
    /// read off the font with another program.
    /// </summary>
    private const double Hang = 0.31;

    private const double Slack = 0.02;

    public static TheoryData<string> Documents => CardDocuments.All;

    [Theory]
    [MemberData(nameof(Documents))]
    public void Words_are_tall_enough_and_inside_their_cards_outline(string document) => OnEverySheet(document, card =>
    {
        foreach ((Label label, string layer) in card.Labels)
        {
            Assert.True(label.CapHeightMm >= (layer == "hops" ? Lettering : Least), $"'{label.Text}' is {label.CapHeightMm} mm high");
            Assert.True(FontMetrics.Contains(label.Text), label.Text);
            Area letters = Letters(label);
            Assert.True(
                letters.X >= 5 && letters.Right <= card.Sheet.WidthMm - 5 && letters.Y >= 5 && letters.Bottom <= card.Sheet.HeightMm - 5,
                $"'{label.Text}' at {letters} leaves the card");
        }
    });

    [Theory]
    [MemberData(nameof(Documents))]
    public void No_word_lies_on_another(string document) => OnEverySheet(document, card =>
    {
        Label[] labels = [.. card.Labels.Select(l => l.Label).OrderBy(l => l.Extent().X)];
        for (int i = 0; i < labels.Length; i++)
        {
            Area one = Letters(labels[i]);
            for (int j = i + 1; j < labels.Length && Letters(labels[j]).X < one.Right; j++)
                Assert.False(Overlap(one, Letters(labels[j])), $"'{labels[i].Text}' and '{labels[j].Text}' overlap at {one.X:0.0},{one.Y:0.0}");
        }
    });

    [Theory]
    [MemberData(nameof(Documents))]
    public void No_edge_of_a_box_and_no_arrow_runs_through_a_word(string document) => OnEverySheet(document, card =>
    {
        foreach (Label label in card.Labels.Select(l => l.Label))
        {
            Area letters = label.Extent();
            foreach (Box box in card.Boxes)
            {
                bool apart = letters.X > box.X + box.Width - Slack || letters.Right < box.X + Slack || letters.Y > box.Y + box.Height - Slack || letters.Bottom < box.Y + Slack;
                bool inside = letters.X > box.X && letters.Right < box.X + box.Width && letters.Y > box.Y && letters.Bottom < box.Y + box.Height;
                Assert.True(apart || inside, $"an edge of the box at {box.X:0.0},{box.Y:0.0} runs through '{label.Text}' at {letters}");
            }

            foreach (Polygon polygon in card.Polygons.Where(p => p.Points.Count == 3))
            {
                var arrow = new Area(polygon.Points.Min(p => p.X), polygon.Points.Min(p => p.Y), polygon.Points.Max(p => p.X) - polygon.Points.Min(p => p.X), polygon.Points.Max(p => p.Y) - polygon.Points.Min(p => p.Y));
                Assert.False(Overlap(arrow, letters), $"an arrow covers '{label.Text}' at {letters}");
            }
        }
    });

    // The words of a cell stand on its own paper, above the strand; every other word keeps clear of the casing.
    [Theory]
    [MemberData(nameof(Documents))]
    public void No_strand_runs_through_a_word(string document) => OnEverySheet(document, card =>
    {
        foreach (Label label in card.Labels.Select(l => l.Label))
        {
            Area letters = label.Extent();
            if (card.Cells.Any(c => letters.X > c.Box.X && letters.Right < c.Box.X + c.Box.Width && letters.Y > c.Box.Y && letters.Bottom < c.Box.Y + c.Box.Height))
                continue;
            foreach ((string id, StrandPath path) in card.Strands)
            {
                double half = path.CasingMm / 2;
                IReadOnlyList<Point> points = path.Route.Flatten(0.05);
                for (int i = 1; i < points.Count; i++)
                    Assert.False(Enters(points[i - 1], points[i], letters, half), $"{id} runs through '{label.Text}' at {letters}");
            }
        }
    });

    // Aim of the drawing conventions, section 11: crossing angles of 30 degrees or more on paper.
    [Theory]
    [MemberData(nameof(Documents))]
    public void Strands_cross_at_thirty_degrees_or_more_and_only_inside_parts(string document) => OnEverySheet(document, card =>
    {
        for (int i = 0; i < card.Strands.Count; i++)
        {
            for (int j = i + 1; j < card.Strands.Count; j++)
            {
                IReadOnlyList<Point> one = card.Strands[i].Path.Route.Flatten(0.05), other = card.Strands[j].Path.Route.Flatten(0.05);
                for (int a = 1; a < one.Count; a++)
                {
                    for (int b = 1; b < other.Count; b++)
                    {
                        (double x, double y, double degrees) = Crossing(one[a - 1], one[a], other[b - 1], other[b]);
                        if (double.IsNaN(degrees))
                            continue;
                        Assert.True(degrees >= 30, $"strands cross at {degrees:0} degrees");
                        Assert.Contains(card.Boxes, p => p.Width > 60 && x > p.X && x < p.X + p.Width && y > p.Y && y < p.Y + p.Height && p.Height < 60);
                    }
                }
            }
        }
    });

    [Theory]
    [MemberData(nameof(Documents))]
    public void A_strand_keeps_clear_of_the_foot(string document) => OnEverySheet(document, card =>
    {
        double rule = card.Sheet.Layers.Single(l => l.Id == "words").Children.OfType<SceneGroup>().Single(g => g.Id == "foot").Children.OfType<Line>().Single().Y1;
        Assert.All(card.Strands, s => Assert.All(s.Path.Route.Flatten(0.05), p => Assert.True(p.Y < rule)));
        Assert.All(card.Labels.Where(l => l.Layer == "hops"), l => Assert.True(l.Label.BaselineY < rule));
    });

    private static void OnEverySheet(string document, Action<DrawnCard> check)
    {
        foreach (DrawingSheet sheet in CardDocuments.Drawn(document).Sheets)
            check(DrawnCard.Of(sheet));
    }

    private static Area Letters(Label label)
    {
        Area capitals = label.Extent();
        return capitals with { Y = capitals.Y, Height = capitals.Height * (1 + Hang) };
    }

    private static bool Overlap(Area a, Area b) =>
        a.X < b.Right - Slack && b.X < a.Right - Slack && a.Y < b.Bottom - Slack && b.Y < a.Bottom - Slack;

    /// <summary>True when a line of some width comes into an area; sampled closely enough for letters.</summary>
    private static bool Enters(Point from, Point to, Area area, double half)
    {
        double length = Math.Sqrt(((to.X - from.X) * (to.X - from.X)) + ((to.Y - from.Y) * (to.Y - from.Y)));
        int steps = Math.Max(1, (int)(length / 0.2));
        for (int i = 0; i <= steps; i++)
        {
            double x = from.X + ((to.X - from.X) * i / steps), y = from.Y + ((to.Y - from.Y) * i / steps);
            if (x > area.X - half && x < area.Right + half && y > area.Y - half && y < area.Bottom + half)
                return true;
        }

        return false;
    }

    private static (double X, double Y, double Degrees) Crossing(Point a, Point b, Point c, Point d)
    {
        double rx = b.X - a.X, ry = b.Y - a.Y, sx = d.X - c.X, sy = d.Y - c.Y;
        double cross = (rx * sy) - (ry * sx);
        if (Math.Abs(cross) < 1e-9)
            return (0, 0, double.NaN);
        double t = (((c.X - a.X) * sy) - ((c.Y - a.Y) * sx)) / cross, u = (((c.X - a.X) * ry) - ((c.Y - a.Y) * rx)) / cross;
        if (t is < 0 or > 1 || u is < 0 or > 1)
            return (0, 0, double.NaN);
        double degrees = Math.Abs(Math.Atan2(ry, rx) - Math.Atan2(sy, sx)) * 180 / Math.PI % 180;
        return (a.X + (t * rx), a.Y + (t * ry), Math.Min(degrees, 180 - degrees));
    }
}
