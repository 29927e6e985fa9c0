namespace PolarityMap.Core.Checks.Rules;

public sealed class TransposedPairs : Rule
{
    public override string Code => "D03";

    public override string Title => "transposed pairs";

    public override string Why =>
        "Two links have exchanged their far ports. Both lamps are lit, and each end talks to the other's neighbour. Usually two cords were " +
        "exchanged at one panel, or two pairs in a termination.";

    public override string Clears => "Exchange the two cords, or the two pairs, at one place along the way.";

    public override string Source => "Symptom: common practice; the effect follows from the trace and the document's links.";

    public override string Example => """
        plant: Two cords exchanged at the right switch
        parts:
          SW-L: { kind: duplex interface, ports: 2 }
          SW-R: { kind: duplex interface, ports: 2 }
        runs:
          - SW-L/1..2, A-to-B cord 2 m, SW-R/[2,1]
        links:
          - SW-L/1..2 to SW-R/1..2

        """;

    public override string Repaired => """
        plant: Each cord in its own port
        parts:
          SW-L: { kind: duplex interface, ports: 2 }
          SW-R: { kind: duplex interface, ports: 2 }
        runs:
          - SW-L/1..2, A-to-B cord 2 m, SW-R/1..2
        links:
          - SW-L/1..2 to SW-R/1..2

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        foreach (LinkOutcome outcome in context.Outcomes.All)
        {
            if (outcome.Miss != Miss.Transposed || outcome.Group[0] != outcome.Index)
                continue;
            LinkOutcome other = context.Outcomes.All[outcome.ReachesFarOf];
            findings.Add(DestinationText.ForGroup(this, context, outcome.Group,
                $"the links from {context.Plant.Address(outcome.Link.From)} and {context.Plant.Address(other.Link.From)} have exchanged their far ports"));
        }
    }
}
