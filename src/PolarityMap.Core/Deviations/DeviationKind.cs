namespace PolarityMap.Core.Deviations;

/// <summary>
/// One of the ways in which plants get built wrong. A kind is data: where it can happen, what it changes, what one sees, how
/// often it happens and how much work it makes. One file each, listed in <see cref="DeviationCatalogue"/>.
/// </summary>
public abstract class DeviationKind
{
    /// <summary>What is said wherever a hand comes near a fibre.</summary>
    public const string LiveFibre =
        "Assume every fibre is live: its light is invisible. Never look into a fibre end, plug or port; prove it dark with a power meter " +
        "first. Local codes, site rules and trained persons come before this text.";

    /// <summary>What is said as well where glass is cut or a tray is opened.</summary>
    protected const string OpenFibre =
        LiveFibre + " Fibre ends are glass needles: wear safety glasses, put every shard into a closed container with a label, and neither " +
        "eat nor drink where you work.";

    private int _index = -1;

    /// <summary>Its short name in files and on the command line, such as <c>other-cord</c>.</summary>
    public abstract string Name { get; }

    /// <summary>What went wrong, in a few words.</summary>
    public abstract string Title { get; }

    /// <summary>What the installer sees, in one sentence.</summary>
    public abstract string Symptom { get; }

    /// <summary>
    /// How often it happens at a place where it can, beside the other kinds. No published figures were found, so all weights are
    /// common practice: an order, not a measurement. For a link that never worked the order is wrong cord, wrong port, cassette or
    /// mix of methods, pair crossed in the field, wrong trunk, dirt, seating, fibre.
    /// </summary>
    public abstract double Weight { get; }

    /// <summary>Minutes to see it by looking at the part, or 0 where looking does not show it. Common practice.</summary>
    public abstract int LookMinutes { get; }

    /// <summary>Minutes to put it right. Common practice.</summary>
    public abstract int MendMinutes { get; }

    /// <summary>Where facts about it come from.</summary>
    public virtual string Source => "common practice";

    /// <summary>What can hurt someone who checks or mends it.</summary>
    public virtual string Caution => LiveFibre;

    /// <summary>Every deviation of this kind that changes the part, a mating at one of its ports, or light that passes it.</summary>
    /// <param name="context">The plant.</param>
    /// <param name="part">Index of the part.</param>
    public abstract IEnumerable<Deviation> At(DeviationContext context, int part);

    /// <summary>The name of a deviation of this kind.</summary>
    protected DeviationId Id(int at, int with = -1, int variant = 0)
    {
        if (_index < 0)
            _index = DeviationCatalogue.IndexOf(this);
        return new DeviationId(_index, at, with, variant);
    }
}
