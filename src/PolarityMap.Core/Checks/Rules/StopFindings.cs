using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

/// <summary>One fault at one stop of a run, before faults that are alike are put together.</summary>
/// <param name="Alike">Faults at the same stop with the same text here are one finding.</param>
/// <param name="Message">As in <see cref="Finding"/>.</param>
/// <param name="Expected">As in <see cref="Finding"/>.</param>
/// <param name="Actual">As in <see cref="Finding"/>.</param>
internal sealed record StopFault(string Alike, string Message, string Expected, string Actual);

/// <summary>
/// Findings about stops. A run with ranges makes the same mistake in each of its chains; what the hand has to do is one thing,
/// so that it is one finding with all the strands.
/// </summary>
internal sealed class StopFindings(Rule rule, CheckContext context)
{
    private readonly Dictionary<(SourcePlace Place, string Alike), Stop> _stops = [];

    private sealed record Stop(StopFault First)
    {
        public int Count { get; set; }

        public List<int> Strands { get; } = [];

        public List<SourcePlace> Related { get; } = [];

        public List<FindingSite> At { get; } = [];

        public HashSet<int> Seen { get; } = [];

        public HashSet<int> Broken { get; } = [];
    }

    /// <summary>Adds a fault.</summary>
    /// <param name="place">The stop.</param>
    /// <param name="fault">The fault.</param>
    /// <param name="strands">The strands through it.</param>
    /// <param name="related">Other places that have to do with it.</param>
    /// <param name="at">Where in the plant it is.</param>
    /// <param name="breaks">True when its strands end there, so that it refutes the links on them.</param>
    public void Add(SourcePlace place, StopFault fault, IEnumerable<int> strands, IEnumerable<SourcePlace> related, IEnumerable<FindingSite> at, bool breaks = false)
    {
        if (!_stops.TryGetValue((place, fault.Alike), out Stop? stop))
            _stops[(place, fault.Alike)] = stop = new Stop(fault);
        stop.Count++;
        int[] through = [.. strands];
        AddStrands(place, fault, through);
        AddSites(place, fault, at);
        if (breaks)
            stop.Broken.UnionWith(through);

        foreach (SourcePlace other in related)
        {
            if (other != place && !stop.Related.Contains(other))
                stop.Related.Add(other);
        }
    }

    /// <summary>Adds strands that have to do with a fault that has been added, and do not end there.</summary>
    public void AddStrands(SourcePlace place, StopFault fault, IEnumerable<int> strands)
    {
        Stop stop = _stops[(place, fault.Alike)];
        foreach (int strand in strands)
        {
            if (stop.Seen.Add(strand))
                stop.Strands.Add(strand);
        }
    }

    /// <summary>Adds where else in the plant a fault is that has been added.</summary>
    public void AddSites(SourcePlace place, StopFault fault, IEnumerable<FindingSite> at)
    {
        Stop stop = _stops[(place, fault.Alike)];
        foreach (FindingSite site in at)
        {
            if (!stop.At.Contains(site))
                stop.At.Add(site);
        }
    }

    /// <summary>Adds the findings, in the order in which their first faults came.</summary>
    public void Report(List<Finding> findings)
    {
        foreach (((SourcePlace place, _), Stop stop) in _stops)
        {
            stop.Strands.Sort((a, b) => context.Traced.NumberOf(a).CompareTo(context.Traced.NumberOf(b)));
            string more = stop.Count == 1 ? "" : $", and {stop.Count - 1} more at the same stop";
            findings.Add(new Finding(rule, place, stop.First.Message + more, stop.First.Expected, stop.First.Actual)
            {
                Strands = stop.Strands,
                Related = stop.Related,
                At = stop.At,
                Links = context.Outcomes.RefutedTouching(stop.Broken),
            });
        }
    }
}
