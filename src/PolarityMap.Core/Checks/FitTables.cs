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

    private FitTables(CheckContext context, StrandNetworks networks)
    {
        _context = context;
        _networks = networks;
        foreach (Mating mating in context.Plant.Matings)
        {
            if (mating.Through is { } adapter)
                _plugIn.TryAdd(adapter, mating.A);
        }

        foreach (OpenPlug open in context.Plant.OpenPlugs)
            _plugIn.TryAdd(open.Adapter, open.Plug);
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
            ports.Add(new FitPort(port.Name, network, port.IsKeyed ? part.Key ?? KeyOf(_networks.Stated.Of(new PortRef(index, i))) : null));
            if (network >= 0)
                meeting.Add(network);
        }

        if (meeting.Count < 2)
            return;
        string key = $"{part.Kind};{string.Join(';', ports.Select(p => $"{p.Name},{p.Network},{p.Key}"))}";
        if (_alike.TryGetValue(key, out List<int>? alike))
        {
            alike.Add(index);
            return;
        }

        _alike[key] = alike = [index];
        _tables.Add(new FitTable(part.Kind, alike, [.. meeting], [.. ports.Select(p => p with { Cords = [.. meeting.Select(n => Fit(n, p))] })], part.Place));
    }

    private string? KeyOf(int network) => network >= 0 ? _context.Plant.Networks[network].Key : null;

    /// <summary>Whether the cord of a network goes into a port. A network's cords carry its key.</summary>
    private CordFit Fit(int network, FitPort port)
    {
        Network cord = _context.Plant.Networks[network];
        bool plainFitsPort = port.Network >= 0 && _context.Plant.Networks[port.Network].PlainFits;
        bool goesIn = CordFits.GoesIn(cord.Key, cord.PlainFits, port.Key, plainFitsPort);
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
