using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Strands;

/// <summary>Where a position is: a port and the position in it, 1-based.</summary>
public readonly record struct PositionPlace(PortRef Port, int Position);

/// <summary>
/// All positions of a plant, numbered densely part by part and port by port, with at most one partner inside (through the
/// part) and one outside (through the mating). Two flat arrays; -1 means no partner. Made by <see cref="StrandGraphBuilder"/>.
/// </summary>
public sealed class StrandGraph
{
    private readonly int[] _inside;
    private readonly int[] _outside;
    private readonly int[] _partStart;
    private readonly Shape[] _shapes;

    internal StrandGraph(int[] inside, int[] outside, int[] partStart, Shape[] shapes)
    {
        _inside = inside;
        _outside = outside;
        _partStart = partStart;
        _shapes = shapes;
    }

    /// <summary>Number of positions.</summary>
    public int PositionCount => _inside.Length;

    /// <summary>For each position its partner through the part, or -1.</summary>
    public ReadOnlySpan<int> Inside => _inside;

    /// <summary>For each position its partner through the mating, or -1.</summary>
    public ReadOnlySpan<int> Outside => _outside;

    /// <summary>Builds the graph of a plant.</summary>
    public static StrandGraph Of(Plant plant)
    {
        var builder = new StrandGraphBuilder(plant.Parts.Count);
        foreach (Part part in plant.Parts)
            builder.AddPart(part.Shape);
        foreach (Mating mating in plant.Matings)
        {
            if (plant.Fits(mating))
                builder.Mate(mating);
        }

        return builder.Build();
    }

    /// <summary>The number of a position (1-based in its port).</summary>
    public int PositionOf(PortRef port, int position) =>
        _partStart[port.Part] + _shapes[port.Part].Ports[port.Port].FirstPosition + position - 1;

    /// <summary>The part of a position.</summary>
    public int PartOf(int position)
    {
        int i = Array.BinarySearch(_partStart, position);
        if (i < 0)
            return ~i - 1;
        // Parts without positions share their start with the next part; the last of them owns the position.
        while (i + 1 < _partStart.Length && _partStart[i + 1] == position)
            i++;
        return i;
    }

    /// <summary>The port and the place in it of a position.</summary>
    public PositionPlace PlaceOf(int position)
    {
        int part = PartOf(position);
        int local = position - _partStart[part];
        IReadOnlyList<PortShape> ports = _shapes[part].Ports;
        int low = 0, high = ports.Count - 1;
        while (low < high)
        {
            int middle = (low + high + 1) / 2;
            if (ports[middle].FirstPosition <= local)
                low = middle;
            else
                high = middle - 1;
        }

        return new PositionPlace(new PortRef(part, low), local - ports[low].FirstPosition + 1);
    }

    /// <summary>The lane at a position, or null where no interface is.</summary>
    public Lane? LaneAt(int position)
    {
        int part = PartOf(position);
        return _shapes[part].LaneAt(position - _partStart[part]);
    }
}
