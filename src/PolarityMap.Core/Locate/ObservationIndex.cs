using PolarityMap.Core.Deviations;

namespace PolarityMap.Core.Locate;

/// <summary>
/// Which observations a change at a position can bear on: those whose light passes it in the plant as described. All others stay
/// as they are, whatever else is laid.
/// </summary>
internal sealed class ObservationIndex
{
    private readonly Dictionary<int, List<int>> _byPosition = [];
    private readonly Dictionary<int, List<int>> _byPart = [];
    private readonly Dictionary<DeviationId, int[]> _affected = [];

    public ObservationIndex(IReadOnlyList<Observation> observations, Predictor predictor, PositionMarks ways)
    {
        var refuted = new List<int>();
        for (int i = 0; i < observations.Count; i++)
        {
            ways.Clear();
            if (!predictor.Agrees(observations[i], ways))
                refuted.Add(i);
            foreach (int position in ways.Members)
                Note(_byPosition, position, i);
            if (observations[i] is PartLooked look)
                Note(_byPart, look.Part, i);
        }

        Refuting = refuted;
    }

    /// <summary>The observations that refute the plant as described, in order.</summary>
    public IReadOnlyList<int> Refuting { get; }

    /// <summary>The observations that a deviation can bear on, in order.</summary>
    public int[] AffectedBy(Deviation deviation)
    {
        if (_affected.TryGetValue(deviation.Id, out int[]? known))
            return known;
        var found = new SortedSet<int>();
        foreach (Rejoined change in deviation.Patch.Inside)
            Take(_byPosition, change.Position, found);
        foreach (Rejoined change in deviation.Patch.Outside)
            Take(_byPosition, change.Position, found);
        foreach (int position in deviation.Lossy)
            Take(_byPosition, position, found);
        foreach (int part in deviation.Parts)
            Take(_byPart, part, found);
        return _affected[deviation.Id] = [.. found];
    }

    private static void Note(Dictionary<int, List<int>> lists, int key, int observation)
    {
        if (!lists.TryGetValue(key, out List<int>? list))
            lists[key] = list = [];
        list.Add(observation);
    }

    private static void Take(Dictionary<int, List<int>> lists, int key, SortedSet<int> found)
    {
        if (lists.TryGetValue(key, out List<int>? list))
            found.UnionWith(list);
    }
}
