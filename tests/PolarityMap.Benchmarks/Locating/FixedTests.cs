using PolarityMap.Core.Deviations;
using PolarityMap.Core.Locate;
using PolarityMap.Core.Strands;

namespace PolarityMap.Benchmarks.Locating;

/// <summary>
/// Tests as they are made without advice, to compare with: along every way in doubt from both ends, in the order of the document or
/// in the middle of what is left of it; then each part on these ways by itself and by eye; then losses; then every place that is
/// still suspect, in the order of the document. The search draws its conclusions from them just the same.
/// </summary>
internal sealed class FixedTests(DeviationContext context, IReadOnlyList<Observation> seen, SimulatedSite site, Way way)
{
    private readonly StrandGraph _graph = context.Graph;
    private readonly TrialGraph _described = new(context.Graph);
    private readonly HashSet<SiteTest> _made = [];
    private readonly List<int[]> _ways = [];

    /// <param name="now">What is known at the time.</param>
    public IEnumerable<SiteTest> InOrder(Func<LocateResult> now) =>
        AlongTheWays().Concat(PartByPart()).Concat(Losses()).Concat(WhatIsSuspect(now)).Where(t => _made.Add(t));

    private IEnumerable<SiteTest> AlongTheWays()
    {
        foreach (int start in Doubtful())
        {
            int end = _described.Follow(start, -1);
            foreach (int from in end < 0 ? [start] : (int[])[start, end])
            {
                _described.Follow(from, -1);
                _ways.Add([.. _described.Walk]);
                int[] parts = [.. _ways[^1].Skip(1).Select(_graph.PartOf).Distinct()];
                int low = 0, high = parts.Length - 1;
                while (low <= high)
                {
                    int at = way == Way.DocumentOrder ? low : (low + high) / 2;
                    var test = new LightTest(from, parts[at], 1);
                    yield return test;
                    if (way == Way.DocumentOrder || ((LightSeen)site.Make(test)).Seen == _described.Follow(from, parts[at]))
                        low = at + 1;
                    else
                        high = at - 1;
                }
            }
        }
    }

    private IEnumerable<SiteTest> PartByPart()
    {
        foreach (int[] walk in _ways)
        {
            foreach (int position in walk.Where(p => !_graph.HasLane(p)))
                yield return new LightTest(position, _graph.PartOf(position), 1);
            foreach (int part in walk.Select(_graph.PartOf).Distinct())
                yield return new LookTest(part, 1);
        }
    }

    /// <summary>From each end of a way, further and further or in the middle of what is left; where light is too weak, and then where a lamp is off.</summary>
    private IEnumerable<SiteTest> Losses()
    {
        foreach (int[] walk in seen.OfType<LossMeasured>().Where(l => l.IsTooMuch).SelectMany(l => (int[])[l.From, l.Seen]).ToArray().Select(WalkFrom).Concat(_ways))
        {
            int[] places = [.. Enumerable.Range(1, walk.Length - 1).Where(i => _described.Follow(walk[0], _graph.PartOf(walk[i])) == walk[i]).Select(i => walk[i])];
            int low = 0, high = places.Length - 1;
            while (low <= high)
            {
                int at = way == Way.DocumentOrder ? low : (low + high) / 2;
                var test = new LossTest(walk[0], places[at], 1);
                yield return test;
                if (way == Way.DocumentOrder || site.Make(test) is LossMeasured { IsTooMuch: false })
                    low = at + 1;
                else
                    high = at - 1;
            }
        }
    }

    private IEnumerable<SiteTest> WhatIsSuspect(Func<LocateResult> now)
    {
        const int mostRounds = 200;
        for (int round = 0; round < mostRounds; round++)
        {
            SiteTest? next = now().Explanations.SelectMany(e => e.Deviations).DistinctBy(d => d.Id).OrderBy(d => d.Parts[0]).SelectMany(At).FirstOrDefault(t => !_made.Contains(t));
            if (next is null)
                yield break;
            yield return next;
        }
    }

    private IEnumerable<SiteTest> At(Deviation deviation)
    {
        foreach (int part in deviation.Parts)
            yield return new LookTest(part, 1);
        foreach (int position in deviation.Patch.Inside.Concat(deviation.Patch.Outside).Select(c => c.Position).Where(p => !_graph.HasLane(p)))
            yield return new LightTest(position, _graph.PartOf(position), 1);
        foreach (int position in deviation.Patch.Outside.Select(c => c.Position).Where(p => _graph.Outside[p] >= 0))
        {
            int start = _graph.HasLane(position) ? position : _graph.Inside[position];
            if (start >= 0)
                yield return new LightTest(start, _graph.PartOf(_graph.Outside[position]), 1);
        }

        foreach (int position in deviation.Lossy.Where(p => _graph.Outside[p] >= 0))
        {
            foreach ((int from, int to) in ((int From, int To)[])[(position, _graph.Outside[position]), (_graph.Outside[position], position)])
            {
                int start = _graph.HasLane(from) ? from : _graph.Inside[from], end = _graph.HasLane(to) ? to : _graph.Inside[to];
                if (start >= 0 && end >= 0)
                    yield return new LossTest(start, end, 1);
            }
        }
    }

    private int[] WalkFrom(int from)
    {
        _described.Follow(from, -1);
        return [.. _described.Walk];
    }

    /// <summary>The lanes of ports that are dark, and lanes that were seen to lead elsewhere.</summary>
    private int[] Doubtful()
    {
        var starts = new List<int>();
        foreach (LampSeen lamp in seen.OfType<LampSeen>().Where(l => !l.IsOn))
            starts.AddRange(context.Plant.Parts[lamp.Port.Part].Shape.Lanes.Where(l => l.Port == lamp.Port.Port).Select(l => _graph.PositionOf(lamp.Port, l.Position)));
        starts.AddRange(seen.OfType<LightSeen>().Select(l => l.From));
        return [.. starts.Distinct()];
    }
}
