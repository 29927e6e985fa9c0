namespace PolarityMap.Core.Parts;

/// <summary>The end face of a ferrule.</summary>
public enum Polish
{
    /// <summary>Flat (PC), or slightly domed.</summary>
    Flat,

    /// <summary>Angled by 8 degrees (APC); of an array, sloping down as seen with key up.</summary>
    Angled,

    /// <summary>Angled the other way, so that it fits an angled one in an aligned mating (IEC 61754-7-1, -2; two catalogue abstracts).</summary>
    UpAngled,
}

/// <summary>The words for <see cref="Polish"/> in documents and findings.</summary>
public static class PolishWords
{
    public static IReadOnlyList<string> All { get; } = ["flat", "angled", "up-angled"];

    public static string Word(this Polish polish) => All[(int)polish];

    /// <summary>The polish of a word that has been checked.</summary>
    public static Polish Parse(string word) => word switch { "angled" => Polish.Angled, "up-angled" => Polish.UpAngled, _ => Polish.Flat };
}
