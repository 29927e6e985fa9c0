using PolarityMap.Core.Plants;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Binding;

/// <summary>Reads the section of networks.</summary>
internal sealed class NetworkReader(NodeReader reader)
{
    /// <summary>The most networks: each is a separate installation with cables of its own.</summary>
    internal const int MostNetworks = 100;

    /// <summary>The word for an empty list of what may be shared.</summary>
    internal const string Nothing = "none";

    private const string SharedExpected = "a list of sheath, cassette, array, panel; or the word none";

    private ProblemList Problems => reader.Problems;

    /// <summary>Adds every network to the plant.</summary>
    public void Read(YamlNode node, PlantBuilder plant)
    {
        if (reader.Mapping(node, "networks", "network names with their attributes") is not { } list)
            return;
        foreach (YamlEntry entry in list.Entries)
        {
            if (plant.Networks.Count == MostNetworks)
            {
                Problems.Add(entry.Key.Place, $"a plant has at most {MostNetworks} networks");
                return;
            }

            if (!Names.IsValid(entry.Key.Value, out string why))
                Problems.Add(entry.Key.Place, $"this is no name for a network: {why}", Names.Rule);
            else
                plant.AddNetwork(One(entry));
        }
    }

    private Network One(YamlEntry entry)
    {
        var network = new Network(entry.Key.Value, null, entry.Key.Place);
        if (entry.Value is YamlMapping attributes)
        {
            reader.CheckKeys(attributes, DocumentKeys.OfNetwork, "a network");
            return network with
            {
                Colour = attributes.Find(DocumentKeys.Colour) is { } colour ? reader.Text(colour, DocumentKeys.Colour, "a colour in words, such as red")?.Value : null,
                Key = attributes.Find(DocumentKeys.Key) is { } key ? reader.Text(key, DocumentKeys.Key, "a key code, such as red")?.Value : null,
                PlainFits = attributes.Find(DocumentKeys.PlainFits) is { } fits && IsYes(fits),
                MayShare = attributes.Find(DocumentKeys.MayShare) is { } share ? Shared(share) : null,
            };
        }

        if (entry.Value is not YamlScalar { IsNull: true })
            Problems.Add(entry.Value.Place, "a network is described by attributes", "{ colour: red }");
        return network;
    }

    private bool IsYes(YamlNode node)
    {
        if (reader.Text(node, DocumentKeys.PlainFits, "yes or no") is not { } scalar)
            return false;
        if (scalar.Value is not ("yes" or "no"))
            Problems.Add(scalar.Place, $"'{PartNames.Shorten(scalar.Value)}' is neither yes nor no", "yes or no");
        return scalar.Value == "yes";
    }

    private List<SharedPlace>? Shared(YamlNode node)
    {
        if (node is YamlScalar { Value: Nothing })
            return [];
        if (node is not YamlSequence { Items: var items })
        {
            Problems.Add(node.Place, "may-share is no list", SharedExpected);
            return null;
        }

        var shared = new List<SharedPlace>();
        foreach (YamlNode item in items)
        {
            if (reader.Text(item, "what may be shared", SharedExpected) is not { } scalar)
                return null;
            int at = -1;
            for (int i = 0; i < SharedWords.All.Count; i++)
            {
                if (SharedWords.All[i] == scalar.Value)
                    at = i;
            }

            if (at < 0)
            {
                reader.Unknown(scalar.Place, $"networks cannot share '{PartNames.Shorten(scalar.Value)}'", scalar.Value, SharedWords.All);
                return null;
            }

            if (!shared.Contains((SharedPlace)at))
                shared.Add((SharedPlace)at);
        }

        return shared;
    }
}
