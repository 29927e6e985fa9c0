namespace PolarityMap.Core.Plants;

/// <summary>What two networks may have in common.</summary>
public enum SharedPlace
{
    /// <summary>The jacket of one cable.</summary>
    Sheath,

    /// <summary>The housing of one cassette, module or outlet.</summary>
    Cassette,

    /// <summary>One array connector.</summary>
    Array,

    /// <summary>One panel.</summary>
    Panel,
}

/// <summary>The words for <see cref="SharedPlace"/> in documents.</summary>
public static class SharedWords
{
    public static IReadOnlyList<string> All { get; } = ["sheath", "cassette", "array", "panel"];

    public static string Word(this SharedPlace shared) => All[(int)shared];
}

/// <summary>One of several physically separate networks.</summary>
/// <param name="Name">Its name in the document.</param>
/// <param name="Colour">The colour word its parts carry, or null.</param>
/// <param name="Place">Where the document names it.</param>
public sealed record Network(string Name, string? Colour, SourcePlace Place)
{
    /// <summary>
    /// The key code of its keyed duplex connectors, or null when they are plain. No open standard defines codes: a code is any
    /// text, with the name of the set where several are in use (trade practice; from memory).
    /// </summary>
    public string? Key { get; init; }

    /// <summary>True when plain plugs and its keyed connectors go together in either direction, as in some sets.</summary>
    public bool PlainFits { get; init; }

    /// <summary>What it may share with other networks; null when the document does not say, and then nothing is judged.</summary>
    public IReadOnlyList<SharedPlace>? MayShare { get; init; }
}
