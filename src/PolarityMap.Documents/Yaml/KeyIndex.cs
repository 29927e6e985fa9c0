namespace PolarityMap.Documents.Yaml;

/// <summary>Finds a key among entries: by looking through few, by a table for many.</summary>
internal sealed class KeyIndex
{
    /// <summary>Up to here a look through the list is quicker than a table, and most mappings are this small.</summary>
    private const int Few = 8;

    private Dictionary<string, int>? table;

    /// <summary>The index of the entry with a key, or -1.</summary>
    public int Find(IReadOnlyList<YamlEntry> entries, string key)
    {
        if (table is not null)
            return table.GetValueOrDefault(key, -1);
        for (var at = 0; at < entries.Count; at++)
        {
            if (entries[at].Key.Value == key)
                return at;
        }

        return -1;
    }

    /// <summary>To be told after each entry has been added at the end of the list.</summary>
    public void Added(IReadOnlyList<YamlEntry> entries)
    {
        if (table is not null)
        {
            table.Add(entries[^1].Key.Value, entries.Count - 1);
        }
        else if (entries.Count > Few)
        {
            table = new Dictionary<string, int>(StringComparer.Ordinal);
            for (var at = 0; at < entries.Count; at++)
                table.Add(entries[at].Key.Value, at);
        }
    }
}
