using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks;

/// <summary>
/// Where the strand of one lane comes out. Every lane of a plant is asked for, so that a landing points at its lanes instead of
/// holding them.
/// </summary>
public readonly struct Landing
{
    private readonly Shape _shape;
    private readonly Shape _endShape;
    private readonly int _lane;
    private readonly int _endLane;

    /// <param name="start">The lane's own position.</param>
    /// <param name="shape">The shape of the lane's part.</param>
    /// <param name="lane">Index of the lane in its shape.</param>
    /// <param name="strand">Its strand.</param>
    /// <param name="end">The position at the strand's other end.</param>
    /// <param name="endPort">The port of that position.</param>
    /// <param name="endShape">The shape of that port's part.</param>
    /// <param name="endLane">Index of the lane at the other end in that shape, or -1.</param>
    internal Landing(int start, Shape shape, int lane, int strand, int end, PortRef endPort, Shape endShape, int endLane)
    {
        Start = start;
        Strand = strand;
        End = end;
        EndPort = endPort;
        _shape = shape;
        _lane = lane;
        _endShape = endShape;
        _endLane = endLane;
    }

    /// <summary>The lane's own position.</summary>
    public int Start { get; }

    /// <summary>Its strand.</summary>
    public int Strand { get; }

    /// <summary>The position at the strand's other end; equal to <see cref="Start"/> where nothing is plugged in.</summary>
    public int End { get; }

    /// <summary>The port of that position.</summary>
    public PortRef EndPort { get; }

    /// <summary>The lane.</summary>
    public Lane Lane => _shape.Lanes[_lane];

    /// <summary>The lane at the other end, or null where the strand ends outside an interface.</summary>
    public Lane? EndLane => ReachesLane ? _endShape.Lanes[_endLane] : null;

    /// <summary>True when the strand ends at a lane of an interface.</summary>
    public bool ReachesLane => _endLane >= 0;

    /// <summary>What the lane's own port is for, or null when it is not stated.</summary>
    public Application? Application { get; init; }

    /// <summary>Into how many links the lane's own port is split; 0 when it is one link.</summary>
    public int Links { get; init; }

    /// <summary>As <see cref="Links"/> for the port at the other end.</summary>
    public int EndLinks { get; init; }

    /// <summary>What the port at the other end is for, or null when it is not stated or there is none.</summary>
    public Application? EndApplication { get; init; }

    /// <summary>True when something is plugged in.</summary>
    public bool IsWired => End != Start;

    /// <summary>True when the strand meets a lane that does the same one way as this one.</summary>
    public bool MeetsSame => ReachesLane && Far.Direction == Near.Direction && Near.Direction != LaneDirection.Both;

    /// <summary>True when both ends say what they are for and the two do not work together.</summary>
    public bool ApplicationsMiss => Application is { } here && EndApplication is { } there && !ApplicationMatch.WorkTogether(here, Links, there, EndLinks);

    /// <summary>
    /// True when light arrives where nothing hears its wavelength: one end sends at another wavelength than the other hears, or
    /// a lane that goes both ways meets one that does not.
    /// </summary>
    public bool WavelengthsMiss => ReachesLane && !MeetsSame
        && ((Near.Direction == LaneDirection.Both) != (Far.Direction == LaneDirection.Both)
            || Differ(Near.Sends, Far.Hears) || Differ(Far.Sends, Near.Hears));

    /// <summary>True when transmit meets receive, at a wavelength that is heard, between interfaces that work together.</summary>
    public bool IsHeard => ReachesLane && !MeetsSame && !WavelengthsMiss && !ApplicationsMiss;

    private ref readonly Lane Near => ref _shape.Lanes.Span[_lane];

    private ref readonly Lane Far => ref _endShape.Lanes.Span[_endLane];

    private static bool Differ(Wavelength? sent, Wavelength? heard) => sent is { } s && heard is { } h && s != h;
}
