using PolarityMap.Core.Plants;
using PolarityMap.Core.Schedules;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>What is said of a growth, worded once.</summary>
public static class GrowthWords
{
    /// <summary>What was searched, and what is not claimed.</summary>
    public const string Searched =
        "Links that serve as they are stay untouched. New ones go onto free ports and free legs between the same rooms first, by network and by outlet, those "
        + "that the same link had before; parts that come free, lie unused or hang at one end are used again where they are alike; only the rest is bought. "
        + "Other ways through other rooms, and moving links that stay, were not searched.";

    /// <summary>What to mind.</summary>
    public static IReadOnlyList<string> Cautions { get; } =
    [
        Optics.Cautions.Light,
        "Unplug at interfaces first and plug in there last, so that no transmitter shines into an open end; cap every plug and port that stays open, and inspect and clean each before it is mated.",
        "Switches and devices are powered equipment: take out and put in by the maker's instructions, and leave mains to licensed persons.",
        "Work beside live links: find each plug by its label at both ends before it is pulled, agree the time with those who use the links, and keep a way back until the new link is measured.",
        Optics.Cautions.Codes,
    ];

    /// <summary>What is told at the head of the document.</summary>
    public static IReadOnlyList<PlanDecision> Decisions(GrowthDifference difference, PlanCandidate candidate)
    {
        int kept = difference.Links.Count(l => l.IsKept), all = difference.Links.Count(l => l.After is not null);
        return
        [
            new("growth", $"Grown from a plant that was there, with {candidate}", "its trunks tell the method and the base"),
            new("growth", $"{kept} of {all} links are untouched; {difference.Staying} parts stay, {difference.Added.Count} are new, {difference.Moved.Count} moved, {difference.TakenOut.Count} taken out", "links that serve as they are stay, and what is free is used before anything is bought"),
        ];
    }

    /// <summary>What a step is for.</summary>
    public static string Title(GrowthDifference difference, GrowthStep step) => step.Kind switch
    {
        StepKind.Add => "Add what is new, beside what is live",
        StepKind.CutOver when step.Dark.Count > 0 => $"Take over {Names(difference, step.Dark)}",
        StepKind.CutOver when step.Ended.Count > 0 => $"End {Names(difference, step.Ended)}",
        StepKind.CutOver => "Plug in what has become free",
        _ => "Clear away what nothing needs any more",
    };

    /// <summary>Links by name, a few of them.</summary>
    public static string Names(GrowthDifference difference, IReadOnlyList<int> links) => Few([.. links.Select(l => difference.Links[l].Name)]);

    /// <summary>A few names and how many more.</summary>
    public static string Few(IReadOnlyList<string> names, int most = 6) =>
        names.Count <= most ? string.Join(", ", names) : $"{string.Join(", ", names.Take(most - 1))} and {names.Count - most + 1} more";

    /// <summary>A joint as hands know it: the room, the port or adapter, and the plug that belongs in it.</summary>
    public static string Joint(GrowthDifference difference, Joint joint, bool before = false)
    {
        // Of a cord and what it enters, or of a cable and what it ends in, the place is that of the latter.
        (PortRef at, PortRef plug) = joint.IsOpen || IsPlug(difference, joint.A) ? (joint.B, joint.A) : (joint.A, joint.B);
        if (joint.Through is { } adapter)
        {
            string Side(PortRef of) => PartFacts.IsCord(difference.Parts[of.Part]) ? Plug(difference, of) : $"{Plug(difference, of)} behind it";
            string both = joint.IsOpen ? $"{Side(plug)}, nothing in front" : PartFacts.IsCord(difference.Parts[plug.Part]) ? $"{Side(plug)}, {Side(at)}" : $"{Side(at)}, {Side(plug)}";
            return $"{Room(difference, adapter, before)}{Address(difference, adapter)}: {both}";
        }

        return $"{Room(difference, at, before)}{Address(difference, at)}: {Plug(difference, plug)}";
    }

    /// <summary>Joints in lines, in their order, told before parts are carried or after; a cord with both ends in one room and not at an interface has one line.</summary>
    public static IReadOnlyList<string> Lines(GrowthDifference difference, IReadOnlyList<Joint> joints, bool before = false)
    {
        var lines = new List<string>();
        var cords = joints.Where(j => j.Through is null && !j.IsOpen && !AtInterface(difference, j)).SelectMany(j => j.Ports.Select(p => (p, j))).Where(p => PartFacts.IsCord(difference.Parts[p.p.Part])).ToLookup(p => p.p.Part);
        var told = new HashSet<Joint>();
        foreach (Joint joint in joints.Where(told.Add))
        {
            PortRef plug = joint.IsOpen || IsPlug(difference, joint.A) ? joint.A : joint.B;
            if (cords[plug.Part].ToArray() is [var one, var two] && (one.j == joint || two.j == joint) && RoomOf(difference, one) == RoomOf(difference, two))
            {
                told.UnionWith([one.j, two.j]);
                lines.Add($"{Room(difference, Entered(one), before)}{Address(difference, Entered(one))} and {Address(difference, Entered(two))}: {Plug(difference, plug)}");
            }
            else
            {
                lines.Add(Joint(difference, joint, before));
            }
        }

        return lines;
    }

    private static PortRef Entered((PortRef Plug, Joint Joint) end) => end.Joint.A == end.Plug ? end.Joint.B : end.Joint.A;

    private static string? RoomOf(GrowthDifference difference, (PortRef Plug, Joint Joint) end) => difference.Parts[Entered(end).Part].Room;

    private static bool AtInterface(GrowthDifference difference, Joint joint) => joint.Ports.Any(p => difference.Parts[p.Part].Shape.IsInterface);

    /// <summary>A port by its part and name.</summary>
    public static string Address(GrowthDifference difference, PortRef port) => $"{difference.Parts[port.Part].Name}/{difference.Parts[port.Part].Shape.Ports[port.Port].Name}";

    /// <summary>The label that a cord without a name of its own bears afterwards, made of the ports that it ends in.</summary>
    public static string Label(GrowthDifference difference, int cord)
    {
        string[] ends = ["", ""];
        foreach (Joint joint in difference.After)
        {
            if (joint.A.Part == cord)
                ends[joint.A.Port % 2] = Address(difference, joint.Through ?? joint.B);
            if (joint.B.Part == cord)
                ends[joint.B.Port % 2] = Address(difference, joint.Through ?? joint.A);
        }

        return $"{ends[0]}~{ends[1]}";
    }

    private static bool IsPlug(GrowthDifference difference, PortRef port) => difference.Parts[port.Part].Shape.IsCable;

    private static string Room(GrowthDifference difference, PortRef port, bool before) => (before && difference.RoomsBefore.TryGetValue(port.Part, out string? was) ? was : difference.Parts[port.Part].Room) is { } room ? $"{room}, " : "";

    private static string Plug(GrowthDifference difference, PortRef port)
    {
        Part part = difference.Parts[port.Part];
        if (!PartFacts.IsCord(part))
            return Address(difference, port);
        return $"{PartFacts.Type(part)}{(part.Length is { } length ? $" {length}" : "")}, {(part.IsInline ? part.Name : Address(difference, port))}";
    }
}
