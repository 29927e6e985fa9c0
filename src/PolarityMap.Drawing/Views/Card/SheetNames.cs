namespace PolarityMap.Drawing.Views.Card;

/// <summary>Names of files, each once: letters, digits and hyphens, and not too long for any file system.</summary>
internal sealed class SheetNames
{
    private const int MostCharacters = 80;

    private readonly Dictionary<string, int> _seen = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>A name made from words; used before, it gets a number.</summary>
    public string Of(string words)
    {
        string name = string.Concat(words.Select(c => char.IsLetterOrDigit(c) && !char.IsSurrogate(c) ? c : '-'));
        while (name.Contains("--", StringComparison.Ordinal))
            name = name.Replace("--", "-", StringComparison.Ordinal);
        name = (name.Length > MostCharacters ? name[..MostCharacters] : name).Trim('-');
        if (name.Length == 0)
            name = "card";
        if (_seen.TryAdd(name, 1))
            return name;
        // A name with a number may have been taken by words that end in it.
        string numbered;
        do
            numbered = $"{name}-{++_seen[name]}";
        while (!_seen.TryAdd(numbered, 1));
        return numbered;
    }
}
