using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Drawing.Views.Overview;

/// <summary>The networks that the chosen strands come by, as the parts on their way state them.</summary>
internal sealed class StopNetworks
{
    private const int None = -1;
    private const int Several = -2;

    private readonly int[] _ofStrand;
    private readonly int[] _ofPart;
    private readonly Dictionary<int, SortedSet<int>> _several = [];

    private StopNetworks(int strands, int parts)
    {
        _ofStrand = new int[strands];
        _ofPart = new int[parts];
        Array.Fill(_ofStrand, None);
        Array.Fill(_ofPart, None);
    }

    public static StopNetworks Of(TracedPlant traced, Stops stops)
    {
        IReadOnlyList<Part> parts = traced.Plant.Parts;
        var networks = new StopNetworks(stops.Starts.Count - 1, parts.Count);
        if (traced.Plant.Networks.Count == 0)
            return networks;
        for (int s = 0; s + 1 < stops.Starts.Count; s++)
        {
            for (int i = stops.Starts[s]; i < stops.Starts[s + 1]; i++)
            {
                if (stops.Nodes[i] < parts.Count)
                    networks.Add(s, OfPart(parts[stops.Nodes[i]]));
                if (stops.Cables[i] >= 0)
                    networks.Add(s, OfPart(parts[stops.Cables[i]]));
            }
        }

        for (int s = 0; s + 1 < stops.Starts.Count; s++)
        {
            for (int i = stops.Starts[s]; i < stops.Starts[s + 1]; i++)
            {
                if (stops.Nodes[i] < parts.Count)
                    networks.Pass(stops.Nodes[i], networks._ofStrand[s]);
                if (stops.Cables[i] >= 0)
                    networks.Pass(stops.Cables[i], networks._ofStrand[s]);
            }
        }

        return networks;
    }

    /// <summary>The network of the chosen strands of a part: an index, -1 for none, -2 for several.</summary>
    public int OfPart(int part) => _ofPart[part];

    /// <summary>The first network of a strand, by its place in the choice, or -1.</summary>
    public int FirstOf(int strand) => _ofStrand[strand] == Several ? _several[strand].Min : _ofStrand[strand];

    /// <summary>Adds the networks of a strand, by its place in the choice.</summary>
    public void AddTo(HashSet<int> set, int strand)
    {
        if (_ofStrand[strand] >= 0)
            set.Add(_ofStrand[strand]);
        else if (_ofStrand[strand] == Several)
            set.UnionWith(_several[strand]);
    }

    /// <summary>Counts a strand to each of its networks.</summary>
    public void Count(int strand, SortedDictionary<int, int> counts)
    {
        if (_ofStrand[strand] >= 0)
            counts[_ofStrand[strand]] = counts.GetValueOrDefault(_ofStrand[strand]) + 1;
        else if (_ofStrand[strand] == Several)
        {
            foreach (int network in _several[strand])
                counts[network] = counts.GetValueOrDefault(network) + 1;
        }
    }

    /// <summary>A part with ports of several networks says nothing about the strand that passes it.</summary>
    private static int OfPart(Part part) => part.PortNetworks.Count == 0 ? part.Network : None;

    private void Add(int strand, int network)
    {
        if (network < 0 || network == _ofStrand[strand])
            return;
        if (_ofStrand[strand] == None)
        {
            _ofStrand[strand] = network;
            return;
        }

        if (_ofStrand[strand] != Several)
            _several[strand] = [_ofStrand[strand]];
        _ofStrand[strand] = Several;
        _several[strand].Add(network);
    }

    private void Pass(int part, int network) =>
        _ofPart[part] = network == None || _ofPart[part] == network ? _ofPart[part] : _ofPart[part] == None ? network : Several;
}
