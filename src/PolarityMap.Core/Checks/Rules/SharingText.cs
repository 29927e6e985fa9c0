using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

/// <summary>What the rules on sharing have in common.</summary>
internal static class SharingText
{
    /// <summary>
    /// One finding for whatever is shared against a policy in the same way and comes from the same place of the document.
    /// </summary>
    /// <param name="rule">The rule.</param>
    /// <param name="context">The context.</param>
    /// <param name="findings">Where findings go.</param>
    /// <param name="place">What is shared.</param>
    /// <param name="shares">The first of them in words, for example <c>cable DC1</c>.</param>
    public static void Report(Rule rule, CheckContext context, List<Finding> findings, SharedPlace place, Func<Plant, SharedUse, string> shares)
    {
        // One network has nobody to share with.
        if (context.Plant.Networks.Count < 2)
            return;
        foreach (SharedGroup group in context.Separation.Sharing.Groups)
        {
            if (group.Place != place || group.Verdict != SharingVerdict.Against)
                continue;
            Plant plant = context.Plant;
            string networks = PartWords.Networks(plant, group.Networks);
            string forbidding = PartWords.Networks(plant, group.ForbiddenBy);
            string alike = group.Uses.Count == 1 ? "" : $", and {group.Uses.Count - 1} more alike";
            string what = shares(plant, group.Uses[0]);
            findings.Add(new Finding(
                rule,
                group.Source,
                $"{networks} share {what}{alike}; the policy of {forbidding} forbids it",
                $"{forbidding} in {Article(place)} of {(group.ForbiddenBy.Count == 1 ? "its" : "their")} own",
                $"{networks} in {what}{alike}")
            {
                Strands = group.Uses[0].Strands,
                At = [.. group.Uses.Select(SiteOf)],
            });
        }
    }

    private static FindingSite SiteOf(SharedUse use) =>
        use.Mating is { } mating ? FindingSite.Of(mating) : new FindingSite(use.Part, use.Port);

    private static string Article(SharedPlace place) => place switch
    {
        SharedPlace.Sheath => "a sheath",
        SharedPlace.Cassette => "a cassette",
        SharedPlace.Array => "an array connector",
        _ => "a panel",
    };
}
