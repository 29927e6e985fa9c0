using PolarityMap.Core.Checks;

namespace PolarityMap.Core.Remedies;

/// <summary>
/// Finds for every finding of a plant the smallest sets of changes that clear it and raise none, and the fewest changes for the
/// plant as a whole. Whatever is answered was proved by building, tracing and checking the whole plant again.
/// </summary>
public sealed class RemedySearch
{
    private readonly CheckReport _report;
    private readonly RemedyOptions _options;
    private readonly ChangeContext _context;
    private readonly Prover _prover;
    private readonly SetSearch _sets;

    public RemedySearch(CheckReport report, RemedyOptions? options = null)
    {
        _report = report;
        _options = options ?? new RemedyOptions();
        _context = new ChangeContext(report.Context);
        _prover = new Prover(_context, report, _options.ProofsFor(report));
        _sets = new SetSearch(_context, new MeantEnds(report.Traced), _prover, _options);
    }

    /// <summary>Every change that the search came to look at.</summary>
    public IReadOnlyCollection<Change> Looked => _context.Known;

    /// <summary>The remedies of a plant.</summary>
    /// <param name="report">The plant, checked.</param>
    /// <param name="options">How far to search.</param>
    public static RemedyResult Of(CheckReport report, RemedyOptions? options = null) => new RemedySearch(report, options).Run();

    /// <summary>Runs the search, with a plan for the whole plant unless it is left out.</summary>
    public RemedyResult Run(bool withPlan = true)
    {
        int[] wanted = [.. Enumerable.Range(0, _report.Findings.Count).Where(i => _options.Wanted?.Invoke(i) ?? true)];
        Goal[] goals = [.. wanted.Select(i => new Goal(_report.Context, _report.Findings[i], i))];
        int[] singles = _sets.TrySingles(goals);
        int unproved = _sets.ProveSingles(goals);
        var tried = new List<int>[goals.Length];
        var complete = new bool[goals.Length];
        for (int g = 0; g < goals.Length; g++)
        {
            (IReadOnlyList<int> more, complete[g]) = _options.MostChanges > 1 ? _sets.TrySets(goals[g]) : ([], true);
            tried[g] = [singles[g], .. more];
        }

        RemedyPlan? plan = withPlan ? new PlanSearch(_context, _prover, _sets, wanted).Run() : null;
        Dictionary<int, List<ChangeId>> planned = Planned(plan);
        FindingRemedies[] remedies =
        [
            .. Enumerable.Range(0, goals.Length).Select(g => new FindingRemedies(
                wanted[g], SetsFor(wanted[g], planned.GetValueOrDefault(wanted[g], [])), tried[g], complete[g])),
        ];
        return new RemedyResult(_report, remedies, plan, new RemedyWork(_sets.Trials, _prover.Made, Bound(unproved, complete)));
    }

    /// <summary>
    /// The sets that clear a finding: none that holds a smaller one, and none of more changes that is not less work than all of
    /// fewer.
    /// </summary>
    /// <param name="finding">Index of the finding.</param>
    /// <param name="planned">What the plan does about it.</param>
    private List<RemedySet> SetsFor(int finding, List<ChangeId> planned)
    {
        var kept = new List<RemedySet>();
        foreach (var size in _sets.FoundFor(finding).GroupBy(s => s.Changes.Count).OrderBy(g => g.Key))
        {
            int limit = kept.Count == 0 ? int.MaxValue : kept.Min(k => k.Minutes);
            RemedySet[] smaller = [.. kept];
            kept.AddRange(size.Where(s => s.Minutes < limit && !smaller.Any(k => Holds(s, k))));
        }

        return [.. kept
            .OrderBy(s => s.Changes.Count == planned.Count && s.Changes.All(c => planned.Contains(c.Id)) ? 0 : 1)
            .ThenByDescending(s => s.Clears.Count)
            .ThenBy(s => s.Weight)
            .ThenBy(s => s.Minutes)];
    }

    /// <summary>For each finding the changes of the plan without which it stays.</summary>
    private static Dictionary<int, List<ChangeId>> Planned(RemedyPlan? plan)
    {
        var planned = new Dictionary<int, List<ChangeId>>();
        foreach (PlanStep step in plan?.Steps ?? [])
        {
            foreach (int finding in step.Clears)
            {
                if (!planned.TryGetValue(finding, out List<ChangeId>? changes))
                    planned[finding] = changes = [];
                changes.Add(step.Change.Id);
            }
        }

        return planned;
    }

    private static bool Holds(RemedySet set, RemedySet smaller) => smaller.Changes.All(c => set.Changes.Any(s => s.Id == c.Id));

    private static string? Bound(int unproved, bool[] complete)
    {
        var bounds = new List<string>();
        if (unproved > 0)
            bounds.Add($"{unproved} single {(unproved == 1 ? "change that passes" : "changes that pass")} the test by light {(unproved == 1 ? "was" : "were")} not proved and left out");
        int short_ = complete.Count(c => !c);
        if (short_ > 0)
            bounds.Add($"for {short_} {(short_ == 1 ? "finding" : "findings")} not all sets of several changes were tried");
        return bounds.Count == 0 ? null : string.Join("; ", bounds);
    }
}
