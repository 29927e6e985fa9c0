using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class SharedSheath : Rule
{
    public override string Code => "S02";

    public override string Title => "networks share a sheath";

    public override string Why =>
        "Fibres of several networks lie under one jacket, and the policy of one of them forbids it. Light does not leak from fibre to " +
        "fibre, but one cut or one pulled cable takes all of them down at once, and whoever works on the one handles the others.";

    public override string Clears => "Give the network a cable of its own, or write sheath under its may-share if its policy allows that after all.";

    public override string Source => "Follows from the trace and the policy that the document gives the network; the policy itself is common practice.";

    public override string Example => """
        plant: Lighting and sound in one trunk
        networks:
          lighting: { colour: red, may-share: [panel] }
          sound: { colour: blue }
        parts:
          LX-[1..2]: { kind: parallel interface, network: lighting }
          SD-[1..2]: { kind: parallel interface, network: sound }
          T: { kind: Type-B trunk, base: 8, legs: 2, length: 30 m }
        runs:
          - LX-1/1, T/1, LX-2/1
          - SD-1/1, T/2, SD-2/1
        links:
          - LX-1/1 to LX-2/1
          - SD-1/1 to SD-2/1

        """;

    public override string Repaired => """
        plant: Lighting and sound in a trunk each
        networks:
          lighting: { colour: red, may-share: [panel] }
          sound: { colour: blue }
        parts:
          LX-[1..2]: { kind: parallel interface, network: lighting }
          SD-[1..2]: { kind: parallel interface, network: sound }
          LX-T: { kind: Type-B trunk, base: 8, length: 30 m }
          SD-T: { kind: Type-B trunk, base: 8, length: 30 m }
        runs:
          - LX-1/1, LX-T, LX-2/1
          - SD-1/1, SD-T, SD-2/1
        links:
          - LX-1/1 to LX-2/1
          - SD-1/1 to SD-2/1

        """;

    public override void Check(CheckContext context, List<Finding> findings) =>
        SharingText.Report(this, context, findings, SharedPlace.Sheath, (plant, use) => $"the sheath of {plant.Parts[use.Part].Name}");
}
