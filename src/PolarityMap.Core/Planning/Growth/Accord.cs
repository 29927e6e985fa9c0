using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>Holds a brief against the plant that is to grow: what it says of networks and rooms that are there already.</summary>
internal static class Accord
{
    /// <summary>Null where they agree, else why the plant cannot grow to the brief.</summary>
    /// <param name="brief">The new brief.</param>
    /// <param name="plant">The plant that is there.</param>
    /// <param name="agreed">The brief with its networks as they are in the plant.</param>
    /// <param name="remarks">Where the plant differs and stays as it is.</param>
    public static string? Of(Brief brief, Plant plant, out Brief agreed, out IReadOnlyList<string> remarks)
    {
        var said = new List<string>();
        var networks = new List<BriefNetwork>();
        agreed = brief;
        remarks = said;
        foreach (BriefNetwork network in brief.Networks)
        {
            if (plant.Networks.FirstOrDefault(n => n.Name == network.Name) is not { } there)
            {
                networks.Add(network);
                continue;
            }

            if (network.Network.Key is { } key && key != there.Key)
                return $"networks.{network.Name}.key: the brief says {key}, and what stays of {network.Name} {(there.Key is { } old ? $"has {old}: write {old}" : "is plain: leave the key out")}, or plan anew without --from";
            if (network.Network.Colour is { } colour && colour != there.Colour)
                said.Add($"{network.Name} stays {there.Colour ?? "without a colour"}, as it is in the plant; the brief says {colour}");
            networks.Add(network with { Network = network.Network with { Key = there.Key, Colour = there.Colour } });
        }

        if (plant.Networks.Count > 0 && !brief.Networks.Any(b => plant.Networks.Any(n => n.Name == b.Name)))
            return $"the brief has none of the plant's networks, which are {string.Join(", ", plant.Networks.Select(n => n.Name))}; a network goes on under its name";
        foreach (Network gone in plant.Networks.Where(n => !brief.Networks.Any(b => b.Name == n.Name)))
            said.Add($"the brief has no network {gone.Name}, so its links end");
        string[] rooms = [.. plant.Parts.Select(p => p.Room).OfType<string>().Distinct().Where(r => !brief.Rooms.Any(b => b.Name == r))];
        if (rooms.Length > 0)
            said.Add($"the brief has no room {GrowthWords.Few(rooms)}, where parts of the plant are; what has to be elsewhere is planned anew there");
        if (plant.Parts.Any(p => !p.Shape.IsCable && p.Room is null))
            said.Add("parts of the plant name no room, so that nothing is known to be free in them");
        agreed = brief with { Networks = networks };
        return null;
    }
}
