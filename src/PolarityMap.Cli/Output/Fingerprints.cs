using System.Text;

namespace PolarityMap.Cli.Output;

/// <summary>
/// Marks by which a result is known again when the document has changed elsewhere. They rest on rule and words and not on line
/// numbers; the second of two results with the same words has a mark of its own.
/// </summary>
internal sealed class Fingerprints
{
    private readonly Dictionary<string, int> _seen = [];

    /// <summary>16 hexadecimal digits and the count among its likes.</summary>
    public string Of(string rule, string message)
    {
        // FNV-1a of 64 bits: nothing is kept secret by it, and a cryptographic one would add a hundred kilobytes to the program.
        ulong hash = 14695981039346656037;
        foreach (byte b in Encoding.UTF8.GetBytes($"{rule}\n{message}"))
            hash = (hash ^ b) * 1099511628211;
        string mark = hash.ToString("x16", System.Globalization.CultureInfo.InvariantCulture);
        _seen[mark] = _seen.GetValueOrDefault(mark) + 1;
        return $"{mark}:{_seen[mark]}";
    }
}
