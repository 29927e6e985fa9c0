using PolarityMap.Core.Deviations;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Benchmarks.Locating;

/// <summary>A site with deviations in it, that shows what an installer would see there.</summary>
internal sealed class SimulatedSite
{
    private static readonly Decibel s_limit = new(1);
    private static readonly Decibel s_good = new(0.5m);
    private static readonly Decibel s_bad = new(4);

    private readonly DeviationContext _context;
    private readonly IReadOnlyList<Deviation> _truth;
    private readonly TrialGraph _trial;

    public SimulatedSite(DeviationContext context, IReadOnlyList<Deviation> truth)
    {
        _context = context;
        _truth = truth;
        _trial = new TrialGraph(context.Graph);
        foreach (Deviation deviation in truth)
            _trial.Lay(deviation);
    }

    /// <summary>
    /// What an installer notes first: every link lamp, what a link reaches that is up and reaches the wrong port, and where no lamp
    /// tells but light is lost the loss of one link.
    /// </summary>
    public List<Observation> FirstSight()
    {
        var seen = new List<Observation>();
        foreach (Link link in _context.Plant.Links)
        {
            Note(link.From, link.To, seen);
            Note(link.To, link.From, seen);
        }

        if (!seen.OfType<LossMeasured>().Any() && Weak() is { } weak)
            seen.Add(weak);
        return [.. seen.Distinct()];
    }

    private void Note(LinkEnd end, LinkEnd meant, List<Observation> seen)
    {
        bool lit = IsLit(end.Port, out _);
        seen.Add(new LampSeen(end.Port, lit));
        foreach (Lane lane in _context.Plant.Parts[end.Port.Part].Shape.Lanes)
        {
            if (lane.Port != end.Port.Port || lane.Direction == LaneDirection.Transmit || (end.Lane != 0 && lane.Group != end.Lane))
                continue;
            int position = _context.Graph.PositionOf(end.Port, lane.Position);
            int far = _trial.Follow(position, -1);
            if (lit && far >= 0 && _context.Graph.PlaceOf(far).Port != meant.Port)
                seen.Add(new LightSeen(position, -1, far));
        }
    }

    private LossMeasured? Weak()
    {
        foreach (Link link in _context.Plant.Links)
        {
            if (IsLit(link.From.Port, out int weak) && weak >= 0)
                return new LossMeasured(weak, _trial.Follow(weak, -1), s_bad, s_limit);
        }

        return null;
    }

    /// <summary>What a test shows.</summary>
    public Observation Make(SiteTest test)
    {
        switch (test)
        {
            case LightTest light:
                return new LightSeen(light.From, light.Look, _trial.Follow(light.From, light.Look));
            case LampTest lamp:
                return new LampSeen(lamp.Port, IsLit(lamp.Port, out _));
            case LookTest look:
                return new PartLooked(look.Part, !_truth.Any(d => d.Kind.LookMinutes > 0 && d.Parts.Contains(look.Part)));
            case LossTest loss:
                int look2 = _context.Graph.PartOf(loss.Seen);
                int seen = _trial.Follow(loss.From, look2);
                return seen == loss.Seen ? new LossMeasured(loss.From, seen, _trial.PassedLoss ? s_bad : s_good, s_limit) : new LightSeen(loss.From, look2, seen);
            default:
                throw new ArgumentException($"{test} is not known", nameof(test));
        }
    }

    /// <summary>Weak light still lights the lamp here.</summary>
    private bool IsLit(PortRef port, out int weak)
    {
        weak = -1;
        bool lit = true;
        foreach (Lane lane in _context.Plant.Parts[port.Part].Shape.Lanes)
        {
            if (lane.Port != port.Port || lane.Direction == LaneDirection.Transmit)
                continue;
            int position = _context.Graph.PositionOf(port, lane.Position);
            int far = _trial.Follow(position, -1);
            if (_trial.PassedLoss && weak < 0)
                weak = position;
            lit &= far >= 0 && _context.Graph.LaneAt(far)!.Value.Direction != LaneDirection.Receive;
        }

        return lit;
    }
}
