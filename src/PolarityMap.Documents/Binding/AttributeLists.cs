using System.Globalization;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Binding;

/// <summary>Reads the attributes that are lists. Each answers null after a report.</summary>
internal sealed class AttributeLists(NodeReader reader, IReadOnlyList<Network> networks)
{
    /// <summary>More entries than any cable or wiring has; a longer list is not looked at one by one.</summary>
    internal const int MostEntries = 2000;

    private ProblemList Problems => reader.Problems;

    /// <summary>Whether the text names a network of the plant.</summary>
    public bool IsNetwork(YamlScalar scalar)
    {
        if (networks.Any(n => n.Name == scalar.Value))
            return true;
        string message = $"there is no network '{PartNames.Shorten(scalar.Value)}'";
        if (networks.Count == 0)
            Problems.Add(scalar.Place, message, "a section 'networks:' that names it");
        else
            reader.Unknown(scalar.Place, message, scalar.Value, [.. networks.Select(n => n.Name)]);
        return false;
    }

    /// <summary>Names of networks.</summary>
    public IReadOnlyList<string>? Networks(YamlNode node, AttributeSpec spec)
    {
        if (Items(node, spec) is not { } items)
            return null;
        var names = new List<string>(items.Count);
        foreach (YamlNode item in items)
        {
            if (reader.Text(item, "the network", "the name of a network") is not { } scalar || !IsNetwork(scalar))
                return null;
            names.Add(scalar.Value);
        }

        return names;
    }

    /// <summary>Pairs of positions.</summary>
    public IReadOnlyList<DuplexPair>? Pairs(YamlNode node, AttributeSpec spec)
    {
        if (Items(node, spec) is not { } items)
            return null;
        var pairs = new List<DuplexPair>(items.Count);
        foreach (YamlNode item in items)
        {
            if (item is YamlSequence { Items: [YamlScalar first, YamlScalar second] } && IsNumber(first.Value, out int a) && IsNumber(second.Value, out int b))
            {
                pairs.Add(new DuplexPair(a, b));
                continue;
            }

            string what = spec.Sort == AttributeSort.Wiring
                ? $"each duplex port of {NodeReader.A(spec.Name)} is a pair of positions, A then B"
                : $"each entry of {spec.Name} is a pair of positions";
            Problems.Add(item.Place, what, "a pair such as [1, 2]");
            return null;
        }

        return pairs;
    }

    /// <summary>For each narrow port of a conversion the wide positions behind it.</summary>
    public IReadOnlyList<IReadOnlyList<WidePosition>>? Conversion(YamlNode node, AttributeSpec spec)
    {
        if (Items(node, spec) is not { } items)
            return null;
        var ports = new List<IReadOnlyList<WidePosition>>(items.Count);
        int left = MostEntries;
        foreach (YamlNode item in items)
        {
            if (item is not YamlSequence { Items.Count: > 0 } row)
            {
                Problems.Add(item.Place, "each narrow port is a list of wide positions", "a list such as [1, 2, 3, 4, 9, 10, 11, 12]");
                return null;
            }

            left -= row.Items.Count;
            if (left < 0)
                return TooMany<IReadOnlyList<IReadOnlyList<WidePosition>>>(item.Place, spec);
            var positions = new List<WidePosition>(row.Items.Count);
            foreach (YamlNode entry in row.Items)
            {
                if (entry is not YamlScalar { IsNull: false } scalar || Wide(scalar.Value) is not { } wide)
                {
                    Problems.Add(entry.Place, entry is YamlScalar { Value: { Length: > 0 } text } ? $"'{PartNames.Shorten(text)}' is no wide position" : "this is no wide position", "a position such as 5, 2:5 for the second wide port, or none");
                    return null;
                }

                positions.Add(wide);
            }

            ports.Add(positions);
        }

        return ports;
    }

    /// <summary>Numbers of legs, one range or a list of numbers and ranges.</summary>
    public IReadOnlyList<int>? Legs(YamlNode node, AttributeSpec spec)
    {
        YamlNode[] items = node is YamlSequence list ? [.. list.Items] : [node];
        string expected = AttributeReader.Expected(spec);
        var legs = new List<int>();
        foreach (YamlNode item in items)
        {
            if (reader.Text(item, spec.Name, expected) is not { } scalar)
                return null;
            if (!NamePattern.TryExpandToken(scalar.Value, (index, message, wanted) => Problems.Add(scalar.PlaceAt(index), message, wanted), out IReadOnlyList<string> names)
                || !reader.Allowance.Names(names.Count, scalar.Place))
                return null;
            if (legs.Count + names.Count > MostEntries)
                return TooMany<IReadOnlyList<int>>(scalar.Place, spec);
            foreach (string name in names)
            {
                if (!IsNumber(name, out int leg) || leg < 1)
                {
                    Problems.Add(scalar.Place, $"'{PartNames.Shorten(name)}' is no leg number", expected);
                    return null;
                }

                legs.Add(leg);
            }
        }

        return legs;
    }

    private static bool IsNumber(string text, out int number) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number);

    private static WidePosition? Wide(string text)
    {
        // A bare dash is no text inside YAML's brackets, so there is a word for it too.
        if (text is "none" or "-")
            return new WidePosition(0, 0);
        int colon = text.IndexOf(':');
        int port = 1;
        if (colon >= 0 && (!IsNumber(text[..colon], out port) || port < 1))
            return null;
        return IsNumber(text[(colon + 1)..], out int position) ? new WidePosition(port, position) : null;
    }

    private IReadOnlyList<YamlNode>? Items(YamlNode node, AttributeSpec spec)
    {
        if (node is YamlSequence { Items: [_, ..] items })
            return items.Count <= MostEntries ? items : TooMany<IReadOnlyList<YamlNode>>(node.Place, spec);
        Problems.Add(node.Place, node is YamlSequence ? $"{spec.Name} is an empty list" : $"{spec.Name} is no list", AttributeReader.Expected(spec));
        return null;
    }

    private T? TooMany<T>(SourcePlace place, AttributeSpec spec)
        where T : class
    {
        Problems.Add(place, $"{spec.Name} has more than {MostEntries} entries", AttributeReader.Expected(spec));
        return null;
    }
}
