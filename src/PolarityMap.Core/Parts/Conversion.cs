namespace PolarityMap.Core.Parts;

/// <summary>A position of one of the wide ports of a conversion.</summary>
/// <param name="Port">The wide port, counted from 1; 0 for a place that carries no fibre.</param>
/// <param name="Position">The position in it, 1-based.</param>
public readonly record struct WidePosition(int Port, int Position);

/// <summary>
/// A wiring between array ports of one size and array ports of another, as in a conversion module or harness. Wirings are
/// data: a new one is one more entry of <see cref="All"/>, and a document may write out its own.
/// <para>
/// No public table of these has been found; that the parts exist: two public sources. The maps are derived: with the same
/// module at both ends and trunks that join position i to its reversed partner, every narrow port acts as one Type-B link,
/// which is proved by tracing.
/// </para>
/// </summary>
/// <param name="Name">The name a document writes.</param>
/// <param name="Wide">The array base of each wide port.</param>
/// <param name="Narrow">The array base of each narrow port.</param>
/// <param name="Meaning">What is known about it.</param>
public sealed record Conversion(string Name, IReadOnlyList<int> Wide, IReadOnlyList<int> Narrow, string Meaning)
{
    private const string ForInRow = "derived, for trunks that reverse each row (reversed-in-row)";
    private const string ForFull = "derived, for trunks that reverse all positions (fully-reversed)";

    public static readonly IReadOnlyList<Conversion> All =
    [
        new("2x12 to 3x8", [12, 12], [8, 8, 8], "derived; the third port collects the middle fibres of both trunks (from memory)") { _rows = TwoTwelves },
        new("24 to 3x8 in-row", [24], [8, 8, 8], ForInRow) { _rows = static () => RowsAsPorts(TwoTwelves(), 12) },
        new("24 to 3x8 full", [24], [8, 8, 8], ForFull) { _rows = static () => MirrorPairs(3, 24) },
        new("3x12 to 4x8", [12, 12, 12], [8, 8, 8, 8], "derived; the fourth port collects the middle fibres of two trunks, those of the third stay unused")
        {
            _rows = static () =>
            [
                [new(1, 1), new(1, 2), new(1, 3), new(1, 4), new(1, 9), new(1, 10), new(1, 11), new(1, 12)],
                [new(2, 1), new(2, 2), new(2, 3), new(2, 4), new(2, 9), new(2, 10), new(2, 11), new(2, 12)],
                [new(3, 1), new(3, 2), new(3, 3), new(3, 4), new(3, 9), new(3, 10), new(3, 11), new(3, 12)],
                [new(1, 5), new(1, 6), new(2, 5), new(2, 6), new(2, 7), new(2, 8), new(1, 7), new(1, 8)],
            ],
        },
        new("24 to 2x12", [24], [12, 12], "top row to the first port, bottom row to the second: common practice; for trunks that reverse each row (reversed-in-row)") { _rows = static () => RowsToPorts(2, 12) },
        new("16 to 2x8", [16], [8, 8], "derived; lanes 1-4 to the first port, 5-8 to the second: common practice") { _rows = static () => MirrorPairs(2, 16) },
        new("32 to 4x8 in-row", [32], [8, 8, 8, 8], ForInRow) { _rows = static () => [.. MirrorPairs(2, 16), .. Shifted(MirrorPairs(2, 16), 16)] },
        new("32 to 4x8 full", [32], [8, 8, 8, 8], ForFull) { _rows = static () => MirrorPairs(4, 32) },
    ];

    private Func<WidePosition[][]> _rows = static () => [];

    public static IReadOnlyList<string> Names { get; } = [.. All.Select(c => c.Name)];

    public static Conversion ByName(string name) => All.First(c => c.Name == name);

    /// <summary>For each narrow port, in the order of its used positions, the wide position behind it.</summary>
    public IReadOnlyList<IReadOnlyList<WidePosition>> Rows() => _rows();

    /// <summary>Two rows of twelve to three ports of eight; ports one and two keep their positions, the third takes both middles.</summary>
    private static WidePosition[][] TwoTwelves() =>
    [
        [new(1, 1), new(1, 2), new(1, 3), new(1, 4), new(1, 9), new(1, 10), new(1, 11), new(1, 12)],
        [new(2, 1), new(2, 2), new(2, 3), new(2, 4), new(2, 9), new(2, 10), new(2, 11), new(2, 12)],
        [new(1, 5), new(1, 6), new(2, 5), new(2, 6), new(2, 7), new(2, 8), new(1, 7), new(1, 8)],
    ];

    /// <summary>A wiring of several one-row ports as one of a single port with as many rows.</summary>
    private static WidePosition[][] RowsAsPorts(WidePosition[][] rows, int columns) =>
        [.. rows.Select(r => r.Select(w => new WidePosition(1, ((w.Port - 1) * columns) + w.Position)).ToArray())];

    /// <summary>Lane q of all, counted through the ports, joins positions k and 13-k of its port to q and N+1-q.</summary>
    private static WidePosition[][] MirrorPairs(int ports, int wide)
    {
        const int lanes = 4;
        var rows = new WidePosition[ports][];
        for (int port = 0; port < ports; port++)
        {
            rows[port] = new WidePosition[2 * lanes];
            for (int k = 0; k < lanes; k++)
            {
                int q = (port * lanes) + k + 1;
                rows[port][k] = new(1, q);
                rows[port][^(k + 1)] = new(1, wide + 1 - q);
            }
        }

        return rows;
    }

    private static WidePosition[][] RowsToPorts(int ports, int columns)
    {
        var rows = new WidePosition[ports][];
        for (int port = 0; port < ports; port++)
            rows[port] = [.. Enumerable.Range((port * columns) + 1, columns).Select(p => new WidePosition(1, p))];
        return rows;
    }

    private static WidePosition[][] Shifted(WidePosition[][] rows, int by) =>
        [.. rows.Select(r => r.Select(w => w with { Position = w.Position + by }).ToArray())];
}
