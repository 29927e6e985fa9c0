using System.Security.Cryptography;
using System.Text;

namespace PolarityMap.Cli.Output;

/// <summary>
/// Marks by which a result is known again when the document has changed elsewhere. They rest on rule and words and not on line
/// numbers; the second of two results with the same words has a mark of its own.
/// </summary>
internal sealed class Fingerprints
{
    private readonly Dictionary<string, int> _seen = [];

    /// <summary>32 hexadecimal digits and the count among its likes.</summary>
    public string Of(string rule, string message)
    {
        string mark = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{rule}\n{message}")))[..32];
        _seen[mark] = _seen.GetValueOrDefault(mark) + 1;
        return $"{mark}:{_seen[mark]}";
    }
}
