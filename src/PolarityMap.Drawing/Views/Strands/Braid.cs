using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// Leads strands from one order to another by exchanges of neighbours, stage by stage, all exchanges of a stage side by side
/// (odd-even transposition). Every pair that must cross crosses once and no other pair does, so there are exactly as many
/// crossings as inversions, each at a place of its own: a reversal of twelve becomes a lattice, not a knot.
/// </summary>
internal sealed class Braid
{
    private readonly double[] _left;
    private readonly double[] _right;
    private readonly int[][] _orders;

    private Braid(double[] left, double[] right, int[][] orders)
    {
        _left = left;
        _right = right;
        _orders = orders;
    }

    /// <summary>Number of stages; none where no two strands cross.</summary>
    public int Stages => _orders.Length - 1;

    /// <summary>Plans a braid.</summary>
    /// <param name="left">Height of each strand where it enters, ascending by index.</param>
    /// <param name="right">Height of each strand where it leaves.</param>
    public static Braid Plan(IReadOnlyList<double> left, IReadOnlyList<double> right)
    {
        int n = left.Count;
        var target = new int[n];
        int[] byRight = [.. Enumerable.Range(0, n).OrderBy(i => right[i]).ThenBy(i => i)];
        for (int k = 0; k < n; k++)
            target[byRight[k]] = k;
        var order = new int[n];
        for (int i = 0; i < n; i++)
            order[i] = i;
        var orders = new List<int[]> { (int[])order.Clone() };
        bool exchanged = true;
        for (int round = 0; round < n + 1 && (exchanged || round < 2); round++)
        {
            exchanged = false;
            for (int k = round & 1; k + 1 < n; k += 2)
            {
                if (target[order[k]] <= target[order[k + 1]])
                    continue;
                (order[k], order[k + 1]) = (order[k + 1], order[k]);
                exchanged = true;
            }

            if (exchanged)
                orders.Add((int[])order.Clone());
            exchanged |= !IsSorted(order, target);
        }

        return new Braid([.. left.Order()], [.. right.Order()], [.. orders]);
    }

    /// <summary>The segments of one strand, from height <c>left[strand]</c> at <paramref name="x0"/> to its right height at <paramref name="x1"/>.</summary>
    public IEnumerable<RouteSegment> Route(int strand, double x0, double x1)
    {
        int stages = Math.Max(1, Stages);
        var heights = new double[stages + 1];
        for (int s = 0; s <= stages; s++)
        {
            int k = Array.IndexOf(_orders[Math.Min(s, Stages)], strand);
            double share = (double)s / stages;
            heights[s] = (_left[k] * (1 - share)) + (_right[k] * share);
        }

        double step = (x1 - x0) / stages;
        for (int s = 0; s < stages; s++)
        {
            double x = x0 + (s * step);
            double rise = heights[s + 1] - heights[s];
            double slopeIn = s == 0 ? 0 : Tangent(heights[s] - heights[s - 1], rise);
            double slopeOut = s == stages - 1 ? 0 : Tangent(rise, heights[s + 2] - heights[s + 1]);
            yield return RouteSegment.Cubic(
                new Point(x + (step / 3), heights[s] + (slopeIn / 3)),
                new Point(x + (2 * step / 3), heights[s + 1] - (slopeOut / 3)),
                new Point(x + step, heights[s + 1]));
        }
    }

    /// <summary>The rise at a stage's border: none where the strand turns or waits, so that it never overshoots its row.</summary>
    private static double Tangent(double before, double after) =>
        before * after <= 0 ? 0 : 2 * before * after / (before + after);

    private static bool IsSorted(int[] order, int[] target)
    {
        for (int k = 0; k + 1 < order.Length; k++)
        {
            if (target[order[k]] > target[order[k + 1]])
                return false;
        }

        return true;
    }
}
