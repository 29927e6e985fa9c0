using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>A strand, or the stretch of it that a sheet shows: some of its visits to parts, in order.</summary>
/// <param name="Strand">The strand.</param>
/// <param name="First">Index of the first visit shown.</param>
/// <param name="Count">Number of visits shown.</param>
internal readonly record struct Piece(int Strand, int First, int Count);

/// <summary>The visits of strands to parts, asked for once for each strand however often it is laid out.</summary>
internal sealed class StrandHops(TracedPlant traced)
{
    private readonly IReadOnlyList<Hop>?[] _hops = new IReadOnlyList<Hop>?[traced.Strands.Count];

    public TracedPlant Traced => traced;

    public IReadOnlyList<Hop> Of(int strand) => _hops[strand] ??= traced.Hops(strand);

    /// <summary>The whole strand as a piece.</summary>
    public Piece Whole(int strand) => new(strand, 0, Of(strand).Count);

    /// <summary>True when the strand goes on beyond the piece's right end.</summary>
    public bool GoesOn(Piece piece) => piece.First + piece.Count < Of(piece.Strand).Count;
}
