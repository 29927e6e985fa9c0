namespace PolarityMap.Core.Parts;

/// <summary>
/// How an array cable joins the positions of its two ends. Maps are data: a new one is one more entry of <see cref="All"/>.
/// </summary>
public sealed class ArrayMap
{
    /// <summary>
    /// Types A, B and C of TIA-568 for one row (more than eight public sources; that they are called so for 16 fibres: from
    /// memory). For two rows TIA-568.3-D defines three types as well, but the maps printed under those letters differ, so each
    /// map met in the trade has a name of its own and none is inferred from a letter.
    /// </summary>
    public static readonly IReadOnlyList<ArrayMap> All =
    [
        new("Type-A", 1, "straight: position i to i", static (i, f) => i),
        new("Type-B", 1, "reversed: position i to N+1-i", static (i, f) => f.Count + 1 - i),
        new("Type-C", 1, "pair-flipped: 1 to 2, 2 to 1, 3 to 4, …", PairFlipped),
        new("straight-by-number", 2, "position i to i; called Type-A by one source", static (i, f) => i),
        new("rows-exchanged", 2, "column kept, rows exchanged: what an uncrossed cable with keys opposite gives", static (i, f) => f.Facing(Keying.Opposed, i)),
        new("reversed-in-row", 2, "row kept, columns reversed: what an uncrossed cable with keys alike gives; also called Type-B (from memory)", static (i, f) => f.Facing(Keying.Aligned, i)),
        new("fully-reversed", 2, "position i to N+1-i; also called Type-B (from memory)", static (i, f) => f.Count + 1 - i),
        new("pair-flipped", 2, "1 to 2, 2 to 1, … through both rows; called Type-C (from memory)", PairFlipped),
    ];

    private readonly Func<int, Face, int> _map;

    private ArrayMap(string name, int rows, string meaning, Func<int, Face, int> map)
    {
        Name = name;
        Rows = rows;
        Meaning = meaning;
        _map = map;
    }

    public string Name { get; }

    /// <summary>The number of rows of the ferrules that the name is defined for.</summary>
    public int Rows { get; }

    /// <summary>What it does, in words, and what is known about its name.</summary>
    public string Meaning { get; }

    public static IReadOnlyList<string> Names { get; } = [.. All.Select(m => m.Name)];

    public static ArrayMap ByName(string name) => All.First(m => m.Name == name);

    /// <summary>The names defined for ferrules of so many rows.</summary>
    public static IEnumerable<string> NamesFor(int rows)
    {
        foreach (ArrayMap map in All)
        {
            if (map.Rows == rows)
                yield return map.Name;
        }
    }

    /// <summary>The far position that near position <paramref name="near"/> comes out at.</summary>
    public int Far(int near, Face face) => _map(near, face);

    private static int PairFlipped(int position, Face face) => position % 2 == 1 ? position + 1 : position - 1;
}
