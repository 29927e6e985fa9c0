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
    private readonly Dictionary<long[], Sheetful?> _known = new(new SameLook());
    private readonly Dictionary<object, int> _numberOf = new(ReferenceEqualityComparer.Instance);

    // Of the strands at hand: how they look, and their parts in the order in which they are met.
    private readonly List<long> _look = [];
    private readonly List<int> _parts = [];
    private readonly int[] _place = new int[hops.Traced.Plant.Parts.Count];
    private readonly List<int> _ranked = [];

    /// <summary>The strands on one sheet of a paper, or null where they do not fit; taken over where alike ones were laid out before.</summary>
    /// <param name="input">What is drawn, narrowed to these strands.</param>
    /// <param name="pieces">The strands.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="layOut">Lays them out, where that has to be done.</param>
    public Sheetful? OnOneSheet(ViewInput input, List<Piece> pieces, SheetFormat paper, Func<Sheetful?> layOut)
    {
        if (!CanBeCompared(input, pieces) || !Look(pieces, paper))
            return layOut();
        if (_known.GetAlternateLookup<ReadOnlySpan<long>>().TryGetValue(CollectionsMarshal.AsSpan(_look), out Sheetful? like))
            return like is null ? null : like.WithCast(hops, input, pieces, new Cast([.. pieces.Select(p => p.Strand)], [.. _parts])) ?? layOut();
        long[] look = [.. _look];
        Sheetful? made = layOut();

        // What goes on on further sheets knows where it is cut.
        if (made is null or { Placement.Pages: 1 })
            _known[look] = made;
        return made;
    }

    /// <summary>Whole strands with nothing found on them, in a plant whose matings can all be made.</summary>
    private bool CanBeCompared(ViewInput input, List<Piece> pieces)
    {
        if (input.Findings.Count > 0 || hops.Refused.All.Count > 0)
            return false;
        for (int i = 0; i < pieces.Count; i++)
        {
            Piece piece = pieces[i];
            if (piece.First > 0 || hops.GoesOn(piece) || _traced.Strands.IsLoop(piece.Strand) || input.ExpectedEnds.ContainsKey(piece.Strand)
                || (i > 0 && _traced.NumberOf(pieces[i - 1].Strand) > _traced.NumberOf(piece.Strand)))
                return false;
        }

        return true;
    }

    /// <summary>Everything that a layout depends on, as numbers; false where single positions are mated, which is rare.</summary>
    private bool Look(List<Piece> pieces, SheetFormat paper)
    {
        foreach (int part in _parts)
            _place[part] = 0;
        _parts.Clear();
        _look.Clear();
        _look.Add(NumberOf(paper));
        int visit = hops.NextVisit();
        foreach (Piece piece in pieces)
        {
            _look.Add(BitConverter.DoubleToInt64Bits(hops.Labels.Of(piece.Strand).Width));
            foreach (Hop hop in hops.Of(piece.Strand))
            {
                if (_place[hop.Part] == 0)
                    AddPart(hop.Part);
                if (!AddStep(hop, visit))
                    return false;
            }

            _look.Add(-1);
        }

        AddOrder();
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

    /// <summary>A visit to a part: where the strand comes in and goes out, and what is mated at a port that it is the first to reach.</summary>
    private bool AddStep(Hop hop, int visit)
    {
        _look.Add(_place[hop.Part]);
        return AddEnd(hop.In, visit) && AddEnd(hop.Out, visit);
    }

    private bool AddEnd(int position, int visit)
    {
        if (position < 0)
        {
            _look.Add(-1);
            return true;
        }

        DrawnPort port = hops.Ports.At(position);
        _look.Add(((long)port.Ref.Port << 20) + hops.Ports.PlaceOf(position));
        if (port.Visit == visit)
            return true;
        port.Visit = visit;
        if (port.Mating is not { } mating)
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
