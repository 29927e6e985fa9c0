namespace PolarityMap.Core.Optics;

/// <summary>What an interface does at one position.</summary>
public enum LaneUse
{
    /// <summary>Light leaves the interface here.</summary>
    Transmit,

    /// <summary>Light enters the interface here.</summary>
    Receive,

    /// <summary>Light goes both ways here, at two wavelengths.</summary>
    Both,
}

/// <summary>
/// One position that an interface uses. Positions are the port's own numbers, seen at its face with the key up; the plug
/// that goes in carries the same light on the mirrored position.
/// </summary>
/// <param name="Receptacle">Which receptacle of the port, counted from 0.</param>
/// <param name="Position">The position in that receptacle, counted from 1; of a duplex one A is 1 and B is 2.</param>
/// <param name="Use">What happens there.</param>
/// <param name="Lane">
/// The lane's number, counted from 1. A lane has two positions, its transmit and its receive; one on a single fibre. Where
/// both fibres of a pair carry light both ways it is the pair's number.
/// </param>
/// <param name="Transmit">The wavelength sent here; null where none is, or several at once (see <see cref="Application.Wavelengths"/>).</param>
/// <param name="Receive">The wavelength received here; null as for <paramref name="Transmit"/>.</param>
public readonly record struct LaneSpec(int Receptacle, int Position, LaneUse Use, int Lane, Wavelength? Transmit, Wavelength? Receive);

/// <summary>One way in which the port of an application is built. Several makers' ways may be allowed.</summary>
/// <param name="Name">What tells it from the application's other layouts, such as <c>one row</c> or <c>two ports</c>.</param>
/// <param name="Form">The form of each receptacle.</param>
/// <param name="Receptacles">How many receptacles the port has.</param>
/// <param name="Angled">Whether the end faces are angled; null where that is not settled.</param>
/// <param name="Lanes">The positions in use, those that transmit first, in the order of the lanes.</param>
/// <param name="PositionsSource">How well the positions are attested, in words.</param>
public sealed record PortLayout(string Name, PortForm Form, int Receptacles, bool? Angled, IReadOnlyList<LaneSpec> Lanes, string PositionsSource)
{
    /// <summary>How well <see cref="Angled"/> is attested.</summary>
    public Confidence AngledConfidence { get; init; }
}
