using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class PinnedMeetsPinned : MatingRule
{
    public override string Code => "M01";

    public override string Title => "pinned meets pinned";

    public override string Why =>
        "Of two array ferrules exactly one has guide pins, which go into the holes of the other. Two pinned ones cannot seat, and the " +
        "pins or the ferrules are damaged when they are pushed together. Adapters have no gender, so nothing stops the hand.";

    public override string Clears => "Use an unpinned plug on one side: cords that enter interfaces have none, and of trunk and cassette one has.";

    public override string Source =>
        "TIA-604-5 and IEC 61754-7 (more than six public sources); that pinned ones cannot seat and are damaged: three public sources.";

    public override string Example => """
        plant: A pinned cord enters a parallel port
        parts:
          QS-L: parallel interface
          QS-R: parallel interface
          C: { kind: Type-B cord, length: 5 m, pins: far }
        runs:
          - QS-L/1, C, QS-R/1
        links:
          - QS-L/1 to QS-R/1

        """;

    public override string Repaired => """
        plant: An unpinned cord between two parallel ports
        parts:
          QS-L: parallel interface
          QS-R: parallel interface
          C: { kind: Type-B cord, length: 5 m }
        runs:
          - QS-L/1, C, QS-R/1
        links:
          - QS-L/1 to QS-R/1

        """;

    private protected override StopFault? Judge(CheckContext context, Mating mating) =>
        MatingText.IsArray(context.Plant, mating) && context.Plant.Port(mating.A).Pinned == true && context.Plant.Port(mating.B).Pinned == true
            ? new StopFault(
                "",
                $"{MatingText.Both(context.Plant, mating)} both have guide pins and cannot seat",
                "pins on one side and holes on the other",
                "pins on both sides, which damage each other")
            : null;
}
