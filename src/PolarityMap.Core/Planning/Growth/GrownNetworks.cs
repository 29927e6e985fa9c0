using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>The networks while a plant grows: those that are there, described as the brief does, then the new ones.</summary>
internal static class GrownNetworks
{
    public static IReadOnlyList<Network> Of(Plant plant, Brief brief, IReadOnlyList<SharedPlace>? mayShare) =>
    [
        .. plant.Networks.Select(n => brief.Networks.FirstOrDefault(b => b.Name == n.Name) is { } asked ? asked.Network with { MayShare = mayShare } : n),
        .. brief.Networks.Where(b => !plant.Networks.Any(n => n.Name == b.Name)).Select(b => b.Network with { MayShare = mayShare }),
    ];

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
