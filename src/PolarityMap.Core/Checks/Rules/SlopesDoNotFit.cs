using PolarityMap.Core.Parts;
using PolarityMap.Core.Plants;

namespace PolarityMap.Core.Checks.Rules;

public sealed class SlopesDoNotFit : MatingRule
{
    public override string Code => "M06";

    public override string Title => "slopes that do not fit";

    public override string Why =>
        "The end face of an angled array plug slopes by 8 degrees as seen with key up. Two such plugs lie face to face only when one is " +
        "turned half round, that is with opposed keys. With aligned keys both slopes lean the same way and gape by 16 degrees. An " +
        "up-angled plug slopes the other way and fits an angled one with aligned keys.";

    public override string Clears =>
        "Use opposed (Type-A) adapters where both plugs are angled, which method U1 does, or an up-angled plug on one side of an aligned mating.";

    public override string Source =>
        "Proved by geometry; opposed keys for angled plugs: one public source; up-angled plugs: IEC 61754-7-1 and -7-2, two catalogue abstracts.";

    public override string Example => """
        plant: Angled plugs with aligned keys
        parts:
          SW-L: duplex interface
          SW-R: duplex interface
          K-L: { kind: U2 cassette, fibre: OS2, keys: aligned }
          K-R: { kind: U2 cassette, fibre: OS2, keys: aligned }
          T: { kind: Type-B trunk, fibre: OS2, length: 300 m }
        runs:
          - SW-L/1, A-to-B cord 2 m, K-L/1
          - K-L/rear, T, K-R/rear
          - K-R/1, A-to-B cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    public override string Repaired => """
        plant: Angled plugs with opposed keys
        parts:
          SW-L: duplex interface
          SW-R: duplex interface
          K-L: { kind: U1 cassette, fibre: OS2, keys: opposed }
          K-R: { kind: U1 cassette, fibre: OS2, keys: opposed }
          T: { kind: Type-B trunk, fibre: OS2, length: 300 m }
        runs:
          - SW-L/1, A-to-B cord 2 m, K-L/1
          - K-L/rear, T, K-R/rear
          - K-R/1, A-to-B cord 2 m, SW-R/1
        links:
          - SW-L/1 to SW-R/1

        """;

    private protected override StopFault? Judge(CheckContext context, Mating mating)
    {
        Plant plant = context.Plant;
        PortShape a = plant.Port(mating.A);
        PortShape b = plant.Port(mating.B);

        // A receptacle has the slope that fits the plug it is made for.
        if (!MatingText.IsArray(plant, mating) || a.KeysFixed || b.KeysFixed
            || a.Polish is not { } slopeA || b.Polish is not { } slopeB || slopeA == Polish.Flat || slopeB == Polish.Flat
            || (mating.Keys == Keying.Aligned) != (slopeA == slopeB))
            return null;
        return new StopFault(
            $"{slopeA.Word()} {slopeB.Word()} {mating.Keys.Word()}",
            $"{MatingText.A(plant, mating)} is {slopeA.Word()} and {MatingText.B(plant, mating)} is {slopeB.Word()}, and their keys are {mating.Keys.Word()}, so their slopes gape by 16 degrees",
            slopeA == slopeB ? "opposed keys, or an up-angled plug on one side" : "aligned keys, or two plugs of one slope",
            $"{slopeA.Word()} on {slopeB.Word()} with {mating.Keys.Word()} keys");
    }
}
