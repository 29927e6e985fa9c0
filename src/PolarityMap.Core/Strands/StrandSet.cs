namespace PolarityMap.Core.Strands;

/// <summary>
/// Every strand of a graph. A strand is its positions in order; each position of the plant is in exactly one strand.
/// Open strands come first, closed loops last.
/// </summary>
public sealed class StrandSet
{
    private readonly int[] _positions;
    private readonly int[] _starts;

    internal StrandSet(int[] positions, int[] starts, int openCount)
    {
        _positions = positions;
        _starts = starts;
        OpenCount = openCount;
    }

    /// <summary>Number of strands.</summary>
    public int Count => _starts.Length - 1;

    /// <summary>Number of strands with two ends; those from this index on are loops.</summary>
    public int OpenCount { get; }

    /// <summary>The positions of a strand, from end to end.</summary>
    public ReadOnlySpan<int> this[int strand] => _positions.AsSpan(_starts[strand], _starts[strand + 1] - _starts[strand]);

    /// <summary>Tells a strand from its other end.</summary>
    internal void Turn(int strand) => _positions.AsSpan(_starts[strand], _starts[strand + 1] - _starts[strand]).Reverse();

    public bool IsLoop(int strand) => strand >= OpenCount;
}
