using PolarityMap.Core.Budget;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Checks;

/// <summary>What the rules share: where every lane comes out, and what each link was meant to do and does.</summary>
public sealed class CheckContext
{
    private readonly bool[] _mated;
    private readonly bool[] _used;
    private readonly bool[] _refused;
    private List<(PortRef Port, Landing Landing)>? _amiss;
    private LinkOutcomes? _outcomes;
    private FibreFaults? _fibres;
    private Separation? _separation;

    public CheckContext(TracedPlant traced)
    {
        Traced = traced;
        _mated = new bool[Plant.PortCount];
        _refused = new bool[Plant.PortCount];
        _used = new bool[Plant.Parts.Count];
        foreach (Mating mating in Plant.Matings)
        {
            _mated[Plant.NumberOf(mating.A)] = true;
            _mated[Plant.NumberOf(mating.B)] = true;
            _used[mating.A.Part] = true;
            _used[mating.B.Part] = true;
            if (mating.Through is { } through)
                _used[through.Part] = true;
            if (!Plant.Fits(mating))
            {
                _refused[Plant.NumberOf(mating.A)] = true;
                _refused[Plant.NumberOf(mating.B)] = true;
            }
        }

        foreach (PortClash clash in Plant.Clashes)
        {
            _used[clash.Port.Part] = true;
            if (clash.Refused is not { } refused)
                continue;
            _used[refused.Part] = true;
            _mated[Plant.NumberOf(refused)] = true;
            _refused[Plant.NumberOf(refused)] = true;
        }

        foreach (OpenPlug plug in Plant.OpenPlugs)
        {
            _mated[Plant.NumberOf(plug.Plug)] = true;
            _used[plug.Plug.Part] = true;
            _used[plug.Adapter.Part] = true;

            // The adapter of a plug that is used elsewhere already holds this one alone.
            if (IsRefused(plug.Adapter) || !Plant.Fits(plug))
                _refused[Plant.NumberOf(plug.Plug)] = true;
        }
    }

    public TracedPlant Traced { get; }

    public Plant Plant => Traced.Plant;

    /// <summary>What each link does, worked out once for all destination rules.</summary>
    public LinkOutcomes Outcomes => _outcomes ??= new LinkOutcomes(this);

    /// <summary>Where fibre classes do not go together, worked out once for all fibre rules.</summary>
    internal FibreFaults Fibres => _fibres ??= FibreFaults.Of(this);

    /// <summary>How the networks keep apart, worked out once for all separation rules.</summary>
    public Separation Separation => _separation ??= new Separation(this);

    /// <summary>What each lit strand and link loses, worked out once for all loss rules and whoever prints it.</summary>
    public BudgetTable Losses => BudgetTable.Of(Traced);

    /// <summary>True when something is mated to the port, or its plug sits in an adapter.</summary>
    public bool IsMated(PortRef port) => _mated[Plant.NumberOf(port)];

    /// <summary>True when the document plugs the port in where it cannot go, which a rule of its own says.</summary>
    public bool IsRefused(PortRef port) => _refused[Plant.NumberOf(port)];

    /// <summary>True when a run comes to the part.</summary>
    public bool IsUsed(int part) => _used[part];

    /// <summary>Every lane of every interface port that has a mating, in order, with its landing.</summary>
    public IEnumerable<(PortRef Port, Landing Landing)> WiredLanes()
    {
        for (int part = 0; part < Plant.Parts.Count; part++)
        {
            FixedList<Lane> lanes = Plant.Parts[part].Shape.Lanes;
            for (int i = 0; i < lanes.Count; i++)
            {
                var port = new PortRef(part, lanes.Span[i].Port);
                Landing landing = Land(port, i);
                if (landing.IsWired)
                    yield return (port, landing);
            }
        }
    }

    /// <summary>
    /// Those of <see cref="WiredLanes"/> that are not simply heard at another port: in a sound plant none. Worked out once for
    /// all polarity rules.
    /// </summary>
    internal IReadOnlyList<(PortRef Port, Landing Landing)> LanesAmiss => _amiss ??= FindLanesAmiss();

    /// <summary>Where a lane of a port comes out.</summary>
    /// <param name="port">The port.</param>
    /// <param name="lane">Index of the lane in the part's shape.</param>
    private Landing Land(PortRef port, int lane)
    {
        int start = Traced.Graph.PositionOf(port, Plant.Parts[port.Part].Shape.Lanes.Span[lane].Position);
        return Meet(port, start, lane, Traced.OtherEnd(start));
    }

    /// <summary>The first position of a link's end, in the order of its lanes, that is plugged in; -1 when none is.</summary>
    internal int FirstWired(LinkEnd end)
    {
        Shape shape = Plant.Parts[end.Port.Part].Shape;
        (int first, int behind) = shape.LanesAround(end.Port.Port);
        for (int i = first; i < behind; i++)
        {
            ref readonly Lane lane = ref shape.Lanes.Span[i];
            if (lane.Port != end.Port.Port || (end.Lane != 0 && end.Lane != lane.Group))
                continue;
            int position = Traced.Graph.PositionOf(end.Port, lane.Position);
            if (Traced.OtherEnd(position) != position)
                return position;
        }

        return -1;
    }

    /// <summary>What a lane meets at a position, be it the end of its strand or another that it might be led to.</summary>
    /// <param name="port">The lane's port.</param>
    /// <param name="start">The lane's position.</param>
    /// <param name="lane">Index of the lane in the part's shape.</param>
    /// <param name="end">The position that it meets.</param>
    internal Landing Meet(PortRef port, int start, int lane, int end)
    {
        PortRef endPort = Traced.Graph.PlaceOf(end).Port;
        PortShape near = Plant.Port(port);
        PortShape far = Plant.Port(endPort);
        return new Landing(start, Plant.Parts[port.Part].Shape, lane, Traced.StrandOf(start), end, endPort, Plant.Parts[endPort.Part].Shape, Traced.Graph.LaneIndexAt(end))
        {
            Application = near.Application,
            Links = near.Links,
            EndApplication = far.Application,
            EndLinks = far.Links,
        };
    }

    /// <summary>The landings of a link's end: of its lane, or of every lane of its port.</summary>
    public IReadOnlyList<Landing> Land(LinkEnd end)
    {
        var landings = new List<Landing>();
        Land(end, landings);
        return landings;
    }

    /// <summary>As <see cref="Land(LinkEnd)"/>, into a list that is used again for end after end.</summary>
    internal void Land(LinkEnd end, List<Landing> landings)
    {
        landings.Clear();
        Shape shape = Plant.Parts[end.Port.Part].Shape;
        (int first, int behind) = shape.LanesAround(end.Port.Port);
        for (int i = first; i < behind; i++)
        {
            ref readonly Lane lane = ref shape.Lanes.Span[i];
            if (lane.Port == end.Port.Port && (end.Lane == 0 || end.Lane == lane.Group))
                landings.Add(Land(end.Port, i));
        }
    }

    /// <summary>
    /// The strands at a port, or at one position of it when that is not 0, in the order of the positions. Places of an array
    /// that carry no fibre are left out; an adapter has no strands of its own.
    /// </summary>
    public IEnumerable<int> StrandsAt(PortRef port, int position = 0)
    {
        int first = position == 0 ? 1 : position;
        int last = position == 0 ? Plant.Port(port).PositionCount : position;
        for (int p = first; p <= last; p++)
        {
            int strand = Traced.StrandOf(Traced.Graph.PositionOf(port, p));
            if (HasFibre(strand))
                yield return strand;
        }
    }

    private List<(PortRef Port, Landing Landing)> FindLanesAmiss()
    {
        var amiss = new List<(PortRef Port, Landing Landing)>();
        for (int part = 0; part < Plant.Parts.Count; part++)
        {
            ReadOnlySpan<Lane> lanes = Plant.Parts[part].Shape.Lanes.Span;
            for (int i = 0; i < lanes.Length; i++)
            {
                var port = new PortRef(part, lanes[i].Port);
                Landing landing = Land(port, i);
                if (landing.IsWired && (!landing.IsHeard || landing.EndPort == port))
                    amiss.Add((port, landing));
            }
        }

        return amiss;
    }

    private bool HasFibre(int strand)
    {
        foreach (int p in Traced.Strands[strand])
        {
            if (Traced.Graph.Inside[p] >= 0 || Traced.Graph.HasLane(p))
                return true;
        }

        return false;
    }

    /// <summary>The place in the document to show for a strand: where its first mating is made.</summary>
    public SourcePlace PlaceOf(int strand)
    {
        ReadOnlySpan<int> positions = Traced.Strands[strand];
        foreach (int p in positions)
        {
            if (Traced.MatingAt(p) is { } mating)
                return mating.Place;
        }

        return Plant.Parts[Traced.Graph.PartOf(positions[0])].Place;
    }

    /// <summary>The places of every mating and of every as-built difference along some strands, in order, each once.</summary>
    public IReadOnlyList<SourcePlace> PlacesAlong(IEnumerable<int> strands)
    {
        var places = new List<SourcePlace>();
        foreach (int strand in strands)
        {
            foreach (int p in Traced.Strands[strand])
            {
                Part part = Plant.Parts[Traced.Graph.PartOf(p)];
                if (part.IsAsBuilt && !places.Contains(part.Place))
                    places.Add(part.Place);
                if (Traced.MatingAt(p) is { } mating && !places.Contains(mating.Place))
                    places.Add(mating.Place);
            }
        }

        return places;
    }
}
