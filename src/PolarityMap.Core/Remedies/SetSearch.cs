namespace PolarityMap.Core.Remedies;

/// <summary>
/// Finds the sets of changes that clear one finding after the other. Whatever a set leaves wrong, one more change has to bear on
/// it, so only such changes are tried; light is walked first, and what passes is proved by a full check.
/// </summary>
internal sealed class SetSearch(ChangeContext context, MeantEnds meant, Prover prover, RemedyOptions options)
{
    private readonly LightTrial _trial = new(context, meant, prover);
    private readonly Dictionary<ChangeId, Single> _singles = [];
    private readonly List<RemedySet> _found = [];
    private readonly Dictionary<int, List<RemedySet>> _foundFor = [];
    private readonly HashSet<(ChangeId, ChangeId, ChangeId)> _tried = [];

    /// <summary>For each finding with changes that were left unproved the minutes of the least of them.</summary>
    private readonly Dictionary<int, int> _unproved = [];

    private readonly List<Change> _set = [];
    private Pools? _pools;
    private int _trialsLeft;
    private bool _isComplete;

    /// <summary>One change by itself.</summary>
    /// <param name="Change">The change.</param>
    /// <param name="IsClean">True when it leads no light wrong.</param>
    internal sealed record Single(Change Change, bool IsClean)
    {
        /// <summary>Findings that it clears as far as light tells, by index.</summary>
        public List<int> Clears { get; } = [];
    }

    /// <summary>Every set that was proved to clear something.</summary>
    public IReadOnlyList<RemedySet> Found => _found;

    /// <summary>Every single change that was tried and leads to something.</summary>
    public IEnumerable<Single> Singles => _singles.Values.Where(s => s.Clears.Count > 0);

    /// <summary>The findings that a change clears by itself, as far as light tells.</summary>
    public IReadOnlyList<int> ClearedByLight(Change change) => _singles.TryGetValue(change.Id, out Single? single) ? single.Clears : [];

    /// <summary>The sets that were proved to clear a finding.</summary>
    public IReadOnlyList<RemedySet> FoundFor(int finding) => _foundFor.TryGetValue(finding, out List<RemedySet>? sets) ? sets : [];

    /// <summary>How many sets were tried on light.</summary>
    public int Trials { get; private set; }

    private Pools Pools => _pools ??= new Pools(context, meant, _trial);

    /// <summary>Tries every single change for every finding; returns how many were tried for each.</summary>
    public int[] TrySingles(IReadOnlyList<Goal> goals)
    {
        var tried = new int[goals.Count];
        for (int g = 0; g < goals.Count; g++)
        {
            Goal goal = goals[g];
            IReadOnlyList<Change> pool = PoolOf(goal);
            tried[g] = pool.Count;
            foreach (Change change in pool)
                TrySingle(goal, change);
        }

        return tried;
    }

    /// <summary>
    /// Proves single changes, for each finding the most promising first, until all are or no more may be. Returns how many were
    /// left.
    /// </summary>
    public int ProveSingles(IReadOnlyList<Goal> goals)
    {
        var queues = new Dictionary<int, List<Single>>();
        IEnumerable<Single> promising = _singles.Values.Where(s => s.IsClean).OrderByDescending(s => s.Clears.Count).ThenBy(s => s.Change.Minutes);
        foreach (Goal goal in goals)
            queues[goal.Index] = [];
        foreach (Single single in promising)
        {
            foreach (int finding in single.Clears)
                queues[finding].Add(single);
        }

        var asked = new HashSet<ChangeId>();
        int left = 0;
        for (int round = 0; queues.Values.Any(q => q.Count > round); round++)
        {
            foreach (List<Single> queue in queues.Values.Where(q => q.Count > round))
            {
                if (!asked.Add(queue[round].Change.Id) || TryProve([queue[round].Change]))
                    continue;
                foreach (int finding in queue[round].Clears)
                    _unproved[finding] = Math.Min(_unproved.GetValueOrDefault(finding, int.MaxValue), queue[round].Change.Minutes);
                left++;
            }
        }

        return left;
    }

    /// <summary>
    /// Tries sets of several changes for a finding, as long as they are less work than what was found with fewer changes.
    /// </summary>
    /// <returns>How many sets of two, of three and so on were tried, and whether none was left out.</returns>
    public (IReadOnlyList<int> Tried, bool IsComplete) TrySets(Goal goal)
    {
        // A change that light speaks for and that was not proved bounds what is worth trying all the same.
        var tried = new List<int>();
        int unproved = _unproved.GetValueOrDefault(goal.Index, int.MaxValue);
        _trialsLeft = options.MostTrialsEach;
        _isComplete = true;
        for (int size = 2; size <= options.MostChanges && _isComplete; size++)
        {
            int limit = FoundFor(goal.Index).Select(f => f.Minutes).Append(unproved).Min();
            int before = Trials;
            var passed = new List<Change[]>();
            _tried.Clear();
            Grow(goal, size, 0, limit, passed);
            tried.Add(Trials - before);
            ProveAll(passed);
        }

        return (tried, _isComplete && unproved == int.MaxValue);
    }

    /// <summary>Tries and proves a set that was made otherwise.</summary>
    public bool TryProve(IReadOnlyList<Change> changes)
    {
        bool known = prover.Find(changes) is not null;
        if (prover.Prove(changes) is not { } proof)
            return false;
        if (!known && proof.IsSound && proof.Cleared.Count > 0)
            Keep(new RemedySet([.. ChangeContext.InOrder(changes)], proof.Cleared, proof.Proven));
        return true;
    }

    private void Keep(RemedySet set)
    {
        _found.Add(set);
        foreach (int finding in set.Clears)
        {
            if (!_foundFor.TryGetValue(finding, out List<RemedySet>? sets))
                _foundFor[finding] = sets = [];
            sets.Add(set);
        }
    }

    private void TrySingle(Goal goal, Change change)
    {
        _trial.Lay(change);
        if (!_singles.TryGetValue(change.Id, out Single? single))
        {
            Trials++;
            _singles[change.Id] = single = new Single(change, _trial.FirstLedWrong() < 0);
        }

        if (goal.FirstLedWrong(_trial) < 0)
            single.Clears.Add(goal.Index);
        _trial.Lift();
    }

    private IReadOnlyList<Change> PoolOf(Goal goal)
    {
        int lane = goal.FirstLedWrong(_trial);
        return lane >= 0 ? Pools.OfLane(lane) : Pools.OfPlaces(goal.Places);
    }

    /// <summary>Grows the set at hand to a size, by changes that bear on what it leaves wrong.</summary>
    private void Grow(Goal goal, int size, int minutes, int limit, List<Change[]> passed)
    {
        if (!_isComplete)
            return;
        int lane = _trial.FirstLedWrong();
        if (lane < 0)
            lane = goal.FirstLedWrong(_trial);
        if (_set.Count == size)
        {
            if (lane < 0)
                passed.Add([.. _set]);
            return;
        }

        if ((lane >= 0 ? Pools.OfLane(lane) : PoolAfterProof(goal)) is not { } pool)
            return;
        foreach (Change change in pool)
        {
            if (minutes + change.Minutes >= limit || !_set.TrueForAll(change.GoesWith) || !_tried.Add(KeyWith(change)))
                continue;
            if (--_trialsLeft < 0)
            {
                _isComplete = false;
                return;
            }

            Trials++;
            _trial.Lay(change);
            _set.Add(change);
            Grow(goal, size, minutes + change.Minutes, limit, passed);
            _set.RemoveAt(_set.Count - 1);
            _trial.Lift();
        }
    }

    /// <summary>
    /// What bears on what is left once light is right: on what the set raises, else on the finding; null when the set clears it
    /// by itself, so that nothing need be added.
    /// </summary>
    private IReadOnlyList<Change>? PoolAfterProof(Goal goal)
    {
        if (_set.Count == 0)
            return Pools.OfPlaces(goal.Places);
        if (prover.Prove(_set) is not { } proof)
        {
            _isComplete = false;
            return null;
        }

        if (proof.Clears(goal.Index))
            return null;
        return Pools.OfPlaces(proof.Raised.Count > 0 ? proof.Raised[0] : goal.Places);
    }

    private void ProveAll(List<Change[]> passed)
    {
        int proved = 0;
        foreach (Change[] set in passed.OrderBy(p => p.Sum(c => c.Minutes)))
        {
            if (proved++ < options.MostProofsEach && TryProve(set))
                continue;
            _isComplete = false;
            return;
        }
    }

    /// <summary>The set with one more change, whatever the order.</summary>
    private (ChangeId, ChangeId, ChangeId) KeyWith(Change change)
    {
        ChangeId[] ids = [.. _set.Select(c => c.Id), change.Id];
        Array.Sort(ids, (a, b) => Compare(a, b));
        return (ids[0], ids.Length > 1 ? ids[1] : default, ids.Length > 2 ? ids[2] : default);
    }

    private static int Compare(ChangeId a, ChangeId b)
    {
        int order = a.Kind.CompareTo(b.Kind);
        if (order == 0)
            order = a.At.CompareTo(b.At);
        if (order == 0)
            order = a.With.CompareTo(b.With);
        return order != 0 ? order : string.CompareOrdinal(a.Variant, b.Variant);
    }
}
