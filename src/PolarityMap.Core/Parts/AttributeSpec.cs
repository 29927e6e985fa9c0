namespace PolarityMap.Core.Parts;

/// <summary>What sort of value an attribute takes.</summary>
public enum AttributeSort
{
    /// <summary>One of a list of words.</summary>
    Choice,

    /// <summary>A whole number within limits.</summary>
    WholeNumber,

    /// <summary>A length with its unit.</summary>
    Length,

    /// <summary>Free text.</summary>
    Text,

    /// <summary>The name of a network of the plant.</summary>
    Network,

    /// <summary>A named wiring, or the wiring written out: per duplex port its array positions for A and B.</summary>
    Wiring,

    /// <summary>Numbers of legs, such as <c>5..8</c>.</summary>
    Legs,

    /// <summary>A loss with its unit, such as <c>0.35 dB</c>.</summary>
    Loss,

    /// <summary>A loss by length, such as <c>3.0 dB/km</c>.</summary>
    Attenuation,

    /// <summary>Names of networks of the plant, one for each duplex port in order.</summary>
    Networks,

    /// <summary>Pairs of positions, such as <c>[[1, 12], [2, 11]]</c>: near and far of a cable, or transmit and receive of a lane.</summary>
    Pairs,

    /// <summary>For each narrow port its wide positions in order, such as <c>[[1, 2, 3, 4, 9, 10, 11, 12], …]</c>, or <c>2:5</c> for position 5 of the second wide port.</summary>
    Conversion,
}

/// <summary>
/// One attribute of a part kind. The reader of documents, the published schema and the help all follow this one description.
/// </summary>
/// <param name="Name">The attribute's key in a document.</param>
/// <param name="Sort">What sort of value it takes.</param>
/// <param name="Meaning">One sentence for help and schema.</param>
public sealed record AttributeSpec(string Name, AttributeSort Sort, string Meaning)
{
    /// <summary>The words of a choice or the names of wirings.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>Numbers accepted, when they are few; otherwise empty and <see cref="Min"/> and <see cref="Max"/> count.</summary>
    public IReadOnlyList<int> Numbers { get; init; } = [];

    public int Min { get; init; }

    public int Max { get; init; }

    /// <summary>True when a document must give it.</summary>
    public bool Required { get; init; }

    /// <summary>What is taken when a document does not give it, as a document would write it; null when nothing is.</summary>
    public string? Default { get; init; }

    /// <summary>The attribute that this one stands instead of, so that only one of them is given; or null.</summary>
    public string? InsteadOf { get; init; }

    public static AttributeSpec Choice(string name, string meaning, IReadOnlyList<string> words, string? standard = null) =>
        new(name, AttributeSort.Choice, meaning) { Words = words, Default = standard, Required = standard is null };

    /// <summary>One of a list of words, which may be left out and then is not known.</summary>
    public static AttributeSpec OptionalChoice(string name, string meaning, IReadOnlyList<string> words) =>
        new(name, AttributeSort.Choice, meaning) { Words = words };

    public static AttributeSpec WholeNumber(string name, string meaning, int min, int max, int? standard = null) =>
        new(name, AttributeSort.WholeNumber, meaning)
        {
            Min = min,
            Max = max,
            Default = standard?.ToString(System.Globalization.CultureInfo.InvariantCulture),
            Required = standard is null,
        };

    public static AttributeSpec OneOf(string name, string meaning, IReadOnlyList<int> numbers, int standard) =>
        new(name, AttributeSort.WholeNumber, meaning)
        {
            Numbers = numbers,
            Min = numbers.Min(),
            Max = numbers.Max(),
            Default = standard.ToString(System.Globalization.CultureInfo.InvariantCulture),
        };
}
