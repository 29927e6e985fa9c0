using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Overview;

/// <summary>
/// The ways of the chosen strands over an overview, one after the other in flat lists: the boxes that each comes to, and the
/// cable that leads there. A node is a part by its index; beyond the parts follow joints of cables and ends.
/// </summary>
internal sealed class Stops
{
    private readonly TracedPlant _traced;
    private readonly int[] _partOf;
    private readonly bool[] _isLine;
    private readonly bool[] _hasLegs;
    private readonly HashSet<PortRef> _refused = [];
    private readonly Dictionary<(BoxSort Sort, PortRef Port), int> _extraAt = [];

    private Stops(TracedPlant traced, int strands)
    {
        _traced = traced;
        IReadOnlyList<Part> parts = traced.Plant.Parts;
        _partOf = new int[traced.Graph.PositionCount];
        _isLine = new bool[parts.Count];
        _hasLegs = new bool[parts.Count];
        int position = 0;
        for (int i = 0; i < parts.Count; i++)
        {
            Shape shape = parts[i].Shape;
            _isLine[i] = Chart.IsLine(shape);
            _hasLegs[i] = _isLine[i] && shape.Ports.Count > 2;
            Array.Fill(_partOf, i, position, shape.PositionCount);
            position += shape.PositionCount;
        }

        Starts = new List<int>(strands + 1);
        Nodes = new List<int>(strands * 6);
        Cables = new List<int>(strands * 6);
        Legs = new List<int>(strands * 6);
    }

    /// <summary>Where each strand begins in the other lists, and at last their length.</summary>
    public List<int> Starts { get; }

    public List<int> Nodes { get; }

    /// <summary>The cable that leads to a node; -1 at the first node of a strand and where ports are mated without one.</summary>
    public List<int> Cables { get; }

    /// <summary>The leg of that cable, or 0 where it has none.</summary>
    public List<int> Legs { get; }

    /// <summary>The nodes beyond the parts: what each is, and the cable it is at.</summary>
    public List<(BoxSort Sort, int Cable)> Extras { get; } = [];

    /// <summary>Nodes that stand face to face at a mating whose fibres do not meet.</summary>
    public List<(int Left, int Right)> FaceToFace { get; } = [];

    public int PartCount => _isLine.Length;

    public int NodeCount => PartCount + Extras.Count;

    public static Stops Of(TracedPlant traced, IReadOnlyList<int> strands)
    {
        var stops = new Stops(traced, strands.Count);
        List<Mating> refused = [];
        foreach (Mating mating in traced.Plant.Matings)
        {
            if (traced.Plant.Fits(mating))
                continue;
            refused.Add(mating);
            stops._refused.Add(mating.A);
            stops._refused.Add(mating.B);
        }

        for (int i = 0; i < strands.Count; i++)
            stops.Follow(strands[i]);
        stops.Starts.Add(stops.Nodes.Count);
        foreach (Mating mating in refused)
        {
            if (stops.NodeAt(mating.A) is >= 0 and int left && stops.NodeAt(mating.B) is >= 0 and int right && left != right)
                stops.FaceToFace.Add((left, right));
        }

        return stops;
    }

    /// <summary>Tells a strand, by its place in the choice, from its other end.</summary>
    public void Turn(int strand)
    {
        int start = Starts[strand];
        int count = Starts[strand + 1] - start;
        Nodes.Reverse(start, count);
        Cables.Reverse(start + 1, count - 1);
        Legs.Reverse(start + 1, count - 1);
    }

    private void Follow(int strand)
    {
        ReadOnlySpan<int> inside = _traced.Graph.Inside;
        ReadOnlySpan<int> positions = _traced.Strands[strand];
        Starts.Add(Nodes.Count);
        int before = -1;
        int cable = -1;
        int leg = 0;
        for (int i = inside[positions[0]] < 0 ? -1 : 0; i < positions.Length; i += 2)
        {
            int into = i < 0 ? -1 : positions[i];
            int from = i + 1 < positions.Length ? positions[i + 1] : -1;
            int part = _partOf[into >= 0 ? into : from];
            int panel = before >= 0 && _traced.Plant.Parts[before].Shape.IsCable && _traced.Plant.Parts[part].Shape.IsCable
                ? _traced.MatingAt(into)?.Through?.Part ?? -1
                : -1;
            if (panel >= 0)
            {
                Add(panel, cable, leg);
                cable = -1;
            }

            if (!_isLine[part] || into < 0 || from < 0)
            {
                int node = _isLine[part] ? Extra(BoxSort.NoFibre, into >= 0 ? into : from) : part;
                Add(node, cable, leg);
                cable = -1;
            }
            else
            {
                if (before < 0)
                    Add(Extra(_traced.Strands.IsLoop(strand) ? BoxSort.Loop : BoxSort.OpenEnd, into), -1, 0);
                else if (cable >= 0)
                    Add(Extra(BoxSort.Joint, positions[i - 1]), cable, leg);
                cable = part;
                leg = _hasLegs[part] ? Math.Max(LegAt(into), LegAt(from)) : 0;
            }

            before = part;
        }

        if (cable >= 0)
            Add(Extra(_traced.Strands.IsLoop(strand) ? BoxSort.Loop : BoxSort.OpenEnd, positions[^1]), cable, leg);
    }

    private int LegAt(int position) => _traced.Plant.Port(_traced.Graph.PlaceOf(position).Port).Leg;

    private void Add(int node, int cable, int leg)
    {
        Nodes.Add(node);
        Cables.Add(cable);
        Legs.Add(leg);
    }

    private int Extra(BoxSort sort, int position)
    {
        PortRef port = _traced.Graph.PlaceOf(position).Port;
        if (sort == BoxSort.OpenEnd && _refused.Contains(port))
            sort = BoxSort.Refused;
        if (!_extraAt.TryGetValue((sort, port), out int node))
        {
            _extraAt[(sort, port)] = node = NodeCount;
            Extras.Add((sort, port.Part));
        }

        return node;
    }

    /// <summary>The node where strands end at a port of a refused mating, or -1.</summary>
    private int NodeAt(PortRef port)
    {
        if (_extraAt.TryGetValue((BoxSort.Refused, port), out int node))
            return node;
        return _isLine[port.Part] ? -1 : port.Part;
    }
}
