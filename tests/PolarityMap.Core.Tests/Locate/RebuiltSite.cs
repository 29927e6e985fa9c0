using PolarityMap.Core.Deviations;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Tests.Locate;

/// <summary>
/// What would be seen on site, the slow way: the plant is built anew with the deviations in it and traced whole, and light is read
/// off the strands. Shares nothing with the trial graph.
/// </summary>
internal sealed class RebuiltSite
{
    private readonly TracedPlant _traced;
    private readonly IReadOnlyList<Deviation> _set;
    private readonly HashSet<int> _lossy;

    public RebuiltSite(DeviationContext context, IReadOnlyList<Deviation> set)
    {
        _set = set;
        _lossy = [.. set.SelectMany(d => d.Lossy)];
        _traced = TracedPlant.Of(context.Build(set.SelectMany(d => d.Differences))!);
    }

    /// <summary>Where light comes out, and whether it was weakened.</summary>
    public (int Seen, bool Weak) Light(int from, int look)
    {
        ReadOnlySpan<int> strand = _traced.Strands[_traced.StrandOf(from)];
        int at = strand.IndexOf(from);
        StrandGraph graph = _traced.Graph;
        bool lane = graph.HasLane(from);
        int neighbour = lane ? graph.Outside[from] : graph.Inside[from];
        bool weak = _lossy.Contains(from);
        if (neighbour < 0)
            return (-1, weak);
        bool loop = _traced.Strands.IsLoop(_traced.StrandOf(from));
        int step = strand[At(at + 1, strand.Length, loop)] == neighbour ? 1 : -1;
        bool inside = !lane;
        for (int moved = 0; moved < strand.Length; moved++)
        {
            int next = At(at + step, strand.Length, loop);
            if (next == at)
                return (-1, weak);
            at = next;
            int here = strand[at];
            weak |= _lossy.Contains(here);
            int part = graph.PartOf(here);
            if (graph.HasLane(here))
                return (look < 0 || look == part ? here : -1, weak);
            if (inside && part == look)
                return (here, weak);
            inside = !inside;
        }

        return (-1, weak);
    }

    /// <summary>A place along a strand: a loop goes round, an open strand stays at its end.</summary>
    private static int At(int place, int length, bool loop) => loop ? (place + length) % length : Math.Clamp(place, 0, length - 1);

    public bool Agrees(Observation observation) => observation switch
    {
        LightSeen light => Light(light.From, light.Look).Seen == light.Seen,
        LampSeen lamp => Lamp(lamp.Port) is not { } state || state == lamp.IsOn,
        LossMeasured loss => Light(loss.From, _traced.Graph.PartOf(loss.Seen)) == (loss.Seen, loss.IsTooMuch),
        LossExpected loss => Light(loss.From, _traced.Graph.PartOf(loss.Seen)) == (loss.Seen, loss.IsTooMuch),
        PartLooked look => _set.Any(d => d.Kind.LookMinutes > 0 && d.Parts.Contains(look.Part)) != look.IsAsDescribed,
        _ => true,
    };

    /// <summary>True when a lamp is on, null when light comes but is weak.</summary>
    public bool? Lamp(PortRef port)
    {
        bool weak = false;
        foreach (Lane lane in _traced.Plant.Parts[port.Part].Shape.Lanes.Where(l => l.Port == port.Port && l.Direction != LaneDirection.Transmit))
        {
            (int far, bool lost) = Light(_traced.Graph.PositionOf(port, lane.Position), -1);
            if (far < 0 || _traced.Graph.LaneAt(far)!.Value.Direction == LaneDirection.Receive)
                return false;
            weak |= lost;
        }

        return weak ? null : true;
    }
}
