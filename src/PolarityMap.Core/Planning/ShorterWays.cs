using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Planning;

/// <summary>Searches the longest way with which a refusal is gone.</summary>
/// <param name="brief">The brief that is refused.</param>
/// <param name="changes">Makes the changed ones.</param>
/// <param name="clears">Whether a changed brief is free of the refusal.</param>
internal sealed class ShorterWays(Brief brief, BriefChanges changes, Func<NearestBrief, bool> clears)
{
    private const long Metre = 1_000;

    /// <summary>The way that a refusal names, the longest to a room and the longest on to outlets, each to the metre where it alone clears.</summary>
    public IEnumerable<NearestBrief> Of(Refusal refusal)
    {
        BriefRoom? room = brief.Rooms.Where((r, i) => r.Distance is not null && brief.Outlets.Any(o => o.Room == i)).MaxBy(r => r.Distance!.Value.Millimetres);
        BriefOutlets? outlets = brief.Outlets.Where(o => o.Distance is not null).MaxBy(o => o.Distance!.Value.Millimetres);
        string?[] keys = [refusal.Requirement, room is null ? null : $"rooms.{room.Name}.distance", outlets is null ? null : BriefChanges.PathOf(outlets)];
        return keys.OfType<string>().Distinct().Select(Longest).OfType<NearestBrief>();
    }

    private NearestBrief? Longest(string requirement)
    {
        if (WayOf(requirement) is not { } way)
            return null;
        long fits = 1, fails = (way.Millimetres + Metre - 1) / Metre;
        if (fails <= fits || !clears(Way(requirement, fits)))
            return null;
        while (fails - fits > 1)
        {
            long middle = (fits + fails) / 2;
            if (clears(Way(requirement, middle)))
                fits = middle;
            else
                fails = middle;
        }

        return Way(requirement, fits);
    }

    private Length? WayOf(string requirement) =>
        brief.Rooms.FirstOrDefault(r => requirement == $"rooms.{r.Name}.distance")?.Distance
        ?? (changes.Outlets(requirement) is [var first, ..] ? first.Distance : null);

    private NearestBrief Way(string requirement, long metres)
    {
        var length = Length.FromMillimetres(metres * Metre);
        IReadOnlyList<BriefOutlets> outlets = changes.Outlets(requirement);
        return changes.Changed($"{(outlets.Count > 0 ? BriefChanges.PathOf(outlets[0]) : requirement)}: at most {length}", brief with
        {
            Rooms = [.. brief.Rooms.Select(r => requirement == $"rooms.{r.Name}.distance" ? r with { Distance = length } : r)],
            Outlets = [.. brief.Outlets.Select(o => outlets.Contains(o) ? o with { Distance = length } : o)],
        });
    }
}
