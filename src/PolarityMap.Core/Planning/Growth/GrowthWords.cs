using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Planning.Growth;

/// <summary>What is said of a growth, worded once.</summary>
public static class GrowthWords
{
    /// <summary>What was searched, and what is not claimed.</summary>
    public const string Searched =
        "Links that serve as they are stay untouched. New ones go onto free ports and free legs between the same rooms first, by network and by outlet, those "
        + "that the same link had before; parts that come free are used again where they are alike; only the rest is bought. Other ways through other "
        + "rooms, and moving links that stay, were not searched.";

    /// <summary>What to mind.</summary>
    public static IReadOnlyList<string> Cautions { get; } =
    [
        Optics.Cautions.Light,
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

    /// <summary>A joint as hands know it: the two ports, and the adapter between.</summary>
    public static string Joint(GrowthDifference difference, Joint joint)
    {
        string Address(PortRef port) => difference.Parts[port.Part] is var part && part.Shape.IsCable && part.IsInline
            ? $"cord {part.Name}" : $"{part.Name}/{part.Shape.Ports[port.Port].Name}";
        string through = joint.Through is { } adapter ? $" in {Address(adapter)}" : "";
        return joint.IsOpen ? $"{Address(joint.A)} waits{through}" : $"{Address(joint.A)} and {Address(joint.B)}{through}";
    }
}
