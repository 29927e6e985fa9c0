using System.Runtime.InteropServices;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Drawing.Fonts;
using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>
/// Remembers what strands came to on a sheet of a paper. A large plant has the same channels again and again; strands that run
/// through parts of the same shapes in the same positions, with names of the same widths or in rooms of the same width, take over the layout that the first of
/// them got, and where the first did not fit they do not either.
/// </summary>
internal sealed class LikeLayouts(StrandHops hops)
{
    private readonly TracedPlant _traced = hops.Traced;
    private readonly PortTable _ports = hops.Ports;
    private readonly Dictionary<long[], Sheetful?> _known = new(new SameLook());
    private readonly Dictionary<object, int> _numberOf = new(ReferenceEqualityComparer.Instance);

    // Of the strands at hand: how they look, and their parts in the order in which they are met.
    private readonly List<Piece> _pieces = [];
    private readonly List<long> _look = [];
    private readonly List<int> _parts = [];
    private readonly int[] _place = new int[hops.Traced.Plant.Parts.Count];
    private readonly List<int> _ranked = [];
    private SheetFormat? _paper;

    /// <summary>How much of the look is of strands; the order of their parts comes after it.</summary>
    private int _endOfStrands;

    /// <summary>For each port the number of the last look that came by it.</summary>
    private readonly int[] _lookAtPort = new int[hops.Ports.Count];
    private int _lookNumber;

    /// <summary>The strands on one sheet of a paper, or null where they do not fit; taken over where alike ones were laid out before.</summary>
    /// <param name="input">What is drawn.</param>
    /// <param name="pieces">The strands.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="narrow">What is drawn, narrowed to these strands.</param>
    /// <param name="layOut">Lays them out, where that has to be done.</param>
    public Sheetful? OnOneSheet(ViewInput input, List<Piece> pieces, SheetFormat paper, Func<ViewInput> narrow, Func<Sheetful?> layOut)
    {
        if (hops.Refused.All.Count > 0 || (input.Findings.Count > 0 && narrow().Findings.Count > 0) || !Look(input, pieces, paper))
            return layOut();
        if (_known.GetAlternateLookup<ReadOnlySpan<long>>().TryGetValue(CollectionsMarshal.AsSpan(_look), out Sheetful? like))
            return like is null ? null : like.WithCast(hops, narrow(), pieces, new Cast([.. pieces.Select(p => p.Strand)], [.. _parts])) ?? layOut();
        long[] look = [.. _look];
        Sheetful? made = layOut();

        // What goes on on further sheets knows where it is cut.
        if (made is null or { Placement.Pages: 1 })
            _known[look] = made;
        return made;
    }

    /// <summary>Everything that a layout depends on, as numbers; false where strands cannot be compared.</summary>
    private bool Look(ViewInput input, List<Piece> pieces, SheetFormat paper)
    {
        // Mostly these are the strands looked at last and some more.
        ReadOnlySpan<Piece> all = CollectionsMarshal.AsSpan(pieces);
        if (!ReferenceEquals(paper, _paper) || _pieces.Count > pieces.Count || !all[.._pieces.Count].SequenceEqual(CollectionsMarshal.AsSpan(_pieces)))
            Begin(paper);
        _look.RemoveRange(_endOfStrands, _look.Count - _endOfStrands);
        foreach (Piece piece in all[_pieces.Count..])
        {
            if (!CanBeCompared(input, piece) || !AddStrand(piece))
            {
                _paper = null;
                return false;
            }

            _pieces.Add(piece);
        }

        _endOfStrands = _look.Count;
        AddOrder();
        return true;
    }

    private void Begin(SheetFormat paper)
    {
        foreach (int part in _parts)
            _place[part] = 0;
        _parts.Clear();
        _pieces.Clear();
        _look.Clear();
        _look.Add(NumberOf(paper));
        _endOfStrands = _look.Count;
        _paper = paper;
        _lookNumber++;
    }

    /// <summary>Whole strands in the order of their numbers, with nothing found on them, in a plant whose matings can all be made.</summary>
    private bool CanBeCompared(ViewInput input, Piece piece) =>
        piece.First == 0 && !hops.GoesOn(piece) && !_traced.Strands.IsLoop(piece.Strand) && !input.ExpectedEnds.ContainsKey(piece.Strand)
        && (_pieces.Count == 0 || _traced.NumberOf(_pieces[^1].Strand) <= _traced.NumberOf(piece.Strand));

    /// <summary>False where single positions are mated, which is rare.</summary>
    private bool AddStrand(Piece piece)
    {
        _look.Add(BitConverter.DoubleToInt64Bits(hops.Labels.Of(piece.Strand).Width));
        foreach (Hop hop in hops.Of(piece.Strand))
        {
            if (_place[hop.Part] == 0)
                AddPart(hop.Part);

            // A visit to a part: where the strand comes in and goes out, and what is mated at a port that it is the first to reach.
            _look.Add(_place[hop.Part]);
            if (!AddEnd(hop.In) || !AddEnd(hop.Out))
                return false;
        }

        _look.Add(-1);
        return true;
    }

    private void AddPart(int index)
    {
        _parts.Add(index);
        _place[index] = _parts.Count;
        Part part = _traced.Plant.Parts[index];
        _look.Add(NumberOf(part.Shape));
        _look.Add(NumberOf(hops.Captions.Of(index)));
        _look.Add(part.IsInline ? -2 : FontMetrics.Advances(part.Name) + (hops.EvenRoom?.SpareOfName(index) ?? 0));
    }

    private bool AddEnd(int position)
    {
        if (position < 0)
        {
            _look.Add(-1);
            return true;
        }

        int port = _ports.NumberAt(position);
        _look.Add(((long)_ports.RefOf(port).Port << 20) + _ports.PlaceOf(position));
        if (_lookAtPort[port] == _lookNumber)
            return true;
        _lookAtPort[port] = _lookNumber;
        if (_ports.MatingOf(port) is not { } mating)
        {
            _look.Add(0);
            return _traced.Graph.Outside[position] < 0;
        }

        _look.Add(1 + (int)mating.Keys);
        _look.Add(mating.Through is { } adapter ? FontMetrics.Advances(_traced.Plant.Address(adapter)) + (hops.EvenRoom?.SpareOfName(adapter.Part) ?? 0) : -1);
        return true;
    }

    /// <summary>In which order the parts stand in the plant and by name, each told by who comes next.</summary>
    private void AddOrder()
    {
        _ranked.Clear();
        _ranked.AddRange(_parts);
        _ranked.Sort();
        foreach (int part in _ranked)
            _look.Add(_place[part]);
        _ranked.RemoveAll(p => _traced.Plant.Parts[p].IsInline);
        if (IsInOrderOfNames())
            return;
        _ranked.Sort((a, b) => DocumentOrder.Compare(_traced.Plant, a, b));
        _look.Add(-3);
        foreach (int part in _ranked)
            _look.Add(_place[part]);
    }

    private bool IsInOrderOfNames()
    {
        for (int i = 1; i < _ranked.Count; i++)
        {
            if (DocumentOrder.Compare(_traced.Plant, _ranked[i - 1], _ranked[i]) > 0)
                return false;
        }

        return true;
    }

    private int NumberOf(object thing)
    {
        ref int number = ref CollectionsMarshal.GetValueRefOrAddDefault(_numberOf, thing, out bool known);
        if (!known)
            number = _numberOf.Count;
        return number;
    }

    private sealed class SameLook : IEqualityComparer<long[]>, IAlternateEqualityComparer<ReadOnlySpan<long>, long[]>
    {
        public bool Equals(long[]? x, long[]? y) => x.AsSpan().SequenceEqual(y);

        public bool Equals(ReadOnlySpan<long> alternate, long[] other) => alternate.SequenceEqual(other);

        public long[] Create(ReadOnlySpan<long> alternate) => [.. alternate];

        public int GetHashCode(long[] look) => GetHashCode(look.AsSpan());

        public int GetHashCode(ReadOnlySpan<long> look)
        {
            ulong hash = 14695981039346656037;
            foreach (long number in look)
                hash = (hash ^ (ulong)number) * 1099511628211;
            return (int)(hash ^ (hash >> 32));
        }
    }
}
