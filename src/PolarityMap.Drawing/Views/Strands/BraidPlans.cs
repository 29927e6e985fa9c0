namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// Remembers plans: how strands are led depends on nothing but their order, and a plant has the same few orders again and again.
/// </summary>
internal sealed class BraidPlans
{
    private readonly Dictionary<string, BraidPlan> _byOrder = new(StringComparer.Ordinal);

    /// <summary>The plan for strands that enter in the order of their index and leave in the given one.</summary>
    /// <param name="byRight">The strands in the order in which they leave; fewer than 65 thousand.</param>
    public BraidPlan Of(ReadOnlySpan<int> byRight)
    {
        const int mostOnStack = 256;
        bool straight = true;
        Span<char> order = byRight.Length <= mostOnStack ? stackalloc char[byRight.Length] : new char[byRight.Length];
        for (int k = 0; k < byRight.Length; k++)
        {
            straight &= byRight[k] == k;
            order[k] = (char)byRight[k];
        }

        if (straight)
            return BraidPlan.Straight;
        Dictionary<string, BraidPlan>.AlternateLookup<ReadOnlySpan<char>> lookup = _byOrder.GetAlternateLookup<ReadOnlySpan<char>>();
        if (!lookup.TryGetValue(order, out BraidPlan? plan))
            lookup[order] = plan = BraidPlan.OfOrder(byRight);
        return plan;
    }
}
