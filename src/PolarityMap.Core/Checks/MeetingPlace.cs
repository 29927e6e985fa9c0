using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks;

/// <summary>Where along a strand two networks meet, in words.</summary>
internal static class MeetingPlace
{
    /// <summary>The most parts named one by one.</summary>
    private const int MostListed = 4;

    /// <summary>
    /// The first place at which a strand leaves a network for another: a port, an adapter, a mating, or the parts of no
    /// network that lie between. For example <c>at the cord between SW/1 and DESK/1</c>.
    /// </summary>
    /// <param name="context">What the strand is traced in.</param>
    /// <param name="strand">A strand that begins and ends at interfaces of two networks.</param>
    /// <param name="network">The network of the end to begin from.</param>
    public static string Words(CheckContext context, int strand, int network)
    {
        (List<Station> stations, int last, int other) = Find(context, strand, network);
        return Between(context.Plant, stations, last, other);
    }

    /// <summary>The same place for each of some strands: a mating, or the one part between; none where several parts lie between.</summary>
    public static IReadOnlyList<FindingSite> Sites(CheckContext context, IReadOnlyList<int> strands, int network)
    {
        var sites = new List<FindingSite>();
        foreach (int strand in strands)
        {
            (List<Station> stations, int last, int other) = Find(context, strand, network);
            int[] between = [.. stations[(last + 1)..other].Select(s => s.Port.Part).Distinct()];
            FindingSite? site = between.Length switch
            {
                0 when stations[last].Port.Part == stations[other].Port.Part => new FindingSite(stations[last].Port.Part),
                0 => new FindingSite(stations[last].Port.Part, stations[last].Port, stations[other].Port),
                1 => new FindingSite(between[0]),
                _ => null,
            };
            if (site is { } found && !sites.Contains(found))
                sites.Add(found);
        }

        return sites;
    }

    private static (List<Station> Stations, int Last, int Other) Find(CheckContext context, int strand, int network)
    {
        var stations = new List<Station>();
        context.Separation.Strands.Stations(strand, stations);
        if (stations[0].Network != network)
            stations.Reverse();
        int other = stations.FindIndex(s => s.Network >= 0 && s.Network != network);
        return (stations, stations.FindLastIndex(other - 1, s => s.Network == network), other);
    }

    private static string Between(Plant plant, List<Station> stations, int last, int other)
    {
        Station here = stations[last], there = stations[other];
        if (other == last + 1)
            return AtPort(plant, here, there) ?? AtPort(plant, there, here) ?? $"at the mating of {plant.Address(here.Port)} and {plant.Address(there.Port)}";

        // An adapter between two plugs that meet in it is their mating.
        if (other == last + 2 && stations[last + 1].IsAdapter)
            return $"at the adapter {plant.Address(stations[last + 1].Port)}";

        // A cable is told by where it is plugged in: a cord that has no name of its own is called after its ends.
        Station from = IsCable(plant, here) ? stations[last + 1] : here;
        Station to = IsCable(plant, there) ? stations[other - 1] : there;
        string ends = $"between {plant.Address(from.Port)} and {plant.Address(to.Port)}";
        int[] parts = [.. stations[(last + 1)..other].Select(s => s.Port.Part).Distinct()];
        return parts.Length == 1
            ? $"{(plant.Parts[parts[0]].Shape.IsCable ? "at" : "in")} {PartWords.WithKind(plant.Parts[parts[0]])} {ends}"
            : $"somewhere {ends}, in {PartWords.List([.. parts.Select(p => plant.Parts[p].Name)], MostListed)} of no network";
    }

    /// <summary>A port or adapter that the cable of another network is plugged into, or null where it is not so.</summary>
    private static string? AtPort(Plant plant, Station port, Station cable)
    {
        if (IsCable(plant, port) || !IsCable(plant, cable))
            return null;
        return $"at {plant.Address(port.Port)}, where {PartWords.WithKind(plant.Parts[cable.Port.Part])} of {plant.Networks[cable.Network].Name} is plugged in";
    }

    private static bool IsCable(Plant plant, Station station) => plant.Parts[station.Port.Part].Shape.IsCable;
}
