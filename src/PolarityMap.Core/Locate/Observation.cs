using PolarityMap.Core.Optics;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Locate;

/// <summary>One thing that was seen on site.</summary>
public abstract record Observation
{
    /// <summary>Where the file says so.</summary>
    public SourcePlace Place { get; init; }

    /// <summary>What the observer wrote beside it, or null.</summary>
    public string? Note { get; init; }
}

/// <summary>
/// Red or working light was put in at one position, and somebody looked where it comes out. Light that is put in at an interface
/// goes into the plug that belongs there; at any other part it goes into the part's own port, so the mating there is opened.
/// </summary>
/// <param name="From">The position where light is put in.</param>
/// <param name="Look">Index of the part at which somebody looked, or -1 for every interface.</param>
/// <param name="Seen">The position where it came out, or -1 where none did.</param>
public sealed record LightSeen(int From, int Look, int Seen) : Observation;

/// <summary>The link lamp of an interface's port: it is on when all positions at which the port listens get light from a transmitter.</summary>
public sealed record LampSeen(PortRef Port, bool IsOn) : Observation;

/// <summary>What light loses from one position to where it comes out.</summary>
/// <param name="From">The position where light is put in.</param>
/// <param name="Seen">The position where it is measured.</param>
/// <param name="Loss">The loss measured.</param>
/// <param name="Limit">The most that the way may lose by what is stated of its parts.</param>
public sealed record LossMeasured(int From, int Seen, Decibel Loss, Decibel Limit) : Observation
{
    public bool IsTooMuch => Loss > Limit;
}

/// <summary>A measurement that is still to be made: light comes out there, and loses what it may or too much.</summary>
public sealed record LossExpected(int From, int Seen, bool IsTooMuch) : Observation;

/// <summary>Somebody looked at a part and compared it with the description: type, colour, label, which plug sits where.</summary>
public sealed record PartLooked(int Part, bool IsAsDescribed) : Observation;

/// <summary>A part that cannot be reached: no test is advised there.</summary>
public sealed record NotReached(int Part) : Observation;
