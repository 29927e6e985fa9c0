namespace PolarityMap.Drawing.Views.Strands;

/// <summary>Strands that run side by side from left to right: their rows at both sides, and the plan that leads them.</summary>
internal sealed class Crossing
{
    private readonly int[] _byRight;

    private Crossing((Row Left, Row Right)[] rows, BraidPlans plans)
    {
        Rows = rows;
        _byRight = new int[rows.Length];
        var slots = new int[rows.Length];
        for (int i = 0; i < rows.Length; i++)
            slots[i] = rows[i].Right.Slot;
        BraidPlan.Order(slots, _byRight);
        Plan = plans.Of(_byRight);
    }

    /// <summary>For each strand its row at the left and at the right, in the order of the rows at the left.</summary>
    public IReadOnlyList<(Row Left, Row Right)> Rows { get; }

    public BraidPlan Plan { get; }

    /// <summary>The crossing in which each left row leads on; it knows its index here from then on.</summary>
    /// <param name="rows">The rows from the top down at the left; slots are set.</param>
    /// <param name="plans">Plans by order.</param>
    public static Crossing Of((Row Left, Row Right)[] rows, BraidPlans plans)
    {
        for (int i = 0; i < rows.Length; i++)
            rows[i].Left.Index = i;
        return new Crossing(rows, plans);
    }

    /// <summary>A crossing of further ways from rows that lead on elsewhere, in any order.</summary>
    public static Crossing OfFurther(IEnumerable<(Row Left, Row Right)> rows, BraidPlans plans) => new([.. rows.OrderBy(r => r.Left.Slot)], plans);

    /// <summary>A strand's index in <see cref="Rows"/>.</summary>
    public int IndexOf(int strand)
    {
        int i = 0;
        while (Rows[i].Left.Strand != strand)
            i++;
        return i;
    }

    /// <summary>The rows at given heights by slot; neither side's order changes with them.</summary>
    /// <param name="heights">For each slot.</param>
    /// <param name="leftTop">How much further down the left side is.</param>
    /// <param name="rightTop">How much further down the right side is.</param>
    public Braid At(ReadOnlySpan<double> heights, double leftTop, double rightTop)
    {
        var left = new double[Rows.Count];
        var right = new double[Rows.Count];
        for (int i = 0; i < left.Length; i++)
        {
            left[i] = heights[Rows[i].Left.Slot] + leftTop;
            right[i] = heights[Rows[_byRight[i]].Right.Slot] + rightTop;
        }

        return Braid.OfSorted(Plan, left, right);
    }
}
