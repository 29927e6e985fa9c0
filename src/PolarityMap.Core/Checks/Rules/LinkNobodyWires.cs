using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class LinkNobodyWires : Rule
{
    public override string Code => "W04";

    public override string Title => "link that nobody wires";

    public override string Why =>
        "A link is meant, and no interface is joined to the port at one or both of its ends, or to one position of it. The plant as " +
        "written cannot carry the link.";

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
            if (outcome.IsProven || outcome.Miss != Miss.None)
                continue;
            LinkEnd[] ends = [outcome.Link.From, outcome.Link.To];

            // What another rule says more about is left to it.
            if (ends.Any(e => context.Land(e).Any(l => IsToldElsewhere(context, l))))
                continue;
            string ports = string.Join(" and ", ends.Select(e => Bare(context, e)).Where(t => t.Length > 0));
            findings.Add(new Finding(
                this,
                outcome.Link.Place,
                $"{(ends.All(e => context.Land(e).All(l => !l.IsWired || l.EndLane is not null)) ? "nothing is plugged into" : "no interface is joined to")} {ports}",
                DestinationText.Meant(context, outcome.Link),
                $"nothing at {ports}")
            {
                Links = [outcome.Index],
            });
        }
    }

    /// <summary>A dark transmit, a strand that comes back, two lanes that do not hear each other, a plug that cannot go in.</summary>
    private static bool IsToldElsewhere(CheckContext context, Landing landing) =>
        context.IsRefused(landing.EndPort)
        || (landing.IsWired
            && ((landing.EndLane is null && landing.Lane.Direction != LaneDirection.Receive)
                || landing.EndPort == context.Traced.Graph.PlaceOf(landing.Start).Port
                || (landing.EndLane is not null && !landing.IsHeard)));

    /// <summary>The port of a link's end that no interface reaches, or those positions of it; else nothing.</summary>
    private static string Bare(CheckContext context, LinkEnd end)
    {
        IReadOnlyList<Landing> lanes = context.Land(end);
        Landing[] bare = [.. lanes.Where(l => l.EndLane is null || !l.IsWired)];
        return bare.Length == lanes.Count ? context.Plant.Address(end) : string.Join(" and ", bare.Select(l => context.Traced.Address(l.Start)));
    }
}
