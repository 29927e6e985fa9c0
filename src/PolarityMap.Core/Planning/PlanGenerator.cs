using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Planning;

/// <summary>What a candidate makes of a brief, before anything is proved of it.</summary>
/// <param name="Planned">The plant; null where none can be built.</param>
/// <param name="Refusals">What stands in the way by structure alone; the plant is built all the same.</param>
public sealed record GeneratedPlan(PlannedPlant? Planned, IReadOnlyList<Refusal> Refusals);

/// <summary>
/// Turns a brief and a candidate into a plant: for each network switches, cords, cassettes or panels and trunks to where its
/// links end; where networks are gathered, zone boxes and a cable to each outlet. It believes no table to give the right result:
/// <see cref="PlanProof"/> traces and checks what it makes.
/// </summary>
public static class PlanGenerator
{
    public static GeneratedPlan Generate(Brief brief, PlanCandidate candidate)
    {
        var draft = new PlanDraft(brief, candidate);
        var types = new PlanTypes(draft);
        Structure.Check(draft);
        if (Structure.IsUnbuildable(brief))
            return new GeneratedPlan(null, draft.Refusals);
        var gathered = new GatheredPlan(draft, types);
        for (int network = 0; network < brief.Networks.Count; network++)
        {
            int[] equipment = [.. Enumerable.Range(0, brief.Rooms.Count).Where(r => brief.Rooms[r].From == r)];
            bool alone = equipment.Sum(r => Demands.Of(brief, network, r).Count) == 1;
            foreach (int from in equipment)
                new NetworkPlan(draft, types, gathered, network, from, alone).Add();
        }

        gathered.Add();
        IReadOnlyList<SharedPlace>? mayShare = MayShare(brief, brief.Segments.Count == 0 ? candidate.Base / 2 : null);
        var planned = new PlannedPlant
        {
            Brief = brief,
            Candidate = candidate,
            Defaults = draft.Defaults,
            Practice = new PlantPractice { Limits = brief.Limits, Margin = brief.Margin },
            Networks = [.. brief.Networks.Select(n => n.Network with { MayShare = mayShare })],
            Types = draft.Types,
            Sections = draft.Sections,
        };
        return new GeneratedPlan(planned with { Decisions = Decisions.Of(planned) }, draft.Refusals);
    }

    /// <summary>
    /// What networks share behind zone boxes, and so may; nothing is judged of a single one. Networks with pairs at one outlet share
    /// its cable and cassettes, those with parallel links there its cable and panels.
    /// </summary>
    /// <param name="brief">The brief.</param>
    /// <param name="ports">Pairs in an array; null where it is not known how pairs lie in arrays, so that they may share one.</param>
    internal static IReadOnlyList<SharedPlace>? MayShare(Brief brief, int? ports = null)
    {
        if (brief.Networks.Count < 2)
            return null;
        bool sheath = false, array = false, panel = false;
        foreach (BriefOutlets outlets in brief.Outlets.Where(o => brief.SegmentsTo(o) == 2))
        {
            int[] pairs = [.. outlets.Links.Where((_, n) => !brief.Networks[n].Application.IsParallel).Where(l => l > 0)];
            int parallel = outlets.Links.Where((l, n) => l > 0 && brief.Networks[n].Application.IsParallel).Count();
            sheath |= pairs.Length > 1 || parallel > 1;
            panel |= parallel > 1;

            // Pairs fill arrays in the order of their networks: none is shared where each network but the last fills whole ones.
            int filled = 0;
            foreach (int links in pairs.SkipLast(1))
                array |= ports is not { } each || (filled += links) % each != 0;
        }

        return [.. sheath ? [SharedPlace.Sheath] : System.Array.Empty<SharedPlace>(), .. array ? [SharedPlace.Cassette, SharedPlace.Array] : System.Array.Empty<SharedPlace>(), .. panel ? [SharedPlace.Panel] : System.Array.Empty<SharedPlace>()];
    }
}
