namespace PolarityMap.Drawing.Scene;

/// <summary>
/// A strand, drawn as three strokes of one route: a halo of paper that cuts the lines below at a crossing, a dark
/// casing that gives light colours their contrast, and the fill that carries the colour.
/// </summary>
/// <param name="Route">The way of the strand.</param>
/// <param name="Fill">The strand's colour.</param>
/// <param name="Emphasised">Drawn with twice the fill, for the selected or faulty strand.</param>
/// <param name="Dash">State of the strand; casing and fill are dashed, the halo is not.</param>
public sealed record StrandPath(
    Route Route,
    Colour Fill,
    bool Emphasised = false,
    DashKind Dash = DashKind.Continuous) : SceneElement
{
    /// <summary>Width of the halo of a strand without emphasis, mm.</summary>
    public const double PlainHaloMm = 1.9;

    /// <summary>Width of the casing of a strand without emphasis, mm.</summary>
    public const double PlainCasingMm = 1.0;

    /// <summary>Width of the fill of a strand without emphasis, mm.</summary>
    public const double PlainFillMm = 0.7;

    /// <summary>
    /// How much wider an emphasised strand is in all three strokes. The casing keeps its width at each side, so that 2.5 mm
    /// letters still stand between two emphasised strands at 5 mm.
    /// </summary>
    public const double EmphasisMm = 0.7;

    public double HaloMm => PlainHaloMm + Wider;

    public double CasingMm => PlainCasingMm + Wider;

    public double FillMm => PlainFillMm + Wider;

    /// <summary>True when the same stretch stands on several sheets, so that its text is worth keeping.</summary>
    internal bool Repeats { get; init; }

    /// <summary>Its text as SVG, kept by the writer where it repeats.</summary>
    internal byte[]? Svg { get; set; }

    private double Wider => Emphasised ? EmphasisMm : 0;
}
