using PolarityMap.Core.Deviations;

namespace PolarityMap.Core.Locate;

/// <summary>
/// Finds every smallest set of deviations with which all observations agree, by a hitting-set tree: whichever observation a set
/// leaves refuted, one more deviation has to change the way of its light, so only those are tried. Deviations at one place are
/// not combined with each other.
/// </summary>
internal sealed class ExplanationSearch
{
    private readonly DeviationContext _context;
    private readonly IReadOnlyList<Observation> _observations;
    private readonly LocateOptions _options;
    private readonly TrialGraph _trial;
    private readonly Predictor _predictor;
    private readonly PositionMarks _ways;
    private readonly ObservationIndex _index;
    private readonly Dictionary<int, List<Deviation>> _onWayAsDescribed = [];
    private readonly List<Deviation[]> _found = [];
    private readonly HashSet<SetKey> _foundKeys = [];
    private readonly HashSet<SetKey> _tried = [];
    private readonly List<Deviation> _set = [];
    private readonly int[] _stamp;
    private int _now;
    private long _triedNow;
    private long _triedAll;

    public ExplanationSearch(DeviationContext context, IReadOnlyList<Observation> observations, LocateOptions options)
    {
        _context = context;
        _observations = observations;
        _options = options;
        _trial = new TrialGraph(context.Graph);
        _predictor = new Predictor(context, _trial);
        _ways = new PositionMarks(context.Graph.PositionCount);
        _index = new ObservationIndex(observations, _predictor, _ways);
        _stamp = new int[observations.Count];
    }

    /// <summary>Which observations refute the plant as described.</summary>
    public IReadOnlyList<int> Refuting => _index.Refuting;

    /// <summary>The observations that a deviation can bear on.</summary>
    public ObservationIndex Index => _index;

    /// <summary>The positions that the observations that refute the plant as described depend on.</summary>
    public HashSet<int> Doubted()
    {
        _ways.Clear();
        foreach (int refuting in _index.Refuting)
            _predictor.Agrees(_observations[refuting], _ways);
        return [.. _ways.Members];
    }

    /// <summary>All explanations of the smallest size that has any.</summary>
    public (IReadOnlyList<Deviation[]> Found, SearchReport Report) Run()
    {
        var sizes = new List<SizeSearched>();
        if (_index.Refuting.Count == 0)
        {
            _found.Add([]);
            return (_found, new SearchReport([new SizeSearched(0, 1, 1, true)], null));
        }

        string? bound = null;
        for (int size = 1; size <= _options.MostDeviations && _found.Count == 0 && bound is null; size++)
        {
            _tried.Clear();
            _triedNow = 0;
            bool complete = Grow(size);
            sizes.Add(new SizeSearched(size, _triedNow, _found.Count, complete));
            if (!complete)
                bound = $"stopped after {_triedAll} sets; more observations, or a higher bound, may find more";
        }

        return (_found, new SearchReport(sizes, bound));
    }

    /// <summary>Tries every set of a size that the set at hand can grow to; false where the bound ended it.</summary>
    private bool Grow(int size)
    {
        int refuted = FirstRefuted();
        if (refuted < 0)
        {
            Record();
            return true;
        }

        if (_set.Count == size)
            return true;
        foreach (Deviation deviation in OnTheWayOf(refuted))
        {
            if (!CanJoin(deviation))
                continue;
            _set.Add(deviation);
            bool isNew = _set.Count == 1 || _tried.Add(SetKey.Of(_set));
            bool goesOn = true;
            if (isNew)
            {
                _triedNow += _set.Count == size ? 1 : 0;
                goesOn = ++_triedAll <= _options.MostTried;
                _trial.Lay(deviation);
                goesOn = goesOn && Grow(size);
                _trial.Lift();
            }

            _set.RemoveAt(_set.Count - 1);
            if (!goesOn)
                return false;
        }

        return true;
    }

    /// <summary>An observation that the set at hand leaves refuted, or -1.</summary>
    private int FirstRefuted()
    {
        _now++;
        foreach (Deviation deviation in _set)
        {
            foreach (int observation in _index.AffectedBy(deviation))
                _stamp[observation] = _now;
        }

        foreach (int observation in _index.Refuting)
        {
            if (_stamp[observation] != _now)
                return observation;
        }

        foreach (Deviation deviation in _set)
        {
            foreach (int observation in _index.AffectedBy(deviation))
            {
                if (!_predictor.Agrees(_observations[observation]))
                    return observation;
            }
        }

        return -1;
    }

    /// <summary>Every deviation that changes what an observation depends on, as things are laid now.</summary>
    private List<Deviation> OnTheWayOf(int observation)
    {
        // What one more deviation makes different cannot look as described again.
        if (_observations[observation] is PartLooked { IsAsDescribed: true })
            return [];
        bool asDescribed = _set.Count == 0 || _stamp[observation] != _now;
        if (asDescribed && _onWayAsDescribed.TryGetValue(observation, out List<Deviation>? known))
            return known;
        _ways.Clear();
        _predictor.Agrees(_observations[observation], _ways);
        var parts = new SortedSet<int>();
        foreach (int position in _ways.Members)
            parts.Add(_context.Graph.PartOf(position));
        if (_observations[observation] is PartLooked look)
            parts.Add(look.Part);
        var found = new List<Deviation>();
        var seen = new HashSet<DeviationId>();
        foreach (int part in parts)
        {
            foreach (Deviation deviation in _context.At(part))
            {
                if (Bears(deviation, observation) && seen.Add(deviation.Id))
                    found.Add(deviation);
            }
        }

        if (asDescribed)
            _onWayAsDescribed[observation] = found;
        return found;
    }

    private bool Bears(Deviation deviation, int observation)
    {
        if (_observations[observation] is PartLooked look)
            return Predictor.IsSeenAt(deviation, look.Part);
        foreach (Rejoined change in deviation.Patch.Inside)
        {
            if (_ways.Contains(change.Position))
                return true;
        }

        foreach (Rejoined change in deviation.Patch.Outside)
        {
            if (_ways.Contains(change.Position))
                return true;
        }

        foreach (int position in deviation.Lossy)
        {
            if (_ways.Contains(position))
                return true;
        }

        return false;
    }

    private bool CanJoin(Deviation deviation)
    {
        foreach (Deviation other in _set)
        {
            if (!deviation.GoesWith(other))
                return false;
        }

        return true;
    }

    private void Record()
    {
        if (_set.Count == 0 || HoldsSmaller() || !_foundKeys.Add(SetKey.Of(_set)))
            return;
        _found.Add([.. _set.OrderBy(d => d.Id.Kind).ThenBy(d => d.Id.At).ThenBy(d => d.Id.With).ThenBy(d => d.Id.Variant)]);
    }

    /// <summary>True when a part of the set at hand explains everything already.</summary>
    private bool HoldsSmaller()
    {
        for (int mask = 1; mask < (1 << _set.Count) - 1; mask++)
        {
            if (_foundKeys.Contains(SetKey.Of([.. _set.Where((_, i) => (mask & (1 << i)) != 0)])))
                return true;
        }

        return false;
    }
}
