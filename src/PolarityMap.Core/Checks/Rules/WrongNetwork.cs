using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class WrongNetwork : Rule
{
    public override string Code => "D06";

    public override string Title => "wrong network";

    public override string Why =>
        "A strand joins interfaces of two networks that are meant to be physically separate. The separation that the plant was built for is " +
        "gone, whether or not the lamps are lit. Usually two cords were exchanged where the networks come close: at a zone box or a desk.";

    public override string Clears => "Move the cord back to its own network's port, or correct the network that the document gives the interface.";

    public override string Source => "Follows from the trace and the document's networks.";

    public override string Example => """
        plant: The sound desk sits on the lighting switch
        networks:
          lighting: { colour: red }
          sound: { colour: blue }
        parts:
          LIGHT-SW: { kind: duplex interface, network: lighting }
          SOUND-DESK: { kind: duplex interface, network: sound }
        runs:
          - LIGHT-SW/1, A-to-B cord 2 m, SOUND-DESK/1

        """;

    public override string Repaired => """
        plant: The lighting desk sits on the lighting switch
        networks:
          lighting: { colour: red }
          sound: { colour: blue }
        parts:
          LIGHT-SW: { kind: duplex interface, network: lighting }
          LIGHT-DESK: { kind: duplex interface, network: lighting }
        runs:
          - LIGHT-SW/1, A-to-B cord 2 m, LIGHT-DESK/1

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        // One network has no other to be joined to.
        if (context.Plant.Networks.Count < 2)
            return;
        var bridges = new Dictionary<(PortRef A, PortRef B), List<int>>();
        foreach ((PortRef port, Landing landing) in context.WiredLanes())
        {
            if (!landing.ReachesLane || landing.End < landing.Start || NetworkOf(context, port) is not { } here
                || NetworkOf(context, landing.EndPort) is not { } there || here == there)
                continue;
            if (!bridges.TryGetValue((port, landing.EndPort), out List<int>? strands))
                bridges[(port, landing.EndPort)] = strands = [];
            strands.Add(landing.Strand);
        }

        foreach (((PortRef first, PortRef second), List<int> strands) in bridges)
        {
            // The link that starts at either port tells the finding's direction.
            Link? link = context.Outcomes.LinkAt(first) is { } one && one.From.Port == first ? one
                : context.Outcomes.LinkAt(second) is { } two && two.From.Port == second ? two
                : context.Outcomes.LinkAt(first) ?? context.Outcomes.LinkAt(second);
            (PortRef a, PortRef b) = link?.From.Port == second ? (second, first) : (first, second);
            string here = context.Plant.Networks[context.Plant.NetworkOf(a)].Name;
            string there = context.Plant.Networks[context.Plant.NetworkOf(b)].Name;
            findings.Add(new Finding(
                this,
                link?.Place ?? context.PlaceOf(strands[0]),
                $"{context.Plant.Address(a)} of network {here} is joined to {context.Plant.Address(b)} of network {there}; they meet {MeetingPlace.Words(context, strands[0], context.Plant.NetworkOf(a))}",
                link is null
                    ? $"{context.Plant.Address(a)} at an interface of {here}"
                    : $"{context.Plant.Address(link.From)} at {context.Plant.Address(link.To)}",
                $"{context.Plant.Address(a)} at {context.Plant.Address(b)}, an interface of {there}")
            {
                Strands = strands,
                At = MeetingPlace.Sites(context, strands, context.Plant.NetworkOf(a)),
                Related = context.PlacesAlong(strands),
                Links = context.Outcomes.RefutedOn(strands),
            });
        }
    }

    private static int? NetworkOf(CheckContext context, PortRef port) =>
        context.Plant.NetworkOf(port) is >= 0 and int n ? n : null;
}
