using PolarityMap.Core.Checks;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Strands;

namespace PolarityMap.Core.Remedies;

/// <summary>
/// Finds what to do for the whole plant: sets that were found for single findings, chosen so that few changes clear many
/// findings, and changes of shared parts together with what they ask for elsewhere. The whole of it is proved at the end.
/// </summary>
internal sealed class PlanSearch(ChangeContext context, Prover prover, SetSearch sets, IReadOnlyList<int> wanted)
{
    /// <summary>Shared changes that are looked at although they lead light wrong elsewhere.</summary>
    private const int MostShared = 4;

    /// <summary>The most checks of the whole plant that are spent on putting a plan together.</summary>
    private const int MostChecks = 100;

    /// <summary>Plans of up to so many changes are proved change by change as well.</summary>
    private const int MostSteps = 24;

    private readonly HashSet<int> _wanted = [.. wanted];
    private readonly HashSet<int> _cleared = [];
    private int _checks = MostChecks;

    /// <summary>The best plan found, or null when nothing clears anything.</summary>
    public RemedyPlan? Run()
    {
        List<Cover.Choice> choices = Choices();
        List<Change>? plan = Accepted(Merged(Cover.Of(choices), choices));
        return plan is null ? null : Finish(WithoutNeedless(plan));
    }

    /// <summary>Every proved set, every change that light speaks for and that was not refuted, and shared changes made whole.</summary>
    private List<Cover.Choice> Choices()
    {
        var choices = new List<Cover.Choice>();
        var shared = sets.Singles.Where(s => !s.IsClean && Count(s.Clears) > 1).OrderByDescending(s => Count(s.Clears)).ThenBy(s => s.Change.Minutes).Take(MostShared);
        foreach (SetSearch.Single single in shared.ToArray())
            Complete(single.Change);
        foreach (RemedySet set in sets.Found)
            Add(choices, set.Changes, set.Clears);
        foreach (SetSearch.Single single in sets.Singles)
        {
            if (single.IsClean && prover.Find([single.Change]) is null)
                Add(choices, [single.Change], single.Clears);
        }

        return choices;
    }

    private int Count(IReadOnlyList<int> findings) => findings.Count(_wanted.Contains);

    private void Add(List<Cover.Choice> choices, IReadOnlyList<Change> changes, IReadOnlyList<int> clears)
    {
        int[] asked = [.. clears.Where(_wanted.Contains)];
        if (asked.Length > 0)
            choices.Add(new Cover.Choice(changes, asked));
    }

    /// <summary>
    /// A change that clears several findings and raises fewer others: each of those is cleared by itself in the plant that was
    /// changed, as where a trunk and one of its cords are wrong, so that the cord looked right.
    /// </summary>
    private void Complete(Change shared)
    {
        if (_checks <= 0 || context.Build([shared]) is not { } changed)
            return;
        _checks--;
        CheckReport report = Report(changed);
        int[] raised = [.. Enumerable.Range(0, report.Findings.Count).Where(i => !prover.KnowsAll(report.Context, report.Findings[i]))];
        int cleared = Count(prover.Judge(report.Context, report.Findings).Cleared);
        if (raised.Length == 0 || raised.Length >= cleared)
            return;
        var options = new RemedyOptions { MostChanges = 1, MostProofs = _checks, Wanted = i => raised.Contains(i) };
        RemedyResult more = new RemedySearch(report, options).Run(withPlan: false);
        _checks -= more.Work.Proved;
        var choices = more.Findings.SelectMany(f => f.Sets).Distinct().Select(s => new Cover.Choice(s.Changes, [.. s.Clears.Where(i => raised.Contains(i))])).ToList();
        List<Cover.Choice> chosen = Cover.Of(choices);
        Change[] whole = [shared, .. chosen.SelectMany(c => c.Changes)];
        if (chosen.SelectMany(c => c.Clears).Distinct().Count() == raised.Length && whole.Skip(1).All(shared.GoesWith))
            sets.TryProve(whole);
    }

    /// <summary>
    /// The chosen sets, where one of them changes a part that another one, which clears something more, would have to change as
    /// well: the part is then exchanged once, for one that is right in both.
    /// </summary>
    private List<Cover.Choice> Merged(List<Cover.Choice> chosen, List<Cover.Choice> choices)
    {
        var covered = new HashSet<int>(chosen.SelectMany(c => c.Clears));
        foreach (Cover.Choice more in choices.Where(c => c.Changes.Count == 1))
        {
            if (more.Clears.All(covered.Contains))
                continue;
            for (int i = 0; i < chosen.Count && _checks > 0; i++)
            {
                if (chosen[i].Changes is not [var own] || own.Parts[0] != more.Changes[0].Parts[0] || context.Merged(own, more.Changes[0]) is not { } both)
                    continue;
                int[] clears = [.. chosen[i].Clears.Union(more.Clears)];
                if (Check([both]) is not { IsSound: true } proof || !clears.All(proof.Cleared.Contains))
                    continue;
                chosen[i] = new Cover.Choice([both], clears);
                covered.UnionWith(clears);
                break;
            }
        }

        return chosen;
    }

    /// <summary>
    /// The changes of the chosen sets, proved together; where they do not go together, as many of the sets as do, in their order.
    /// </summary>
    private List<Change>? Accepted(List<Cover.Choice> chosen)
    {
        if (chosen.Count == 0)
            return null;
        List<Change> all = Union([], chosen.SelectMany(c => c.Changes));
        int expected = chosen.SelectMany(c => c.Clears).Distinct().Count();
        if (Check(all) is { IsSound: true } whole && Count(whole.Cleared) >= expected)
            return all;
        var accepted = new List<Change>();
        int cleared = 0;
        foreach (Cover.Choice choice in chosen)
        {
            List<Change> more = Union(accepted, choice.Changes);
            if (_checks <= 0 || Check(more) is not { IsSound: true } proof || Count(proof.Cleared) <= cleared)
                continue;
            accepted = more;
            cleared = Count(proof.Cleared);
        }

        return accepted.Count == 0 ? null : accepted;
    }

    private static List<Change> Union(List<Change> changes, IEnumerable<Change> more)
    {
        List<Change> all = [.. changes];
        var seen = new HashSet<ChangeId>(changes.Select(c => c.Id));
        all.AddRange(more.Where(c => seen.Add(c.Id)));
        return all;
    }

    private Proof Check(IReadOnlyList<Change> changes)
    {
        _checks--;
        return prover.Find(changes) ?? prover.Check(changes);
    }

    /// <summary>The plan without changes that nothing would miss.</summary>
    private List<Change> WithoutNeedless(List<Change> plan)
    {
        if (plan.Count is 1 or > MostSteps)
            return plan;
        int cleared = Count(Check(plan).Cleared);
        foreach (Change change in plan.OrderByDescending(c => c.Minutes).ToArray())
        {
            List<Change> without = [.. plan.Where(c => c.Id != change.Id)];
            if (without.Count > 0 && Check(without) is { IsSound: true } proof && Count(proof.Cleared) == cleared)
                plan = without;
        }

        return plan;
    }

    private RemedyPlan? Finish(List<Change> plan)
    {
        if (context.Build(plan) is not { } changed)
            return null;
        CheckReport after = Report(changed);
        Proof proof = prover.Judge(after.Context, after.Findings);
        if (!proof.IsSound)
            return null;
        _cleared.UnionWith(proof.Cleared);
        IEnumerable<PlanStep> steps = plan.Select(c => new PlanStep(c, ClearedBy(c, plan, proof)));
        return new RemedyPlan(
            [.. steps.OrderByDescending(s => s.Clears.Count)],
            proof.Cleared,
            [.. wanted.Where(i => !_cleared.Contains(i))],
            after);
    }

    /// <summary>
    /// The findings that stay, or come back, without a change; of a long plan those that the change clears by itself as far as
    /// light tells.
    /// </summary>
    private IReadOnlyList<int> ClearedBy(Change change, List<Change> plan, Proof whole)
    {
        if (plan.Count == 1)
            return whole.Cleared;
        if (plan.Count > MostSteps)
            return [.. sets.ClearedByLight(change).Where(_cleared.Contains)];
        Proof without = Check([.. plan.Where(c => c.Id != change.Id)]);
        return [.. whole.Cleared.Where(i => !without.Cleared.Contains(i))];
    }

    private static CheckReport Report(Plant plant) => CheckReport.Of(TracedPlant.Of(plant));
}
