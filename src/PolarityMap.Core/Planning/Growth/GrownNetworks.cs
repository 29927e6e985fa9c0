using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>The networks while a plant grows: those that are there, described as the brief does, then the new ones.</summary>
internal static class GrownNetworks
{
    public static IReadOnlyList<Network> Of(Plant plant, Brief brief)
    {
        // A plant that says nothing of what its networks may share goes on saying nothing, unless the brief does.
        bool isSaid = plant.Networks.Count < 2 || plant.Networks.Any(n => n.MayShare is not null) || brief.Places.ContainsKey("separation");
        IReadOnlyList<SharedPlace>? mayShare = isSaid ? PlanGenerator.MayShare(brief) : null;
        return
        [
            .. plant.Networks.Select(n => brief.Networks.FirstOrDefault(b => b.Name == n.Name) is { } asked ? asked.Network with { MayShare = isSaid ? Wider(n.MayShare, mayShare, brief) : n.MayShare } : n),
            .. brief.Networks.Where(b => !plant.Networks.Any(n => n.Name == b.Name)).Select(b => b.Network with { MayShare = mayShare }),
        ];
    }

    /// <summary>What networks of the plant may share: what the brief says, or where it says nothing what the plant says besides.</summary>
    private static IReadOnlyList<SharedPlace>? Wider(IReadOnlyList<SharedPlace>? there, IReadOnlyList<SharedPlace>? asked, Brief brief) =>
        there is null || asked is null || brief.Places.ContainsKey("separation") ? asked : [.. there.Union(asked)];

    public static int IndexOf(Plant plant, Brief brief, string name)
    {
        for (int i = 0; i < plant.Networks.Count; i++)
        {
            if (plant.Networks[i].Name == name)
                return i;
        }

        string[] more = [.. brief.Networks.Select(n => n.Name).Where(n => !plant.Networks.Any(o => o.Name == n))];
        return plant.Networks.Count + Array.IndexOf(more, name);
    }
}
