namespace PolarityMap.Core.Planning;

/// <summary>Links of the networks that are to carry something else later.</summary>
/// <param name="GoOn">How many of them there are then.</param>
/// <param name="Now">How many there are now.</param>
public readonly record struct LinksLater(int GoOn, int Now)
{
    /// <summary>Those of all networks of a plan; none where nothing is to change or nothing could be built of it.</summary>
    public static LinksLater Of(PlanProof proof)
    {
        if (proof is not { Planned.Brief: { } brief, Later.Planned.Brief: { } later })
            return default;
        int[] changing = [.. Enumerable.Range(0, brief.Networks.Count).Where(n => brief.Networks[n].Later is not null)];
        return new LinksLater(changing.Sum(n => Links(later, n)), changing.Sum(n => Links(brief, n)));
    }

    /// <summary>Those of one network.</summary>
    /// <param name="brief">The brief for now.</param>
    /// <param name="later">The brief for later, with the same networks.</param>
    /// <param name="network">Index of the network.</param>
    public static LinksLater Of(Brief brief, Brief later, int network) => new(Links(later, network), Links(brief, network));

    public override string ToString() => $"{GoOn} of {Now}";

    private static int Links(Brief brief, int network) => brief.Outlets.Sum(o => o.Name.Count * o.Links[network]);
}
