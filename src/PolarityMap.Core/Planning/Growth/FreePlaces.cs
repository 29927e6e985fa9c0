using PolarityMap.Core.Checks;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;
using PolarityMap.Core.Strands;

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
    private readonly Brief _brief;
    private readonly CheckReport _report;
    private readonly IReadOnlyDictionary<int, string> _outlets;
    private readonly HashSet<PortRef> _used;
    private readonly Dictionary<string, List<FixedRun>> _runs = [];
    private readonly Dictionary<PortRef, Joint> _joints = [];

    /// <param name="brief">The whole brief.</param>
    /// <param name="report">The plant, proven.</param>
    /// <param name="stays">The joints that stay when cords of links that go are taken out.</param>
    /// <param name="used">The ports that links that stay pass.</param>
    /// <param name="outlets">For parts at outlets that have a cable of their own the outlet.</param>
    public FreePlaces(Brief brief, CheckReport report, IEnumerable<Joint> stays, IEnumerable<PortRef> used, IReadOnlyDictionary<int, string> outlets)
    {
        (_brief, _report, _outlets) = (brief, report, outlets);
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

    /// <summary>The runs of all kinds, told from either end.</summary>
    public IEnumerable<FixedRun> AllRuns => _runs.Values.SelectMany(r => r);

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

    /// <summary>
    /// What a run is, in words that are equal for runs that serve alike: between the same rooms, over fibre of one class, with or
    /// without A and B changing places. Where a method or a base is asked for, its parts are the same as well.
    /// </summary>
    public static string Kind(TracedPlant traced, IReadOnlyList<WayHop> hops, Brief brief)
    {
        Plant plant = traced.Plant;
        string ends = $"{plant.Parts[hops[0].Part].Room} | {plant.Parts[hops[^1].Part].Room}", fibre = string.Join(' ', hops.Select(h => plant.Parts[h.Part].Fibre?.Name).OfType<string>().Distinct());
        string parts = brief.Method is null && brief.Base is null ? "" : string.Join(" | ", hops.Select(h => plant.Parts[h.Part]).Select(part =>
        {
            PortShape? array = part.Shape.Ports.FirstOrDefault(p => p.Base > 0);
            return $"{(brief.Method is null ? part.Kind : PartFacts.Type(part))} {(brief.Base is null ? 0 : array?.Base)} {(part.Shape.IsCable ? null : array?.Keys)}";
        }));
        return $"{ends} | {fibre} | {(IsCrossed(traced, hops) ? "A to B" : "A to A")} | {parts}";
    }

    /// <summary>True when the first position of the duplex port at the one end comes to the second at the other.</summary>
    private static bool IsCrossed(TracedPlant traced, IReadOnlyList<WayHop> hops)
    {
        foreach (int position in traced.Strands[traced.StrandOf(traced.Graph.PositionOf(hops[0].In, 1))])
        {
            if (traced.Graph.PlaceOf(position) is var place && place.Port == hops[^1].Out)
                return place.Position != 1;
        }

        return false;
    }

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
        string kind = Kind(_report.Traced, hops, _brief);
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
