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
    /// <summary>Positions are looked up by blocks of 16: few parts begin in one, so that a part is found in two or three steps.</summary>
    private const int BlockBits = 4;

    private readonly int[] _inside;
    private readonly int[] _outside;
    private readonly int[] _partStart;
    private readonly int[] _partAtBlock;
    private readonly Shape[] _shapes;

    internal StrandGraph(int[] inside, int[] outside, int[] partStart, Shape[] shapes)
    {
        _inside = inside;
        _outside = outside;
        _partStart = partStart;
        _shapes = shapes;
        _partAtBlock = PartAtBlock(partStart, inside.Length);
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
        var builder = new StrandGraphBuilder(plant);
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

    /// <summary>The number of the first position of a part; that of the next part where it has none.</summary>
    public int FirstPositionOf(int part) => _partStart[part];

    /// <summary>The part of a position.</summary>
    public int PartOf(int position)
    {
        int low = _partAtBlock[position >> BlockBits];
        int high = _partAtBlock[(position >> BlockBits) + 1];

        // Parts without positions share their start with the next part; the last of them owns the position.
        while (low < high)
        {
            int middle = (low + high + 1) >> 1;
            if (_partStart[middle] <= position)
                low = middle;
            else
                high = middle - 1;
        }

        return low;
    }

    /// <summary>The port and the place in it of a position.</summary>
    public PositionPlace PlaceOf(int position)
    {
        int part = PartOf(position);
        Shape shape = _shapes[part];
        int local = position - _partStart[part];
        int port = shape.PortAt(local);
        return new PositionPlace(new PortRef(part, port), local - shape.Ports[port].FirstPosition + 1);
    }

    /// <summary>The lane at a position, or null where no interface is.</summary>
    public Lane? LaneAt(int position)
    {
        int part = PartOf(position);
        return _shapes[part].LaneAt(position - _partStart[part]);
    }

    /// <summary>True where an interface has a lane.</summary>
    public bool HasLane(int position) => LaneIndexAt(position) >= 0;

    /// <summary>The index of the lane at a position among those of its part, or -1.</summary>
    public int LaneIndexAt(int position)
    {
        int part = PartOf(position);
        return _shapes[part].LaneIndexAt(position - _partStart[part]);
    }

    /// <summary>For each block of positions the part of its first one, and the last part at the end.</summary>
    private static int[] PartAtBlock(int[] partStart, int positions)
    {
        var at = new int[(positions >> BlockBits) + 2];
        int part = 0;
        for (int block = 0; block < at.Length; block++)
        {
            while (part + 1 < partStart.Length && partStart[part + 1] <= block << BlockBits)
                part++;
            at[block] = part;
        }

        at[^1] = partStart.Length - 1;
        return at;
    }
}
