namespace PolarityMap.Core.Planning;

/// <summary>What is worth knowing of a brief and stands in nobody's way.</summary>
/// <param name="About">The path of its key in the brief.</param>
/// <param name="Words">A sentence without a full stop.</param>
public sealed record BriefRemark(string About, string Words)
{
    /// <summary>What the brief names and nothing uses.</summary>
    public static IReadOnlyList<BriefRemark> Of(Brief brief)
    {
        var remarks = new List<BriefRemark>();
        for (int n = 0; n < brief.Networks.Count; n++)
        {
            if (brief.Outlets.All(o => o.Links[n] == 0))
                remarks.Add(new($"networks.{brief.Networks[n].Name}", $"No outlet has a link on {brief.Networks[n].Name}"));
        }

        for (int r = 0; r < brief.Rooms.Count; r++)
        {
            if (!brief.Outlets.Any(o => o.Room == r || brief.Rooms[o.Room].From == r))
                remarks.Add(new($"rooms.{brief.Rooms[r].Name}", $"No outlet is in {brief.Rooms[r].Name}"));
        }

        return remarks;
    }
}
