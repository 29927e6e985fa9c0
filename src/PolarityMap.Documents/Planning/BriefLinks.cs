using PolarityMap.Core.Planning;
using PolarityMap.Documents.Binding;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Planning;

/// <summary>Reads how many links an outlet has on each network.</summary>
internal sealed class BriefLinks(NodeReader reader, BriefFields fields, IReadOnlyList<BriefNetwork> networks, int most)
{
    /// <summary>For each network of the brief its links, or null after a report.</summary>
    public int[]? Of(YamlEntry outlet, YamlMapping map)
    {
        const string expected = "links for each network, such as { lighting: 1, sound: 2 }";
        if (map.Find(BriefKeys.Links) is not { } node)
        {
            reader.Problems.Add(outlet.Key.Place, $"it is not said how many links {PartNames.Shorten(outlet.Key.Value)} has", $"'{BriefKeys.Links}:' with {expected}");
            return null;
        }

        if (reader.Mapping(node, BriefKeys.Links, expected) is not { } links)
            return null;
        var each = new int[networks.Count];
        bool sound = true;
        foreach (YamlEntry entry in links.Entries)
        {
            int network = IndexOf(entry.Key.Value);
            if (network < 0 && networks.Count > 0)
                reader.Unknown(entry.Key.Place, $"there is no network '{PartNames.Shorten(entry.Key.Value)}'", entry.Key.Value, [.. networks.Select(n => n.Name)]);
            int? count = fields.WholeOf(entry.Value, "links", 0, most);
            if (network >= 0 && count is { } number)
                each[network] = number;
            sound &= network >= 0 && count is not null;
        }

        if (!sound)
            return null;
        if (each.Sum() > 0)
            return each;
        reader.Problems.Add(links.Place, $"{PartNames.Shorten(outlet.Key.Value)} has no links", "at least one link");
        return null;
    }

    private int IndexOf(string name)
    {
        for (int i = 0; i < networks.Count; i++)
        {
            if (networks[i].Name == name)
                return i;
        }

        return -1;
    }
}
