using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Budget;

/// <summary>The strands of one link, or of two ports that light joins without a declared link.</summary>
/// <param name="Link">Index into the plant's links, or -1.</param>
/// <param name="From">The first end, as the document writes the link, or that from which the runs come.</param>
/// <param name="To">The other end.</param>
/// <param name="Strands">Its lit strands, the worst first; never empty.</param>
public sealed record LinkBudget(int Link, LinkEnd From, LinkEnd To, IReadOnlyList<StrandBudget> Strands)
{
    /// <summary>The strand with the least to spare.</summary>
    public StrandBudget Worst => Strands[0];

    /// <summary>True when any strand is over a limit.</summary>
    public bool Exceeds => Strands.Any(s => s.Exceeds);

    /// <summary>True when the loss of every strand could be held against a limit.</summary>
    public bool IsJudged => Strands.All(s => s.LossLimit is not null);

    /// <summary>
    /// True when every strand fits by what the parts state and one would not by the standard's largest losses: the link stands
    /// on the makers' word, which is a remark and not a fault.
    /// </summary>
    public bool FailsByStandard => !Strands.Any(s => s.IsOverLoss) && Strands.Any(s => s.FailsByStandard);

    /// <summary>Orders strands by how little they have to spare.</summary>
    internal static int WorstFirst(StrandBudget a, StrandBudget b)
    {
        int c = b.Exceeds.CompareTo(a.Exceeds);
        if (c == 0)
            c = (a.Margin is null).CompareTo(b.Margin is null);
        if (c == 0 && a.Margin is { } one && b.Margin is { } two)
            c = one.CompareTo(two);
        if (c == 0)
            c = b.Stated.Total.CompareTo(a.Stated.Total);
        if (c == 0)
            c = b.Length.CompareTo(a.Length);
        return c;
    }
}
