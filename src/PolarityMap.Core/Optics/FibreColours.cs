namespace PolarityMap.Core.Optics;

/// <summary>
/// The colours that a sequence may name, in no order that means anything. Letters of the first twelve are those of
/// IEC 60757 (RD, BU, GN, YE one public source; the rest from memory), in which slate is grey, rose is pink and aqua is
/// turquoise. Olive, magenta, tan, lime and transparent have no letters there: theirs are this project's own.
/// </summary>
internal static class FibreColours
{
    /// <summary>The uncoloured fibre: stands where a ring mark could not be seen on black.</summary>
    public static FibreColour Transparent => new(0, "transparent", "TR", 0xEDEBE3, 0);

    /// <summary>The names a user may write, without their synonyms.</summary>
    public const string Known = "blue, orange, green, brown, slate, white, red, black, yellow, violet, rose, aqua, olive, magenta, tan or lime";

    /// <summary>The colour of a name, ignoring case. Grey, pink and turquoise keep their name and have slate's, rose's and aqua's letters.</summary>
    public static bool TryFind(string name, out FibreColour colour)
    {
        string lower = name.Trim().ToLowerInvariant();
        (string code, int rgb) = lower switch
        {
            "blue" => ("BU", 0x1F5FBF),
            "orange" => ("OG", 0xF28C1E),
            "green" => ("GN", 0x1E8449),
            "brown" => ("BN", 0x7B4A1E),
            "slate" or "grey" => ("GY", 0x8A939B),
            "white" => ("WH", 0xFFFFFF),
            "red" => ("RD", 0xCC2222),
            "black" => ("BK", 0x1A1A1A),
            "yellow" => ("YE", 0xF5D800),
            "violet" => ("VT", 0x7D3C98),
            "rose" or "pink" => ("PK", 0xF49AC1),
            "aqua" or "turquoise" => ("TQ", 0x35C4C4),
            "olive" => ("OL", 0x7A7A2A),
            "magenta" => ("MG", 0xC2187B),
            "tan" => ("TN", 0xCFAE7E),
            "lime" => ("LM", 0xA6D92C),
            _ => ("", 0),
        };
        colour = new FibreColour(0, lower, code, rgb, 0);
        return code.Length > 0;
    }
}
