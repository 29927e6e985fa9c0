using PolarityMap.Core.Deviations;
using PolarityMap.Core.Plants;
using PolarityMap.Core.Remedies.Kinds;

namespace PolarityMap.Core.Remedies;

/// <summary>
/// Which changes can bear on something that is wrong. Whatever clears it has to change the way of the light that is led wrong,
/// or a part or plug at the place of the finding: nothing else need be tried.
/// </summary>
internal sealed class Pools(ChangeContext context, MeantEnds meant, LightTrial trial)
{
    private readonly Dictionary<int, IReadOnlyList<Change>> _ofLane = [];

    /// <summary>Changes on the way of a lane's light, as changes that are laid lead it.</summary>
    public IReadOnlyList<Change> OfLane(int lane)
    {
        if (trial.Laid.Count > 0)
            return Make(lane);
        if (!_ofLane.TryGetValue(lane, out IReadOnlyList<Change>? known))
            _ofLane[lane] = known = Make(lane);
        return known;
    }

    /// <summary>Changes at the places of a finding, of the kinds that are worth trying for its rule.</summary>
    public IReadOnlyList<Change> OfPlaces(FindingPlaces places)
    {
        var pool = new Gathering();
        if (!ChangeCatalogue.All.Any(k => k.MayClear(places.Rule)))
            return pool.All;
        foreach (int part in places.Parts)
            pool.Add(context.AtPart(part).Where(c => c.Kind.MayClear(places.Rule)));
        Change[] alone = [.. pool.All];
        foreach (PortRef port in places.Ports)
            pool.Add(context.AtPort(port).Where(c => c.Kind.MayClear(places.Rule)));
        pool.Add(Together(alone));
        return pool.All;
    }

    private Change[] Make(int lane)
    {
        List<int> way = trial.Way(lane);
        var parts = new SortedSet<int>();
        var ports = new HashSet<PortRef>();
        FindingPlaces.AddWay(context.Traced, System.Runtime.InteropServices.CollectionsMarshal.AsSpan(way), parts, ports);
        var pool = new Gathering();
        foreach (int part in parts)
            pool.Add(context.AtPart(part).Where(c => !c.Patch.IsEmpty || c.Kind is OtherTransceiver));
        foreach (PortRef port in ports)
            pool.Add(context.AtPort(port));

        // Where plugs have been moved already, what leads where is no more what the plant says.
        if (meant.Of(lane) is >= 0 and int end && trial.Laid.All(c => c.Differences.All(d => d is PartDiffers)))
            pool.Add(context.Toward(way, trial.Way(end)));
        return [.. pool.All];
    }

    /// <summary>The same change at all parts that one line of the document makes.</summary>
    private IEnumerable<Change> Together(Change[] changes)
    {
        var lines = changes.Where(c => c.Differences[0] is PartDiffers)
            .GroupBy(c => (c.Kind, c.Id.Variant, context.Plant.Parts[c.Parts[0]].Place));
        foreach (var line in lines)
        {
            Change[] alike = [.. line];
            if (alike.Length > 1 && context.Together(alike) is { } all)
                yield return all;
        }
    }

    /// <summary>Changes in the order in which they come, each once.</summary>
    private sealed class Gathering
    {
        private readonly HashSet<ChangeId> _seen = [];
        private readonly List<Change> _all = [];

        public IReadOnlyList<Change> All => _all;

        public void Add(IEnumerable<Change> changes)
        {
            foreach (Change change in changes)
            {
                if (_seen.Add(change.Id))
                    _all.Add(change);
            }
        }
    }
}
