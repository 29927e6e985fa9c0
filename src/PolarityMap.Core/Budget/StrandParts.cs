using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Budget;

/// <summary>Two connectors that meet along a strand.</summary>
/// <param name="A">One of them.</param>
/// <param name="B">The other.</param>
internal readonly record struct Joint(PortShape A, PortShape B)
{
    /// <summary>False where bare fibres meet: no connectors are mated there.</summary>
    public bool IsMating => A.Face.Family != ConnectorFamily.Bare;

    /// <summary>True for array connectors.</summary>
    public bool IsArray => A.Face.Family == ConnectorFamily.Array;
}

/// <summary>
/// The passive parts of one strand in order, with the joints between them. The matings at the interfaces are not among these.
/// One object is filled again for strand after strand.
/// </summary>
internal sealed class StrandParts
{
    private readonly List<Part> _parts = [];
    private readonly List<Joint> _joints = [];
    private readonly List<(int In, int Out)> _ways = [];

    public int Count => _parts.Count;

    public Part this[int index] => _parts[index];

    /// <summary>The joint between part <paramref name="index"/> and the next.</summary>
    public Joint JointAfter(int index) => _joints[index];

    /// <summary>The positions at which the strand enters and leaves a part.</summary>
    public (int In, int Out) WayThrough(int index) => _ways[index];

    /// <summary>True for a cord, trunk or cable; a splice is a joint and no length.</summary>
    public bool IsCable(int index) => _parts[index].Shape is { IsCable: true, Splices: 0 };

    /// <summary>Takes the parts of a strand that has a lane at both ends.</summary>
    public void Fill(TracedPlant traced, int strand)
    {
        // The strand is lane, mating, in, out, mating, in, out, …, mating, lane.
        ReadOnlySpan<int> positions = traced.Strands[strand];
        Fill(traced, positions[1..^1]);
    }

    /// <summary>Takes the parts of a way: in, out, mating, in, out, ….</summary>
    public void Fill(TracedPlant traced, ReadOnlySpan<int> way)
    {
        _parts.Clear();
        _joints.Clear();
        _ways.Clear();
        for (int i = 0; i + 1 < way.Length; i += 2)
        {
            Part part = traced.Plant.Parts[traced.Graph.PartOf(way[i])];
            if (_parts.Count > 0)
                _joints.Add(new Joint(PortAt(traced, way[i - 1]), PortAt(traced, way[i])));
            _parts.Add(part);
            _ways.Add((way[i], way[i + 1]));
        }
    }

    private static PortShape PortAt(TracedPlant traced, int position) => traced.Plant.Port(traced.Graph.PlaceOf(position).Port);
}
