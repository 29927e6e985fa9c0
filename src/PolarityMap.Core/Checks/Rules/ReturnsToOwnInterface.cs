using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class ReturnsToOwnInterface : Rule
{
    public override string Code => "P04";

    public override string Title => "returns to its own interface";

    public override string Why =>
        "A strand leaves an interface port and comes back to the same port. The port may report a link, to itself, while the far end is " +
        "dark. It happens with a test loop left in place, or with a pair joined to itself in a splice tray.";

    public override string Clears => "Take the loop out, or move one end of the strand to the port that was meant.";

    public override string Source => "Follows from the trace.";

    public override string Example => """
        plant: A loop left in the switch port
        parts:
          SW-L: duplex interface
        runs:
          - SW-L/1:A, simplex cord 1 m, SW-L/1:B

        """;

    public override string Repaired => """
        plant: The strands go on to another interface
        parts:
          SW-L: duplex interface
          SW-R: duplex interface
        runs:
          - SW-L/1:A, simplex cord 1 m, SW-R/1:B
          - SW-R/1:A, simplex cord 1 m, SW-L/1:B

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        foreach ((PortRef port, Landing landing) in context.LanesAmiss)
        {
            // A strand between two lanes is met from both; its first end counts.
            if (landing.EndPort != port || (landing.ReachesLane && landing.End < landing.Start))
                continue;
            string address = context.Plant.Address(port);
            string far = landing.EndLane is { } lane ? $"own {lane.Direction.Word()}" : "own port, at a position without a lane";
            findings.Add(new Finding(
                this,
                context.Outcomes.LinkAt(port)?.Place ?? context.PlaceOf(landing.Strand),
                $"a strand leaves {address} and comes back to it",
                $"{landing.Lane.Direction.Word()} of {address} on another interface",
                $"{landing.Lane.Direction.Word()} of {address} on its {far}")
            {
                Strands = [landing.Strand],
                Related = context.PlacesAlong([landing.Strand]),
                Links = context.Outcomes.RefutedAt(port),
            });
        }
    }
}
