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
        var planned = new PlannedPlant
        {
            Brief = brief,
            Candidate = candidate,
            Defaults = draft.Defaults,
            Practice = new PlantPractice { Limits = brief.Limits, Margin = brief.Margin },
            Networks = [.. brief.Networks.Select(n => n.Network with { MayShare = MayShare(brief) })],
            Types = draft.Types,
            Sections = draft.Sections,
        };
        return new GeneratedPlan(planned with { Decisions = Decisions.Of(planned) }, draft.Refusals);
    }

    /// <summary>What networks may share by the separation that the brief asks for; nothing is judged of a single one.</summary>
    internal static IReadOnlyList<SharedPlace>? MayShare(Brief brief) => brief.Networks.Count < 2 ? null
        : brief.Separation == SeparationPolicy.Own ? []
        : brief.Networks.Any(n => n.Application.IsParallel) ? [SharedPlace.Sheath, SharedPlace.Cassette, SharedPlace.Array, SharedPlace.Panel]
        : [SharedPlace.Sheath, SharedPlace.Cassette, SharedPlace.Array];
}
