using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>A stretch of laid cable with what it ends in, from one duplex front port to the other.</summary>
/// <param name="Hops">Its parts in order.</param>
/// <param name="Network">The network that its ports are of, or null.</param>
/// <param name="Outlet">The outlet that it ends at, or null where it ends in a room.</param>
internal sealed record FixedRun(IReadOnlyList<WayHop> Hops, string? Network, string? Outlet)
{
    public PortRef Start => Hops[0].In;

    public PortRef End => Hops[^1].Out;
}

/// <summary>A leg of a laid cable with array connectors.</summary>
/// <param name="Near">One end of it.</param>
/// <param name="Far">The other.</param>
/// <param name="Outlet">The outlet that it ends at, or null.</param>
internal sealed record FreeLeg(PortRef Near, PortRef Far, string? Outlet);

/// <summary>What of a plant is free for new links once some of its links are gone.</summary>
internal sealed class FreePlaces
{
    private readonly CheckReport _report;
    private readonly IReadOnlyDictionary<int, string> _outlets;
    private readonly HashSet<PortRef> _used;
    private readonly Dictionary<string, List<FixedRun>> _runs = [];
    private readonly Dictionary<PortRef, Joint> _joints = [];

    /// <param name="report">The plant, proven.</param>
    /// <param name="stays">The joints that stay when cords of links that go are taken out.</param>
    /// <param name="used">The ports that links that stay pass.</param>
    /// <param name="outlets">For parts at outlets that have a cable of their own the outlet.</param>
    public FreePlaces(CheckReport report, IEnumerable<Joint> stays, IEnumerable<PortRef> used, IReadOnlyDictionary<int, string> outlets)
    {
        (_report, _outlets) = (report, outlets);
        _used = [.. used];
        foreach (Joint joint in stays)
        {
            foreach (PortRef port in joint.Ports)
                _joints[port] = joint;
        }

        FindRuns();
        FindLegs();
    }

    /// <summary>The legs that no link that stays passes, in the order of the plant.</summary>
    public List<FreeLeg> Legs { get; } = [];

    private Plant Plant => _report.Traced.Plant;

    /// <summary>The runs of a kind, those in use among them.</summary>
    public IReadOnlyList<FixedRun> Runs(string kind) => _runs.GetValueOrDefault(kind) ?? [];

    /// <summary>True when nothing is plugged in at a port and no link that stays passes it.</summary>
    public bool IsFree(PortRef port) => !_used.Contains(port) && !_joints.ContainsKey(port);

    /// <summary>True when no link that stays ends at the run and it was not given away.</summary>
    public bool IsFree(FixedRun run) => IsFree(run.Start) && IsFree(run.End);

    /// <summary>True when the cables of a run are as long as a way in millimetres.</summary>
    public bool IsLong(FixedRun run, long way) => run.Hops.Sum(h => PartFacts.IsLaid(Plant.Parts[h.Part]) ? Plant.Parts[h.Part].Length?.Millimetres ?? 0 : 0) >= way;

    /// <summary>Gives ports away.</summary>
    public void Take(IEnumerable<PortRef> ports) => _used.UnionWith(ports);

    /// <summary>True when links that stay, or that were given it, pass a port.</summary>
    public bool IsUsed(PortRef port) => _used.Contains(port);

    /// <summary>What a run is, in words that are equal for runs that do the same between the same rooms.</summary>
    public static string Kind(Plant plant, IReadOnlyList<WayHop> hops) => string.Join(" | ", hops.Select(h =>
    {
        Part part = plant.Parts[h.Part];
        PortShape[] arrays = [.. part.Shape.Ports.Where(p => p.Base > 0).Take(1)];
        string array = arrays.Length == 0 ? "" : $"{arrays[0].Base}";
        return part.Shape.IsCable ? $"{PartFacts.Type(part)} {array} {part.Fibre?.Name}" : $"{part.Kind} {PartFacts.Type(part)} {array} {arrays.FirstOrDefault()?.Keys} {part.Room}";
    }));

    /// <summary>The room that an end of a leg is in: that of what it is mated to, or of the panel between.</summary>
    public static string? RoomOf(Plant plant, PortRef port, Func<PortRef, Joint?> at)
    {
        if (at(port) is not { } joint)
            return null;
        if (joint.Through is { } adapter)
            return plant.Parts[adapter.Part].Room;
        PortRef other = joint.A == port ? joint.B : joint.A;
        return other == Joint.Nothing ? null : plant.Parts[other.Part].Room;
    }

    /// <summary>The joint at a port that stays, or null.</summary>
    public Joint? At(PortRef port) => _joints.TryGetValue(port, out Joint joint) ? joint : null;

    private void FindRuns()
    {
        var seen = new HashSet<(PortRef, PortRef)>();
        for (int s = 0; s < _report.Traced.Strands.Count; s++)
        {
            foreach (IReadOnlyList<WayHop> hops in LinkWay.FixedRuns(Plant, LinkWay.HopsOf(_report.Traced, s)))
            {
                PortRef start = hops[0].In, end = hops[^1].Out;
                if (!IsDuplex(start) || !IsDuplex(end) || !seen.Add((start, end)) || !seen.Add((end, start)))
                    continue;
                Add(hops);
                Add(LinkWay.Reversed(hops));
            }
        }
    }

    private void Add(IReadOnlyList<WayHop> hops)
    {
        string kind = Kind(Plant, hops);
        if (!_runs.TryGetValue(kind, out List<FixedRun>? alike))
            _runs[kind] = alike = [];
        int network = Plant.NetworkOf(hops[0].In);
        alike.Add(new FixedRun(hops, network < 0 ? null : Plant.Networks[network].Name, _outlets.GetValueOrDefault(hops[^1].Part)));
    }

    private void FindLegs()
    {
        for (int part = 0; part < Plant.Parts.Count; part++)
        {
            Part cable = Plant.Parts[part];
            if (!PartFacts.IsLaid(cable) || cable.Kind != "trunk")
                continue;
            for (int port = 0; port + 1 < cable.Shape.Ports.Count; port += 2)
            {
                PortRef near = new(part, port), far = new(part, port + 1);
                if (!IsUsed(near))
                    Legs.Add(new FreeLeg(near, far, _outlets.GetValueOrDefault(part)));
            }
        }
    }

    private bool IsDuplex(PortRef port) => port != Joint.Nothing && Plant.Port(port).Face.Family == ConnectorFamily.Duplex;
}
