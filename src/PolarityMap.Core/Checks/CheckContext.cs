using PolarityMap.Core.Budget;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Checks;

/// <summary>What the rules share: where every lane comes out, and what each link was meant to do and does.</summary>
public sealed class CheckContext
{
    private readonly HashSet<PortRef> _mated = [];
    private readonly HashSet<int> _used = [];
    private readonly HashSet<PortRef> _refused = [];
    private LinkOutcomes? _outcomes;
    private FibreFaults? _fibres;
    private Separation? _separation;

    public CheckContext(TracedPlant traced)
    {
        Traced = traced;
        foreach (Mating mating in Plant.Matings)
        {
            _mated.Add(mating.A);
            _mated.Add(mating.B);
            _used.Add(mating.A.Part);
            _used.Add(mating.B.Part);
            if (mating.Through is { } through)
                _used.Add(through.Part);
            if (!Plant.Fits(mating))
            {
                _refused.Add(mating.A);
                _refused.Add(mating.B);
            }
        }

        foreach (PortClash clash in Plant.Clashes)
        {
            _used.Add(clash.Port.Part);
            if (clash.Refused is not { } refused)
                continue;
            _used.Add(refused.Part);
            _mated.Add(refused);
            _refused.Add(refused);
        }

        foreach (OpenPlug plug in Plant.OpenPlugs)
        {
            _mated.Add(plug.Plug);
            _used.Add(plug.Plug.Part);
            _used.Add(plug.Adapter.Part);

            // The adapter of a plug that is used elsewhere already holds this one alone.
            if (_refused.Contains(plug.Adapter) || !Plant.Fits(plug))
                _refused.Add(plug.Plug);
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
    public bool IsMated(PortRef port) => _mated.Contains(port);

    /// <summary>True when the document plugs the port in where it cannot go, which a rule of its own says.</summary>
    public bool IsRefused(PortRef port) => _refused.Contains(port);

    /// <summary>True when a run comes to the part.</summary>
    public bool IsUsed(int part) => _used.Contains(part);

    /// <summary>Every lane of every interface port that has a mating, in order, with its landing.</summary>
    public IEnumerable<(PortRef Port, Landing Landing)> WiredLanes()
    {
        for (int part = 0; part < Plant.Parts.Count; part++)
        {
            foreach (Lane lane in Plant.Parts[part].Shape.Lanes)
            {
                var port = new PortRef(part, lane.Port);
                Landing landing = Land(port, lane);
                if (landing.IsWired)
                    yield return (port, landing);
            }
        }
    }

    /// <summary>Where a lane comes out.</summary>
    public Landing Land(PortRef port, Lane lane)
    {
        int start = Traced.Graph.PositionOf(port, lane.Position);
        int end = Traced.OtherEnd(start);
        PortRef endPort = Traced.Graph.PlaceOf(end).Port;
        return new Landing(start, lane, Traced.StrandOf(start), end, endPort, Traced.Graph.LaneAt(end))
        {
            Application = Plant.Port(port).Application,
            Links = Plant.Port(port).Links,
            EndApplication = Plant.Port(endPort).Application,
            EndLinks = Plant.Port(endPort).Links,
        };
    }

    /// <summary>The landings of a link's end: of its lane, or of every lane of its port.</summary>
    public IReadOnlyList<Landing> Land(LinkEnd end)
    {
        var landings = new List<Landing>();
        foreach (Lane lane in Plant.Parts[end.Port.Part].Shape.Lanes)
        {
            if (lane.Port == end.Port.Port && (end.Lane == 0 || end.Lane == lane.Group))
                landings.Add(Land(end.Port, lane));
        }

        return landings;
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

    private bool HasFibre(int strand)
    {
        foreach (int p in Traced.Strands[strand])
        {
            if (Traced.Graph.Inside[p] >= 0 || Traced.Graph.LaneAt(p) is not null)
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
