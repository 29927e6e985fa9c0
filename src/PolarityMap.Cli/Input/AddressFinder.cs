using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;
using PolarityMap.Documents.Text;

namespace PolarityMap.Cli.Input;

/// <summary>Finds the positions that an address names: of a part, a port, or one position. An adapter has those of its plug.</summary>
internal static class AddressFinder
{
    /// <exception cref="CallException">Nothing has this address.</exception>
    public static IReadOnlyList<int> Find(TracedPlant traced, string address)
    {
        if (PartOf(traced.Plant, address) is { } whole)
            return Positions(traced, whole, port: null, position: null, address);

        // The name of a cord has strokes of its own, so the last one parts the port from it.
        int stroke = address.LastIndexOf('/');
        if (stroke < 0 || PartOf(traced.Plant, address[..stroke]) is not { } part)
        {
            string name = stroke < 0 ? address : address[..stroke];
            string? near = NearestWord.Find(name, traced.Plant.Parts.Select(p => p.Name));
            throw new CallException($"there is no part '{name}'" + (near is null ? "" : $"; did you mean '{near}'?"));
        }

        string rest = address[(stroke + 1)..];
        int colon = rest.IndexOf(':');
        return Positions(traced, part, colon < 0 ? rest : rest[..colon], colon < 0 ? null : rest[(colon + 1)..], address);
    }

    private static int? PartOf(Plant plant, string name)
    {
        for (int i = 0; i < plant.Parts.Count; i++)
        {
            if (plant.Parts[i].Name == name)
                return i;
        }

        return null;
    }

    private static List<int> Positions(TracedPlant traced, int part, string? port, string? position, string address)
    {
        Shape shape = traced.Plant.Parts[part].Shape;
        var found = new List<int>();
        int from = 0, to = shape.Ports.Count - 1;
        if (port is not null)
        {
            from = to = shape.FindPort(port);
            if (from < 0)
            {
                string? near = NearestWord.Find(port, shape.Ports.Select(p => p.Name));
                throw new CallException($"{traced.Plant.Parts[part].Name} has no port '{port}'; expected one of {string.Join(", ", shape.Ports.Take(30).Select(p => p.Name))}"
                    + (near is null ? "" : $"; did you mean '{near}'?"));
            }
        }

        for (int p = from; p <= to; p++)
        {
            PortRef at = shape.Ports[p].IsAdapter ? PlugIn(traced.Plant, new PortRef(part, p)) : new PortRef(part, p);
            if (at.Part < 0)
                continue;
            Face face = shape.Ports[p].Face;
            int first = 1, last = face.Count;
            if (position is not null)
            {
                if (!face.TryParsePosition(position, out first))
                    throw new CallException($"{address[..address.LastIndexOf(':')]} has no position '{position}'; expected {(face.Family == ConnectorFamily.Duplex ? "A or B" : $"1 to {face.Count}")}");
                last = first;
            }

            for (int n = first; n <= last; n++)
                found.Add(traced.Graph.PositionOf(at, n));
        }

        return found;
    }

    /// <summary>The plug that sits in an adapter, or a reference with part -1.</summary>
    private static PortRef PlugIn(Plant plant, PortRef adapter) =>
        plant.Matings.FirstOrDefault(m => m.Through == adapter)?.A
        ?? plant.OpenPlugs.FirstOrDefault(o => o.Adapter == adapter)?.Plug
        ?? new PortRef(-1, -1);
}
