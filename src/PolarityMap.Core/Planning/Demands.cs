using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Planning;

/// <summary>
/// Where trunks of one network end, and what they serve there: a room with its outlets, or outlets that each have trunks of
/// their own. All landings of a set are alike.
/// </summary>
/// <param name="Network">Index of the network in the brief.</param>
/// <param name="Room">Index of the room.</param>
/// <param name="Way">The way from the equipment room to each landing.</param>
/// <param name="Requirement">The key of the brief that gives the way.</param>
/// <param name="Landings">How many landings.</param>
/// <param name="LinksEach">Links at each landing.</param>
/// <param name="Outlets">The outlets served, in order, and for each group its links per outlet.</param>
/// <param name="OfOutlet">The names of the outlets where each is a landing; null where the room is one.</param>
internal sealed record LandingSet(
    int Network, int Room, Length Way, string Requirement, int Landings, int LinksEach, IReadOnlyList<BriefOutlets> Outlets, PlannedName? OfOutlet)
{
    public int Links => Landings * LinksEach;

    /// <summary>True where the trunks end in a zone box and go on to the outlets.</summary>
    public bool IsGathered { get; init; }

    public SegmentKey Key => new(Network, Room, IsGathered, OfOutlet?.At(0));
}

/// <summary>Divides the outlets of a brief into sets of landings.</summary>
internal static class Demands
{
    /// <summary>What one network has to reach from one equipment room, in the order of the brief.</summary>
    public static List<LandingSet> Of(Brief brief, int network, int from)
    {
        var sets = new List<LandingSet>();
        for (int room = 0; room < brief.Rooms.Count; room++)
        {
            BriefRoom there = brief.Rooms[room];
            if (there.From != from)
                continue;
            Length way = there.Distance ?? default;
            string requirement = $"rooms.{there.Name}.distance";
            BriefOutlets[] served = [.. brief.Outlets.Where(o => o.Room == room && o.Links[network] > 0)];
            Add(brief, sets, new LandingSet(network, room, way, requirement, 1, 0, [.. served.Where(o => o.Distance is null)], null));
            if (brief.Separation == SeparationPolicy.Gathered)
            {
                Add(brief, sets, new LandingSet(network, room, way, requirement, 1, 0, [.. served.Where(o => o.Distance is not null)], null) { IsGathered = true });
                continue;
            }

            foreach (BriefOutlets outlets in brief.Outlets.Where(o => o.Room == room && o.Distance is not null))
            {
                if (outlets.Links[network] == 0 && !brief.Segments.ContainsKey(new SegmentKey(network, room, false, outlets.Name.At(0))))
                    continue;
                long whole = way.Millimetres + outlets.Distance!.Value.Millimetres;
                sets.Add(new LandingSet(
                    network, room, Length.FromMillimetres(Math.Min(whole, Length.MaxMillimetres)), $"outlets.{outlets.Name}.distance",
                    outlets.Name.Count, outlets.Links[network], [outlets], outlets.Name));
            }
        }

        return sets;
    }

    private static void Add(Brief brief, List<LandingSet> sets, LandingSet set)
    {
        int links = set.Outlets.Sum(o => o.Name.Count * o.Links[set.Network]);
        if (links > 0 || brief.Segments.ContainsKey(set.Key))
            sets.Add(set with { LinksEach = links });
    }
}
