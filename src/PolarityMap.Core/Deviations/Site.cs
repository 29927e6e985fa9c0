using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Deviations;

/// <summary>A plant with differences laid over it: what changes in parts and matings, worked out without building it anew.</summary>
internal sealed class Site
{
    private readonly Dictionary<int, Part> _parts = [];
    private readonly Dictionary<int, Mating?> _matings = [];
    private readonly HashSet<PortRef> _settled = [];

    private readonly Plant _plant;
    private readonly PlugTable _plugs;
    private int _made;

    private Site(Plant plant, PlugTable plugs)
    {
        _plant = plant;
        _plugs = plugs;
    }

    /// <summary>The parts that differ, by index.</summary>
    public IReadOnlyDictionary<int, Part> Parts => _parts;

    /// <summary>The matings that differ, by index; null where one is pulled. Those that are new follow those of the plant.</summary>
    public IReadOnlyDictionary<int, Mating?> Matings => _matings;

    /// <summary>Lays differences over a plant, one after the other; null when one of them cannot be.</summary>
    public static Site? Of(Plant plant, PlugTable plugs, IEnumerable<Difference> differences)
    {
        var site = new Site(plant, plugs);
        foreach (Difference difference in differences)
        {
            bool done = difference switch
            {
                PartDiffers part => site.Change(part),
                PlugsExchanged pair => site.Exchange(pair.A, pair.B),
                PlugMoved move => site.Move(move.From, move.To),
                PlugPulled pull => site.Pull(pull.Port),
                PlugPut put => site.Put(put),
                _ => false,
            };
            if (!done)
                return null;
        }

        return site;
    }

    private PortShape Port(PortRef port) => (_parts.TryGetValue(port.Part, out Part? part) ? part : _plant.Parts[port.Part]).Shape.Ports[port.Port];

    private Mating? MatingNow(int index) => _matings.TryGetValue(index, out Mating? mating) ? mating : _plant.Matings[index];

    /// <summary>A part whose adapter is of the other keying changes the matings that its ports hold.</summary>
    private bool Change(PartDiffers change)
    {
        Shape before = (_parts.TryGetValue(change.Part, out Part? part) ? part : _plant.Parts[change.Part]).Shape;
        if (!SamePorts(before, change.Changed.Shape))
            return false;
        _parts[change.Part] = change.Changed;
        for (int port = 0; port < before.Ports.Count; port++)
        {
            var at = new PortRef(change.Part, port);
            if (Port(at).Keys is not { } keys || before.Ports[port].Keys == keys || IndexOf(at) is not (>= 0 and int index) || MatingNow(index) is not { } mating)
                continue;
            if (!Port(mating.A).KeysFixed && !Port(mating.B).KeysFixed)
                _matings[index] = mating with { Keys = keys };
        }

        return true;
    }

    private bool Exchange(PortRef a, PortRef b)
    {
        int atA = IndexOf(a), atB = IndexOf(b);
        if (atA < 0 || atB < 0 || atA == atB || Port(a).Face != Port(b).Face || MatingNow(atA) is not { } first || MatingNow(atB) is not { } second)
            return false;
        if (Moved(first, a, b, Port(b).Keys) is not { } movedA || Moved(second, b, a, Port(a).Keys) is not { } movedB)
            return false;
        _matings[atA] = movedA;
        _matings[atB] = movedB;
        return true;
    }

    /// <summary>An adapter is no place to move to: it has no fibre, and what meets there is moved to the plug behind it.</summary>
    private bool Move(PortRef from, PortRef to)
    {
        int at = IndexOf(from);
        if (at < 0 || !IsFree(to) || Port(from).Face != Port(to).Face || MatingNow(at) is not { } mating || Moved(mating, from, to, Port(to).Keys) is not { } moved)
            return false;
        _matings[at] = Met(moved, to);
        return true;
    }

    private bool Pull(PortRef port)
    {
        if (IndexOf(port) is not (>= 0 and int at))
            return false;
        _matings[at] = null;
        return true;
    }

    private bool IsFree(PortRef port) => IndexOf(port) < 0 && !Port(port).IsAdapter && !_plugs.HoldsSimplex(port) && !HoldsSimplexNow(port);

    /// <summary>True when a difference has put a simplex plug into a position of the port.</summary>
    private bool HoldsSimplexNow(PortRef port)
    {
        foreach (Mating? mating in _matings.Values)
        {
            if (mating is not null && ((mating.A == port && mating.PositionOfA > 0) || (mating.B == port && mating.PositionOfB > 0)))
                return true;
        }

        return false;
    }

    /// <summary>
    /// A plug that is mated already takes its mating along, so that strands are told in the same order. What waited in an adapter
    /// or found a port taken does so no more.
    /// </summary>
    private bool Put(PlugPut put)
    {
        // A plug in which simplex plugs sit is no plug to put anywhere.
        if (_plugs.HoldsSimplex(put.Plug) || HoldsSimplexNow(put.Plug))
            return false;
        bool whole = put.Position == 0;
        OpenPlug? waiting = null;
        if (Port(put.Port).IsAdapter)
        {
            waiting = _plant.OpenPlugs.FirstOrDefault(o => o.Adapter == put.Port && o.Plug != put.Plug && IndexOf(o.Plug) < 0 && !_settled.Contains(o.Plug));
            if (!whole || waiting is null || Port(waiting.Plug).Face != Port(put.Plug).Face)
                return false;
        }
        else if (whole ? Port(put.Port).Face != Port(put.Plug).Face : Port(put.Plug).Face != Face.Simplex || put.Position > Port(put.Port).Face.Count)
        {
            return false;
        }

        PortRef other = waiting?.Plug ?? put.Port;
        int at = IndexOf(put.Plug);
        if (IsTaken(put, at) || KeysBetween(put.Plug, other, put.Port) is not { } keys)
            return false;
        Mating? before = at >= 0 ? MatingNow(at) : null;
        SourcePlace place = before?.Place ?? PlaceOf(put.Plug);
        PortRef? through = waiting is null ? null : put.Port;
        int index = before is not null ? at : _plant.Matings.Count + _made++;
        _matings[index] = before?.A == put.Plug
            ? new Mating(put.Plug, other, keys, place) { PositionOfB = put.Position, Through = through }
            : new Mating(other, put.Plug, keys, place) { PositionOfA = put.Position, Through = through };
        _settled.Add(put.Plug);
        if (waiting is not null)
            _settled.Add(waiting.Plug);
        return true;
    }

    /// <summary>True when something sits in the port, or in the position of it that is meant, that is not the plug itself.</summary>
    private bool IsTaken(PlugPut put, int own)
    {
        if (IndexOf(put.Port) is >= 0 and int whole && whole != own)
            return true;
        if (Port(put.Port).IsAdapter || Port(put.Port).Face.Family != ConnectorFamily.Duplex)
            return false;
        for (int i = 0; i < _plant.Matings.Count + _made; i++)
        {
            if (i == own || MatingNow(i) is not { } mating)
                continue;
            int position = mating.A == put.Port ? mating.PositionOfA : mating.B == put.Port ? mating.PositionOfB : 0;
            if (position > 0 && (put.Position == 0 || position == put.Position))
                return true;
        }

        return false;
    }

    /// <summary>How the keys come to lie; null for two array plugs without an adapter that says so.</summary>
    private Keying? KeysBetween(PortRef plug, PortRef other, PortRef into) =>
        Port(plug).Face.Family != ConnectorFamily.Array ? Keying.Aligned : Port(into).Keys ?? Port(other).Keys;

    /// <summary>The stop that brought a plug to where it found no room, or where it waits; else its cable's place.</summary>
    private SourcePlace PlaceOf(PortRef plug) =>
        _plant.Clashes.FirstOrDefault(c => c.Refused == plug)?.Place
        ?? _plant.OpenPlugs.FirstOrDefault(o => o.Plug == plug)?.Place
        ?? _plant.Parts[plug.Part].Place;

    /// <summary>The mating that a port is in now, given what has moved already.</summary>
    private int IndexOf(PortRef port)
    {
        // Few matings have changed, so asking each of them is quick.
        foreach ((int index, Mating? mating) in _matings)
        {
            if (mating is not null && ((mating.A == port && mating.PositionOfA == 0) || (mating.B == port && mating.PositionOfB == 0) || mating.Through == port))
                return index;
        }

        return _plugs.At(port) is >= 0 and int at && !_matings.ContainsKey(at) ? at : -1;
    }

    /// <summary>The mating with one of its ports replaced; the keys follow the new port where it holds an adapter.</summary>
    /// <param name="mating">The mating.</param>
    /// <param name="from">The port that is replaced.</param>
    /// <param name="to">The new port.</param>
    /// <param name="keys">What the new port has for keys.</param>
    private static Mating? Moved(Mating mating, PortRef from, PortRef to, Keying? keys) =>
        mating.A == from ? mating with { A = to, Keys = keys ?? mating.Keys } : mating.B == from ? mating with { B = to, Keys = keys ?? mating.Keys } : null;

    /// <summary>The two matings after an exchange in a plant without other differences; null when there is none to make.</summary>
    public static (Mating A, Mating B)? Exchanged(Plant plant, PlugTable plugs, PortRef a, PortRef b)
    {
        PortShape portA = plant.Port(a), portB = plant.Port(b);
        return plugs.Of(a) is { } first && plugs.Of(b) is { } second && plugs.At(a) != plugs.At(b) && portA.Face == portB.Face
            && Moved(first, a, b, portB.Keys) is { } movedA && Moved(second, b, a, portA.Keys) is { } movedB
            ? (movedA, movedB)
            : null;
    }

    /// <summary>The mating made where a plug waited in an adapter, if one did.</summary>
    private Mating Met(Mating mating, PortRef plug)
    {
        if (_plugs.AdapterOf(plug) is not { } adapter)
            return mating;
        return mating with { Through = adapter, Keys = Port(adapter).Keys ?? mating.Keys };
    }

    /// <summary>True when what is mated and meant with one shape holds for the other.</summary>
    private static bool SamePorts(Shape a, Shape b)
    {
        if (a.Ports.Count != b.Ports.Count || a.PositionCount != b.PositionCount)
            return false;
        for (int i = 0; i < a.Ports.Count; i++)
        {
            if (a.Ports[i].Name != b.Ports[i].Name || a.Ports[i].Face != b.Ports[i].Face)
                return false;
        }

        return true;
    }

    /// <summary>The plant with the differences in it, its parts numbered as before.</summary>
    public Plant Build()
    {
        Part[] parts = [.. _plant.Parts];
        foreach ((int index, Part part) in _parts)
            parts[index] = part;
        var matings = new List<Mating>(_plant.Matings.Count + _made);
        for (int i = 0; i < _plant.Matings.Count + _made; i++)
        {
            if (MatingNow(i) is { } mating)
                matings.Add(mating);
        }

        return new Plant(_plant.Title, _plant.Practice, [.. _plant.Networks], parts, [.. matings], OpenPlugs(), Clashes(), [.. _plant.Links]);
    }

    /// <summary>A plug that waited in an adapter and is met there now waits no longer.</summary>
    private OpenPlug[] OpenPlugs() => [.. _plant.OpenPlugs.Where(o => IndexOf(o.Plug) < 0 && !_settled.Contains(o.Plug))];

    private PortClash[] Clashes() => [.. _plant.Clashes.Where(c => c.Refused is not { } refused || !_settled.Contains(refused))];
}
