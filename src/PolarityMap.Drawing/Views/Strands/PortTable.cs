using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// Finds the port of a position in one step, where the strand graph has to search. Ports are numbered through the plant: made
/// in one pass over it, and asked for every row of every layout that is tried.
/// </summary>
internal sealed class PortTable
{
    private readonly TracedPlant _traced;
    private readonly int[] _portOf;
    private readonly int[] _firstOfPort;
    private readonly int[] _firstPort;
    private readonly int[] _partOfPort;
    private readonly DrawnPort?[] _ports;
    private readonly Mating?[] _matings;

    public PortTable(TracedPlant traced)
    {
        _traced = traced;
        IReadOnlyList<Part> parts = traced.Plant.Parts;
        _firstPort = new int[parts.Count + 1];
        for (int part = 0; part < parts.Count; part++)
            _firstPort[part + 1] = _firstPort[part] + parts[part].Shape.Ports.Count;
        _portOf = new int[traced.Graph.PositionCount];
        _partOfPort = new int[_firstPort[^1]];
        _firstOfPort = new int[_firstPort[^1]];
        _ports = new DrawnPort?[_firstPort[^1]];
        _matings = new Mating?[_firstPort[^1]];
        int start = 0;
        for (int part = 0; part < parts.Count; part++)
        {
            Shape shape = parts[part].Shape;
            for (int port = 0; port < shape.Ports.Count; port++)
            {
                int number = _firstPort[part] + port;
                _partOfPort[number] = part;
                _firstOfPort[number] = start + shape.Ports[port].FirstPosition;
                _portOf.AsSpan(_firstOfPort[number], shape.Ports[port].PositionCount).Fill(number);
            }

            start += shape.PositionCount;
        }

        foreach (Mating mating in traced.Plant.Matings)
        {
            if (mating.PositionOfA == 0)
                _matings[NumberOf(mating.A)] = mating;
            if (mating.PositionOfB == 0)
                _matings[NumberOf(mating.B)] = mating;
        }
    }

    /// <summary>How many ports the plant has.</summary>
    public int Count => _ports.Length;

    /// <summary>The number of a port.</summary>
    public int NumberOf(PortRef port) => _firstPort[port.Part] + port.Port;

    /// <summary>The number of the port that a position is in.</summary>
    public int NumberAt(int position) => _portOf[position];

    /// <summary>The port of a number.</summary>
    public PortRef RefOf(int number) => new(_partOfPort[number], number - _firstPort[_partOfPort[number]]);

    /// <summary>The mating of the whole port of a number; null where none is, or where only single positions are mated.</summary>
    public Mating? MatingOf(int number) => _matings[number];

    /// <summary>The port that a position is in.</summary>
    public DrawnPort At(int position) => Numbered(_portOf[position]);

    /// <summary>A port of the plant.</summary>
    public DrawnPort Of(PortRef port) => Numbered(NumberOf(port));

    private DrawnPort Numbered(int number) =>
        _ports[number] ??= new DrawnPort(RefOf(number), _traced.Plant.Parts[_partOfPort[number]], this) { Mating = _matings[number] };

    /// <summary>A position's place in its port, 1-based.</summary>
    public int PlaceOf(int position) => position - _firstOfPort[_portOf[position]] + 1;

    /// <inheritdoc cref="TracedPlant.MatingAt"/>
    public Mating? MatingAt(int position)
    {
        if (_matings[_portOf[position]] is { } mating)
            return mating;
        int partner = _traced.Graph.Outside[position];
        return partner >= 0 ? _matings[_portOf[partner]] : null;
    }
}
