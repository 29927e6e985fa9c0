namespace PolarityMap.Core.Checks.Rules;

public sealed class ReversedPortOrder : Rule
{
    public override string Code => "D04";

    public override string Title => "reversed port order";

    public override string Why =>
        "All links through one array connector come out in reversed order: the first port at the last, the last at the first. It is the " +
        "mark of a Type-B trunk or an aligned adapter between cassettes that expect a straight one, and of method B with the same cassette " +
        "at both ends: every lamp is lit, on the wrong neighbour.";

    public override string Clears => "Use the second cassette of the method at one end, or exchange the trunk, or turn one adapter.";

    public override string Source => "TIA-568.3 method B needs a second, reversed transition (four public sources); the effect is proved by enumeration.";

    public override string Example => """
        plant: Method B with the same cassette at both ends
        parts:
          SW-L: { kind: duplex interface, ports: 4 }
          SW-R: { kind: duplex interface, ports: 4 }
          K-L: { kind: straight cassette, base: 8, keys: aligned }
          K-R: { kind: straight cassette, base: 8, keys: aligned }
          T: { kind: Type-B trunk, base: 8, length: 30 m }
        runs:
          - SW-L/1..4, A-to-B cord 2 m, K-L/1..4
          - K-L/rear, T, K-R/rear
          - K-R/1..4, A-to-B cord 2 m, SW-R/1..4
        links:
          - SW-L/1..4 to SW-R/1..4

        """;

    public override string Repaired => """
        plant: Method B with its second cassette
        parts:
          SW-L: { kind: duplex interface, ports: 4 }
          SW-R: { kind: duplex interface, ports: 4 }
          K-L: { kind: straight cassette, base: 8, keys: aligned }
          K-R: { kind: straight-reversed cassette, base: 8, keys: aligned }
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
            if (outcome.Miss != Miss.ReversedOrder || outcome.Group[0] != outcome.Index)
                continue;
            LinkOutcome last = context.Outcomes.All[outcome.Group[^1]];
            findings.Add(DestinationText.ForGroup(this, context, outcome.Group,
                $"the {outcome.Group.Count} links from {context.Plant.Address(outcome.Link.From)} to {context.Plant.Address(last.Link.From)} come out in reversed order"));
        }
    }
}
