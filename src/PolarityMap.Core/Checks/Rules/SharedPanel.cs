using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class SharedPanel : Rule
{
    public override string Code => "S05";

    public override string Title => "networks share a panel";

    public override string Why =>
        "Plugs of several networks sit in one panel, and the policy of one of them forbids it. In a panel cords are moved by hand, often " +
        "in a hurry, and the next adapter is a finger's width away.";

    public override string Clears => "Give the network a panel of its own, or write panel under its may-share if its policy allows that after all.";

    public override string Source => "Follows from the trace and the policy that the document gives the network; the policy itself is common practice.";

    public override string Example => """
        plant: Lighting and sound in one panel
        networks:
          lighting: { colour: red, may-share: [sheath, cassette, array] }
          sound: { colour: blue }
        parts:
          LX-[1..2]: { kind: duplex interface, network: lighting }
          SD-[1..2]: { kind: duplex interface, network: sound }
          PANEL: { kind: duplex panel, ports: 2 }
        runs:
          - LX-1/1, A-to-B cord 2 m, PANEL/1, A-to-B cord 5 m, LX-2/1
          - SD-1/1, A-to-B cord 2 m, PANEL/2, A-to-B cord 5 m, SD-2/1
        links:
          - LX-1/1 to LX-2/1
          - SD-1/1 to SD-2/1

        """;

    public override string Repaired => """
        plant: Lighting and sound in a panel each
        networks:
          lighting: { colour: red, may-share: [sheath, cassette, array] }
          sound: { colour: blue }
        parts:
          LX-[1..2]: { kind: duplex interface, network: lighting }
          SD-[1..2]: { kind: duplex interface, network: sound }
          LX-PANEL: { kind: duplex panel, ports: 2 }
          SD-PANEL: { kind: duplex panel, ports: 2 }
        runs:
          - LX-1/1, A-to-B cord 2 m, LX-PANEL/1, A-to-B cord 5 m, LX-2/1
          - SD-1/1, A-to-B cord 2 m, SD-PANEL/1, A-to-B cord 5 m, SD-2/1
        links:
          - LX-1/1 to LX-2/1
          - SD-1/1 to SD-2/1

        """;

    public override void Check(CheckContext context, List<Finding> findings) =>
        SharingText.Report(this, context, findings, SharedPlace.Panel, (plant, use) => $"the {PartWords.Noun(plant.Parts[use.Part])} {plant.Parts[use.Part].Name}");
}
