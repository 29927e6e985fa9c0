using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks;

/// <summary>Where the strand of one lane comes out.</summary>
/// <param name="Start">The lane's own position.</param>
/// <param name="Lane">The lane.</param>
/// <param name="Strand">Its strand.</param>
/// <param name="End">The position at the strand's other end; equal to <paramref name="Start"/> where nothing is plugged in.</param>
/// <param name="EndPort">The port of that position.</param>
/// <param name="EndLane">The lane there, or null where the strand ends outside an interface.</param>
public readonly record struct Landing(int Start, Lane Lane, int Strand, int End, PortRef EndPort, Lane? EndLane)
{
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
    public bool MeetsSame => EndLane is { } far && far.Direction == Lane.Direction && Lane.Direction != LaneDirection.Both;

    /// <summary>True when both ends say what they are for and the two do not work together.</summary>
    public bool ApplicationsMiss => Application is { } here && EndApplication is { } there && !ApplicationMatch.WorkTogether(here, Links, there, EndLinks);

    /// <summary>
    /// True when light arrives where nothing hears its wavelength: one end sends at another wavelength than the other hears, or
    /// a lane that goes both ways meets one that does not.
    /// </summary>
    public bool WavelengthsMiss => EndLane is { } far && !MeetsSame
        && ((Lane.Direction == LaneDirection.Both) != (far.Direction == LaneDirection.Both)
            || Differ(Lane.Sends, far.Hears) || Differ(far.Sends, Lane.Hears));

    /// <summary>True when transmit meets receive, at a wavelength that is heard, between interfaces that work together.</summary>
    public bool IsHeard => EndLane is not null && !MeetsSame && !WavelengthsMiss && !ApplicationsMiss;

    private static bool Differ(Wavelength? sent, Wavelength? heard) => sent is { } s && heard is { } h && s != h;
}
