using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Documents.Binding;

/// <summary>Which stop took a port, or a single position of one.</summary>
internal sealed class TakenPorts(PlantBuilder plant)
{
    private readonly List<Stop> _stops = [];
    private readonly Dictionary<(PortRef Port, int Position), Stop> _single = [];

    /// <summary>For each part where its ports begin in <see cref="_whole"/>, plus 1; 0 until the first of them is taken.</summary>
    private int[] _firstOf = [];

    /// <summary>For each port the number of the stop that took it, or 0. A number for each, since there may be very many.</summary>
    private int[] _whole = [];

    private int _ports;

    /// <summary>Takes a port, or the position of it that is not 0.</summary>
    public void Take(PortRef port, int position, Stop stop)
    {
        if (position > 0)
        {
            _single[(port, position)] = stop;
            return;
        }

        if (stop.Number == 0)
        {
            _stops.Add(stop);
            stop.Number = _stops.Count;
        }

        Whole(port) = stop.Number;
    }

    /// <summary>
    /// The stop that is in the way of taking a port, or the position of it that is not 0, and what it has taken: a position, or 0
    /// for the whole port. Null when nothing is in the way.
    /// </summary>
    public (int Position, Stop Stop)? Conflict(PortRef port, int position)
    {
        if (port.Part < _firstOf.Length && _firstOf[port.Part] > 0 && Whole(port) is > 0 and int whole)
            return (0, _stops[whole - 1]);
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

    private ref int Whole(PortRef port)
    {
        if (port.Part >= _firstOf.Length)
            Array.Resize(ref _firstOf, Math.Max(port.Part + 1, 2 * _firstOf.Length));
        if (_firstOf[port.Part] == 0)
        {
            _firstOf[port.Part] = _ports + 1;
            _ports += plant.Part(port.Part).Shape.Ports.Count;
            if (_ports > _whole.Length)
                Array.Resize(ref _whole, Math.Max(_ports, 2 * _whole.Length));
        }

        return ref _whole[_firstOf[port.Part] - 1 + port.Port];
    }
}
