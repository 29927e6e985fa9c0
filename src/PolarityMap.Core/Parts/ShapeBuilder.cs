namespace PolarityMap.Core.Parts;

/// <summary>Collects ports, pairs and lanes into a <see cref="Shape"/>.</summary>
public sealed class ShapeBuilder
{
    private readonly List<PortShape> _ports = [];
    private readonly List<int> _inside = [];
    private readonly List<Lane> _lanes = [];

    /// <summary>Adds a port and returns its index.</summary>
    public int AddPort(PortShape port)
    {
        _ports.Add(port with { FirstPosition = _inside.Count });
        for (int i = 0; i < _ports[^1].PositionCount; i++)
            _inside.Add(-1);
        return _ports.Count - 1;
    }

    /// <summary>Joins a position of one port to a position of another (1-based positions).</summary>
    /// <exception cref="InvalidOperationException">One of them is joined already, or both are the same.</exception>
    public void Join(int portA, int positionA, int portB, int positionB)
    {
        int a = _ports[portA].FirstPosition + positionA - 1;
        int b = _ports[portB].FirstPosition + positionB - 1;
        if (a == b || _inside[a] >= 0 || _inside[b] >= 0)
            throw new InvalidOperationException("a position is joined to exactly one other");
        _inside[a] = b;
        _inside[b] = a;
    }

    /// <summary>Adds a lane to a position of a port (1-based).</summary>
    public void AddLane(int port, int position, LaneDirection direction, int lane) =>
        AddLane(new Lane(port, position, direction, lane));

    /// <inheritdoc cref="AddLane(int, int, LaneDirection, int)"/>
    public void AddLane(Lane lane) => _lanes.Add(lane);

    /// <param name="isCable">True for a cord, trunk or harness.</param>
    /// <param name="splices">Number of splices that each fibre passes inside the part.</param>
    public Shape Build(bool isCable = false, int splices = 0) => new([.. _ports], [.. _inside], [.. _lanes], isCable, splices);
}
