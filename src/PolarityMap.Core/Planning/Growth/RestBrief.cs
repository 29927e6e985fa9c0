using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>The brief of the links that do not stay.</summary>
internal static class RestBrief
{
    public static Brief Of(Brief brief, IReadOnlyList<Service> services, GrowthSupply supply, Plant plant)
    {
        Dictionary<(int Group, int Outlet), int[]> links = [];
        foreach (Service service in services.Where(s => !s.IsKept))
        {
            if (!links.TryGetValue((service.Group, service.Outlet), out int[]? of))
                links[(service.Group, service.Outlet)] = of = new int[brief.Networks.Count];
            of[service.Network]++;
        }

        var outlets = new List<BriefOutlets>();
        for (int group = 0; group < brief.Outlets.Count; group++)
        {
            BriefOutlets all = brief.Outlets[group];
            for (int first = 0; first < all.Name.Count;)
            {
                int[]? of = links.GetValueOrDefault((group, first));
                string there = supply.PatternOf(group, first);
                int next = first + 1;
                while (next < all.Name.Count && (links.GetValueOrDefault((group, next)) ?? []).SequenceEqual(of ?? []) && supply.PatternOf(group, next) == there)
                    next++;
                if (of is not null || there.Length > 0)
                    outlets.Add(all with { Name = all.Name.Slice(first, next - first), Links = of ?? new int[brief.Networks.Count] });
                first = next;
            }
        }

        return brief with
        {
            Outlets = outlets,
            Segments = supply.Segments,
            Rooms = [.. brief.Rooms.Select(r => TakenPlaces.In(r, brief.RackUnits, plant, isKnown: brief.Places.ContainsKey($"rooms.{r.Name}.rack")))],
            TrunksArePinned = brief.TrunksArePinned || brief.HasParallel,
            Networks = [.. brief.Networks.Select(n => n with { Later = null, Switches = null })],
        };
    }
}
