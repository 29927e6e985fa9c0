using PolarityMap.Core.Deviations;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Locate;

/// <summary>
/// The tests that could tell explanations apart: light from any place that hands can open along the ways in doubt to any other
/// on it, lamps, losses, and looks at the parts that would differ. Work in minutes is common practice.
/// </summary>
internal sealed class CandidateTests
{
    /// <summary>Ways of light that are looked at; beyond that more of the same would come.</summary>
    private const int MostWays = 32;

    private const int LampMinutes = 1;
    private const int LightMinutes = 2;
    private const int InterfaceMinutes = 1;
    private const int DuplexMinutes = 2;
    private const int ArrayMinutes = 3;
    private const int MeterMinutes = 2;

    private readonly DeviationContext _context;
    private readonly StrandGraph _graph;
    private readonly HashSet<object> _done = [];
    private readonly HashSet<int> _outOfReach = [];
    private readonly HashSet<SiteTest> _known = [];
    private readonly List<SiteTest> _tests = [];
    private readonly HashSet<string> _ways = [];

    private CandidateTests(DeviationContext context, IReadOnlyList<Observation> observations)
    {
        _context = context;
        _graph = context.Graph;
        foreach (Observation observation in observations)
        {
            switch (observation)
            {
                case LightSeen light:
                    _done.Add((light.From, light.Look));
                    break;
                case LampSeen lamp:
                    _done.Add(lamp.Port);
                    break;
                case LossMeasured loss:
                    _done.Add((loss.From, loss.Seen, true));
                    break;
                case PartLooked look:
                    _done.Add(look.Part);
                    break;
                case NotReached reach:
                    _outOfReach.Add(reach.Part);
                    break;
            }
        }
    }

    /// <summary>The tests for explanations of observations, in an order that does not change from run to run.</summary>
    public static IReadOnlyList<SiteTest> Of(DeviationContext context, IReadOnlyList<Observation> observations, IReadOnlyList<int> refuting, IReadOnlyList<Deviation[]> explanations)
    {
        var tests = new CandidateTests(context, observations);
        var trial = new TrialGraph(context.Graph);
        tests.AddWays(trial, observations, refuting);
        bool losses = explanations.Any(e => e.Any(d => d.Lossy.Count > 0));
        foreach (Deviation[] explanation in explanations)
        {
            foreach (Deviation deviation in explanation)
            {
                trial.Lay(deviation);
                foreach (int part in deviation.Parts)
                {
                    if (deviation.Kind.LookMinutes > 0)
                        tests.AddLook(part, deviation.Kind.LookMinutes);
                }
            }

            tests.AddWays(trial, observations, refuting);
            foreach (Deviation deviation in explanation)
                tests.AddPlaces(trial, deviation);
            for (int i = 0; i < explanation.Length; i++)
                trial.Lift();
        }

        if (losses)
            tests.AddLosses(trial);
        return tests._tests;
    }

    /// <summary>
    /// The tests that ask the places of an explanation themselves: a look where it would be seen, else light through the part alone
    /// or over the mating, or its loss; and where it makes light weak and a lamp is off, whether light comes at all, since weak light
    /// would hide that something else keeps it away. None where they were made already.
    /// </summary>
    /// <param name="context">The plant.</param>
    /// <param name="observations">What was seen.</param>
    /// <param name="explanation">The explanation.</param>
    /// <param name="doubted">The positions on the ways of light in doubt.</param>
    public static IReadOnlyList<SiteTest> AtTheCauses(DeviationContext context, IReadOnlyList<Observation> observations, IReadOnlyList<Deviation> explanation, IReadOnlySet<int> doubted)
    {
        var tests = new CandidateTests(context, observations);
        foreach (Deviation deviation in explanation)
        {
            if (deviation.Kind.LookMinutes > 0)
                tests.AddLook(deviation.Parts[0], deviation.Kind.LookMinutes);
            else if (deviation.Patch.Inside.Count > 0)
                tests.AddLight(deviation.Patch.Inside[0].Position, context.Graph.PartOf(deviation.Patch.Inside[0].Position));
            else if (deviation.Lossy.Count > 0)
                tests.AddLossAt(deviation.Lossy.FirstOrDefault(doubted.Contains, deviation.Lossy[0]));
        }

        tests.AddWeakLamps(observations, explanation);
        return tests._tests;
    }

    /// <summary>Light to every position at which a lamp listens that is off, and that weak light could have put off.</summary>
    private void AddWeakLamps(IReadOnlyList<Observation> observations, IReadOnlyList<Deviation> explanation)
    {
        var trial = new TrialGraph(_graph);
        var predictor = new Predictor(_context, trial);
        foreach (Deviation deviation in explanation)
            trial.Lay(deviation);
        foreach (LampSeen lamp in observations.OfType<LampSeen>().Where(l => !l.IsOn && predictor.LampAt(l.Port) == LampState.Weak))
        {
            foreach (int listener in predictor.Listening(lamp.Port))
            {
                int far = trial.Follow(listener, -1);
                if (trial.PassedLoss && !_done.Contains((far, lamp.Port.Part)) && !_done.Contains((far, listener, true)))
                    AddLight(listener, _graph.PartOf(far));
            }
        }
    }

    /// <summary>Tests along the ways of the observations in doubt, as things are laid.</summary>
    private void AddWays(TrialGraph trial, IReadOnlyList<Observation> observations, IReadOnlyList<int> refuting)
    {
        foreach (int index in refuting)
        {
            if (_ways.Count >= MostWays)
                return;
            switch (observations[index])
            {
                case LightSeen light:
                    AddWay(trial, light.From);
                    break;
                case LossMeasured loss:
                    AddWay(trial, loss.From);
                    break;
                case LampSeen lamp:
                    foreach (Lane lane in _context.Plant.Parts[lamp.Port.Part].Shape.Lanes)
                    {
                        if (lane.Port == lamp.Port.Port)
                            AddWay(trial, _graph.PositionOf(lamp.Port, lane.Position));
                    }

                    break;
            }
        }
    }

    /// <summary>Tests at the first positions that a deviation changes: through the part alone, and along the way that leads there.</summary>
    private void AddPlaces(TrialGraph trial, Deviation deviation)
    {
        const int mostPlaces = 4;
        int places = 0;
        foreach (int position in deviation.Patch.Inside.Select(c => c.Position).Concat(deviation.Patch.Outside.Select(c => c.Position)).Concat(deviation.Lossy))
        {
            if (places++ >= mostPlaces)
                return;
            if (_ways.Count < MostWays)
                AddWay(trial, position);
            if (!_graph.HasLane(position))
                AddLight(position, _graph.PartOf(position));
        }
    }

    /// <summary>Tests from every place on a way to every later one, in both directions.</summary>
    private void AddWay(TrialGraph trial, int from)
    {
        trial.Follow(from, -1);
        int[] there = [.. trial.Walk];
        if (!_ways.Add(string.Join(',', there)))
            return;
        AddAlong(there);
        trial.Follow(there[^1], -1);
        AddAlong([.. trial.Walk]);
    }

    private void AddAlong(int[] way)
    {
        // Light is put in where it enters a part or leaves an interface.
        for (int i = 0; i < way.Length; i++)
        {
            bool enters = i == 0 || _graph.PartOf(way[i]) != _graph.PartOf(way[i - 1]);
            if (!enters || (i > 0 && _graph.HasLane(way[i])))
                continue;
            for (int j = i; j < way.Length; j++)
            {
                if (j == way.Length - 1 || _graph.PartOf(way[j + 1]) != _graph.PartOf(way[j]))
                    AddLight(way[i], _graph.PartOf(way[j]));
            }
        }

        if (way.Length > 0 && _graph.HasLane(way[0]))
            AddLamp(_graph.PlaceOf(way[0]).Port);
        if (way.Length > 0 && _graph.HasLane(way[^1]))
            AddLamp(_graph.PlaceOf(way[^1]).Port);
    }

    private void AddLight(int from, int look)
    {
        PortRef port = _graph.PlaceOf(from).Port;
        if (_graph.HasLane(from) && look == port.Part)
            return;
        if (_done.Contains((from, look)) || !IsOpen(port) || !CanLookAt(look) || _outOfReach.Contains(port.Part) || _outOfReach.Contains(look))
            return;
        Add(new LightTest(from, look, LightMinutes + Cost(port) + (look == port.Part ? 0 : CostOfLooking(look))));
    }

    private void AddLamp(PortRef port)
    {
        if (!_done.Contains(port) && !_outOfReach.Contains(port.Part))
            Add(new LampTest(port, LampMinutes));
    }

    private void AddLook(int part, int minutes)
    {
        if (!_done.Contains(part) && !_outOfReach.Contains(part))
            Add(new LookTest(part, minutes));
    }

    /// <summary>A measurement over the mating at a position, from the part behind it to the part before it.</summary>
    private void AddLossAt(int position)
    {
        int other = _graph.Outside[position];
        if (other < 0)
            return;
        (int from, int to) = _graph.HasLane(other) ? (other, position) : (position, other);
        int start = _graph.HasLane(from) ? from : _graph.Inside[from];
        int seen = _graph.HasLane(to) ? to : _graph.Inside[to];
        if (start < 0 || seen < 0 || _done.Contains((start, seen, true)) || _outOfReach.Contains(_graph.PartOf(start)) || _outOfReach.Contains(_graph.PartOf(seen)))
            return;
        PortRef port = _graph.PlaceOf(start).Port;
        if (IsOpen(port) && CanLookAt(_graph.PartOf(seen)))
            Add(new LossTest(start, seen, LightMinutes + MeterMinutes + Cost(port) + CostOfLooking(_graph.PartOf(seen))));
    }

    /// <summary>A measurement wherever light could be looked for, at the place where it comes out as described.</summary>
    private void AddLosses(TrialGraph trial)
    {
        foreach (LightTest light in _tests.OfType<LightTest>().ToArray())
        {
            int seen = trial.Follow(light.From, light.Look);
            if (seen >= 0 && !_done.Contains((light.From, seen, true)))
                Add(new LossTest(light.From, seen, light.Minutes + MeterMinutes));
        }
    }

    private void Add(SiteTest test)
    {
        if (_known.Add(test))
            _tests.Add(test);
    }

    /// <summary>True where hands can put light in: at a connector, not at bare fibre ends.</summary>
    private bool IsOpen(PortRef port) => _context.Plant.Port(port) is { Face.Family: not ConnectorFamily.Bare };

    private bool CanLookAt(int part)
    {
        foreach (PortShape port in _context.Plant.Parts[part].Shape.Ports)
        {
            if (port.Face.Family != ConnectorFamily.Bare)
                return true;
        }

        return false;
    }

    private int Cost(PortRef port) =>
        _context.Plant.Parts[port.Part].Shape.IsInterface ? InterfaceMinutes : _context.Plant.Port(port).Face.Family == ConnectorFamily.Array ? ArrayMinutes : DuplexMinutes;

    private int CostOfLooking(int part)
    {
        Shape shape = _context.Plant.Parts[part].Shape;
        return shape.IsInterface ? InterfaceMinutes : shape.Ports[0].Face.Family == ConnectorFamily.Array ? ArrayMinutes : DuplexMinutes;
    }
}
