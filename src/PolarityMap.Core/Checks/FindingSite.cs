using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks;

/// <summary>
/// A place in the plant that a finding is about, for whoever points at it: a whole part, a port of it, or the mating of that
/// port with another. A mating that cannot be made is a place too.
/// </summary>
/// <param name="Part">Index of the part.</param>
/// <param name="Port">The port of that part; null for the whole part.</param>
/// <param name="Meets">The port that is mated to it there, or was meant to be; null where the port itself is meant.</param>
public readonly record struct FindingSite(int Part, PortRef? Port = null, PortRef? Meets = null)
{
    /// <summary>A port by itself.</summary>
    public static FindingSite Of(PortRef port) => new(port.Part, port);

    /// <summary>Where two ports meet.</summary>
    public static FindingSite Of(Mating mating) => new(mating.A.Part, mating.A, mating.B);
}
