using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Strands;

/// <summary>Numbers the positions of parts in the order in which they are added and joins them by matings.</summary>
public sealed class StrandGraphBuilder
{
    private Shape[] _shapes;
    private int[] _partStart;
    private int _parts;
    private int[]? _outside;
    private int _count;

    public StrandGraphBuilder(int expectedParts = 0)
    {
        _shapes = new Shape[expectedParts];
        _partStart = new int[expectedParts];
    }

    /// <summary>Begins with the parts of a plant, whose array of shapes it shares as long as no more are added.</summary>
    internal StrandGraphBuilder(Plant plant)
    {
        _shapes = plant.Shapes;
        _parts = _shapes.Length;
        _partStart = new int[_parts];
        for (int i = 0; i < _parts; i++)
        {
            _partStart[i] = _count;
            _count += _shapes[i].PositionCount;
        }
    }

    /// <summary>Adds a part and returns its index. All parts come before the first mating.</summary>
    /// <exception cref="InvalidOperationException">A mating has been added already.</exception>
    public int AddPart(Shape shape)
    {
        if (_outside is not null)
            throw new InvalidOperationException("all parts come before the first mating");
        if (_parts == _shapes.Length)
        {
            Array.Resize(ref _shapes, Math.Max(16, 2 * _parts));
            Array.Resize(ref _partStart, _shapes.Length);
        }

        _shapes[_parts] = shape;
        _partStart[_parts] = _count;
        _count += shape.PositionCount;
        return _parts++;
    }

    /// <summary>Joins the positions of two ports as their faces and keys have it; different faces join nothing.</summary>
    /// <exception cref="ArgumentException">A position is mated already, or to itself.</exception>
    public void Mate(Mating mating)
    {
        if (mating.PositionOfA > 0 || mating.PositionOfB > 0)
        {
            Join(Position(mating.A, Math.Max(1, mating.PositionOfA)), Position(mating.B, Math.Max(1, mating.PositionOfB)));
            return;
        }

        Mate(mating.A, mating.B, mating.Keys);
    }

    /// <inheritdoc cref="Mate(Mating)"/>
    public void Mate(PortRef a, PortRef b, Keying keys)
    {
        Face face = _shapes[a.Part].Ports[a.Port].Face;
        if (face != _shapes[b.Part].Ports[b.Port].Face)
            return;
        int firstA = Position(a, 1);
        int firstB = Position(b, 1);
        for (int i = 1; i <= face.Count; i++)
            Join(firstA + i - 1, firstB + face.Facing(keys, i) - 1);
    }

    public StrandGraph Build()
    {
        Outside();
        var inside = new int[_count];
        for (int part = 0; part < _parts; part++)
        {
            ReadOnlySpan<int> pairs = _shapes[part].Inside.Span;
            int start = _partStart[part];
            for (int i = 0; i < pairs.Length; i++)
                inside[start + i] = pairs[i] < 0 ? -1 : start + pairs[i];
        }

        if (_parts < _shapes.Length)
        {
            Array.Resize(ref _shapes, _parts);
            Array.Resize(ref _partStart, _parts);
        }

        return new StrandGraph(inside, Outside(), _partStart, _shapes);
    }

    private int Position(PortRef port, int position) =>
        _partStart[port.Part] + _shapes[port.Part].Ports[port.Port].FirstPosition + position - 1;

    private int[] Outside()
    {
        if (_outside is null)
        {
            _outside = new int[_count];
            Array.Fill(_outside, -1);
        }

        return _outside;
    }

    private void Join(int a, int b)
    {
        int[] outside = Outside();
        if (a == b || outside[a] >= 0 || outside[b] >= 0)
            throw new ArgumentException("a position is mated to exactly one other");
        outside[a] = b;
        outside[b] = a;
    }
}
