using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Documents.Binding;

/// <summary>
/// Makes matings and keeps the books: which port is taken, which plug waits in an adapter. Each refusal names both places.
/// </summary>
internal sealed class Joints(NodeReader reader, PlantBuilder plant)
{
    private readonly TakenPorts _taken = new(plant);
    private readonly Dictionary<PortRef, List<WaitingPlug>> _adapters = [];
    private readonly List<PortRef> _adapterOrder = [];

    /// <summary>For each plug that waits alone its adapter; made when one is taken out for the first time.</summary>
    private Dictionary<PortRef, PortRef>? _waits;

    private sealed record WaitingPlug(PortRef Plug, KeyingStop? Keys, SourcePlace Place);

    /// <summary>Mates two ports at the stop of the second; a position other than 0 takes one position of a wider port for a simplex plug.</summary>
    public bool Mate(PortRef a, int positionA, Stop stopA, PortRef b, int positionB, KeyingStop? word, Stop stop)
    {
        SourcePlace place = stop.Place;
        PortShape portA = Port(a);
        PortShape portB = Port(b);
        if (a == b && positionA == positionB)
        {
            reader.Problems.Add(place, $"{Name(a)} cannot be mated to itself");
            return false;
        }

        // Whole ports of different faces may be tried, which the checker reports; a position is a matter of the text.
        if ((positionA > 0 || positionB > 0) && !Fits(portA.Face, positionA, portB.Face, positionB))
        {
            reader.Problems.Add(place, $"{Describe(a, positionA)} does not mate with {Describe(b, positionB)}");
            return false;
        }

        if (!SaysPosition(a, positionA, b, stopA.Place) || !SaysPosition(b, positionB, a, place) || !Spliced(a, b, place) || Keys(a, b, null, word, place) is not { } keys)
            return false;
        if (!Take(a, positionA, b, stopA) || !Take(b, positionB, a, stop))
            return true;
        plant.AddMating(a, portA.Face == Face.Simplex ? 0 : positionA, b, portB.Face == Face.Simplex ? 0 : positionB, null, keys, place);
        return true;
    }

    /// <summary>Puts a plug into an adapter. The second plug makes the mating.</summary>
    public bool Plug(PortRef plug, int position, Stop plugStop, PortRef adapter, KeyingStop? word, SourcePlace place)
    {
        PortShape plugPort = Port(plug);
        if (plugPort.Keys is not null || !plant.Part(plug.Part).Shape.IsCable || position > 0)
        {
            reader.Problems.Add(place, $"only a plug goes into the adapter {Name(adapter)}, and {Name(plug)} is a port", "a cord or trunk between them");
            return false;
        }

        if (plugPort.Face.Family == ConnectorFamily.Bare)
        {
            reader.Problems.Add(place, $"{Name(plug)} is bare fibre and goes into no adapter", "a field termination between them");
            return false;
        }

        if (word is not null && plugPort.Face.Family != ConnectorFamily.Array)
        {
            ReportNoKeys(word, Name(plug), Name(adapter), plugPort.Face);
            return false;
        }

        if (!Take(plug, 0, adapter, plugStop))
            return true;
        if (!_adapters.TryGetValue(adapter, out List<WaitingPlug>? plugs))
        {
            _adapters[adapter] = plugs = [];
            _adapterOrder.Add(adapter);
        }

        if (plugs.Count == 2)
        {
            plant.AddClash(new PortClash(adapter, 0, plug, plugs[0].Place, place));
            return true;
        }

        plugs.Add(new WaitingPlug(plug, word, place));
        if (plugs.Count < 2)
            return true;
        KeyingStop? said = plugs[0].Keys ?? plugs[1].Keys;
        if (word is not null && said!.Keys != word.Keys)
        {
            reader.Problems.Add(word.Place, $"'{word.Text}' contradicts '{said.Text}' {NodeReader.Where(said.Place, word.Place)}: both are about the adapter {Name(adapter)}", "one word for one adapter");
            return false;
        }


        // An adapter of another family has no keys to lie by; that its plugs do not fit is for the checker to say.
        Keying held = Port(adapter).Keys ?? Keying.Aligned;
        if (Keys(plugs[0].Plug, plug, held, said, place) is not { } keys)
            return false;
        plant.AddMating(plugs[0].Plug, 0, plug, 0, adapter, keys, plugs[0].Place);
        return true;
    }

    /// <summary>Adds the plugs that wait in adapters with nothing on the other side.</summary>
    public void AddOpenPlugs()
    {
        foreach (PortRef adapter in _adapterOrder)
        {
            if (_adapters[adapter] is [WaitingPlug only])
                plant.AddOpenPlug(new OpenPlug(only.Plug, adapter, only.Place));
        }
    }

    /// <summary>The plug that waits alone in an adapter, or null.</summary>
    public (PortRef Plug, SourcePlace Place)? WaitingIn(PortRef adapter) =>
        _adapters.TryGetValue(adapter, out List<WaitingPlug>? plugs) && plugs is [WaitingPlug only] ? (only.Plug, only.Place) : null;

    /// <summary>Takes a plug out of the adapter that it waits in, if it waits in one.</summary>
    public void TakeOut(PortRef plug)
    {
        if (Waits().Remove(plug, out PortRef adapter))
            _adapters[adapter].Clear();
    }

    /// <summary>Lets a plug wait alone in an adapter.</summary>
    public void Wait(PortRef plug, PortRef adapter, SourcePlace place)
    {
        if (!_adapters.TryGetValue(adapter, out List<WaitingPlug>? plugs))
        {
            _adapters[adapter] = plugs = [];
            _adapterOrder.Add(adapter);
        }

        plugs.Clear();
        plugs.Add(new WaitingPlug(plug, null, place));
        Waits()[plug] = adapter;
    }

    private Dictionary<PortRef, PortRef> Waits()
    {
        if (_waits is not null)
            return _waits;
        _waits = [];
        foreach ((PortRef adapter, List<WaitingPlug> plugs) in _adapters)
        {
            if (plugs is [WaitingPlug only])
                _waits[only.Plug] = adapter;
        }

        return _waits;
    }

    private PortShape Port(PortRef port) => plant.Port(port);

    private string Name(PortRef port) => $"{plant.Part(port.Part).Name}/{Port(port).Name}";

    private string Describe(PortRef port, int position) => position == 0
        ? $"{Name(port)} ({Article(Port(port).Face)})"
        : $"position {Port(port).Face.PositionName(position)} of {Name(port)}";

    private static string Article(Face face) => face.Family == ConnectorFamily.Bare ? $"{face}" : $"a {face} port";

    /// <summary>A simplex plug goes into one half of a duplex port, and only the document knows which.</summary>
    private bool SaysPosition(PortRef wider, int position, PortRef simplex, SourcePlace place)
    {
        if (position > 0 || Port(wider).Face.Family != ConnectorFamily.Duplex || Port(simplex).Face != Face.Simplex)
            return true;
        reader.Problems.Add(place, $"{Name(simplex)} is simplex and takes one position of {Name(wider)}; say which", $"{Name(wider)}:A or {Name(wider)}:B");
        return false;
    }

    /// <summary>Two bare ends meet in a splice or a termination, which is a part with losses of its own.</summary>
    private bool Spliced(PortRef a, PortRef b, SourcePlace place)
    {
        bool bareA = Port(a).Face.Family == ConnectorFamily.Bare;
        bool bareB = Port(b).Face.Family == ConnectorFamily.Bare;
        if (bareA != bareB)
        {
            reader.Problems.Add(place, $"{Describe(a, 0)} does not mate with {Describe(b, 0)}", "a field termination between them");
            return false;
        }

        if (!bareA)
            return true;
        if (Port(a).Face != Port(b).Face)
        {
            reader.Problems.Add(place, $"{Name(a)} has {Port(a).Face} and {Name(b)} has {Port(b).Face}", "as many fibres on both sides");
            return false;
        }

        if (IsCableEnd(a) != IsCableEnd(b))
            return true;
        reader.Problems.Add(place, $"{Name(a)} and {Name(b)} are joined by neither splice nor connector", "a cable with a splice or a field termination at its end");
        return false;
    }

    private bool IsCableEnd(PortRef port) => plant.Part(port.Part).Kind == "cable";

    private static bool Fits(Face a, int positionA, Face b, int positionB)
    {
        if (positionA == 0 && positionB == 0)
            return a == b;
        bool singleA = positionA > 0 || a == Face.Simplex;
        bool singleB = positionB > 0 || b == Face.Simplex;
        return singleA && singleB && (a == Face.Simplex || b == Face.Simplex) && a.Family != ConnectorFamily.Array && b.Family != ConnectorFamily.Array;
    }

    private void ReportNoKeys(KeyingStop word, string nameA, string nameB, Face face) =>
        reader.Problems.Add(word.Place, $"'{word.Text}' says how array keys lie, and {nameA} and {nameB} are {face}; leave it out");

    /// <summary>Takes a port for another one. Where it is taken already, the plant keeps the clash and the mating is not made.</summary>
    private bool Take(PortRef port, int position, PortRef other, Stop stop)
    {
        if (_taken.Conflict(port, position) is var (taken, first))
        {
            plant.AddClash(new PortClash(port, position == 0 ? taken : position, other, first.Place, stop.Place));
            return false;
        }

        _taken.Take(port, position, stop);
        return true;
    }

    /// <summary>
    /// How the keys lie: as the document says, else as the adapter or the port that holds one has it. Only arrays have keys.
    /// </summary>
    private Keying? Keys(PortRef portA, PortRef portB, Keying? adapter, KeyingStop? word, SourcePlace place)
    {
        PortShape a = Port(portA);
        PortShape b = Port(portB);
        if (a.Face.Family != ConnectorFamily.Array || b.Face.Family != ConnectorFamily.Array)
        {
            if (word is null)
                return Keying.Aligned;
            ReportNoKeys(word, Name(portA), Name(portB), a.Face.Family == ConnectorFamily.Array ? b.Face : a.Face);
            return null;
        }

        PortShape? receptacle = a.KeysFixed ? a : b.KeysFixed ? b : null;
        if (receptacle is not null)
        {
            if (word is null || word.Keys == receptacle.Keys)
                return receptacle.Keys;
            reader.Problems.Add(word.Place, $"a plug enters an interface with keys {receptacle.Keys!.Value.Word()}, so it cannot be {word.Text}; leave the word out");
            return null;
        }

        if (word is not null)
            return word.Keys;
        if (adapter is { } ofAdapter)
            return ofAdapter;
        if (a.Keys is { } one && b.Keys is { } other && one != other)
        {
            reader.Problems.Add(place, $"{Name(portA)} has keys {one.Word()} and {Name(portB)} keys {other.Word()}", "opposed or aligned as a stop between them");
            return null;
        }

        if ((a.Keys ?? b.Keys) is { } own)
            return own;
        reader.Problems.Add(place, $"{Name(portA)} and {Name(portB)} meet without an adapter that says how their keys lie", "opposed or aligned as a stop between them, or a port of an array panel");
        return null;
    }
}
