namespace PolarityMap.Core.Planning;

/// <summary>
/// The brief of the same plant when its networks carry what they are to carry later: as many links as now, or where the brief says
/// so and pairs give way to a parallel application, one link for each array that pairs take now.
/// </summary>
public static class LaterBrief
{
    /// <summary>The brief for later; null where nothing is to change, or with a refusal where it cannot be.</summary>
    /// <param name="brief">The brief for now.</param>
    /// <param name="candidate">How the plant is built.</param>
    /// <param name="refusal">Why there is none, or null.</param>
    public static Brief? Of(Brief brief, PlanCandidate candidate, out Refusal? refusal)
    {
        refusal = null;
        if (brief.Networks.All(n => n.Later is null))
            return null;
        IReadOnlyList<BriefOutlets> outlets = brief.Outlets;
        for (int network = 0; network < brief.Networks.Count; network++)
        {
            BriefNetwork of = brief.Networks[network];
            if (!TakesArrays(of))
                continue;
            if (brief.Separation == SeparationPolicy.Gathered && brief.Outlets.FirstOrDefault(o => o.Distance is not null && o.Links[network] > 0) is { } gathered)
            {
                refusal = new Refusal($"networks.{of.Name}.later", RefusalCode.Later, $"the cable to each of {gathered.Name} has a pair of each network in one array, and a link of {of.Later!.Name} takes an array for itself");
                return null;
            }

            if (of.LaterLinks == LaterLinks.Arrays)
                outlets = OneForEachArray(brief, outlets, network, candidate.Base / 2);
        }

        return brief with
        {
            Networks = [.. brief.Networks.Select(n => n.Later is not { } later ? n : TakesArrays(n)
                ? n with { Application = later, Later = null, Spare = n.LaterLinks == LaterLinks.All ? n.Spare : default(Percentage), ArraysBefore = links => SegmentRoom.Ceiling((n.Spare ?? brief.Spare).Over(links), candidate.Base / 2) }
                : n with { Application = later, Later = null })],
            Outlets = [.. outlets.Where(o => o.LinksEach > 0)],
            TrunksArePinned = brief.TrunksArePinned || brief.HasParallel,
        };
    }

    /// <summary>True where pairs give way to parallel links, each of which takes an array for itself.</summary>
    public static bool TakesArrays(BriefNetwork network) => network.Later is { IsParallel: true } && !network.Application.IsParallel;

    /// <summary>Leaves a network as many links in each landing as it has arrays there, at the first outlets.</summary>
    private static List<BriefOutlets> OneForEachArray(Brief brief, IReadOnlyList<BriefOutlets> outlets, int network, int ports)
    {
        var changed = new List<BriefOutlets>();
        var left = new Dictionary<int, int>();
        foreach (BriefOutlets o in outlets)
        {
            int links = o.Links[network];
            if (links == 0)
            {
                changed.Add(o);
            }
            else if (o.Distance is not null)
            {
                changed.Add(With(o, network, Math.Min(links, (brief.Spare.Over(links) + ports - 1) / ports)));
            }
            else
            {
                if (!left.TryGetValue(o.Room, out int arrays))
                    arrays = (brief.Spare.Over(brief.Outlets.Where(r => r.Room == o.Room && r.Distance is null).Sum(r => r.Name.Count * r.Links[network])) + ports - 1) / ports;
                int whole = Math.Min(o.Name.Count, arrays / links);
                if (whole > 0)
                    changed.Add(o with { Name = o.Name.Slice(0, whole) });
                if (whole < o.Name.Count && arrays - (whole * links) is > 0 and int some)
                    changed.Add(With(o with { Name = o.Name.Slice(whole, 1) }, network, some));
                int partly = whole + (whole < o.Name.Count && arrays - (whole * links) > 0 ? 1 : 0);
                if (partly < o.Name.Count)
                    changed.Add(With(o with { Name = o.Name.Slice(partly, o.Name.Count - partly) }, network, 0));
                left[o.Room] = Math.Max(0, arrays - (o.Name.Count * links));
            }
        }

        return changed;
    }

    private static BriefOutlets With(BriefOutlets outlets, int network, int links) =>
        outlets with { Links = [.. outlets.Links.Select((l, n) => n == network ? links : l)] };
}
