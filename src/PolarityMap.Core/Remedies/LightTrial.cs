using PolarityMap.Core.Checks;
using PolarityMap.Core.Deviations;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Remedies;

/// <summary>What may be wrong with where a lane comes out.</summary>
internal enum LaneFault : byte
{
    /// <summary>Nothing, or nothing is plugged in.</summary>
    None,

    /// <summary>It sends and comes out at no interface.</summary>
    Dark,

    /// <summary>It meets a lane of its own direction.</summary>
    Same,

    /// <summary>It comes back to its own port.</summary>
    Own,

    /// <summary>It is not heard: another wavelength or application.</summary>
    Unheard,

    /// <summary>It comes out at another network.</summary>
    Foreign,
}

/// <summary>
/// A plant's light with changes laid over it: where lanes come out then, and whether that raises a fault that was not there. It
/// walks only strands that the changes touch, so that thousands of changes can be tried; it sees what light does and nothing
/// else, so that it only ever throws out what a full check would throw out too.
/// </summary>
internal sealed class LightTrial
{
    private readonly ChangeContext _context;
    private readonly MeantEnds _meant;
    private readonly Prover _known;
    private readonly int[] _inside;
    private readonly int[] _outside;
    private readonly int[] _seen;
    private readonly Stack<Change> _laid = new();
    private readonly Dictionary<int, Shape> _shapes = [];
    private readonly HashSet<int> _links = [];
    private int _now;

    /// <param name="context">The plant.</param>
    /// <param name="meant">Where its links mean lanes to come out.</param>
    /// <param name="known">Knows what its findings are about.</param>
    public LightTrial(ChangeContext context, MeantEnds meant, Prover known)
    {
        _context = context;
        _meant = meant;
        _known = known;
        _inside = context.Graph.Inside.ToArray();
        _outside = context.Graph.Outside.ToArray();
        _seen = new int[_inside.Length];
    }

    /// <summary>The changes that are laid, the last first.</summary>
    public IReadOnlyCollection<Change> Laid => _laid;

    private Plant Plant => _context.Plant;

    /// <summary>Lays a change. It must go with those that are laid.</summary>
    public void Lay(Change change)
    {
        foreach (Rejoined join in change.Patch.Inside)
            _inside[join.Position] = join.Partner;
        foreach (Rejoined join in change.Patch.Outside)
            _outside[join.Position] = join.Partner;
        foreach (PartDiffers part in change.Differences.OfType<PartDiffers>().Where(p => p.Changed.Shape.IsInterface))
            _shapes[part.Part] = part.Changed.Shape;
        _laid.Push(change);
    }

    /// <summary>Lifts the change that was laid last.</summary>
    public void Lift()
    {
        Change change = _laid.Pop();
        foreach (Rejoined join in change.Patch.Inside)
            _inside[join.Position] = _context.Graph.Inside[join.Position];
        foreach (Rejoined join in change.Patch.Outside)
            _outside[join.Position] = _context.Graph.Outside[join.Position];
        foreach (PartDiffers part in change.Differences.OfType<PartDiffers>())
            _shapes.Remove(part.Part);
    }

    /// <summary>The positions from a lane to where its light comes out, both included.</summary>
    public List<int> Way(int lane)
    {
        var way = new List<int> { lane };
        for (int p = _outside[lane]; p >= 0; p = _outside[p])
        {
            way.Add(p);
            if ((p = _inside[p]) < 0)
                break;
            way.Add(p);
        }

        return way;
    }

    /// <summary>Where the light of a lane comes out.</summary>
    public int EndOf(int lane)
    {
        int end = lane;
        for (int p = _outside[lane]; p >= 0; p = _outside[p])
        {
            end = p;
            if ((p = _inside[p]) < 0)
                break;
            end = p;
        }

        return end;
    }

    /// <summary>What is wrong with where a lane comes out.</summary>
    public LaneFault FaultOf(int lane) => FaultOf(lane, EndOf(lane));

    /// <summary>A lane that the changes lead wrong and that was not wrong in that way before; -1 when there is none.</summary>
    public int FirstLedWrong()
    {
        _now++;
        _links.Clear();
        foreach (Change change in _laid)
        {
            foreach (Rejoined join in change.Patch.Inside)
            {
                if (LaneLedWrong(join.Position) is >= 0 and int lane)
                    return lane;
            }

            foreach (Rejoined join in change.Patch.Outside)
            {
                if (LaneLedWrong(join.Position) is >= 0 and int lane)
                    return lane;
            }

            foreach (PartDiffers part in change.Differences.OfType<PartDiffers>().Where(p => p.Changed.Shape.IsInterface))
            {
                int first = _context.Graph.FirstPositionOf(part.Part);
                for (int p = first; p < first + part.Changed.Shape.PositionCount; p++)
                {
                    if (LaneLedWrong(p) is >= 0 and int lane)
                        return lane;
                }
            }
        }

        foreach (int link in _links)
        {
            if (_context.Check.Outcomes.All[link].IsProven && LaneOffLink(link) is >= 0 and int lane)
                return lane;
        }

        return -1;
    }

    /// <summary>The first lane of a link that does not come out, heard, at the link's other end; -1 when the link is proven.</summary>
    public int LaneOffLink(int link)
    {
        Link meant = Plant.Links[link];
        return LaneOff(meant.From, meant.To, onlyMissing: false) is >= 0 and int lane ? lane : LaneOff(meant.To, meant.From, onlyMissing: false);
    }

    /// <summary>The first lane of a link that comes out at an interface's lane elsewhere than at the link's other end; -1 when none does.</summary>
    public int LaneMissingLink(int link)
    {
        Link meant = Plant.Links[link];
        return LaneOff(meant.From, meant.To, onlyMissing: true) is >= 0 and int lane ? lane : LaneOff(meant.To, meant.From, onlyMissing: true);
    }

    private int LaneOff(LinkEnd from, LinkEnd to, bool onlyMissing)
    {
        foreach (Lane lane in MeantEnds.LanesOf(Plant, from))
        {
            int start = _context.Graph.PositionOf(from.Port, lane.Position), end = EndOf(start);
            int farLane = LaneIndexAt(end);
            PortRef port = _context.Graph.PlaceOf(end).Port;
            bool lands = farLane >= 0 && port != from.Port && end != start;
            bool right = lands && _meant.EndOf(port, ShapeOf(port.Part).Lanes[farLane]) == to;
            if (onlyMissing ? lands && !right : !right || !Meet(start, end).IsHeard)
                return start;
        }

        return -1;
    }

    /// <summary>Walks the strand of a position once and judges the lanes at its ends; the one that is led wrong, or -1.</summary>
    private int LaneLedWrong(int position)
    {
        if (_seen[position] == _now)
            return -1;
        int one = Walk(position, inside: true), other = Walk(position, inside: false);
        return Judge(one, other) is >= 0 and int lane ? lane : Judge(other, one);
    }

    /// <summary>The end of a strand in one direction from a position; the position itself where it comes round to it.</summary>
    private int Walk(int from, bool inside)
    {
        int p = from;
        while (true)
        {
            _seen[p] = _now;
            int next = inside ? _inside[p] : _outside[p];
            if (next < 0 || next == from)
                return p;
            p = next;
            inside = !inside;
        }
    }

    private int Judge(int lane, int end)
    {
        if (LaneIndexAt(lane) < 0)
            return -1;
        PortRef port = _context.Graph.PlaceOf(lane).Port;
        foreach (int link in _meant.LinksAt(port))
            _links.Add(link);
        LaneFault fault = FaultOf(lane, end);
        return fault == LaneFault.None || WasSo(lane, end, fault) ? -1 : lane;
    }

    /// <summary>True when a finding says this of the lane already, or when whoever judges a fault of this sort may think otherwise.</summary>
    private bool WasSo(int lane, int end, LaneFault fault) => fault switch
    {
        LaneFault.Dark => Knows("P03", lane) || _context.Check.IsRefused(_context.Graph.PlaceOf(end).Port),
        LaneFault.Same => Knows("P01", lane),
        LaneFault.Own => Knows("P04", lane),
        LaneFault.Foreign => Knows("D06", lane),
        _ => Knows("P06", lane) || Knows("P07", lane),
    };

    private bool Knows(string code, int lane) => _known.Knows(new Subject(Subjects.GroupOf(code), SubjectKind.Lane, lane));

    private LaneFault FaultOf(int lane, int end)
    {
        if (end == lane)
            return LaneFault.None;
        Landing landing = Meet(lane, end);
        PortRef port = _context.Graph.PlaceOf(lane).Port;
        if (landing.EndPort == port)
            return LaneFault.Own;
        if (!landing.ReachesLane)
            return landing.Lane.Direction == LaneDirection.Receive ? LaneFault.None : LaneFault.Dark;
        if (landing.MeetsSame)
            return LaneFault.Same;
        if (Plant.Networks.Count > 1 && Plant.NetworkOf(port) is >= 0 and int here && Plant.NetworkOf(landing.EndPort) is >= 0 and int there && here != there)
            return LaneFault.Foreign;
        return landing.IsHeard ? LaneFault.None : LaneFault.Unheard;
    }

    /// <summary>What a lane meets, with the transceivers as they are changed.</summary>
    private Landing Meet(int lane, int end)
    {
        PortRef port = _context.Graph.PlaceOf(lane).Port, far = _context.Graph.PlaceOf(end).Port;
        Shape shape = ShapeOf(port.Part), farShape = ShapeOf(far.Part);
        PortShape near = shape.Ports[port.Port], other = farShape.Ports[far.Port];
        return new Landing(lane, shape, LaneIndexAt(lane), -1, end, far, farShape, LaneIndexAt(end))
        {
            Application = near.Application,
            Links = near.Links,
            EndApplication = other.Application,
            EndLinks = other.Links,
        };
    }

    private Shape ShapeOf(int part) => _shapes.Count > 0 && _shapes.TryGetValue(part, out Shape? changed) ? changed : Plant.Parts[part].Shape;

    private int LaneIndexAt(int position)
    {
        if (_shapes.Count == 0)
            return _context.Graph.LaneIndexAt(position);
        int part = _context.Graph.PartOf(position);
        return ShapeOf(part).LaneIndexAt(position - _context.Graph.FirstPositionOf(part));
    }
}
