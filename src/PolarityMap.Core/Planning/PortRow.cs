namespace PolarityMap.Core.Planning;

/// <summary>Ports of a family in the order in which links take them.</summary>
internal sealed class PortRow(PlannedFamily family)
{
    private readonly List<PlannedPort> _ports = [];

    public PlannedFamily Family { get; } = family;

    public int Count => _ports.Count;

    public void Add(int index, int port) => _ports.Add(new PlannedPort(index, port));

    /// <summary>A stop of some of the ports.</summary>
    /// <param name="from">The first, counted from 0.</param>
    /// <param name="count">How many.</param>
    /// <param name="portName">The name of ports without a number.</param>
    public PlannedStop Stop(int from, int count, string portName = "") => new(Family, _ports.GetRange(from, count)) { PortName = portName };

    public PlannedStop Stop(string portName = "") => Stop(0, Count, portName);

    /// <summary>A cord between the stops before and after.</summary>
    public static PlannedStop Cord(PlannedType type, Optics.Length length) => new(null, []) { Cord = type, Length = length };
}
