using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Reports.Interactive;

/// <summary>
/// The ports that the page knows, numbered from 0: all of parts that have a name of their own, and of other cords those that a
/// shown strand passes.
/// </summary>
internal sealed class DiagramPorts
{
    private readonly Dictionary<PortRef, int> _index = [];
    private readonly List<PortRef> _all = [];
    private readonly Dictionary<PortRef, PortRef> _plugIn = [];

    public DiagramPorts(TracedPlant traced, IReadOnlyList<StrandFacts> strands)
    {
        Plant plant = traced.Plant;
        for (int part = 0; part < plant.Parts.Count; part++)
        {
            if (plant.Parts[part].IsInline)
                continue;
            for (int port = 0; port < plant.Parts[part].Shape.Ports.Count; port++)
                Add(new PortRef(part, port));
        }

        foreach (StrandFacts facts in strands)
        {
            foreach (int position in traced.Strands[facts.Strand])
                Add(traced.Graph.PlaceOf(position).Port);
        }

        foreach (Mating mating in plant.Matings)
        {
            if (mating.Through is { } adapter)
                _plugIn.TryAdd(adapter, mating.A);
        }

        foreach (OpenPlug plug in plant.OpenPlugs)
            _plugIn.TryAdd(plug.Adapter, plug.Plug);
    }

    public IReadOnlyList<PortRef> All => _all;

    /// <summary>The number of a port, or -1 when the page does not know it.</summary>
    public int this[PortRef port] => _index.GetValueOrDefault(port, -1);

    /// <summary>The plug that sits in an adapter, by number; -1 where there is none, or the port is no adapter.</summary>
    public int PlugIn(PortRef adapter) => _plugIn.TryGetValue(adapter, out PortRef plug) ? this[plug] : -1;

    private void Add(PortRef port)
    {
        if (_index.TryAdd(port, _all.Count))
            _all.Add(port);
    }
}
