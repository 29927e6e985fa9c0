namespace PolarityMap.Core.Checks.Rules;

public sealed class WrongFarPort : Rule
{
    public override string Code => "D01";

    public override string Title => "wrong far port";

    public override string Why =>
        "A link comes out at an interface port that the document does not mean, or its strands come out at different ports. The lamp may " +
        "well be lit: transmit meets receive, only with the wrong neighbour. It is usually a cord in the wrong port.";

    public override string Clears => "Move the cord to the port that the link names, or correct the link if the wiring is what is wanted.";

    public override string Source => "Follows from the trace and the document's links.";

    public override string Example => """
        plant: The cord sits one port too far
        parts:
          SW-L: duplex interface
          SW-R: { kind: duplex interface, ports: 2 }
        runs:
          - SW-L/1, A-to-B cord 2 m, SW-R/2
        links:
          - SW-L/1 to SW-R/1

        """;

    public override string Repaired => """
        plant: The cord sits in its port
        parts:
          SW-L: duplex interface
          SW-R: { kind: duplex interface, ports: 2 }
        runs:
          - SW-L/1, A-to-B cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        foreach (LinkOutcome outcome in context.Outcomes.All)
        {
            if (outcome.Miss == Miss.WrongPort)
            {
                findings.Add(DestinationText.ForGroup(this, context, outcome.Group,
                    $"the link from {context.Plant.Address(outcome.Link.From)} comes out at {DestinationText.Reached(context, outcome)}, not at {context.Plant.Address(outcome.Link.To)}"));
            }
        }
    }
}
