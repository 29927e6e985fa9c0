using PolarityMap.Core.Deviations;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Locate;

/// <summary>What would be seen at a link lamp.</summary>
internal enum LampState
{
    Off,
    On,

    /// <summary>Light comes, but weaker than it should: the lamp may be on or off.</summary>
    Weak,
}

/// <summary>Says what would be seen on a trial graph, and which positions that depends on.</summary>
internal sealed class Predictor(DeviationContext context, TrialGraph trial)
{
    private readonly StrandGraph _graph = context.Graph;

    /// <summary>True when an observation agrees with the trial graph.</summary>
    /// <param name="observation">What was seen.</param>
    /// <param name="ways">Where not null, gets every position that the light passed on which the answer depends.</param>
    public bool Agrees(Observation observation, PositionMarks? ways = null)
    {
        switch (observation)
        {
            case LightSeen light:
                return Follow(light.From, light.Look, ways) == light.Seen;
            case LampSeen lamp:
                return LampAt(lamp.Port, ways) is var state && (state == LampState.Weak || (state == LampState.On) == lamp.IsOn);
            case LossMeasured loss:
                return Loses(loss.From, loss.Seen, loss.IsTooMuch, ways);
            case LossExpected loss:
                return Loses(loss.From, loss.Seen, loss.IsTooMuch, ways);
            case PartLooked look:
                return Differs(look.Part) != look.IsAsDescribed;
            default:
                return true;
        }
    }

    private bool Loses(int from, int seen, bool tooMuch, PositionMarks? ways) => Follow(from, _graph.PartOf(seen), ways) == seen && trial.PassedLoss == tooMuch;

    /// <summary>Follows light and notes its way.</summary>
    public int Follow(int from, int look, PositionMarks? ways = null)
    {
        int seen = trial.Follow(from, look);
        if (ways is null)
            return seen;
        foreach (int position in trial.Walk)
            ways.Add(position);
        return seen;
    }

    /// <summary>A link lamp: on when every position at which the port listens gets light that it can hear.</summary>
    public LampState LampAt(PortRef port, PositionMarks? ways = null)
    {
        bool weak = false, dark = false, listens = false;
        foreach (int position in Listening(port))
        {
            listens = true;
            int far = Follow(position, -1, ways);
            dark |= far < 0 || !IsHeard(position, far);
            weak |= trial.PassedLoss;
        }

        return dark || !listens ? LampState.Off : weak ? LampState.Weak : LampState.On;
    }

    /// <summary>The positions at which a port listens.</summary>
    public IEnumerable<int> Listening(PortRef port)
    {
        Shape shape = context.Plant.Parts[port.Part].Shape;
        foreach (Lane lane in shape.Lanes)
        {
            if (lane.Port == port.Port && lane.Direction != LaneDirection.Transmit)
                yield return _graph.PositionOf(port, lane.Position);
        }
    }

    /// <summary>True when a deviation is laid that somebody who looks at the part would see.</summary>
    public bool Differs(int part)
    {
        foreach (Deviation deviation in trial.Deviations)
        {
            if (IsSeenAt(deviation, part))
                return true;
        }

        return false;
    }

    /// <summary>True when somebody who looks at the part would see the deviation.</summary>
    public static bool IsSeenAt(Deviation deviation, int part) => deviation.Kind.LookMinutes > 0 && deviation.Parts.Contains(part);

    private bool IsHeard(int listener, int sender) =>
        _graph.LaneAt(listener) is { } hears && _graph.LaneAt(sender) is { } sends
        && sends.Direction != LaneDirection.Receive
        && (hears.Hears is not { } wanted || sends.Sends is not { } sent || wanted == sent);
}
