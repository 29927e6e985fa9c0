namespace PolarityMap.Core.Parts;

/// <summary>
/// How an array cable joins the positions of its two ends. Maps are data: a new one is one more entry of <see cref="All"/>.
/// </summary>
public sealed class ArrayMap
{
    /// <summary>
    /// Types A, B and C of TIA-568 for one row (more than eight public sources): straight, reversed, pair-flipped.
    /// Maps of two-row ferrules are not settled by the letter alone, so a two-row map will have a name of its own.
    /// </summary>
    public static readonly IReadOnlyList<ArrayMap> All =
    [
        new("Type-A", static (i, n) => i),
        new("Type-B", static (i, n) => n + 1 - i),
        new("Type-C", static (i, n) => i % 2 == 1 ? i + 1 : i - 1),
    ];

    private readonly Func<int, int, int> _map;

    private ArrayMap(string name, Func<int, int, int> map)
    {
        Name = name;
        _map = map;
    }

    public string Name { get; }

    public static IReadOnlyList<string> Names { get; } = [.. All.Select(m => m.Name)];

    public static ArrayMap ByName(string name) => All.First(m => m.Name == name);

    /// <summary>The far position that near position <paramref name="near"/> comes out at, on a face of so many columns.</summary>
    public int Far(int near, int columns) => _map(near, columns);
}
