namespace PolarityMap.Core.Parts;

/// <summary>How the keys of two mated array connectors lie to each other.</summary>
public enum Keying
{
    /// <summary>Key up to key down (Type-A adapter): one connector is turned half round.</summary>
    Opposed,

    /// <summary>Key up to key up (Type-B adapter).</summary>
    Aligned,
}

/// <summary>The words for <see cref="Keying"/> in documents, drawings and findings.</summary>
public static class KeyingWords
{
    public static string Word(this Keying keys) => keys == Keying.Opposed ? "opposed" : "aligned";

    /// <summary>The keying of a word that has been checked.</summary>
    /// <exception cref="ArgumentException">Neither <c>opposed</c> nor <c>aligned</c>.</exception>
    public static Keying Parse(string word) =>
        TryParse(word, out Keying keys) ? keys : throw new ArgumentException($"'{word}' is no keying", nameof(word));

    /// <summary>Reads <c>opposed</c> or <c>aligned</c>.</summary>
    public static bool TryParse(string word, out Keying keys)
    {
        keys = word == "aligned" ? Keying.Aligned : Keying.Opposed;
        return word is "opposed" or "aligned";
    }
}
