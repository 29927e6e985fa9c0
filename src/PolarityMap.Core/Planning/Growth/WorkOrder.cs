using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>
/// The steps from one plant to another: first what touches nothing live, then the cut-overs one by one, at last what is taken
/// out. Every plant on the way is built, traced and checked, while joints are open and when the step is done; of a large one
/// that which the step's joints are connected with, since light in the rest goes on as it did.
/// </summary>
/// <param name="difference">What is to be done.</param>
/// <param name="title">The title of the plants on the way.</param>
/// <param name="practice">What they go by.</param>
public sealed class WorkOrder(GrowthDifference difference, PlantTitle title, PlantPractice practice)
{
    /// <summary>Plants of more links are traced in part at each step.</summary>
    private const int MostLinksTracedWhole = 500;

    private readonly List<GrowthStep> _steps = [];
    private readonly HashSet<Joint> _joints = [.. difference.Before];
    private readonly HashSet<int> _parts = [.. Enumerable.Range(0, difference.OldParts)];
    private readonly Dictionary<int, HashSet<Joint>> _byPart = [];
    private readonly Dictionary<Joint, int> _order = [];
    private readonly HashSet<int> _onNew = [];
    private readonly HashSet<int> _ended = [];
    private HashSet<Joint>[] _ways = [];
    private ILookup<Joint, int> _carries = Array.Empty<int>().ToLookup(_ => default(Joint));
    private Link[] _oldLinks = [];
    private HashSet<Joint>[] _oldWays = [];
    private List<int> _live = [];

    /// <summary>The steps.</summary>
    /// <param name="before">The existing plant, all of its links proven.</param>
    /// <param name="after">The plant afterwards, all of its links proven, with the links of <see cref="GrowthDifference.Links"/> that have ends there, in their order.</param>
    public IReadOnlyList<GrowthStep> Steps(CheckReport before, Stage after)
    {
        _oldLinks = [.. before.Traced.Plant.Links];
        HashSet<Joint>[] oldWays = _oldWays = [.. LinkWay.Of(before).Select(w => w.Matings.Select(m => Joint.Of(m, p => p)).ToHashSet())], newWays = after.Ways();
        int[] there = [.. Enumerable.Range(0, difference.Links.Count).Where(l => difference.Links[l].After is not null)];
        _ways = new HashSet<Joint>[difference.Links.Count];
        for (int i = 0; i < there.Length; i++)
            _ways[there[i]] = newWays[i];
        _carries = there.SelectMany(l => _ways[l].Select(j => (j, l))).ToLookup(p => p.j, p => p.l);
        _live = [.. Enumerable.Range(0, difference.Links.Count).Where(l => difference.Links[l].Before >= 0)];

        var was = difference.Before.ToHashSet();
        var will = difference.After.ToHashSet();
        Joint[] opened = [.. difference.Before.Where(j => !will.Contains(j))], made = [.. difference.After.Where(j => !was.Contains(j))];
        var over = there.Where(l => difference.Links[l] is { IsKept: false, Before: >= 0 }).Select(l => (l, oldWays[difference.Links[l].Before], _ways[l])).ToList();
        HashSet<Joint>[] ended = [.. difference.Links.Where(l => l.After is null).Select(l => oldWays[l.Before])];
        var lit = there.Where(l => !difference.Links[l].IsKept).Select(l => (_ways[l], _ways[l].Where(IsAtInterface).ToHashSet())).ToList();
        foreach (Joint joint in difference.Before.Concat(difference.After))
            _order.TryAdd(joint, _order.Count);
        foreach (Joint joint in difference.Before)
            Plug(joint);
        HashSet<PortRef> held = [.. difference.Before.Where(j => will.Contains(j) && IsAtInterface(j)).SelectMany(j => j.Ports).Where(p => PartFacts.IsCord(difference.Parts[p.Part])).Select(p => p with { Port = p.Port ^ 1 })];
        var cuts = new CutOvers(opened, made, over, ended, lit, held.Contains);
        var switches = difference.Links.Where(l => l.After is not null).Select(l => l.After!.From.Port.Part).ToHashSet();
        int[] laid = [.. difference.Added.Where(p => !PartFacts.IsCord(difference.Parts[p]) && (!difference.Parts[p].Shape.IsInterface || switches.Contains(p)))];
        Do(StepKind.Add, cuts.First, laid);
        foreach (CutOver cut in cuts.Groups)
            Do(StepKind.CutOver, cut, []);
        Do(StepKind.Clear, new CutOver([], cuts.Last, []), [], last: true);
        return _steps;
    }

    private bool IsAtInterface(Joint joint) => difference.Parts[joint.A.Part].Shape.IsInterface || (!joint.IsOpen && difference.Parts[joint.B.Part].Shape.IsInterface);

    /// <summary>The joints of a link, as it was and as it will be.</summary>
    private IEnumerable<Joint> Ways(int link) => (difference.Links[link].Before is >= 0 and int before ? _oldWays[before] : []).Concat(_ways[link] ?? []);

    private string? RoomOf(Joint joint) => joint.Ports.Select(p => difference.Parts[p.Part]).Where(p => !p.Shape.IsCable).Select(p => p.Room).FirstOrDefault();

    private void Do(StepKind kind, CutOver cut, IEnumerable<int> laid, bool last = false)
    {
        int[] come = [.. cut.Made.SelectMany(j => j.Ports).Select(p => p.Part).Concat(laid).Where(p => !_parts.Contains(p)).Distinct().Order()];
        if (cut.Opened.Count + cut.Made.Count + come.Length == 0 && (!last || difference.TakenOut.All(p => !_parts.Contains(p))))
            return;
        int[] wereLive = [.. _live];
        bool[] litMeanwhile = [.. wereLive.Select(_ => true)];
        HashSet<int>? touched = wereLive.Length > MostLinksTracedWhole && kind == StepKind.CutOver ? Connected(cut) : null;
        foreach (Joint joint in cut.Opened)
            Unplug(joint);
        if (cut.Opened.Count > 0)
            litMeanwhile = Proven(wereLive, touched, out _);
        foreach (Joint joint in cut.Made)
            Plug(joint);
        _parts.UnionWith(come);
        touched?.UnionWith(come);
        HashSet<int> unplugged = [.. cut.Opened.SelectMany(j => j.Ports).Select(p => p.Part)];
        int[] go = [.. difference.TakenOut.Where(p => _parts.Contains(p) && (last || (unplugged.Contains(p) && _byPart[p].Count == 0)))];
        _parts.ExceptWith(go);

        _onNew.UnionWith(cut.Made.SelectMany(j => _carries[j]).Distinct().Where(l => difference.Links[l] is { IsKept: false, After: not null } && !_onNew.Contains(l) && _ways[l].IsSubsetOf(_joints)).ToArray());
        HashSet<PortRef> needed = [.. cut.Made.SelectMany(j => j.Ports)];
        bool[] first = [.. cut.Opened.Select(j => kind != StepKind.CutOver || IsAtInterface(j) || j.Ports.Any(needed.Contains))];
        _ended.UnionWith(wereLive.Where((l, i) => !litMeanwhile[i] && difference.Links[l].After is null));
        _live = [.. Enumerable.Range(0, difference.Links.Count).Where(l => !_ended.Contains(l) && (difference.Links[l].Before >= 0 || _onNew.Contains(l)))];
        bool[] proven = Proven(_live, touched, out CheckReport report);
        _steps.Add(new GrowthStep(_steps.Count + 1, kind)
        {
            Opened = [.. cut.Opened.Where((_, i) => first[i]).OrderBy(j => !IsAtInterface(j))],
            Made = [.. cut.Made.OrderBy(IsAtInterface).ThenBy(j => kind == StepKind.Add ? RoomOf(j) : null, StringComparer.Ordinal)],
            Cleared = [.. cut.Opened.Where((_, i) => !first[i])],
            Held = [.. wereLive.Where((_, i) => !litMeanwhile[i]).SelectMany(l => Ways(l)).Where(j => IsAtInterface(j) && _joints.Contains(j) && !cut.Made.Contains(j)).Distinct()],
            PartsIn = come,
            PartsOut = go,
            Dark = [.. wereLive.Where((l, i) => !litMeanwhile[i] && difference.Links[l].After is not null)],
            Ended = [.. wereLive.Where((l, i) => !litMeanwhile[i] && difference.Links[l].After is null)],
            Up = [.. _live.Except(wereLive)],
            Live = _live,
            Proven = proven.Count(p => p),
            Errors = [.. report.Findings.Where(f => f.Rule.Severity == Severity.Error).Select(f => $"{f.Rule.Code} {f.Message}")],
        });
    }

    private void Plug(Joint joint)
    {
        _joints.Add(joint);
        foreach (PortRef port in joint.Ports)
        {
            if (!_byPart.TryGetValue(port.Part, out HashSet<Joint>? of))
                _byPart[port.Part] = of = [];
            of.Add(joint);
        }
    }

    private void Unplug(Joint joint)
    {
        _joints.Remove(joint);
        foreach (PortRef port in joint.Ports)
            _byPart[port.Part].Remove(joint);
    }

    /// <summary>The parts that a cut-over's joints are connected with, before or after it, up to the interfaces.</summary>
    private HashSet<int> Connected(CutOver cut)
    {
        var connected = new HashSet<int>();
        var open = new Stack<int>(cut.Opened.Concat(cut.Made).SelectMany(j => j.Ports).Select(p => p.Part));
        while (open.TryPop(out int part))
        {
            if (!connected.Add(part) || difference.Parts[part].Shape.IsInterface || !_byPart.TryGetValue(part, out HashSet<Joint>? joints))
                continue;
            foreach (int next in joints.SelectMany(j => j.Ports).Select(p => p.Part))
                open.Push(next);
        }

        return connected;
    }

    /// <summary>For each link whether it is proven, traced in what is connected, or everywhere; a link that nothing of it touches is as it was.</summary>
    private bool[] Proven(IReadOnlyList<int> links, HashSet<int>? connected, out CheckReport report)
    {
        Link[] ends = [.. links.Select(l => _onNew.Contains(l) || difference.Links[l].Before < 0 ? difference.Links[l].After! : _oldLinks[difference.Links[l].Before])];
        bool[] isTraced = [.. ends.Select(e => connected is null || (IsIn(e.From, connected) && IsIn(e.To, connected)))];
        IEnumerable<Joint> joints = connected is null ? _joints : connected.Where(_byPart.ContainsKey).SelectMany(p => _byPart[p]).Where(j => j.Ports.All(p => connected.Contains(p.Part))).Distinct();
        Stage stage = Stage.Of(
            difference, title, practice, (connected is null ? _parts : _parts.Where(connected.Contains)).Order(), joints.OrderBy(j => _order[j]), ends.Where((_, i) => isTraced[i]));
        report = stage.Report;
        var traced = new Queue<bool>(stage.Proven());
        return [.. isTraced.Select(t => !t || traced.Dequeue())];
    }

    /// <summary>True when what is plugged in at a link's end is connected, or nothing is and the interface itself is touched.</summary>
    private bool IsIn(LinkEnd end, HashSet<int> connected)
    {
        if (!connected.Contains(end.Port.Part))
            return false;
        Joint[] at = [.. _byPart.GetValueOrDefault(end.Port.Part, []).Where(j => j.Ports.Contains(end.Port))];
        return at.Length == 0 || at.All(j => j.Ports.All(p => connected.Contains(p.Part)));
    }
}
