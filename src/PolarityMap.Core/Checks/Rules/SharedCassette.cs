using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class SharedCassette : Rule
{
    public override string Code => "S03";

    public override string Title => "networks share a cassette";

    public override string Why =>
        "Fibres of several networks run inside one cassette, module or outlet, and the policy of one of them forbids it. Their ports sit " +
        "side by side, where a cord goes into the neighbour's port in a moment, and whoever changes the housing takes all of them down.";

    public override string Clears => "Give the network a cassette of its own, or write cassette under its may-share if its policy allows that after all.";

    public override string Source => "Follows from the trace and the policy that the document gives the network; the policy itself is common practice.";

    public override string Example => """
        plant: Lighting and sound in one cassette
        networks:
          lighting: { colour: red, may-share: [sheath, array] }
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
        plant: Lighting and sound in cassettes of their own, on a leg each
        networks:
          lighting: { colour: red, may-share: [sheath, array] }
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
        SharingText.Report(this, context, findings, SharedPlace.Cassette, (plant, use) => $"the {PartWords.Noun(plant.Parts[use.Part])} {plant.Parts[use.Part].Name}");
}
