namespace PolarityMap.Cli.Output;

/// <summary>Makes a name of a document into the name of a file that stays in its folder on every system.</summary>
internal static class FileName
{
    /// <summary>Every file system takes a name of so many characters with room for a number and an ending, whatever its letters are.</summary>
    private const int MostCharacters = 60;

    /// <summary>Letters, digits, hyphens and underscores; never empty, never the name of a device.</summary>
    public static string Of(string words)
    {
        string plain = string.Concat(words.Select(c => char.IsLetterOrDigit(c) || c is '-' or '_' ? c : '-'));
        if (plain.Length > MostCharacters)
            plain = plain[..MostCharacters];
        return plain.Length == 0 || IsDevice(plain) ? $"{plain}_" : plain;
    }

    /// <summary>Names that some systems keep for devices, whatever their ending.</summary>
    private static bool IsDevice(string name) => name.ToUpperInvariant() is "CON" or "PRN" or "AUX" or "NUL"
        or ['C', 'O', 'M', >= '0' and <= '9'] or ['L', 'P', 'T', >= '0' and <= '9'];
}
