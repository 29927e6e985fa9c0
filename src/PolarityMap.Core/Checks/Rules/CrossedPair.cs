namespace PolarityMap.Core.Checks.Rules;

public sealed class CrossedPair : Rule
{
    public override string Code => "D02";

    public override string Title => "crossed pair";

    public override string Why =>
        "A link reaches the right port with A and B exchanged, while at least as many of its neighbours through the same array connector are right as are crossed. So the " +
        "method is sound and one pair is at fault: an A-to-A cord for an A-to-B cord, or two fibres exchanged in a field termination or " +
        "splice tray. One circuit is dead and the ones beside it work.";

    public override string Clears => "Exchange the two fibres of one plug of the pair, or the cord at one of its ends.";

    public override string Source => "Symptom: trade practice, one array troubleshooting note; the effect follows from the trace.";

    public override string Example => """
        plant: One pair crossed inside the right cassette
        parts:
          SW-L: { kind: duplex interface, ports: 4 }
          SW-R: { kind: duplex interface, ports: 4 }
          K-L: { kind: U1 cassette, base: 8 }
          K-R: { kind: cassette, base: 8, wiring: [[1, 12], [11, 2], [3, 10], [4, 9]] }
          T: { kind: Type-B trunk, base: 8, length: 30 m }
        runs:
          - SW-L/1..4, A-to-B cord 2 m, K-L/1..4
          - K-L/rear, T, K-R/rear
          - K-R/1..4, A-to-B cord 2 m, SW-R/1..4
        links:
          - SW-L/1..4 to SW-R/1..4

        """;

    public override string Repaired => """
        plant: Every pair of the right cassette lies the same way
        parts:
          SW-L: { kind: duplex interface, ports: 4 }
          SW-R: { kind: duplex interface, ports: 4 }
          K-L: { kind: U1 cassette, base: 8 }
          K-R: { kind: cassette, base: 8, wiring: [[1, 12], [2, 11], [3, 10], [4, 9]] }
          T: { kind: Type-B trunk, base: 8, length: 30 m }
        runs:
          - SW-L/1..4, A-to-B cord 2 m, K-L/1..4
          - K-L/rear, T, K-R/rear
          - K-R/1..4, A-to-B cord 2 m, SW-R/1..4
        links:
          - SW-L/1..4 to SW-R/1..4

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        foreach (LinkOutcome outcome in context.Outcomes.All)
        {
            if (!outcome.IsCrossedPair)
                continue;
            string from = context.Plant.Address(outcome.Link.From);
            string to = context.Plant.Address(outcome.Link.To);
            int right = outcome.Group.Count(i => context.Outcomes.All[i].IsProven);
            findings.Add(new Finding(
                this,
                outcome.Link.Place,
                $"the pair from {from} reaches {to} with A and B exchanged, so transmit meets transmit; {right} of {outcome.Group.Count} links through its array are right",
                $"transmit of {from} on receive of {to}",
                $"transmit of {from} on transmit of {to}, receive on receive")
            {
                Strands = outcome.Strands,
                Related = context.PlacesAlong(outcome.Strands),
                Links = [outcome.Index],
                Remedies = PlugExchange.For(context, outcome.Strands),
            });
        }
    }
}
