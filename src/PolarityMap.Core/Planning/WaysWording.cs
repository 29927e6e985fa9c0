using PolarityMap.Core.Optics;

namespace PolarityMap.Core.Planning;

/// <summary>The ways of a brief with the cables that cover them.</summary>
internal static class WaysWording
{
    /// <summary>All ways that a cable is laid along; null where there is none.</summary>
    public static PlanDecision? Of(Brief brief)
    {
        var ways = new List<string>();
        for (int r = 0; r < brief.Rooms.Count; r++)
        {
            BriefRoom room = brief.Rooms[r];
            BriefOutlets[] outlets = [.. brief.Outlets.Where(o => o.Room == r)];
            bool hasTrunks = outlets.Any(o => o.Distance is null || brief.SegmentsTo(o) == 2);
            if (room.Distance is { } way && hasTrunks)
                ways.Add($"{way} to {room.Name} takes {Cable(brief, way.Millimetres)}");
            foreach (BriefOutlets o in outlets)
            {
                if (o.Distance is not { } on)
                    continue;
                ways.Add(brief.SegmentsTo(o) == 2 ? $"{on} on to {o.Name} takes {Cable(brief, on.Millimetres)}"
                    : room.Distance is { } there ? $"{there} to {room.Name} and {on} on to {o.Name} take {Cable(brief, there.Millimetres + on.Millimetres)}"
                    : $"{on} to {o.Name} takes {Cable(brief, on.Millimetres)}");
            }
        }

        string slack = brief.Slack.Over(Length.FromMillimetres(1_000).Millimetres) == 1_000 ? "without slack" : $"with slack of {brief.Slack}";
        string up = brief.StockLengths.Count > 0 ? "up to the next length in stock" : "up to the metre";
        return ways.Count == 0 ? null : new("slack", $"Ways and their cables, {slack}, {up}: {string.Join("; ", ways)}", "no cable is shorter than its way; cords are as long as the brief says and not held against places in racks");
    }

    private static Length Cable(Brief brief, long way) => PlanDraft.CableOf(brief, way) ?? PlanDraft.WholeMetres(brief.Slack.Over(way));
}
