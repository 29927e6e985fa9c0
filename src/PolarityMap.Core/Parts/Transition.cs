namespace PolarityMap.Core.Parts;

/// <summary>The two array positions that a duplex port of a transition carries.</summary>
/// <param name="A">Array position behind duplex position A.</param>
/// <param name="B">Array position behind duplex position B.</param>
public readonly record struct DuplexPair(int A, int B);

/// <summary>
/// A wiring from array positions to duplex ports, as in a cassette, outlet or harness. Wirings are data: a new one is one
/// more entry of <see cref="All"/>, and a document may write out its own.
/// </summary>
public sealed class Transition
{
    /// <summary>
    /// The transitions of TIA-568.3, for 12 fibres and for 8 fibres on positions 1-4 and 9-12:
    /// <c>straight</c> (methods A and C at both ends, method B at the first end; four public sources),
    /// <c>straight-reversed</c> (method B at the second end, port order reversed with A and B kept; four public sources),
    /// <c>U1</c> and <c>U2</c> (pairs k and 13 - k, one public source and proved unique; which of the two is A is derived).
    /// </summary>
    public static readonly IReadOnlyList<Transition> All =
    [
        new("straight", "ports take positions in order: 1-2, 3-4, …", static (used, n, k) => new(used[2 * k], used[(2 * k) + 1])),
        new("straight-reversed", "as straight with the port order reversed", static (used, n, k) => new(used[used.Count - 2 - (2 * k)], used[used.Count - 1 - (2 * k)])),
        new("U1", "port k takes positions k (A) and N+1-k (B)", static (used, n, k) => new(used[k], n + 1 - used[k])),
        new("U2", "port k takes positions N+1-k (A) and k (B)", static (used, n, k) => new(n + 1 - used[k], used[k])),
    ];

    private readonly Func<IReadOnlyList<int>, int, int, DuplexPair> _pair;

    private Transition(string name, string meaning, Func<IReadOnlyList<int>, int, int, DuplexPair> pair)
    {
        Name = name;
        Meaning = meaning;
        _pair = pair;
    }

    public string Name { get; }

    public string Meaning { get; }

    public static IReadOnlyList<string> Names { get; } = [.. All.Select(t => t.Name)];

    public static Transition ByName(string name) => All.First(t => t.Name == name);

    /// <summary>The pair of every duplex port in port order.</summary>
    /// <param name="used">The array positions that carry fibres, ascending.</param>
    /// <param name="columns">Positions in the array's row.</param>
    public DuplexPair[] Pairs(IReadOnlyList<int> used, int columns)
    {
        var pairs = new DuplexPair[used.Count / 2];
        for (int k = 0; k < pairs.Length; k++)
            pairs[k] = _pair(used, columns, k);
        return pairs;
    }
}
