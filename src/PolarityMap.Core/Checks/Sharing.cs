using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Checks;

/// <summary>
/// Which sheaths, cassettes, array connectors and panels several networks share. A sheath is that of a cable; a cassette is
/// any part that joins its ports inside, such as a module, a field termination, or an outlet with an array at its rear; a
/// panel is any part that only holds plugs. Splices are left out: the sheaths on both sides are judged already.
/// </summary>
public sealed class Sharing
{
    private readonly CheckContext _context;
    private readonly StrandNetworks _networks;
    private readonly NetworkTally _tally;
    private readonly int[] _totals = new int[SharedWords.All.Count];
    private readonly int[] _shared = new int[SharedWords.All.Count];
    private readonly Dictionary<(SharedPlace Place, SourcePlace Source, string Networks), List<SharedUse>> _uses = [];
    private readonly List<SharedGroup> _found = [];

    internal Sharing(CheckContext context, StrandNetworks networks)
    {
        _context = context;
        _networks = networks;
        _tally = new NetworkTally(networks, context.Plant.Networks.Count);
        var matedArrays = new HashSet<PortRef>();
        var plugs = new Dictionary<int, List<(PortRef Plug, int Position)>>();
        foreach (Mating mating in context.Plant.Matings)
        {
            bool fits = context.Plant.Fits(mating);
            if (fits && context.Plant.Port(mating.A).Face.Family == ConnectorFamily.Array)
            {
                matedArrays.Add(mating.A);
                matedArrays.Add(mating.B);
                TakeArray(mating.A, mating);
            }

            if (mating.Through is not { } adapter)
                continue;
            PutPlug(plugs, adapter.Part, mating.A, mating.PositionOfA);
            if (!fits)
                PutPlug(plugs, adapter.Part, mating.B, mating.PositionOfB);
        }

        foreach (OpenPlug open in context.Plant.OpenPlugs)
            PutPlug(plugs, open.Adapter.Part, open.Plug, 0);
        for (int part = 0; part < context.Plant.Parts.Count; part++)
        {
            TakeLooseArrays(part, matedArrays);
            TakePart(part, plugs.GetValueOrDefault(part));
        }

        Groups = [.. _found.OrderBy(g => g.Place)];
    }

    /// <summary>What several networks share: sheaths first, then cassettes, array connectors and panels, each in the order of the plant.</summary>
    public IReadOnlyList<SharedGroup> Groups { get; }

    /// <summary>How many the plant has, shared or not.</summary>
    public int Total(SharedPlace place) => _totals[(int)place];

    /// <summary>How many of them several networks share.</summary>
    public int Shared(SharedPlace place) => _shared[(int)place];

    private static void PutPlug(Dictionary<int, List<(PortRef Plug, int Position)>> plugs, int panel, PortRef plug, int position)
    {
        if (!plugs.TryGetValue(panel, out List<(PortRef Plug, int Position)>? list))
            plugs[panel] = list = [];
        list.Add((plug, position));
    }

    private void TakeArray(PortRef port, Mating? mating)
    {
        _tally.Begin();
        AddStrands(port, 0);
        Take(SharedPlace.Array, new SharedUse(port.Part, port, mating, []), mating?.Place ?? _context.Plant.Parts[port.Part].Place);
    }

    /// <summary>Array connectors that are mated to nothing.</summary>
    private void TakeLooseArrays(int part, HashSet<PortRef> mated)
    {
        Shape shape = _context.Plant.Parts[part].Shape;
        if (shape.IsInterface)
            return;
        for (int i = 0; i < shape.Ports.Count; i++)
        {
            var port = new PortRef(part, i);
            if (shape.Ports[i] is { IsAdapter: false, Face.Family: ConnectorFamily.Array } && !mated.Contains(port))
                TakeArray(port, null);
        }
    }

    private void TakePart(int index, List<(PortRef Plug, int Position)>? plugs)
    {
        Part part = _context.Plant.Parts[index];
        Shape shape = part.Shape;
        if (shape.IsInterface || (shape.IsCable && shape.Splices > 0))
            return;
        _tally.Begin();
        if (part.PortNetworks.Count == 0)
        {
            _tally.AddStated(part.Network);
        }
        else
        {
            for (int port = 0; port < shape.Ports.Count; port++)
                _tally.AddStated(_networks.Stated.Of(new PortRef(index, port)));
        }

        SharedPlace place = shape.IsCable ? SharedPlace.Sheath : shape.PositionCount > 0 ? SharedPlace.Cassette : SharedPlace.Panel;
        if (shape.PositionCount > 0)
        {
            int first = _context.Traced.Graph.PositionOf(new PortRef(index, 0), 1);
            for (int p = first; p < first + shape.PositionCount; p++)
                _tally.AddStrand(_context.Traced.StrandOf(p));
        }

        foreach ((PortRef plug, int position) in plugs ?? [])
            AddStrands(plug, position);
        Take(place, new SharedUse(index, null, null, []), part.Place);
    }

    /// <summary>Adds the strands at a position of a port, or at all of them for 0.</summary>
    private void AddStrands(PortRef port, int position)
    {
        StrandGraph graph = _context.Traced.Graph;
        int first = graph.PositionOf(port, Math.Max(1, position));
        int count = position > 0 ? 1 : _context.Plant.Port(port).PositionCount;
        for (int p = first; p < first + count; p++)
            _tally.AddStrand(_context.Traced.StrandOf(p));
    }

    /// <summary>Counts what was just tallied, and puts it to what is alike when several networks share it.</summary>
    private void Take(SharedPlace place, SharedUse use, SourcePlace source)
    {
        _totals[(int)place]++;
        if (!_tally.IsShared)
            return;
        _shared[(int)place]++;
        (int[] networks, int[] astray, int[] strands) = _tally.Result();
        string key = $"{string.Join(',', networks)};{string.Join(',', astray)}";
        if (!_uses.TryGetValue((place, source, key), out List<SharedUse>? uses))
        {
            _uses[(place, source, key)] = uses = [];
            _found.Add(GroupOf(place, networks, astray, source) with { Uses = uses });
        }

        uses.Add(use with { Strands = strands });
    }

    private SharedGroup GroupOf(SharedPlace place, int[] networks, int[] astray, SourcePlace source)
    {
        int[] forbidding = [];
        bool allSay = true;
        if (networks.Length > 1)
        {
            forbidding = [.. networks.Where(n => _context.Plant.Networks[n].MayShare is { } may && !may.Contains(place))];
            allSay = networks.All(n => _context.Plant.Networks[n].MayShare is not null);
        }

        return new SharedGroup(place, networks, astray, source)
        {
            ForbiddenBy = forbidding,
            Verdict = networks.Length < 2 ? SharingVerdict.Astray
                : forbidding.Length > 0 ? SharingVerdict.Against
                : allSay ? SharingVerdict.Allowed : SharingVerdict.NotStated,
        };
    }
}
