using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class LinkNobodyWires : Rule
{
    public override string Code => "W04";

    public override string Title => "link that nobody wires";

    public override string Why =>
        "A link is meant, and nothing is plugged into the port at one or both of its ends. The plant as written cannot carry it.";

    public override string Clears => "Write the run that joins the two ports, or take the link out.";

    public override string Source => "Follows from the document's links and runs.";

    public override string Example => """
        plant: Two links meant and one wired
        parts:
          SW-L: { kind: duplex interface, ports: 2 }
          SW-R: { kind: duplex interface, ports: 2 }
        runs:
          - SW-L/1, A-to-B cord 2 m, SW-R/1
        links:
          - SW-L/1..2 to SW-R/1..2

        """;

    public override string Repaired => """
        plant: Two links meant and both wired
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
            LinkEnd[] bare =
            [
                .. new[] { outcome.Link.From, outcome.Link.To }.Where(e => context.Land(e).All(l => !l.IsWired)),
            ];
            if (bare.Length == 0)
                continue;
            string ports = string.Join(" and ", bare.Select(e => context.Plant.Address(e)));
            findings.Add(new Finding(
                this,
                outcome.Link.Place,
                $"nothing is plugged into {ports}",
                DestinationText.Meant(context, outcome.Link),
                $"{ports} unplugged")
            {
                Links = [outcome.Index],
            });
        }
    }
}
