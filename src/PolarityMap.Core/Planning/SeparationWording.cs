namespace PolarityMap.Core.Planning;

/// <summary>How networks are kept apart in one plan: a zone box is told only where outlets lie behind one.</summary>
internal static class SeparationWording
{
    public static PlanDecision Of(Brief brief)
    {
        BriefOutlets[] behind = [.. brief.Outlets.Where(o => brief.SegmentsTo(o) == 2)];
        if (behind.Length == 0)
        {
            string none = brief.Separation == SeparationPolicy.Gathered ? "; no outlet has a way of its own, so that there is no zone box" : "";
            return brief.Networks.Count == 1
                ? new("separation", "One network", $"nothing to keep apart{none}")
                : new("separation", "Each network has trunks, cassettes and panels of its own", $"nothing is shared, so that nobody has to watch it{none}");
        }

        bool Has(BriefOutlets outlets, bool parallel) => outlets.Links.Where((links, n) => links > 0 && brief.Networks[n].Application.IsParallel == parallel).Any();
        string cables = behind.All(o => Has(o, true) && Has(o, false)) ? "two cables to each outlet, one for its pairs and one for its parallel links"
            : behind.All(o => !Has(o, true) || !Has(o, false)) ? "one cable to each outlet"
            : "one cable to each outlet for its pairs and one for its parallel links";
        string shared = PlanGenerator.MayShare(brief) is { Count: > 0 } ? "networks share what comes after the zone box, as the brief allows" : "no two networks lie in one cable";
        return new("separation", $"Own trunks to the zone box, there {cables}", shared);
    }
}
