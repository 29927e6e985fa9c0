using System.Runtime.InteropServices;
using PolarityMap.Core.Checks;
using PolarityMap.Core.Checks.Rules;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations;

/// <summary>Which plugs sit where in a plant, what lies beside them, and what they go into.</summary>
internal sealed class Seats
{
    private readonly Plant _plant;
    private readonly PlugTable _plugs;
    private readonly bool[] _isCord;
    private readonly Seat?[] _byPlug;
    private readonly int[] _matingStart;
    private readonly int[] _matings;
    private readonly bool[] _hasFree;

    public Seats(Plant plant, PlugTable plugs)
    {
        _plant = plant;
        _plugs = plugs;
        _isCord = Cords(plant);
        _byPlug = new Seat?[plant.PortCount];
        (_matingStart, _matings) = ByPart(plant);
        _hasFree = Open(plant, plugs);
        var rows = new Dictionary<(int Part, Face Face, bool IsFront, bool IsCord), List<Seat>>();
        for (int i = 0; i < plant.Matings.Count; i++)
            Add(plant.Matings[i], i, rows);
        foreach (List<Seat> row in rows.Values)
            Line(row);
    }

    /// <summary>The matings at the ports of a part, each once.</summary>
    public ReadOnlySpan<int> MatingsAt(int part) => _matings.AsSpan(_matingStart[part].._matingStart[part + 1]);

    /// <summary>True for cords, which hands plug and unplug.</summary>
    public bool IsCord(int part) => _isCord[part];

    /// <summary>Where a plug sits, or null when the port is no plug or sits in nothing.</summary>
    public Seat? Of(PortRef plug) => _byPlug[_plant.NumberOf(plug)];

    /// <summary>The plugs in a mating that sit in a port or adapter: none, one, or the two of an adapter.</summary>
    public (Seat? First, Seat? Second) In(int mating)
    {
        Mating at = _plant.Matings[mating];
        return (Of(at.A), Of(at.B));
    }

    /// <summary>The next port of the same part, to the left (-1) or right (1), that a plug could have been put into by mistake; or null.</summary>
    public PortRef? NextFree(Seat seat, int step)
    {
        if (seat.Position > 0 || !_hasFree[seat.Socket.Part])
            return null;
        PortShape own = _plant.Port(seat.Socket);
        FixedList<PortShape> ports = _plant.Parts[seat.Socket.Part].Shape.Ports;
        int end = seat.Socket.Port + (step * (SeatRow.Reach + 1));
        for (int p = seat.Socket.Port + step; p != end && p >= 0 && p < ports.Count; p += step)
        {
            var target = new PortRef(seat.Socket.Part, p);
            if (ports[p].Face == own.Face && ports[p].Side == own.Side && IsFree(target, seat.IsFront) && GoesIn(seat, target))
                return target;
        }

        return null;
    }

    /// <summary>True when nothing sits on one side of a port.</summary>
    public bool IsFree(PortRef port, bool front) =>
        _plugs.At(port) < 0 && !_plugs.HoldsSimplex(port) && (_plugs.WaitingIn(port) is not { } waiting || IsCord(waiting.Part) != front);

    /// <summary>True when nothing is mated to the end of a cable and it waits in no adapter.</summary>
    public bool IsLoose(PortRef plug) => _plugs.At(plug) < 0 && _plugs.AdapterOf(plug) is null;

    /// <summary>
    /// True when a plug goes into a port or adapter by its connector, pins and key code, or as well as into the one that it belongs
    /// in: what a hand cannot do is no mistake to look for. Pinned does not seat in pinned (three public sources); plain and keyed go
    /// together only where the set lets them (common practice).
    /// </summary>
    public bool GoesIn(Seat seat, PortRef target)
    {
        PortShape plug = _plant.Port(seat.Plug), own = _plant.Port(seat.Socket), other = _plant.Port(target);
        if (other.Connector != own.Connector && !MatingText.SameConnector(plug, other))
            return false;
        if (plug.Pinned == true && other.Pinned == true && own.Pinned != true)
            return false;
        if (!own.IsKeyed && !other.IsKeyed)
            return true;
        string? key = _plant.KeyOf(target);
        return key == _plant.KeyOf(seat.Socket) || CordFits.GoesIn(_plant.KeyOf(seat.Plug), PlainFits(seat.Plug), key, key is null || PlainFits(target));
    }

    /// <summary>True when a cord of a network goes into the port or adapter that an end of it sits in.</summary>
    public bool GoesIn(PortRef plug, int network)
    {
        if (Of(plug) is not { } seat || !(_plant.Port(plug).IsKeyed || _plant.Port(seat.Socket).IsKeyed))
            return true;
        Network other = _plant.Networks[network];
        string? own = !_plant.Port(plug).IsKeyed ? null : _plant.Parts[plug.Part].Key ?? other.Key;
        string? key = _plant.KeyOf(seat.Socket);
        return own == _plant.KeyOf(plug) || CordFits.GoesIn(own, other.PlainFits, key, key is null || PlainFits(seat.Socket));
    }

    private bool PlainFits(PortRef port) => _plant.NetworkOf(port) is >= 0 and int n && _plant.Networks[n].PlainFits;

    private void Add(Mating mating, int index, Dictionary<(int, Face, bool, bool), List<Seat>> rows)
    {
        if (mating.Through is { } adapter)
        {
            bool front = IsCord(mating.A.Part) || !IsCord(mating.B.Part);
            Take(new Seat(mating.A, adapter, index) { IsFront = front, IsCord = IsCord(mating.A.Part) });
            Take(new Seat(mating.B, adapter, index) { IsFront = !front, IsCord = IsCord(mating.B.Part) });
            return;
        }

        bool cableA = _plant.Parts[mating.A.Part].Shape.IsCable, cableB = _plant.Parts[mating.B.Part].Shape.IsCable;
        if (cableA == cableB || _plant.Port(mating.A).Face.Family == ConnectorFamily.Bare)
            return;
        (PortRef plug, PortRef socket) = cableA ? (mating.A, mating.B) : (mating.B, mating.A);
        Take(new Seat(plug, socket, index)
        {
            Position = cableA ? mating.PositionOfB : mating.PositionOfA,
            IsFront = _plant.Port(socket).Side == Side.Near,
            IsCord = IsCord(plug.Part),
        });

        void Take(Seat seat)
        {
            _byPlug[_plant.NumberOf(seat.Plug)] = seat;
            (CollectionsMarshal.GetValueRefOrAddDefault(rows, (seat.Socket.Part, _plant.Port(seat.Plug).Face, seat.IsFront, seat.IsCord), out _) ??= []).Add(seat);
        }
    }

    private static void Line(List<Seat> seats)
    {
        seats.Sort(static (a, b) => a.Socket.Port != b.Socket.Port ? a.Socket.Port.CompareTo(b.Socket.Port) : a.Position.CompareTo(b.Position));
        var row = new SeatRow([.. seats]);
        for (int i = 0; i < row.Seats.Length; i++)
            (row.Seats[i].Row, row.Seats[i].Index) = (row, i);
    }

    private static bool[] Cords(Plant plant)
    {
        var known = new Dictionary<string, bool>();
        var cords = new bool[plant.Parts.Count];
        for (int i = 0; i < cords.Length; i++)
        {
            string kind = plant.Parts[i].Kind;
            if (!known.TryGetValue(kind, out bool isCord))
                known[kind] = isCord = PartKinds.Find(kind) is { IsCord: true };
            cords[i] = isCord;
        }

        return cords;
    }

    /// <summary>For each part whether a port of it is in no mating.</summary>
    private static bool[] Open(Plant plant, PlugTable plugs)
    {
        var open = new bool[plant.Parts.Count];
        for (int part = 0; part < open.Length; part++)
        {
            for (int port = 0; port < plant.Parts[part].Shape.Ports.Count && !open[part]; port++)
                open[part] = plugs.At(new PortRef(part, port)) < 0;
        }

        return open;
    }

    /// <summary>For each part where its matings begin, and the matings part by part.</summary>
    private static (int[] Start, int[] Matings) ByPart(Plant plant)
    {
        var start = new int[plant.Parts.Count + 1];
        for (int i = 0; i < plant.Matings.Count; i++)
            Each(plant.Matings[i], part => start[part + 1]++);
        for (int part = 0; part < plant.Parts.Count; part++)
            start[part + 1] += start[part];
        var matings = new int[start[^1]];
        int[] next = [.. start];
        for (int i = 0; i < plant.Matings.Count; i++)
            Each(plant.Matings[i], part => matings[next[part]++] = i);
        return (start, matings);

        static void Each(Mating mating, Action<int> take)
        {
            take(mating.A.Part);
            if (mating.B.Part != mating.A.Part)
                take(mating.B.Part);
            if (mating.Through is { } adapter && adapter.Part != mating.A.Part && adapter.Part != mating.B.Part)
                take(adapter.Part);
        }
    }
}
