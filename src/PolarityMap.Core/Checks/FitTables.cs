using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Checks;

/// <summary>Makes the tables of all parts at which duplex or simplex ports of several networks sit side by side.</summary>
internal sealed class FitTables
{
    private readonly CheckContext _context;
    private readonly StrandNetworks _networks;
    private readonly Dictionary<PortRef, PortRef> _plugIn = [];
    private readonly Dictionary<string, List<int>> _alike = [];
    private readonly List<FitTable> _tables = [];
    private readonly SortedSet<string>?[] _codes;
    private readonly bool[] _hasPlainPlugs;

    private FitTables(CheckContext context, StrandNetworks networks)
    {
        _context = context;
        _networks = networks;
        _codes = new SortedSet<string>?[context.Plant.Networks.Count];
        _hasPlainPlugs = new bool[_codes.Length];
        foreach (Mating mating in context.Plant.Matings)
        {
            if (mating.Through is { } adapter)
                _plugIn.TryAdd(adapter, mating.A);
        }

        foreach (OpenPlug open in context.Plant.OpenPlugs)
            _plugIn.TryAdd(open.Adapter, open.Plug);
        TakeCords();
    }

    public static IReadOnlyList<FitTable> Of(CheckContext context, StrandNetworks networks)
    {
        var tables = new FitTables(context, networks);
        for (int part = 0; part < context.Plant.Parts.Count; part++)
        {
            Shape shape = context.Plant.Parts[part].Shape;
            if (!shape.IsCable && !shape.IsInterface)
                tables.Take(part);
        }

        return tables._tables;
    }

    private void Take(int index)
    {
        Part part = _context.Plant.Parts[index];
        var ports = new List<FitPort>();
        var meeting = new SortedSet<int>();
        for (int i = 0; i < part.Shape.Ports.Count; i++)
        {
            PortShape port = part.Shape.Ports[i];
            if (port.Face.Family is not (ConnectorFamily.Duplex or ConnectorFamily.Simplex))
                continue;
            int network = NetworkOf(new PortRef(index, i));
            Network? stated = Stated(new PortRef(index, i));
            string? key = port.IsKeyed ? part.Key ?? stated?.Key : null;
            ports.Add(new FitPort(port.Name, network, key) { TakesPlain = key is null || stated is { PlainFits: true } });
            if (network >= 0)
                meeting.Add(network);
        }

        if (meeting.Count < 2)
            return;
        string signature = $"{part.Kind};{string.Join(';', ports.Select(p => $"{p.Name},{p.Network},{p.Key},{p.TakesPlain}"))}";
        if (_alike.TryGetValue(signature, out List<int>? alike))
        {
            alike.Add(index);
            return;
        }

        _alike[signature] = alike = [index];
        _tables.Add(new FitTable(part.Kind, alike, [.. meeting], [.. ports.Select(p => p with { Cords = [.. meeting.Select(n => Fit(n, p))] })], part.Place));
    }

    private Network? Stated(PortRef port) => _networks.Stated.Of(port) is >= 0 and int n ? _context.Plant.Networks[n] : null;

    /// <summary>Takes down what the ends of every network's cords carry: a key code, or nothing where an end is plain.</summary>
    private void TakeCords()
    {
        Plant plant = _context.Plant;
        for (int part = 0; part < plant.Parts.Count; part++)
        {
            Shape shape = plant.Parts[part].Shape;
            for (int i = 0; shape.IsCable && i < shape.Ports.Count; i++)
            {
                var port = new PortRef(part, i);
                if (shape.Ports[i].Face.Family is not (ConnectorFamily.Duplex or ConnectorFamily.Simplex) || plant.NetworkOf(port) is not (>= 0 and int network))
                    continue;
                if (plant.KeyOf(port) is { } code)
                    (_codes[network] ??= new SortedSet<string>(StringComparer.Ordinal)).Add(code);
                else
                    _hasPlainPlugs[network] = true;
            }
        }

        // A network without cords in the document is taken to have cords of its key.
        for (int network = 0; network < _codes.Length; network++)
        {
            if (_codes[network] is not null || _hasPlainPlugs[network])
                continue;
            if (plant.Networks[network].Key is { } key)
                _codes[network] = [key];
            else
                _hasPlainPlugs[network] = true;
        }
    }

    /// <summary>Whether either end of a network's cords goes into a port.</summary>
    private CordFit Fit(int network, FitPort port)
    {
        bool intoPlain = _context.Plant.Networks[network].PlainFits;
        bool goesIn = _hasPlainPlugs[network] && CordFits.GoesIn(null, plugGoesIntoPlain: true, port.Key, port.TakesPlain);
        foreach (string code in _codes[network] ?? [])
            goesIn |= CordFits.GoesIn(code, intoPlain, port.Key, port.TakesPlain);
        return network == port.Network
            ? goesIn ? CordFit.Own : CordFit.OwnBlocked
            : goesIn ? CordFit.Fits : CordFit.Blocked;
    }

    /// <summary>
    /// The network of a port: what the document states, else that of the strands in it, else, where those join two, that of the
    /// cord plugged into it; -1 when nothing tells.
    /// </summary>
    private int NetworkOf(PortRef port)
    {
        if (_networks.Stated.Of(port) is >= 0 and int stated)
            return stated;
        PortRef plug = port;
        if (_context.Plant.Port(port).IsAdapter && !_plugIn.TryGetValue(port, out plug))
            return -1;
        StrandGraph graph = _context.Traced.Graph;
        int first = graph.PositionOf(plug, 1);
        int positions = _context.Plant.Port(plug).PositionCount;
        int found = -1;
        bool clear = true;
        for (int p = first; p < first + positions; p++)
        {
            foreach (int network in _networks.Of(_context.Traced.StrandOf(p)))
            {
                clear &= found < 0 || found == network;
                found = network;
            }
        }

        if (found >= 0 && clear)
            return found;
        int partner = Partner(graph, first, positions);
        int neighbour = partner < 0 ? -1 : _networks.Stated.Of(graph.PlaceOf(partner).Port);
        return plug != port && _networks.Stated.Of(plug) is >= 0 and int own ? own : neighbour;
    }

    /// <summary>The position mated to the first of some positions that is mated, or -1.</summary>
    private static int Partner(StrandGraph graph, int first, int count)
    {
        for (int p = first; p < first + count; p++)
        {
            if (graph.Outside[p] >= 0)
                return graph.Outside[p];
        }

        return -1;
    }
}
