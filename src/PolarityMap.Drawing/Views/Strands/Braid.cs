using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>A braid plan between given heights: the way that each strand takes in millimetres.</summary>
internal sealed class Braid
{
    private readonly BraidPlan _plan;
    private readonly double[] _left;
    private readonly double[] _right;

    private Braid(BraidPlan plan, double[] left, double[] right)
    {
        _plan = plan;
        _left = left;
        _right = right;
    }

    /// <param name="plan">The plan.</param>
    /// <param name="left">Heights of the rows at the left, in any order.</param>
    /// <param name="right">Heights of the rows at the right.</param>
    public Braid(BraidPlan plan, IEnumerable<double> left, IEnumerable<double> right)
        : this(plan, (double[])[.. left.Order()], (double[])[.. right.Order()])
    {
    }

    /// <summary>The same from heights in order, from the top down.</summary>
    public static Braid OfSorted(BraidPlan plan, double[] left, double[] right) => new(plan, left, right);

    /// <inheritdoc cref="BraidPlan.Stages"/>
    public int Stages => _plan.Stages;

    /// <summary>The widest gap between two rows at either side.</summary>
    public double WidestGap()
    {
        double gap = 0;
        for (int i = 1; i < _left.Length; i++)
            gap = Math.Max(gap, Math.Max(_left[i] - _left[i - 1], _right[i] - _right[i - 1]));
        return gap;
    }

    /// <summary>Horizontal room for one stage, so that strands that run past the widest gap between rows are not too steep.</summary>
    public double StageFor(double wanted) => StageFor(wanted, WidestGap());

    /// <inheritdoc cref="StageFor(double)"/>
    public static double StageFor(double wanted, double widestGap) => Math.Max(wanted, widestGap / Measures.Steepest);

    /// <summary>
    /// The segments of one strand, from its left height at <paramref name="x0"/> to its right height at <paramref name="x1"/>.
    /// Straight runs are one segment each, corners are curves.
    /// </summary>
    public IReadOnlyList<RouteSegment> Route(int strand, double x0, double x1)
    {
        var segments = new List<RouteSegment>();
        Lead(strand, x0, x1, 0, segments);
        return segments;
    }

    /// <summary>Appends the segments of one strand, moved down.</summary>
    public void Lead(int strand, double x0, double x1, double down, List<RouteSegment> segments)
    {
        double[] heights = Heights(strand);
        int moments = heights.Length - 1;
        double step = (x1 - x0) / moments;
        for (int m = 0; m < moments; m++)
        {
            double rise = heights[m + 1] - heights[m];
            double slopeIn = m == 0 ? 0 : Tangent(heights[m] - heights[m - 1], rise);
            double slopeOut = m == moments - 1 ? 0 : Tangent(rise, heights[m + 2] - heights[m + 1]);
            double x = x0 + (m * step);
            var end = new Point(x + step, heights[m + 1]);
            if (!IsStraight(slopeIn, rise, slopeOut))
            {
                segments.Add(RouteSegment.Cubic(
                    new Point(x + (step / 3), heights[m] + (slopeIn / 3)),
                    new Point(x + (2 * step / 3), heights[m + 1] - (slopeOut / 3)),
                    end).MovedDown(down));
            }
            else if (m == moments - 1 || !GoesOnStraight(heights, m + 1))
            {
                segments.Add(RouteSegment.Line(end).MovedDown(down));
            }
        }
    }

    /// <summary>The height at each moment: rows at the left may be spaced otherwise than at the right.</summary>
    private double[] Heights(int strand)
    {
        if (_plan.Stages == 0)
            return [_left[strand], _right[strand]];
        double[] rows = _plan.RowsOf(strand);
        var heights = new double[rows.Length];
        for (int m = 0; m < rows.Length; m++)
        {
            double share = (double)m / (rows.Length - 1);
            heights[m] = (At(_left, rows[m]) * (1 - share)) + (At(_right, rows[m]) * share);
        }

        return heights;
    }

    /// <summary>True when the moment after is straight too and runs on at the same slope.</summary>
    private static bool GoesOnStraight(double[] heights, int m)
    {
        double rise = heights[m + 1] - heights[m];
        double slopeOut = m == heights.Length - 2 ? 0 : Tangent(rise, heights[m + 2] - heights[m + 1]);
        return IsStraight(heights[m] - heights[m - 1], rise, slopeOut);
    }

    private static bool IsStraight(double slopeIn, double rise, double slopeOut) =>
        Math.Abs(slopeIn - rise) < 1e-9 && Math.Abs(slopeOut - rise) < 1e-9;

    /// <summary>The height of a row, or of a place between two rows.</summary>
    private static double At(double[] heights, double row)
    {
        int above = (int)row;
        double share = row - above;
        return share == 0 ? heights[above] : (heights[above] * (1 - share)) + (heights[above + 1] * share);
    }

    /// <summary>The rise at a moment: none where the strand turns or waits, so that it never overshoots its row.</summary>
    private static double Tangent(double before, double after) =>
        before * after <= 0 ? 0 : 2 * before * after / (before + after);
}
