namespace PolarityMap.Core.Planning;

/// <summary>What changes in a plan's parts when its networks carry what they are to carry later.</summary>
/// <param name="Stays">Parts that both plants take.</param>
/// <param name="Buy">Parts that only the later plant takes, interfaces among them.</param>
/// <param name="Spare">Parts of the plant now that the later one has no use for.</param>
public sealed record LaterChange(IReadOnlyList<PlanItem> Stays, IReadOnlyList<PlanItem> Buy, IReadOnlyList<PlanItem> Spare)
{
    /// <summary>Parts to buy, beside interfaces.</summary>
    public int PartsToBuy => Buy.Where(i => !i.IsInterface).Sum(i => i.Quantity);

    /// <summary>Parts that stay, beside interfaces.</summary>
    public int PartsThatStay => Stays.Where(i => !i.IsInterface).Sum(i => i.Quantity);

    /// <summary>Parts that are left over, beside interfaces.</summary>
    public int PartsLeftOver => Spare.Where(i => !i.IsInterface).Sum(i => i.Quantity);

    /// <summary>The change of a plan, or null where nothing comes later or nothing could be built of it.</summary>
    public static LaterChange? Of(PlanProof proof)
    {
        if (proof is not { Report: not null, Later: { Report: not null } then })
            return null;
        IReadOnlyList<PlanItem> now = PlanItem.Of(proof), later = PlanItem.Of(then);
        Dictionary<PlanItem, int> had = Counted(now), takes = Counted(later);
        return new LaterChange(
            Kept(now, i => Math.Min(had[i], takes.GetValueOrDefault(i))),
            Kept(later, i => takes[i] - had.GetValueOrDefault(i)),
            Kept(now, i => had[i] - takes.GetValueOrDefault(i)));
    }

    private static Dictionary<PlanItem, int> Counted(IReadOnlyList<PlanItem> items) => items.GroupBy(i => i.Each()).ToDictionary(g => g.Key, g => g.Sum(i => i.Quantity));

    private static IReadOnlyList<PlanItem> Kept(IReadOnlyList<PlanItem> items, Func<PlanItem, int> quantity) =>
        [.. items.Select(i => i.Each()).Distinct().Select(i => i with { Quantity = quantity(i) }).Where(i => i.Quantity > 0)];
}
