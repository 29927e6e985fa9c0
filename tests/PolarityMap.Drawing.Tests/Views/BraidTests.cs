using CsCheck;
using PolarityMap.Drawing.Scene;
using PolarityMap.Drawing.Views.Strands;
using Xunit;

namespace PolarityMap.Drawing.Tests.Views;

/// <summary>
/// Crossings of a braid against the inversions of its order: in a drawing between two columns two strands must cross when, and
/// only when, their order is inverted (Simple and Efficient Bilayer Cross Counting, J. Graph Algorithms Appl. 8(2), 2004).
/// Crossings are counted on the flattened curves, not on the plan.
/// </summary>
public sealed class BraidTests
{
    private const double Pitch = 5;

    private static readonly Gen<int[]> Orders = Gen.Int[1, 16].SelectMany(n => Gen.Shuffle(Enumerable.Range(0, n).ToArray()));

    [Fact]
    public void Strands_cross_exactly_as_often_as_their_order_is_inverted() => Orders.Sample(order =>
    {
        Assert.Equal(Inversions(order), Crossings(Routes(order, 2.6)).Count);
    }, iter: 200);

    [Fact]
    public void No_more_than_two_crossings_lie_within_two_and_a_half_millimetres() => Orders.Sample(order =>
    {
        List<Point> crossings = Crossings(Routes(order, 2.6));
        foreach (Point c in crossings)
            Assert.True(crossings.Count(o => Math.Sqrt(((o.X - c.X) * (o.X - c.X)) + ((o.Y - c.Y) * (o.Y - c.Y))) <= 2.5) <= 2);
    }, iter: 200);

    [Fact]
    public void A_reversal_of_twelve_has_sixty_six_crossings()
    {
        int[] order = [.. Enumerable.Range(0, 12).Reverse()];
        Assert.Equal(66, Crossings(Routes(order, 4)).Count);
    }

    [Fact]
    public void Strands_in_order_need_no_stage() => Assert.Equal(0, Plan([0, 1, 2, 3]).Stages);

    // In a reversal the first of those that run down passes all behind it while they wait, the next is passed by it, and so on to
    // the last, which all others have passed before it starts; those that run up do the same from below.
    [Theory]
    [InlineData(8)]
    [InlineData(12)]
    [InlineData(24)]
    public void Of_a_reversal_the_outer_strands_pass_most_and_the_inner_ones_are_passed(int count)
    {
        var plan = BraidPlan.Of([.. Enumerable.Range(0, count).Reverse()]);
        int[] down = plan.Passed[..(count / 2)].ToArray(), up = [.. plan.Passed[(count / 2)..].ToArray().Reverse()];
        Assert.All([down, up], passed =>
        {
            Assert.Equal(passed.OrderDescending(), passed);
            Assert.True(passed[0] >= (count / 2) - 1 && passed[^1] < 0);
        });
        Assert.Equal(Enumerable.Range(0, count).Select(i => i < count / 2), Enumerable.Range(0, count).Select(plan.RunsDown));
    }

    // Who passes is passed by nobody at that crossing: over all strands it adds up to nothing.
    [Fact]
    public void As_often_as_strands_pass_strands_are_passed() => Orders.Sample(order => Assert.Equal(0, BraidPlan.Of(order).Passed.ToArray().Sum()), iter: 200);

    [Fact]
    public void A_strand_of_a_reversal_runs_once_and_never_turns_back()
    {
        int[] order = [.. Enumerable.Range(0, 12).Reverse()];
        Route[] routes = Routes(order, 3);
        for (int i = 0; i < 12; i++)
        {
            IReadOnlyList<Point> points = routes[i].Flatten(0.05);
            int way = Math.Sign(order[i] - i);
            for (int k = 1; k < points.Count; k++)
                Assert.True((points[k].Y - points[k - 1].Y) * way >= -1e-9);
        }
    }

    [Fact]
    public void A_strand_starts_and_ends_in_its_rows_and_never_runs_back() => Orders.Sample(order =>
    {
        Route[] routes = Routes(order, 4);
        for (int i = 0; i < order.Length; i++)
        {
            Assert.Equal(i * Pitch, routes[i].Start.Y, 9);
            Assert.Equal(order[i] * Pitch, routes[i].End.Y, 9);
            IReadOnlyList<Point> points = routes[i].Flatten(0.05);
            for (int k = 1; k < points.Count; k++)
                Assert.True(points[k].X >= points[k - 1].X - 1e-9);
        }
    }, iter: 200);

    private static Braid Plan(int[] order) =>
        new(BraidPlan.Of(order), Enumerable.Range(0, order.Length).Select(i => i * Pitch), order.Select(o => o * Pitch));

    private static Route[] Routes(int[] order, double stage)
    {
        Braid braid = Plan(order);
        double width = Math.Max(1, braid.Stages) * stage;
        return [.. Enumerable.Range(0, order.Length).Select(i => Route.Of(new Point(0, i * Pitch), [.. braid.Route(i, 0, width)]))];
    }

    private static int Inversions(int[] order)
    {
        int count = 0;
        for (int i = 0; i < order.Length; i++)
        {
            for (int j = i + 1; j < order.Length; j++)
                count += order[i] > order[j] ? 1 : 0;
        }

        return count;
    }

    /// <summary>
    /// Where two curves change sides. Every curve has one height at each x, so a crossing is a change of sign of the difference;
    /// the odd step keeps the samples off the stages' middles, where crossings lie.
    /// </summary>
    private static List<Point> Crossings(Route[] routes)
    {
        const double step = 0.0517;
        IReadOnlyList<Point>[] lines = [.. routes.Select(r => r.Flatten(0.005))];
        double end = lines[0][^1].X;
        var heights = lines.Select(l => Heights(l, step, end)).ToArray();
        var found = new List<Point>();
        for (int i = 0; i < lines.Length; i++)
        {
            for (int j = i + 1; j < lines.Length; j++)
            {
                for (int k = 1; k < heights[i].Count; k++)
                {
                    if ((heights[i][k - 1] < heights[j][k - 1]) != (heights[i][k] < heights[j][k]))
                        found.Add(new Point(k * step, heights[i][k]));
                }
            }
        }

        return found;
    }

    private static List<double> Heights(IReadOnlyList<Point> line, double step, double end)
    {
        var heights = new List<double>();
        int at = 1;
        for (double x = 0; x < end; x += step)
        {
            while (at + 1 < line.Count && line[at].X < x)
                at++;
            double share = (x - line[at - 1].X) / (line[at].X - line[at - 1].X);
            heights.Add(line[at - 1].Y + (share * (line[at].Y - line[at - 1].Y)));
        }

        return heights;
    }
}
