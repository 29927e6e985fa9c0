using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Fonts;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>A strand, or the stretch of it that a sheet shows: some of its visits to parts, in order.</summary>
/// <param name="Strand">The strand.</param>
/// <param name="First">Index of the first visit shown.</param>
/// <param name="Count">Number of visits shown.</param>
internal readonly record struct Piece(int Strand, int First, int Count);

/// <summary>
/// The visits of strands to parts, and all else that a planning asks of the plant again and again: found once, however often a
/// strand is laid out.
/// </summary>
internal sealed class StrandHops(TracedPlant traced)
{
    private readonly Hop[]?[] _hops = new Hop[]?[traced.Strands.Count];
    private readonly List<Hop> _ofStrand = [];
    private PortTable? _ports;
    private RefusedMatings? _refused;
    private StrandLabels? _labels;
    private Captions? _captions;
    private int _visits;

    public TracedPlant Traced => traced;

    /// <summary>The room that names and numbers get in a large set; null where each gets its own.</summary>
    public EvenRoom? EvenRoom { get; init; }

    /// <summary>Width that the name of a part leaves free beside it, mm.</summary>
    public double SpareOfName(int part, double capHeight) => EvenRoom is null ? 0 : FontMetrics.WidthMm(EvenRoom.SpareOfName(part), capHeight);

    /// <summary>The ports of positions.</summary>
    public PortTable Ports => _ports ??= new PortTable(traced);

    /// <summary>The matings that cannot be made.</summary>
    public RefusedMatings Refused => _refused ??= new RefusedMatings(traced.Plant);

    /// <summary>The colours and labels of strands.</summary>
    public StrandLabels Labels => _labels ??= new StrandLabels(this);

    /// <summary>What parts are.</summary>
    public Captions Captions => _captions ??= new Captions(traced.Plant);

    /// <summary>How strands cross, by their order.</summary>
    public BraidPlans Braids { get; } = new();

    /// <summary>Parts in columns.</summary>
    public ColumnRanks Ranks { get; } = new(traced.Plant.Parts.Count);

    public Hop[] Of(int strand)
    {
        if (_hops[strand] is { } known)
            return known;
        traced.Hops(strand, _ofStrand);
        return _hops[strand] = [.. _ofStrand];
    }

    /// <summary>The whole strand as a piece.</summary>
    public Piece Whole(int strand) => new(strand, 0, Of(strand).Length);

    /// <summary>True when the strand goes on beyond the piece's right end.</summary>
    public bool GoesOn(Piece piece) => piece.First + piece.Count < Of(piece.Strand).Length;

    /// <summary>A number for a pass over ports that no other pass has.</summary>
    public int NextVisit() => ++_visits;
}
