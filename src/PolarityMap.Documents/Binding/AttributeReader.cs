using System.Globalization;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Binding;

/// <summary>Reads the attributes of a part by the specifications of its kind.</summary>
internal sealed class AttributeReader(NodeReader reader, IReadOnlyList<Network> networks)
{
    /// <summary>More legs than any cable has; a longer list is not looked at one by one.</summary>
    private const int MostLegs = 1000;

    private ProblemList Problems => reader.Problems;

    /// <summary>Reads every entry but <c>kind</c> into values; false when something was reported.</summary>
    public bool Read(YamlMapping mapping, PartKind kind, AttributeValues values, Dictionary<string, SourcePlace> places)
    {
        int before = Problems.Count;
        foreach (YamlEntry entry in mapping.Entries)
        {
            string name = entry.Key.Value;
            if (name == DocumentKeys.Kind)
                continue;
            AttributeSpec? spec = kind.AllAttributes.FirstOrDefault(s => s.Name == name);
            if (spec is null)
            {
                reader.Unknown(entry.Key.Place, $"{NodeReader.A(kind.Name)} has no attribute '{PartNames.Shorten(name)}'", name, [.. kind.AllAttributes.Select(s => s.Name)]);
                continue;
            }

            places[name] = entry.Value.Place;
            ReadOne(entry.Value, spec, values);
        }

        return Problems.Count == before;
    }

    private void ReadOne(YamlNode node, AttributeSpec spec, AttributeValues values)
    {
        if (spec.Sort == AttributeSort.Wiring && node is YamlSequence list)
        {
            ReadWiring(list, spec, values);
            return;
        }

        if (spec.Sort == AttributeSort.Legs)
        {
            ReadLegs(node, spec, values);
            return;
        }

        if (reader.Text(node, spec.Name, Expected(spec)) is not { } scalar)
            return;
        string text = scalar.Value;
        switch (spec.Sort)
        {
            case AttributeSort.Choice or AttributeSort.Wiring:
                if (spec.Words.Contains(text))
                    values.Set(spec.Name, text);
                else
                    reader.Unknown(scalar.Place, $"'{PartNames.Shorten(text)}' is no {spec.Name}", text, spec.Words);
                break;
            case AttributeSort.WholeNumber:
                if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
                    && (spec.Numbers.Count > 0 ? spec.Numbers.Contains(number) : number >= spec.Min && number <= spec.Max))
                    values.Set(spec.Name, number);
                else
                    Problems.Add(scalar.Place, $"'{PartNames.Shorten(text)}' is no {spec.Name}", Expected(spec));
                break;
            case AttributeSort.Length:
                if (Length.TryParse(text, out Length length, out string why))
                    values.Set(spec.Name, length);
                else
                    Problems.Add(scalar.Place, $"'{PartNames.Shorten(text)}' is no length: {PartNames.Shorten(why)}");
                break;
            case AttributeSort.Network:
                if (networks.Any(n => n.Name == text))
                    values.Set(spec.Name, text);
                else if (networks.Count == 0)
                    Problems.Add(scalar.Place, $"there is no network '{PartNames.Shorten(text)}'", "a section 'networks:' that names it");
                else
                    reader.Unknown(scalar.Place, $"there is no network '{PartNames.Shorten(text)}'", text, [.. networks.Select(n => n.Name)]);
                break;
            default:
                values.Set(spec.Name, text);
                break;
        }
    }

    private static string Expected(AttributeSpec spec) => spec.Sort switch
    {
        AttributeSort.Choice => "one of " + string.Join(", ", spec.Words),
        AttributeSort.Wiring => "one of " + string.Join(", ", spec.Words) + ", or pairs such as [[1, 2], [3, 4]]",
        AttributeSort.WholeNumber when spec.Numbers.Count > 0 => string.Join(" or ", spec.Numbers),
        AttributeSort.WholeNumber => $"a whole number from {spec.Min} to {spec.Max}",
        AttributeSort.Length => "a length with its unit, such as '62 m'",
        AttributeSort.Network => "the name of a network",
        AttributeSort.Legs => "leg numbers, such as 5..8",
        _ => "a text",
    };

    private void ReadWiring(YamlSequence list, AttributeSpec spec, AttributeValues values)
    {
        var pairs = new List<DuplexPair>(list.Items.Count);
        foreach (YamlNode item in list.Items)
        {
            if (item is YamlSequence { Items: [YamlScalar first, YamlScalar second] }
                && int.TryParse(first.Value, NumberStyles.None, CultureInfo.InvariantCulture, out int a)
                && int.TryParse(second.Value, NumberStyles.None, CultureInfo.InvariantCulture, out int b))
            {
                pairs.Add(new DuplexPair(a, b));
                continue;
            }

            Problems.Add(item.Place, "each duplex port of a wiring is a pair of array positions, A then B", "a pair such as [1, 2]");
            return;
        }

        if (pairs.Count == 0)
            Problems.Add(list.Place, "the wiring has no ports", Expected(spec));
        else
            values.Set(spec.Name, pairs);
    }

    private void ReadLegs(YamlNode node, AttributeSpec spec, AttributeValues values)
    {
        YamlNode[] items = node is YamlSequence list ? [.. list.Items] : [node];
        var legs = new List<int>();
        foreach (YamlNode item in items)
        {
            if (reader.Text(item, spec.Name, Expected(spec)) is not { } scalar)
                return;
            if (!NamePattern.TryExpandToken(scalar.Value, (index, message, expected) => Problems.Add(scalar.PlaceAt(index), message, expected), out IReadOnlyList<string> names)
                || !reader.Allowance.Names(names.Count, scalar.Place))
                return;
            if (legs.Count + names.Count > MostLegs)
            {
                Problems.Add(scalar.Place, $"no cable has more than {MostLegs} legs", Expected(spec));
                return;
            }

            foreach (string name in names)
            {
                if (!int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out int leg) || leg < 1)
                {
                    Problems.Add(scalar.Place, $"'{PartNames.Shorten(name)}' is no leg number", Expected(spec));
                    return;
                }

                legs.Add(leg);
            }
        }

        values.Set(spec.Name, legs);
    }
}
