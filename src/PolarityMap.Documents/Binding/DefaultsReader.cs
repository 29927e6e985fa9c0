using System.Globalization;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Documents.Text;
using PolarityMap.Documents.Yaml;

namespace PolarityMap.Documents.Binding;

/// <summary>Reads the section of defaults: what the plant says once for all of its parts, and what it is judged by.</summary>
internal sealed class DefaultsReader(NodeReader reader)
{
    /// <summary>The name of a sequence that the document lists.</summary>
    internal const string OwnColours = "as listed";

    /// <summary>The refractive indices that glass fibres can have; those on record lie between 1.46 and 1.50.</summary>
    internal const decimal LeastGroupIndex = 1.3m, MostGroupIndex = 1.7m;

    /// <summary>The sides of a cassette's rear that may carry guide pins, the usual one first.</summary>
    internal static readonly IReadOnlyList<string> PinWords = ["cassettes", "trunks"];

    private ProblemList Problems => reader.Problems;

    /// <summary>Reads what the section gives; what it does not give stays as it is without one.</summary>
    public (PartDefaults Parts, PlantPractice Practice) Read(YamlNode node)
    {
        PartDefaults parts = PartDefaults.None;
        var practice = new PlantPractice();
        if (reader.Mapping(node, DocumentKeys.Defaults, "keys such as 'fibre: OM4'") is not { } section)
            return (parts, practice);
        reader.CheckKeys(section, DocumentKeys.OfDefaults, DocumentKeys.Defaults);
        if (Word(section, DocumentKeys.Fibre, "fibre class", FibreClass.Names) is { } fibre)
            parts = parts with { Fibre = FibreClass.Find(fibre) };
        if (Word(section, DocumentKeys.Pins, "side that has pins", PinWords) is { } pins)
            parts = parts with { TrunksArePinned = pins == PinWords[1] };
        if (Word(section, DocumentKeys.Limits, "set of limits", LimitProfile.Names) is { } limits)
            practice = practice with { Limits = LimitProfile.Find(limits)! };
        if (section.Find(DocumentKeys.Colours) is { } colours && Colours(colours) is { } sequence)
            practice = practice with { Colours = sequence };
        if (section.Find(DocumentKeys.Margin) is { } margin)
            practice = practice with { Margin = Margin(margin) };
        if (section.Find(DocumentKeys.GroupIndex) is { } index)
            practice = practice with { GroupIndex = GroupIndex(index) };
        return (parts, practice);
    }

    /// <summary>One of a few words, or null when it is not given or after a report.</summary>
    private string? Word(YamlMapping section, string key, string what, IReadOnlyList<string> words)
    {
        if (section.Find(key) is not { } node || reader.Text(node, key, NodeReader.OneOf(words)) is not { } scalar)
            return null;
        if (words.Contains(scalar.Value))
            return scalar.Value;
        reader.Unknown(scalar.Place, $"'{PartNames.Shorten(scalar.Value)}' is no {what}", scalar.Value, words);
        return null;
    }

    private ColourSequence? Colours(YamlNode node)
    {
        if (node is not YamlSequence list)
        {
            if (reader.Text(node, DocumentKeys.Colours, "the name of a sequence, or a list of colours") is not { } name)
                return null;
            if (ColourSequence.Find(name.Value) is { } known)
                return known;
            reader.Unknown(name.Place, $"there is no colour sequence '{PartNames.Shorten(name.Value)}'", name.Value, ColourSequence.Names);
            return null;
        }

        var colours = new List<string>(list.Items.Count);
        foreach (YamlNode item in list.Items)
        {
            if (reader.Text(item, "a colour", "a colour such as blue") is not { } colour)
                return null;
            colours.Add(PartNames.Shorten(colour.Value));
        }

        // A list that is refused is refused for its first wrong colour, and the shorter list without it is none.
        if (ColourSequence.Own(OwnColours, colours, out string why) is { } own)
            return own;
        int wrong = 0;
        while (wrong < colours.Count - 1 && ColourSequence.Own(OwnColours, colours[..(wrong + 1)], out _) is not null)
            wrong++;
        Problems.Add(colours.Count == 0 ? list.Place : list.Items[wrong].Place, why);
        return null;
    }

    private Decibel? Margin(YamlNode node)
    {
        if (reader.Text(node, DocumentKeys.Margin, "a margin with its unit, such as '0.3 dB'") is not { } scalar)
            return null;
        if (Decibel.TryParse(scalar.Value, out Decibel margin, out string why))
            return margin;
        Problems.Add(scalar.Place, $"'{PartNames.Shorten(scalar.Value)}' is no margin: {PartNames.Shorten(why)}");
        return null;
    }

    private decimal? GroupIndex(YamlNode node)
    {
        string expected = string.Create(CultureInfo.InvariantCulture, $"a number from {LeastGroupIndex} to {MostGroupIndex}, such as 1.48");
        if (reader.Text(node, DocumentKeys.GroupIndex, expected) is not { } scalar)
            return null;
        if (decimal.TryParse(scalar.Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal index)
            && index is >= LeastGroupIndex and <= MostGroupIndex)
            return index;
        Problems.Add(scalar.Place, $"'{PartNames.Shorten(scalar.Value)}' is no group index", expected);
        return null;
    }
}
