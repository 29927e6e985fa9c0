using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Documents.Binding;

/// <summary>Which stop took a port, or a single position of one.</summary>
internal sealed class TakenPorts(PlantBuilder plant)
{
    /// <summary>For each part where its ports begin among all, plus 1; 0 until the first of them is taken.</summary>
    private readonly List<int> _firstOf = [];

    private readonly List<Stop?> _whole = [];
    private readonly Dictionary<(PortRef Port, int Position), Stop> _single = [];

    /// <summary>Takes a port, or the position of it that is not 0.</summary>
    public void Take(PortRef port, int position, Stop stop)
    {
        if (position > 0)
        {
            _single[(port, position)] = stop;
            return;
        }

        while (_firstOf.Count <= port.Part)
            _firstOf.Add(0);
        if (_firstOf[port.Part] == 0)
        {
            _firstOf[port.Part] = _whole.Count + 1;
            for (int i = plant.Part(port.Part).Shape.Ports.Count; i > 0; i--)
                _whole.Add(null);
        }

        _whole[_firstOf[port.Part] - 1 + port.Port] = stop;
    }

    /// <summary>
    /// The stop that is in the way of taking a port, or the position of it that is not 0, and what it has taken: a position, or 0
    /// for the whole port. Null when nothing is in the way.
    /// </summary>
    public (int Position, Stop Stop)? Conflict(PortRef port, int position)
    {
        if (port.Part < _firstOf.Count && _firstOf[port.Part] is > 0 and int first && _whole[first - 1 + port.Port] is { } whole)
            return (0, whole);
        if (_single.Count == 0)
            return null;

        // Single positions are those of duplex and simplex ports.
        int last = position == 0 ? Math.Min(Face.Duplex.Count, plant.Port(port).Face.Count) : position;
        for (int p = Math.Max(1, position); p <= last; p++)
        {
            if (_single.TryGetValue((port, p), out Stop? single))
                return (p, single);
        }

        return null;
    }
}
