using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Checks;

/// <summary>How a strand keeps to its network.</summary>
public enum StrandCourse : byte
{
    /// <summary>No fibre is on it: places of connectors that nothing fills.</summary>
    Empty,

    /// <summary>Nothing on its way is of another network than its interfaces.</summary>
    Own,

    /// <summary>It passes a part or a port of another network than that of its interfaces.</summary>
    Astray,

    /// <summary>Its interfaces are of two networks.</summary>
    Bridge,
}

/// <summary>
/// The networks of every strand: those of the interfaces at its ends, else those of the parts and ports that it passes. Time
/// is linear in the positions of the plant.
/// </summary>
public sealed class StrandNetworks
{
    private const int None = -1;
    private const int Several = -2;

    private readonly CheckContext _context;
    private readonly Dictionary<PortRef, PortRef> _adapterOf = [];
    private readonly int[] _network;
    private readonly StrandCourse[] _course;
    private readonly Dictionary<int, int[]> _several = [];
    private readonly List<Stray> _strays = [];

    internal StrandNetworks(CheckContext context)
    {
        _context = context;
        Stated = new StatedNetworks(context.Plant);
        foreach (Mating mating in context.Plant.Matings)
        {
            if (mating.Through is { } adapter)
                _adapterOf[mating.A] = _adapterOf[mating.B] = adapter;
        }

        StrandSet strands = context.Traced.Strands;
        _network = new int[strands.Count];
        _course = new StrandCourse[strands.Count];
        Array.Fill(_network, None);
        if (context.Plant.Networks.Count > 0)
            FollowAll(strands);
    }

    /// <summary>The networks that the document states for ports.</summary>
    public StatedNetworks Stated { get; }

    /// <summary>Where strands enter parts of another network, each network and part once.</summary>
    public IReadOnlyList<Stray> Strays => _strays;

    /// <summary>The networks of a strand, as indices in rising order; none when nothing on it states one.</summary>
    public ReadOnlySpan<int> Of(int strand) => _network[strand] switch
    {
        None => [],
        Several => _several[strand],
        _ => _network.AsSpan(strand, 1),
    };

    public StrandCourse CourseOf(int strand) => _course[strand];

    /// <summary>The ports along a strand in order, with the adapters between them.</summary>
    public void Stations(int strand, List<Station> stations)
    {
        stations.Clear();
        StrandGraph graph = _context.Traced.Graph;
        int before = None;
        foreach (int p in _context.Traced.Strands[strand])
        {
            PortRef port = graph.PlaceOf(p).Port;
            if (_adapterOf.Count > 0 && before >= 0 && graph.Outside[p] == before && _adapterOf.TryGetValue(port, out PortRef adapter))
                stations.Add(new Station(adapter, Stated.Of(adapter), p, true));
            stations.Add(new Station(port, Stated.Of(port), p, false));
            before = p;
        }
    }

    private void FollowAll(StrandSet strands)
    {
        var strays = new Dictionary<(int Network, int Part, int Foreign), Stray>();
        var stations = new List<Station>();
        for (int strand = 0; strand < strands.Count; strand++)
        {
            if (!HasFibre(strands[strand]))
                continue;
            (int first, int last) = strands.IsLoop(strand) ? (None, None) : (InterfaceAt(strands[strand][0]), InterfaceAt(strands[strand][^1]));
            _course[strand] = StrandCourse.Own;
            if (first >= 0 && last >= 0 && first != last)
            {
                _course[strand] = StrandCourse.Bridge;
                _network[strand] = Several;
                _several[strand] = [Math.Min(first, last), Math.Max(first, last)];
                continue;
            }

            int own = first >= 0 ? first : last;
            Stations(strand, stations);
            if (own >= 0)
            {
                _network[strand] = own;
                FindStrays(strand, own, stations, strays);
            }
            else
            {
                TakeFromParts(strand, stations);
            }
        }
    }

    private bool HasFibre(ReadOnlySpan<int> positions)
    {
        ReadOnlySpan<int> inside = _context.Traced.Graph.Inside;
        foreach (int p in positions)
        {
            if (inside[p] >= 0)
                return true;
        }

        // An interface's light may end at a place without a fibre.
        StrandGraph graph = _context.Traced.Graph;
        return positions.Length > 1 && (graph.LaneAt(positions[0]) is not null || graph.LaneAt(positions[^1]) is not null);
    }

    private int InterfaceAt(int position)
    {
        if (_context.Traced.Graph.LaneAt(position) is null)
            return None;
        return Stated.Of(_context.Traced.Graph.PlaceOf(position).Port);
    }

    private void FindStrays(int strand, int own, List<Station> stations, Dictionary<(int Network, int Part, int Foreign), Stray> strays)
    {
        int foreign = None;
        for (int i = 0; i < stations.Count; i++)
        {
            Station station = stations[i];
            if (station.Network == own)
                foreign = None;
            if (station.Network < 0 || station.Network == own || station.Network == foreign)
                continue;
            foreign = station.Network;
            _course[strand] = StrandCourse.Astray;
            if (!strays.TryGetValue((own, station.Port.Part, foreign), out Stray? stray))
            {
                strays[(own, station.Port.Part, foreign)] = stray = new Stray(own, foreign, station.Port.Part, PlaceOf(station));
                _strays.Add(stray);
            }

            // A cable is told by where it is plugged in, any other part by the port that the strand enters.
            bool isCable = _context.Plant.Parts[station.Port.Part].Shape.IsCable;
            stray.Add(strand, isCable && i > 0 ? stations[i - 1].Port : station.Port);
        }
    }

    /// <summary>The stop of the document that brings a strand to a station.</summary>
    private SourcePlace PlaceOf(Station station) =>
        _context.Traced.MatingAt(station.Position)?.Place ?? _context.Plant.Parts[station.Port.Part].Place;

    private void TakeFromParts(int strand, List<Station> stations)
    {
        SortedSet<int>? several = null;
        foreach (Station station in stations)
        {
            if (station.Network < 0 || station.Network == _network[strand])
                continue;
            if (_network[strand] == None)
                _network[strand] = station.Network;
            else
                (several ??= [_network[strand]]).Add(station.Network);
        }

        if (several is null)
            return;
        _network[strand] = Several;
        _several[strand] = [.. several];
    }
}
