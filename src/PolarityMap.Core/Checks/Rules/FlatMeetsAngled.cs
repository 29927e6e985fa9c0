using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class FlatMeetsAngled : MatingRule
{
    public override string Code => "M05";

    public override string Title => "flat meets angled";

    public override string Why =>
        "A flat end face and one that is angled by 8 degrees touch at an edge only and leave a wedge of air. Several decibels are lost, " +
        "light is thrown back, and the edge may mark the other face. Green connectors are angled by custom, but the colour is no proof.";

    public override string Clears => "Use the same end face on both sides: change the cord, or state polish or duplex-polish where the default is not what is there.";

    public override string Source => "Three public sources; the wedge of 8 degrees is proved by geometry.";

    public override string Example => """
        plant: A flat cord on an angled cassette
        parts:
          SW-L: duplex interface
          SW-R: duplex interface
          K-L: { kind: U1 cassette, fibre: OS2, duplex-polish: angled }
          K-R: { kind: U1 cassette, fibre: OS2 }
          T: { kind: Type-B trunk, fibre: OS2, length: 300 m }
        runs:
          - SW-L/1, A-to-B cord 2 m, K-L/1
          - K-L/rear, T, K-R/rear
          - K-R/1, A-to-B cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override string Repaired => """
        plant: A cord with one angled end on an angled cassette
        types:
          flat to angled cord: { kind: A-to-B cord, far-duplex-polish: angled }
        parts:
          SW-L: duplex interface
          SW-R: duplex interface
          K-L: { kind: U1 cassette, fibre: OS2, duplex-polish: angled }
          K-R: { kind: U1 cassette, fibre: OS2 }
          T: { kind: Type-B trunk, fibre: OS2, length: 300 m }
        runs:
          - SW-L/1, flat to angled cord 2 m, K-L/1
          - K-L/rear, T, K-R/rear
          - K-R/1, A-to-B cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    private protected override StopFault? Judge(CheckContext context, Mating mating)
    {
        Plant plant = context.Plant;
        if (plant.Port(mating.A).Polish is not { } a || plant.Port(mating.B).Polish is not { } b || (a == Polish.Flat) == (b == Polish.Flat)
            || !MatingText.Seats(plant, mating) || IsFaultOfFibre(plant, mating.A, mating.B) || IsFaultOfFibre(plant, mating.B, mating.A))
            return null;
        return new StopFault(
            $"{a.Word()} {b.Word()}",
            $"{MatingText.A(plant, mating)} is {a.Word()} and {MatingText.B(plant, mating)} is {b.Word()}",
            "both flat or both angled",
            $"{a.Word()} on {b.Word()}, with a wedge of air between them");
    }

    /// <summary>
    /// True where the fibre itself is wrong: the end face of an array follows from its fibre unless it is stated, and the fibre
    /// rules say more.
    /// </summary>
    private static bool IsFaultOfFibre(Plant plant, PortRef here, PortRef there)
    {
        if (plant.Port(here).Face.Family != ConnectorFamily.Array || plant.Parts[here.Part].Fibre is not { } fibre)
            return false;
        return plant.Parts[there.Part].Fibre is { } other
            ? other.IsMultimode != fibre.IsMultimode
            : plant.Port(there).Application is { } application && FibreFaults.IsNotFor(application, plant.Practice.Limits, fibre);
    }
}
