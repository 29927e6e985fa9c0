using PolarityMap.Core.Optics;
using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>One link that the brief asks for: a network at an outlet.</summary>
/// <param name="Network">Index of the network in the brief.</param>
/// <param name="Group">Index of the group of outlets.</param>
/// <param name="Outlet">Which outlet of the group, from 0.</param>
/// <param name="Number">Which of the outlet's links on the network, from 0.</param>
internal sealed record Service(int Network, int Group, int Outlet, int Number)
{
    /// <summary>The link of the existing plant that it goes on from, or -1.</summary>
    public int Before { get; set; } = -1;

    /// <summary>True when that link serves as it is.</summary>
    public bool IsKept { get; set; }

    /// <summary>Every link that a brief asks for.</summary>
    public static List<Service> Of(Brief brief)
    {
        var services = new List<Service>();
        for (int group = 0; group < brief.Outlets.Count; group++)
        {
            BriefOutlets outlets = brief.Outlets[group];
            for (int outlet = 0; outlet < outlets.Name.Count; outlet++)
            {
                for (int network = 0; network < outlets.Links.Count; network++)
                {
                    for (int number = 0; number < outlets.Links[network]; number++)
                        services.Add(new Service(network, group, outlet, number));
                }
            }
        }

        return services;
    }

    /// <summary>What it is for.</summary>
    public Application Application(Brief brief) => brief.Networks[Network].Application;

    /// <summary>The name of its outlet.</summary>
    public string OutletName(Brief brief) => brief.Outlets[Group].Name.At(Outlet);

    /// <summary>The name of the device at its outlet.</summary>
    public string Device(Brief brief) => DeviceName(brief, Network, OutletName(brief));

    /// <summary>The name that the planner gives the device of a network at an outlet.</summary>
    public static string DeviceName(Brief brief, int network, string outlet) => $"{brief.Networks[network].Label}-{outlet}";
}

/// <summary>Finds for each link that a brief asks for the existing link that it goes on from.</summary>
internal sealed class ServiceMatch(Brief brief, Plant plant, IReadOnlyList<LinkWay> ways)
{
    private readonly bool[] _taken = new bool[ways.Count];

    /// <summary>
    /// First links that end at a device of the planner's name or behind a part with the outlet's name, then those of the same
    /// network that end in the outlet's room, in the order of the plant.
    /// </summary>
    public void Match(IReadOnlyList<Service> services)
    {
        ByName(services);
        var left = services.Where(s => s.Before < 0).ToList();
        for (int link = 0; link < ways.Count && left.Count > 0; link++)
        {
            if (_taken[link])
                continue;
            Service? next = left.Find(s => IsOn(link, s) && IsIn(link, brief.Rooms[brief.Outlets[s.Group].Room].Name));
            if (next is null)
                continue;
            next.Before = link;
            _taken[link] = true;
            left.Remove(next);
        }
    }

    /// <summary>The part at the outlet's end of a link.</summary>
    public int Device(int link) => ways[link].Link.To.Port.Part;

    private void ByName(IReadOnlyList<Service> services)
    {
        var byPart = new Dictionary<string, List<int>>();
        for (int link = 0; link < ways.Count; link++)
        {
            foreach (string name in ways[link].Hops.Select(h => plant.Parts[h.Part].Name).Distinct())
            {
                if (!byPart.TryGetValue(name, out List<int>? through))
                    byPart[name] = through = [];
                through.Add(link);
            }
        }

        foreach (bool byOutlet in new[] { false, true })
        {
            foreach (Service service in services.Where(s => s.Before < 0))
            {
                if (!byPart.TryGetValue(byOutlet ? service.OutletName(brief) : service.Device(brief), out List<int>? through))
                    continue;
                int found = through.FindIndex(l => !_taken[l] && IsOn(l, service));
                if (found < 0)
                    continue;
                service.Before = through[found];
                _taken[through[found]] = true;
            }
        }
    }

    private bool IsOn(int link, Service service)
    {
        int of = plant.NetworkOf(ways[link].Link.From.Port);
        return of >= 0 ? plant.Networks[of].Name == brief.Networks[service.Network].Name : brief.Networks.Count == 1;
    }

    private bool IsIn(int link, string room) =>
        plant.Parts[ways[link].Link.To.Port.Part].Room == room || plant.Parts[ways[link].Link.From.Port.Part].Room == room;
}

/// <summary>Judges whether a link that is there serves as it is.</summary>
internal static class ServiceKeep
{
    public static bool Serves(Brief brief, PlanCandidate candidate, Plant plant, LinkWay way, Service service)
    {
        Application application = service.Application(brief);
        if (way.Link.From.Lane > 0 || way.Link.To.Lane > 0 || !Runs(plant, way.Link.From.Port, application) || !Runs(plant, way.Link.To.Port, application))
            return false;
        BriefOutlets outlets = brief.Outlets[service.Group];
        BriefRoom room = brief.Rooms[outlets.Room];
        if (!IsIn(plant, way.Link.To.Port, room.Name) || !IsIn(plant, way.Link.From.Port, brief.Rooms[room.From].Name))
            return false;
        long needed = (room.Distance?.Millimetres ?? 0) + (outlets.Distance?.Millimetres ?? 0), laid = 0;
        foreach (Part part in way.Hops.Select(h => plant.Parts[h.Part]))
        {
            if (part.Fibre is { } fibre && (fibre.Core != brief.Fibre.Core || fibre.Rank < brief.Fibre.Rank))
                return false;
            if (brief.Method is not null && !IsOfMethod(candidate, part))
                return false;
            if (brief.Base is not null && part.Shape.Ports.Any(p => p.Base > 0 && p.Base != candidate.Base && !part.Shape.IsInterface))
                return false;
            if (!PartFacts.IsLaid(part))
                continue;
            laid += part.Length?.Millimetres ?? 0;
        }

        return laid >= needed;
    }

    private static bool IsIn(Plant plant, PortRef end, string room) => plant.Parts[end.Part].Room is not { } there || there == room;

    /// <summary>True for a trunk, cassette or panel as the method has it, and for everything else.</summary>
    private static bool IsOfMethod(PlanCandidate candidate, Part part)
    {
        if (PartFacts.IsLaid(part))
            return part.Values?.Word("type") is not { } map || map == candidate.Method.TrunkFor(ArrayOf(part, candidate));
        if (part.Shape.IsInterface || part.Shape.IsCable)
            return true;
        if (part.Values?.WiringList("wiring") is null && part.Values?.Word("wiring") is { } wiring && wiring != candidate.Method.NearFor(ArrayOf(part, candidate)) && wiring != candidate.Method.FarFor(ArrayOf(part, candidate)))
            return false;
        return part.Shape.Ports.All(p => p.Keys is not { } keys || keys == candidate.Method.Keys);
    }

    private static ArrayBase ArrayOf(Part part, PlanCandidate candidate) => part.Shape.Ports.Max(p => p.Base) is var fibres && PlanCandidate.Bases.Contains(fibres) ? ArrayBase.Of(fibres) : candidate.Array;

    private static bool Runs(Plant plant, PortRef port, Application application) => plant.Port(port).Application == application;
}
