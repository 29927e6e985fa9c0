namespace PolarityMap.Core.Parts;

/// <summary>Two positions that a wiring names together.</summary>
/// <param name="A">Array position behind duplex position A; of a cable written out, the near position.</param>
/// <param name="B">Array position behind duplex position B; of a cable written out, the far position.</param>
public readonly record struct DuplexPair(int A, int B);

/// <summary>
/// A wiring from array positions to duplex ports, as in a cassette, outlet or harness. Wirings are data: a new one is one
/// more entry of <see cref="All"/>, and a document may write out its own.
/// </summary>
public sealed class Transition
{
    /// <summary>
    /// One row: the transitions of TIA-568.3, for 8 fibres on positions 1-4 and 9-12 and for full rows:
    /// <c>straight</c> (methods A and C at both ends, method B at the first end; four public sources),
    /// <c>straight-reversed</c> (method B at the second end, port order reversed with A and B kept; four public sources),
    /// <c>U1</c> and <c>U2</c> (pairs k and N+1-k, one public source and proved unique; which of the two is A is derived).
    /// Two rows: no table has been found, so each reading that works with one of the trunk maps has a name of its own (derived
    /// and proved by tracing).
    /// </summary>
    public static readonly IReadOnlyList<Transition> All =
    [
        new("straight", 0, "ports take positions in order: 1-2, 3-4, …", static (a, k) => InOrder(a, k)),
        new("straight-reversed", 1, "as straight with the port order reversed", static (a, k) => InOrder(a, (a.Fibres / 2) - 1 - k)),
        new("U1", 1, "port k takes positions k (A) and N+1-k (B)", static (a, k) => new(a.Used[k], Mirror(a, a.Used[k]))),
        new("U2", 1, "port k takes positions N+1-k (A) and k (B)", static (a, k) => new(Mirror(a, a.Used[k]), a.Used[k])),
        new("straight-rows-exchanged", 2, "as straight with the rows exchanged", static (a, k) => InOrder(a, (k + (a.Fibres / 4)) % (a.Fibres / 2))),
        new("straight-reversed-in-row", 2, "as straight with the port order reversed in each row", static (a, k) => InOrder(a, k + (a.Fibres / 4) - 1 - (2 * (k % (a.Fibres / 4))))),
        new("straight-fully-reversed", 2, "as straight with the order of all ports reversed", static (a, k) => InOrder(a, (a.Fibres / 2) - 1 - k)),
        new("U1-in-row", 2, "in each row port k takes columns k (A) and N+1-k (B)", static (a, k) => InRow(a, k)),
        new("U2-in-row", 2, "in each row port k takes columns N+1-k (A) and k (B)", static (a, k) => Turned(InRow(a, k))),
        new("U1-across-rows", 2, "port k takes positions k (A, top row) and N+1-k (B, bottom row)", static (a, k) => new(k + 1, a.Fibres - k)),
        new("U2-across-rows", 2, "port k takes positions N+1-k (A, bottom row) and k (B, top row)", static (a, k) => new(a.Fibres - k, k + 1)),
    ];

    private readonly Func<ArrayBase, int, DuplexPair> _pair;

    private Transition(string name, int rows, string meaning, Func<ArrayBase, int, DuplexPair> pair)
    {
        Name = name;
        Rows = rows;
        Meaning = meaning;
        _pair = pair;
    }

    public string Name { get; }

    /// <summary>The number of rows of the ferrules that the name is defined for; 0 when for any.</summary>
    public int Rows { get; }

    public string Meaning { get; }

    public static IReadOnlyList<string> Names { get; } = [.. All.Select(t => t.Name)];

    public static Transition ByName(string name) => All.First(t => t.Name == name);

    /// <summary>The names defined for ferrules of so many rows.</summary>
    public static IEnumerable<string> NamesFor(int rows)
    {
        foreach (Transition transition in All)
        {
            if (transition.IsFor(rows))
                yield return transition.Name;
        }
    }

    /// <summary>True when the name is defined for ferrules of so many rows.</summary>
    public bool IsFor(int rows) => Rows == 0 || Rows == rows;

    /// <summary>The pair of every duplex port in port order.</summary>
    public DuplexPair[] Pairs(ArrayBase array)
    {
        var pairs = new DuplexPair[array.Fibres / 2];
        for (int k = 0; k < pairs.Length; k++)
            pairs[k] = _pair(array, k);
        return pairs;
    }

    private static DuplexPair InOrder(ArrayBase array, int port) => new(array.Used[2 * port], array.Used[(2 * port) + 1]);

    private static int Mirror(ArrayBase array, int position) => array.Face.Count + 1 - position;

    private static DuplexPair InRow(ArrayBase array, int port)
    {
        int columns = array.Face.Columns;
        int row = port / (columns / 2);
        int k = port % (columns / 2);
        return new((row * columns) + k + 1, (row * columns) + columns - k);
    }

    private static DuplexPair Turned(DuplexPair pair) => new(pair.B, pair.A);
}
