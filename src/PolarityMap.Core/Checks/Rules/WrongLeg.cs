using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class WrongLeg : Rule
{
    public override string Code => "D05";

    public override string Title => "wrong leg";

    public override string Why =>
        "Every link on one leg of a trunk or harness comes out where the links of another leg should. The pairs inside the leg are right, " +
        "so the fault is the leg as a whole: plugged into the neighbouring cassette or port. Lamps are lit, on the wrong ports.";

    public override string Clears => "Exchange the two legs at one end, or move the leg to the cassette or port that was meant.";

    public override string Source => "Symptom: common practice; the effect follows from the trace and the document's links.";

    public override string Example => """
        plant: Two legs exchanged at the right end
        parts:
          SW-L: { kind: duplex interface, ports: 8 }
          SW-R: { kind: duplex interface, ports: 8 }
          K-L[1..2]: { kind: U1 cassette, base: 8 }
          K-R[1..2]: { kind: U1 cassette, base: 8 }
          T: { kind: Type-B trunk, base: 8, legs: 2, length: 30 m }
        runs:
          - SW-L/1..8, A-to-B cord 2 m, K-L[1..2]/1..4
          - K-L[1..2]/rear, T/1..2, K-R[2,1]/rear
          - K-R[1..2]/1..4, A-to-B cord 2 m, SW-R/1..8
        links:
          - SW-L/1..8 to SW-R/1..8

        """;

    public override string Repaired => """
        plant: Each leg in its own cassette
        parts:
          SW-L: { kind: duplex interface, ports: 8 }
          SW-R: { kind: duplex interface, ports: 8 }
          K-L[1..2]: { kind: U1 cassette, base: 8 }
          K-R[1..2]: { kind: U1 cassette, base: 8 }
          T: { kind: Type-B trunk, base: 8, legs: 2, length: 30 m }
        runs:
          - SW-L/1..8, A-to-B cord 2 m, K-L[1..2]/1..4
          - K-L[1..2]/rear, T/1..2, K-R[1..2]/rear
          - K-R[1..2]/1..4, A-to-B cord 2 m, SW-R/1..8
        links:
          - SW-L/1..8 to SW-R/1..8

        """;

    public override void Check(CheckContext context, List<Finding> findings)
    {
        foreach (LinkOutcome outcome in context.Outcomes.All)
        {
            if (outcome.Miss != Miss.WrongLeg || outcome.Group[0] != outcome.Index)
                continue;
            (int part, int leg, int other) = outcome.Legs;
            bool exchanged = AnyOf(context, outcome.Group, other);
            string name = context.Plant.Parts[part].Name;
            findings.Add(DestinationText.ForGroup(this, context, outcome.Group, exchanged
                ? $"legs {Math.Min(leg, other)} and {Math.Max(leg, other)} of {name} have changed places at one end: their {outcome.Group.Count} links come out at each other's ports"
                : $"leg {leg} of {name} comes out where leg {other} should: its {outcome.Group.Count} links land there") with
            { At = PlugsOf(context.Plant.Parts[part].Shape, part, leg, exchanged ? other : leg) });
        }
    }

    /// <summary>The plugs at both ends of the legs: which end is wrong is not seen from where the links come out.</summary>
    private static FindingSite[] PlugsOf(Shape shape, int part, int leg, int other) =>
        [.. Enumerable.Range(0, shape.Ports.Count).Where(p => shape.Ports[p].Leg == leg || shape.Ports[p].Leg == other).Select(p => FindingSite.Of(new PortRef(part, p)))];

    private static bool AnyOf(CheckContext context, IReadOnlyList<int> links, int leg) => links.Any(i => context.Outcomes.All[i].Legs.Leg == leg);
}
