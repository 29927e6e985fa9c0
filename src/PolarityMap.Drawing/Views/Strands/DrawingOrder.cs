namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// Which strands of a sheet lie over which. Where many cross, as in a reversal, whoever runs past others lies over those that wait,
/// since a level line is easily followed below others and a slanting one is not; and of two bundles that run through each other
/// one lies over the other as a whole. It is one order for the whole sheet: strands are not woven.
/// </summary>
internal static class DrawingOrder
{
    /// <summary>A strand that passes fewer others at once is easily followed in any order.</summary>
    private const int Many = 5;

    /// <summary>The ways' ranks, by their numbers, the lowest drawn first; null where no strand passes many and the order of numbers will do.</summary>
    public static int[]? Of(Layout layout)
    {
        var ranks = new int[layout.Ways.Count];
        bool any = false;
        foreach (Way way in layout.Ways)
        {
            int family = 0;
            for (int i = 0; i < way.Passages.Count; i++)
            {
                Passage passage = way.Passages[i];
                if (passage is { Node.Inside: { } inside, In: { } into, Out: not null })
                    Add(inside.Plan, into.Index, ref family, ref ranks[way.Number]);
                if (passage.Out is { } from && i + 1 < way.Passages.Count && way.FirstColumn + i < layout.Between.Length)
                    Add(layout.Between[way.FirstColumn + i].Plan, from.Index, ref family, ref ranks[way.Number]);
            }

            any |= family != 0;

            // The first great crossing decides between the bundles, by more than all that a strand may pass.
            ranks[way.Number] += family * layout.Ways.Count * way.Passages.Count;
        }

        return any ? ranks : null;
    }

    /// <summary>True where some strand passes so many others that it takes room to follow it.</summary>
    public static bool NeedsRoom(Layout layout)
    {
        const int veryMany = 7;
        return layout.Between.Any(c => c.Plan.IsGreat(veryMany)) || layout.Columns.Any(c => c.Any(n => n.Inside is { } inside && inside.Plan.IsGreat(veryMany)));
    }

    private static void Add(BraidPlan plan, int strand, ref int family, ref int rank)
    {
        if (!plan.IsGreat(Many))
            return;
        rank += plan.Passed[strand];
        if (family == 0)
            family = plan.RunsDown(strand) ? 1 : -1;
    }
}
