using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Planning;

/// <summary>What the checker finds in a plant that was built to a brief, told of the requirement that brings it about.</summary>
internal static class FindingRefusals
{
    /// <summary>One refusal for each requirement and rule, in the order of the findings.</summary>
    public static IReadOnlyList<Refusal> Of(Brief brief, PlanCandidate candidate, CheckReport report)
    {
        var found = new Dictionary<(string Requirement, string Code), (Finding First, int Count)>();
        var order = new List<(string Requirement, string Code)>();
        foreach (Finding finding in report.Findings)
        {
            (string, string) key = (Requirement(brief, report.Traced.Plant, finding), finding.Rule.Code);
            if (!found.TryGetValue(key, out (Finding First, int Count) known))
                order.Add(key);
            found[key] = (known.First ?? finding, known.Count + 1);
        }

        return [.. order.Select(key => new Refusal(key.Requirement, RefusalCode.Finding, Words(candidate, found[key].First, found[key].Count)) { Finding = key.Code })];
    }

    private static string Words(PlanCandidate candidate, Finding first, int count) =>
        $"{first.Rule.Code} {first.Rule.Title} with {candidate}: {first.Message}{(count > 1 ? $", and {count - 1} more like it" : "")}";

    private static string Requirement(Brief brief, Plant plant, Finding finding) => finding.Rule.Code switch
    {
        "L02" => Way(brief, plant, finding),
        "L03" => "margin",
        "L01" or "L04" or "L06" or "P07" => Application(brief, plant, finding),
        "L05" or "F01" or "F02" or "F03" or "F04" => "fibre",
        "M04" => "base",
        "M05" => "angled",
        "S06" or "S07" or "S08" or "S09" => "networks",
        "S01" or "S02" or "S03" or "S04" or "S05" => "separation",
        _ => "method",
    };

    private static Link? LinkOf(Plant plant, Finding finding) => finding.Links.Count > 0 ? plant.Links[finding.Links[0]] : null;

    private static string Application(Brief brief, Plant plant, Finding finding) =>
        LinkOf(plant, finding) is { } link && plant.NetworkOf(link.From.Port) is >= 0 and int n ? $"networks.{brief.Networks[n].Name}.application" : "networks";

    /// <summary>The key of the longer stretch on the way of a link: that to the room, or that to the outlet.</summary>
    private static string Way(Brief brief, Plant plant, Finding finding)
    {
        if (LinkOf(plant, finding) is not { } link)
            return "rooms";
        Part device = plant.Parts[link.To.Port.Part];
        BriefRoom? room = brief.Rooms.FirstOrDefault(r => r.Name == device.Room);
        BriefOutlets? outlets = brief.Outlets.FirstOrDefault(o => Holds(brief, o, device));
        bool atOutlet = outlets?.Distance is { } there && room?.Distance is { } way && there > way;
        return atOutlet ? $"outlets.{outlets!.Name}.distance" : room is null ? "rooms" : $"rooms.{room.Name}.distance";
    }

    private static bool Holds(Brief brief, BriefOutlets outlets, Part device)
    {
        if (device.Network < 0 || brief.Rooms[outlets.Room].Name != device.Room)
            return false;
        PlannedName names = outlets.Name.Around(brief.Networks[device.Network].Label + "-");
        return Enumerable.Range(0, names.Count).Any(i => names.At(i) == device.Name);
    }
}
