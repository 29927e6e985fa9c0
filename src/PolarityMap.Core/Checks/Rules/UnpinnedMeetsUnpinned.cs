using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class UnpinnedMeetsUnpinned : MatingRule
{
    public override string Code => "M02";

    public override string Title => "unpinned meets unpinned";

    public override string Why =>
        "Of two array ferrules exactly one has guide pins. Two unpinned ones go together and feel right, but nothing aligns their fibres: " +
        "the loss is high and changes with every touch. It is the usual fault where a trunk bought for cassettes meets cords in an adapter panel.";

    public override string Clears =>
        "Use pins on one side: a trunk that meets cords in an adapter panel has them (pins: both), and so has a cassette that meets an unpinned trunk.";

    public override string Source =>
        "TIA-604-5 and IEC 61754-7 (more than six public sources); the unstable loss: three public sources; pinned trunks at panels: two.";

    public override string Example => """
        plant: An unpinned trunk meets cords in a panel
        parts:
          QS-L: parallel interface
          QS-R: parallel interface
          P-L: { kind: array panel, ports: 1, keys: aligned }
          P-R: { kind: array panel, ports: 1, keys: aligned }
          T: { kind: Type-B trunk, length: 30 m }
        runs:
          - QS-L/1, Type-B cord 2 m, P-L/1, T, P-R/1, Type-B cord 2 m, QS-R/1
        links:
          - QS-L/1 to QS-R/1

        """;

    public override string Repaired => """
        plant: A pinned trunk meets cords in a panel
        parts:
          QS-L: parallel interface
          QS-R: parallel interface
          P-L: { kind: array panel, ports: 1, keys: aligned }
          P-R: { kind: array panel, ports: 1, keys: aligned }
          T: { kind: Type-B trunk, length: 30 m, pins: both }
        runs:
          - QS-L/1, Type-B cord 2 m, P-L/1, T, P-R/1, Type-B cord 2 m, QS-R/1
        links:
          - QS-L/1 to QS-R/1

        """;

    private protected override StopFault? Judge(CheckContext context, Mating mating) =>
        MatingText.IsArray(context.Plant, mating) && context.Plant.Port(mating.A).Pinned == false && context.Plant.Port(mating.B).Pinned == false
            ? new StopFault(
                "",
                $"{MatingText.Both(context.Plant, mating)} both lack guide pins, so nothing aligns their fibres",
                "pins on one side and holes on the other",
                "pins on neither side: it seats, with high and unstable loss")
            : null;
}
