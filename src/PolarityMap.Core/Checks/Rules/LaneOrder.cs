using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class LaneOrder : Rule
{
    public override string Code => "P05";

    public override string Title => "lane order";

    public override string Why =>
        "Both ports are split into separate links, and a lane comes out at another lane of the right port. Each lane is a link of its " +
        "own here, so its light arrives at the wrong link. Where a port is one link the order of its lanes does not matter: receivers " +
        "put them in order again.";

    public override string Clears =>
        "Exchange the legs or positions that differ, use a cable that keeps the order (an odd number of reversals and no pair flip), or take breakout off both ports if they are one link.";

    public override string Source => "Follows from the trace and the document's links. That one port's receivers re-order lanes: IEEE 802.3 clause 82, from memory.";

    public override string Example => """
        plant: Two lanes exchanged between two split ports
        parts:
          QS-L: { kind: parallel interface, breakout: 4x }
          QS-R: { kind: parallel interface, breakout: 4x }
          C: { kind: array cord, base: 8, wiring: [[1,11],[2,12],[3,10],[4,9],[9,4],[10,3],[11,1],[12,2]] }
        runs:
          - QS-L/1, C, QS-R/1
        links:
          - QS-L/1:1..4 to QS-R/1:1..4

        """;

    public override string Repaired => """
        plant: Lane for lane between two split ports
        parts:
          QS-L: { kind: parallel interface, breakout: 4x }
          QS-R: { kind: parallel interface, breakout: 4x }
          C: { kind: array cord, base: 8, type: Type-B }
        runs:
          - QS-L/1, C, QS-R/1
        links:
          - QS-L/1:1..4 to QS-R/1:1..4

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        var byPorts = new Dictionary<(PortRef From, PortRef To), List<int>>();
        foreach (LinkOutcome outcome in context.Outcomes.All)
        {
            if (outcome.Miss != Miss.LaneOrder)
                continue;
            (PortRef From, PortRef To) ports = (outcome.Link.From.Port, outcome.Link.To.Port);
            if (!byPorts.TryGetValue(ports, out List<int>? group))
                byPorts[ports] = group = [];
            group.Add(outcome.Index);
        }

        foreach ((var ports, List<int> group) in byPorts)
        {
            findings.Add(DestinationText.ForGroup(this, context, group,
                $"{(group.Count == 1 ? "a lane" : $"{group.Count} lanes")} of {context.Plant.Address(ports.From)} {(group.Count == 1 ? "comes" : "come")} out at another lane of {context.Plant.Address(ports.To)}, and the lanes are separate links"));
        }
    }
}
