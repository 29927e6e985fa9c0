using PolarityMap.Drawing.Scene;

namespace PolarityMap.Drawing.Views.Strands;

/// <summary>Leads strands through the crossings of a placement; each braid is made once.</summary>
internal sealed class CrossingLeads(Placement placement, double originY)
{
    private readonly Dictionary<Crossing, Braid> _braids = [];

    /// <summary>The height of a row on the sheet.</summary>
    public double Y(Row row) => originY + placement.Y(row);

    /// <summary>Leads a strand from its row through a crossing that has the room from one x to another, using no more than it needs or all of it.</summary>
    public void Cross(Crossing crossing, int index, double x0, double x1, List<RouteSegment> segments, bool whole = false)
    {
        if (!_braids.TryGetValue(crossing, out Braid? braid))
            _braids[crossing] = braid = placement.At(crossing);
        if (!whole)
            (x0, x1) = placement.Stretch(braid, x0, x1);
        segments.Add(RouteSegment.Line(new Point(x0, Y(crossing.Rows[index].Left))));
        braid.Lead(index, x0, x1, originY, segments);
    }
}
