using PolarityMap.Core.Parts;

namespace PolarityMap.Core.Checks;

/// <summary>Where strands should come out that links refute: the lane at the link's far port that hears, or sends to, their own.</summary>
public static class ExpectedEnds
{
    /// <summary>
    /// For each strand that starts at the first end of a link and comes out elsewhere than meant, the position where it should.
    /// A lane is meant to meet the lane of its own number in the other direction.
    /// </summary>
    public static IReadOnlyDictionary<int, int> Of(CheckContext context)
    {
        var ends = new Dictionary<int, int>();
        foreach (LinkOutcome outcome in context.Outcomes.All)
        {
            if (outcome.IsProven)
                continue;
            foreach (Landing landing in outcome.Landings)
            {
                if (landing.IsWired && context.Traced.Strands[landing.Strand][0] == landing.Start
                    && MeantFor(context, outcome, landing) is { } end && end != landing.End)
                {
                    ends.TryAdd(landing.Strand, end);
                }
            }
        }

        return ends;
    }

    private static int? MeantFor(CheckContext context, LinkOutcome outcome, Landing landing)
    {
        Plants.LinkEnd to = outcome.Link.To;
        foreach (Lane lane in context.Plant.Parts[to.Port.Part].Shape.Lanes)
        {
            if (lane.Port != to.Port.Port || (to.Lane > 0 && lane.Group != to.Lane))
                continue;
            bool answers = landing.Lane.Direction == LaneDirection.Both ? lane.Direction == LaneDirection.Both
                : lane.Direction != landing.Lane.Direction && lane.Direction != LaneDirection.Both;

            // Where either end is one lane of a split port, its one lane each way is meant, whatever its number.
            bool same = lane.Number == landing.Lane.Number || to.Lane > 0 || outcome.Link.From.Lane > 0;
            if (answers && same)
                return context.Traced.Graph.PositionOf(to.Port, lane.Position);
        }

        return null;
    }
}
