using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class SharedArray : Rule
{
    public override string Code => "S04";

    public override string Title => "networks share an array connector";

    public override string Why =>
        "One array connector carries strands of several networks, and the policy of one of them forbids it. Unplugged to clean or to test " +
        "the one, it takes the others down; turned over or put into the wrong adapter, it brings the light of one into another.";

    public override string Clears => "Give the network array connectors of its own, or write array under its may-share if its policy allows that after all.";

    public override string Source => "Follows from the trace and the policy that the document gives the network; the policy itself is common practice.";

    public override string Example => """
        plant: Lighting and sound in one leg of a trunk
        networks:
          lighting: { colour: red, may-share: [sheath, cassette] }
          sound: { colour: blue }
        parts:
          LX-[1..2]: { kind: duplex interface, network: lighting }
          SD-[1..2]: { kind: duplex interface, network: sound }
          K-[1..2]: { kind: U1 cassette, base: 8 }
          T: { kind: Type-B trunk, base: 8, length: 30 m }
        runs:
          - LX-1/1, A-to-B cord 2 m, K-1/1
          - SD-1/1, A-to-B cord 2 m, K-1/2
          - K-1/rear, T, K-2/rear
          - K-2/1, A-to-B cord 2 m, LX-2/1
          - K-2/2, A-to-B cord 2 m, SD-2/1
        links:
          - LX-1/1 to LX-2/1
          - SD-1/1 to SD-2/1

        """;

    public override string Repaired => """
        plant: Lighting and sound in a leg each of one trunk
        networks:
          lighting: { colour: red, may-share: [sheath, cassette] }
          sound: { colour: blue }
        parts:
          LX-[1..2]: { kind: duplex interface, network: lighting }
          SD-[1..2]: { kind: duplex interface, network: sound }
          K-LX-[1..2]: { kind: U1 cassette, base: 8 }
          K-SD-[1..2]: { kind: U1 cassette, base: 8 }
          T: { kind: Type-B trunk, base: 8, legs: 2, length: 30 m }
        runs:
          - LX-1/1, A-to-B cord 2 m, K-LX-1/1
          - SD-1/1, A-to-B cord 2 m, K-SD-1/1
          - K-LX-1/rear, T/1, K-LX-2/rear
          - K-SD-1/rear, T/2, K-SD-2/rear
          - K-LX-2/1, A-to-B cord 2 m, LX-2/1
          - K-SD-2/1, A-to-B cord 2 m, SD-2/1
        links:
          - LX-1/1 to LX-2/1
          - SD-1/1 to SD-2/1

        """;

    public override void Check(CheckContext context, List<Finding> findings) =>
        SharingText.Report(this, context, findings, SharedPlace.Array, (plant, use) => use.Mating is { } mating
            ? $"the array connectors {plant.Address(mating.A)} and {plant.Address(mating.B)}"
            : $"the array connector {plant.Address(use.Port!.Value)}");
}
