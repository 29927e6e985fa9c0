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
    private readonly AttributeLists _lists = new(reader, networks);

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

            if (spec.InsteadOf is { } other && mapping.Find(other) is not null)
            {
                Problems.Add(entry.Key.Place, $"{name} stands instead of {other}", "one of them");
                continue;
            }

            places[name] = entry.Value.Place;
            ReadOne(entry.Value, spec, values);
        }

        return Problems.Count == before;
    }

    private void ReadOne(YamlNode node, AttributeSpec spec, AttributeValues values)
    {
        switch (spec.Sort)
        {
            case AttributeSort.Wiring when node is YamlSequence:
            case AttributeSort.Pairs:
                if (_lists.Pairs(node, spec) is { } pairs)
                    values.Set(spec.Name, pairs);
                return;
            case AttributeSort.Conversion:
                if (_lists.Conversion(node, spec) is { } wiring)
                    values.Set(spec.Name, wiring);
                return;
            case AttributeSort.Networks:
                if (_lists.Networks(node, spec) is { } names)
                    values.Set(spec.Name, names);
                return;
            case AttributeSort.Legs:
                if (_lists.Legs(node, spec) is { } legs)
                    values.Set(spec.Name, legs);
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
            case AttributeSort.Loss:
                if (Decibel.TryParse(text, out Decibel loss, out why))
                    values.Set(spec.Name, loss);
                else
                    Problems.Add(scalar.Place, $"'{PartNames.Shorten(text)}' is no loss: {PartNames.Shorten(why)}");
                break;
            case AttributeSort.Attenuation:
                if (Attenuation.TryParse(text, out Attenuation attenuation, out why))
                    values.Set(spec.Name, attenuation);
                else
                    Problems.Add(scalar.Place, $"'{PartNames.Shorten(text)}' is no attenuation: {PartNames.Shorten(why)}");
                break;
            case AttributeSort.Network:
                if (_lists.IsNetwork(scalar))
                    values.Set(spec.Name, text);
                break;
            default:
                values.Set(spec.Name, text);
                break;
        }
    }

    /// <summary>What an attribute takes, in words for a message.</summary>
    public static string Expected(AttributeSpec spec) => spec.Sort switch
    {
        AttributeSort.Choice => NodeReader.OneOf(spec.Words),
        AttributeSort.Wiring => NodeReader.OneOf(spec.Words) + ", or pairs such as [[1, 2], [3, 4]]",
        AttributeSort.Pairs => "pairs such as [[1, 12], [2, 11]]",
        AttributeSort.Conversion => "a list for each narrow port, such as [[1, 2, 3, 4], [5, 6, 7, 8]]",
        AttributeSort.WholeNumber when spec.Numbers.Count > 0 => "one of " + string.Join(", ", spec.Numbers),
        AttributeSort.WholeNumber => $"a whole number from {spec.Min} to {spec.Max}",
        AttributeSort.Length => "a length with its unit, such as '62 m'",
        AttributeSort.Loss => "a loss with its unit, such as '0.35 dB'",
        AttributeSort.Attenuation => "an attenuation with its unit, such as '3.0 dB/km'",
        AttributeSort.Network => "the name of a network",
        AttributeSort.Networks => "a list of network names, such as [lighting, sound]",
        AttributeSort.Legs => "leg numbers, such as 5..8",
        _ => "a text",
    };
}
